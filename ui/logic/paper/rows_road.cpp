// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/paper/rows.h"

#include <algorithm>

/// What the driver reads standing at the open van.
namespace withy::paper {
namespace {

using papers::Align;

constexpr double kNumber = 8.2;    // side of the black square
constexpr double kIn = 12.2;       // from the frame to the words
constexpr double kLabel = 18;      // column of the answers' labels
constexpr double kPad = 3.4;       // from the words to the frame
constexpr double kWriteLine = 9.4; // an answer still to be written: about 10 mm from line to line
constexpr double kTickBox = 7;
constexpr double kHandedBox = 10;
constexpr Type kCardNumber{Face::Sans, QFont::Black, 15, 6.4};

struct SetAnswer {
    TextLine label;
    std::vector<TextLine> words;

    [[nodiscard]] double height() const {
        return words.empty() ? kWriteLine : heightOf(words, types::kText.lineMm) + 0.2;
    }
};

struct SetItem {
    TextLine count;
    std::vector<TextLine> words;
    double height = 0;
};

/// Everything of a card broken to its widths.
struct Card {
    std::vector<SetAnswer> answers;
    std::vector<SetItem> items;
    double answersWidth = 0;
    double itemsX = 0;
    double itemsWidth = 0;
    double countWidth = 0;

    Card(const papers::DropCard& card, double width) {
        const double inner = width - kIn - kPad;
        answersWidth = card.items.empty() && card.handedTo.empty() ? inner : inner * 0.5;
        itemsX = kIn + answersWidth + 6;
        itemsWidth = width - kPad - itemsX;
        for (const auto& answer : card.answers)
            answers.push_back({oneLine(spansOf(answer.label, types::kDetail), kLabel - 1),
                               breakLines(spansOf(answer.words, types::kText, types::kTextStrong),
                                          answersWidth - kLabel, 5)});
        for (const auto& item : card.items)
            countWidth = std::max(countWidth, widthOf(spansOf(item.count, types::kTime)) + 0.5);
        countWidth = std::min(countWidth, itemsWidth * 0.4);
        for (const auto& item : card.items) {
            SetItem set;
            set.count = oneLine(spansOf(item.count, types::kTime), countWidth);
            set.words = breakLines(spansOf(item.words, types::kText, types::kTextStrong),
                                   itemsWidth - kTickBox - 2 - countWidth - 1.6, 3);
            set.height = std::max(kTickBox + 1.6, heightOf(set.words, types::kText.lineMm) + 1.6);
            items.push_back(std::move(set));
        }
    }

    [[nodiscard]] double answersHeight() const {
        double sum = 0;
        for (const auto& a : answers)
            sum += a.height();
        return sum;
    }

    [[nodiscard]] double itemsHeight(bool handed) const {
        double sum = handed ? kHandedBox + 2.4 : 0;
        for (const auto& i : items)
            sum += i.height;
        return sum;
    }
};

void drawAnswers(Pen& pen, const Card& card, double top) {
    double y = top;
    for (const auto& answer : card.answers) {
        const double high = answer.height();
        if (answer.words.empty()) {
            pen.in(kIn, y, kWriteLine, answer.label);
            pen.box({kIn + kLabel, y + 0.6, card.answersWidth - kLabel, kWriteLine - 1.2}, Fill::White, 0.34);
        } else {
            pen.in(kIn, y, types::kText.lineMm, answer.label);
            pen.lines(kIn + kLabel, y, answer.words, types::kText.lineMm);
        }
        y += high;
    }
}

void drawItems(Pen& pen, const papers::DropCard& content, const Card& card, double top) {
    double y = top;
    for (const auto& item : card.items) {
        const double words = heightOf(item.words, types::kText.lineMm);
        pen.box({card.itemsX, y + (item.height - kTickBox) / 2, kTickBox, kTickBox}, Fill::White, kThick);
        const double countRight = card.itemsX + kTickBox + 2 + card.countWidth;
        pen.in(countRight, y, item.height, item.count, Align::Right);
        pen.lines(countRight + 1.6, y + (item.height - words) / 2, item.words, types::kText.lineMm);
        y += item.height;
        pen.across(y - kHairline / 2, card.itemsX, card.itemsX + card.itemsWidth);
    }
    if (content.handedTo.empty()) return;
    constexpr double kAtBox = 20;
    y += 2;
    const auto label = breakLines(spansOf(content.handedTo, types::kDetail), 15, 2);
    pen.lines(card.itemsX, y + (kHandedBox - heightOf(label, types::kDetail.lineMm)) / 2, label,
              types::kDetail.lineMm);
    const double right = card.itemsX + card.itemsWidth;
    const TextLine at = oneLine(spansOf(content.at, types::kDetail), 12);
    const double boxRight = right - kAtBox - at.width - 4;
    pen.box({card.itemsX + 16, y, boxRight - card.itemsX - 16, kHandedBox}, Fill::White, 0.37);
    pen.in(boxRight + 2, y, kHandedBox, at);
    pen.box({right - kAtBox, y, kAtBox, kHandedBox}, Fill::White, 0.37);
}

} // namespace

void addRows(std::vector<Row>& out, const papers::TimeHead& head, const Frame& frame) {
    Row row;
    Pen pen(row);
    const double x = frame.timeWidth + frame.latestWidth + 9.9;
    pen.in(0, 0, types::kDetail.lineMm, oneLine(spansOf(head.time, types::kDetail), frame.timeWidth - 1));
    pen.in(frame.timeWidth, 0, types::kDetail.lineMm,
           oneLine(spansOf(head.latest, types::kDetail), std::max(5.0, frame.latestWidth - 1)));
    pen.in(x - 9.9, 0, types::kDetail.lineMm,
           oneLine(spansOf(head.note, types::kDetail), frame.width - x + 9.9));
    row.height = types::kDetail.lineMm + 1.2 + kThick;
    pen.across(row.height - kThick / 2, 0, frame.width, kThick);
    row.keepWithNext = true;
    out.push_back(std::move(row));
}

void addRows(std::vector<Row>& out, const papers::DropCard& content, const Frame& frame) {
    constexpr double kHead = 9.6;
    const Card card(content, frame.width);
    const bool handed = !content.handedTo.empty();
    const double body = std::max(card.answersHeight(), card.itemsHeight(handed));
    const Pads pads = tightened({1, 2.2}, kHead + body, frame.tight);
    Row row;
    Pen pen(row);
    row.before = tightenedAir(2.6, frame.tight);
    row.height = pads.top + kHead + body + pads.bottom;
    pen.box({0, 0, frame.width, row.height}, Fill::White, kThick, 0.68);
    pen.box({0, 0, kNumber, kNumber}, Fill::Black, 0, 0.4);
    pen.in(kNumber / 2, 0, kNumber, oneLine(spansOf(content.number, kCardNumber), kNumber - 1), Align::Centre,
           Ink::White);
    const double top = pads.top + 0.4;
    pen.in(kIn, top, kHead - 1.4, oneLine(spansOf(content.time, types::kTime), frame.timeWidth));
    pen.in(kIn + frame.timeWidth, top, kHead - 1.4,
           oneLine(spansOf(content.latest, types::kLatest), std::max(5.0, frame.latestWidth)));
    const double nameX = kIn + frame.timeWidth + std::max(frame.latestWidth, 2.0);
    const TextLine note = oneLine(spansOf(content.note, types::kText, types::kTextStrong), frame.width * 0.3);
    pen.in(frame.width - kPad, top, kHead - 1.4, note, Align::Right);
    pen.in(nameX, top, kHead - 1.4,
           oneLine(spansOf(content.name, types::kPatch), frame.width - kPad - note.width - 4 - nameX));
    drawAnswers(pen, card, pads.top + kHead);
    drawItems(pen, content, card, pads.top + kHead);
    out.push_back(std::move(row));
}

} // namespace withy::paper
