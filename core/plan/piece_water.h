// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/designs/water_level.h"
#include "core/plan/plan.h"

/// The water of a design through a booking: how it falls from the make-up to the event's last hour.
namespace withy::plan {

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
