// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/fit_plan.h"

#include <QString>

#include <condition_variable>
#include <cstdint>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <thread>

namespace withy::ui {

/// Answers "can I take it?" on a thread of its own, one question at a time; of questions that come while it
/// thinks only the newest is answered. All functions belong to the thread that made it.
class FitRunner {
public:
    struct Question {
        model::Season season;
        plan::Plan plan; ///< of this season; its cover is not null
        plan::FitAsk ask;
        plan::FitOptions options;
    };

    struct Run {
        std::uint64_t turn = 0; ///< which ask() it answers
        std::shared_ptr<const Question> question;
        Result<plan::FitAnswer, Problem> answer;
        QString fault; ///< why there is no answer at all; then `answer` says nothing
    };

    /// `tell` is called on the runner's thread whenever an answer is there.
    explicit FitRunner(std::function<void()> tell);
    ~FitRunner();

    FitRunner(const FitRunner&) = delete;
    FitRunner& operator=(const FitRunner&) = delete;

    void ask(Question question);
    /// The last answer, which may be to an earlier ask(); null when there is none yet.
    [[nodiscard]] std::shared_ptr<const Run> finished() const;
    /// The answer to the newest ask(), once it is there. Null only when nothing was ever asked.
    [[nodiscard]] std::shared_ptr<const Run> wait();

    [[nodiscard]] std::uint64_t asked() const { return asked_; }

private:
    void work(const std::stop_token& quit);

    std::function<void()> tell_;
    std::uint64_t asked_ = 0;
    mutable std::mutex mutex_; // guards what follows
    std::condition_variable_any changed_;
    std::shared_ptr<const Question> waiting_;
    std::uint64_t waitingTurn_ = 0;
    std::shared_ptr<const Run> finished_;
    std::jthread thread_; // last: it uses all the others
};

} // namespace withy::ui
