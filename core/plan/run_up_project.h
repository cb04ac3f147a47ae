// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/run_up_draft.h"
#include "core/runup/misfit.h"

namespace withy::plan {

/// Wall-clock times as minutes that really pass, so that the night the clocks change is as long as it is.
class RunUpClock {
public:
    RunUpClock(Zone zone, Day first);

    [[nodiscard]] runup::Time of(LocalTime t) const;
    [[nodiscard]] LocalTime at(runup::Time t) const;

private:
    Zone zone_;
    std::int64_t origin_; ///< minutes of universal time
};

/// The work of a part as the scheduler takes it: task for step, by place in RunUpDraft::steps.
struct RunUpProject {
    runup::Project project;
    std::vector<std::vector<std::vector<std::size_t>>> who; ///< by task and way: places in Hands::workers()
    std::vector<bool> done;                                 ///< by task: ticked off
    std::vector<bool> nobody;                               ///< by task: taken out, for nobody can do it
    std::vector<std::optional<runup::Time>> hurry;          ///< by task: as soon as can be, from then on
    std::vector<runup::Time> earliest;                      ///< start, by what it waits for alone
    std::vector<runup::Time> latest;                        ///< end, by what waits for it alone
};

/// Hours that earlier parts have taken, by place in Hands::workers().
using TakenHours = std::vector<std::vector<runup::TimeSpan>>;

RunUpProject projectOf(const RunUpFacts& facts, const RunUpDraft& draft, const RunUpClock& clock,
                       const TakenHours& taken, Day first, Day last);

/// All of a project in one row of figures: two that have the same are laid alike.
std::vector<runup::Time> inOneRow(const runup::Project& project);

/// Stretches within its place in which a task is really worked at.
std::vector<runup::Hours> workedHours(const runup::Project& project, int task, const runup::Placed& placed);

struct RunUpPart {
    runup::Project project;
    std::vector<runup::Time> row; ///< inOneRow() of it
    runup::Schedule schedule;
    runup::Misfit misfit; ///< of what does not fit
    std::vector<runup::Mend> mends;
    bool mended = false; ///< whether mends were looked for
};

/// Lays the project into time. What nobody can do is taken out first, and said as a finding.
RunUpPart laid(RunUpProject& project, const RunUpDraft& draft, const RunUpFacts& facts,
               std::vector<Finding>& findings, const std::vector<std::shared_ptr<const RunUpPart>>& kept,
               std::shared_ptr<const RunUpPart>& same);

/// What would mend a part that does not fit.
std::vector<runup::Mend> mendsOf(const RunUpProject& project, const RunUpDraft& draft,
                                 const RunUpFacts& facts, const RunUpClock& clock, Day first, Day last);

/// The faults a laid part shows: pins, clashing drops, a full cool store.
void findInPart(const RunUpProject& project, const RunUpDraft& draft, const RunUpFacts& facts,
                const RunUpPart& part, std::vector<Finding>& findings);
/// Those of the season as a whole: hands that are never there, nights the clocks change.
void findInSeason(const RunUpFacts& facts, const RunUpPlan& plan, std::vector<Finding>& findings);

} // namespace withy::plan
