// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/shell/actions.h"
#include "ui/shell/held_frames.h"
#include "ui/shell/season_door.h"
#include "ui/shell/view_settings.h"

#include <QDate>
#include <QMainWindow>
#include <QTime>

#include <memory>

class QStackedWidget;

namespace withy::ui {

class ActionFinder;
class HelpWindow;
class SeasonView;
class TextLabel;
class WelcomePage;

/// Arranges: the welcome page or a season, the notices, the menus. What happens in a place is the
/// place's own affair.
class MainWindow : public QMainWindow {
    Q_OBJECT

public:
    explicit MainWindow(std::optional<Day> today);
    ~MainWindow() override;

    void showWelcome();
    void showSeason(std::unique_ptr<Workbench> bench);
    void backToSeason(); ///< from the first page; precondition: there is one
    /// Closes the season, puts the backup in its place and shows that.
    void restore(const withy::store::Backup& backup);

    /// Precondition: a season is shown.
    [[nodiscard]] Workbench& bench();

    [[nodiscard]] SeasonView* view() { return view_; }

    [[nodiscard]] SeasonDoor& door() { return door_; }

    [[nodiscard]] Actions& actions() { return actions_; }

    [[nodiscard]] NoticeBar& notices() { return *notices_; }

    [[nodiscard]] ViewSettings& viewSettings() { return look_; }

protected:
    void showEvent(QShowEvent* event) override;
    void closeEvent(QCloseEvent* event) override;
    void timerEvent(QTimerEvent* event) override;

private:
    void makeWelcome();
    /// Keeps what is being typed. What cannot be kept stays on screen with its sentence, once: who leaves
    /// again without a change in between leaves it.
    bool mayLeave();
    void letSeasonGo(bool lastBackup);
    void closeSeason();
    void addOwnActions();
    void addSeasonActions();
    void addEditActions();
    void addViewActions();
    void wireSeason();
    void showHistory();
    void showTitle();
    void step(QString (Workbench::*way)());
    void help();

    Actions actions_{this};
    ViewSettings look_;
    SeasonDoor door_;
    HeldFrames frames_;
    QStackedWidget* stack_;
    WelcomePage* welcome_ = nullptr; ///< made when first shown
    SeasonView* view_ = nullptr;
    NoticeBar* notices_;
    TextLabel* kept_;
    ActionFinder* finder_ = nullptr;
    HelpWindow* help_ = nullptr;
    std::size_t ownActions_ = 0;
    bool askedToStay_ = false;
    QDate clockDay_ = QDate::currentDate();
    QTime keptAt_; ///< of the last change in this session
};

} // namespace withy::ui
