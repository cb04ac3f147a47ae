// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/booking_list.h"
#include "ui/bookings/booking_page.h"
#include "ui/bookings/bookings_place.h"
#include "ui/bookings/cutting/cutting_day.h"
#include "ui/bookings/cutting/share_panel.h"
#include "ui/bookings/tabs/papers_tab.h"
#include "ui/common/field_edit.h"
#include "ui/logic/edits/booking_edits.h"
#include "ui/logic/models/booking_words.h"
#include "ui/print/paper_desk.h"
#include "ui/shell/actions.h"

#include <QAction>
#include <QMenu>
#include <QStackedWidget>

namespace withy::ui {

void BookingsPlace::addActions(Actions& actions) {
    actions_ = &actions;
    actions.add({"booking.new", tr("&New booking"), Qt::CTRL | Qt::Key_N,
                 tr("A title and a day are enough to begin with")},
                [this] { newBooking(); });
    actions.add({"booking.find", tr("&Find a booking"), QKeySequence::Find,
                 tr("By title, client, place, standing or date")},
                [this] { find(); });
    actions.add(
        {"booking.next", tr("Ne&xt booking"), Qt::CTRL | Qt::Key_Down, tr("As they stand in the list")},
        [this] { step(1); });
    actions.add(
        {"booking.previous", tr("&Previous booking"), Qt::CTRL | Qt::Key_Up, tr("As they stand in the list")},
        [this] { step(-1); });
    more_->addAction(
        actions.add({"booking.duplicate", tr("&Duplicate booking"), Qt::CTRL | Qt::SHIFT | Qt::Key_D,
                     tr("The same again, 52 weeks on, as an enquiry")},
                    [this] { duplicate(); }));
    more_->addAction(actions.add({"booking.hold", tr("&Hold until..."), Qt::CTRL | Qt::SHIFT | Qt::Key_H,
                                  tr("Keeps the date for the client for some days")},
                                 [this] { hold(); }));
    for (const auto s : {model::Standing::quoted, model::Standing::booked, model::Standing::made,
                         model::Standing::delivered, model::Standing::settled, model::Standing::lost}) {
        const std::string id = "booking.mark." + std::string(model::wordOf(s));
        actions.add({id.c_str(),
                     tr("&Mark as %1").arg(standingWords(s)),
                     {},
                     tr("Where the booking stands; undo puts back what it was")},
                    [this, s] {
                        if (chosen_) take(edits::setStanding(bench_.season(), *chosen_, s, bench_.today()));
                    });
    }
    more_->addAction(actions.add({"booking.cutting", tr("Cutting da&y"), Qt::CTRL | Qt::Key_T,
                                  tr("The tally: what came in, plant by plant")},
                                 [this] { openCuttingDay(); }));
    more_->addSeparator();
    more_->addAction(
        actions.add({"booking.erase", tr("&Erase booking"), Qt::CTRL | Qt::SHIFT | Qt::Key_Delete,
                     tr("With its pieces, drops and payments; undo puts it back")},
                    [this] { erase(); }));
    addTabActions(actions);
}

void BookingsPlace::addTabActions(Actions& actions) {
    int i = 0;
    for (const auto& entry : page_->tabs()) {
        const std::string id = std::string("booking.tab.") + entry.id;
        const QKeySequence keys =
            i < 9 ? QKeySequence(Qt::ALT | static_cast<Qt::Key>(Qt::Key_1 + i)) : QKeySequence();
        actions.add({id.c_str(), tr("Sho&w %1").arg(entry.words), keys}, [this, i] {
            comeForward();
            page_->showTab(i);
            page_->enter();
        });
        ++i;
    }
    page_->addTabActions(actions);
    actions.add({"booking.tab.next", tr("Next part of the bookin&g"), Qt::CTRL | Qt::Key_PageDown,
                 tr("Brief, pieces, stems, kit, run-up, money, papers")},
                [this] { page_->stepTab(1); });
    actions.add({"booking.tab.previous", tr("Previous part of the b&ooking"), Qt::CTRL | Qt::Key_PageUp,
                 tr("The same the other way round")},
                [this] { page_->stepTab(-1); });
}

CuttingDay& BookingsPlace::cuttingDayPage() {
    if (cutting_) return *cutting_;
    cutting_ = new CuttingDay(bench_);
    pages_->addWidget(cutting_);
    connect(cutting_, &CuttingDay::backAsked, this, &BookingsPlace::leaveCuttingDay);
    connect(cutting_, &CuttingDay::listAsked, this, &BookingsPlace::showCuttingList);
    connect(cutting_, &CuttingDay::refused, this, &Place::refused);
    connect(cutting_, &CuttingDay::leadTo, this, [this](const model::Ref& ref) {
        if (!goTo(ref)) Q_EMIT leadTo(ref);
    });
    auto* share = new SharePanel(bench_);
    cutting_->setBeside(share);
    connect(cutting_, &CuttingDay::bookingShown, share,
            [share](qint64 booking) { share->show(Id<model::Booking>(booking)); });
    connect(share, &SharePanel::refused, this, &Place::refused);
    connect(share, &SharePanel::said, this, &Place::said);
    connect(share, &SharePanel::leadTo, cutting_, &CuttingDay::leadTo);
    return *cutting_;
}

bool BookingsPlace::atTheCuttingDay() const {
    return cutting_ && pages_->currentWidget() == cutting_;
}

void BookingsPlace::openCuttingDay() {
    comeForward();
    if (!chosen_ || !bench_.season().bookings.find(*chosen_) || !commitFocusedField(page_)) return;
    cuttingDayPage().show(*chosen_);
    both_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Ignored); // what is behind asks for no room
    pages_->setCurrentWidget(cutting_);
    Q_EMIT shownChanged();
    cutting_->enter();
}

void BookingsPlace::leaveCuttingDay() {
    if (!atTheCuttingDay() || !cutting_->commit()) return;
    both_->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Preferred);
    pages_->setCurrentWidget(both_);
    Q_EMIT shownChanged();
    arrange();
    page_->enter();
}

void BookingsPlace::showCuttingList() {
    leaveCuttingDay();
    if (atTheCuttingDay()) return;
    page_->showTab(QStringLiteral("papers"));
    if (auto* papers = page_->findChild<PapersTab*>()) papers->desk().choose(PaperKind::cuttingList);
}

namespace {

template <class R>
std::optional<Id<model::Booking>> bookingIn(const model::Table<R>& rows, std::int64_t id) {
    const auto* row = rows.find(Id<R>(id));
    return row ? std::optional(row->booking) : std::nullopt;
}

/// The chosen booking when it has the record, else the first that has.
template <class R>
std::optional<Id<model::Booking>> bookingWith(const model::Season& season,
                                              std::optional<Id<R>> model::Booking::*field, std::int64_t id,
                                              std::optional<Id<model::Booking>> chosen) {
    const auto has = [&](const model::Booking* b) { return b && b->*field == Id<R>(id); };
    if (chosen && has(season.bookings.find(*chosen))) return chosen;
    for (const auto& b : season.bookings) {
        if (has(&b)) return b.id;
    }
    return std::nullopt;
}

const char* tabOf(model::TableKind kind) {
    using model::TableKind;
    switch (kind) {
    case TableKind::lines:
    case TableKind::placements:
        return "pieces";
    case TableKind::payments:
        return "money";
    case TableKind::bookings:
        return nullptr;
    default:
        return "brief";
    }
}

} // namespace

std::optional<Id<model::Booking>> BookingsPlace::bookingOf(const model::Ref& ref) const {
    using model::TableKind;
    const auto& s = bench_.season();
    switch (ref.table) {
    case TableKind::bookings:
        return s.bookings.find(Id<model::Booking>(ref.id)) ? std::optional(Id<model::Booking>(ref.id))
                                                           : std::nullopt;
    case TableKind::lines:
        return bookingIn(s.lines, ref.id);
    case TableKind::drops:
        return bookingIn(s.drops, ref.id);
    case TableKind::questions:
        return bookingIn(s.questions, ref.id);
    case TableKind::payments:
        return bookingIn(s.payments, ref.id);
    case TableKind::bookingColours:
        return bookingIn(s.bookingColours, ref.id);
    case TableKind::agreedSwaps:
        return bookingIn(s.agreedSwaps, ref.id);
    case TableKind::sentVersions:
        return bookingIn(s.sentVersions, ref.id);
    case TableKind::placements:
        if (const auto* p = s.placements.find(Id<model::Placement>(ref.id)))
            return bookingIn(s.lines, p->line.value);
        return std::nullopt;
    case TableKind::venueTables:
        if (const auto* t = s.venueTables.find(Id<model::VenueTable>(ref.id)))
            return bookingWith(s, &model::Booking::venue, t->venue.value, chosen_);
        return std::nullopt;
    case TableKind::venues:
        return bookingWith(s, &model::Booking::venue, ref.id, chosen_);
    case TableKind::clients:
        return bookingWith(s, &model::Booking::client, ref.id, chosen_);
    default:
        return std::nullopt;
    }
}

bool BookingsPlace::goTo(const model::Ref& ref) {
    const auto id = bookingOf(ref);
    if (!id) return false;
    leaveCuttingDay();
    finding_ = false;
    arrange();
    choose(*id);
    if (const char* tab = tabOf(ref.table)) page_->showTab(QString::fromLatin1(tab));
    return true;
}

} // namespace withy::ui
