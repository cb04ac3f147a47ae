// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diary/week_page.h"

#include "ui/common/text_label.h"
#include "ui/common/widget_parts.h"
#include "ui/diary/step_delegate.h"
#include "ui/logic/answers/diary_answers.h"
#include "ui/logic/format.h"
#include "ui/paint/spacing.h"
#include "ui/shell/actions.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace withy::ui {

namespace {

/// The week of today, or the nearest of the season.
Day firstWeek(const Workbench& bench) {
    const auto& s = bench.season().theSettings();
    return weekOf(std::clamp(bench.today().value_or(s.firstDay), s.firstDay, s.lastDay));
}

} // namespace

WeekPage::WeekPage(Workbench& bench, QWidget* parent)
    : SubPage(bench, parent)
    , monday_(firstWeek(bench))
    , model_(new WeekStepsModel(this))
    , view_(new QTableView)
    , week_(new TextLabel(TypeRole::strong))
    , tools_(new QWidget(this)) {
    auto* tools = new QHBoxLayout(tools_);
    tools->setContentsMargins(0, 0, 0, 0);
    tools->setSpacing(grid(2));
    auto* earlier = namedButton(tr("Ea&rlier"), "diary.week.earlier_button");
    auto* later = namedButton(tr("&Later"), "diary.week.later_button");
    auto* now = namedButton(tr("&This week"), "diary.week.now_button");
    for (auto* w : std::initializer_list<QWidget*>{week_, earlier, now, later})
        tools->addWidget(w);
    connect(earlier, &QPushButton::clicked, this, [this] { showWeek(monday_ - 7); });
    connect(later, &QPushButton::clicked, this, [this] { showWeek(monday_ + 7); });
    connect(now, &QPushButton::clicked, this, [this] { showWeek(firstWeek(bench_)); });

    view_->setModel(model_);
    view_->setObjectName(QStringLiteral("diary.week.steps"));
    view_->setAccessibleName(tr("Steps of the week"));
    view_->setItemDelegate(new StepDelegate(view_));
    view_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    view_->setSelectionBehavior(QAbstractItemView::SelectRows);
    view_->setSelectionMode(QAbstractItemView::SingleSelection);
    view_->setShowGrid(false);
    view_->setTabKeyNavigation(false);
    view_->setWordWrap(true);
    view_->verticalHeader()->hide();
    view_->horizontalHeader()->setHighlightSections(false);
    view_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    view_->horizontalHeader()->setSectionResizeMode(WeekStepsModel::stepColumn, QHeaderView::Stretch);
    connect(view_, &QTableView::activated, this, &WeekPage::follow);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, grid(2), 0, 0);
    column->addWidget(view_, 1);
    const auto refreshSeen = [this] {
        if (isVisible()) refresh(); // otherwise when it is seen
    };
    connect(&bench, &Workbench::changed, this, refreshSeen);
    connect(&bench, &Workbench::planned, this, refreshSeen);
    refresh();
}

Answer WeekPage::answer() const {
    return weekAnswer(model_->days());
}

void WeekPage::addActions(Actions& actions) {
    actions.add({"diary.week.earlier", tr("Week before")}, [this] {
        Q_EMIT wanted();
        showWeek(monday_ - 7);
    });
    actions.add({"diary.week.later", tr("Week after")}, [this] {
        Q_EMIT wanted();
        showWeek(monday_ + 7);
    });
    actions.add({"diary.week.now", tr("This week")}, [this] {
        Q_EMIT wanted();
        showWeek(firstWeek(bench_));
    });
    actions.add({"diary.week.next_work", tr("Next week with work")}, [this] {
        Q_EMIT wanted();
        showNextWork();
    });
}

void WeekPage::enter() {
    view_->setFocus();
}

QWidget* WeekPage::tools() const {
    return tools_;
}

void WeekPage::showWeek(Day anyDay) {
    monday_ = weekOf(anyDay);
    refresh();
}

void WeekPage::showNextWork() {
    const auto last = bench_.season().theSettings().lastDay;
    for (Day day = monday_ + 7; day <= last + 7; day = day + 7) {
        const auto days = stepsOfWeek(bench_.season(), bench_.plan(), day);
        if (std::any_of(days.begin(), days.end(), [](const WeekDay& d) { return d.work.value > 0; })) {
            showWeek(day);
            return;
        }
    }
    Q_EMIT said(tr("Nothing more to do this season."));
}

void WeekPage::refresh() {
    const int row = view_->currentIndex().row();
    model_->show(stepsOfWeek(bench_.season(), bench_.plan(), monday_));
    week_->setText(tr("Week of %1").arg(shortDay(monday_)));
    spanHeads();
    if (row >= 0 && row < model_->rowCount()) view_->setCurrentIndex(model_->index(row, 0));
    Q_EMIT answerChanged();
}

void WeekPage::spanHeads() {
    view_->clearSpans();
    view_->verticalHeader()->setDefaultSectionSize(tableRow());
    for (int row = 0; row < model_->rowCount(); ++row) {
        if (model_->isHead(row)) view_->setSpan(row, WeekStepsModel::stepColumn, 1, 2);
    }
}

void WeekPage::follow(const QModelIndex& index) {
    const auto booking = index.data(WeekStepsModel::BookingRole);
    const auto busy = index.data(WeekStepsModel::BusyRole);
    if (booking.isValid()) Q_EMIT leadTo({model::TableKind::bookings, booking.toLongLong()});
    if (busy.isValid()) Q_EMIT leadTo({model::TableKind::busyHours, busy.toLongLong()});
}

void WeekPage::showEvent(QShowEvent* event) {
    SubPage::showEvent(event);
    refresh();
}

void WeekPage::changeEvent(QEvent* event) {
    SubPage::changeEvent(event);
    if (event->type() == QEvent::StyleChange || event->type() == QEvent::FontChange) spanHeads();
}

} // namespace withy::ui
