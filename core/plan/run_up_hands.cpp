// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/run_up_hands.h"

#include "core/runup/busy_spans.h"

#include <algorithm>

namespace withy::plan {

Hands::Hands(const model::Season& season) : season_(season) {
    workers_.push_back({});
    helpers_.push_back(nullptr);
    for (const auto& helper : season.helpers) {
        workers_.push_back({helper.id});
        helpers_.push_back(&helper);
    }
}

std::optional<std::size_t> Hands::find(const Worker& worker) const {
    const auto at = std::find(workers_.begin(), workers_.end(), worker);
    if (at == workers_.end()) return std::nullopt;
    return static_cast<std::size_t>(at - workers_.begin());
}

bool Hands::can(std::size_t worker, Skill skill) const {
    if (!helpers_[worker]) return true;
    switch (skill) {
    case Skill::bench:
        return true;
    case Skill::cut:
        return helper(worker).canCut;
    case Skill::condition:
        return helper(worker).canCondition;
    case Skill::make:
        return helper(worker).canMake;
    case Skill::drive:
        return helper(worker).canDrive;
    }
    return false;
}

std::int64_t Hands::percent(std::size_t worker) const {
    return helpers_[worker] && helper(worker).speed == model::Speed::learning ? learnersPercent : 100;
}

Minutes Hands::takes(std::size_t worker, Minutes minutes) const {
    return Minutes((minutes.value * percent(worker) + 99) / 100);
}

Minutes Hands::takeTogether(std::size_t a, std::size_t b, Minutes minutes) const {
    const std::int64_t both = percent(a) + percent(b);
    return Minutes((minutes.value * percent(a) * percent(b) + 100 * both - 1) / (100 * both));
}

WorkerHours Hands::hours(std::size_t worker, Day from, Day to) const {
    WorkerHours out;
    out.worker = workers_[worker];
    out.busy = runup::busySpansOf(season_, workers_[worker].helper, from, to);
    if (!helpers_[worker]) {
        const auto& s = season_.theSettings();
        for (Day day = from; day <= to; day = day + 1)
            out.there.push_back(
                {LocalTime{day, 0} + Minutes(s.workFrom), LocalTime{day, 0} + Minutes(s.workTo)});
        return out;
    }
    for (const auto& h : season_.helperHours) {
        if (h.helper != helper(worker).id || h.to.day < from || to < h.from.day) continue;
        out.there.push_back({h.from, h.to});
    }
    std::sort(out.there.begin(), out.there.end(),
              [](const runup::TimeSpan& a, const runup::TimeSpan& b) { return a.from < b.from; });
    return out;
}

bool Hands::neverThere(std::size_t worker) const {
    if (!helpers_[worker]) return false;
    return std::none_of(season_.helperHours.begin(), season_.helperHours.end(),
                        [&](const auto& h) { return h.helper == helper(worker).id && h.from < h.to; });
}

} // namespace withy::plan
