// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/piece_painter.h"

#include <QRect>
#include <QString>

namespace withy::ui {

/// The numbers round a piece drawn from the side: rule, heights of its tiers, spread, water, lift.
/// Hairlines with slashed ends; labels keep clear of one another.
class Elevation {
public:
    Elevation(const PieceDrawing& piece, const QRectF& boundsMm, const QRect& room, const Palette& palette);

    [[nodiscard]] double scale() const { return scale_; }

    /// Where the middle of the piece's foot stands.
    [[nodiscard]] QPointF foot() const { return foot_; }

    void paintBehind(QPainter& painter) const;  ///< ground, rule and the tiers' dotted lines
    void paintNumbers(QPainter& painter) const; ///< everything that stands in front

private:
    struct Mark {
        double mm; ///< above the ground
        QString words;
    };

    [[nodiscard]] std::vector<Mark> tiers() const;

    [[nodiscard]] double y(double mm) const { return foot_.y() - mm * scale_; }

    /// Above the ground: the rim, or the tie of a bound piece.
    [[nodiscard]] double rim() const;
    [[nodiscard]] bool hasTiers() const;
    void paintRuleAtLeft(QPainter& painter) const;
    void upright(QPainter& painter, double x, double from, double to, const QColor& colour) const;
    void level(QPainter& painter, double from, double to, double y, const QColor& colour) const;
    void paintSpread(QPainter& painter) const;
    void paintHeight(QPainter& painter) const;
    void paintWater(QPainter& painter) const;
    void paintLift(QPainter& painter) const;

    const PieceDrawing& piece_;
    QRectF mm_;
    QRect room_;
    Palette palette_;
    double scale_ = 1;
    QPointF foot_;
};

/// The same in a sentence, for those who cannot see the drawing.
QString elevationWords(const PieceDrawing& piece);

} // namespace withy::ui
