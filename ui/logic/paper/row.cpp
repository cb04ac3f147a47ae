// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/paper/row.h"

#include <algorithm>

namespace withy::paper {

void Pen::at(double x, double y, TextLine line, papers::Align align, Ink ink) {
    if (line.spans.empty()) return;
    const double share = align == papers::Align::Left ? 0 : align == papers::Align::Right ? 1 : 0.5;
    const QPointF start(x - share * line.width, y);
    m_row.ops.push_back(TextOp{start, std::move(line), ink});
}

void Pen::in(double x, double top, double height, TextLine line, papers::Align align, Ink ink) {
    const double y = baselineIn(top, height, line);
    at(x, y, std::move(line), align, ink);
}

double Pen::lines(double x, double top, const std::vector<TextLine>& lines, double lineMm,
                  papers::Align align) {
    double y = top;
    for (const TextLine& line : lines) {
        const double step = stepOf(line, lineMm);
        in(x, y, step, line, align);
        y += step;
    }
    return y - top;
}

void Pen::across(double y, double left, double right, double width) {
    m_row.ops.push_back(LineOp{{left, y}, {right, y}, width});
}

void Pen::box(const QRectF& rect, Fill fill, double line, double radius) {
    m_row.ops.push_back(BoxOp{rect, line, radius, fill});
}

void Pen::disc(QPointF centre, double radius) {
    m_row.ops.push_back(DiscOp{centre, radius});
}

void Pen::sign(Sign sign, const QRectF& rect) {
    m_row.ops.push_back(SignOp{sign, rect});
}

double heightOf(const std::vector<TextLine>& lines, double lineMm) {
    double height = 0;
    for (const TextLine& line : lines)
        height += stepOf(line, lineMm);
    return height;
}

double baselineIn(double top, double height, const TextLine& line) {
    return top + (height - line.ascent - line.descent) / 2 + line.ascent;
}

double between(double least, double value, double most) {
    if (!(value > least)) return least;
    return std::min(value, most);
}

double tightenedAir(double mm, double tight) {
    return mm * (1 - 5 * (1 - tight));
}

Pads tightened(Pads pads, double content, double tight) {
    const double air = pads.top + pads.bottom;
    if (air <= 0) return pads;
    const double wanted = (1 - tight) * (content + air);
    const double left = std::max(0.0, air - wanted);
    return {pads.top * left / air, pads.bottom * left / air};
}

} // namespace withy::paper
