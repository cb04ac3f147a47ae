// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui_paper/checks.h"
#include "tests/ui_paper/samples.h"
#include "ui/logic/paper/pdf.h"

#include <QBuffer>

#include <gtest/gtest.h>

#include <set>

namespace withy::paper {
namespace {

using papers::Document;

constexpr PaperSize bothSizes[] = {PaperSize::A4, PaperSize::Letter};

std::string sizeWord(PaperSize paper) {
    return paper == PaperSize::A4 ? "A4" : "Letter";
}

} // namespace

TEST(RoadLayout, KeepsTheRulesOfASheet) {
    const std::pair<const char*, Document> cases[] = {{"two drops", samples::runSheet(2)},
                                                      {"seven drops", samples::runSheet(7)},
                                                      {"a light week", samples::weekBoard(3)},
                                                      {"a week over two pages", samples::weekBoard(14)}};
    for (const auto& [name, document] : cases)
        for (const auto paper : bothSizes) {
            SCOPED_TRACE(std::string(name) + ", " + sizeWord(paper));
            EXPECT_EQ(checks::faults(layoutDocument(document, paper)).join('\n').toStdString(), "");
        }
}

TEST(RoadLayout, TheTwoTimesStandUnderTheirHeads) {
    const Layout layout = layoutDocument(samples::runSheet(1), PaperSize::A4);
    std::map<QString, double> left;
    for (const Op& op : layout.pages.front().ops)
        if (const auto* text = std::get_if<TextOp>(&op)) left.emplace(text->line.text(), text->at.x());
    EXPECT_NEAR(left.at("plan"), left.at("12:05"), 0.01);
    EXPECT_NEAR(left.at("latest"), left.at("12:40"), 0.01);
    EXPECT_GT(left.at("12:40"), left.at("12:05") + 15);
}

TEST(RoadLayout, ABlankAnswerIsABoxAndADropIsNeverParted) {
    const Layout layout = layoutDocument(samples::runSheet(7), PaperSize::A4);
    EXPECT_GT(layout.pages.size(), 1U);
    int cards = 0;
    for (const Page& page : layout.pages)
        for (const PlacedRow& row : page.rows)
            cards += row.rect.height() > 55 ? 1 : 0;
    EXPECT_EQ(cards, 7) << "each drop is one row of one page";
    const auto boxes = [](const Document& d) {
        std::size_t count = 0;
        for (const Page& page : layoutDocument(d, PaperSize::A4).pages)
            for (const Op& op : page.ops)
                count += std::holds_alternative<BoxOp>(op) ? 1 : 0;
        return count;
    };
    // The second drop of the sample has nine blank answers; all else is as at the first.
    EXPECT_EQ(boxes(samples::runSheet(2)), 2 * (boxes(samples::runSheet(1)) - boxes(samples::runSheet(0))) +
                                               boxes(samples::runSheet(0)) + 9);
}

TEST(BoardLayout, LiesOnItsLongSideWithSevenColumns) {
    for (const auto paper : bothSizes) {
        SCOPED_TRACE(sizeWord(paper));
        const Layout layout = layoutDocument(samples::weekBoard(3), paper);
        ASSERT_EQ(layout.pages.size(), 1U);
        EXPECT_EQ(sheetOf(layout), sizeOf(paper).transposed());
        std::set<int> columns;
        for (const PlacedRow& row : layout.pages.front().rows)
            if (row.rect.width() < 50) columns.insert(static_cast<int>(row.rect.left()));
        EXPECT_EQ(columns.size(), 7U);
    }
}

TEST(BoardLayout, ADayThatRunsOnHasItsHeadAgain) {
    const Layout layout = layoutDocument(samples::weekBoard(14), PaperSize::A4);
    ASSERT_GT(layout.pages.size(), 1U);
    const QStringList lines = checks::linesOf(layout.pages.back());
    for (const char* day : {"Mon 6 Sep", "Fri 10 Sep", "Sun 12 Sep"})
        EXPECT_TRUE(lines.contains(QString::fromUtf8(day))) << day;
}

/// Two by four on a sheet; on Letter 4.25 by 2.75 inches each, in millimetres by the inch of 25.4.
TEST(LabelLayout, EightToASheetEachWithinItsOwnCuts) {
    EXPECT_DOUBLE_EQ(sizeOf(PaperSize::Letter).width() / 2, 4.25 * 25.4);
    EXPECT_DOUBLE_EQ(sizeOf(PaperSize::Letter).height() / 4, 2.75 * 25.4);
    for (const auto paper : bothSizes) {
        SCOPED_TRACE(sizeWord(paper));
        const QSizeF each(sizeOf(paper).width() / 2, sizeOf(paper).height() / 4);
        const Layout layout = layoutDocument(samples::bucketLabels(9), paper);
        ASSERT_EQ(layout.pages.size(), 2U);
        EXPECT_EQ(layout.pages[0].rows.size(), 8U);
        EXPECT_EQ(layout.pages[1].rows.size(), 1U) << "the last sheet is part-filled";
        int words = 0;
        for (const Op& op : layout.pages[0].ops) {
            const auto* text = std::get_if<TextOp>(&op);
            if (!text) continue;
            ++words;
            const QRectF ink = boundsOf(op);
            const int across = static_cast<int>(ink.center().x() / each.width());
            const int down = static_cast<int>(ink.center().y() / each.height());
            const QRectF cell(across * each.width(), down * each.height(), each.width(), each.height());
            EXPECT_TRUE(cell.adjusted(5, 2, -5, -1).contains(ink)) << text->line.text().toStdString();
            EXPECT_FALSE(text->line.text().contains(QChar(0x2026))) << text->line.text().toStdString();
        }
        EXPECT_GT(words, 8 * 9);
        const QStringList lines = checks::linesOf(layout.pages[0]);
        for (int i = 1; i <= 8; ++i)
            EXPECT_EQ(lines.count(QStringLiteral("label %1 of 9").arg(i)), 1) << i;
    }
}

TEST(LabelLayout, NothingOnALabelStandsOverAnother) {
    for (const auto paper : bothSizes) {
        const Layout layout = layoutDocument(samples::bucketLabels(8), paper);
        QStringList over;
        for (const QString& fault : checks::faults(layout))
            if (fault.startsWith(QStringLiteral("words over words")) ||
                fault.startsWith(QStringLiteral("small letters")))
                over << fault;
        EXPECT_EQ(over.join('\n').toStdString(), "");
    }
}

TEST(BoardLayout, APdfOfItIsWiderThanHigh) {
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    ASSERT_TRUE(writePdf(buffer, samples::weekBoard(3), PaperSize::A4));
    const QByteArray bytes = buffer.data();
    const auto at = bytes.indexOf("/MediaBox [");
    ASSERT_GE(at, 0);
    const auto parts = bytes.mid(at + 11, 60).split(']').first().simplified().split(' ');
    ASSERT_EQ(parts.size(), 4);
    EXPECT_NEAR(parts[2].toDouble(), 842, 1) << "297 mm in points";
    EXPECT_NEAR(parts[3].toDouble(), 595, 1) << "210 mm in points";
}

} // namespace withy::paper
