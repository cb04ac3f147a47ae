// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/shed/shed_input.h"

namespace withy::plan {

/// How a piece goes on the road and stands on a table.
enum class PieceTravel {
    standing, ///< in a tray
    flat,     ///< laid by itself: sheaves, sprays, garlands
    madeThere ///< its stems go in buckets, its container empty
};

struct PieceSize {
    PieceTravel travel = PieceTravel::standing;
    Millimetres foot;      ///< of the container, outside; of the stems where there is none
    Millimetres footprint; ///< the wider of foot and spread
    Millimetres height;    ///< over what it stands on
    Millimetres length;    ///< flat: from tip to stem ends
};

/// A wall of glass: 3 mm, from memory, where the outside was not measured. Blank sizes of a bound piece are
/// made up from its own heights.
PieceSize pieceSize(const model::Season& season, const model::Design& design);

/// Outside diameter of a container; a trough's length.
Millimetres outsideOf(const model::Container& container);

/// Millimetres that the top of the design gains in the vase from the make-up to the event's last hour.
Millimetres grownByEvent(const ShedInput& in, const model::Booking& booking, const BookingPlan& plan,
                         Id<model::Design> design);

} // namespace withy::plan
