// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/words.h"
#include "ui/paint/palette.h"

#include <QFont>
#include <QPointF>
#include <QString>

class QPainter;

/// The rule at the left of a drawing to scale.
namespace withy::ui {

/// A round length that fits (1, 2 or 5 times a power of ten millimetres; 1, 2, 3 or 6 inches or 1, 2, 5, 10
/// or 20 feet), and its ticks.
struct RuleLength {
    double mm = 0;   ///< nought: not even a millimetre fits
    double tick = 0; ///< millimetres between ticks
};

RuleLength ruleLength(double scale, double heightPx, model::UnitSystem units = model::UnitSystem::metric);
/// "20 cm", "1 m", "5 mm"; "6 in", "2 ft".
QString ruleWords(double mm, model::UnitSystem units = model::UnitSystem::metric);
/// Upwards from `foot`; the words stand right of its top.
void paintRule(QPainter& painter, QPointF foot, double scale, double heightPx, const Palette& palette,
               const QFont& font, model::UnitSystem units);

} // namespace withy::ui
