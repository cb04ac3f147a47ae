// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/run_up_desk.h"

#include "ui/common/copy_rows.h"
#include "ui/common/figure.h"
#include "ui/common/run_up_timeline.h"
#include "ui/common/step_delegate.h"
#include "ui/common/text_label.h"
#include "ui/common/widget_parts.h"
#include "ui/logic/edits/run_up_edits.h"
#include "ui/logic/models/run_up_words_of_step.h"
#include "ui/logic/models/week_steps.h"
#include "ui/paint/spacing.h"

#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>
#include <QTableView>
#include <QVBoxLayout>

namespace withy::ui {

RunUpDesk::RunUpDesk(Workbench& bench, BoardStyle style, const QString& name, QWidget* parent)
    : QWidget(parent)
    , bench_(bench)
    , timeline_(new RunUpTimeline(style, name + QStringLiteral(".timeline")))
    , model_(new WeekStepsModel(this))
    , list_(new QTableView) {
    model_->setBench(&bench);
    list_->setModel(model_);
    list_->setObjectName(name + QStringLiteral(".steps"));
    list_->setAccessibleName(style == BoardStyle::week ? tr("Steps of the week") : tr("Steps of the run-up"));
    list_->setItemDelegate(new StepDelegate(list_));
    list_->setEditTriggers(QAbstractItemView::EditKeyPressed | QAbstractItemView::DoubleClicked |
                           QAbstractItemView::AnyKeyPressed);
    list_->setSelectionBehavior(QAbstractItemView::SelectRows);
    copiesRows(list_, [this](const QString& words) { Q_EMIT told(words); });
    list_->setShowGrid(false);
    list_->setTabKeyNavigation(false);
    list_->setWordWrap(true);
    list_->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list_->verticalHeader()->hide();
    list_->horizontalHeader()->setHighlightSections(false);
    list_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    list_->horizontalHeader()->setSectionResizeMode(WeekStepsModel::stepColumn, QHeaderView::Stretch);
    list_->setColumnHidden(WeekStepsModel::bookingColumn, style == BoardStyle::days);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(grid(3));
    column->addWidget(timeline_);
    column->addWidget(makeBar(name));
    column->addWidget(list_);
    connect(list_, &QTableView::activated, this, &RunUpDesk::follow);
    connect(list_->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& now) {
                if (filling_) return;
                const auto* row = model_->stepAt(now.row());
                choose(row ? row->step : std::nullopt);
            });
    connect(timeline_, &RunUpTimeline::chose, this, &RunUpDesk::choose);
    connect(timeline_, &RunUpTimeline::ticked, this, [this](std::size_t i) {
        choose(i);
        tick();
    });
    connect(timeline_, &RunUpTimeline::letGo, this, [this](std::size_t i) {
        const auto* s = step(i);
        if (s && said(*s).pinned) bench_.take(edits::letStepGo(bench_.season(), s->key));
    });
    connect(timeline_, &RunUpTimeline::moved, this, [this](std::size_t i, int minutes) {
        // By what it is, not by its number: a new plan may have come while it was moved.
        const auto* s = key_ ? stepOf(*key_) : step(i);
        if (s) bench_.take(edits::keepStepAt(bench_.season(), s->key, toFive(s->from + Minutes(minutes))));
    });
}

QLayout* RunUpDesk::makeWords() {
    title_ = new TextLabel(TypeRole::strong);
    when_ = new TextLabel(TypeRole::text);
    limits_ = new TextLabel(TypeRole::caption);
    minutes_ = new FigureButton;
    working_ = new WorkingPanel;
    working_->hide();
    connect(minutes_, &FigureButton::opened, working_, &QWidget::setVisible);
    connect(working_, &WorkingPanel::leadTo, this, &RunUpDesk::leadTo);
    auto* words = new QVBoxLayout;
    words->setSpacing(grid(0.5));
    auto* first = new QHBoxLayout;
    first->addWidget(title_);
    first->addWidget(minutes_);
    first->addStretch(1);
    words->addLayout(first);
    words->addWidget(when_);
    words->addWidget(limits_);
    return words;
}

QWidget* RunUpDesk::makeBar(const QString& name) {
    bar_ = new QWidget;
    bar_->setObjectName(name + QStringLiteral(".bar"));
    tick_ = namedButton(tr("Tick o&ff"), "");
    keep_ = namedButton(tr("&Keep it here"), "");
    tick_->setObjectName(name + QStringLiteral(".tick_button"));
    keep_->setObjectName(name + QStringLiteral(".keep_button"));
    took_ = new QSpinBox;
    took_->setObjectName(name + QStringLiteral(".took"));
    took_->setRange(0, 6000);
    took_->setSpecialValueText(tr("not timed"));
    took_->setSuffix(tr(" min"));
    took_->setAccessibleName(tr("Minutes it took"));
    who_ = new QComboBox;
    who_->setObjectName(name + QStringLiteral(".who"));
    who_->setAccessibleName(tr("Who does it"));
    auto* tookLabel = new QLabel(tr("Took (&min)"));
    tookLabel->setBuddy(took_);
    auto* whoLabel = new QLabel(tr("B&y"));
    whoLabel->setBuddy(who_);
    onGrid(took_, &QWidget::setMinimumWidth, 27);
    onGrid(who_, &QWidget::setMinimumWidth, 32);
    auto* all = new QVBoxLayout(bar_);
    all->setContentsMargins(0, 0, 0, 0);
    all->setSpacing(grid(2));
    all->addLayout(makeWords());
    all->addWidget(working_);
    auto* row = new QHBoxLayout;
    row->setSpacing(grid(2));
    for (auto* w : std::initializer_list<QWidget*>{tick_, tookLabel, took_, keep_, whoLabel, who_})
        row->addWidget(w);
    row->addStretch(1);
    all->addLayout(row);
    connect(model_, &WeekStepsModel::refused, &bench_, &Workbench::refused);
    connect(tick_, &QPushButton::clicked, this, &RunUpDesk::tick);
    connect(keep_, &QPushButton::clicked, this, &RunUpDesk::keep);
    connect(who_, &QComboBox::activated, this, &RunUpDesk::giveTo);
    connect(took_, &QSpinBox::editingFinished, this, [this] {
        const auto* s = chosen();
        if (!s || !said(*s).done || said(*s).minutes.value_or(Minutes(0)).value == took_->value()) return;
        bench_.take(edits::setStepMinutes(bench_.season(), s->key,
                                          took_->value() > 0 ? std::optional(Minutes(took_->value()))
                                                             : std::nullopt));
    });
    return bar_;
}

const plan::RunUpStep* RunUpDesk::step(std::optional<std::size_t> index) const {
    const auto& runUp = bench_.plan().runUp;
    return index && runUp && *index < runUp->steps.size() ? &runUp->steps[*index] : nullptr;
}

/// What the grower has said of it by now: the plan may not have heard yet.
model::StepMark RunUpDesk::said(const plan::RunUpStep& step) const {
    const auto* mark = edits::markOf(bench_.season(), step.key);
    return mark ? *mark : model::StepMark{};
}

const plan::RunUpStep* RunUpDesk::stepOf(const plan::StepKey& key) const {
    const auto& runUp = bench_.plan().runUp;
    if (!runUp) return nullptr;
    for (const auto& s : runUp->steps)
        if (s.key == key) return &s;
    return nullptr;
}

const plan::RunUpStep* RunUpDesk::chosen() const {
    const auto* s = step(timeline_->chosen());
    return s && key_ == s->key ? s : nullptr;
}

void RunUpDesk::showBooking(Id<model::Booking> booking) {
    filling_ = true;
    model_->show(stepsOfBooking(bench_.season(), bench_.plan(), booking));
    show(bookingBoard(bench_.season(), bench_.plan(), booking, bench_.today()));
}

void RunUpDesk::showWeek(Day monday) {
    filling_ = true;
    model_->show(stepsOfWeek(bench_.season(), bench_.plan(), monday));
    show(weekBoard(bench_.season(), bench_.plan(), monday, bench_.today()));
}

/// What was chosen is chosen again, wherever it stands now.
void RunUpDesk::show(Board board) {
    timeline_->choose(std::nullopt);
    timeline_->setBoard(std::move(board));
    setRows();
    std::optional<std::size_t> again;
    const auto& runUp = bench_.plan().runUp;
    for (std::size_t i = 0; key_ && runUp && i < runUp->steps.size(); ++i)
        if (runUp->steps[i].key == *key_ && model_->rowOf(i) >= 0) again = i;
    choose(again);
}

void RunUpDesk::choose(std::optional<std::size_t> index) {
    filling_ = true;
    timeline_->choose(step(index) ? index : std::nullopt); // settles what was being moved, under its own key
    const auto* s = step(index);
    key_ = s ? std::optional(s->key) : std::nullopt;
    if (s)
        if (const int row = model_->rowOf(*index); row >= 0 && list_->currentIndex().row() != row)
            list_->setCurrentIndex(model_->index(row, WeekStepsModel::timeColumn));
    filling_ = false;
    fillBar();
}

void RunUpDesk::fillBar() {
    const auto* s = chosen();
    const auto words = s ? stepWordsOf(bench_.season(), *s) : noStepWords();
    title_->setText(words.title);
    when_->setText(words.when);
    limits_->setText(words.limits);
    fillFigure(s);
    const bool hands = s && s->minutes.value > 0 && bench_.canWrite();
    for (auto* w : std::initializer_list<QWidget*>{tick_, keep_, who_})
        w->setEnabled(hands);
    took_->setEnabled(hands && said(*s).done);
    tick_->setText(s && said(*s).done ? tr("Take the tick o&ff") : tr("Tick o&ff"));
    keep_->setText(s && said(*s).pinned ? tr("&Keep no longer") : tr("&Keep it here"));
    if (!took_->hasFocus())
        took_->setValue(s && said(*s).minutes ? static_cast<int>(said(*s).minutes->value) : 0);
    if (s && !who_->view()->isVisible()) fillWho(*s);
}

void RunUpDesk::fillFigure(const plan::RunUpStep* s) {
    minutes_->setVisible(s && s->minutes.value > 0);
    if (!minutes_->isVisibleTo(this)) {
        minutes_->setChecked(false);
        working_->hide();
        return;
    }
    const auto f = stepFigure(bench_.season(), *s);
    const FigureFacts facts{
        tr("%1 min").arg(f.words),          f.means, f.working, f.leadsTo, f.leadWords, f.lines,
        bench_.season().theSettings().units};
    minutes_->setFacts(facts);
    working_->setFacts(facts);
}

void RunUpDesk::fillWho(const plan::RunUpStep& s) {
    who_->clear();
    int at = 0;
    const auto* mark = edits::markOf(bench_.season(), s.key);
    for (const auto& choice : whoChoices(bench_.season())) {
        if (mark && mark->byHelper && choice.worker && choice.worker->helper == mark->helper)
            at = who_->count();
        who_->addItem(choice.words);
    }
    who_->setCurrentIndex(at);
}

void RunUpDesk::tick() {
    const auto* s = chosen();
    if (!s || s->minutes.value == 0) return;
    const int row = model_->rowOf(*timeline_->chosen());
    const auto index = model_->index(row, WeekStepsModel::doneColumn);
    if (row >= 0)
        model_->setData(index, static_cast<int>(said(*s).done ? Qt::Unchecked : Qt::Checked),
                        Qt::CheckStateRole);
}

void RunUpDesk::keep() {
    const auto* s = chosen();
    if (!s) return;
    bench_.take(said(*s).pinned ? edits::letStepGo(bench_.season(), s->key)
                                : edits::keepStepAt(bench_.season(), s->key, s->from));
}

void RunUpDesk::giveTo(int place) {
    const auto* s = chosen();
    const auto choices = whoChoices(bench_.season());
    if (!s || place < 0 || place >= static_cast<int>(choices.size())) return;
    bench_.take(edits::giveStepTo(bench_.season(), s->key, choices[static_cast<std::size_t>(place)].worker));
}

void RunUpDesk::setRows() {
    list_->clearSpans();
    list_->verticalHeader()->setDefaultSectionSize(tableRow());
    for (int row = 0; row < model_->rowCount(); ++row)
        if (model_->isHead(row)) list_->setSpan(row, WeekStepsModel::stepColumn, 1, 3);
    const int head = list_->horizontalHeader()->sizeHint().height();
    list_->setFixedHeight(head + model_->rowCount() * tableRow() + 2 * list_->frameWidth());
    list_->setVisible(model_->rowCount() > 0);
    bool any = false;
    for (int row = 0; row < model_->rowCount(); ++row)
        any = any || model_->stepAt(row);
    bar_->setVisible(any); // nothing to choose, nothing to do with it
}

void RunUpDesk::follow(const QModelIndex& index) {
    const bool tickable = model_->flags(index) & (Qt::ItemIsUserCheckable | Qt::ItemIsEditable);
    if (tickable) return;
    const auto booking = index.data(WeekStepsModel::BookingRole);
    const auto busy = index.data(WeekStepsModel::BusyRole);
    if (booking.isValid()) Q_EMIT leadTo({model::TableKind::bookings, booking.toLongLong()});
    if (busy.isValid()) Q_EMIT leadTo({model::TableKind::busyHours, busy.toLongLong()});
}

void RunUpDesk::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange || event->type() == QEvent::FontChange) setRows();
}

} // namespace withy::ui
