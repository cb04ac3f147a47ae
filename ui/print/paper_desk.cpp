// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/paper_desk.h"

#include "ui/common/segments.h"
#include "ui/common/text_label.h"
#include "ui/logic/papers/paper_names.h"
#include "ui/paint/spacing.h"
#include "ui/print/paper_view.h"
#include "ui/shell/actions.h"

#include <QButtonGroup>
#include <QCheckBox>
#include <QComboBox>
#include <QDateTime>
#include <QHBoxLayout>
#include <QPrintDialog>
#include <QProgressBar>
#include <QPushButton>
#include <QRadioButton>
#include <QScrollArea>
#include <QVBoxLayout>

namespace withy::ui {

PaperDesk::PaperDesk(Workbench& bench, std::vector<PaperKind> kinds, QWidget* parent)
    : QWidget(parent), bench_(bench), kinds_(std::move(kinds)) {
    auto* sides = new QHBoxLayout;
    sides->setSpacing(grid(6));
    sides->addWidget(makeChoices());
    sides->addWidget(makePreview(), 1);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->setSpacing(grid(2));
    all->addLayout(sides, 1);
    all->addWidget(makeProgress());
    connect(&setter_, &PaperSetter::ready, this, &PaperDesk::readyNow);
    connect(&batch_, &PaperBatch::progressed, this, &PaperDesk::progress);
    connect(&batch_, &PaperBatch::finished, this, &PaperDesk::finished);
    connect(&bench_, &Workbench::changed, this, [this] { view_->setDimmed(true); });
    connect(&bench_, &Workbench::planned, this, &PaperDesk::ask);
    connect(view_, &PaperView::scaleChanged, this, &PaperDesk::ask);
    showParts();
}

void PaperDesk::addActions(Actions& actions) {
    actions.add({"paper.print", tr("&Print the paper in view…"), QKeySequence::Print},
                [this] { inView().print(); });
    actions.add({"paper.pdf", tr("Keep the paper as P&DF…"), Qt::CTRL | Qt::SHIFT | Qt::Key_P},
                [this] { inView().keepPdf(); });
    actions.add({"paper.text", tr("Keep the paper as plain &text…")}, [this] { inView().keepText(); });
    actions.add({"paper.booking.all", tr("All papers of this &booking…")}, [this] { keepAll(All::booking); });
    actions.add({"paper.week", tr("All papers of the &week…")}, [this] { keepAll(All::week); });
}

PaperKind PaperDesk::kind() const {
    return kinds_[static_cast<std::size_t>(std::max(0, papers_->checkedId()))];
}

void PaperDesk::choose(PaperKind kind) {
    for (std::size_t i = 0; i < kinds_.size(); ++i)
        if (kinds_[i] == kind) papers_->button(static_cast<int>(i))->setChecked(true);
}

void PaperDesk::setBooking(std::optional<Id<model::Booking>> booking) {
    if (booking != booking_) pending_ = nullptr;
    booking_ = booking;
    ask();
}

void PaperDesk::setDay(std::optional<Day> day) {
    if (day != day_) pending_ = nullptr;
    day_ = day;
    ask();
}

void PaperDesk::enter() {
    if (auto* choice = papers_->checkedButton()) choice->setFocus(Qt::TabFocusReason);
}

std::optional<Day> PaperDesk::dayOf(PaperKind kind) const {
    if (isOfWeek(kind)) return day_;
    const auto chosen = days_->currentData();
    return kind == this->kind() && chosen.isValid() ? std::optional(Day{chosen.toInt()}) : std::nullopt;
}

void PaperDesk::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (stale_) ask();
}

/// Each paper has its own parts, in view or not.
std::set<PaperPart> PaperDesk::ticked(PaperKind kind) const {
    const auto found = ticked_.find(kind);
    return found == ticked_.end() ? usualParts(kind) : found->second;
}

PaperTask PaperDesk::taskOf(PaperKind kind, std::optional<Id<model::Booking>> booking) const {
    return {kind,
            booking,
            size_->current() == 0 ? paper::PaperSize::A4 : paper::PaperSize::Letter,
            ticked(kind),
            bench_.season(),
            bench_.plan(),
            QDateTime::currentDateTime(),
            dayOf(kind),
            bench_.today()};
}

void PaperDesk::ask() {
    stale_ = !isVisible() && !pending_;
    if (stale_) return;
    if (!bench_.planIsCurrent()) return; // the next plan asks again
    const bool there = !needsBooking(kind()) || (booking_ && bench_.season().bookings.find(*booking_));
    if (there) showDays();
    for (auto* button : outputs_)
        button->setEnabled(there);
    empty_->setVisible(!there);
    view_->setVisible(there);
    if (!there) {
        pending_ = nullptr;
        setter_.forget();
        view_->setPaper(nullptr);
        return;
    }
    view_->setDimmed(true);
    const auto task = taskOf(kind(), booking_);
    setter_.ask(task, view_->dotsPerMm(task.size, isLandscape(task.kind)));
}

PaperDesk& PaperDesk::inView() {
    for (auto* desk : window()->findChildren<PaperDesk*>()) {
        if (desk->isVisible()) return *desk;
    }
    return *this;
}

void PaperDesk::readyNow() {
    view_->setPaper(setter_.last());
    if (!setter_.trouble().isEmpty()) Q_EMIT refused(setter_.trouble());
    if (!setter_.last()) pending_ = nullptr; // the booking is gone: nothing is asked later
    if (!pending_) return;
    const auto then = std::exchange(pending_, nullptr);
    then(*setter_.last());
}

void PaperDesk::withPaper(std::function<void(const SetPaper&)> then) {
    if (!isVisible()) Q_EMIT wanted(); // which tells it the booking
    if (needsBooking(kind()) && !booking_) {
        Q_EMIT refused(chooseBookingFirst());
        return;
    }
    pending_ = std::move(then);
    ask(); // always anew, so that the foot says when it was printed
}

void PaperDesk::print() {
    withPaper([this](const SetPaper& set) {
        auto printer = printerFor(set.layout.paper);
        auto* choose = new QPrintDialog(printer.get(), this);
        choose->setObjectName(QStringLiteral("paper.printer"));
        choose->setAttribute(Qt::WA_DeleteOnClose);
        connect(choose, &QPrintDialog::finished, this, [this, printer, layout = set.layout](int result) {
            if (result != QDialog::Accepted) return;
            printPaper(*printer, layout) ? Q_EMIT said(sentToPrinter()) : Q_EMIT refused(printerRefused());
        });
        choose->open();
    });
}

void PaperDesk::keepPdf() {
    withPaper([this](const SetPaper& set) {
        chooseFile(tr("Keep as PDF"), QStringLiteral("pdf"), tr("PDF (*.pdf)"),
                   [this, set](const QString& path) {
                       const QString why = writePaperPdf(path, set, QDateTime::currentDateTime());
                       why.isEmpty() ? Q_EMIT said(keptAs(path)) : Q_EMIT refused(why);
                   });
    });
}

void PaperDesk::keepText() {
    withPaper([this](const SetPaper& set) {
        chooseFile(tr("Keep as plain text"), QStringLiteral("txt"), tr("Plain text (*.txt)"),
                   [this, set](const QString& path) {
                       const QString why = writePaperText(path, set);
                       why.isEmpty() ? Q_EMIT said(keptAs(path)) : Q_EMIT refused(why);
                   });
    });
}

std::vector<PaperTask> PaperDesk::tasksOf(All all) const {
    std::vector<PaperTask> out;
    const auto* booking = booking_ ? bench_.season().bookings.find(*booking_) : nullptr;
    if (!booking) return out;
    const auto ids = all == All::booking ? std::vector{*booking_}
                                         : bookingsOfWeek(bench_.season(), booking->eventStart.day);
    // Of every day, whichever is chosen for the paper in view.
    for (const auto id : ids)
        for (const auto kind : kinds_)
            if (needsBooking(kind)) {
                out.push_back(taskOf(kind, id));
                out.back().day.reset();
            }
    if (all == All::week)
        for (const auto kind : kinds_)
            if (isOfWeek(kind)) out.push_back(taskOf(kind, booking_));
    return out;
}

void PaperDesk::keepAll(All all) {
    if (!isVisible()) Q_EMIT wanted();
    if (!booking_) {
        Q_EMIT refused(chooseBookingFirst());
        return;
    }
    chooseFolder([this, all](const QString& folder) {
        if (batch_.isBusy()) {
            Q_EMIT refused(stillWriting());
            return;
        }
        bench_.waitForPlan(); // a batch must not leave with an older plan
        if (!bench_.planIsCurrent()) return Q_EMIT refused(noPlan());
        auto tasks = tasksOf(all);
        batchFolder_ = folder;
        batchSize_ = static_cast<int>(tasks.size());
        if (!batch_.toFolder(std::move(tasks), folder)) Q_EMIT refused(stillWriting());
    });
}

void PaperDesk::printAll(All all) {
    if (!isVisible()) Q_EMIT wanted();
    if (!booking_) {
        Q_EMIT refused(chooseBookingFirst());
        return;
    }
    const auto size = size_->current() == 0 ? paper::PaperSize::A4 : paper::PaperSize::Letter;
    auto printer = printerFor(size);
    auto* choose = new QPrintDialog(printer.get(), this);
    choose->setObjectName(QStringLiteral("paper.printer"));
    choose->setAttribute(Qt::WA_DeleteOnClose);
    connect(choose, &QPrintDialog::finished, this, [this, printer, all](int result) {
        if (result != QDialog::Accepted) return;
        if (batch_.isBusy()) {
            Q_EMIT refused(stillWriting());
            return;
        }
        bench_.waitForPlan();
        if (!bench_.planIsCurrent()) return Q_EMIT refused(noPlan());
        auto tasks = tasksOf(all);
        batchFolder_.clear();
        batchSize_ = static_cast<int>(tasks.size());
        if (!batch_.toPrinter(std::move(tasks), printer)) Q_EMIT refused(stillWriting());
    });
    choose->open();
}

void PaperDesk::progress(int done, int all, const QString& name) {
    progressRow_->show();
    bar_->setRange(0, all);
    bar_->setValue(done);
    progressWords_->setText(batchProgress(done, all, name));
}

void PaperDesk::finished(int written, const QString& trouble) {
    progressRow_->hide();
    if (!trouble.isEmpty()) Q_EMIT refused(trouble);
    if (trouble.isEmpty()) Q_EMIT said(batchDone(written, batchSize_, batchFolder_));
}

} // namespace withy::ui
