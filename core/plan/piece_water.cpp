// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/piece_water.h"

#include "core/base/zone.h"
#include "core/plan/convert.h"
#include "core/plan/design_plan.h"
#include "core/plan/plant_facts.h"

#include <algorithm>
#include <cmath>

namespace withy::plan {

namespace {

Zone waterZone(const model::Season& season) {
    return Zone::fromPosix(season.theSettings().zoneRule).value_or(Zone::utc());
}

/// When the first drive is over; without one the flowers are where they are needed.
LocalTime arrivalOf(const BookingPlan& plan) {
    std::optional<LocalTime> arrive;
    for (const auto& step : plan.steps) {
        if (step.kind == StepKind::drive && (!arrive || step.to < *arrive)) arrive = step.to;
    }
    return arrive.value_or(plan.driveStart);
}

/// Each slot's stems by the plants that fill it; what a share leaves over goes to the first.
std::vector<designs::Drinker> drinkersOf(const Index& index, Id<model::Design> design) {
    std::vector<designs::Drinker> drinkers;
    for (const auto* slot : Index::of(index.slots, design)) {
        const auto fill = slotFill(index, slot->id);
        if (fill.empty()) {
            drinkers.push_back({slot->count, std::nullopt, Basis::notKnown, slot->label});
            continue;
        }
        std::int64_t left = slot->count.value;
        for (std::size_t i = fill.size(); i-- > 0;) {
            const auto& plant = *index.season.plants.find(fill[i].first);
            const std::int64_t stems =
                i == 0 ? left
                       : std::min<std::int64_t>(
                             left, std::llround(fill[i].second * static_cast<double>(slot->count.value)));
            left -= stems;
            PlantFacts facts(index, plant);
            const auto uptake = facts.maybe("uptake_ml_per_day", plant.uptakeMlPerDay);
            if (stems > 0)
                drinkers.push_back(designs::Drinker{Stems(stems), plant.uptakeMlPerDay,
                                                    uptake ? uptake->basis : Basis::notKnown, plant.name});
        }
    }
    return drinkers;
}

std::int64_t piecesOfDesign(const model::Season& season, Id<model::Booking> booking,
                            Id<model::Design> design) {
    std::int64_t pieces = 0;
    for (const auto& line : season.lines) {
        if (line.booking == booking && line.design == design)
            pieces += line.pieces.value + line.sparePieces.value;
    }
    return pieces;
}

} // namespace

LocalTime looksGoodTo(const model::Booking& booking) {
    return std::max(booking.eventEnd, booking.lookGoodUntil.value_or(booking.eventEnd));
}

double realHours(const model::Season& season, LocalTime from, LocalTime to) {
    return waterZone(season).hoursBetween(from, to);
}

LocalTime hoursAfter(const model::Season& season, LocalTime from, double hours) {
    const auto zone = waterZone(season);
    auto at = zone.instantNear(from);
    at.seconds += std::llround(hours * 3600);
    return zone.local(at);
}

std::optional<designs::WaterCourseAsked> waterAsked(const Index& index, const model::Design& design,
                                                    std::vector<designs::WaterPhase> phases) {
    const auto* c = design.container ? index.season.containers.find(*design.container) : nullptr;
    if (!c) return std::nullopt;
    designs::WaterCourseAsked asked;
    asked.filling = {shapeOf(*c), c->measuredVolume, tenThousandths(design.waterShare),
                     static_cast<double>(design.lift.value), stemGroups(index, design.id)};
    asked.drinkers = drinkersOf(index, design.id);
    asked.phases = std::move(phases);
    return asked;
}

std::optional<StandingTime> standingTime(const model::Season& season, const model::Booking& booking,
                                         const BookingPlan& plan) {
    const auto& s = season.theSettings();
    const auto zone = waterZone(season);
    StandingTime st;
    st.from = plan.makeUpStart;
    st.to = looksGoodTo(booking);
    st.arrive = arrivalOf(plan);
    const LocalTime times[]{st.from, plan.makeUpEnd, plan.driveStart, st.arrive, st.to};
    const double celsius[]{s.benchCelsius, s.storeCelsius, s.vanCelsius, s.venueCelsius};
    for (std::size_t i = 0; i < std::size(celsius); ++i) {
        const double hours = zone.hoursBetween(times[i], times[i + 1]);
        if (hours < 0) return std::nullopt;
        if (hours > 0) st.phases.push_back({hours, celsius[i]});
    }
    return st.phases.empty() ? std::nullopt : std::optional(st);
}

std::optional<PieceWater> pieceWater(const model::Season& season, Id<model::Design> id,
                                     const model::Booking* booking, const BookingPlan* plan) {
    const auto* d = season.designs.find(id);
    const auto* c = d && d->container ? season.containers.find(*d->container) : nullptr;
    if (!c) return std::nullopt;
    const Index index(season);
    PieceWater out;
    if (booking && plan) out.standing = standingTime(season, *booking, *plan);
    if (out.standing) {
        out.booking = booking->id;
        out.phases = out.standing->phases;
        out.pieces = std::max<std::int64_t>(piecesOfDesign(season, booking->id, id), 1);
    } else {
        out.phases = {{usualHours, season.theSettings().venueCelsius}};
    }
    auto asked = waterAsked(index, *d, out.phases);
    if (!asked || asked->drinkers.empty()) return std::nullopt;
    asked->pieces = out.pieces;
    asked->points = 49;
    auto course = designs::waterCourse(*asked);
    if (!course.ok()) return std::nullopt;
    out.course = std::move(course).value();
    out.depth = static_cast<double>(c->innerDepth.value);
    out.stemEnds = static_cast<double>(d->lift.value);
    if (out.standing) {
        const auto at = [&](const std::optional<double>& hours) {
            return hours ? std::optional(hoursAfter(season, out.standing->from, *hours)) : std::nullopt;
        };
        out.topUpAt = at(out.course.topUpAfter);
        out.dryAt = at(out.course.dryAfter);
    }
    return out;
}

} // namespace withy::plan
