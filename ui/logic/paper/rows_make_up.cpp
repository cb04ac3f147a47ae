// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/paper/rows.h"

#include <algorithm>

namespace withy::paper {

namespace {

constexpr double kGroupTick = 6.4;
constexpr double kGroupStep = 7.7;
constexpr double kFoursAir = 2;
constexpr int kTicksAcross = 8;
constexpr int kMostTicks = 160; // more and the row would not fit a page
constexpr Type kSlotCount{Face::Sans, QFont::Black, 24, 8.8};
constexpr Type kCellCount{Face::Sans, QFont::Black, 17, 7.1};
constexpr Type kSlotNumber{Face::Sans, QFont::Bold, 11, 5.08};

QPainterPath pathOf(const papers::Drawing::Shape& shape) {
    using Kind = papers::Drawing::Point::Kind;
    QPainterPath path;
    for (std::size_t i = 0; i < shape.points.size(); ++i) {
        const auto& at = shape.points[i];
        if (at.kind == Kind::move)
            path.moveTo(at.x, at.y);
        else if (at.kind == Kind::line)
            path.lineTo(at.x, at.y);
        else if (i + 2 < shape.points.size()) {
            path.cubicTo(at.x, at.y, shape.points[i + 1].x, shape.points[i + 1].y, shape.points[i + 2].x,
                         shape.points[i + 2].y);
            i += 2;
        }
    }
    return path;
}

Fill fillOf(papers::Drawing::Fill fill) {
    return fill == papers::Drawing::Fill::none    ? Fill::None
           : fill == papers::Drawing::Fill::white ? Fill::White
                                                  : Fill::Black;
}

double ticksWidth() {
    return kTicksAcross * kGroupStep + kFoursAir;
}

/// Boxes in fours, eight to a row; returns the height they take.
double drawTicks(Pen& pen, double x, double top, int pieces) {
    const int drawn = std::min(pieces, kMostTicks);
    for (int i = 0; i < drawn; ++i) {
        const int across = i % kTicksAcross;
        pen.box({x + across * kGroupStep + (across >= kTicksAcross / 2 ? kFoursAir : 0),
                 top + (i / kTicksAcross) * kGroupStep, kGroupTick, kGroupTick});
    }
    double height = (drawn + kTicksAcross - 1) / kTicksAcross * kGroupStep;
    if (pieces > drawn) {
        pen.in(x, top + height, types::kDetail.lineMm,
               oneLine(spansOf("+ " + std::to_string(pieces - drawn), types::kDetail), ticksWidth()));
        height += types::kDetail.lineMm;
    }
    return height;
}

void drawCollar(Row& row, Pen& pen, const papers::PieceGroupRow& group, double x, double top, double room) {
    using Collar = papers::PieceGroupRow::Collar;
    if (group.collar == Collar::none) return;
    const QRectF box(x, top + 0.6, 3.8, 3.8);
    QPainterPath path;
    if (group.collar == Collar::round)
        path.addEllipse(box);
    else
        path.addRect(box);
    row.ops.push_back(PathOp{path, kBoxLine, Fill::White});
    pen.in(x + 5.2, top, types::kDetail.lineMm,
           oneLine(spansOf(group.collarWord, types::kDetail), room - 5.2));
}

/// Counts over their words, as many to a line as fit; returns the height.
double drawCells(Pen& pen, const papers::PieceGroupRow& group, double x, double top, double room) {
    constexpr double kLeast = 13;
    double at = x;
    double y = top;
    for (const auto& cell : group.cells) {
        const TextLine count = oneLine(spansOf(cell.count, kCellCount), 20);
        const TextLine label = oneLine(spansOf(cell.label, types::kDetail), room);
        const double width = std::max({kLeast, label.width + 2.5, count.width + 4});
        if (at > x && at + width > x + room) {
            at = x;
            y += kCellCount.lineMm + types::kDetail.lineMm + 1.5;
        }
        const double middle = at + width / 2;
        if (cell.differs) pen.box({middle - 5, y, 10, kCellCount.lineMm + 0.6}, Fill::Black, 0, 0.8);
        pen.in(middle, y + 0.3, kCellCount.lineMm, count, papers::Align::Centre,
               cell.differs ? Ink::White : Ink::Black);
        pen.in(middle, y + kCellCount.lineMm + 0.8, types::kDetail.lineMm, label, papers::Align::Centre);
        at += width;
    }
    return y - top + kCellCount.lineMm + 0.8 + types::kDetail.lineMm;
}

} // namespace

void drawShapes(Row& row, const papers::Drawing& drawing, QPointF at) {
    for (const auto& shape : drawing.shapes)
        row.ops.push_back(PathOp{pathOf(shape).translated(at), shape.line, fillOf(shape.fill)});
}

void addRows(std::vector<Row>& out, const papers::Drawing& drawing, const Frame& frame) {
    Row row;
    Pen pen(row);

    const double x = std::max(0.0, (frame.width - drawing.width) / 2);
    drawShapes(row, drawing, {x, 0});
    for (const auto& label : drawing.labels) {
        TextLine words =
            oneLine(spansOf(label.words, label.strong ? types::kDetailStrong : types::kDetail), frame.width);
        const double left = x + label.x - label.share * words.width;
        pen.in(left, label.y - types::kDetail.lineMm / 2, types::kDetail.lineMm, std::move(words));
    }
    row.before = 1.5;
    row.height = drawing.height;
    out.push_back(std::move(row));
}

void addRows(std::vector<Row>& out, const papers::SlotRow& slot, const Frame& frame) {
    Row row;
    Pen pen(row);
    const TextLine count = oneLine(spansOf(slot.count, kSlotCount), frame.width * 0.3);
    const double x = 5.5 + std::max(11.0, count.width + 2.5);
    const double inner = frame.width - x;
    Spans title = spansOf(slot.word, types::kTextStrong);
    for (Span& span : spansOf(" " + slot.rest, types::kText))
        title.push_back(span);
    const auto words = breakLines(title, inner, 3);
    const auto detail = breakLines(spansOf(slot.detail, types::kDetail, types::kDetailStrong), inner, 3);
    const double content = std::max(kSlotCount.lineMm, heightOf(words, types::kText.lineMm) +
                                                           heightOf(detail, types::kDetail.lineMm));
    const Pads pads = tightened({1.4, 1.4 + kHairline}, content, frame.tight);
    pen.in(0, pads.top, content, oneLine(spansOf(slot.number, kSlotNumber), 5));
    pen.in(5.5, pads.top, content, count);
    const double y = pads.top + pen.lines(x, pads.top, words, types::kText.lineMm);
    pen.lines(x, y, detail, types::kDetail.lineMm);
    row.height = pads.top + content + pads.bottom;
    pen.across(row.height - kHairline / 2, 0, frame.width);
    out.push_back(std::move(row));
}

void addRows(std::vector<Row>& out, const papers::PieceGroupRow& group, const Frame& frame) {
    Row row;
    Pen pen(row);
    constexpr double kTop = 2.2;
    const TextLine count = oneLine(spansOf(group.count, types::kCount), frame.width * 0.2);
    const double side = count.width + 2.2;
    const double left = std::max(36.0, side + 20);
    const double unitRoom = left - side - 1;
    pen.in(0, kTop, types::kCount.lineMm, count);
    const bool collar = group.collar != papers::PieceGroupRow::Collar::none;
    const double unitTop = collar ? kTop + 0.6 : kTop + (types::kCount.lineMm - types::kText.lineMm) / 2;
    pen.in(side, unitTop, types::kText.lineMm, oneLine(spansOf(group.unit, types::kText), unitRoom));
    drawCollar(row, pen, group, side, kTop + types::kText.lineMm + 0.2, unitRoom);
    const double ticks = frame.width - ticksWidth();
    const double cells = drawCells(pen, group, left, kTop, ticks - left - 4);
    const double boxes = drawTicks(pen, ticks + (kGroupStep - kGroupTick), kTop + 0.3, group.pieces);
    row.height = kTop + std::max({types::kCount.lineMm, cells, boxes}) + 1.8;
    pen.across(row.height - kHairline / 2, 0, frame.width);
    out.push_back(std::move(row));
}

} // namespace withy::paper
