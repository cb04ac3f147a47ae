// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/run_up_plan.h"

namespace withy::plan {

/// What a step asks of whoever does it.
enum class Skill { bench, cut, condition, make, drive };

/// A learner takes three minutes for what takes the grower two (common practice, no source).
constexpr std::int64_t learnersPercent = 150;

/// All who can work, the grower first, then the helpers by id.
class Hands {
public:
    explicit Hands(const model::Season& season);

    [[nodiscard]] const std::vector<Worker>& workers() const { return workers_; }

    /// Place in workers(); blank when there is no such helper.
    [[nodiscard]] std::optional<std::size_t> find(const Worker& worker) const;
    [[nodiscard]] bool can(std::size_t worker, Skill skill) const;
    /// Minutes that `worker` takes for what takes the grower `minutes`.
    [[nodiscard]] Minutes takes(std::size_t worker, Minutes minutes) const;
    /// Both together, each as fast as they are.
    [[nodiscard]] Minutes takeTogether(std::size_t a, std::size_t b, Minutes minutes) const;

    /// Hours on the days from..to, both included; the grower's are the season's working hours.
    [[nodiscard]] WorkerHours hours(std::size_t worker, Day from, Day to) const;
    /// A helper with no hours at all.
    [[nodiscard]] bool neverThere(std::size_t worker) const;

private:
    [[nodiscard]] const model::Helper& helper(std::size_t worker) const { return *helpers_[worker]; }

    [[nodiscard]] std::int64_t percent(std::size_t worker) const;

    const model::Season& season_;
    std::vector<Worker> workers_;
    std::vector<const model::Helper*> helpers_; ///< null: the grower
};

} // namespace withy::plan
