// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/head_maker.h"

#include <array>
#include <cmath>
#include <numbers>

namespace withy::ui {

namespace {

const QColor axisGreen = QColor::fromRgb(0x6F8A58);

double cubic(double k, double a, double b, double c, double d) {
    const double m = 1 - k;
    return m * m * m * a + 3 * k * m * m * b + 3 * k * k * m * c + k * k * k * d;
}

} // namespace

void HeadMaker::umbel() {
    constexpr int n = 13;
    for (int i = 0; i < n; ++i) {
        const double a = -std::numbers::pi * (0.1 + 0.8 * i / (n - 1));
        const double r = 0.5 * (0.86 + 0.14 * std::sin(i * 2.1));
        const double x = std::cos(a) * r;
        const double y = std::sin(a) * r * 0.72;
        QPainterPath ray(QPointF(0, 0));
        ray.quadTo(x * 0.35, y * 0.7, x, y);
        stroke(ray, QColor::fromRgb(0x8A8350), 1.1);
        for (int k = 0; k < 5; ++k)
            ellipse(x + std::cos(k * 1.257) * 0.045, y + std::sin(k * 1.257) * 0.035, 0.028, 0.028, bloom_,
                    edge_, 0.5);
    }
}

void HeadMaker::plate() {
    QPainterPath stalks(QPointF(0, 0.5));
    stalks.lineTo(0, 0);
    for (const double x : {-0.32, 0.32}) {
        stalks.moveTo(0, 0.4);
        stalks.lineTo(x, 0.02);
    }
    stroke(stalks, axisGreen, 1.4);
    constexpr std::array counts{5, 9, 13, 15};
    for (int r = 3; r >= 0; --r) {
        const int n = counts[static_cast<std::size_t>(r)];
        for (int i = 0; i < n; ++i) {
            const double a = -std::numbers::pi * (i + 0.5) / n;
            const double reach = 0.13 + 0.1 * r;
            ellipse(std::cos(a) * reach, std::sin(a) * reach * 0.55 + 0.06, 0.062, 0.062,
                    (i + r) % 3 ? bloom_ : lighter(bloom_, 0.2), edge_, 0.7);
        }
    }
}

void HeadMaker::pea() {
    QPainterPath axis(QPointF(0, 0));
    axis.cubicTo(0.02, -0.5, 0.06, -0.9, 0.04, -1.3);
    stroke(axis, axisGreen, 1.8);

    struct Flower {
        double x, y, size, degrees;
    };

    for (const auto& f : {Flower{-0.3, -0.45, 1, -24}, Flower{0.32, -0.72, 0.92, 20},
                          Flower{-0.2, -1.05, 0.8, -14}, Flower{0.12, -1.38, 0.6, 8}}) {
        QTransform place;
        place.translate(f.x * 0.82, f.y);
        place.rotate(f.degrees);
        place.scale(0.55 * f.size, 0.55 * f.size);
        QPainterPath standard(QPointF(0, 0.34));
        standard.cubicTo(-0.75, 0.3, -0.78, -0.42, -0.22, -0.5);
        standard.quadTo(0, -0.36, 0.22, -0.5);
        standard.cubicTo(0.78, -0.42, 0.75, 0.3, 0, 0.34);
        shape(place.map(standard), bloom_, edge_);
        for (const double x : {-1.0, 1.0}) {
            QPainterPath wing(QPointF(0, 0.36));
            wing.cubicTo(x * 0.42, 0.3, x * 0.34, -0.16, x * 0.05, -0.12);
            wing.closeSubpath();
            shape(place.map(wing), lighter(bloom_, 0.3), edge_, 0.8);
        }
        shape(place.map(ellipseAt(0, 0.16, 0.09, 0.17)), lighter(bloom_, 0.6), edge_, 0.6);
    }
}

void HeadMaker::leaf() {
    upright(1.45, 2);
    out_.back().line = darker(bloom_, 0.2);
    for (int i = 0; i < 7; ++i) {
        const double y = -0.1 - i * 0.2;
        const double size = 0.5 - 0.035 * i;
        const double reach = (i % 2 ? 1 : -1) * size;
        QPainterPath blade(QPointF(0, y));
        blade.cubicTo(reach * 0.25, y - size * 0.42, reach * 0.8, y - size * 0.5, reach, y - size * 0.42);
        blade.cubicTo(reach * 0.85, y - size * 0.02, reach * 0.4, y + size * 0.1, 0, y);
        shape(blade, i % 3 ? bloom_ : lighter(bloom_, 0.12), edge_);
        QPainterPath vein(QPointF(0, y));
        vein.quadTo(reach * 0.5, y - size * 0.22, reach * 0.85, y - size * 0.38);
        stroke(vein, lighter(bloom_, 0.3), 0.6);
    }
    QPainterPath tip(QPointF(0, -1.4));
    tip.cubicTo(-0.12, -1.54, -0.05, -1.68, 0, -1.74);
    tip.cubicTo(0.08, -1.66, 0.12, -1.54, 0, -1.4);
    shape(tip, lighter(bloom_, 0.1), edge_);
}

void HeadMaker::trail(bool left) {
    const double side = left ? -1 : 1;
    QPainterPath stem(QPointF(0, 0));
    stem.cubicTo(side * 0.35, -0.35, side * 0.8, 0.1, side * 0.7, 1.25);
    stroke(stem, darker(bloom_, 0.3), 1.6);
    for (int i = 1; i <= 10; ++i) {
        const double k = i / 10.0;
        const double x = side * cubic(k, 0, 0.35, 0.8, 0.7);
        const double y = cubic(k, 0, -0.35, 0.1, 1.25);
        const double size = 0.25 - 0.1 * k;
        const double reach = side * (i % 2 ? 1 : -1) * size;
        QPainterPath blade(QPointF(x, y));
        blade.cubicTo(x + reach * 0.1, y - size * 0.7, x + reach * 0.8, y - size * 0.8, x + reach * 1.05,
                      y + size * 0.05);
        blade.cubicTo(x + reach * 0.9, y + size * 0.6, x + reach * 0.3, y + size * 0.6, x, y);
        shape(blade, i % 3 ? bloom_ : lighter(bloom_, 0.16), edge_, 0.8);
    }
}

} // namespace withy::ui
