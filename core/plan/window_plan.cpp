// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/window_plan.h"

#include "core/model/origin.h"
#include "core/plan/plant_facts.h"

#include <algorithm>

namespace withy::plan {

namespace {

using garden::Sourced;
using model::Plant;

constexpr StandIn usualLife{5, Basis::commonPractice, "five days, the least a grower would sell"};
constexpr StandIn usualQ10{2.5, Basis::commonPractice, "planning default within the measured 2.3 to 3"};
constexpr StandIn usualConditioning{2, Basis::published, "FDI: two hours in water before storage or use"};

/// A setting nobody has changed is still common practice.
Sourced setting(double model::Settings::*field, const model::Settings& s) {
    static const model::Settings untouched;
    return {s.*field, s.*field == untouched.*field ? Basis::commonPractice : Basis::mine, "settings",
            model::originInSettings()};
}

Sourced hours(const Zone& zone, LocalTime from, LocalTime to) {
    return {std::max(0.0, zone.hoursBetween(from, to)), Basis::computed, "run-up"};
}

std::vector<garden::LifePhase> phases(const model::Settings& s, const WorkTimes& times,
                                      const BookingPlan& plan, const Zone& zone) {
    const auto& drive = times.drives.front();
    return {
        {"bench", hours(zone, plan.makeUpStart, plan.makeUpEnd), setting(&model::Settings::benchCelsius, s)},
        {"cool rest", hours(zone, plan.makeUpEnd, drive.leave), setting(&model::Settings::storeCelsius, s)},
        {"van", hours(zone, drive.leave, drive.arrive), setting(&model::Settings::vanCelsius, s)},
        {"venue", hours(zone, drive.arrive, std::max(drive.arrive, times.lastHour)),
         setting(&model::Settings::venueCelsius, s)}};
}

garden::CutWindowInput inputFor(const Plant& plant, PlantFacts& facts, const model::Settings& s,
                                const model::Booking& booking, const WorkTimes& times,
                                const BookingPlan& plan, const Zone& zone) {
    garden::CutWindowInput in;
    in.plant = plant.name;
    in.vaseLifeDays = facts.get("vase_life_min_days", plant.vaseLifeMinDays, usualLife);
    in.q10 = facts.get("q10", plant.q10, usualQ10);
    in.storageLimitDays = facts.maybe("storage_days", plant.storageDays);
    in.storageLimitCelsius = facts.maybe("storage_celsius", plant.storageCelsius);
    in.conditioningHours = facts.get("conditioning_hours_min", plant.conditioningHoursMin, usualConditioning);
    in.openingHours = facts.maybe("opening_hours", plant.openingHours);
    const bool opens = plant.openingHours && *plant.openingHours > 0;
    in.listedStage = opens ? garden::CutStage::tightBud : garden::CutStage::open;
    in.bucketHours = setting(&model::Settings::bucketHours, s);
    in.bucketCelsius =
        setting(&model::Settings::heatLimitCelsius, s); // no warmer: nothing is cut above the limit
    in.storeCelsius = setting(&model::Settings::storeCelsius, s);
    in.afterMakeUp = phases(s, times, plan, zone);
    in.makeUpStart = plan.makeUpStart;
    in.driveStart = plan.driveStart;
    in.eventStart = booking.eventStart;
    in.zone = zone;
    return in;
}

void findIn(BookingPlan& plan, const Plant& plant, const garden::CutWindow& window,
            std::vector<std::string> missing) {
    const model::Ref place{model::TableKind::plants, plant.id.value};
    if (window.impossible) {
        const bool days = window.impossible->reason == garden::NoCutReason::lifeTooShort;
        plan.findings.push_back({FindingCode::noCutWindow,
                                 Severity::warning,
                                 place,
                                 {plant.name},
                                 {window.impossible->shortBy, days ? 0.0 : 1.0}});
    } else if (window.times && window.times->stageAtLatest &&
               window.times->stageAtEarliest->fit == garden::OpeningFit::notOpenInTime) {
        plan.findings.push_back({FindingCode::openingLate, Severity::warning, place, {plant.name}, {}});
    }
    if (missing.empty()) return;
    missing.insert(missing.begin(), plant.name);
    plan.findings.push_back({FindingCode::factsMissing, Severity::note, place, std::move(missing), {}});
}

} // namespace

void planWindows(const Index& index, const model::Booking& booking, const WorkTimes& times, PlaceDays& days,
                 BookingPlan& plan) {
    for (auto& need : plan.needs) {
        const Plant& plant = *index.season.plants.find(need.plant);
        PlantFacts facts(index, plant);
        const auto in = inputFor(plant, facts, index.season.theSettings(), booking, times, plan, days.zone());
        auto window = garden::cutWindow(in);
        if (!window.ok()) continue; // the booking's own times are out of order, and said so elsewhere
        findIn(plan, plant, *window, facts.missing());
        need.window = PlantWindow{std::move(window).value(), facts.missing()};
    }
}

} // namespace withy::plan
