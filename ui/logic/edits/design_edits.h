// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/edits/record_edits.h"

#include <vector>

/// What the designs' pages change. Single facts of a design or a slot go through setField().
namespace withy::ui::edits {

/// With heights usual for the kind (common practice, no source); standing in `container`, or bound.
Edit newDesignOf(const Season& season, const std::string& name, model::PieceKind kind,
                 std::optional<Id<model::Container>> container, Id<model::Design>& made);
/// The same design in a container that is made with it: a jar of 60 by 115 mm until it is measured.
Edit newDesignInNewJar(const Season& season, const std::string& name, const std::string& jar,
                       Id<model::Design>& made);
/// With its slots, their plants and its sundries; the trial stays with the first. "Supper jar 2".
Edit duplicateDesign(const Season& season, Id<model::Design> design, Id<model::Design>& made);

/// A line of a booking that takes the design.
struct DesignUse {
    Id<model::Line> line;
    Id<model::Booking> booking;
    std::string title;
    std::int64_t pieces = 0; ///< spare ones included
};

std::vector<DesignUse> usesOf(const Season& season, Id<model::Design> design);
/// With its slots; refused by the model while a booking uses it.
Edit eraseDesign(const Season& season, Id<model::Design> design);
/// With the lines of bookings that use it.
Edit eraseDesignAndLines(const Season& season, Id<model::Design> design);

/// What a new slot of this purpose is called and in which tier it stands (common practice, no source).
std::string slotLabel(model::Purpose purpose);
model::Tier slotTier(model::Purpose purpose);
/// The first purpose a plant is marked for; filler when none is.
model::Purpose purposeOf(const model::Plant& plant);

/// At the end of the making order, named after its purpose: "Face", then "Face 2".
Edit addSlotFor(const Season& season, Id<model::Design> design, model::Purpose purpose,
                Id<model::Slot>& made);
/// A slot of one stem for the plant, by the plant's purpose.
Edit addSlotWith(const Season& season, Id<model::Design> design, Id<model::Plant> plant,
                 Id<model::Slot>& made);
/// "2 more of Round in Supper jar".
Edit setSlotCount(const Season& season, Id<model::Slot> slot, std::int64_t count);
/// By so many places in the making order, as far as it goes. Empty when it stands there already.
Edit moveSlot(const Season& season, Id<model::Slot> slot, int by);

/// Last choice of the slot. Empty when the plant is there already.
Edit addSlotPlant(const Season& season, Id<model::Slot> slot, Id<model::Plant> plant);
Edit eraseSlotPlant(const Season& season, Id<model::SlotPlant> choice);
/// The slot's plants, best first. Those not named keep their order after the rest.
Edit orderSlotPlants(const Season& season, Id<model::Slot> slot,
                     const std::vector<Id<model::SlotPlant>>& order);

/// A design's slots in making order, and a slot's plants best first.
std::vector<const model::Slot*> slotsOf(const Season& season, Id<model::Design> design);
std::vector<const model::SlotPlant*> plantsOf(const Season& season, Id<model::Slot> slot);

} // namespace withy::ui::edits
