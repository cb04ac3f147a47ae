// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/run_up_plan.h"

#include <QString>

#include <functional>

/// The steps of all bookings' run-up, and their words: on paper, in a calendar, on the screen.
namespace withy::ui {

/// What a reader of steps does with each; either may be left out.
struct StepReader {
    std::function<void(std::size_t index)> laid; ///< into RunUpPlan::steps
    std::function<void(const plan::BookingPlan& booking, const plan::TimedStep& step)> own;
};

/// The steps that are told of, the same on every page and paper: those of the run-up, and of a booking that
/// is not in it (a settled one, and all until there is one) its own plan's. Lost bookings and those the
/// season no longer has are left out. In no order of time.
void readSteps(const model::Season& season, const plan::Plan& plan, const StepReader& reader);
/// The same in order of time, all of them or those that serve one booking. The own plan of the one asked for
/// speaks too when it is delivered, and nothing but the way back is laid for it.
std::vector<plan::RunUpStep> runUpSteps(const model::Season& season, const plan::Plan& plan,
                                        std::optional<Id<model::Booking>> booking = std::nullopt);
/// Whether the run-up has the booking's work: what is delivered is only fetched back, and such a booking has
/// no more than that in it.
bool isLaid(const plan::RunUpPlan& runUp, Id<model::Booking> booking);
/// The rounds that cut for the booking, without one all, as indices into RunUpPlan::rounds.
std::vector<std::size_t> runUpRounds(const plan::Plan& plan,
                                     std::optional<Id<model::Booking>> booking = std::nullopt);
/// The step that is this round; null when there is none.
const plan::RunUpStep* stepOfRound(const plan::RunUpPlan& runUp, std::size_t round);

QString stepTitle(const model::Season& season, const plan::RunUpStep& step);
QString stepDetail(const model::Season& season, const plan::RunUpStep& step);
bool needsNobody(const plan::RunUpStep& step);
/// "Make up 60 × Supper jar, goes on": of a step taken up again after busy hours or a night.
QString goesOnWords(const QString& title);

/// "You" or the helper's name.
QString workerName(const model::Season& season, const plan::Worker& worker);
/// "You, Wilf"; a dash when it needs nobody; empty where nobody is named.
QString whoWords(const model::Season& season, const plan::RunUpStep& step);
/// "Library roof supper", "Library roof supper and Christening", "3 bookings".
QString bookingWords(const model::Season& season, const std::vector<Id<model::Booking>>& bookings);
/// "From patch 5, Tunnel side: 46 Zinnia, coral; ...": the round's patches in walking order.
QString roundFrom(const model::Season& season, const plan::RunUpRound& round);
/// "06:35 to 07:50", with the day of the end where it is another. Of times that were typed.
QString hoursWords(LocalTime from, LocalTime to);
/// The same of times that were worked out, which are shown to five minutes; workings have them exactly.
QString planClock(LocalTime time);
QString planHours(LocalTime from, LocalTime to);
/// Of a moment by which something must be done: five minutes, and never later.
QString planBy(LocalTime time);

/// The bookings a week's page speaks of, in order of their events: those whose guests come in it, and those
/// something is done for.
std::vector<Id<model::Booking>> bookingsOfBoard(const model::Season& season, const plan::Plan& plan,
                                                Day monday);
/// One letter for each booking: the first of its title that no other has taken.
std::map<Id<model::Booking>, QString> bookingLetters(const model::Season& season,
                                                     const std::vector<Id<model::Booking>>& bookings);

} // namespace withy::ui
