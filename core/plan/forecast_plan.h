// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/garden/bloom_fit.h"
#include "core/garden/patch_forecast.h"
#include "core/plan/finding.h"
#include "core/plan/index.h"

#include <map>
#include <memory>
#include <optional>
#include <vector>

/// What the garden will have in flower: every patch's dates and stems, day by day.
namespace withy::plan {

struct ForecastOptions {
    std::optional<Day> today; ///< for "runs early"; blank: the last measured day
};

enum class DatesBy {
    nothing,  ///< no usual dates and none noted: no forecast
    calendar, ///< the usual dates stand
    warmth,   ///< moved by this year's temperatures
    pastYears ///< moved as the plant's own noted years say
};

struct PatchOutlook {
    Id<model::Patch> patch;
    DatesBy by = DatesBy::nothing;
    std::optional<garden::Dates> usual; ///< as the grower gave them
    std::optional<garden::Dates> dates; ///< this year's, before the walks' shift
    int daysEarly = 0;                  ///< of the first cut; negative: late
    std::optional<Day> hopefulFirst;    ///< range of the first cut that holds 60 % of years
    std::optional<Day> cautiousFirst;
    int holdDays = 0;                              ///< a stem ready on day d may be cut on d to d + holdDays
    std::optional<garden::PatchForecast> forecast; ///< blank: no dates or no expected stems
    /// Stems becoming ready per day in the usual year, from usual->first on.
    std::vector<double> usualCurve;
    Working datesWorking;
};

struct ForecastPlan {
    std::map<Id<model::Patch>, PatchOutlook> patches;
    std::map<Id<model::Plant>, garden::BloomModel> fits; ///< plants with noted years
    std::optional<garden::SeasonLead> lead;
    int measuredDays = 0;
    int forecastDays = 0;
    int filledDays = 0;            ///< gaps filled from the normals
    std::vector<Finding> findings; ///< by place
};

ForecastPlan forecastPlan(const Index& index, const model::Season& season,
                          const ForecastOptions& options = {});

} // namespace withy::plan
