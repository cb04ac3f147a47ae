// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/shed/water_plan.h"

#include "core/plan/convert.h"
#include "core/plan/plant_facts.h"

#include <cmath>

namespace withy::plan {

namespace {

constexpr double usualStemMm = 4; // from memory, as the design's plan takes it

void addStems(const ShedInput& in, const model::Slot& slot, const SlotPlan& plan,
              designs::WaterCourseAsked& asked) {
    for (const auto& [id, share] : plan.fill) {
        const auto* plant = in.season().plants.find(id);
        if (!plant) continue;
        const auto stems =
            static_cast<std::int64_t>(std::llround(static_cast<double>(slot.count.value) * share));
        if (stems == 0) continue;
        const PlantFacts facts(in.index, *plant);
        designs::Drinker drinker{Stems(stems), std::nullopt, Basis::notKnown, plant->name};
        if (const auto uptake = facts.maybe("uptake_ml_per_day", plant->uptakeMlPerDay)) {
            drinker.millilitresPerDay = uptake->value;
            drinker.basis = uptake->basis;
        }
        asked.drinkers.push_back(std::move(drinker));
        asked.filling.stems.push_back(
            {stems, plant->stemDiameterMm.value_or(usualStemMm), Basis::notKnown, plant->name});
    }
}

designs::WaterCourseAsked askedOf(const ShedInput& in, const model::Design& design,
                                  const model::Container& container, const DesignPlan& plan, double hours) {
    designs::WaterCourseAsked asked;
    asked.filling.shape = shapeOf(container);
    asked.filling.measured = container.measuredVolume;
    asked.filling.sharePerTenThousand = tenThousandths(design.waterShare);
    asked.filling.lift = static_cast<double>(design.lift.value);
    for (const auto& slot : plan.slots)
        if (const auto* record = in.season().slots.find(slot.slot)) addStems(in, *record, slot, asked);
    asked.phases = {{hours, in.season().theSettings().venueCelsius}};
    return asked;
}

LocalTime after(LocalTime from, double hours) {
    return from + Minutes(static_cast<std::int64_t>(std::floor(hours * 60)));
}

} // namespace

std::vector<LineWater> lineWaters(const ShedInput& in, const model::Booking& booking,
                                  const std::vector<PlacedLine>& placed) {
    std::vector<LineWater> out;
    const LocalTime end = booking.lookGoodUntil.value_or(booking.eventEnd);
    for (const auto& at : placed) {
        const auto* line = in.season().lines.find(at.line);
        const auto* design = line ? in.season().designs.find(line->design) : nullptr;
        const auto* container =
            design && design->container ? in.season().containers.find(*design->container) : nullptr;
        if (!container) continue;
        const auto& made = *in.plan.designs.at(design->id);
        if (!made.water) continue;
        const double hours = std::max(0.0, static_cast<double>((end - at.placed).value) / 60);
        auto asked = askedOf(in, *design, *container, made, hours);
        asked.pieces = line->pieces.value + line->sparePieces.value;
        if (asked.pieces == 0) continue;
        auto course = designs::waterCourse(asked);
        if (!course.ok()) continue; // the design's own plan says which size cannot be
        LineWater water;
        water.line = at.line;
        water.pieces = asked.pieces;
        water.full = made.water->water;
        water.travel =
            at.madeThere ? Millilitres(0) : Millilitres(water.full.value * usualTravelPercent / 100);
        water.topUp = water.full - water.travel;
        water.placed = at.placed;
        if (course->topUpAfter && *course->topUpAfter < hours)
            water.checkAt = after(at.placed, *course->topUpAfter);
        if (course->dryAfter && *course->dryAfter < hours) water.dryAt = after(at.placed, *course->dryAfter);
        water.course = std::move(course).value();
        out.push_back(std::move(water));
    }
    return out;
}

} // namespace withy::plan
