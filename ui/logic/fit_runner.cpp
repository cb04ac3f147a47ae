// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/fit_runner.h"

#include "ui/logic/wording.h"

namespace withy::ui {

namespace {

FitRunner::Run answered(std::uint64_t turn, const std::shared_ptr<const FitRunner::Question>& question) {
    const auto& q = *question;
    try {
        return {turn, question, plan::fitCheck(q.season, q.plan, *q.plan.cover, q.ask, q.options), {}};
    } catch (...) {
        return {turn, question, Problem{}, caughtWords()};
    }
}

} // namespace

FitRunner::FitRunner(std::function<void()> tell)
    : tell_(std::move(tell)), thread_([this](const std::stop_token& quit) { work(quit); }) {}

FitRunner::~FitRunner() {
    thread_.request_stop();
}

void FitRunner::ask(Question question) {
    const std::lock_guard lock(mutex_);
    waiting_ = std::make_shared<const Question>(std::move(question));
    waitingTurn_ = ++asked_;
    changed_.notify_all();
}

std::shared_ptr<const FitRunner::Run> FitRunner::finished() const {
    const std::lock_guard lock(mutex_);
    return finished_;
}

std::shared_ptr<const FitRunner::Run> FitRunner::wait() {
    std::unique_lock lock(mutex_);
    if (asked_ == 0) return nullptr;
    changed_.wait(lock, [this] { return finished_ && finished_->turn == asked_; });
    return finished_;
}

void FitRunner::work(const std::stop_token& quit) {
    while (true) {
        std::shared_ptr<const Question> question;
        std::uint64_t turn = 0;
        {
            std::unique_lock lock(mutex_);
            if (!changed_.wait(lock, quit, [this] { return waiting_ != nullptr; })) return;
            if (quit.stop_requested()) return;
            question = std::move(waiting_);
            waiting_.reset();
            turn = waitingTurn_;
        }
        auto run = std::make_shared<const Run>(answered(turn, question));
        {
            const std::lock_guard lock(mutex_);
            finished_ = std::move(run);
        }
        changed_.notify_all();
        tell_();
    }
}

} // namespace withy::ui
