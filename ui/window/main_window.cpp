// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/main_window.h"

#include "ui/logic/edits.h"
#include "ui/logic/format.h"
#include "ui/window/bookings_page.h"
#include "ui/window/designs_page.h"
#include "ui/window/paper_dialog.h"

#include <QAction>
#include <QDateTime>
#include <QScreen>
#include <QStatusBar>
#include <QTabWidget>
#include <QToolBar>

namespace withy::ui {

MainWindow::MainWindow(std::unique_ptr<Workbench> bench) : bench_(std::move(bench)) {
    setWindowTitle(tr("Withy, %1").arg(text(bench_->season().theSettings().seasonName)));
    bookings_ = new BookingsPage(*bench_);
    designs_ = new DesignsPage(*bench_);
    places_ = new QTabWidget;
    places_->addTab(bookings_, tr("&Bookings"));
    places_->addTab(designs_, tr("&Designs"));
    setCentralWidget(places_);
    addActions();
    for (auto* page : {static_cast<QWidget*>(bookings_), static_cast<QWidget*>(designs_)})
        page->setContentsMargins(8, 8, 8, 8);
    connect(bookings_, &BookingsPage::refused, this,
            [this](const QString& s) { statusBar()->showMessage(s); });
    connect(designs_, &DesignsPage::refused, this, [this](const QString& s) { statusBar()->showMessage(s); });
    connect(bench_.get(), &Workbench::changed, this, &MainWindow::showHistory);
    showHistory();
    const QSize wanted = fontMetrics().averageCharWidth() * QSize(170, 106);
    resize(wanted.boundedTo(screen()->availableSize() - QSize(40, 60)));
}

MainWindow::~MainWindow() {
    delete takeCentralWidget(); // the pages look at the workbench, so they go first
}

void MainWindow::addActions() {
    auto* bar = addToolBar(tr("Actions"));
    bar->setMovable(false);
    auto add = [&](const QString& words, const QString& id, const QKeySequence& keys, auto&& then) {
        auto* action = bar->addAction(words);
        action->setObjectName(id);
        action->setShortcut(keys);
        action->setToolTip(words + QStringLiteral(" (") + keys.toString(QKeySequence::NativeText) +
                           QLatin1Char(')'));
        connect(action, &QAction::triggered, this, then);
        return action;
    };
    add(tr("New booking"), QStringLiteral("booking.new"), Qt::CTRL | Qt::Key_N, [this] {
        places_->setCurrentWidget(bookings_);
        bookings_->newBooking();
    });
    add(tr("New design"), QStringLiteral("design.new"), Qt::CTRL | Qt::SHIFT | Qt::Key_N, [this] {
        places_->setCurrentWidget(designs_);
        designs_->newDesign();
    });
    undo_ = add(tr("Undo"), QStringLiteral("edit.undo"), QKeySequence::Undo,
                [this] { statusBar()->showMessage(bench_->undo()); });
    redo_ = add(tr("Redo"), QStringLiteral("edit.redo"), QKeySequence::Redo,
                [this] { statusBar()->showMessage(bench_->redo()); });
    add(tr("Prep sheet"), QStringLiteral("paper.prep"), QKeySequence::Print,
        [this] { showPaper(PaperKind::prepSheet); });
    add(tr("Booking summary"), QStringLiteral("paper.booking"), Qt::CTRL | Qt::Key_B,
        [this] { showPaper(PaperKind::bookingSummary); });
    add(tr("Season's orders"), QStringLiteral("paper.orders"), Qt::CTRL | Qt::Key_O,
        [this] { showPaper(PaperKind::seasonOrders); });
}

void MainWindow::showHistory() {
    undo_->setEnabled(bench_->canUndo());
    redo_->setEnabled(bench_->canRedo());
    undo_->setToolTip(bench_->canUndo() ? tr("Undo: %1").arg(edits::inWords(bench_->undoName()))
                                        : tr("Nothing to undo"));
    redo_->setToolTip(bench_->canRedo() ? tr("Redo: %1").arg(edits::inWords(bench_->redoName()))
                                        : tr("Nothing to redo"));
}

void MainWindow::showPaper(PaperKind kind) {
    const auto booking = bookings_->chosen();
    if (needsBooking(kind) && (!booking || !bench_->season().bookings.find(*booking))) {
        statusBar()->showMessage(tr("Choose a booking first."));
        return;
    }
    bench_->waitForPlan();
    PaperDialog(paperOf(kind, {bench_->season(), bench_->plan(), booking, QDateTime::currentDateTime()}),
                paperSizeOf(bench_->season()), this)
        .exec();
}

} // namespace withy::ui
