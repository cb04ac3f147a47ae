// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/heat_working.h"

#include "core/base/working_lines.h"
#include "core/model/origin.h"

namespace withy::plan {

namespace {

using model::TableKind;

struct HeatKeys {
    const char* lowest;
    const char* highest;
    Origin from; ///< the page of what is known; a day's own record is found there by its date
};

HeatKeys keysOf(HeatBasis basis) {
    switch (basis) {
    case HeatBasis::measured:
        return {"lowest of the day, measured", "highest of the day, measured",
                model::originOf(TableKind::weather, 0)};
    case HeatBasis::forecast:
        return {"lowest of the day, forecast", "highest of the day, forecast",
                model::originOf(TableKind::weather, 0)};
    case HeatBasis::normals:
        break;
    }
    return {"lowest of the day, usual", "highest of the day, usual",
            model::originOf(TableKind::monthNormals, 0)};
}

} // namespace

Working warmestWorking(PlaceDays& days, LocalTime start, LocalTime end, double celsius,
                       const model::Settings& settings) {
    const auto& day = days.on(start.day);
    if (!day.basis) return {};
    const auto keys = keysOf(*day.basis);
    const auto time = [](const char* what, LocalTime t) {
        return lineOf(Step::given, what, t.minutesSinceEpoch(), Unit::time);
    };
    const auto warmth = [](Step step, const char* what, double degrees) {
        return lineOf(step, what, degrees, Unit::celsius);
    };
    static const model::Settings untouched;
    const bool mine = settings.heatLimitCelsius != untouched.heatLimitCelsius;
    return {
        from(keys.from, warmth(Step::given, keys.lowest, day.garden.heat.minimum)),
        from(keys.from, warmth(Step::given, keys.highest, day.garden.heat.maximum)),
        time("cutting from", start),
        time("cutting until", end),
        from(model::originInSettings(), lineOf(Step::given, "heat limit", settings.heatLimitCelsius,
                                               Unit::celsius, mine ? Basis::mine : Basis::commonPractice)),
        warmth(Step::result, "warmest while cutting", celsius)};
}

} // namespace withy::plan
