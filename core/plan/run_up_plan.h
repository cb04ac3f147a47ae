// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/plan.h"

#include <compare>

/// The work of all bookings laid into time together: who does what, when, and whether it fits.
namespace withy::plan {

/// Whose hands.
struct Worker {
    std::optional<Id<model::Helper>> helper; ///< blank: the grower

    friend auto operator<=>(const Worker&, const Worker&) = default;
};

/// What a step is, whenever it is done; as in model::StepMark.
struct StepKey {
    StepKind step{};
    std::optional<Id<model::Booking>> booking; ///< blank: for several bookings together, as a round is
    std::optional<Id<model::Line>> line;
    std::optional<Id<model::Drop>> drop;
    std::optional<Day> day;
    std::int64_t number = 0; ///< rounds of one day: 0 is the first

    friend auto operator<=>(const StepKey&, const StepKey&) = default;
};

struct RunUpStep {
    StepKey key;
    LocalTime from;
    LocalTime to;    ///< a step that may be split can lie idle in between
    Minutes minutes; ///< of hands; nought when it needs nobody
    std::vector<Worker> who;
    LocalTime earliest; ///< may begin
    LocalTime latest;   ///< must be done
    bool splittable = false;
    bool placed = true; ///< false: no place was found for it in all its hours; it stands at its latest
    bool pinned = false;
    std::optional<Id<model::StepMark>> mark;
    std::optional<LocalTime> done;
    std::optional<Minutes> took;
    std::vector<Id<model::Booking>> bookings;              ///< it serves, by id
    std::vector<std::pair<Id<model::Plant>, Stems>> stems; ///< cut
    std::int64_t count = 0;                                ///< pieces, jars, trays, stems
    double litres = 0;
    std::optional<std::size_t> round; ///< index into RunUpPlan::rounds
    Working working;                  ///< of the minutes
};

/// The stems of one patch on one outing; blank patch: from whatever the plant stands in.
struct RoundPatch {
    std::optional<Id<model::Patch>> patch;
    Id<model::Plant> plant;
    Stems stems;
    Minutes minutes;
    std::optional<std::int64_t> buckets; ///< blank: not known
    std::vector<Id<model::Booking>> bookings;
};

/// One outing to cut, for whoever's bookings.
struct RunUpRound {
    LocalTime from;
    LocalTime to;
    Minutes minutes; ///< of all hands together
    Stems stems;
    std::vector<RoundPatch> patches; ///< in walking order
    std::vector<Id<model::Booking>> bookings;
    bool inGoodHours = false;
    std::optional<double> celsius; ///< the warmest of it; blank: not known
    LocalTime earliest;            ///< the window its slots have in common
    LocalTime latest;
};

/// When one pair of hands is there on the days of the run-up, and when not.
struct WorkerHours {
    Worker worker;
    std::vector<runup::TimeSpan> there;
    std::vector<runup::BusySpan> busy;
};

enum class RunUpMendKind { startEarlier, oneMoreHelper, fewerPieces };

struct RunUpMend {
    RunUpMendKind kind{};
    bool fits = false;
    Minutes earlier;                           ///< startEarlier
    std::optional<Id<model::Booking>> booking; ///< fewerPieces
    Pieces pieces;                             ///< fewerPieces: the most that can be kept
    Minutes left;                              ///< what stays too much even so
};

/// Work that does not fit: by how much, on which day, and what would mend it.
struct RunUpOver {
    Day day;
    Minutes minutes; ///< too much
    bool proved = false;
    std::optional<std::size_t> step; ///< the one furthest outside its window, index into steps
    std::vector<Id<model::Booking>> bookings;
    std::vector<RunUpMend> mends;
};

struct RunUpPart; ///< core/plan/run_up_project.h: bookings laid together, kept while their work is the same

struct RunUpPlan {
    std::vector<RunUpStep> steps;    ///< in order of time
    std::vector<RunUpRound> rounds;  ///< in order of time
    std::vector<WorkerHours> people; ///< the grower first, then helpers by id
    std::vector<RunUpOver> over;     ///< by day; empty: it fits
    bool proved = false;             ///< no schedule is better
    double withinPercent = 0;        ///< of the shortest; nought when proved
    std::vector<Finding> findings;
    std::vector<std::shared_ptr<const RunUpPart>> parts; ///< in order of time
};

struct RunUpOptions {
    std::optional<Day> today; ///< what can still be done then or later is not laid before it
    std::stop_token stop;     ///< asked between parts; a plan that was stopped is not whole
};

/// The run-up of all bookings of `plan` not yet delivered; what is delivered is only fetched back. Its cover
/// says from which patches; without one, stems come from wherever their plant stands. Bookings that share no
/// days, and many on the same days, are laid in parts one after the other, each around those before it.
/// Rounds are merged within a part. `before`: an earlier run-up whose parts may be kept; the result is the
/// same without it.
RunUpPlan runUpPlan(const model::Season& season, const Plan& plan, const RunUpOptions& options = {},
                    const RunUpPlan* before = nullptr);

} // namespace withy::plan
