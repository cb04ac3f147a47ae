// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/forecast_plan_weather.h"

#include <algorithm>
#include <limits>

namespace withy::plan {

namespace {

using garden::WeatherTrouble;
using model::TableKind;

constexpr int daysBefore = 400; ///< of the season: where heat may be counted from
constexpr int daysAfter = 90;
constexpr double clearlyWarmer = 1;   ///< C
constexpr double outsideTropics = 15; ///< degrees: nearer the equator a year has no warm half

const model::Ref weatherTable{TableKind::weather, 0};
const model::Ref normalsTable{TableKind::monthNormals, 0};

FindingCode codeOf(WeatherTrouble t) {
    switch (t) {
    case WeatherTrouble::minAboveMax:
        return FindingCode::weatherMinAboveMax;
    case WeatherTrouble::doubled:
        return FindingCode::weatherDoubled;
    case WeatherTrouble::looksFahrenheit:
        return FindingCode::weatherLooksFahrenheit;
    case WeatherTrouble::notFinite:
    case WeatherTrouble::badCelsius:
        break;
    }
    return FindingCode::weatherImpossible;
}

double meanOf(const garden::MonthlyMeans& low, const garden::MonthlyMeans& high,
              std::array<std::size_t, 3> months) {
    double sum = 0;
    for (const auto m : months)
        sum += low[m] + high[m];
    return sum / 6;
}

/// Summer and winter stand the wrong way round for the place.
bool otherHemisphere(double latitude, const garden::MonthlyMeans& low, const garden::MonthlyMeans& high) {
    const double north = meanOf(low, high, {5, 6, 7}) - meanOf(low, high, {11, 0, 1});
    return (latitude > outsideTropics && north < -clearlyWarmer) ||
           (latitude < -outsideTropics && north > clearlyWarmer);
}

} // namespace

GardenWeather::GardenWeather(const model::Season& season) {
    readNormals(season);
    readWeather(season);
}

void GardenWeather::readNormals(const model::Season& season) {
    garden::MonthlyMeans low{};
    garden::MonthlyMeans high{};
    std::array<bool, 12> there{};
    for (const auto& n : season.monthNormals) {
        if (n.month < 1 || n.month > 12) continue;
        const auto m = static_cast<std::size_t>(n.month - 1);
        low[m] = n.minCelsius;
        high[m] = n.maxCelsius;
        there[m] = true;
    }
    // Weather moves dates; until a patch has some there is nothing to move.
    const bool dated = std::any_of(season.patches.begin(), season.patches.end(),
                                   [](const model::Patch& p) { return p.firstCut && p.lastCut; });
    const auto months = std::count(there.begin(), there.end(), true);
    if (months < 12) {
        if (dated)
            findings.push_back(
                {FindingCode::noNormals, Severity::warning, normalsTable, {}, {static_cast<double>(months)}});
        return;
    }
    auto normals = garden::YearNormals::fromMonths(low, high);
    if (!normals) {
        findings.push_back({FindingCode::normalsImpossible, Severity::fault, normalsTable, {}, {}});
        return;
    }
    normals_ = std::move(normals).value();
    if (otherHemisphere(season.theSettings().latitude, low, high))
        findings.push_back({FindingCode::normalsOtherHemisphere, Severity::warning, normalsTable, {}, {}});
}

void GardenWeather::readWeather(const model::Season& season) {
    std::vector<garden::WeatherDay> days;
    for (const auto& w : season.weather) {
        const bool measured = w.kind == model::WeatherKind::measured;
        days.push_back({w.date,
                        {w.minCelsius, w.maxCelsius},
                        measured ? garden::TemperatureKind::measured : garden::TemperatureKind::forecast});
        if (measured && !garden::heatUnitsTrouble(w.minCelsius, w.maxCelsius))
            measured_[w.date] = days.back().range;
    }
    const bool dated = std::any_of(season.patches.begin(), season.patches.end(),
                                   [](const model::Patch& p) { return p.firstCut && p.lastCut; });
    if (days.empty() && dated)
        findings.push_back({FindingCode::noWeather, Severity::note, weatherTable, {}, {}});
    const auto& s = season.theSettings();
    // Without normals only what is wrong with the days themselves can be said.
    const auto normals = normals_ ? *normals_
                                  : garden::YearNormals{std::vector<garden::DayNormal>(365),
                                                        std::vector<garden::DayNormal>(366), 0};
    auto warmth = garden::warmthOf(normals, days, s.firstDay - daysBefore, s.lastDay + daysAfter);
    const auto is = [](WeatherTrouble t) { return [t](const auto& f) { return f.trouble == t; }; };
    if (!normals_) std::erase_if(warmth.faults, is(WeatherTrouble::looksFahrenheit));
    const bool fahrenheit =
        std::any_of(warmth.faults.begin(), warmth.faults.end(), is(WeatherTrouble::looksFahrenheit));
    if (fahrenheit) std::erase_if(warmth.faults, is(WeatherTrouble::badCelsius)); // of the same cause
    for (const auto& f : warmth.faults) {
        Finding found{codeOf(f.trouble), Severity::warning, weatherTable, {}, {}};
        if (f.trouble != WeatherTrouble::looksFahrenheit) {
            found.subjects = {f.day.iso()};
            found.numbers = {static_cast<double>(f.days)};
        }
        findings.push_back(std::move(found));
    }
    if (!normals_) return;
    if (fahrenheit) { // nothing may be reckoned with these: the calendar stands
        warmth = garden::warmthOf(normals, {}, s.firstDay - daysBefore, s.lastDay + daysAfter);
        measured_.clear();
    }
    warmth_ = std::move(warmth);
    findGaps(season);
}

void GardenWeather::findGaps(const model::Season& season) {
    const int start = std::max(0, season.theSettings().firstDay - warmth_->from);
    std::optional<Day> first;
    int known = -1;
    for (int i = start; i < knownDays(); ++i) {
        if (warmth_->kinds[static_cast<std::size_t>(i)] == garden::TemperatureKind::normal) continue;
        if (known >= 0 && i > known + 1) {
            filledDays += i - known - 1;
            if (!first) first = warmth_->from + (known + 1);
        }
        known = i;
    }
    if (first)
        findings.push_back({FindingCode::weatherMissing,
                            Severity::warning,
                            weatherTable,
                            {first->iso()},
                            {static_cast<double>(filledDays)}});
}

const garden::HeatSums& GardenWeather::sums(const garden::HeatThresholds& t) {
    const std::pair key{t.base, t.ceiling.value_or(std::numeric_limits<double>::infinity())};
    auto& kept = sums_[key];
    if (!kept) kept = std::make_unique<garden::HeatSums>(*warmth_, t);
    return *kept;
}

std::optional<garden::DayRange> GardenWeather::measured(Day day) const {
    const auto found = measured_.find(day);
    return found == measured_.end() ? std::nullopt : std::optional(found->second);
}

int GardenWeather::knownDays() const {
    if (!warmth_) return 0;
    const auto& kinds = warmth_->kinds;
    const auto last = std::find_if(kinds.rbegin(), kinds.rend(),
                                   [](auto k) { return k != garden::TemperatureKind::normal; });
    return static_cast<int>(kinds.rend() - last);
}

} // namespace withy::plan
