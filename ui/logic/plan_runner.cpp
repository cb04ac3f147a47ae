// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/plan_runner.h"

#include "ui/logic/wording.h"

#include <utility>

#ifdef __linux__
#include <sys/resource.h>
#include <unistd.h>
#endif

namespace withy::ui {

namespace {

/// The window comes before the bookings, and both before the garden: with two processors the solver's two
/// threads would hold them up for some milliseconds at a time. What a thread starts inherits this.
void stepBack(int niceness) {
#ifdef __linux__
    setpriority(PRIO_PROCESS, static_cast<id_t>(gettid()), niceness); // not done: only slower to the eye
#else
    static_cast<void>(niceness);
#endif
}

constexpr int aStep = 5;
constexpr int allTheWay = 19;

} // namespace

PlanRunner::PlanRunner(std::function<void()> tell) : PlanRunner(std::move(tell), Planners()) {}

PlanRunner::PlanRunner(std::function<void()> tell, Planners planners)
    : tell_(std::move(tell))
    , planners_(std::move(planners))
    , bookingsThread_([this](const std::stop_token& quit) { planBookings(quit); })
    , gardenThread_([this](const std::stop_token& quit) { planGarden(quit); }) {}

PlanRunner::~PlanRunner() {
    bookingsThread_.request_stop();
    gardenThread_.request_stop();
    const std::lock_guard lock(mutex_);
    bookings_.waiting.reset();
    garden_.waiting.reset();
    bookings_.giveUp.request_stop();
    garden_.giveUp.request_stop();
}

void PlanRunner::ask(model::Season season, const plan::PlanOptions& options) {
    const std::lock_guard lock(mutex_);
    const auto now = Clock::now();
    // What goes on, or waits, since the last of its kind: those who look have waited that long already.
    const auto hurry = [&](auto& stage, bool idle) {
        if (idle)
            stage.last = now;
        else if (now - stage.last < patience)
            stage.giveUp.request_stop();
    };
    hurry(bookings_, asked_ == (booked_ ? booked_->turn : 0));
    hurry(garden_, asked_ == (whole_ ? whole_->turn : 0));
    bookings_.waiting = Run{std::move(season), options, {}, ++asked_, false, {}};
    changed_.notify_all();
}

std::shared_ptr<const PlanRunner::Run> PlanRunner::finished() const {
    const std::lock_guard lock(mutex_);
    return finished_;
}

std::shared_ptr<const PlanRunner::Run> PlanRunner::wait() {
    std::unique_lock lock(mutex_);
    if (asked_ == 0) return nullptr;
    // Nobody looks at the older ones any more.
    if (bookings_.turn != asked_) bookings_.giveUp.request_stop();
    if (garden_.turn != asked_) garden_.giveUp.request_stop();
    changed_.wait(lock, [this] { return finished_ && finished_->whole && finished_->turn == asked_; });
    return finished_;
}

namespace {

std::uint64_t turnOf(const PlanRunner::Run& run) {
    return run.turn;
}

std::uint64_t turnOf(const std::shared_ptr<const PlanRunner::Run>& run) {
    return run->turn;
}

/// What the garden's thread makes, as it was.
void takeGarden(plan::Plan& plan, const plan::Plan& from) {
    plan.garden = from.garden;
    plan.cover = from.cover;
    plan.runUp = from.runUp;
    plan.shed = from.shed;
}

} // namespace

void PlanRunner::takeBack(std::shared_ptr<const Run> run) {
    {
        const std::lock_guard lock(mutex_);
        spent_.push_back(std::move(run));
    }
    changed_.notify_all();
}

void PlanRunner::clearAway(std::unique_lock<std::mutex>& lock) {
    auto spent = std::exchange(spent_, {});
    lock.unlock();
    spent.clear();
    lock.lock();
}

template <class Task>
std::optional<Task> PlanRunner::next(Stage<Task>& stage, const std::stop_token& quit) {
    std::unique_lock lock(mutex_);
    stage.turn = 0;
    constexpr bool garden = std::is_same_v<Task, RunPtr>;
    const auto called = [&] { return stage.waiting.has_value() || (garden && !spent_.empty()); };
    do {
        if (!changed_.wait(lock, quit, called)) return std::nullopt;
        if constexpr (garden) clearAway(lock);
        if (quit.stop_requested()) return std::nullopt; // although something waits
    } while (!stage.waiting);
    std::optional<Task> task = std::exchange(stage.waiting, std::nullopt);
    stage.giveUp = std::stop_source();
    stage.turn = turnOf(*task);
    return task;
}

void PlanRunner::planBookings(const std::stop_token& quit) {
    stepBack(aStep);
    Run last; // of an empty season
    while (auto run = next(bookings_, quit)) {
        auto stoppable = run->options;
        {
            const std::lock_guard lock(mutex_);
            stoppable.stop = bookings_.giveUp.get_token();
        }
        try {
            auto plan = planners_.bookings(run->season, stoppable, last.season, last.plan, last.options);
            if (!plan) continue;
            run->plan = std::move(*plan);
            last = *run;
        } catch (...) { // one season that cannot be planned must not end the program
            run->plan = last.plan;
            run->fault = caughtWords();
        }
        publishBookings(std::move(*run));
    }
}

void PlanRunner::planGarden(const std::stop_token& quit) {
    stepBack(allTheWay);
    RunPtr last = std::make_shared<Run>(); // of an empty season
    while (const auto booked = next(garden_, quit)) {
        auto stoppable = (*booked)->options;
        {
            const std::lock_guard lock(mutex_);
            stoppable.stop = garden_.giveUp.get_token();
        }
        auto run = **booked;
        try {
            if (run.fault.isEmpty()) {
                auto plan = planners_.garden(run.season, stoppable, run.plan, last->season, last->plan,
                                             last->options);
                if (!plan) continue;
                run.plan = std::move(*plan);
            }
        } catch (...) {
            run.fault = caughtWords();
        }
        run.whole = true;
        if (!run.fault.isEmpty()) {
            takeGarden(run.plan, last->plan);
            publishGarden(std::make_shared<const Run>(std::move(run)));
            continue;
        }
        last = std::make_shared<const Run>(std::move(run));
        publishGarden(last);
    }
}

void PlanRunner::show() {
    if (!whole_ || whole_->turn == booked_->turn) {
        finished_ = whole_ ? whole_ : booked_;
        return;
    }
    Run run = *booked_;
    takeGarden(run.plan, whole_->plan);
    finished_ = std::make_shared<const Run>(std::move(run));
}

void PlanRunner::publishBookings(Run run) {
    {
        const std::lock_guard lock(mutex_);
        booked_ = std::make_shared<const Run>(std::move(run));
        bookings_.last = Clock::now();
        garden_.waiting = booked_;
        if (garden_.turn != 0 && Clock::now() - garden_.last < patience) garden_.giveUp.request_stop();
        show();
    }
    changed_.notify_all();
    tell_();
}

void PlanRunner::publishGarden(RunPtr run) {
    {
        const std::lock_guard lock(mutex_);
        whole_ = std::move(run);
        garden_.last = Clock::now();
        show();
    }
    changed_.notify_all();
    tell_();
}

} // namespace withy::ui
