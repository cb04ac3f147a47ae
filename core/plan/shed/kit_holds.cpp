// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/shed/kit_holds.h"

#include <algorithm>

namespace withy::plan {

namespace {

using model::HolderKind;
using model::TableKind;

KitHold holdOf(const model::Booking& booking, std::int64_t amount, Day from, std::optional<Day> until) {
    KitHold hold;
    hold.booking = booking.id;
    hold.amount = amount;
    hold.from = from;
    hold.until = until;
    hold.firm = isFirm(booking.standing);
    return hold;
}

const model::Return* returnOf(const model::Season& season, Id<model::Booking> booking,
                              Id<model::Container> container) {
    for (const auto& r : season.returns)
        if (r.booking == booking && r.container == container) return &r;
    return nullptr;
}

/// What has been counted of containers that went out; blank: nobody has counted them home.
void takeReturn(const model::Return* record, KitHold& hold) {
    if (!record) return;
    if (record->out > 0) hold.amount = record->out;
    if (!record->back) return;
    hold.broken = std::clamp<std::int64_t>(record->broken.value_or(0), 0, hold.amount);
    hold.lost =
        std::clamp<std::int64_t>(hold.amount - *record->back - hold.broken, 0, hold.amount - hold.broken);
}

/// Where it is now: out, late, or home.
void takeToday(std::optional<Day> today, bool counted, bool settled, KitHold& hold) {
    if (!today || !hold.firm || *today < hold.from || !hold.until) return;
    if (counted || settled) {
        if (*today <= *hold.until && counted) hold.until = *today - 1; // home already, early or on the day
        return;
    }
    hold.out = true;
    if (*hold.until >= *today) return;
    hold.late = true;
    hold.until = *today;
}

struct BookedHere {
    const model::Booking& booking;
    const BookingPlan& plan;
};

template <class Visit>
void forEachBooked(const ShedInput& in, Visit visit) {
    for (const auto& [id, plan] : in.plan.bookings) {
        const auto* booking = in.season().bookings.find(id);
        if (!booking || booking->standing == model::Standing::lost) continue;
        // Asked for and never taken: when its day is over it wants nothing any more.
        if (in.today && booking->eventEnd.day < *in.today && !isFirm(booking->standing)) continue;
        visit(BookedHere{*booking, *plan});
    }
}

bool isWorn(const model::Season& season, Id<model::Line> line) {
    const auto* record = season.lines.find(line);
    const auto* design = record ? season.designs.find(record->design) : nullptr;
    if (!design) return false;
    using model::PieceKind;
    return design->kind == PieceKind::buttonhole || design->kind == PieceKind::corsage ||
           design->kind == PieceKind::crown;
}

/// Stems of plants that are for worn pieces alone stand apart, plant by plant.
std::int64_t boxesFor(const ShedInput& in, const BookingPlan& plan, const model::Holder& box) {
    std::vector<shed::CellUse> uses;
    for (const auto& need : plan.needs) {
        const bool worn = std::all_of(need.uses.begin(), need.uses.end(),
                                      [&](const SlotUse& u) { return isWorn(in.season(), u.line); });
        if (worn && !need.uses.empty()) uses.push_back({{}, need.need.total});
    }
    const auto boxes = shed::griddedBoxes(uses, box.stemsPerCell->value, *box.cells);
    return boxes.ok() ? boxes->boxes : 0;
}

Day firstCutDay(const BookingPlan& plan) {
    Day first = plan.makeUpStart.day;
    for (const auto& round : plan.rounds)
        first = std::min(first, round.start.day);
    return first;
}

Day lastDropDay(const BookingPacking& packing, const BookingPlan& plan) {
    Day last = plan.driveStart.day;
    for (const auto& drop : packing.drops)
        last = std::max(last, drop.at.day);
    return last;
}

void holdTrays(const BookedHere& b, const BookingPacking& packing, std::vector<HeldItem>& out) {
    std::map<Id<model::Holder>, std::int64_t> trays;
    for (const auto& drop : packing.drops)
        for (const auto& tray : drop.trays)
            ++trays[tray.holder];
    for (const auto& [id, count] : trays)
        out.push_back({{TableKind::holders, id.value},
                       holdOf(b.booking, count, b.plan.driveStart.day, lastDropDay(packing, b.plan))});
}

std::int64_t traysOf(const BookingPacking& packing) {
    std::int64_t trays = 0;
    for (const auto& drop : packing.drops)
        trays += static_cast<std::int64_t>(drop.trays.size());
    return trays;
}

const BookingPacking* packingIn(const PackingOf& packing, Id<model::Booking> id) {
    const auto found = packing.find(id);
    return found == packing.end() ? nullptr : found->second.get();
}

bool stemsTravel(const BookingPacking& packing) {
    return std::any_of(packing.entries.begin(), packing.entries.end(),
                       [](const LoadEntry& e) { return e.kind == LoadKind::bucket; });
}

} // namespace

DueHome dueHome(const ShedInput& in, const model::Booking& booking, Id<model::Container> container) {
    DueHome due{booking.eventEnd.day, false};
    bool named = false;
    for (const auto* line : Index::of(in.index.lines, booking.id)) {
        const auto* design = in.season().designs.find(line->design);
        if (!design || design->container != container || line->pieces.value + line->sparePieces.value == 0)
            continue;
        const auto* drop = line->drop ? in.season().drops.find(*line->drop) : nullptr;
        if (!drop) {
            const auto& drops = Index::of(in.index.drops, booking.id);
            if (!drops.empty()) drop = drops.front();
        }
        if (drop && drop->clearedAt) {
            due.day = named ? std::max(due.day, drop->clearedAt->day) : drop->clearedAt->day;
            named = true;
        } else {
            due.guessed = true;
        }
    }
    const Day usual = booking.eventEnd.day + usualDaysAway;
    if (due.guessed || !named) due = {named ? std::max(due.day, usual) : usual, true};
    return due;
}

std::vector<HeldItem> containerHolds(const ShedInput& in) {
    std::vector<HeldItem> out;
    forEachBooked(in, [&](const BookedHere& b) {
        for (const auto& need : b.plan.kit.containers) {
            const auto* container = in.season().containers.find(need.container);
            if (!container) continue;
            const auto due = dueHome(in, b.booking, need.container);
            KitHold hold = holdOf(b.booking, shed::wholeUnits(need.total.needed), b.plan.makeUpStart.day,
                                  std::max(due.day, b.plan.makeUpStart.day));
            if (container->returnable) {
                const auto* record = returnOf(in.season(), b.booking.id, need.container);
                hold.untilGuessed = due.guessed;
                takeReturn(record, hold);
                takeToday(in.today, record && record->back, b.booking.standing == model::Standing::settled,
                          hold);
            } else {
                hold.until.reset();
            }
            if (hold.amount > 0) out.push_back({{TableKind::containers, need.container.value}, hold});
        }
    });
    return out;
}

std::vector<HeldItem> holderHolds(const ShedInput& in, const PackingOf& packing) {
    std::vector<HeldItem> out;
    const auto* bucket = commonestHolder(in.season(), HolderKind::bucket);
    const auto* box = commonestHolder(in.season(), HolderKind::griddedBox);
    if (box && (!box->cells || !box->stemsPerCell || *box->cells < 1 || box->stemsPerCell->value < 1))
        box = nullptr;
    forEachBooked(in, [&](const BookedHere& b) {
        const Day first = firstCutDay(b.plan);
        const auto* packed = packingIn(packing, b.booking.id);
        if (bucket && b.plan.kit.buckets && b.plan.kit.buckets->total > 0) {
            const Day last =
                packed && stemsTravel(*packed) ? lastDropDay(*packed, b.plan) : b.plan.makeUpEnd.day;
            out.push_back({{TableKind::holders, bucket->id.value},
                           holdOf(b.booking, b.plan.kit.buckets->total, first, std::max(first, last))});
        }
        if (box)
            if (const auto boxes = boxesFor(in, b.plan, *box); boxes > 0)
                out.push_back({{TableKind::holders, box->id.value},
                               holdOf(b.booking, boxes, first, std::max(first, b.plan.makeUpEnd.day))});
        if (packed) holdTrays(b, *packed, out);
    });
    return out;
}

std::vector<HeldItem> sundryHolds(const ShedInput& in, const PackingOf& packing) {
    std::vector<HeldItem> out;
    forEachBooked(in, [&](const BookedHere& b) {
        if (b.booking.standing > model::Standing::booked) return; // made: what is on hand is without it
        for (const auto& need : b.plan.kit.sundries)
            if (need.total.needed > 0)
                out.push_back({{TableKind::sundries, need.sundry.value},
                               holdOf(b.booking, need.total.needed, b.plan.makeUpStart.day, std::nullopt)});
        const auto* packed = packingIn(packing, b.booking.id);
        const auto trays = packed ? traysOf(*packed) : 0;
        for (const auto& sundry : in.season().sundries) {
            if (sundry.rule != model::UseRule::perTray || trays == 0) continue;
            const auto amount = shed::thousandthsOf(sundry.amount);
            if (amount.ok() && *amount > 0)
                out.push_back({{TableKind::sundries, sundry.id.value},
                               holdOf(b.booking, *amount * trays, b.plan.driveStart.day, std::nullopt)});
        }
    });
    return out;
}

} // namespace withy::plan
