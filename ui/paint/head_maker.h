// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/sketch.h"

namespace withy::ui {

/// Builds one head at diameter 1 with the foot or middle at the origin, y down; bloom_heads places it.
/// Widths of lines are those of a head of 30 px and more.
class HeadMaker {
public:
    HeadMaker(QColor bloom, QColor eye, QColor edge, double turn)
        : bloom_(bloom), eye_(eye), edge_(edge), turn_(turn) {}

    void doubled();
    void layered();
    void daisy();
    void darkEyed();
    void aster();
    void cup();
    void tulip();
    void globe();
    void trumpet();
    void bell();
    void spike();
    void florets();
    void bellSpike();
    void plume();
    void pea();
    void umbel();
    void plate();
    void leaf();
    void trail(bool left);
    void grass();
    void berry();

    Sketch take() { return std::move(out_); }

private:
    struct Ring {
        int petals;
        double radius;
        double rx;
        double ry;
        double squash;
        double from = 0;
        double width = 0.9;
    };

    void ring(const Ring& ring, const QColor& fill, const QColor& edge);
    void ellipse(double cx, double cy, double rx, double ry, const QColor& fill, const QColor& edge,
                 double width = 0.9, double degrees = 0);
    void shape(const QPainterPath& path, const QColor& fill, const QColor& edge, double width = 0.9);
    void stroke(const QPainterPath& path, const QColor& line, double width);
    void upright(double height, double width); ///< the green axis of a spike
    void nod(double x, double y, double w, double h, double degrees, const QColor& fill, bool open);

    [[nodiscard]] QColor eyeOr(QRgb own) const { return eye_.isValid() ? eye_ : QColor::fromRgb(own); }

    QColor bloom_;
    QColor eye_;
    QColor edge_;
    double turn_; ///< radians, turns the rings a little
    Sketch out_;
};

} // namespace withy::ui
