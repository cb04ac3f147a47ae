// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/day.h"
#include "core/base/id.h"
#include "core/base/money.h"
#include "core/model/words.h"

#include <optional>
#include <string>

namespace withy::model {

/// What holds for the whole season. There is exactly one, with id 1.
/// Defaults are common practice with no source unless a comment names one.
struct Settings {
    Id<Settings> id{1};
    std::string seasonName;
    Day firstDay;
    Day lastDay;
    std::string placeName;
    double latitude = 0;
    double longitude = 0; ///< degrees, east positive
    std::string zoneRule; ///< POSIX TZ text, see Zone
    std::string currency = "GBP";
    double taxRate = 0; ///< percent; the grower's own figure
    std::optional<Day> taxRateDate;
    PaperSize paper = PaperSize::a4;
    UnitSystem units = UnitSystem::metric;
    SpareRule spareRule = SpareRule::percent;
    double sparePercent = 10;    ///< one event florist's allowance for breakage (general.csv, TIPSY)
    double spareConfidence = 95; ///< percent
    double storeCelsius = 8;     ///< a cool barn floor, not a cold store
    double benchCelsius = 18;
    double vanCelsius = 20;
    double venueCelsius = 21;
    double heatLimitCelsius = 22;                 ///< no cutting above this while another hour exists
    std::int64_t workFrom = std::int64_t{6} * 60; ///< minutes after midnight
    std::int64_t workTo = std::int64_t{19} * 60;  ///< minutes after midnight
    std::int64_t recutMm = 25;                    ///< 2.5 cm before placing (UMASS in general.csv)
    double bucketHours = 1;                       ///< from the cut to the store
    std::optional<std::int64_t> coolBuckets;      ///< that the cool store holds; blank: not counted
    Money labourRate;                             ///< per hour
    Money travelRate;                             ///< per kilometre
    double liftingLimitKg = 10;
    double depositShare = 25; ///< percent
    std::int64_t balanceDays = 14;
    std::int64_t quoteDays = 30;
    std::string terms;
    ForecastLevel promiseLevel = ForecastLevel::cautious;
};

/// The place's normal minimum and maximum in one month.
struct MonthNormal {
    Id<MonthNormal> id;
    std::int64_t month = 1;
    double minCelsius = 0;
    double maxCelsius = 0;
};

/// How long one kind of work takes, as a person here does it.
struct Rate {
    Id<Rate> id;
    RateKind work = RateKind::washContainer;
    double minutes = 0;
    Basis basis = Basis::commonPractice;
    std::string note;
};

/// A finding the grower has seen and accepted; it stays quiet until its facts change.
struct AcceptedFinding {
    Id<AcceptedFinding> id;
    std::string finding; ///< the finding's key
    std::string facts;   ///< the facts it was accepted with
    Day acceptedOn;
};

} // namespace withy::model
