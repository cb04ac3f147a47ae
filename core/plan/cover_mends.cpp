// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/cover_mends.h"

#include "core/base/colour_difference.h"
#include "core/plan/plant_facts.h"

#include <algorithm>
#include <tuple>

namespace withy::plan {

namespace {

using model::Plant;

/// From the one plant's first colour to the nearest of the other's.
std::optional<double> difference(const Plant& own, const Plant& other) {
    if (!own.colour1) return std::nullopt;
    std::optional<double> least;
    for (const auto& colour : {other.colour1, other.colour2, other.colour3}) {
        if (!colour) continue;
        const double d = colourDifference(*own.colour1, *colour);
        if (!least || d < *least) least = d;
    }
    return least;
}

/// The plant a swap is held against: the slot's first, whether or not it can be cut.
const Plant* firstPlant(const Index& index, const SlotDemand& slot) {
    const auto& order = Index::of(index.slotPlants, slot.demand.slot);
    return order.empty() ? nullptr : index.season.plants.find(order.front()->plant);
}

bool takesPart(const SlotDemand& slot, Id<Plant> plant) {
    const auto& choices = slot.demand.choices;
    const auto& out = slot.leftOut;
    return std::any_of(choices.begin(), choices.end(), [&](const auto& c) { return c.plant == plant; }) ||
           std::any_of(out.begin(), out.end(), [&](const auto& l) { return l.plant == plant; });
}

bool longEnough(const Plant& plant, const SlotDemand& slot) {
    return !slot.cutLength || (plant.stemLengthMax && *plant.stemLengthMax >= *slot.cutLength);
}

std::vector<Mend> swaps(const Index& index, const SlotDemand& slot, Stems shortBy,
                        const cover::FreeStock& free, BookingWindows& windows, const CoverOptions& options) {
    const Plant* own = firstPlant(index, slot);
    const auto* record = index.season.slots.find(slot.demand.slot);
    std::vector<Mend> all;
    if (!own) return all;
    const Day bench = slot.demand.bench;
    for (const auto& plant : index.season.plants) {
        if (takesPart(slot, plant.id) || !serves(plant, record->purpose) || !longEnough(plant, slot))
            continue;
        const auto far = difference(*own, plant);
        if (own->colour1 && (!far || *far > options.nearColour)) continue;
        // Cheap before dear: whether anything is left at all in the weeks before.
        if (free.of(plant.id, bench - 30, bench, bench).value == 0) continue;
        const auto days = windows.of(plant.id);
        if (!days) continue;
        const Stems there = free.of(plant.id, days->from, days->to, bench);
        if (there.value == 0) continue;
        Mend mend;
        mend.kind = MendKind::swap;
        mend.plant = plant.id;
        mend.stems = std::min(shortBy, there);
        mend.colourDifference = far;
        mend.lengthKnown = slot.cutLength.has_value();
        all.push_back(mend);
    }
    std::stable_sort(all.begin(), all.end(), [](const Mend& a, const Mend& b) {
        return std::tuple(a.colourDifference.value_or(0), -a.stems.value) <
               std::tuple(b.colourDifference.value_or(0), -b.stems.value);
    });
    if (all.size() > options.mostSwaps) all.resize(options.mostSwaps);
    return all;
}

/// Of the first plant that takes part, in time for the last day it could have been cut.
std::optional<Mend> purchase(const Index& index, const SlotDemand& slot, Stems shortBy,
                             const CoverOptions& options) {
    if (slot.demand.choices.empty()) return std::nullopt;
    const auto& choice = slot.demand.choices.front();
    const Plant& plant = *index.season.plants.find(choice.plant);
    Mend mend;
    mend.kind = MendKind::buy;
    mend.plant = plant.id;
    mend.stems = shortBy;
    mend.bunch = plant.bunch.value_or(Stems(1));
    mend.bunches = roundUpTo(shortBy.value, mend.bunch.value) / std::max<std::int64_t>(1, mend.bunch.value);
    if (plant.costPerStem) mend.price = Money{plant.costPerStem->minor * mend.bunch.value * mend.bunches};
    mend.orderBy = choice.to - options.leadDays;
    mend.orderLate = options.today && mend.orderBy < *options.today;
    return mend;
}

/// Each piece less asks for at least its own stems less.
std::optional<Mend> fewer(const Index& index, const SlotDemand& slot, Stems shortBy) {
    const auto* line = index.season.lines.find(slot.demand.line);
    if (!line || slot.perPiece.value < 1) return std::nullopt;
    Mend mend;
    mend.kind = MendKind::fewerPieces;
    mend.stems = shortBy;
    mend.pieces = Pieces((shortBy.value + slot.perPiece.value - 1) / slot.perPiece.value);
    if (mend.pieces >= line->pieces) return std::nullopt;
    return mend;
}

} // namespace

std::vector<Mend> mendsFor(const Index& index, const SlotDemand& slot, Stems shortBy,
                           const cover::FreeStock& free, BookingWindows& windows,
                           const CoverOptions& options) {
    auto all = swaps(index, slot, shortBy, free, windows, options);
    if (auto mend = purchase(index, slot, shortBy, options)) all.push_back(*mend);
    if (auto mend = fewer(index, slot, shortBy)) all.push_back(*mend);
    return all;
}

} // namespace withy::plan
