// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/head_maker.h"

#include <cmath>
#include <numbers>

namespace withy::ui {

namespace {

constexpr double degreesPerRadian = 180 / std::numbers::pi;

} // namespace

void HeadMaker::ring(const Ring& r, const QColor& fill, const QColor& edge) {
    for (int i = 0; i < r.petals; ++i) {
        const double a = r.from + turn_ + i * 2 * std::numbers::pi / r.petals;
        ellipse(std::cos(a) * r.radius, std::sin(a) * r.radius * r.squash, r.rx, r.ry, fill, edge, r.width,
                a * degreesPerRadian + 90);
    }
}

void HeadMaker::ellipse(double cx, double cy, double rx, double ry, const QColor& fill, const QColor& edge,
                        double width, double degrees) {
    shape(ellipseAt(cx, cy, rx, ry, degrees), fill, edge, width);
}

void HeadMaker::shape(const QPainterPath& path, const QColor& fill, const QColor& edge, double width) {
    out_.push_back({path, fill, edge, width});
}

void HeadMaker::stroke(const QPainterPath& path, const QColor& line, double width) {
    out_.push_back({path, {}, line, width});
}

void HeadMaker::doubled() {
    ring({13, 0.34, 0.105, 0.17, 0.86}, bloom_, edge_);
    ring({11, 0.235, 0.095, 0.14, 0.84, 0.2}, lighter(bloom_, 0.1), edge_);
    ring({8, 0.14, 0.08, 0.11, 0.82, 0.1}, lighter(bloom_, 0.2), edge_);
    ring({5, 0.06, 0.06, 0.075, 0.8, 0.4}, lighter(bloom_, 0.3), edge_);
}

void HeadMaker::layered() {
    const QColor eye = eyeOr(0xD9B23C);
    ring({14, 0.34, 0.1, 0.18, 0.62}, bloom_, edge_);
    ring({11, 0.22, 0.09, 0.14, 0.58, 0.15}, lighter(bloom_, 0.14), edge_);
    const auto first = out_.size();
    ring({9, 0.1, 0.05, 0.07, 0.6, 0.2, 0.7}, eye, darker(eye));
    ellipse(0, 0, 0.07, 0.05, QColor::fromRgb(0x7A4A24), {});
    for (auto i = first; i < out_.size(); ++i)
        out_[i].path.translate(0, -0.05);
}

void HeadMaker::daisy() {
    const QColor eye = eyeOr(0xE2B93F);
    ring({8, 0.29, 0.15, 0.23, 0.6, 0.3}, bloom_, edge_);
    ring({12, 0.05, 0.05, 0.06, 0.6, 0, 0.6}, eye, darker(eye));
}

void HeadMaker::darkEyed() {
    const QColor eye = eyeOr(0x3B2418);
    ring({12, 0.31, 0.095, 0.21, 0.62, 0.2}, bloom_, edge_);
    ellipse(0, -0.05, 0.14, 0.115, eye, darker(eye, 0.6), 0.8);
}

void HeadMaker::aster() {
    const QColor eye = eyeOr(0xD9B23C);
    ring({19, 0.31, 0.055, 0.19, 0.7, 0.1, 0.7}, bloom_, edge_);
    ring({11, 0.06, 0.05, 0.06, 0.7, 0, 0.6}, eye, darker(eye));
    ellipse(0, 0, 0.07, 0.05, darker(eye, 0.2), {});
}

void HeadMaker::cup() {
    ring({7, 0.29, 0.19, 0.21, 0.82, 0.22}, bloom_, edge_);
    ring({6, 0.19, 0.17, 0.18, 0.8, 0.5}, lighter(bloom_, 0.12), edge_);
    ring({5, 0.1, 0.13, 0.14, 0.8, 0.1}, lighter(bloom_, 0.24), edge_);
    QPainterPath curl(QPointF(-0.1, -0.04));
    curl.quadTo(0, -0.16, 0.09, -0.04);
    curl.quadTo(0.03, 0.06, -0.05, -0.01);
    stroke(curl, edge_, 0.9);
    QPainterPath left(QPointF(-0.47, 0.02));
    left.cubicTo(-0.46, 0.34, -0.22, 0.46, 0.05, 0.43);
    left.cubicTo(0.02, 0.22, -0.24, 0.2, -0.47, 0.02);
    shape(left, bloom_, edge_);
    QPainterPath right(QPointF(0.47, 0));
    right.cubicTo(0.48, 0.3, 0.28, 0.45, -0.06, 0.44);
    right.cubicTo(0.04, 0.2, 0.26, 0.18, 0.47, 0);
    shape(right, lighter(bloom_, 0.06), edge_);
}

void HeadMaker::tulip() {
    QPainterPath back(QPointF(-0.1, -0.58));
    back.cubicTo(-0.34, -0.34, -0.3, 0.2, 0, 0.4);
    back.cubicTo(0.3, 0.2, 0.34, -0.34, 0.1, -0.58);
    back.quadTo(0, -0.5, -0.1, -0.58);
    shape(back, darker(bloom_, 0.1), edge_);
    for (const double x : {-1.0, 1.0}) {
        QPainterPath side(QPointF(x * 0.3, -0.5));
        side.cubicTo(x * 0.5, -0.15, x * 0.44, 0.42, 0, 0.46);
        side.cubicTo(x * 0.1, 0.2, x * 0.12, -0.2, x * 0.3, -0.5);
        shape(side, bloom_, edge_);
    }
    QPainterPath front(QPointF(0, -0.44));
    front.cubicTo(-0.26, -0.16, -0.24, 0.3, 0, 0.46);
    front.cubicTo(0.24, 0.3, 0.26, -0.16, 0, -0.44);
    shape(front, lighter(bloom_, 0.2), edge_);
    QPainterPath vein(QPointF(0, -0.26));
    vein.lineTo(0, 0.3);
    stroke(vein, bloom_, 0.8);
}

void HeadMaker::globe() {
    ellipse(0, 0, 0.47, 0.45, darker(bloom_, 0.12), edge_);
    for (const auto& [n, r, tint] :
         {std::tuple{14, 0.37, 0.0}, std::tuple{10, 0.24, 0.1}, std::tuple{5, 0.1, 0.22}})
        ring({n, r, 0.075, 0.095, 0.95, r, 0.7}, lighter(bloom_, tint), edge_);
}

void HeadMaker::trumpet() {
    ring({6, 0.27, 0.13, 0.24, 0.72, 0.26}, bloom_, edge_);
    const QColor tube = eye_.isValid() ? eye_ : lighter(bloom_, 0.25);
    QPainterPath bowl(QPointF(-0.12, 0.12));
    bowl.cubicTo(-0.16, -0.02, -0.24, -0.08, -0.22, -0.14);
    bowl.lineTo(0.22, -0.14);
    bowl.cubicTo(0.24, -0.08, 0.16, -0.02, 0.12, 0.12);
    bowl.quadTo(0, 0.18, -0.12, 0.12);
    shape(bowl, tube, edge_);
    ellipse(0, -0.14, 0.22, 0.085, lighter(tube, 0.25), edge_);
    ellipse(0, -0.135, 0.11, 0.04, darker(tube, 0.25), {});
}

} // namespace withy::ui
