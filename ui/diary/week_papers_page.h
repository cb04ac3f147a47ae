// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/sub_page.h"

namespace withy::ui {

class PaperDesk;
class TextLabel;

/// The papers of a week: its board, a sheet for each helper; and the season's calendar file.
class WeekPapersPage : public SubPage {
    Q_OBJECT

public:
    explicit WeekPapersPage(Workbench& bench, QWidget* parent = nullptr);

    [[nodiscard]] Answer answer() const override;
    void addActions(Actions& actions) override;
    void enter() override;
    [[nodiscard]] QWidget* tools() const override;

    void showWeek(Day anyDay);

    [[nodiscard]] Day monday() const { return monday_; }

    [[nodiscard]] PaperDesk& desk() const { return *desk_; }

    /// The sentence that says why not, or an empty one.
    QString writeCalendarTo(const QString& path) const;

private:
    void turnTo(Day monday);
    void askAndWriteCalendar();

    Day monday_;
    PaperDesk* desk_;
    TextLabel* week_;
    QWidget* tools_;
    bool turned_ = false; ///< to a week that somebody chose
};

} // namespace withy::ui
