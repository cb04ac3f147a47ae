// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QMainWindow;

namespace withy::ui {

enum class ThemeChoice { asTheComputer, light, dark };

/// How the window looks on this computer: theme, size of text, place and size. Not part of a season.
class ViewSettings {
public:
    ViewSettings();

    [[nodiscard]] ThemeChoice theme() const { return theme_; }

    [[nodiscard]] int textPercent() const { return textPercent_; }

    void setTheme(ThemeChoice choice);
    /// 80 to 200, of the size the computer asks for.
    void setTextPercent(int percent);
    /// Dresses the program by what is chosen.
    void apply() const;

    static void keepWindow(const QMainWindow& window);
    static void restoreWindow(QMainWindow& window);

private:
    ThemeChoice theme_;
    int textPercent_;
    double systemPoints_;
};

} // namespace withy::ui
