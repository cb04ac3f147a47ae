// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/forecast_plan_years.h"

#include <algorithm>

namespace withy::plan {

namespace {

constexpr int oneFlowering = 180; ///< dates nearer than this are of one year
constexpr int yearDaysBefore = 200;
constexpr int yearDaysAfter = 60;
constexpr int mostFilled = 5;

/// The measured days about a first cut, as far as they run on without a longer gap.
garden::BloomYear yearOf(Day firstCut, const GardenWeather& weather) {
    garden::BloomYear year{firstCut, firstCut, {}};
    const auto dayOr = [&](Day day, int& filled) -> std::optional<garden::DayRange> {
        if (const auto known = weather.measured(day)) {
            filled = 0;
            return known;
        }
        if (++filled > mostFilled || !weather.normals()) return std::nullopt;
        return weather.normals()->on(day);
    };
    int filled = 0;
    for (int i = 0; i <= yearDaysBefore; ++i) {
        const auto day = dayOr(firstCut - i, filled);
        if (!day) {
            --filled;
            break;
        }
        year.days.push_back(*day);
    }
    year.days.resize(year.days.size() - static_cast<std::size_t>(filled)); // not to begin with filled days
    year.from = firstCut - (static_cast<int>(year.days.size()) - 1);
    std::reverse(year.days.begin(), year.days.end());
    if (year.days.empty()) return year;
    filled = 0;
    for (int i = 1; i <= yearDaysAfter; ++i) {
        const auto day = dayOr(firstCut + i, filled);
        if (!day) break;
        year.days.push_back(*day);
    }
    return year;
}

std::map<Id<model::Plant>, std::vector<Day>> firstCuts(const model::Season& season) {
    std::map<Id<model::Plant>, std::vector<Day>> cuts;
    for (const auto& b : season.pastBlooms)
        if (b.firstCut < season.theSettings().firstDay) cuts[b.plant].push_back(b.firstCut);
    for (auto& [plant, days] : cuts) {
        std::sort(days.begin(), days.end());
        std::vector<Day> kept;
        for (const Day day : days)
            if (kept.empty() || day - kept.back() > oneFlowering) kept.push_back(day);
        days = std::move(kept);
    }
    return cuts;
}

std::string nameOf(const model::Season& season, Id<model::Plant> plant) {
    const auto* p = season.plants.find(plant);
    return p != nullptr ? p->name : std::string{};
}

} // namespace

std::map<Id<model::Plant>, garden::BloomModel>
fitPlants(const model::Season& season, const GardenWeather& weather, std::vector<Finding>& findings) {
    std::map<Id<model::Plant>, garden::BloomModel> fits;
    for (const auto& [plant, days] : firstCuts(season)) {
        const model::Ref place{model::TableKind::plants, plant.value};
        const std::string name = nameOf(season, plant);
        std::vector<garden::BloomYear> years;
        std::vector<Day> leftOut;
        for (const Day day : days) {
            years.push_back(yearOf(day, weather));
            if (years.back().days.size() <= 1) leftOut.push_back(day);
        }
        if (leftOut.size() < days.size()) // with none at all, that there are too few says it
            for (const Day day : leftOut)
                findings.push_back(
                    {FindingCode::bloomYearLeftOut, Severity::note, place, {name, day.iso()}, {}});
        auto model = garden::fitBloom(years);
        if (model.years < garden::fewestBloomYears)
            // The years noted stand third: none of them usable is another thing than none noted.
            findings.push_back(
                {FindingCode::bloomYearsTooFew,
                 Severity::note,
                 place,
                 {name},
                 {static_cast<double>(model.years), static_cast<double>(garden::fewestBloomYears),
                  static_cast<double>(days.size())}});
        fits.emplace(plant, std::move(model));
    }
    return fits;
}

} // namespace withy::plan
