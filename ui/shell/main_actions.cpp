// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/action_finder.h"
#include "ui/shell/find_targets.h"
#include "ui/shell/help_window.h"
#include "ui/shell/main_window.h"
#include "ui/shell/menus.h"
#include "ui/shell/season_view.h"

#include <QMenuBar>
#include <QStackedWidget>

namespace withy::ui {

void MainWindow::addOwnActions() {
    addSeasonActions();
    addEditActions();
    addViewActions();
    actions_.add({"help.page", tr("&Explain this page"), QKeySequence(Qt::Key_F1)}, [this] { help(); });
    ownActions_ = actions_.all().size();
    fillMenus(*menuBar(), actions_);
    showHistory();
}

void MainWindow::addSeasonActions() {
    actions_.add({"season.new", tr("&Begin another season…")}, [this] { showWelcome(); });
    actions_.add({"season.open", tr("&Open a season…"), QKeySequence::Open}, [this] { door_.askAndOpen(); });
    actions_.add({"season.copy", tr("&Keep a copy as…"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_S)},
                 [this] {
                     if (view_) door_.saveCopy(bench());
                 });
    actions_.add({"season.demo", tr("Open the &demo season")}, [this] { door_.openDemo(); });
    actions_.add({"season.quit", tr("&Quit"), QKeySequence(Qt::CTRL | Qt::Key_Q)}, [this] { close(); });
}

void MainWindow::addEditActions() {
    actions_.add({"edit.undo", tr("&Undo"), QKeySequence::Undo}, [this] { step(&Workbench::undo); });
    actions_.add({"edit.redo", tr("&Redo"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z)},
                 [this] { step(&Workbench::redo); });
    actions_.add(
        {"edit.finder", tr("&Find an action…"), QKeySequence(Qt::CTRL | Qt::Key_K),
         tr("Find any action, booking, design or plant by typing")},
        [this] {
            if (!finder_)
                finder_ = new ActionFinder(
                    actions_,
                    [this] { return view_ ? findTargets(*view_) : std::vector<ActionFinder::Target>{}; },
                    this);
            finder_->open();
        });
}

void MainWindow::addViewActions() {
    actions_.add({"view.light", tr("&Light")}, [this] { look_.setTheme(ThemeChoice::light); });
    actions_.add({"view.dark", tr("&Dark")}, [this] { look_.setTheme(ThemeChoice::dark); });
    actions_.add({"view.system", tr("As the &computer")},
                 [this] { look_.setTheme(ThemeChoice::asTheComputer); });
    actions_.add({"view.larger", tr("L&arger text"), QKeySequence::ZoomIn},
                 [this] { look_.setTextPercent(look_.textPercent() + 10); });
    actions_.add({"view.smaller", tr("&Smaller text"), QKeySequence::ZoomOut},
                 [this] { look_.setTextPercent(look_.textPercent() - 10); });
    actions_.add({"view.usual", tr("&Usual text"), QKeySequence(Qt::CTRL | Qt::Key_0)},
                 [this] { look_.setTextPercent(100); });
}

void MainWindow::help() {
    if (!help_) help_ = new HelpWindow(this);
    const auto* place = view_ && stack_->currentWidget() == view_ ? view_->current() : nullptr;
    help_->open(place ? place->helpPage() : QStringLiteral("first-run"));
}

} // namespace withy::ui
