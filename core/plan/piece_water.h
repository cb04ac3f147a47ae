// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/designs/water_level.h"
#include "core/plan/index.h"
#include "core/plan/plan.h"

/// The water of a design through a booking: how it falls from the make-up to the event's last hour. The bench
/// and the packing sheet ask the same of it: the same stems, the same hours, the same end.
namespace withy::plan {

/// The last hour a piece must look good: the event's end, or later where somebody asked for later.
LocalTime looksGoodTo(const model::Booking& booking);

/// Real hours on the place's clock, the night of a change of the clocks as long as it is.
double realHours(const model::Season& season, LocalTime from, LocalTime to);
LocalTime hoursAfter(const model::Season& season, LocalTime from, double hours);

/// One filled piece of the design through `phases`: whole stems that add up to each slot's count, what the
/// shares leave over going to the slot's best plant. Nothing for a bound piece.
std::optional<designs::WaterCourseAsked> waterAsked(const Index& index, const model::Design& design,
                                                    std::vector<designs::WaterPhase> phases);

/// What a piece stands through in water: bench, cool rest, van, venue, at the settings' temperatures.
struct StandingTime {
    LocalTime from; ///< the make-up begins: the first piece made stands longest
    LocalTime arrive;
    LocalTime to; ///< the last hour it must look good
    std::vector<designs::WaterPhase> phases;
};

/// Nothing when the booking's times are out of order (said elsewhere). `plan` is that of `booking`.
std::optional<StandingTime> standingTime(const model::Season& season, const model::Booking& booking,
                                         const BookingPlan& plan);

struct PieceWater {
    std::optional<Id<model::Booking>> booking; ///< blank: no booking, usualHours at the venue's warmth
    std::optional<StandingTime> standing;      ///< with a booking
    std::vector<designs::WaterPhase> phases;
    designs::WaterCourse course;
    double depth = 0;    ///< mm inside
    double stemEnds = 0; ///< mm over the inside of the bottom: the lift
    std::int64_t pieces = 1;
    std::optional<LocalTime> topUpAt; ///< check and top up by then
    std::optional<LocalTime> dryAt;   ///< the stem ends come out
};

inline constexpr double usualHours = 48; ///< without a booking: two days, own choice

/// Of one design, pieces of the booking together for the litres. Nothing for a bound piece, for a container
/// whose sizes make no body, or without stems.
std::optional<PieceWater> pieceWater(const model::Season& season, Id<model::Design> design,
                                     const model::Booking* booking, const BookingPlan* plan);

} // namespace withy::plan
