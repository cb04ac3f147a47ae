// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/head_maker.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace withy::ui {

namespace {

const QColor spireGreen = QColor::fromRgb(0x6F8A58);
const QColor budGreen = QColor::fromRgb(0x9FB07A);
const QColor budGold = QColor::fromRgb(0xCDBB7E);

/// Buds at the tip are still green, the next ones turning.
QColor ripening(const QColor& bloom, int fromTip) {
    if (fromTip < 2) return mixed(bloom, budGreen, 0.62);
    return fromTip < 4 ? mixed(bloom, budGold, 0.28) : bloom;
}

} // namespace

void HeadMaker::upright(double height, double width) {
    QPainterPath axis(QPointF(0, -height));
    axis.lineTo(0, 0);
    stroke(axis, spireGreen, width);
}

void HeadMaker::spike() {
    upright(2.85, 2.4);
    constexpr int n = 10;
    for (int i = 0; i < n; ++i) {
        const double k = 0.28 + 0.72 * i / (n - 1);
        const double y = -2.55 + i * 0.265;
        const double side = i % 2 ? 1 : -1;
        const QColor fill = ripening(bloom_, i);
        for (const double x : {-1.0, 1.0})
            ellipse(x * 0.27 * k, y, 0.25 * k, 0.19 * k, fill, edge_, 0.9, x * 24);
        ellipse(side * 0.06 * k, y + 0.06, 0.21 * k, 0.2 * k, i < 2 ? fill : lighter(fill, 0.22), edge_);
        if (i < 4) continue;
        QPainterPath lip(QPointF(side * 0.06 * k - 0.09 * k, y + 0.08));
        lip.quadTo(side * 0.06 * k, y + 0.08 + 0.09 * k, side * 0.06 * k + 0.09 * k, y + 0.08);
        stroke(lip, edge_, 0.9);
    }
}

void HeadMaker::florets() {
    upright(2.7, 2);
    constexpr int n = 9;
    for (int i = 0; i < n; ++i) {
        const double k = 0.3 + 0.7 * i / (n - 1);
        const double y = -2.5 + i * 0.29;
        const double side = std::array{-1.0, 1.0, 0.1}[static_cast<std::size_t>(i % 3)];
        if (i < 2) {
            ellipse(side * 0.1, y, 0.1, 0.13, mixed(bloom_, budGreen, 0.5), edge_, 0.8);
            continue;
        }
        const auto first = out_.size();
        ring({5, 0.16 * k, 0.12 * k, 0.15 * k, 0.85, static_cast<double>(i)}, bloom_, edge_);
        ellipse(0, 0, 0.055 * k, 0.055 * k, lighter(bloom_, 0.65), edge_, 0.5);
        for (auto j = first; j < out_.size(); ++j)
            out_[j].path.translate(side * 0.24 * k, y);
    }
}

void HeadMaker::nod(double x, double y, double w, double h, double degrees, const QColor& fill, bool open) {
    QPainterPath bell(QPointF(-w * 0.5, 0));
    bell.cubicTo(-w * 0.9, h * 0.5, -w * 1.1, h * 0.75, -w * 1.35, h * 0.92);
    bell.quadTo(0, h * 1.2, w * 1.35, h * 0.92);
    bell.cubicTo(w * 1.1, h * 0.75, w * 0.9, h * 0.5, w * 0.5, 0);
    bell.closeSubpath();
    QTransform place;
    place.translate(x, y);
    place.rotate(degrees);
    shape(place.map(bell), fill, edge_);
    if (open) shape(place.map(ellipseAt(0, h * 0.92, w * 0.85, h * 0.12)), lighter(fill, 0.55), edge_, 0.6);
}

void HeadMaker::bellSpike() {
    upright(3, 2.2);
    constexpr int n = 11;
    for (int i = 0; i < n; ++i) {
        const double k = 0.24 + 0.76 * std::pow(i / (n - 1.0), 0.8);
        const double side = std::array{-1.0, 1.0, 0.0}[static_cast<std::size_t>(i % 3)];
        nod(side * 0.05, -2.95 + i * 0.27, 0.2 * k, 0.5 * k, -side * 42, ripening(bloom_, i), i > 3);
    }
}

void HeadMaker::bell() {
    for (const double side : {-1.0, 1.0}) {
        QPainterPath arch(QPointF(0, 0.35));
        arch.cubicTo(side * 0.02, -0.3, side * 0.12, -0.5, side * 0.26, -0.3);
        stroke(arch, spireGreen, 1.4);
    }
    nod(-0.26, -0.3, 0.17, 0.5, 16, bloom_, true);
    nod(0.26, -0.24, 0.16, 0.46, -18, bloom_, true);
    nod(0.02, -0.5, 0.13, 0.38, -4, lighter(bloom_, 0.12), false);
}

void HeadMaker::plume() {
    upright(1.5, 1.8);
    constexpr int rows = 12;
    for (int i = 0; i < rows; ++i) {
        const double k = (i + 1.0) / rows;
        const double y = -1.82 + i * 0.15;
        const int across = 1 + i * 7 / 12;
        for (int j = 0; j < across; ++j) {
            const double x = across == 1 ? 0 : (-1 + 2.0 * j / (across - 1)) * 0.44 * std::sqrt(k);
            const QColor fill = (2 * i + j) % 3 ? bloom_ : lighter(bloom_, 0.24);
            ellipse(x, y + std::abs(x) * 0.45, 0.072, 0.078, fill, edge_, 0.5);
        }
    }
}

void HeadMaker::grass() {
    QPainterPath axis(QPointF(0, 0));
    axis.cubicTo(0, -0.8, 0.04, -1.5, 0.2, -2);
    stroke(axis, darker(bloom_, 0.25), 1.5);
    for (int i = 0; i < 16; ++i) {
        const double k = i / 15.0;
        const double y = -(0.35 + 1.55 * k);
        const double x = 0.2 * k * k;
        const double side = i % 2 ? 1 : -1;
        const double reach = 0.5 - 0.34 * k;
        const double ex = x + side * reach;
        const double ey = y - reach * 0.35 + reach * 0.25 * (1 - k);
        QPainterPath branch(QPointF(x, y));
        branch.quadTo(x + side * reach * 0.6, y - reach * 0.6, ex, ey);
        stroke(branch, darker(bloom_, 0.15), 0.8);
        for (const double f : {0.55, 0.8, 1.0})
            ellipse(x + (ex - x) * f, y + (ey - y) * f - reach * 0.22 * (1 - f) * 1.4, 0.035, 0.07,
                    f < 1 ? bloom_ : lighter(bloom_, 0.25), edge_, 0.5, side * 28);
    }
}

void HeadMaker::berry() {
    upright(1.05, 1.8);
    constexpr std::array<std::array<double, 2>, 9> at{{{-0.3, -0.4},
                                                       {0.32, -0.5},
                                                       {-0.18, -0.62},
                                                       {0.16, -0.72},
                                                       {-0.32, -0.84},
                                                       {0.3, -0.92},
                                                       {-0.12, -1.02},
                                                       {0.12, -1.14},
                                                       {0, -1.3}}};
    for (const auto& [x, y] : at) {
        QPainterPath stalk(QPointF(0, y + 0.22));
        stalk.quadTo(x * 0.4, y + 0.16, x, y);
        stroke(stalk, spireGreen, 1.1);
    }
    for (const auto& [x, y] : at) {
        ellipse(x, y, 0.13, 0.13, bloom_, edge_);
        ellipse(x - 0.04, y - 0.045, 0.032, 0.025, lighter(bloom_, 0.6), {});
    }
}

} // namespace withy::ui
