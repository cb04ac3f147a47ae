// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/view_settings.h"

#include "ui/common/style.h"

#include <QApplication>
#include <QFont>
#include <QMainWindow>
#include <QSettings>

#include <algorithm>

namespace withy::ui {

namespace {

constexpr auto themeKey = "view/theme";
constexpr auto textKey = "view/text_percent";
constexpr auto geometryKey = "view/geometry";

/// Points of plain text at the size most desktops ask for; another size there scales ours alike.
constexpr double usualSystemPoints = 10;
constexpr double ourPoints = 10.5;

double pointsTheSystemAsksFor() {
    static const double points = QApplication::font().pointSizeF(); // before ours is set
    return points > 0 ? std::clamp(points / usualSystemPoints, 0.9, 2.0) * ourPoints : ourPoints;
}

} // namespace

ViewSettings::ViewSettings() : systemPoints_(pointsTheSystemAsksFor()) {
    const QSettings kept;
    theme_ = static_cast<ThemeChoice>(std::clamp(kept.value(QLatin1String(themeKey), 0).toInt(), 0, 2));
    textPercent_ = std::clamp(kept.value(QLatin1String(textKey), 100).toInt(), 80, 200);
}

void ViewSettings::setTheme(ThemeChoice choice) {
    theme_ = choice;
    QSettings().setValue(QLatin1String(themeKey), static_cast<int>(choice));
    apply();
}

void ViewSettings::setTextPercent(int percent) {
    textPercent_ = std::clamp(percent, 80, 200);
    QSettings().setValue(QLatin1String(textKey), textPercent_);
    apply();
}

void ViewSettings::apply() const {
    const Theme theme = theme_ == ThemeChoice::asTheComputer ? systemTheme()
                        : theme_ == ThemeChoice::dark        ? Theme::dark
                                                             : Theme::light;
    applyStyle(theme, systemPoints_ * textPercent_ / 100);
}

void ViewSettings::keepWindow(const QMainWindow& window) {
    QSettings().setValue(QLatin1String(geometryKey), window.saveGeometry());
}

void ViewSettings::restoreWindow(QMainWindow& window) {
    window.resize(1280, 800);
    window.restoreGeometry(QSettings().value(QLatin1String(geometryKey)).toByteArray());
}

} // namespace withy::ui
