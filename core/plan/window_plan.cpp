// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/window_plan.h"

#include <algorithm>

namespace withy::plan {

namespace {

using garden::Sourced;
using model::Plant;

/// What stands in for a fact the plant does not have.
struct StandIn {
    double value;
    Basis basis;
    const char* source;
};

constexpr StandIn usualLife{5, Basis::commonPractice, "five days, the least a grower would sell"};
constexpr StandIn usualQ10{2.5, Basis::commonPractice, "planning default within the measured 2.3 to 3"};
constexpr StandIn usualConditioning{2, Basis::published, "FDI: two hours in water before storage or use"};

/// Reads a plant's facts with their basis, noting the ones a default had to stand in for.
class Facts {
public:
    Facts(const Index& index, const Plant& plant) : index_(index), plant_(plant) {}

    Sourced get(const char* name, const std::optional<double>& value, const StandIn& standIn) {
        if (value) return {*value, basisOf(name), sourceOf(name)};
        missing.emplace_back(name);
        return {standIn.value, standIn.basis, standIn.source};
    }

    std::optional<Sourced> maybe(const char* name, const std::optional<double>& value) {
        if (!value) return std::nullopt;
        return Sourced{*value, basisOf(name), sourceOf(name)};
    }

    std::vector<std::string> missing;

private:
    const model::PlantFact* fact(const char* name) const {
        for (const auto* f : Index::of(index_.facts, plant_.id)) {
            if (f->fact == name) return f;
        }
        return nullptr;
    }

    Basis basisOf(const char* name) const {
        const auto* f = fact(name);
        return f ? f->basis : Basis::mine;
    }

    std::string sourceOf(const char* name) const {
        const auto* f = fact(name);
        return f ? f->source : std::string();
    }

    const Index& index_;
    const Plant& plant_;
};

Sourced setting(double value) { return {value, Basis::mine, "settings"}; }

Sourced hours(const Zone& zone, LocalTime from, LocalTime to) {
    return {std::max(0.0, zone.hoursBetween(from, to)), Basis::computed, "run-up"};
}

std::vector<garden::LifePhase> phases(const model::Settings& s, const WorkTimes& times, const BookingPlan& plan,
                                      const Zone& zone) {
    const auto& drive = times.drives.front();
    return {{"bench", hours(zone, plan.makeUpStart, plan.makeUpEnd), setting(s.benchCelsius)},
            {"cool rest", hours(zone, plan.makeUpEnd, drive.leave), setting(s.storeCelsius)},
            {"van", hours(zone, drive.leave, drive.arrive), setting(s.vanCelsius)},
            {"venue", hours(zone, drive.arrive, std::max(drive.arrive, times.lastHour)), setting(s.venueCelsius)}};
}

garden::CutWindowInput inputFor(const Plant& plant, Facts& facts, const model::Settings& s,
                                const model::Booking& booking, const WorkTimes& times, const BookingPlan& plan,
                                const Zone& zone) {
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
    in.bucketHours = setting(s.bucketHours);
    in.bucketCelsius = setting(s.heatLimitCelsius); // no warmer: nothing is cut above the limit
    in.storeCelsius = setting(s.storeCelsius);
    in.afterMakeUp = phases(s, times, plan, zone);
    in.makeUpStart = plan.makeUpStart;
    in.driveStart = plan.driveStart;
    in.eventStart = booking.eventStart;
    in.zone = zone;
    return in;
}

void findIn(BookingPlan& plan, const Plant& plant, const garden::CutWindow& window, std::vector<std::string> missing) {
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
        Facts facts(index, plant);
        const auto in = inputFor(plant, facts, index.season.theSettings(), booking, times, plan, days.zone());
        auto window = garden::cutWindow(in);
        if (!window.ok()) continue; // the booking's own times are out of order, and said so elsewhere
        findIn(plan, plant, *window, facts.missing);
        need.window = PlantWindow{std::move(window).value(), facts.missing};
    }
}

} // namespace withy::plan
