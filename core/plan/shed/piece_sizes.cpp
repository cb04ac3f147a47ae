// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/shed/piece_sizes.h"

#include "core/plan/grown_on.h"
#include "core/plan/piece_water.h"

#include <algorithm>
#include <cmath>

namespace withy::plan {

namespace {

using model::PieceKind;

constexpr Millimetres wall{3};
constexpr Millimetres usualBelowTie{180}; // as core/plan/convert.h takes it

PieceTravel travelOf(const model::Design& design) {
    switch (design.kind) {
    case PieceKind::pedestal:
        return PieceTravel::madeThere;
    case PieceKind::sheaf:
    case PieceKind::spray:
    case PieceKind::garland:
        return PieceTravel::flat;
    default:
        return PieceTravel::standing;
    }
}

} // namespace

Millimetres outsideOf(const model::Container& container) {
    if (container.profile == model::ProfileKind::trough && container.innerLength)
        return *container.innerLength + 2 * wall;
    if (container.outerDiameter) return *container.outerDiameter;
    const auto widest = std::max({container.innerRim, container.innerBody.value_or(Millimetres(0)),
                                  container.innerBase.value_or(Millimetres(0))});
    return widest + 2 * wall;
}

PieceSize pieceSize(const model::Season& season, const model::Design& design) {
    PieceSize size;
    size.travel = travelOf(design);
    const auto* container = design.container ? season.containers.find(*design.container) : nullptr;
    const Millimetres heads = std::max({design.heightLow, design.heightMiddle, design.heightTall});
    const Millimetres below = design.stemsBelowTie.value_or(usualBelowTie);
    if (container) {
        size.foot = outsideOf(*container);
        size.height = container->outerHeight.value_or(container->innerDepth + wall) + heads;
        size.footprint = std::max(size.foot, design.spread.value_or(Millimetres(0)));
    } else {
        size.height = below + heads;
        size.footprint = design.spread.value_or(std::max(Millimetres(60), heads));
        size.foot = std::min(size.footprint, Millimetres(60));
    }
    // Nought is no size: what is drawn as nothing still takes a place.
    size.footprint = std::max(size.footprint, Millimetres(1));
    size.foot = std::max(size.foot, Millimetres(1));
    size.length = std::max(below + heads, Millimetres(1));
    if (size.travel == PieceTravel::madeThere && !container) size.travel = PieceTravel::flat;
    return size;
}

Millimetres grownByEvent(const ShedInput& in, const model::Booking& booking, const BookingPlan& plan,
                         Id<model::Design> design) {
    const auto standing = standingTime(in.season(), booking, plan);
    if (!standing) return Millimetres(0);
    return Millimetres(std::llround(grownOn(in.season(), design, standing->phases)));
}

} // namespace withy::plan
