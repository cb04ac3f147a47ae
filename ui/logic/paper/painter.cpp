// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/paper/painter.h"

#include <QPainter>
#include <QPainterPath>
#include <QTextLayout>

#include <array>

namespace withy::paper {
namespace {

constexpr double D = kDotsPerMm;

QPointF dots(QPointF mm) {
    return mm * D;
}

QRectF dots(const QRectF& mm) {
    return {mm.topLeft() * D, mm.size() * D};
}

QColor colourOf(Ink ink) {
    if (ink == Ink::White) return Qt::white;
    return ink == Ink::Grey ? QColor(0x55, 0x55, 0x55) : QColor(Qt::black);
}

QPen lineOf(double widthMm, const QColor& colour = Qt::black) {
    QPen pen(colour, widthMm * D);
    pen.setCapStyle(Qt::FlatCap);
    pen.setJoinStyle(Qt::MiterJoin);
    return pen;
}

void draw(QPainter& painter, const TextOp& op) {
    painter.setPen(colourOf(op.ink));
    const auto layout = layoutOf(op.line);
    const QTextLine line = layout->lineAt(0);
    if (!line.isValid()) return;
    if (!op.upwards) return layout->draw(&painter, dots(op.at) - QPointF(0, line.ascent()));
    painter.save();
    painter.translate(dots(op.at));
    painter.rotate(-90);
    layout->draw(&painter, QPointF(0, -line.ascent()));
    painter.restore();
}

void draw(QPainter& painter, const PathOp& op) {
    QPen pen = op.line > 0 ? lineOf(op.line) : QPen(Qt::NoPen);
    pen.setCapStyle(Qt::RoundCap);
    pen.setJoinStyle(Qt::RoundJoin);
    painter.setPen(pen);
    painter.setBrush(op.fill == Fill::Black   ? QBrush(Qt::black)
                     : op.fill == Fill::White ? QBrush(Qt::white)
                                              : QBrush(Qt::NoBrush));
    painter.drawPath(QTransform::fromScale(D, D).map(op.path));
}

void draw(QPainter& painter, const LineOp& op) {
    if (op.dash == Dash::Solid) {
        painter.setPen(lineOf(op.width));
        painter.drawLine(dots(op.from), dots(op.to));
        return;
    }
    painter.setPen(Qt::NoPen);
    painter.setBrush(Qt::black);
    for (double y : dotHeights(op.from.y(), op.to.y()))
        painter.drawEllipse(dots(QPointF(op.from.x(), y)), op.width * 0.6 * D, op.width * 0.6 * D);
}

void hatch(QPainter& painter, const QRectF& rect) {
    constexpr double kWidth = 0.3;
    painter.setPen(lineOf(kWidth, QColor(0xAA, 0xAA, 0xAA)));
    for (const auto& [from, to] : hatchLines(rect.adjusted(kWidth, kWidth, -kWidth, -kWidth)))
        painter.drawLine(dots(from), dots(to));
}

void draw(QPainter& painter, const BoxOp& op) {
    const double half = op.line / 2;
    const QRectF edge = dots(op.rect.adjusted(half, half, -half, -half));
    painter.setPen(Qt::NoPen);
    if (op.fill == Fill::Black || op.fill == Fill::White) {
        painter.setBrush(op.fill == Fill::Black ? Qt::black : Qt::white);
        painter.drawRoundedRect(edge, op.radius * D, op.radius * D);
    }
    if (op.fill == Fill::Hatch) hatch(painter, op.rect);
    if (op.line <= 0) return;
    painter.setPen(lineOf(op.line));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(edge, op.radius * D, op.radius * D);
}

void draw(QPainter& painter, const DiscOp& op) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(Qt::black);
    painter.drawEllipse(dots(op.centre), op.radius * D, op.radius * D);
}

/// A triangle with a stroke and a point in it, drawn on a grid of 16.
void drawCaution(QPainter& painter, const QRectF& rect) {
    const double unit = rect.width() / 16 * D;
    const QPointF at = dots(rect.topLeft());
    auto on = [&](double x, double y) { return at + QPointF(x, y) * unit; };
    QPen pen(Qt::black, 1.5 * unit);
    pen.setJoinStyle(Qt::RoundJoin);
    pen.setCapStyle(Qt::RoundCap);
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    const std::array corners{on(8, 1.6), on(15, 14.4), on(1, 14.4)};
    painter.drawPolygon(corners.data(), static_cast<int>(corners.size()));
    painter.drawLine(on(8, 6), on(8, 9.6));
    painter.setPen(Qt::NoPen);
    painter.setBrush(Qt::black);
    painter.drawEllipse(on(8, 12.1), 0.95 * unit, 0.95 * unit);
}

void draw(QPainter& painter, const SignOp& op) {
    if (op.sign == Sign::Caution) return drawCaution(painter, op.rect);
    const QRectF rect = dots(op.rect);
    const std::array corners{QPointF(rect.center().x(), rect.top()), rect.bottomRight(), rect.bottomLeft()};
    painter.setPen(Qt::NoPen);
    painter.setBrush(Qt::black);
    painter.drawPolygon(corners.data(), static_cast<int>(corners.size()));
}

} // namespace

void drawPage(QPainter& painter, const Page& page, double dotsPerMm) {
    painter.save();
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    painter.scale(dotsPerMm / D, dotsPerMm / D);
    for (const Op& op : page.ops)
        std::visit([&](const auto& any) { draw(painter, any); }, op);
    painter.restore();
}

} // namespace withy::paper
