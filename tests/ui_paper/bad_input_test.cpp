// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui_paper/checks.h"
#include "tests/ui_paper/samples.h"
#include "ui/logic/paper/pdf.h"

#include <QBuffer>

#include <gtest/gtest.h>

#include <limits>

namespace withy::paper {
namespace {

using namespace papers;

Block block(auto content) {
    return Block{std::move(content)};
}

/// One document with the same words in every place that takes words.
Document everywhere(const std::string& w) {
    const Text both = plain(w) + strong(w);
    Document d;
    d.kind = d.name = d.key = d.keyNote = d.footWhat = d.footPrinted = d.version = w;
    d.facts = {both, both, both};
    Table table{
        w,
        {{w, Align::Left, 1, false}, {w, Align::Centre, 0, false}, {w, Align::Right, 0, true}},
        {{{both}, RowKind::Group}, {{both, both, both}, RowKind::Body}, {{both, {}, both}, RowKind::Total}},
        false};
    const std::vector<Block> blocks{block(SectionHead{w, both}),
                                    block(TimedTask{w, w, both, w, 5}),
                                    block(BusyBand{w, w}),
                                    block(CountRow{w, w, w}),
                                    block(TickRow{both, both, true}),
                                    block(FigureLine{w, both}),
                                    block(Paragraph{both, true}),
                                    block(KeyRow{{{w, w}, {w, w}}}),
                                    block(HourStrip{{{w, w, false}, {w, w, true}}, w, 1.5, w}),
                                    block(PatchHead{w, w, both}),
                                    block(TallyRow{w, w, w, w, both, w, {10, 3}, w}),
                                    block(table),
                                    block(Cautions{w, {{w, w}}}),
                                    block(Cautions{w, {{w, w}, {w, w}, {w, w}}}),
                                    block(Cautions{"", {{w, w}, {w, w}, {w, w}}}),
                                    block(WriteHere{w, {{w, 0}, {w, 40}}}),
                                    block(Spacer{3})};
    d.body = blocks;
    d.body.push_back(block(Columns{Split::TwoThirds, blocks, blocks}));
    d.body.push_back(block(Columns{Split::Halves, blocks, blocks}));
    d.last = {block(WriteHere{w, {{w, 20}}})};
    return d;
}

void expectSound(const Document& document) {
    for (PaperSize paper : {PaperSize::A4, PaperSize::Letter}) {
        SCOPED_TRACE(paper == PaperSize::A4 ? "A4" : "Letter");
        const Layout layout = layoutDocument(document, paper);
        const QStringList faults = checks::faults(layout);
        EXPECT_EQ(faults.mid(0, 6).join('\n').toStdString(), "") << faults.size() << " faults";
        QByteArray bytes;
        QBuffer buffer(&bytes);
        buffer.open(QIODevice::WriteOnly);
        EXPECT_TRUE(writePdf(buffer, layout, {}));
    }
}

TEST(BadInput, AnyWordsAnywhereStayOnTheSheet) {
    const struct {
        const char* name;
        std::string words;
    } rows[] = {{"nothing", ""},
                {"one blank", " "},
                {"short", "Ammi"},
                {"a sentence", "Stand them deep in the cool until the evening, and keep the door shut."},
                {"10,000 letters, no blank", std::string(10'000, 'W')},
                {"1,250 words",
                 [] {
                     std::string s;
                     for (int i = 0; i < 1250; ++i)
                         s += "flowers ";
                     return s;
                 }()},
                {"line breaks", "one\ntwo\r\nthree\n\n\nfour"},
                {"control characters", std::string("a\0b\x01\t\x7f\x1b[31m", 11)},
                {"broken UTF-8", "caf\xE9 \xC3 \xF0\x9F\x8C"},
                {"right to left", "שלום לפרחים 24 צנצנות"},
                {"both ways", "24 jars לפרחים and back"},
                {"Arabic", "٢٤ زهور الحديقة"},
                {"emoji", "🌼🌷 24 jars 👩🏽‍🌾"},
                {"wide letters", "花束を二十四個つくる"},
                {"Thai", "ดอกไม้ยี่สิบสี่ดอก"},
                {"marks on marks", "e\xCC\x81\xCC\x82\xCC\x83\xCC\x84\xCC\x85\xCC\x86\xCC\x87\xCC\x88 z"},
                {"markup", "<b>24</b> &amp; <table><tr>"}};

    for (const auto& row : rows) {
        SCOPED_TRACE(row.name);
        expectSound(everywhere(row.words));
    }
}

TEST(BadInput, AnEmptyDocumentIsOneNumberedPage) {
    const Layout layout = layoutDocument(Document{}, PaperSize::A4);
    ASSERT_EQ(layout.pages.size(), 1u);
    EXPECT_TRUE(checks::linesOf(layout.pages[0]).contains("page 1 of 1"));
}

TEST(BadInput, EmptyBlocks) {
    Document d;
    d.body = {block(SectionHead{}), block(TimedTask{}),  block(BusyBand{}),  block(CountRow{}),
              block(TickRow{}),     block(FigureLine{}), block(Paragraph{}), block(KeyRow{}),
              block(HourStrip{}),   block(PatchHead{}),  block(TallyRow{}),  block(Table{}),
              block(Cautions{}),    block(WriteHere{}),  block(Spacer{}),    block(Columns{}),
              block(TallyRow{}),    block(SectionHead{})};
    d.last = {block(Cautions{}), block(Table{})};
    expectSound(d);
}

TEST(BadInput, AThousandRows) {
    const Document d = samples::seasonOrders(1000);
    const Layout layout = layoutDocument(d, PaperSize::A4);
    EXPECT_GT(layout.pages.size(), 30u);
    for (const Page& page : layout.pages)
        EXPECT_TRUE(checks::linesOf(page).contains("standing"));
    EXPECT_EQ(checks::faults(layout).join('\n').toStdString(), "");
}

TEST(BadInput, NumbersOutOfAllBounds) {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const double inf = std::numeric_limits<double>::infinity();
    for (double odd : {nan, inf, -inf, -5.0, 1e300}) {
        SCOPED_TRACE(odd);
        Document d;
        Table table{"",
                    {{"a", Align::Left, odd, false}, {"b", Align::Left, 1, false}},
                    {{{plain("x"), plain("y")}}},
                    false};
        d.body = {block(Spacer{odd}), block(WriteHere{"Write", {{"minutes", odd}, {"jars", 0}}}),
                  block(table),
                  block(HourStrip{{{"06", "9", false}, {"07", "11", true}}, "sun up", odd, "too warm"})};
        expectSound(d);
    }
    for (int odd : {-1, 0, 1, 8, 9, 48, 49, 400, 401, std::numeric_limits<int>::max()}) {
        SCOPED_TRACE(odd);
        Document d;
        d.body = {block(TimedTask{"15:10", "Make up", plain("Tick each."), "Both", odd}),
                  block(Columns{Split::TwoThirds, {block(TimedTask{"15:10", "Make up", {}, "", odd})}, {}})};
        expectSound(d);
    }
}

TEST(BadInput, TooManyOfEverything) {
    Document d;
    Table table;
    for (int c = 0; c < 100; ++c)
        table.columns.push_back({"column", Align::Left, 0, c % 2 == 0});
    table.rows = {{std::vector<Text>(150, plain("words")), RowKind::Body}, {{plain("few")}, RowKind::Total}};
    Cautions cautions{"Take care", {}};
    WriteHere write{"Write here", {}};
    KeyRow key;
    HourStrip hours;
    for (int i = 0; i < 200; ++i) {
        cautions.items.push_back({"Ladder.", "Three points of contact."});
        write.boxes.push_back({"minutes", 0});
        key.items.push_back({"L", "Library roof supper"});
        hours.cells.push_back({"06", "9 °C", i > 10});
    }
    d.facts.assign(60, plain("a fact"));
    d.body = {
        block(table),
        block(cautions),
        block(write),
        block(key),
        block(hours),
        block(PatchHead{"1", "Wall", {}}),
        block(TallyRow{"9,999", "stems", "L", "Zinnia", {}, "bucket 1", std::vector<int>(1000, 10), "cut"})};
    d.last = {block(write)};
    expectSound(d);
}

TEST(BadInput, APatchOverSeveralPagesKeepsItsHead) {
    Document d;
    d.body.push_back(block(PatchHead{"3", "Long border", {}}));
    for (int i = 0; i < 30; ++i)
        d.body.push_back(
            block(TallyRow{"53", "stems", "L", "Dahlia", {}, "bucket 1", tallyBoxes(53), "cut"}));
    const Layout layout = layoutDocument(d, PaperSize::A4);
    ASSERT_GE(layout.pages.size(), 3u);
    for (const Page& page : layout.pages)
        EXPECT_EQ(checks::linesOf(page).count("Long border"), 1);
    expectSound(d);
}

} // namespace
} // namespace withy::paper
