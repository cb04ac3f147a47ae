// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/index.h"
#include "core/shareout/problem.h"

#include <vector>

/// A round that cuts for several bookings: whose stems are whose.
namespace withy::plan {

/// Stems of a tally that stay for another booking of the same round.
struct SetAside {
    Id<model::Booking> booking;
    Id<model::Plant> plant;
    Stems stems;

    friend bool operator==(const SetAside&, const SetAside&) = default;
};

/// `counted` is the tally of all rounds that serve `booking`. Who comes first (made before booked before
/// held, quoted and enquiry, then the earlier event) has all that the pieces' own plants want; then this
/// booking; what is over after all others is this booking's too. A booking wants of shared rounds only what
/// its own rounds did not bring. A plant without a figure sets nothing aside. By booking, then by plant.
std::vector<SetAside> setAsideForOthers(const Index& index, Id<model::Booking> booking,
                                        const std::vector<shareout::Counted>& counted);

} // namespace withy::plan
