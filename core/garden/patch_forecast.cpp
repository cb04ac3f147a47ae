// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/garden/patch_forecast.h"

#include "core/base/working_lines.h"
#include "core/garden/walk_update.h"

#include <algorithm>
#include <cmath>

namespace withy::garden {

namespace {

constexpr double steepness = 4; ///< of the hump: powers of both flanks together (own choice)
constexpr int longest = 400;
constexpr std::array<double, 3> levels{0.2, 0.5, 0.8};
constexpr double surest = 1e6; ///< shape beyond which a count is as good as Poisson

std::optional<PatchForecastTrouble> troubleIn(const PatchForecastInput& in) {
    for (const double v :
         {in.expectedStems.value, in.holdDays.value, in.dateSpread, in.priorWalks, in.priorShape})
        if (!std::isfinite(v)) return PatchForecastTrouble::notFinite;
    if (in.dates.peak < in.dates.first || in.dates.last < in.dates.peak)
        return PatchForecastTrouble::outOfOrder;
    if (in.dates.last - in.dates.first > longest) return PatchForecastTrouble::tooLong;
    if (in.expectedStems.value < 0 || in.expectedStems.value > 1e6) return PatchForecastTrouble::badAmount;
    if (in.holdDays.value < 0 || in.holdDays.value > 90) return PatchForecastTrouble::badHold;
    if (in.priorWalks <= 0 || in.priorShape <= 0 || in.dateSpread < 0 || in.dateSpread > 60)
        return PatchForecastTrouble::badPrior;
    if (in.secondFlush &&
        (in.secondFlush->peak < in.secondFlush->first || in.secondFlush->last < in.secondFlush->peak))
        return PatchForecastTrouble::outOfOrder;
    return std::nullopt;
}

/// A Gamma-mixed Poisson by its mean and the mean square of its rate.
struct Mixed {
    double mean = 0;
    double square = 0;

    void add(const Shifted& s, double stems) {
        mean += s.thetaPart * stems;
        square += s.squarePart * stems * stems;
    }

    [[nodiscard]] StemLevels levelsOf() const {
        if (mean < 1e-9) return {};
        const double variance = square - mean * mean;
        const double shape = variance > mean * mean / surest ? mean * mean / variance : surest;
        const auto q = negativeBinomialQuantiles(mean, shape, levels);
        return {Stems(q[0]), Stems(q[1]), Stems(q[2])};
    }
};

/// Shares whole totals out over the days by running sums, so that nothing is lost or made.
void shareOut(PatchForecast& f) {
    double all = 0;
    for (const auto& d : f.days)
        all += d.mean;
    if (all <= 0) return;
    double before = 0;
    StemLevels given;
    const auto next = [](Stems total, double share, Stems& so) {
        const Stems upTo(std::llround(static_cast<double>(total.value) * share));
        const Stems today = upTo - so;
        so = upTo;
        return today;
    };
    for (std::size_t i = 0; i < f.days.size(); ++i) {
        auto& d = f.days[i];
        before += d.mean;
        const double share = i + 1 == f.days.size() ? 1 : std::min(1.0, before / all);
        d.supply.cautious = next(f.total.cautious, share, given.cautious);
        d.supply.likely = next(f.total.likely, share, given.likely);
        d.supply.hopeful = next(f.total.hopeful, share, given.hopeful);
    }
}

void fillDays(PatchForecast& f, const PatchForecastInput& in, const StemCurve& curve,
              const WalkUpdate& update) {
    const int most = update.shifts.back().days;
    const int hold = static_cast<int>(in.holdDays.value);
    f.from = curve.from() - most;
    const int days = curve.to() - curve.from() + 1 + 2 * most + hold;
    // The curve unshifted, with room for the shifts at either end.
    std::vector<double> fresh;
    std::vector<double> standing;
    for (int i = 0; i < days + 2 * most; ++i) {
        const Day day = f.from + (i - most);
        fresh.push_back(curve.between(day, day));
        standing.push_back(curve.standing(day));
    }
    f.days.resize(static_cast<std::size_t>(days));
    for (std::size_t i = 0; i < f.days.size(); ++i) {
        Mixed freshOf;
        Mixed standingOf;
        for (const auto& s : update.shifts) {
            const std::size_t at = i + static_cast<std::size_t>(most - s.days);
            freshOf.add(s, fresh[at]);
            standingOf.add(s, standing[at]);
        }
        f.days[i] = {freshOf.mean, standingOf.mean, freshOf.levelsOf(), standingOf.levelsOf(), {}};
    }
}

void total(PatchForecast& f, const StemCurve& curve, const WalkUpdate& update) {
    Mixed all;
    f.amountFactor = 0;
    for (const auto& s : update.shifts) {
        all.add(s, curve.total());
        f.amountFactor += s.weight * s.shape / s.rate;
        f.shiftDays += s.weight * s.days;
    }
    f.expected = all.mean;
    f.total = all.levelsOf();
}

Working write(const PatchForecastInput& in, const StemCurve& curve, const WalkUpdate& update,
              const PatchForecast& f) {
    Working w;
    w.push_back(
        from(in.expectedStems.from, lineOf(Step::given, "expected stems", in.expectedStems.value, Unit::stems,
                                           in.expectedStems.basis, in.expectedStems.source)));
    if (in.hardCut)
        w.push_back(
            lineOf(Step::minus, "lost by the hard cut", in.expectedStems.value - curve.total(), Unit::stems));
    if (!update.parts.empty())
        w.push_back(lineOf(Step::given, "walks the expectation is worth", in.priorWalks, Unit::count,
                           Basis::commonPractice));
    for (const auto& p : update.parts) {
        w.push_back(lineOf(Step::given, "walk", static_cast<double>(p.day.number) * 1440, Unit::time));
        w.push_back(lineOf(Step::given, "counted", p.counted, Unit::stems, Basis::counted));
        w.push_back(lineOf(Step::over, "expected then", p.expected, Unit::stems));
        w.push_back(lineOf(Step::given, "worth in walks", p.worth, Unit::count));
    }
    if (!update.parts.empty()) {
        w.push_back(lineOf(Step::times, "amount after the walks", f.amountFactor * 100, Unit::percent));
        w.push_back(lineOf(Step::given, "later by the walks", f.shiftDays, Unit::days));
    }
    w.push_back(lineOf(Step::result, "stems to come in all", f.expected, Unit::stems));
    for (auto& line : w)
        line.subject = in.patch;
    return w;
}

} // namespace

std::vector<double> bloomCurve(const Dates& dates, double stems) {
    const int n = dates.last - dates.first + 1;
    if (n <= 0) return {};
    const double top = (dates.peak - dates.first + 1.0) / (n + 1.0);
    std::vector<double> curve;
    double sum = 0;
    for (int i = 0; i < n; ++i) {
        const double x = (i + 1.0) / (n + 1.0);
        // 1 on the peak day; in logs, so that no flank loses its digits
        const double logs = top * std::log(x / top) + (1 - top) * std::log((1 - x) / (1 - top));
        curve.push_back(std::exp(steepness * logs));
        sum += curve.back();
    }
    for (double& c : curve)
        c *= stems / sum;
    return curve;
}

Result<PatchForecast, PatchForecastTrouble> patchForecast(const PatchForecastInput& in) {
    if (const auto bad = troubleIn(in)) return *bad;
    const StemCurve curve(in);
    WalkUpdate update = walkUpdate(in, curve);
    PatchForecast f;
    fillDays(f, in, curve, update);
    total(f, curve, update);
    shareOut(f);
    f.walksUsed = static_cast<int>(update.parts.size());
    f.working = write(in, curve, update, f);
    f.notes = std::move(update.notes);
    return f;
}

const DayForecast* PatchForecast::on(Day day) const {
    const int i = day - from;
    return i < 0 || i >= static_cast<int>(days.size()) ? nullptr : &days[static_cast<std::size_t>(i)];
}

} // namespace withy::garden
