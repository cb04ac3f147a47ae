// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/shed/water_plan.h"

#include "core/plan/piece_water.h"

#include <algorithm>

namespace withy::plan {

std::vector<LineWater> lineWaters(const ShedInput& in, const model::Booking& booking,
                                  const std::vector<PlacedLine>& placed) {
    std::vector<LineWater> out;
    const LocalTime end = looksGoodTo(booking);
    for (const auto& at : placed) {
        const auto* line = in.season().lines.find(at.line);
        const auto* design = line ? in.season().designs.find(line->design) : nullptr;
        if (!design || !design->container) continue;
        const auto& made = *in.plan.designs.at(design->id);
        if (!made.water) continue;
        const double hours = std::max(0.0, realHours(in.season(), at.placed, end));
        auto asked = waterAsked(in.index, *design, {{hours, in.season().theSettings().venueCelsius}});
        const auto pieces = line->pieces.value + line->sparePieces.value;
        if (!asked || pieces == 0) continue;
        asked->pieces = pieces;
        auto course = designs::waterCourse(*asked);
        if (!course.ok()) continue; // the design's own plan says which size cannot be
        LineWater water;
        water.line = at.line;
        water.pieces = pieces;
        water.full = made.water->water;
        water.travel =
            at.madeThere ? Millilitres(0) : Millilitres(water.full.value * usualTravelPercent / 100);
        water.topUp = water.full - water.travel;
        water.placed = at.placed;
        const auto before = [&](const std::optional<double>& after) {
            return after && *after < hours ? std::optional(hoursAfter(in.season(), at.placed, *after))
                                           : std::nullopt;
        };
        water.checkAt = before(course->topUpAfter);
        if (water.checkAt) // at its end all leave
            water.checkAt = std::max(at.placed, std::min(*water.checkAt, booking.eventEnd));
        water.dryAt = before(course->dryAfter);
        water.course = std::move(course).value();
        out.push_back(std::move(water));
    }
    return out;
}

} // namespace withy::plan
