// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/palette.h"

#include <QFont>
#include <QPointF>
#include <QString>

class QPainter;

/// The rule at the left of a drawing to scale.
namespace withy::ui {

/// A round length (1, 2 or 5 times a power of ten millimetres) that fits, and its ticks.
struct RuleLength {
    double mm = 0;   ///< nought: not even a millimetre fits
    double tick = 0; ///< millimetres between ticks
};

RuleLength ruleLength(double scale, double heightPx);
/// "20 cm", "1 m", "5 mm".
QString ruleWords(double mm);
/// Upwards from `foot`; the words stand right of its top.
void paintRule(QPainter& painter, QPointF foot, double scale, double heightPx, const Palette& palette,
               const QFont& font);

} // namespace withy::ui
