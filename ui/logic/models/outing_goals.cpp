// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/outing_goals.h"

#include "core/plan/run_up_plan.h"

#include <algorithm>
#include <map>
#include <set>

namespace withy::ui {

namespace {

using BookingIds = std::set<Id<model::Booking>>;

/// Who else is on the booking's rounds, by the day of the round.
std::map<Day, BookingIds> sharedOnRecord(const model::Season& season, Id<model::Booking> booking) {
    std::map<Id<model::Round>, BookingIds> served;
    for (const auto& r : season.roundBookings)
        served[r.round].insert(r.booking);
    std::map<Day, BookingIds> shared;
    for (auto& [id, bookings] : served) {
        const auto* round = season.rounds.find(id);
        if (!round || bookings.erase(booking) == 0) continue;
        for (const auto other : bookings) {
            const auto* b = season.bookings.find(other);
            if (b && b->standing != model::Standing::lost) shared[round->from.day].insert(other);
        }
    }
    return shared;
}

void addOthers(OutingGoal& to, const CuttingGoal& goal, Id<model::Booking> other) {
    to.goal.need += goal.need;
    to.goal.spare += goal.spare;
    to.goal.orAll = to.goal.orAll || goal.orAll;
    to.goal.personal = to.goal.personal && goal.personal;
    if (goal.length) to.goal.length = std::max(to.goal.length.value_or(*goal.length), *goal.length);
    to.forOthers += goal.goal();
    if (std::find(to.others.begin(), to.others.end(), other) == to.others.end()) to.others.push_back(other);
}

} // namespace

std::vector<Id<model::Booking>> outingWith(const model::Season& season, const plan::Plan& plan,
                                           Id<model::Booking> booking, Day day) {
    if (plan.runUp) {
        for (const auto& round : plan.runUp->rounds) {
            const auto& all = round.bookings;
            if (round.from.day != day || std::find(all.begin(), all.end(), booking) == all.end()) continue;
            BookingIds others(all.begin(), all.end());
            others.erase(booking);
            std::erase_if(others, [&](auto id) { return !season.bookings.find(id); });
            return {others.begin(), others.end()};
        }
    }
    return {};
}

std::vector<OutingGoal> outingGoals(const model::Season& season, const plan::Plan& plan,
                                    Id<model::Booking> booking, std::optional<Day> until) {
    std::vector<OutingGoal> all;
    auto own = cuttingGoals(season, plan, booking);
    std::erase_if(own, [&](const CuttingGoal& g) { return until && g.day > *until; });
    for (auto& goal : goalsByPatch(own))
        all.push_back({goal, 0, {}});
    std::map<Id<model::Booking>, std::set<Day>> daysOf;
    for (const auto& [day, others] : sharedOnRecord(season, booking))
        for (const auto other : others)
            if (!until || day <= *until) daysOf[other].insert(day);
    for (const auto& [other, days] : daysOf) {
        auto goals = cuttingGoals(season, plan, other);
        std::erase_if(goals, [&, &on = days](const CuttingGoal& g) { return !on.contains(g.day); });
        for (const auto& goal : goalsByPatch(goals)) {
            auto at = std::find_if(all.begin(), all.end(), [&](const OutingGoal& o) {
                return o.goal.patch == goal.patch && o.goal.plant == goal.plant;
            });
            if (at == all.end()) {
                CuttingGoal none = goal;
                none.need = none.spare = 0;
                at = all.insert(all.end(), {none, 0, {}});
            }
            addOthers(*at, goal, other);
        }
    }
    return all;
}

} // namespace withy::ui
