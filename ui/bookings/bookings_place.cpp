// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/bookings_place.h"

#include "ui/bookings/booking_list.h"
#include "ui/bookings/booking_page.h"
#include "ui/bookings/cutting/cutting_day.h"
#include "ui/common/field_edit.h"
#include "ui/logic/edits/booking_edits.h"
#include "ui/logic/format.h"
#include "ui/logic/models/booking_list_model.h"
#include "ui/logic/season_looks.h"
#include "ui/paint/spacing.h"
#include "ui/shell/actions.h"

#include <QAction>
#include <QEvent>
#include <QFrame>
#include <QHBoxLayout>
#include <QMenu>
#include <QResizeEvent>
#include <QStackedWidget>

#include <algorithm>

namespace withy::ui {

BookingsPlace::BookingsPlace(Workbench& bench, QWidget* parent)
    : Place(bench, parent)
    , pages_(new QStackedWidget)
    , both_(new QWidget)
    , list_(new BookingList(bench))
    , line_(new QFrame)
    , page_(new BookingPage(bench))
    , more_(new QMenu(this)) {
    line_->setProperty("look", QStringLiteral("upright"));
    page_->setMenu(more_);
    auto* row = new QHBoxLayout(both_);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(0);
    pages_->addWidget(both_);
    auto* all = new QHBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(pages_);
    row->addWidget(list_);
    row->addWidget(line_);
    row->addWidget(page_, 1);
    connect(list_, &BookingList::chose, this, [this](qint64 id) { show(Id<model::Booking>(id)); });
    connect(list_, &BookingList::newAsked, this, &BookingsPlace::newBooking);
    connect(list_, &BookingList::findAsked, this, &BookingsPlace::find);
    connect(list_, &BookingList::left, this, [this] {
        finding_ = false;
        arrange();
        page_->enter();
    });
    connect(page_, &BookingPage::newAsked, this, &BookingsPlace::newBooking);
    connect(page_, &BookingPage::demoAsked, this, &BookingsPlace::openDemo);
    connect(page_, &BookingPage::wanted, this, &BookingsPlace::comeForward);
    connect(page_, &BookingPage::refused, this, &Place::refused);
    connect(page_, &BookingPage::said, this, &Place::said);
    connect(page_, &BookingPage::leadTo, this, [this](const model::Ref& ref) {
        if (!goTo(ref)) Q_EMIT leadTo(ref);
    });
    connect(&bench_, &Workbench::changed, this, &BookingsPlace::afterChange);
    arrange();
    if (const auto id = first()) choose(*id);
}

std::optional<Id<model::Booking>> BookingsPlace::first() const {
    if (const auto listed = list_->model().neighbour(std::nullopt, 1)) return listed;
    std::optional<Id<model::Booking>> latest;
    LocalTime at;
    for (const auto& b : bench_.season().bookings) {
        if (latest && b.eventStart <= at) continue;
        latest = b.id;
        at = b.eventStart;
    }
    return latest;
}

bool BookingsPlace::take(const model::Edit& edit) {
    const QString trouble = bench_.apply(edit);
    Q_EMIT refused(trouble);
    return trouble.isEmpty();
}

void BookingsPlace::show(std::optional<Id<model::Booking>> id) {
    const bool there = chosen_ && bench_.season().bookings.find(*chosen_);
    if (there && id != chosen_ && !commitFocusedField(page_)) return list_->choose(chosen_);
    chosen_ = id;
    page_->show(id);
    if (atTheCuttingDay()) {
        if (id)
            cutting_->show(*id);
        else
            leaveCuttingDay();
    }
    Q_EMIT shownChanged();
}

std::optional<model::Ref> BookingsPlace::shown() const {
    if (!chosen_) return std::nullopt;
    return model::Ref{model::TableKind::bookings, chosen_->value};
}

void BookingsPlace::choose(Id<model::Booking> id) {
    if (!bench_.season().bookings.find(id)) return;
    list_->model().makeListed(id);
    show(id);
    if (chosen_ == id) list_->choose(id);
}

void BookingsPlace::afterChange() {
    if (chosen_ && bench_.season().bookings.find(*chosen_)) return;
    const auto next = first();
    if (next)
        choose(*next);
    else
        show(std::nullopt);
}

void BookingsPlace::comeForward() {
    auto* go = actions_ && !isVisible() ? actions_->find(QStringLiteral("go.bookings")) : nullptr;
    if (go) go->trigger();
    leaveCuttingDay();
}

void BookingsPlace::openDemo() {
    Q_EMIT demoAsked();
    // Later: another season takes this place away, and it is this place's button that asks.
    if (auto* demo = actions_ ? actions_->find(QStringLiteral("season.demo")) : nullptr)
        QMetaObject::invokeMethod(demo, &QAction::trigger, Qt::QueuedConnection);
}

void BookingsPlace::newBooking() {
    comeForward();
    if (!commitFocusedField(page_)) return;
    const auto& s = bench_.season().theSettings();
    const Day day = std::clamp(bench_.today().value_or(s.firstDay), s.firstDay, s.lastDay);
    Id<model::Booking> made;
    if (!take(edits::newBooking(bench_.season(), utf8(tr("New booking")), day, made))) return;
    finding_ = false;
    arrange();
    choose(made);
    page_->showTab(0);
    page_->editTitle();
}

void BookingsPlace::duplicate() {
    comeForward();
    if (!chosen_ || !commitFocusedField(page_)) return;
    edits::BookingCopy copy;
    if (!take(edits::duplicateBooking(bench_.season(), *chosen_, copy))) return;
    choose(copy.made);
    Q_EMIT said(edits::copyWords(bench_.season(), copy));
}

void BookingsPlace::erase() {
    comeForward();
    const auto* b = chosen_ ? bench_.season().bookings.find(*chosen_) : nullptr;
    if (!b) return;
    const QString title = text(b->title);
    auto next = list_->model().neighbour(chosen_, 1);
    if (!next) next = list_->model().neighbour(chosen_, -1);
    if (!take(edits::eraseBooking(bench_.season(), *chosen_))) return;
    if (next) choose(*next);
    Q_EMIT said(edits::erasedWords(title));
}

void BookingsPlace::hold() {
    comeForward();
    const auto* b = chosen_ ? bench_.season().bookings.find(*chosen_) : nullptr;
    if (!b) return;
    take(edits::setStanding(bench_.season(), b->id, model::Standing::held, bench_.today()));
    goTo({model::TableKind::bookings, chosen_->value});
    page_->showTab(QStringLiteral("brief"));
    if (auto* field = page_->findChild<QWidget*>(QStringLiteral("booking.held_until")))
        field->setFocus(Qt::TabFocusReason);
}

void BookingsPlace::step(int by) {
    comeForward();
    if (const auto next = list_->model().neighbour(chosen_, by)) choose(*next);
}

void BookingsPlace::find() {
    comeForward();
    finding_ = true;
    arrange();
    list_->beginFinding();
}

void BookingsPlace::enter() {
    if (atTheCuttingDay())
        cutting_->enter();
    else if (bench_.season().bookings.empty())
        setFocus();
    else
        list_->enter();
}

void BookingsPlace::addTo(SeasonLook& look) const {
    look.booking = chosen_;
    look.tab = page_->currentTabId();
    look.sort = sortWord(list_->model().choice().sort);
}

void BookingsPlace::lookAsLast(const SeasonLook& look) {
    auto& listed = list_->model();
    if (const auto sort = sortOf(look.sort); sort && *sort != listed.choice().sort) listed.setSort(*sort);
    page_->beginAt(look.tab);
    if (look.booking && listed.rowOf(*look.booking) >= 0) choose(*look.booking);
}

bool BookingsPlace::makeNext() {
    if (page_->makeNextTab()) return true;
    const bool missing = !cutting_;
    cuttingDayPage();
    return missing;
}

void BookingsPlace::arrange() {
    const bool narrow = width() < listWidth() + grid(130);
    const bool whole = narrow && finding_;
    list_->setNarrow(narrow && !whole);
    const int wide = width() < grid(300) ? grid(80) : listWidth();
    if (whole) {
        list_->setMinimumWidth(0);
        list_->setMaximumWidth(QWIDGETSIZE_MAX);
    } else {
        list_->setFixedWidth(narrow ? grid(20) : wide);
    }
    page_->setVisible(!whole);
    line_->setVisible(!whole);
}

void BookingsPlace::resizeEvent(QResizeEvent* event) {
    Place::resizeEvent(event);
    arrange();
}

void BookingsPlace::changeEvent(QEvent* event) {
    Place::changeEvent(event);
    if (event->type() == QEvent::StyleChange && list_) arrange();
}

} // namespace withy::ui
