// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/main_window.h"

#include "ui/common/field_edit.h"
#include "ui/common/text_label.h"
#include "ui/common/widget_parts.h"
#include "ui/logic/edits.h"
#include "ui/logic/format.h"
#include "ui/logic/recent_seasons.h"
#include "ui/logic/shell_wording.h"
#include "ui/logic/starting_seasons.h"
#include "ui/paint/spacing.h"
#include "ui/shell/menus.h"
#include "ui/shell/rail.h"
#include "ui/shell/season_view.h"
#include "ui/shell/welcome_page.h"

#include <QCloseEvent>
#include <QFileInfo>
#include <QMenuBar>
#include <QSettings>
#include <QStackedWidget>
#include <QTime>
#include <QVBoxLayout>

#include <utility>

namespace withy::ui {

namespace {

/// A window made before the program is dressed would hand the desktop's font to all that is put into it.
QWidget* onceDressed() {
    ViewSettings().apply();
    return nullptr;
}

} // namespace

MainWindow::MainWindow(std::optional<Day> today)
    : QMainWindow(onceDressed())
    , door_(
          today, [this](auto bench) { showSeason(std::move(bench)); }, this)
    , stack_(new QStackedWidget)
    , notices_(new NoticeBar)
    , kept_(new TextLabel(TypeRole::caption, {}, Ink::second)) {
    setWindowTitle(QStringLiteral("Withy"));
    auto* middle = new QWidget;
    auto* column = new QVBoxLayout(middle);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(stack_, 1);
    column->addWidget(notices_);
    setCentralWidget(middle);
    kept_->setContentsMargins(0, grid(2), grid(4), grid(1));
    kept_->setAlignment(Qt::AlignVCenter | Qt::AlignRight);
    kept_->setObjectName(QStringLiteral("kept"));
    menuBar()->setCornerWidget(kept_);
    auto* name = new TextLabel(TypeRole::name, QStringLiteral("Withy"));
    name->setContentsMargins(grid(4), grid(1), grid(2), grid(1));
    menuBar()->setCornerWidget(name, Qt::TopLeftCorner);
    addOwnActions();
    door_.isOpen = [this](const QString& path) {
        const QString whole = QFileInfo(path).canonicalFilePath();
        const bool open = view_ && bench().canWrite() && whole == bench().path();
        if (open) backToSeason();
        return open;
    };
    connect(&door_, &SeasonDoor::refused, notices_, &NoticeBar::refuse);
    door_.mayLeave = [this] { return mayLeave(); };
    door_.letGo = [this] { letSeasonGo(true); }; // begun afresh: what was there stays among the backups
    door_.isDemo = [this] { return view_ && demoDay(bench().season()).has_value(); };
    connect(&door_, &SeasonDoor::said, notices_, &NoticeBar::say);
    ViewSettings::restoreWindow(*this);
    showTitle();
    startTimer(60'000); // midnight
}

MainWindow::~MainWindow() {
    closeSeason(); // before the actions its places hold
}

Workbench& MainWindow::bench() {
    Q_ASSERT(view_);
    return view_->bench();
}

void MainWindow::makeWelcome() {
    welcome_ = new WelcomePage(QDate::currentDate(), QLocale::system());
    stack_->addWidget(welcome_);
    connect(welcome_, &WelcomePage::beginSeason, &door_, &SeasonDoor::begin);
    connect(welcome_, &WelcomePage::openDemo, &door_, &SeasonDoor::openDemo);
    connect(welcome_, &WelcomePage::openFile, &door_, &SeasonDoor::askAndOpen);
    connect(welcome_, &WelcomePage::openRecent, &door_, &SeasonDoor::open);
}

/// The last backup is made while the view still stands: when it fails, the notice takes its room from it.
void MainWindow::closeSeason() {
    if (!view_) return;
    view_->keepLook();
    bench().waitForFile();
    if (auto* keeper = view_->backups()) keeper->finish();
    delete view_;
    view_ = nullptr;
}

bool MainWindow::mayLeave() {
    const bool kept = commitFocusedField(this);
    if (!view_ || !bench().canWrite() || (bench().waitForFile() && kept)) {
        askedToStay_ = false;
        return true;
    }
    if (std::exchange(askedToStay_, true)) return true;
    backToSeason();
    return false;
}

void MainWindow::showWelcome() {
    if (!mayLeave()) return;
    if (!welcome_) makeWelcome();
    QSettings kept;
    welcome_->setRecent(RecentSeasons(kept).there());
    stack_->setCurrentWidget(welcome_);
    showTitle();
    welcome_->begin();
}

void MainWindow::restore(const store::Backup& backup) {
    if (!mayLeave()) return;
    const QString path = bench().path();
    letSeasonGo(false);
    door_.restore(path, backup);
}

/// The file is about to be another. No last backup when an older one is to be put back: it would be thinned
/// out.
void MainWindow::letSeasonGo(bool lastBackup) {
    view_->keepLook();
    if (auto* keeper = view_->backups()) lastBackup ? keeper->finish() : keeper->leave();
    delete view_;
    view_ = nullptr;
    actions_.keepFirst(ownActions_);
    fillMenus(*menuBar(), actions_);
    showHistory();
    showWelcome();
}

void MainWindow::showSeason(std::unique_ptr<Workbench> bench) {
    if (!mayLeave()) return;
    notices_->clear(); // before the last backup of the one that was open, which may fail and say so
    closeSeason();
    askedToStay_ = false;
    actions_.keepFirst(ownActions_);
    keptAt_ = {};
    QSettings kept;
    RecentSeasons(kept).add(bench->path());
    view_ = new SeasonView(std::move(bench), actions_);
    view_->showPlace(0); // before it is put in the window: it is laid out once
    view_->lookAsLast();
    stack_->addWidget(view_);
    stack_->setCurrentWidget(view_);
    wireSeason();
    fillMenus(*menuBar(), actions_);
    showHistory();
    showTitle();
    view_->current()->enter();
}

void MainWindow::backToSeason() {
    stack_->setCurrentWidget(view_);
    showTitle();
}

void MainWindow::wireSeason() {
    connect(view_, &SeasonView::refused, this, [this](const QString& why) { notices_->refuse(why); });
    connect(view_, &SeasonView::said, this, [this](const QString& words) { notices_->say(words); });
    connect(view_, &SeasonView::placeChanged, this, &MainWindow::backToSeason);
    connect(view_, &SeasonView::complete, this, [this] { fillMenus(*menuBar(), actions_); });
    connect(view_, &SeasonView::restoreWanted, this, &MainWindow::restore, Qt::QueuedConnection);
    frames_.watch(bench());
    connect(&bench(), &Workbench::refused, this, [this](const QString& why) { notices_->refuse(why); });
    connect(&bench(), &Workbench::takenBack, this, [this](const QString& why, bool redo) {
        using Way = NoticeBar::WayOut;
        notices_->refuse(why, redo ? Way{tr("&Redo"), [this] { step(&Workbench::redo); }} : Way{});
    });
    connect(&bench(), &Workbench::changed, this, [this] {
        notices_->clear();
        askedToStay_ = false;
        keptAt_ = QTime::currentTime();
        showHistory();
        showTitle();
    });
    view_->rail().setUndo(actions_.find(QStringLiteral("edit.undo")));
}

void MainWindow::step(QString (Workbench::*way)()) {
    if (!view_ || stack_->currentWidget() != view_) return;
    commitFocusedField(this);
    const auto name = way == &Workbench::undo ? bench().undoName() : bench().redoName();
    const QString trouble = (bench().*way)();
    if (!trouble.isEmpty()) return notices_->refuse(trouble);
    if (!name.key.empty()) notices_->say(way == &Workbench::undo ? undoneWords(name) : redoneWords(name));
}

void MainWindow::showHistory() {
    const bool there = view_ != nullptr;
    auto* undo = actions_.find(QStringLiteral("edit.undo"));
    auto* redo = actions_.find(QStringLiteral("edit.redo"));
    undo->setEnabled(there && bench().canUndo());
    redo->setEnabled(there && bench().canRedo());
    undo->setText(undo->isEnabled() ? tr("&Undo: %1").arg(asTyped(edits::inWords(bench().undoName())))
                                    : tr("&Undo"));
    redo->setText(redo->isEnabled() ? tr("&Redo: %1").arg(asTyped(edits::inWords(bench().redoName())))
                                    : tr("&Redo"));
}

void MainWindow::showTitle() {
    const bool there = view_ && stack_->currentWidget() == view_;
    setWindowTitle(there ? tr("%1 – Withy").arg(seasonWords(bench().season())) : QStringLiteral("Withy"));
    kept_->setText(there ? keptWords(bench().season(), bench().canWrite(), keptAt_, bench().today())
                         : tr("Nothing kept yet"));
    menuBar()->setCornerWidget(kept_); // lays the bar out anew around the longer words
}

void MainWindow::showEvent(QShowEvent* event) {
    QMainWindow::showEvent(event);
    if (!view_ && !welcome_) showWelcome();
}

void MainWindow::closeEvent(QCloseEvent* event) {
    if (!mayLeave()) return event->ignore();
    ViewSettings::keepWindow(*this);
    event->accept();
}

void MainWindow::timerEvent(QTimerEvent*) {
    const QDate now = QDate::currentDate();
    const auto days = clockDay_.daysTo(now); // more than one after a sleep
    clockDay_ = now;
    if (days == 0) return;
    door_.turnDays(static_cast<int>(days));
    if (view_ && bench().today() && !demoDay(bench().season()))
        bench().setToday(*bench().today() + static_cast<int>(days));
}

} // namespace withy::ui
