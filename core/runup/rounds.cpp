// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/runup/rounds.h"

#include <algorithm>
#include <cstdint>
#include <map>

namespace withy::runup {

namespace {

using Moment = std::int64_t; ///< minutes since 1970

struct Stretch {
    Moment from = 0;
    Moment to = 0; ///< exclusive
};

std::vector<Stretch> stretchesOf(const std::vector<TimeSpan>& spans) {
    std::vector<Stretch> sorted;
    for (const auto& s : spans)
        if (s.from < s.to) sorted.push_back({s.from.minutesSinceEpoch(), s.to.minutesSinceEpoch()});
    std::sort(sorted.begin(), sorted.end(),
              [](const Stretch& a, const Stretch& b) { return a.from < b.from; });
    std::vector<Stretch> out;
    for (const auto& s : sorted) {
        if (!out.empty() && s.from <= out.back().to)
            out.back().to = std::max(out.back().to, s.to);
        else
            out.push_back(s);
    }
    return out;
}

/// When a slot may be begun, both ends included.
struct Begin {
    std::size_t slot = 0;
    Moment first = 0;
    Moment last = 0;
};

Moment shared(Moment minutes, int hands) {
    return (minutes + hands - 1) / hands;
}

/// The last moment of the good hours within first and last, if there is one.
std::optional<Moment> lastGood(const std::vector<Stretch>& good, const Begin& b) {
    for (auto s = good.rbegin(); s != good.rend(); ++s) {
        if (s->from > b.last) continue;
        const Moment at = std::min(b.last, s->to - 1);
        return at >= b.first ? std::optional(at) : std::nullopt;
    }
    return std::nullopt;
}

/// Fewest moments that each slot has one of; `last` of each is a moment that may be taken.
std::vector<Moment> fewestMoments(std::vector<Begin> begins) {
    std::sort(begins.begin(), begins.end(), [](const Begin& a, const Begin& b) { return a.last < b.last; });
    std::vector<Moment> out;
    for (const auto& b : begins)
        if (out.empty() || out.back() < b.first) out.push_back(b.last);
    return out;
}

class Merge {
public:
    Merge(const std::vector<CutSlot>& slots, const std::vector<TimeSpan>& goodHours, int hands)
        : slots_(slots), good_(stretchesOf(goodHours)), hands_(std::max(1, hands)) {}

    Outings run() {
        std::vector<Begin> inGood, others;
        for (std::size_t i = 0; i < slots_.size(); ++i) {
            if (slots_[i].latest < slots_[i].earliest) {
                out_.unserved.push_back(i);
                continue;
            }
            Begin b = beginOf(i);
            const auto last = lastGood(good_, b);
            if (last) b.last = *last;
            (last ? inGood : others).push_back(b);
        }
        addOutings(inGood, true);
        addOutings(others, false);
        std::stable_sort(out_.outings.begin(), out_.outings.end(),
                         [](const Outing& a, const Outing& b) { return a.start < b.start; });
        return std::move(out_);
    }

private:
    [[nodiscard]] Begin beginOf(std::size_t i) const {
        const Moment first = slots_[i].earliest.minutesSinceEpoch();
        const Moment last = slots_[i].latest.minutesSinceEpoch() - shared(slots_[i].minutes.value, hands_);
        return {i, first, std::max(first, last)};
    }

    /// Each slot joins the last outing it can: the freshest.
    void addOutings(const std::vector<Begin>& begins, bool good) {
        const auto moments = fewestMoments(begins);
        std::vector<std::vector<Begin>> members(moments.size());
        for (const auto& b : begins) {
            const auto after = std::upper_bound(moments.begin(), moments.end(), b.last);
            members[static_cast<std::size_t>(after - moments.begin()) - 1].push_back(b);
        }
        for (const auto& group : members)
            out_.outings.push_back(outingOf(group, good));
    }

    [[nodiscard]] Outing outingOf(const std::vector<Begin>& group, bool good) const {
        Outing out;
        std::map<int, PatchShare> patches;
        for (const auto& b : group)
            add(b.slot, out, patches);
        for (auto& [patch, share] : patches) {
            out.buckets += share.buckets;
            out.patches.push_back(share);
        }
        std::sort(out.slots.begin(), out.slots.end());
        out.inGoodHours = good;
        setTimes(group, out);
        return out;
    }

    void add(std::size_t slot, Outing& out, std::map<int, PatchShare>& patches) const {
        const auto& s = slots_[slot];
        auto& share = patches[s.patch];
        share.patch = s.patch;
        share.stems += s.stems;
        share.minutes += s.minutes;
        if (s.stemsPerBucket > 0) share.buckets += (s.stems.value + s.stemsPerBucket - 1) / s.stemsPerBucket;
        out.stems += s.stems;
        out.minutes += s.minutes;
        out.slots.push_back(slot);
    }

    /// The latest start that all share and that leaves time for it all; where none does, the one that runs
    /// past by least.
    void setTimes(const std::vector<Begin>& group, Outing& out) const {
        Moment first = group.front().first;
        Moment last = group.front().last;
        Moment due = slots_[group.front().slot].latest.minutesSinceEpoch();
        for (const auto& b : group) {
            first = std::max(first, b.first);
            last = std::min(last, b.last);
            due = std::min(due, slots_[b.slot].latest.minutesSinceEpoch());
        }
        const Moment length = shared(out.minutes.value, hands_);
        std::optional<Moment> best;
        Moment bestPast = 0;
        const auto consider = [&](Moment from, Moment to, Moment limit) {
            if (from > to) return;
            const Moment at = std::clamp(limit - length, from, to);
            const Moment past = std::max<Moment>(0, at + length - limit);
            if (best && past > bestPast) return;
            best = at;
            bestPast = past;
        };
        if (out.inGoodHours) {
            for (const auto& s : good_)
                consider(std::max(first, s.from), std::min(last, s.to - 1), std::min(due, s.to));
        } else {
            consider(first, last, due);
        }
        out.start = LocalTime::fromMinutes(*best);
        out.end = LocalTime::fromMinutes(*best + length);
        out.past = Minutes(bestPast);
    }

    const std::vector<CutSlot>& slots_;
    std::vector<Stretch> good_;
    int hands_;
    Outings out_;
};

} // namespace

Outings fewestOutings(const std::vector<CutSlot>& slots, const std::vector<TimeSpan>& goodHours, int hands) {
    return Merge(slots, goodHours, hands).run();
}

} // namespace withy::runup
