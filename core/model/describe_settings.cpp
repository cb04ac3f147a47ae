// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/describe.h"
#include "core/model/fields.h"

namespace withy::model {

using namespace fields;

std::vector<TableInfo> describeSettings() {
    return {
        table<Settings>("settings", "season_name",
                        {
                            field("season_name", &Settings::seasonName, needed()),
                            field("first_day", &Settings::firstDay),
                            field("last_day", &Settings::lastDay),
                            field("place_name", &Settings::placeName),
                            field("latitude", &Settings::latitude, number(-90, 90, "degrees")),
                            field("longitude", &Settings::longitude, number(-180, 180, "degrees")),
                            field("zone_rule", &Settings::zoneRule, needed(100)),
                            field("currency", &Settings::currency, needed(3)),
                            field("tax_rate", &Settings::taxRate, number(0, 100, "%")),
                            field("tax_rate_date", &Settings::taxRateDate),
                            field("paper", &Settings::paper),
                            field("units", &Settings::units),
                            field("spare_rule", &Settings::spareRule),
                            field("spare_percent", &Settings::sparePercent, number(0, 300, "%")),
                            field("spare_confidence", &Settings::spareConfidence, number(50, 99.9, "%")),
                            field("store_celsius", &Settings::storeCelsius, number(-60, 60, "C")),
                            field("bench_celsius", &Settings::benchCelsius, number(-60, 60, "C")),
                            field("van_celsius", &Settings::vanCelsius, number(-60, 60, "C")),
                            field("venue_celsius", &Settings::venueCelsius, number(-60, 60, "C")),
                            field("heat_limit_celsius", &Settings::heatLimitCelsius, number(-60, 60, "C")),
                            field("work_from", &Settings::workFrom, number(0, 1440, "minute of the day")),
                            field("work_to", &Settings::workTo, number(0, 1440, "minute of the day")),
                            field("recut_mm", &Settings::recutMm, number(0, 300, "mm")),
                            field("bucket_hours", &Settings::bucketHours, number(0, 24, "hours")),
                            field("cool_buckets", &Settings::coolBuckets, number(0, 10000, "count")),
                            field("labour_rate", &Settings::labourRate, number(0, 1e11)),
                            field("travel_rate", &Settings::travelRate, number(0, 1e11)),
                            field("lifting_limit_kg", &Settings::liftingLimitKg, number(0, 100, "kg")),
                            field("deposit_share", &Settings::depositShare, number(0, 100, "%")),
                            field("balance_days", &Settings::balanceDays, number(0, 365, "days")),
                            field("quote_days", &Settings::quoteDays, number(0, 365, "days")),
                            field("terms", &Settings::terms, text(10000)),
                            field("promise_level", &Settings::promiseLevel),
                        }),
        table<MonthNormal>("month_normal", "",
                           {
                               field("month", &MonthNormal::month, number(1, 12)),
                               field("min_celsius", &MonthNormal::minCelsius, number(-60, 60, "C")),
                               field("max_celsius", &MonthNormal::maxCelsius, number(-60, 60, "C")),
                           },
                           {"month"}),
        table<Rate>("rate", "",
                    {
                        field("work", &Rate::work),
                        field("minutes", &Rate::minutes, number(0, 10000, "minutes")),
                        field("basis", &Rate::basis),
                        field("note", &Rate::note, text(1000)),
                    },
                    {"work"}),
        table<AcceptedFinding>("accepted_finding", "",
                               {
                                   field("finding", &AcceptedFinding::finding, needed()),
                                   field("facts", &AcceptedFinding::facts, text(1000)),
                                   field("accepted_on", &AcceptedFinding::acceptedOn),
                               }),
    };
}

} // namespace withy::model
