// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui_paper/checks.h"
#include "tests/ui_paper/samples.h"
#include "ui/logic/paper/painter.h"

#include <QFontInfo>
#include <QImage>
#include <QPainter>

#include <gtest/gtest.h>

#include <algorithm>

namespace withy::paper {
namespace {

using papers::Document;

struct Case {
    const char* name;
    Document document;
};

std::vector<Case> cases() {
    return {{"prep sheet", samples::prepSheet()},
            {"cutting list", samples::cuttingList()},
            {"orders, one page", samples::seasonOrders(8)},
            {"orders, several pages", samples::seasonOrders(70)}};
}

TEST(Layout, KeepsTheRulesOfASheet) {
    for (const Case& each : cases())
        for (PaperSize paper : {PaperSize::A4, PaperSize::Letter}) {
            SCOPED_TRACE(std::string(each.name) + (paper == PaperSize::A4 ? ", A4" : ", Letter"));
            const Layout layout = layoutDocument(each.document, paper);
            EXPECT_EQ(checks::faults(layout).join('\n').toStdString(), "");
        }
}

TEST(Layout, CountsItsPagesAndNamesItselfOnEach) {
    const Layout layout = layoutDocument(samples::seasonOrders(70), PaperSize::A4);
    const auto count = static_cast<int>(layout.pages.size());
    ASSERT_GE(count, 3);
    for (int i = 0; i < count; ++i) {
        const QStringList lines = checks::linesOf(layout.pages[static_cast<std::size_t>(i)]);
        SCOPED_TRACE(lines.join('|').toStdString());
        EXPECT_TRUE(lines.contains(QStringLiteral("page %1 of %2").arg(i + 1).arg(count)));
        for (const char* again : {"Season's orders", "Wren Bank", "2027", "Season 2027, Wren Bank",
                                  "printed Tue 16 Nov, 19:25, version 3", "booking", "standing", "income"})
            EXPECT_TRUE(lines.contains(QString::fromUtf8(again))) << again;
        EXPECT_EQ(lines.contains(QStringLiteral("4,118 stems")), i == 0) << "facts stand on page 1 only";
    }
}

TEST(Layout, AGroupHeadComesAgainAndKeepsWithARow) {
    const Layout layout = layoutDocument(samples::seasonOrders(70), PaperSize::Letter);
    ASSERT_GE(layout.pages.size(), 2u) << "again on the second";
    for (const Page& page : layout.pages) {
        ASSERT_GE(page.rows.size(), 3u);
        EXPECT_LT(page.rows.back().rect.height(), 40);
        const QStringList lines = checks::linesOf(page);
        const bool grouped = lines.contains("May") || lines.contains("June") || lines.contains("July");
        EXPECT_TRUE(grouped);
    }
}

TEST(Layout, APrepSheetIsOnePage) {
    const Layout a4 = layoutDocument(samples::prepSheet(), PaperSize::A4);
    EXPECT_EQ(a4.pages.size(), 1u);
    EXPECT_DOUBLE_EQ(a4.tight, 1);
}

TEST(Layout, AFewRowsTooManyTakeAirNotType) {
    const Layout letter = layoutDocument(samples::prepSheet(), PaperSize::Letter);
    EXPECT_EQ(letter.pages.size(), 1u) << "18 mm lower than A4: air goes first";
    EXPECT_LT(letter.tight, 1);
    EXPECT_GE(letter.tight, 0.92);
}

TEST(Layout, TickBoxesAreOneAPieceInFours) {
    const Layout layout = layoutDocument(samples::prepSheet(), PaperSize::A4);
    std::vector<QRectF> small;
    int large = 0;
    for (const Op& op : layout.pages[0].ops)
        if (const auto* box = std::get_if<BoxOp>(&op)) {
            if (std::abs(box->rect.width() - 4.6) < 1e-9) small.push_back(box->rect);
            if (std::abs(box->rect.width() - 7) < 1e-9) ++large;
        }
    ASSERT_EQ(small.size(), 24u);
    EXPECT_EQ(large, 11) << "a 7 mm box for each step";
    EXPECT_DOUBLE_EQ(small[8].left(), small[0].left()) << "eight to a row";
    EXPECT_GT(small[4].left() - small[3].right(), small[1].left() - small[0].right()) << "a gap after four";
}

TEST(Layout, TallyAndWriteInBoxesAreTenMillimetres) {
    const Layout layout = layoutDocument(samples::cuttingList(), PaperSize::A4);
    int tally = 0;
    int writeIn = 0;
    for (const Op& op : layout.pages[0].ops)
        if (const auto* box = std::get_if<BoxOp>(&op)) {
            const bool ten = std::abs(box->rect.height() - 10) < 1e-9;
            if (ten) ++(box->rect.width() < 10.5 ? tally : writeIn);
        }
    EXPECT_EQ(tally, 6 + 8 + 3 + 2 + 3); // 53, 80, 24, 18 and 30 stems in tens
    EXPECT_EQ(writeIn, 5);
}

TEST(Layout, IsTheSameEveryTime) {
    const Layout one = layoutDocument(samples::cuttingList(), PaperSize::A4);
    const Layout two = layoutDocument(samples::cuttingList(), PaperSize::A4);
    ASSERT_EQ(one.pages.size(), two.pages.size());
    ASSERT_EQ(one.pages[0].ops.size(), two.pages[0].ops.size());
    for (std::size_t i = 0; i < one.pages[0].ops.size(); ++i)
        EXPECT_EQ(boundsOf(one.pages[0].ops[i]), boundsOf(two.pages[0].ops[i]));
}

TEST(Fonts, FiguresInNamesAreNotSetInSerif) {
    for (const Span& span : spansOf("Summer fair 2027", types::kName))
        EXPECT_EQ(span.type.face == Face::Sans, span.text == "2027") << span.text.toStdString();
}

TEST(Fonts, AreTheOnesOfTheLook) {
    EXPECT_EQ(QFontInfo(fontOf(types::kText)).family(), "Lato");
    EXPECT_EQ(QFontInfo(fontOf(types::kKey)).family(), "Lato");
    EXPECT_EQ(QFontInfo(fontOf(types::kName)).family(), "Vollkorn Lining");
}

TEST(Lines, FiguresStandUnderEachOther) {
    // Lato's lining figures share one width, so right-aligned sums line up digit by digit.
    for (const Type& type : {types::kText, types::kTextStrong, types::kTime, types::kCount}) {
        const double ones = widthOf(spansOf(std::string("111"), type));
        EXPECT_NEAR(widthOf(spansOf(std::string("888"), type)), ones, 0.01);
    }
}

TEST(Lines, WrapInsideTheWidthTheyAreGiven) {
    const Spans spans =
        spansOf("Cut low, then middle, then tall; no leaf under water, door shut, lights out.", types::kText);
    for (double width : {5.0, 20.0, 60.0, 200.0})
        for (const TextLine& line : breakLines(spans, width, 100))
            EXPECT_LE(line.width, width + 0.01) << line.text().toStdString();
}

QImage preview(const Page& page, double dotsPerMm, QSizeF mm) {
    QImage image((mm * dotsPerMm).toSize(), QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    drawPage(painter, page, dotsPerMm);
    return image;
}

TEST(Painter, DrawsInGreysOnly) {
    const Layout layout = layoutDocument(samples::prepSheet(), PaperSize::A4);
    const QImage image = preview(layout.pages[0], 3, sizeOf(PaperSize::A4));
    int dark = 0;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x) {
            const QRgb c = image.pixel(x, y);
            ASSERT_TRUE(qRed(c) == qGreen(c) && qGreen(c) == qBlue(c)) << x << ',' << y;
            dark += qRed(c) < 128 ? 1 : 0;
        }
    EXPECT_GT(dark, 5000);
}

TEST(Painter, LeavesTheMarginsWhite) {
    constexpr double kScale = 4;
    const Layout layout = layoutDocument(samples::cuttingList(), PaperSize::Letter);
    const QSizeF mm = sizeOf(PaperSize::Letter);
    const QImage image = preview(layout.pages[0], kScale, mm);
    const QRectF area = QRectF(QPointF(0, 0), mm).adjusted(kMargin, kMargin, -kMargin, -kMargin);
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x) {
            const QPointF at((x + 0.5) / kScale, (y + 0.5) / kScale);
            if (area.adjusted(-0.3, -0.3, 0.3, 0.3).contains(at)) continue;
            ASSERT_EQ(image.pixel(x, y), qRgb(255, 255, 255)) << at.x() << ',' << at.y();
        }
}

} // namespace
} // namespace withy::paper
