// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/edits/cover_edits.h"

#include "core/model/schema.h"
#include "ui/logic/format.h"
#include "ui/logic/models/stem_sources.h"

#include <algorithm>

namespace withy::ui::edits {

namespace {

using model::nameOf;
using model::TableKind;

/// The first plant of the slot's own order: what the swap stands in for.
std::optional<Id<model::Plant>> firstPlant(const Season& season, Id<model::Slot> slot) {
    const model::SlotPlant* first = nullptr;
    for (const auto& p : season.slotPlants)
        if (p.slot == slot && (!first || p.position < first->position)) first = &p;
    return first ? std::optional(first->plant) : std::nullopt;
}

/// "zinnia", or the whole names where both are called so.
std::pair<std::string, std::string> calledApart(const Season& season, Id<model::Plant> a,
                                                Id<model::Plant> b) {
    const QString one = inPassing(season, a);
    const QString other = inPassing(season, b);
    if (one != other) return {utf8(one), utf8(other)};
    return {nameOf(season, TableKind::plants, a.value), nameOf(season, TableKind::plants, b.value)};
}

Edit takeSwap(const Season& season, const plan::BookingPlan& plan, const plan::SlotCover& slot,
              const plan::Mend& mend) {
    const auto plant = firstPlant(season, slot.slot);
    if (!plant || !season.plants.find(mend.plant)) return Edit("cover.swap");
    const auto [standIn, own] = calledApart(season, mend.plant, *plant);
    model::AgreedSwap swap;
    swap.id = season.agreedSwaps.nextId();
    swap.booking = plan.booking;
    swap.plant = *plant;
    swap.standIn = mend.plant;
    for (const auto& other : season.agreedSwaps) {
        if (other.booking != plan.booking) continue;
        if (other.plant == swap.plant && other.standIn == swap.standIn) return Edit("cover.swap");
        swap.position = std::max(swap.position, other.position + 1);
    }
    return put("cover.swap", swap, {utf8(whole(mend.stems.value)), standIn, own});
}

Edit takePurchase(const Season& season, const plan::BookingPlan& plan, const plan::Mend& mend) {
    const auto* plant = season.plants.find(mend.plant);
    if (!plant) return Edit("cover.buy");
    model::StockLot lot;
    lot.id = season.stockLots.nextId();
    lot.plant = mend.plant;
    lot.stems = Stems(mend.bunches * std::max<std::int64_t>(1, mend.bunch.value));
    lot.origin = model::StockOrigin::boughtIn;
    lot.readyFrom = plan.makeUpStart.day;
    lot.unitCost = plant->costPerStem;
    return put("cover.buy", lot,
               {utf8(whole(lot.stems.value)), utf8(inPassing(season, mend.plant)),
                nameOf(season, TableKind::bookings, plan.booking.value)});
}

Edit takeFewer(const Season& season, const plan::SlotCover& slot, const plan::Mend& mend) {
    const auto* old = season.lines.find(slot.line);
    if (!old || old->pieces <= mend.pieces) return Edit("cover.fewer");
    model::Line line = *old;
    line.pieces = line.pieces - mend.pieces;
    return put("cover.fewer", line,
               {utf8(whole(mend.pieces.value)), nameOf(season, TableKind::designs, line.design.value)});
}

} // namespace

Edit takeMend(const Season& season, const plan::BookingPlan& plan, const plan::SlotCover& slot,
              const plan::Mend& mend) {
    const auto* booking = season.bookings.find(plan.booking);
    if (!booking) return Edit("cover.swap");
    switch (mend.kind) {
    case plan::MendKind::swap:
        return takeSwap(season, plan, slot, mend);
    case plan::MendKind::buy:
        return takePurchase(season, plan, mend);
    case plan::MendKind::fewerPieces:
        return takeFewer(season, slot, mend);
    }
    return Edit("cover.swap");
}

} // namespace withy::ui::edits
