// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/cutting/tally_panel.h"

#include "ui/bookings/cutting/tally_row_view.h"
#include "ui/common/answer_phrases.h"
#include "ui/common/text_label.h"
#include "ui/common/widget_parts.h"
#include "ui/logic/models/cutting_goals.h"
#include "ui/paint/spacing.h"

#include <QHBoxLayout>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace withy::ui {

using edits::TallyCount;

TallyPanel::TallyPanel(Workbench& bench, QWidget* parent)
    : QWidget(parent)
    , bench_(bench)
    , answer_(new AnswerLabel)
    , says_(new TextLabel(TypeRole::text, {}, Ink::osier))
    , sheet_(new QWidget)
    , column_(new QVBoxLayout(sheet_))
    , threw_(namedButton(tr("&Threw away"), "tally.threw_away"))
    , found_(namedButton(tr("&Found in flower"), "tally.found"))
    , foundMenu_(new QMenu(this)) {
    setObjectName(QStringLiteral("tally"));
    answer_->setObjectName(QStringLiteral("tally.answer"));
    says_->setObjectName(QStringLiteral("tally.says"));
    says_->setWordWrap(true);
    says_->hide();
    column_->setContentsMargins(0, 0, 0, 0);
    column_->setSpacing(0);
    column_->addStretch(1);
    scroll_ = scrolledPage(sheet_);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(pageMargin(), grid(3), grid(3), grid(2));
    all->setSpacing(grid(2));
    all->addWidget(answer_);
    all->addWidget(says_);
    all->addWidget(new Rule);
    all->addWidget(scroll_, 1);
    all->addWidget(makeKeys());
    const auto seen = [this] {
        if (isVisible())
            refresh();
        else
            stale_ = true;
    };
    connect(&bench_, &Workbench::changed, this, seen);
    connect(&bench_, &Workbench::planned, this, seen);
}

QWidget* TallyPanel::makeKeys() {
    auto* keys = new QWidget;
    auto* row = new QHBoxLayout(keys);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(grid(2));
    threw_->setCheckable(true);
    threw_->setToolTip(tr("The keys then count what was thrown away"));
    found_->setMenu(foundMenu_);
    found_->setToolTip(tr("A plant that nobody planned on"));
    for (auto* button : {threw_, found_}) {
        onGrid(button, &QWidget::setFixedHeight, 12);
        row->addWidget(button);
    }
    auto* hint =
        new TextLabel(TypeRole::caption,
                      tr("Arrows choose, type the number, Enter. 12+10+8 adds up, +12 comes on top, a "
                         "blank is not a nought."),
                      Ink::caption);
    hint->setWordWrap(true);
    row->addWidget(hint, 1);
    connect(threw_, &QPushButton::toggled, this, &TallyPanel::setThrowing);
    connect(foundMenu_, &QMenu::aboutToShow, this, &TallyPanel::fillFound);
    return keys;
}

void TallyPanel::show(Id<model::Booking> booking) {
    const Day day = cuttingDay(bench_.season(), bench_.plan(), booking, bench_.today());
    if (booking_ == booking) {
        refresh();
        return setDay(day);
    }
    booking_ = booking;
    threw_->setChecked(false);
    says_->hide();
    chosen_ = nullptr;
    day_ = day;
    refresh();
    Q_EMIT dayChanged();
}

void TallyPanel::setDay(Day day) {
    if (day == day_ || !keep()) return;
    day_ = day;
    refresh();
    Q_EMIT dayChanged();
}

void TallyPanel::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (stale_) refresh();
}

edits::Cutting TallyPanel::cutting() const {
    return edits::cuttingOn(bench_.season(), bench_.plan(), *booking_, day_);
}

TallyCount TallyPanel::counting() const {
    return throwing_ ? TallyCount::thrownAway : TallyCount::cut;
}

void TallyPanel::refresh() {
    stale_ = false;
    if (!booking_ || !bench_.season().bookings.find(*booking_)) return;
    const auto rows = tallyRows(bench_.season(), bench_.plan(), *booking_, day_);
    const auto later = tallyLater(bench_.season(), bench_.plan(), *booking_, day_);
    answer_->setPhrases(phrasesOf(tallyAnswer(bench_.season(), rows, later)));
    showRows(rows);
}

TallyRowView* TallyPanel::makeRow() {
    auto* row = new TallyRowView;
    connect(row, &TallyRowView::chosen, this, [this, row] { choose(row); });
    connect(row, &TallyRowView::added, this, [this, row](qint64 stems) { add(row, stems); });
    connect(row, &TallyRowView::kept, this, [this, row](int goOn) { keepRow(row, goOn); });
    connect(row, &TallyRowView::standInAsked, this, [this, row](qint64 slot) {
        take(edits::letStandIn(bench_.season(), *booking_, Id<model::Slot>(slot), row->row().plant));
    });
    return row;
}

/// Rows that stay keep their widgets, so that the keyboard stays where it is.
void TallyPanel::showRows(const std::vector<TallyRow>& rows) {
    std::vector<TallyRowView*> now;
    for (const auto& row : rows) {
        const auto same = std::find_if(rows_.begin(), rows_.end(),
                                       [&](const TallyRowView* v) { return v && v->row() == row; });
        auto* view = same == rows_.end() ? makeRow() : *same;
        if (same != rows_.end()) *same = nullptr;
        const int at = static_cast<int>(now.size());
        if (column_->indexOf(view) != at) column_->insertWidget(at, view);
        view->showRow(row, throwing_);
        now.push_back(view);
    }
    for (auto* gone : rows_) {
        if (!gone) continue;
        if (gone == chosen_) chosen_ = nullptr;
        gone->hide();
        gone->deleteLater();
    }
    rows_ = std::move(now);
    QWidget* before = scroll_;
    for (auto* view : rows_) { // Tab goes down the rows, whenever they were made
        for (auto* part : view->tabOrder()) {
            setTabOrder(before, part);
            before = part;
        }
    }
    if (!rows_.empty()) setTabOrder(before, threw_);
}

void TallyPanel::choose(TallyRowView* row) {
    if (chosen_ == row) return;
    if (chosen_) chosen_->setChosen(false);
    chosen_ = row;
    row->setChosen(true);
    scroll_->ensureWidgetVisible(row, 0, grid(2));
}

bool TallyPanel::take(const edits::TallyStep& step) {
    const QString trouble = step.ok() ? bench_.apply(step.edit) : step.sentence;
    says_->setText(trouble);
    says_->setVisible(!trouble.isEmpty());
    Q_EMIT refused(trouble);
    return trouble.isEmpty();
}

void TallyPanel::add(TallyRowView* row, qint64 stems) {
    choose(row);
    if (row->isTyping() && !keep()) return;
    take(edits::addStems(bench_.season(), cutting(), row->row().patch, counting(), stems));
}

void TallyPanel::keepRow(TallyRowView* row, int goOn) {
    if (row->isTyping()) {
        const auto step =
            edits::typeStems(bench_.season(), cutting(), row->row().patch, counting(), row->typed());
        const bool taken = take(step);
        row->setWrong(!taken);
        if (!taken) return;
        row->putBack();
        refresh();
    }
    const auto at = std::find(rows_.begin(), rows_.end(), row);
    if (goOn == 0 || at == rows_.end()) return;
    const auto to = (at - rows_.begin()) + goOn;
    if (to >= 0 && to < static_cast<std::ptrdiff_t>(rows_.size()))
        rows_[static_cast<std::size_t>(to)]->take();
    else
        row->take();
}

bool TallyPanel::keep() {
    if (!booking_ || !bench_.season().bookings.find(*booking_)) return true; // taken out meanwhile
    for (auto* row : rows_) {
        if (!row->isTyping()) continue;
        keepRow(row, 0);
        if (row->isTyping()) return false;
    }
    return true;
}

bool TallyPanel::stepBack() {
    for (auto* row : rows_) {
        if (!row->isTyping()) continue;
        row->putBack();
        return true;
    }
    if (!throwing_) return false;
    threw_->setChecked(false);
    return true;
}

void TallyPanel::enter() {
    if (rows_.empty()) return found_->setFocus(Qt::TabFocusReason);
    const auto blank = std::find_if(rows_.begin(), rows_.end(), [](auto* r) { return !r->row().cut; });
    (blank == rows_.end() ? rows_.front() : *blank)->take();
}

void TallyPanel::setThrowing(bool throwing) {
    if (!keep()) {
        threw_->setChecked(throwing_);
        return;
    }
    throwing_ = throwing;
    refresh();
    if (chosen_) chosen_->take();
}

void TallyPanel::fillFound() {
    foundMenu_->clear();
    qDeleteAll(foundMenu_->findChildren<QMenu*>(QString(), Qt::FindDirectChildrenOnly));
    if (!booking_) return;
    const auto rows = tallyRows(bench_.season(), bench_.plan(), *booking_, day_);
    auto* others = new QMenu(tr("Other patches"), foundMenu_);
    auto* plants = new QMenu(tr("Plants without a patch"), foundMenu_);
    for (const auto& found : foundChoices(bench_.season(), bench_.plan(), *booking_, rows, day_)) {
        auto* menu = !found.patch ? plants : found.inFlower ? foundMenu_ : others;
        menu->addAction(asTyped(found.words), this, [this, found] { addFound(found); });
    }
    for (auto* menu : {others, plants})
        if (!menu->isEmpty()) foundMenu_->addMenu(menu);
    if (foundMenu_->isEmpty()) foundMenu_->addAction(tr("Every patch is in the tally"))->setEnabled(false);
}

void TallyPanel::addFound(const FoundChoice& found) {
    if (!booking_ || !keep()) return;
    const auto& season = bench_.season();
    const auto step = found.patch ? edits::addFound(season, cutting(), *found.patch)
                                  : edits::addFoundPlant(season, cutting(), found.plant);
    if (!take(step)) return;
    refresh();
    for (auto* row : rows_)
        if (!row->row().planned && !row->row().cut && row->row().plant == found.plant) row->take();
}

} // namespace withy::ui
