// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/plan.h"

#include <QString>

#include <chrono>
#include <condition_variable>
#include <cstdint>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <stop_token>
#include <thread>
#include <vector>

namespace withy::ui {

/// Plans snapshots of a season on two threads of its own: the one plans designs and bookings, which is quick,
/// and hands them to the other for garden and cover, which is not; so that the bookings of an edit are
/// there while the cover of the edit before is still being worked out. Each keeps what it can of what was
/// planned before. Of snapshots that come while a thread is at work only the newest is taken up, and the work
/// is given up for it, unless the grower has seen nothing new of that kind for `patience`: then it may
/// finish, so that a key held down cannot keep every plan from the screen. All functions belong to one
/// thread, the one that made it.
class PlanRunner {
public:
    struct Run {
        model::Season season;
        plan::PlanOptions options;
        plan::Plan plan;
        std::uint64_t turn = 0; ///< which ask() it answers
        bool whole = false;     ///< false: garden and cover are those of an earlier run
        QString fault;          ///< what was thrown while planning; the plan, or its part, is an earlier one
    };

    /// What does the planning; tests put in what fails.
    struct Planners {
        std::function<decltype(plan::replanBookings)> bookings = plan::replanBookings;
        std::function<decltype(plan::replanGarden)> garden = plan::replanGarden;
    };

    static constexpr std::chrono::milliseconds patience{250};

    /// `tell` is called on the runner's threads whenever a snapshot has its bookings planned, and again when
    /// its garden and cover are there.
    explicit PlanRunner(std::function<void()> tell);
    PlanRunner(std::function<void()> tell, Planners planners);
    /// Gives up what goes on.
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

    /// Takes a run that is no longer shown. To take a large one apart is some milliseconds' work, which the
    /// garden's thread does before its next task.
    void takeBack(std::shared_ptr<const Run> run);

private:
    using Clock = std::chrono::steady_clock;
    using RunPtr = std::shared_ptr<const Run>;

    /// One of the two threads' work: what it is to take up next, and how it is told to let go.
    template <class Task>
    struct Stage {
        std::optional<Task> waiting;
        std::uint64_t turn = 0; ///< of what goes on; 0: nothing
        std::stop_source giveUp;
        Clock::time_point last = Clock::now(); ///< when it last finished something
    };

    void planBookings(const std::stop_token& quit);
    void planGarden(const std::stop_token& quit);
    /// The next task of a stage, once there is one; nothing when it is time to go.
    template <class Task>
    std::optional<Task> next(Stage<Task>& stage, const std::stop_token& quit);
    void clearAway(std::unique_lock<std::mutex>& lock);
    void publishBookings(Run run);
    void publishGarden(RunPtr run);
    /// The newest plan of bookings beside the newest garden and cover. With the mutex held.
    void show();

    std::function<void()> tell_;
    Planners planners_;
    std::uint64_t asked_ = 0;
    mutable std::mutex mutex_;            // guards what follows
    std::condition_variable_any changed_; // a task or finished_
    Stage<Run> bookings_;
    Stage<RunPtr> garden_;
    RunPtr booked_; ///< the last with its bookings
    RunPtr whole_;  ///< the last with its garden and cover too
    RunPtr finished_;
    std::vector<RunPtr> spent_;
    std::jthread bookingsThread_; // last: they use all the others
    std::jthread gardenThread_;
};

} // namespace withy::ui
