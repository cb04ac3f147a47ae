// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/plan_runner.h"

namespace withy::ui {

PlanRunner::PlanRunner(std::function<void()> tell)
    : tell_(std::move(tell)), thread_([this](const std::stop_token& quit) { work(quit); }) {}

PlanRunner::~PlanRunner() {
    thread_.request_stop();
    const std::lock_guard lock(mutex_);
    waiting_.reset();
    giveUp_.request_stop();
}

void PlanRunner::ask(model::Season season, const plan::PlanOptions& options) {
    const std::lock_guard lock(mutex_);
    // A run goes on, or waits, since the last plan: those who look have waited that long already.
    const bool idle = asked_ == (finished_ && finished_->whole ? finished_->turn : 0);
    if (idle)
        lastPlan_ = Clock::now();
    else if (Clock::now() - lastPlan_ < patience)
        giveUp_.request_stop();
    waiting_ = Run{std::move(season), options, {}, ++asked_};
    changed_.notify_all();
}

std::shared_ptr<const PlanRunner::Run> PlanRunner::finished() const {
    const std::lock_guard lock(mutex_);
    return finished_;
}

std::shared_ptr<const PlanRunner::Run> PlanRunner::wait() {
    std::unique_lock lock(mutex_);
    if (asked_ == 0) return nullptr;
    if (waiting_) giveUp_.request_stop(); // nobody looks at the older one any more
    changed_.wait(lock, [this] { return finished_ && finished_->whole && finished_->turn == asked_; });
    return finished_;
}

std::optional<PlanRunner::Run> PlanRunner::next(const std::stop_token& quit) {
    std::unique_lock lock(mutex_);
    if (!changed_.wait(lock, quit, [this] { return waiting_.has_value(); })) return std::nullopt;
    giveUp_ = std::stop_source();
    std::optional<Run> run = std::move(waiting_);
    waiting_.reset();
    run->options.stop = giveUp_.get_token();
    return run;
}

void PlanRunner::work(const std::stop_token& quit) {
    std::shared_ptr<const Run> last = std::make_shared<Run>(); // of an empty season
    while (auto run = next(quit)) {
        const auto early = [&](const plan::Plan& plan) {
            publish(std::make_shared<const Run>(Run{run->season, run->options, plan, run->turn, false}));
        };
        auto plan = plan::replan(run->season, run->options, last->season, last->plan, last->options, early);
        if (!plan) continue;
        run->plan = std::move(*plan);
        run->whole = true;
        last = std::make_shared<const Run>(std::move(*run));
        publish(last);
    }
}

void PlanRunner::publish(std::shared_ptr<const Run> run) {
    {
        const std::lock_guard lock(mutex_);
        finished_ = std::move(run);
        lastPlan_ = Clock::now();
    }
    changed_.notify_all();
    tell_();
}

} // namespace withy::ui
