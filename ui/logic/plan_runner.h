// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/plan.h"

#include <chrono>
#include <condition_variable>
#include <cstdint>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <thread>

namespace withy::ui {

/// Plans snapshots of a season, one at a time, on a thread of its own; each run keeps what it can of the
/// last finished one. Of snapshots that come while a run goes on only the newest is planned, and the run
/// is given up for it, unless the grower has seen no new plan for `patience`: then it may finish, so that
/// a key held down cannot keep every plan from the screen.
/// All functions belong to one thread, the one that made it.
class PlanRunner {
public:
    struct Run {
        model::Season season;
        plan::PlanOptions options;
        plan::Plan plan;
        std::uint64_t turn = 0; ///< which ask() it answers
        bool whole = false;     ///< false: garden and cover are still those of the run before
    };

    static constexpr std::chrono::milliseconds patience{250};

    /// `tell` is called on the runner's thread whenever a run has finished, and once before when its
    /// bookings are planned and only garden and cover are still to come.
    explicit PlanRunner(std::function<void()> tell);
    /// Gives up the run that goes on.
    ~PlanRunner();

    PlanRunner(const PlanRunner&) = delete;
    PlanRunner& operator=(const PlanRunner&) = delete;

    void ask(model::Season season, const plan::PlanOptions& options);
    /// The last run that is finished or has its bookings, which may answer an earlier ask(); null when there
    /// is none yet.
    [[nodiscard]] std::shared_ptr<const Run> finished() const;
    /// The run of the newest ask(), once it is finished. Null only when nothing was ever asked.
    [[nodiscard]] std::shared_ptr<const Run> wait();

    [[nodiscard]] std::uint64_t asked() const { return asked_; }

private:
    using Clock = std::chrono::steady_clock;

    void work(const std::stop_token& quit);
    void publish(std::shared_ptr<const Run> run);
    /// The newest snapshot, once there is one; nothing when it is time to go.
    std::optional<Run> next(const std::stop_token& quit);

    std::function<void()> tell_;
    std::uint64_t asked_ = 0;
    mutable std::mutex mutex_;            // guards what follows
    std::condition_variable_any changed_; // waiting_ or finished_
    std::optional<Run> waiting_;
    std::stop_source giveUp_; ///< of the run that goes on
    Clock::time_point lastPlan_ = Clock::now();
    std::shared_ptr<const Run> finished_;
    std::jthread thread_; // last: it uses all the others
};

} // namespace withy::ui
