// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/day_heat.h"
#include "core/plan/index.h"
#include "core/plan/run_up_hands.h"

#include <map>
#include <set>

/// The work of some bookings as steps and what they wait for, before it is laid into time.
namespace withy::plan {

/// A step; or those of a trip, done one after the other by the same hands.
struct Draft {
    std::vector<RunUpStep> legs;
    std::vector<Minutes> offsets; ///< of the legs from the first one's start
    Minutes minutes;              ///< of one pair of hands, waits on a trip included
    Skill skill = Skill::bench;
    bool workHours = true;    ///< the grower does it in working hours only; flowers wait for nobody
    bool splittable = true;   ///< may be laid down over busy hours and the night
    bool together = true;     ///< two can do it in half the time
    bool sameForAll = false;  ///< takes a learner no longer: the road is as long for everyone
    bool releaseMoves = true; ///< could begin sooner if the grower did
    bool byPiece = true;
    std::optional<LocalTime> hurry; ///< from then on as soon as can be, once the rest is laid
    bool waitsForToday = true;      ///< what can still be done today is not laid into the past
    std::optional<LocalTime> release;
    std::optional<LocalTime> deadline;
    int group = 0;
};

struct DraftFollows {
    std::size_t before = 0;
    std::size_t after = 0;
    Minutes lag;
};

/// Needs nobody: from the last end of `from` to the first start of `to`.
struct DraftThread {
    RunUpStep step;
    std::vector<std::size_t> from;
    std::vector<std::size_t> to;
};

struct DraftRound {
    RunUpRound round;
    std::size_t cut = 0; ///< index of its draft
};

struct RunUpDraft {
    std::vector<Draft> steps;
    std::vector<DraftFollows> follows;
    std::vector<DraftThread> threads;
    std::vector<DraftRound> rounds;
    std::vector<Id<model::Booking>> groups;
    std::vector<std::int64_t> pieces; ///< by group
    /// By group: what waits for cut stems that have drunk.
    std::vector<std::vector<std::size_t>> afterDrinking;
    std::vector<Finding> findings;

    std::size_t add(Draft draft) {
        steps.push_back(std::move(draft));
        return steps.size() - 1;
    }

    void follow(std::size_t before, std::size_t after, Minutes lag = Minutes(0)) {
        follows.push_back({before, after, lag});
    }

    void followAll(const std::vector<std::size_t>& before, std::size_t after, Minutes lag = Minutes(0)) {
        for (const auto b : before)
            follow(b, after, lag);
    }
};

/// What all parts of the run-up read.
class RunUpFacts {
public:
    RunUpFacts(const model::Season& season, const Plan& plan, const RunUpOptions& options);

    [[nodiscard]] const model::StepMark* markOf(const StepKey& key) const;
    /// Hours of a day that are good for cutting, busy or not.
    const std::vector<runup::TimeSpan>& goodHours(Day day);
    /// The warmest from..to; blank: not known.
    std::optional<double> warmest(LocalTime from, LocalTime to);
    [[nodiscard]] int holdDays(Id<model::Patch> patch) const;
    /// Stems that the usual bucket takes; nought: not known.
    [[nodiscard]] std::int64_t stemsPerBucket(std::optional<Millimetres> length) const;

    /// Number of the next round of a day.
    std::int64_t nextRound(Day day) { return rounds_[day]++; }

    const model::Season& season;
    const Plan& plan;
    RunUpOptions options;
    Index index;
    Hands hands;

private:
    PlaceDays& days() { return *days_; }

    std::shared_ptr<PlaceDays> days_;
    std::map<StepKey, const model::StepMark*> marks_;
    std::map<Day, std::vector<runup::TimeSpan>> good_;
    std::map<Id<model::Patch>, int> hold_;
    std::map<Day, std::int64_t> rounds_;
    const model::Holder* bucket_ = nullptr;
};

/// What is still to be done for a booking.
enum class StillToDo { all, fromRest, collectOnly, nothing };

StillToDo stillToDo(const model::Booking& booking);

/// A counted step at a rate, with its working; blank when there is nothing to do.
std::optional<Draft> countedDraft(const RunUpFacts& facts, StepKind kind, model::RateKind work,
                                  std::int64_t count, Id<model::Booking> booking);

/// Adds a booking's bench, making, packing and trips as the next group. False: nothing to do.
bool draftBooking(const RunUpFacts& facts, const BookingPlan& plan, RunUpDraft& out);
/// Its trips out and back; `ready` is what must be made, by line.
void draftTrips(const RunUpFacts& facts, const BookingPlan& plan,
                const std::map<Id<model::Line>, std::size_t>& made, RunUpDraft& out);
/// Adds the rounds of all groups, with stripping and drinking. `taken`: hours of whoever can cut that earlier
/// parts have taken, by place in Hands::workers().
void draftRounds(RunUpFacts& facts, const std::vector<std::vector<runup::TimeSpan>>& taken, RunUpDraft& out);

} // namespace withy::plan
