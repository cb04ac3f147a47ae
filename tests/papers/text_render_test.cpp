// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/papers/text_render.h"

#include "core/papers/text_width.h"

#include <gtest/gtest.h>

#include <sstream>

namespace withy::papers {
namespace {

std::vector<std::string> linesOf(const std::string& text) {
    std::vector<std::string> lines;
    std::istringstream in(text);
    for (std::string line; std::getline(in, line);)
        lines.push_back(line);
    return lines;
}

Block block(auto content) {
    return Block{std::move(content)};
}

std::string only(auto content) {
    Document document;
    document.body = {block(std::move(content))};
    const std::string all = renderText(document);
    const std::string rule(kTextWidth, '=');
    const std::size_t from = all.find(rule) + rule.size() + 1;
    std::string body = all.substr(from, all.rfind(rule) - from);
    while (body.ends_with("\n\n"))
        body.pop_back();
    while (body.starts_with("\n"))
        body.erase(0, 1);
    return body;
}

const std::string kRule(kTextWidth, '-');

TEST(RenderText, HeadFactsAndFoot) {
    Document d;
    d.kind = "Prep sheet";
    d.name = "Library roof supper";
    d.key = "Fri 10 Sep";
    d.keyNote = "the day before";
    d.facts = {strong("24") + plain(" jars"), plain("sunrise ") + strong("06:26")};
    d.footWhat = "Library roof supper, Sat 11 Sep";
    d.footPrinted = "printed Thu 9 Sep, 19:40";
    const std::string thick(kTextWidth, '=');
    EXPECT_EQ(renderText(d),
              "Prep sheet                                                          Fri 10 Sep\n"
              "Library roof supper                                             the day before\n" +
                  thick + "\n24 jars | sunrise 06:26\n" + kRule + "\n\n" + thick +
                  "\n"
                  "Library roof supper, Sat 11 Sep                       printed Thu 9 Sep, 19:40\n");
}

TEST(RenderText, ATimedTaskWithItsBoxes) {
    EXPECT_EQ(only(TimedTask{"15:10", "Make up 11 jars", plain("Leaf, airy, face."), "Both", 11}),
              "15:10 [ ] Make up 11 jars                                                 Both\n"
              "          Leaf, airy, face.\n"
              "          [ ][ ][ ][ ] [ ][ ][ ][ ]\n"
              "          [ ][ ][ ]\n");
}

TEST(RenderText, RowsOfEachKind) {
    EXPECT_EQ(only(BusyBand{"08:00 to 09:05", "dentist"}),
              "//// 08:00 to 09:05 dentist " + std::string(50, '/') + "\n");
    EXPECT_EQ(only(CountRow{"2", "leaf", "ninebark"}), "   2  leaf ninebark\n");
    EXPECT_EQ(only(TickRow{strong("26") + plain(" honey jars"), {}, false}), "[ ] 26 honey jars\n");
    EXPECT_EQ(only(FigureLine{"6.6 litres", plain("jars")}), "6.6 litres jars\n");
    EXPECT_EQ(only(KeyRow{{{"L", "Library"}, {"C", "Christening"}}}), "[L] Library  [C] Christening\n");
    EXPECT_EQ(only(WriteHere{"Write here,\ntype in later", {{"minutes", 0}}}),
              "Write here, type in later\n  minutes [________________]\n");
}

TEST(RenderText, APatchAndWhatToCutThere) {
    EXPECT_EQ(only(PatchHead{"3", "Long border", plain("start at the gate")}),
              "(3) Long border                                              start at the gate\n" + kRule +
                  "\n");
    EXPECT_EQ(only(TallyRow{"23", "stems", "L", "Dahlia, plum", strong("half open") + plain(", 35 cm"),
                            "bucket 1", tallyBoxes(23), "cut"}),
              "  23 stems [L]    Dahlia, plum                                        bucket 1\n"
              "                  half open, 35 cm\n"
              "                  [10] [10] [3]                                 cut [________]\n");
}

TEST(RenderText, ATableAlignsByWhatIsSeen) {
    Table table;
    table.columns = {{"booking", Align::Left, 1, false},
                     {"stems", Align::Right, 0, true},
                     {"owed", Align::Right, 0, true}};
    table.rows = {{{plain("Café 花"), plain("1,204"), plain("£0.00")}, RowKind::Body},
                  {{plain("Wren"), plain("7"), plain("£12.50")}, RowKind::Body},
                  {{plain("Season"), plain("1,211"), plain("£12.50")}, RowKind::Total}};
    EXPECT_EQ(only(table), "booking  stems    owed\n"
                           "----------------------\n"
                           "Café 花  1,204   £0.00\n"
                           "Wren         7  £12.50\n"
                           "----------------------\n"
                           "Season   1,211  £12.50\n");
}

TEST(RenderText, CautionsSayWhatThenWhatToDo) {
    EXPECT_EQ(only(Cautions{"", {{"Wet boards.", "Walk round."}}}), "! Wet boards. Walk round.\n");
    EXPECT_EQ(only(Cautions{"Take care", {{"Sap:", "gloves."}, {"Not food.", ""}}}),
              "! Take care\n  Sap: gloves.\n  Not food.\n");
}

TEST(RenderText, MarkupIsShownAsTyped) {
    EXPECT_EQ(only(Paragraph{plain("<b>24</b> &amp; **not bold**"), false}),
              "<b>24</b> &amp; **not bold**\n");
}

/// The same words in every place that takes words.
Document everywhere(const std::string& w) {
    const Text both = plain(w) + strong(w);
    Document d;
    d.kind = d.name = d.key = d.keyNote = d.footWhat = d.footPrinted = d.version = w;
    d.facts = {both, both};
    const Table table{
        w, {{w, Align::Left, 1, false}, {w, Align::Right, 0, true}}, {{{both, both}, RowKind::Body}}, false};
    const std::vector<Block> all{block(SectionHead{w, both}),
                                 block(TimedTask{w, w, both, w, 9}),
                                 block(BusyBand{w, w}),
                                 block(CountRow{w, w, w}),
                                 block(TickRow{both, both, true}),
                                 block(FigureLine{w, both}),
                                 block(Paragraph{both, false}),
                                 block(KeyRow{{{w, w}}}),
                                 block(HourStrip{{{w, w, true}}, w, 0, w}),
                                 block(PatchHead{w, w, both}),
                                 block(TallyRow{w, w, w, w, both, w, {10, 3}, w}),
                                 block(table),
                                 block(Cautions{w, {{w, w}}}),
                                 block(WriteHere{w, {{w, 0}}}),
                                 block(Spacer{2})};
    d.body = all;
    d.body.push_back(block(Columns{Split::Halves, all, all}));
    d.last = all;
    return d;
}

TEST(RenderText, AnyWordsStayInTheColumnsAndComeOutTheSame) {
    const struct {
        const char* name;
        std::string words;
    } rows[] = {{"nothing", ""},
                {"short", "Ammi"},
                {"10,000 letters", std::string(10'000, 'W')},
                {"a long sentence",
                 std::string("Stand them deep in the cool until the evening, and keep the door shut.")},
                {"line breaks", "one\ntwo\r\n\nthree"},
                {"broken UTF-8", "caf\xE9 \xF0\x9F"},
                {"wide letters", "花束を二十四個つくる花束を二十四個つくる花束を二十四個つくる"},
                {"right to left", "שלום לפרחים"}};

    for (const auto& row : rows) {
        SCOPED_TRACE(row.name);
        const Document document = everywhere(row.words);
        const std::string text = renderText(document);
        EXPECT_EQ(text, renderText(document));
        for (const std::string& line : linesOf(text)) {
            EXPECT_LE(displayWidth(line), kTextWidth) << line;
            EXPECT_FALSE(line.ends_with(' ')) << line;
        }
    }
}

TEST(RenderText, AnEmptyDocumentIsTwoRules) {
    const std::string text = renderText(Document{});
    EXPECT_TRUE(text.ends_with("\n"));
    EXPECT_NE(text.find(std::string(kTextWidth, '=')), std::string::npos);
}

TEST(RenderText, AThousandRowsAreAThousandLines) {
    Table table;
    table.columns = {{"booking", Align::Left, 1, false}, {"stems", Align::Right, 0, true}};
    table.rows.assign(1000, {{plain("Library roof supper"), plain("240")}, RowKind::Body});
    EXPECT_EQ(linesOf(only(table)).size(), 1002u);
}

} // namespace
} // namespace withy::papers
