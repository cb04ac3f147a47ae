// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/scale_rule.h"

#include "core/base/conversion.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QLocale>
#include <QPainter>

#include <cmath>

namespace withy::ui {

namespace {

/// Ticks at whole inches, or halves of one; under a foot rule at three inches or whole feet.
RuleLength ruleInInches(double mostMm) {
    struct Rule {
        double inches, tick;
    };

    constexpr Rule rules[]{{240, 60}, {120, 24}, {60, 12}, {24, 6},  {12, 3},
                           {6, 1},    {3, 0.5},  {2, 0.5}, {1, 0.25}};
    for (const auto& rule : rules) {
        if (rule.inches * millimetresInInch <= mostMm)
            return {rule.inches * millimetresInInch, rule.tick * millimetresInInch};
    }
    return {};
}

} // namespace

RuleLength ruleLength(double scale, double heightPx, model::UnitSystem units) {
    if (!(scale > 0) || !(heightPx > 0)) return {};
    const double most = heightPx / scale;
    if (units == model::UnitSystem::imperial) return ruleInInches(most);
    if (most < 1) return {};
    const double power = std::pow(10, std::floor(std::log10(most)));
    const double step = most / power >= 5 ? 5 : most / power >= 2 ? 2 : 1;
    return {step * power, step * power / (step == 2 ? 4 : 5)};
}

QString ruleWords(double mm, model::UnitSystem units) {
    const auto number = [](double n) { return QLocale(QLocale::English).toString(n, 'g', 4); };
    if (units == model::UnitSystem::imperial) {
        const double inches = mm / millimetresInInch;
        return inches < 12 ? QCoreApplication::translate("ScaleRule", "%1 in").arg(number(inches))
                           : QCoreApplication::translate("ScaleRule", "%1 ft").arg(number(inches / 12));
    }
    if (mm >= 1000) return QCoreApplication::translate("ScaleRule", "%1 m").arg(number(mm / 1000));
    if (mm >= 10) return QCoreApplication::translate("ScaleRule", "%1 cm").arg(number(mm / 10));
    return QCoreApplication::translate("ScaleRule", "%1 mm").arg(number(mm));
}

void paintRule(QPainter& painter, QPointF foot, double scale, double heightPx, const Palette& palette,
               const QFont& font, model::UnitSystem units) {
    const auto rule = ruleLength(scale, heightPx, units);
    if (rule.mm <= 0) return;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(palette.of(Role::edge), 1));
    const double top = foot.y() - rule.mm * scale;
    painter.drawLine(foot, QPointF(foot.x(), top));
    const int ticks = static_cast<int>(std::lround(rule.mm / rule.tick));
    for (int i = 0; i <= ticks; ++i) {
        const double y = foot.y() - i * rule.tick * scale;
        painter.drawLine(QPointF(foot.x(), y), QPointF(foot.x() + (i == ticks ? 8 : 4), y));
    }
    painter.setFont(font);
    painter.setPen(palette.of(Role::ink3));
    const QFontMetricsF metrics(font);
    painter.drawText(QPointF(foot.x() + 11, top + metrics.capHeight() / 2), ruleWords(rule.mm, units));
    painter.restore();
}

} // namespace withy::ui
