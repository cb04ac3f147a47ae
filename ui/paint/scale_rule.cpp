// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/scale_rule.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QLocale>
#include <QPainter>

#include <cmath>

namespace withy::ui {

RuleLength ruleLength(double scale, double heightPx) {
    if (!(scale > 0) || !(heightPx > 0)) return {};
    const double most = heightPx / scale;
    if (most < 1) return {};
    const double power = std::pow(10, std::floor(std::log10(most)));
    const double step = most / power >= 5 ? 5 : most / power >= 2 ? 2 : 1;
    return {step * power, step * power / (step == 2 ? 4 : 5)};
}

QString ruleWords(double mm) {
    const auto number = [](double n) { return QLocale(QLocale::English).toString(n, 'g', 4); };
    if (mm >= 1000) return QCoreApplication::translate("ScaleRule", "%1 m").arg(number(mm / 1000));
    if (mm >= 10) return QCoreApplication::translate("ScaleRule", "%1 cm").arg(number(mm / 10));
    return QCoreApplication::translate("ScaleRule", "%1 mm").arg(number(mm));
}

void paintRule(QPainter& painter, QPointF foot, double scale, double heightPx, const Palette& palette,
               const QFont& font) {
    const auto rule = ruleLength(scale, heightPx);
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
    painter.drawText(QPointF(foot.x() + 11, top + metrics.capHeight() / 2), ruleWords(rule.mm));
    painter.restore();
}

} // namespace withy::ui
