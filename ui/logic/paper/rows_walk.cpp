// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/paper/rows.h"

#include <QCoreApplication>

#include <algorithm>

namespace withy::paper {
namespace {

using papers::Align;

constexpr double kIndent = 14.2; // right of the dotted walk
constexpr double kBox = 10;
constexpr double kBoxStep = 11.2;
constexpr double kWriteWidth = 25.4;
constexpr int kMostBoxes = 200;

/// A letter in a small frame; returns its width.
double drawMark(Pen& pen, double x, double top, const std::string& mark, double most) {
    const TextLine letter = oneLine(spansOf(mark, types::kDetailStrong), most - 3);
    if (letter.spans.empty()) return 0;
    const double width = std::max(5.6, letter.width + 3);
    pen.box({x, top, width, 5.2}, Fill::White, kBoxLine, 0.68);
    pen.in(x + width / 2, top, 5.2, letter, Align::Centre);
    return width;
}

void drawBoxes(Pen& pen, double x, double y, const std::vector<int>& boxes, std::size_t from, std::size_t end,
               int perLine) {
    for (std::size_t i = from; i < end; ++i) {
        const int place = static_cast<int>(i - from);
        const QRectF box(x + (place % perLine) * kBoxStep, y + (place / perLine) * kBoxStep, kBox, kBox);
        pen.box(box);
        const TextLine size = oneLine({{QString::number(boxes[i]), types::kDetail}}, kBox - 1);
        pen.at(box.right() - 1, box.bottom() - 1.2, size, Align::Right, Ink::Grey);
    }
}

/// Where everything of one tally row stands.
struct Tally {
    double x = 0;     // left edge of the plant's words
    double inner = 0; // width from there
    TextLine bucket;
    std::vector<TextLine> title;
    std::vector<TextLine> detail;
    TextLine label;
    bool write = false;
    bool writeBelow = false; // a narrow column: the write-in box takes a line of its own
    std::size_t boxes = 0;   // drawn at all
    std::size_t here = 0;    // drawn in the first row
    int perLine = 1;
    double words = 0; // height of title and detail
    double content = 0;
};

void countBoxes(Tally& tally, const papers::TallyRow& row) {
    const double taken =
        tally.write ? kWriteWidth + (tally.label.width > 0 ? tally.label.width + 1.7 : 0) + 3 : 0;
    auto fitting = [](double width) { return static_cast<int>((width + kBoxStep - kBox) / kBoxStep); };
    tally.writeBelow = tally.write && fitting(tally.inner - taken) < 2;
    tally.perLine = std::max(1, fitting(tally.writeBelow ? tally.inner : tally.inner - taken));
    tally.boxes = std::min<std::size_t>(row.boxes.size(), kMostBoxes);
    tally.here = std::min(tally.boxes, static_cast<std::size_t>(tally.perLine) * 4);
}

Tally setTally(const papers::TallyRow& row, const Frame& frame) {
    Tally tally;
    tally.x = kIndent + frame.tallyWidth;
    tally.inner = frame.width - tally.x;
    tally.bucket = oneLine(spansOf(row.bucket, types::kBucket), tally.inner * 0.45);
    const double titleRoom = tally.inner - (tally.bucket.width > 0 ? tally.bucket.width + 3 : 0);
    tally.title = breakLines(spansOf(row.title, types::kPlant), titleRoom, 3);
    tally.detail = breakLines(spansOf(row.detail, types::kText, types::kTextStrong), tally.inner, 6);
    tally.write = !row.writeLabel.empty();
    tally.label = oneLine(spansOf(row.writeLabel, types::kDetail), tally.inner * 0.3);
    countBoxes(tally, row);
    tally.words = heightOf(tally.title, types::kPlant.lineMm) + heightOf(tally.detail, types::kText.lineMm);
    const std::size_t lines = (tally.here + tally.perLine - 1) / tally.perLine;
    double boxes = lines > 0 ? 1.5 + static_cast<double>(lines) * kBoxStep - (kBoxStep - kBox) : 0;
    if (tally.write) boxes = tally.writeBelow ? boxes + 1.5 + kBox : std::max(boxes, 1.5 + kBox);
    tally.content = std::max(types::kCount.lineMm + types::kDetail.lineMm + 0.4, tally.words + boxes);
    return tally;
}

void drawCount(Pen& pen, const papers::TallyRow& row, const Frame& frame, double top) {
    const double width = frame.tallyWidth - 2;
    pen.in(kIndent, top - 0.4, types::kCount.lineMm, oneLine(spansOf(row.count, types::kCount), width));
    const double markRoom = row.mark.empty() ? 0 : 10;
    const TextLine unit = oneLine(spansOf(row.unit, types::kDetail), width - markRoom);
    const double y = top + types::kCount.lineMm + 0.1;
    pen.in(kIndent, y, 5.2, unit);
    const double used = unit.width > 0 ? unit.width + 1.7 : 0;
    drawMark(pen, kIndent + used, y, row.mark, width - used);
}

void drawPlant(Pen& pen, const Tally& tally, const Frame& frame, double top, double bottom) {
    double y = top;
    if (!tally.title.empty()) {
        const TextLine& first = tally.title.front();
        const double base = baselineIn(top, stepOf(first, types::kPlant.lineMm), first);
        pen.at(frame.width, base, tally.bucket, Align::Right);
    } else {
        pen.in(frame.width, top, types::kPlant.lineMm, tally.bucket, Align::Right);
    }
    y += pen.lines(tally.x, y, tally.title, types::kPlant.lineMm);
    pen.lines(tally.x, y, tally.detail, types::kText.lineMm);
    if (!tally.write) return;
    const QRectF box(frame.width - kWriteWidth, bottom - kBox, kWriteWidth, kBox);
    pen.box(box);
    pen.in(box.left() - 1.7, box.top(), kBox, tally.label, Align::Right);
}

/// The tally boxes that would make the row too high for a page go on in rows of their own.
void addMoreBoxes(std::vector<Row>& out, const papers::TallyRow& row, const Tally& tally,
                  const Frame& frame) {
    for (std::size_t from = tally.here; from < tally.boxes; from += tally.perLine) {
        Row more;
        Pen pen(more);
        more.walk = Row::Walk::On;
        more.height = kBoxStep;
        drawBoxes(pen, tally.x, 0, row.boxes, from, std::min(tally.boxes, from + tally.perLine),
                  tally.perLine);
        out.push_back(std::move(more));
    }
    Row& end = out.back();
    Pen pen(end);
    if (row.boxes.size() > kMostBoxes) {
        const QString words = QCoreApplication::translate("paper", "and %n more", nullptr,
                                                          static_cast<int>(row.boxes.size() - kMostBoxes));
        pen.in(tally.x, end.height, types::kDetail.lineMm, oneLine({{words, types::kDetail}}, tally.inner));
        end.height += types::kDetail.lineMm;
    }
    end.height += 0.8;
    pen.across(end.height - kHairline / 2, kIndent, frame.width);
}

} // namespace

void addRows(std::vector<Row>& out, const papers::TallyRow& row, const Frame& frame) {
    const Tally tally = setTally(row, frame);
    const Pads pads = tightened({2, 2 + kHairline}, tally.content, frame.tight);
    const bool runsOn = tally.here < tally.boxes;
    Row made;
    Pen pen(made);
    made.walk = Row::Walk::On;
    drawCount(pen, row, frame, pads.top);
    drawBoxes(pen, tally.x, pads.top + tally.words + 1.5, row.boxes, 0, tally.here, tally.perLine);
    drawPlant(pen, tally, frame, pads.top, pads.top + tally.content);
    made.height = pads.top + tally.content + (runsOn ? kBoxStep - kBox : pads.bottom);
    if (!runsOn) pen.across(made.height - kHairline / 2, kIndent, frame.width);
    made.keepWithNext = runsOn;
    out.push_back(std::move(made));
    if (runsOn) addMoreBoxes(out, row, tally, frame);
}

void addRows(std::vector<Row>& out, const papers::KeyRow& key, const Frame& frame) {
    constexpr double kBetween = 5;
    double x = 0;
    for (const papers::KeyRow::Item& item : key.items) {
        const double mark = std::max(5.6, widthOf(spansOf(item.mark, types::kDetailStrong)) + 3);
        const TextLine words = oneLine(spansOf(item.meaning, types::kText), frame.width - 24);
        const double width = std::min(mark, 20.0) + 2 + words.width;
        const bool first = &item == &key.items.front();
        if (first || x + width > frame.width) {
            x = 0;
            out.emplace_back();
            out.back().before = first ? 1.6 : 0.4;
            out.back().height = 6.6;
        }
        Pen pen(out.back());
        const double used = drawMark(pen, x, 0.3, item.mark, 20);
        pen.in(x + used + (used > 0 ? 2 : 0), 0, types::kText.lineMm, words);
        x += width + kBetween;
    }
}

namespace {

void drawCell(Pen& pen, const papers::HourStrip::Cell& cell, const QRectF& box, bool last) {
    constexpr double kOutline = 0.27;
    Spans spans = spansOf(cell.hour, types::kTextStrong);
    for (Span& span : spansOf(cell.value, types::kText))
        spans.push_back({QStringLiteral("  ") + span.text, span.type});
    const TextLine words = oneLine(spans, box.width() - 5);
    const double shared = last ? 0 : kOutline; // neighbours share their upright
    pen.box(box.adjusted(0, 0, shared, 0), cell.closed ? Fill::Hatch : Fill::White, kOutline, 0);
    const double left = box.left() + 2.9;
    if (cell.closed)
        pen.box({left - 0.8, box.top() + 1.8, words.width + 1.6, box.height() - 3.6}, Fill::White, 0, 0);
    pen.in(left, box.top(), box.height(), words);
}

/// The words under the strip: the first hour's note under its pointer, the closed ones' from their bar on.
double drawNotes(Pen& pen, const papers::HourStrip& strip, double top, double cellWidth, double barX,
                 const Frame& frame) {
    double height = 0;
    const TextLine open = oneLine(spansOf(strip.openNote, types::kDetail), frame.width * 0.45);
    double end = 0;
    if (open.width > 0) {
        const double x = between(2, strip.noteAt * cellWidth, std::max(2.0, frame.width - open.width - 4));
        pen.sign(Sign::Pointer, {x - 1.7, top + 1.0, 3.4, 2.7});
        pen.in(x + 2.9, top, types::kDetail.lineMm, open);
        end = x + 2.9 + open.width + 3;
        height = types::kDetail.lineMm;
    }
    const TextLine closed = oneLine(spansOf(strip.closedNote, types::kDetail), frame.width);
    if (closed.width > 0) {
        double x = std::min(barX, frame.width - closed.width);
        const bool below = x < end;
        if (below) x = std::min(barX, frame.width - closed.width);
        pen.in(std::max(0.0, x), below ? top + height : top, types::kDetail.lineMm, closed);
        height = below ? height + types::kDetail.lineMm : types::kDetail.lineMm;
    }
    return height;
}

} // namespace

void addRows(std::vector<Row>& out, const papers::HourStrip& strip, const Frame& frame) {
    constexpr double kHeight = 9.8;
    const int count = static_cast<int>(std::min<std::size_t>(strip.cells.size(), 24));
    if (count == 0) return;
    const int perRow = std::min(count, std::max(1, static_cast<int>(frame.width / 22)));
    const double cellWidth = frame.width / perRow;
    Row row;
    Pen pen(row);
    double barX = 0;
    bool barred = false;
    for (int i = 0; i < count; ++i) {
        const QRectF box((i % perRow) * cellWidth, (i / perRow) * kHeight, cellWidth, kHeight);
        const auto& cell = strip.cells[static_cast<std::size_t>(i)];
        drawCell(pen, cell, box, i + 1 == count || (i + 1) % perRow == 0);
        if (!cell.closed || barred) continue;
        barred = true;
        barX = box.left();
        const double x = std::max(kThick, box.left());
        pen.box({x - kThick, box.top(), 2 * kThick, kHeight}, Fill::Black, 0, 0);
    }
    row.height = ((count + perRow - 1) / perRow) * kHeight;
    row.height += drawNotes(pen, strip, row.height + 0.5, cellWidth, barX, frame) + 1;
    row.before = 1;
    out.push_back(std::move(row));
}

} // namespace withy::paper
