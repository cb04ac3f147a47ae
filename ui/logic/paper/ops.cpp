// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/paper/ops.h"

#include <algorithm>
#include <cmath>

namespace withy::paper {
namespace {

QRectF around(const TextOp& op) {
    const double ascent = inkAscent(op.line);
    const double high = ascent + inkDescent(op.line);
    if (op.upwards) return {op.at.x() - ascent, op.at.y() - op.line.width, high, op.line.width};
    return {op.at.x(), op.at.y() - ascent, op.line.width, high};
}

QRectF around(const PathOp& op) {
    const double half = op.line / 2;
    return op.path.boundingRect().adjusted(-half, -half, half, half);
}

QRectF around(const LineOp& op) {
    const double half = op.width / 2;
    const bool across = op.from.y() == op.to.y();
    const QRectF thin = QRectF(op.from, op.to).normalized();
    return across ? thin.adjusted(0, -half, 0, half) : thin.adjusted(-half, 0, half, 0);
}

QRectF around(const BoxOp& op) {
    return op.rect;
}

QRectF around(const DiscOp& op) {
    return {op.centre.x() - op.radius, op.centre.y() - op.radius, 2 * op.radius, 2 * op.radius};
}

QRectF around(const SignOp& op) {
    return op.rect;
}

void move(TextOp& op, QPointF by) {
    op.at += by;
}

void move(LineOp& op, QPointF by) {
    op.from += by;
    op.to += by;
}

void move(BoxOp& op, QPointF by) {
    op.rect.translate(by);
}

void move(DiscOp& op, QPointF by) {
    op.centre += by;
}

void move(PathOp& op, QPointF by) {
    op.path.translate(by);
}

void move(SignOp& op, QPointF by) {
    op.rect.translate(by);
}

} // namespace

QRectF boundsOf(const Op& op) {
    return std::visit([](const auto& any) { return around(any); }, op);
}

Op moved(Op op, QPointF by) {
    std::visit([by](auto& any) { move(any, by); }, op);
    return op;
}

std::vector<std::pair<QPointF, QPointF>> hatchLines(const QRectF& rect) {
    constexpr double kStep = 2.63; // along the edge: 1.86 mm apart, at 45 degrees
    std::vector<std::pair<QPointF, QPointF>> lines;
    for (double x = rect.left() + kStep / 2; x < rect.right() + rect.height(); x += kStep) {
        const double start = std::min(x, rect.right()); // upper end
        const double drop = x - start;
        const double end = std::max(x - rect.height(), rect.left()); // lower end
        lines.emplace_back(QPointF(start, rect.top() + drop), QPointF(end, rect.top() + (x - end)));
    }
    return lines;
}

std::vector<double> dotHeights(double from, double to) {
    constexpr double kPitch = 2.54;
    std::vector<double> heights;
    for (double y = std::ceil(from / kPitch) * kPitch; y <= to; y += kPitch)
        heights.push_back(y);
    return heights;
}

} // namespace withy::paper
