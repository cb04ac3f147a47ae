// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/designs/colour_balance.h"
#include "core/plan/share_plan.h"

#include <map>

/// The colours a design, the pieces on a table or a whole booking will show, as designs::colourBalance()
/// takes them.
namespace withy::plan {

/// A shown thing and where it comes from: what a mend would add to.
struct ShownPart {
    designs::ShownThing thing;
    std::optional<Id<model::Design>> design;
    std::optional<Id<model::Slot>> slot; ///< blank: ribbon
    std::optional<Id<model::Plant>> plant;
};

/// Of `pieces` of the design: its slots by the plants that fill them, and its ribbon. Heads are circles, a
/// leaf or blade of grass is as long as the drawing makes it (own choice); a ribbon shows its wraps once
/// across, its loops and its tails.
std::vector<ShownPart> shownBy(const model::Season& season, Id<model::Design> design, std::int64_t pieces);

/// The same with the stems a share-out really gives; ribbon as designed.
std::vector<ShownPart> shownBy(const model::Season& season, const shareout::ShareOut& share);

/// All lines of the booking, spare pieces left out: they stay in the box.
std::vector<ShownPart> shownIn(const model::Season& season, Id<model::Booking> booking);

/// What stands on one such table.
std::vector<ShownPart> shownOn(const model::Season& season, Id<model::VenueTable> table,
                               Id<model::Booking> booking);

std::vector<designs::ColourWish> wishesOf(const model::Season& season, Id<model::Booking> booking);

struct ColoursShown {
    std::vector<ShownPart> parts;
    designs::ColourBalance balance; ///< wishes in the order of wishesOf(); a mend's thing indexes `parts`
};

/// Nothing when the wishes come to more than a hundred (said at the brief).
std::optional<ColoursShown> coloursShown(std::vector<ShownPart> parts,
                                         const std::vector<designs::ColourWish>& wishes);

} // namespace withy::plan
