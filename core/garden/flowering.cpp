// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/garden/flowering.h"

#include "core/base/working_lines.h"

#include <algorithm>
#include <cmath>

namespace withy::garden {

namespace {

constexpr int nearestOrigin = 45; ///< days before the first cut
constexpr int farthestOrigin = 270;
constexpr double coverShare = 0.5;
const char* const coverSource = "half the year's departures reach a covered bed; common practice, no source";

bool sound(const Sourced& value) {
    return std::isfinite(value.value);
}

std::optional<FloweringTrouble> troubleIn(const FloweringInput& in, const HeatSums& sums, Day origin) {
    if (!sound(in.base) || !sound(in.heatShare) || (in.ceiling && !sound(*in.ceiling)))
        return FloweringTrouble::notFinite;
    const HeatThresholds t{in.base.value, in.ceiling ? std::optional(in.ceiling->value) : std::nullopt};
    if (heatUnitsTrouble(t)) return FloweringTrouble::badThresholds;
    if (in.heatShare.value < 0 || in.heatShare.value > 1) return FloweringTrouble::badHeatShare;
    if (in.usual.peak < in.usual.first || in.usual.last < in.usual.peak) return FloweringTrouble::outOfOrder;
    if (origin < sums.from() || sums.to() < in.usual.last || in.usual.first < origin)
        return FloweringTrouble::outsideWarmth;
    return std::nullopt;
}

/// The day this year that has the heat the normal year has on `usual`. On days without heat in the normal
/// year the sum stands still; the distance to where it came to stand is kept.
Day thermalDay(const HeatSums& sums, Day origin, Day usual) {
    const double heat = sums.normalTo(usual) - sums.normalTo(origin - 1);
    const Day reachedInNormal = sums.normalReaches(origin, heat).value_or(usual);
    const Day reached = sums.yearReaches(origin, heat).value_or(sums.to());
    return usual + std::clamp(reached - reachedInNormal, -farthestMove, farthestMove);
}

Day blend(Day usual, Day thermal, double share) {
    return usual + static_cast<int>(std::lround(share * (thermal - usual)));
}

WorkingLine given(std::string what, const Sourced& value, Unit unit) {
    return from(value.from,
                lineOf(Step::given, std::move(what), value.value, unit, value.basis, value.source));
}

double timeOf(Day day) {
    return static_cast<double>(day.number) * 1440;
}

Working write(const FloweringInput& in, const Flowering& f, double share) {
    Working w;
    w.push_back(lineOf(Step::given, "usual first cut", timeOf(f.usual.first), Unit::time, Basis::mine));
    w.push_back(given("base temperature", in.base, Unit::celsius));
    if (in.ceiling) w.push_back(given("ceiling temperature", *in.ceiling, Unit::celsius));
    w.push_back(lineOf(Step::given, "heat counted from", timeOf(f.origin), Unit::time));
    w.push_back(lineOf(Step::given, "heat sum of a normal year", f.heatSum, Unit::none));
    w.push_back(lineOf(Step::given, "same heat this year", timeOf(f.thermal.first), Unit::time));
    w.push_back(lineOf(Step::given, "days by warmth", f.thermal.first - f.usual.first, Unit::days));
    w.push_back(given("heat share", in.heatShare, Unit::none));
    w.back().step = Step::times;
    if (in.underCover)
        w.push_back(lineOf(Step::times, "under cover", share / std::max(in.heatShare.value, 1e-12),
                           Unit::none, Basis::commonPractice, coverSource));
    w.push_back(lineOf(Step::result, "first cut this year", timeOf(f.dates.first), Unit::time));
    for (auto& line : w)
        line.subject = in.patch;
    return w;
}

double shareOf(const FloweringInput& in) {
    return in.heatShare.value * (in.underCover ? coverShare : 1);
}

} // namespace

Result<Flowering, FloweringTrouble> flowering(const FloweringInput& in, const HeatSums& sums) {
    const Day origin = in.origin.value_or(in.usual.first - nearestOrigin);
    if (const auto bad = troubleIn(in, sums, origin)) return *bad;
    Flowering f;
    f.usual = in.usual;
    f.origin = origin;
    f.thermal = {thermalDay(sums, origin, in.usual.first), thermalDay(sums, origin, in.usual.peak),
                 thermalDay(sums, origin, in.usual.last)};
    const double share = shareOf(in);
    f.dates = {blend(in.usual.first, f.thermal.first, share), blend(in.usual.peak, f.thermal.peak, share),
               blend(in.usual.last, f.thermal.last, share)};
    f.dates.peak = std::max(f.dates.first, f.dates.peak);
    f.dates.last = std::max(f.dates.peak, f.dates.last);
    f.daysEarly = f.usual.first - f.dates.first;
    f.heatSum = sums.normalTo(in.usual.first) - sums.normalTo(origin - 1);
    f.working = write(in, f, share);
    return f;
}

Day coldestBefore(const YearNormals& normals, Day day) {
    // On the common year; leap days move nothing that matters here.
    const Day inYear = *Day::fromYmd(day.year(), 1, 1) + normals.coldest;
    return inYear <= day ? inYear : *Day::fromYmd(day.year() - 1, 1, 1) + normals.coldest;
}

Day originFor(const YearNormals& normals, Day firstCut) {
    return std::clamp(coldestBefore(normals, firstCut), firstCut - farthestOrigin, firstCut - nearestOrigin);
}

std::optional<SeasonLead> seasonLead(const HeatSums& sums, Day origin, Day today, const Sourced& base) {
    if (origin < sums.from() || sums.to() < today || today < origin) return std::nullopt;
    SeasonLead lead;
    lead.origin = origin;
    lead.heatSum = sums.yearTo(today) - sums.yearTo(origin - 1);
    lead.normalSum = sums.normalTo(today) - sums.normalTo(origin - 1);
    const auto usual = sums.normalReaches(origin, lead.normalSum);
    const auto same = sums.normalReaches(origin, lead.heatSum);
    if (!usual || !same || std::abs(*same - *usual) > farthestMove) return std::nullopt;
    lead.daysEarly = *same - *usual;
    auto& w = lead.working;
    w.push_back(lineOf(Step::given, "heat counted from", timeOf(origin), Unit::time));
    w.push_back(given("base temperature", base, Unit::celsius));
    w.push_back(lineOf(Step::given, "heat sum this year", lead.heatSum, Unit::none));
    w.push_back(lineOf(Step::given, "heat sum of a normal year", lead.normalSum, Unit::none));
    w.push_back(lineOf(Step::given, "a normal year has it on", timeOf(today + (*same - *usual)), Unit::time));
    w.push_back(lineOf(Step::minus, "today", timeOf(today), Unit::time));
    w.push_back(lineOf(Step::result, "days early", lead.daysEarly, Unit::days));
    return lead;
}

std::optional<Dates> regrowth(const Dates& dates, Day hardCut, int regrowthDays, double heatShare,
                              const HeatSums& sums) {
    const Day usual = hardCut + std::max(1, regrowthDays);
    if (hardCut < sums.from() || sums.to() < usual) return std::nullopt;
    const Day thermal = thermalDay(sums, hardCut + 1, usual);
    const Day first = std::max(hardCut + 1, blend(usual, thermal, heatShare));
    if (dates.last < first) return std::nullopt;
    return Dates{first, first + (dates.last - first) / 3, dates.last};
}

} // namespace withy::garden
