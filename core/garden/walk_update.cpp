// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/garden/walk_update.h"

#include <algorithm>
#include <cmath>

namespace withy::garden {

namespace {

constexpr double widest = 2;     ///< standard deviations of shift looked at
constexpr double coarseFrom = 4; ///< days of spread from which every other day will do
constexpr double boldest = 4;    ///< a count weighs as this many times the expectation at most
constexpr double farAbove = 10;  ///< times the expectation: said so
constexpr double farAboveStems = 20;
constexpr double strayStems = 0.05; ///< a stem may always be out of turn
constexpr int fortnight = 14;

/// Days over which stems were counted, with the count.
struct DaySpan {
    Day first;
    Day last;
    bool now = false; ///< standing on `first`
    double counted = 0;
};

double expectedIn(const StemCurve& curve, const DaySpan& span, int shift) {
    return span.now ? curve.standing(span.first - shift)
                    : curve.between(span.first - shift, span.last - shift);
}

std::vector<DaySpan> spansOf(const WalkCount& w) {
    std::vector<DaySpan> spans;
    if (w.readyNow) spans.push_back({w.day, w.day, true, static_cast<double>(*w.readyNow + w.cutLately)});
    if (w.withinThreeDays)
        spans.push_back({w.day + 1, w.day + 3, false, static_cast<double>(*w.withinThreeDays)});
    if (w.withinWeek) {
        const std::int64_t nearer = w.withinThreeDays.value_or(0);
        const std::int64_t later = std::max<std::int64_t>(0, *w.withinWeek - nearer);
        spans.push_back({w.day + (w.withinThreeDays ? 4 : 1), w.day + 7, false, static_cast<double>(later)});
    }
    return spans;
}

bool negative(const WalkCount& w) {
    return w.readyNow.value_or(0) < 0 || w.withinThreeDays.value_or(0) < 0 || w.withinWeek.value_or(0) < 0 ||
           w.cutLately < 0;
}

std::vector<Shifted> priorShifts(const PatchForecastInput& in) {
    const int step = in.dateSpread >= coarseFrom ? 2 : 1;
    const int most = static_cast<int>(std::ceil(widest * in.dateSpread / step)) * step;
    std::vector<Shifted> shifts;
    double sum = 0;
    for (int s = -most; s <= most; s += step) {
        const double z = in.dateSpread > 0 ? s / in.dateSpread : 0;
        shifts.push_back({s, std::exp(-z * z / 2), in.priorShape, in.priorShape, 0, 0});
        sum += shifts.back().weight;
    }
    for (auto& s : shifts)
        s.weight /= sum;
    return shifts;
}

class Updating {
public:
    Updating(const PatchForecastInput& in, const StemCurve& curve)
        : in_(in), curve_(curve), prior_(priorShifts(in)), logs_(prior_.size(), 0.0) {
        out_.shifts = prior_;
    }

    void take(std::size_t index) {
        const WalkCount& walk = in_.walks[index];
        const auto spans = spansOf(walk);
        if (spans.empty()) return note(index, WalkTrouble::blank, {});
        if (negative(walk)) return note(index, WalkTrouble::negative, {});
        WalkPart part{walk.day, 0, 0, 0};
        for (const auto& span : spans) {
            part.counted += span.counted;
            for (const auto& s : prior_)
                part.expected += s.weight * expectedIn(curve_, span, s.days);
        }
        if (curve_.between(walk.day - fortnight, walk.day + fortnight) <= 0)
            return note(index, WalkTrouble::outsideFlowering, part);
        if (walk.withinThreeDays && walk.withinWeek && *walk.withinWeek < *walk.withinThreeDays)
            note(index, WalkTrouble::weekUnderThreeDays, part);
        if (part.counted >= farAboveStems && part.counted >= farAbove * part.expected)
            note(index, WalkTrouble::farAboveExpected, part);
        weigh(spans, part);
    }

    WalkUpdate finish() {
        double most = -1e300;
        for (std::size_t i = 0; i < out_.shifts.size(); ++i) {
            const auto& s = out_.shifts[i];
            // theta integrated out of prior and counts; what is alike for all shifts is left out
            logs_[i] += std::log(prior_[i].weight) - s.shape * std::log(s.rate);
            most = std::max(most, logs_[i]);
        }
        double sum = 0;
        for (std::size_t i = 0; i < out_.shifts.size(); ++i)
            sum += out_.shifts[i].weight = std::exp(logs_[i] - most);
        for (auto& s : out_.shifts) {
            s.weight /= sum;
            s.thetaPart = s.weight * s.shape / s.rate;
            s.squarePart = s.thetaPart * (s.shape + 1) / s.rate;
        }
        return std::move(out_);
    }

private:
    void note(std::size_t index, WalkTrouble trouble, const WalkPart& part) {
        out_.notes.push_back({index, trouble, part.counted, part.expected});
    }

    void weigh(const std::vector<DaySpan>& spans, WalkPart part) {
        const double oneWalk = in_.priorShape / in_.priorWalks; // stems, after thinning
        const double size = std::max(part.expected, part.counted / boldest);
        const double thinning = std::max(1.0, size / oneWalk);
        part.worth = part.expected / thinning / oneWalk;
        out_.parts.push_back(part);
        for (std::size_t i = 0; i < out_.shifts.size(); ++i) {
            auto& s = out_.shifts[i];
            s.shape += part.counted / thinning;
            for (const auto& span : spans) {
                const double expected = expectedIn(curve_, span, s.days);
                s.rate += expected / thinning;
                logs_[i] += span.counted / thinning * std::log(expected + strayStems);
            }
        }
    }

    const PatchForecastInput& in_;
    const StemCurve& curve_;
    const std::vector<Shifted> prior_;
    std::vector<double> logs_;
    WalkUpdate out_;
};

} // namespace

StemCurve::StemCurve(const PatchForecastInput& in)
    : from_(in.dates.first), hold_(static_cast<int>(in.holdDays.value)), hardCut_(in.hardCut) {
    std::vector<double> stems = bloomCurve(in.dates, in.expectedStems.value);
    const auto at = [&](Day day) { return static_cast<std::size_t>(std::max(0, day - from_)); };
    if (in.hardCut) {
        double later = 0;
        for (std::size_t i = at(*in.hardCut + 1); i < stems.size(); ++i) {
            if (in.secondFlush && in.secondFlush->first <= from_ + static_cast<int>(i)) later += stems[i];
            stems[i] = 0;
        }
        if (in.secondFlush && in.secondFlush->first >= from_) {
            const auto again = bloomCurve(*in.secondFlush, later);
            stems.resize(std::max(stems.size(), at(in.secondFlush->last + 1)), 0.0);
            for (std::size_t i = 0; i < again.size(); ++i)
                stems[at(in.secondFlush->first) + i] += again[i];
        }
    }
    sums_.push_back(0);
    for (const double s : stems)
        sums_.push_back(sums_.back() + s);
}

double StemCurve::upTo(Day day) const {
    const int last = static_cast<int>(sums_.size()) - 1;
    return sums_[static_cast<std::size_t>(std::clamp(day - from_ + 1, 0, last))];
}

double StemCurve::standing(Day day) const {
    Day first = day - hold_;
    if (hardCut_ && *hardCut_ < day) first = std::max(first, *hardCut_ + 1);
    return between(first, day);
}

WalkUpdate walkUpdate(const PatchForecastInput& in, const StemCurve& curve) {
    Updating updating(in, curve);
    for (std::size_t i = 0; i < in.walks.size(); ++i)
        updating.take(i);
    return updating.finish();
}

} // namespace withy::garden
