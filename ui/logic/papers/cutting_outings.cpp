// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/papers/cutting_outings.h"

#include "core/plan/run_up_plan.h"
#include "ui/logic/edits/tally_edits.h"
#include "ui/logic/format.h"
#include "ui/logic/papers/papers.h"

#include <QCoreApplication>

#include <algorithm>
#include <map>

namespace withy::ui {

namespace {

constexpr std::size_t noRound = static_cast<std::size_t>(-1);

class OutingGatherer {
public:
    explicit OutingGatherer(const PaperOrder& order)
        : order_(order), season_(order.season), booking_(*order.booking) {}

    std::vector<CuttingOuting> outings() {
        for (const auto& goal : cuttingGoals(season_, order_.plan, booking_))
            add(booking_, goal);
        std::vector<CuttingOuting> out;
        for (auto& [key, outing] : byRound_) {
            if (order_.day && outing.day != *order_.day) continue;
            readHours(key.second, outing);
            addOthers(key.second, outing);
            std::stable_sort(outing.goals.begin(), outing.goals.end(), [&](const auto& a, const auto& b) {
                return placeOf(a.goal.patch) < placeOf(b.goal.patch);
            });
            out.push_back(std::move(outing));
        }
        return out;
    }

private:
    [[nodiscard]] const plan::RunUpRound& round(std::size_t i) const { return order_.plan.runUp->rounds[i]; }

    static std::size_t roundOf(const CuttingGoal& goal) {
        return goal.when && goal.when->round ? *goal.when->round : noRound;
    }

    void add(Id<model::Booking> booking, const CuttingGoal& goal) {
        auto& outing = byRound_[{goal.day, roundOf(goal)}];
        outing.day = goal.day;
        addRow(booking, goal, outing);
    }

    static void addRow(Id<model::Booking> booking, const CuttingGoal& goal, CuttingOuting& outing) {
        const auto same = std::find_if(outing.goals.begin(), outing.goals.end(), [&](const auto& row) {
            return row.booking == booking && row.goal.patch == goal.patch && row.goal.plant == goal.plant &&
                   row.goal.personal == goal.personal;
        });
        if (same == outing.goals.end()) {
            outing.goals.push_back({booking, goal});
            outing.goals.back().goal.day = outing.day;
            return;
        }
        auto& kept = same->goal;
        kept.need += goal.need;
        kept.spare += goal.spare;
        kept.orAll = kept.orAll || goal.orAll;
        if (goal.length) kept.length = std::max(kept.length.value_or(*goal.length), *goal.length);
    }

    void readHours(std::size_t i, CuttingOuting& outing) const {
        if (i != noRound) {
            outing.hours = {round(i).from, round(i).to};
            return;
        }
        if (const auto planned = CutTimes(order_.plan, booking_).on(outing.day)) {
            outing.hours = {planned->from, planned->to};
            outing.why = planned->why;
        }
        if (const auto* round = edits::roundOn(season_, booking_, outing.day)) {
            if (!outing.hours || outing.hours->first != round->from) outing.why.reset();
            outing.hours = {round->from, round->to};
        }
    }

    /// Those that the round serves, by the run-up, or by the round on record.
    [[nodiscard]] std::vector<Id<model::Booking>> served(std::size_t i, Day day) const {
        std::vector<Id<model::Booking>> out{booking_};
        const auto keep = [&](Id<model::Booking> id) {
            if (season_.bookings.find(id) && std::find(out.begin(), out.end(), id) == out.end())
                out.push_back(id);
        };
        if (i != noRound)
            for (const auto id : round(i).bookings)
                keep(id);
        if (const auto* record = edits::roundOn(season_, booking_, day))
            for (const auto& serving : season_.roundBookings)
                if (serving.round == record->id) keep(serving.booking);
        return out;
    }

    void addOthers(std::size_t i, CuttingOuting& outing) const {
        outing.bookings = served(i, outing.day);
        for (std::size_t n = 1; n < outing.bookings.size(); ++n)
            for (const auto& goal : cuttingGoals(season_, order_.plan, outing.bookings[n]))
                if (i == noRound ? goal.day == outing.day : roundOf(goal) == i)
                    addRow(outing.bookings[n], goal, outing);
    }

    [[nodiscard]] std::pair<std::int64_t, std::int64_t> placeOf(Id<model::Patch> patch) const {
        const auto* p = season_.patches.find(patch);
        return {p ? p->place : 0, patch.value};
    }

    const PaperOrder& order_;
    const model::Season& season_;
    Id<model::Booking> booking_;
    std::map<std::pair<Day, std::size_t>, CuttingOuting> byRound_;
};

struct CuttingOutingsSay {
    Q_DECLARE_TR_FUNCTIONS(CuttingList)
};

} // namespace

std::int64_t CuttingOuting::stems() const {
    std::int64_t sum = 0;
    for (const auto& row : goals)
        sum += row.goal.goal();
    return sum;
}

std::vector<CuttingOuting> cuttingOutings(const PaperOrder& order) {
    return OutingGatherer(order).outings();
}

std::vector<PaperDay> cuttingDays(const PaperOrder& order) {
    PaperOrder all = order;
    all.day.reset();
    std::map<Day, std::int64_t> stems;
    for (const auto& outing : cuttingOutings(all))
        stems[outing.day] += outing.stems();
    std::vector<PaperDay> out;
    for (const auto& [day, sum] : stems)
        out.push_back({day, CuttingOutingsSay::tr("%1, %n stem(s)", nullptr,
                                                  static_cast<int>(std::min<std::int64_t>(sum, 1'000'000)))
                                .arg(shortDay(day))});
    return out;
}

} // namespace withy::ui
