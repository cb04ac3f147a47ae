// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/papers/document.h"
#include "core/plan/plan.h"

#include <QString>

/// What is known of a drop: the answers a driver asks for, and where the pieces go.
namespace withy::ui {

/// The venue a drop's place is part of: by its name ("Village Hall, kitchen door" is at "Marrowby Village
/// Hall"), the booking's own first; a booking's only drop is at its venue. Null where no venue is known, or
/// only another place's is. `drop` null: the booking's venue.
const model::Venue* venueOfDrop(const model::Season& season, const model::Booking& booking,
                                const model::Drop* drop);

/// Door, key, park, water, fix, flame, receives, clears, back, care, in that order; what nobody wrote down
/// has no words.
std::vector<papers::DropCard::Answer> dropAnswers(const model::Season& season, const plan::BookingPlan& plan,
                                                  const model::Booking& booking, const model::Drop* drop);

/// "2 on each, 12 x Trestle": where a line's pieces stand; empty when nobody said.
QString placesOf(const model::Season& season, Id<model::Line> line);

/// A container that comes home, and how many are out with a booking's pieces, spare ones too (of one drop, or
/// of all).
struct ComingHome {
    Id<model::Container> container;
    std::int64_t out = 0;
};

std::vector<ComingHome> comingHome(const model::Season& season, const model::Booking& booking,
                                   std::optional<Id<model::Drop>> drop = std::nullopt);

} // namespace withy::ui
