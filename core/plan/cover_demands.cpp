// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/cover_demands.h"

#include "core/plan/needs_plan.h"
#include "core/plan/window_plan.h"

#include <algorithm>

namespace withy::plan {

namespace {

constexpr int furthestCut = 14; ///< days before the make-up, as for rounds

/// A slot while its uses are gathered.
struct Gathered {
    Stems stems;
    Stems perPiece;
    std::optional<Millimetres> cutLength;
    std::map<Id<model::Plant>, Stems> parts;
};

using BySlot = std::map<std::pair<Id<model::Line>, Id<model::Slot>>, Gathered>;

BySlot gather(const BookingPlan& plan) {
    BySlot slots;
    for (const auto& need : plan.needs) {
        std::vector<double> weights;
        for (const auto& use : need.uses)
            weights.push_back(static_cast<double>(use.stems.value) /
                              static_cast<double>(need.need.need.value));
        const auto spare = shareOut(need.need.spare.value, weights);
        for (std::size_t i = 0; i < need.uses.size(); ++i) {
            const auto& use = need.uses[i];
            auto& slot = slots[{use.line, use.slot}];
            const Stems part = use.stems + Stems(spare[i]);
            slot.stems += part;
            slot.perPiece = use.perPiece;
            slot.cutLength = use.cutLength;
            slot.parts[need.plant] += part;
        }
    }
    return slots;
}

/// A plant that could fill the slot; the wished part where shares are given.
struct Candidate {
    Id<model::Plant> plant;
    std::optional<Stems> wanted;
    bool agreedSwap = false;
};

/// Plants with a share first, then the others in the slot's order, then the stand-ins agreed for any of them.
std::vector<Candidate> candidates(const Index& index, Id<model::Slot> slot, const Gathered& gathered,
                                  const std::vector<const model::AgreedSwap*>& swaps) {
    const auto& order = Index::of(index.slotPlants, slot);
    const bool shared =
        std::any_of(order.begin(), order.end(), [](const auto* p) { return p->share && *p->share > 0; });
    std::vector<Candidate> all;
    const auto add = [&](Id<model::Plant> plant, std::optional<Stems> wanted, bool swap) {
        if (std::none_of(all.begin(), all.end(), [&](const auto& c) { return c.plant == plant; }))
            all.push_back({plant, wanted, swap});
    };
    for (const auto* p : order) {
        const auto part = gathered.parts.find(p->plant);
        if (shared && part != gathered.parts.end()) add(p->plant, part->second, false);
    }
    for (const auto* p : order)
        add(p->plant, std::nullopt, false);
    const std::size_t own = all.size();
    for (const auto* swap : swaps) {
        const auto end = all.begin() + static_cast<std::ptrdiff_t>(own);
        if (std::any_of(all.begin(), end, [&](const auto& c) { return c.plant == swap->plant; }))
            add(swap->standIn, std::nullopt, true);
    }
    return all;
}

/// Length missing; blank lengths are taken to do.
Millimetres missingLength(const model::Plant& plant, std::optional<Millimetres> cutLength) {
    if (!plant.stemLengthMax || !cutLength) return Millimetres(0);
    return std::max(Millimetres(0), *cutLength - *plant.stemLengthMax);
}

void addChoice(const Index& index, const Candidate& candidate, BookingWindows& windows, SlotDemand& slot) {
    const auto& plant = *index.season.plants.find(candidate.plant);
    const Millimetres missing = missingLength(plant, slot.cutLength);
    if (missing.value > 0) {
        slot.leftOut.push_back({candidate.plant, LeftOutReason::tooShort, missing, candidate.agreedSwap});
        return;
    }
    cover::Choice choice;
    choice.plant = candidate.plant;
    choice.wanted = candidate.wanted;
    choice.agreedSwap = candidate.agreedSwap;
    if (const auto days = windows.of(candidate.plant)) {
        choice.from = days->from;
        choice.to = days->to;
        choice.best = days->best;
    } else {
        slot.leftOut.push_back(
            {candidate.plant, LeftOutReason::noCutWindow, Millimetres(0), candidate.agreedSwap});
        choice.from = choice.to = slot.demand.bench;
        choice.storeOnly = true;
    }
    slot.demand.choices.push_back(choice);
}

} // namespace

SwapsOf agreedSwaps(const model::Season& season) {
    SwapsOf swaps;
    for (const auto& swap : season.agreedSwaps)
        swaps[swap.booking].push_back(&swap);
    for (auto& [booking, list] : swaps)
        std::stable_sort(list.begin(), list.end(),
                         [](const auto* a, const auto* b) { return a->position < b->position; });
    return swaps;
}

BookingWindows::BookingWindows(const Index& index, const model::Booking& booking, const BookingPlan& plan,
                               PlaceDays& days)
    : index_(index), booking_(booking), plan_(plan), days_(days) {
    for (const auto& need : plan.needs) {
        if (need.window) known_[need.plant] = daysOf(*need.window, need.round);
    }
}

std::optional<BookingWindows::Days> BookingWindows::of(Id<model::Plant> plant) {
    const auto found = known_.find(plant);
    if (found != known_.end()) return found->second;
    return known_[plant] = workOut(plant);
}

std::optional<BookingWindows::Days> BookingWindows::workOut(Id<model::Plant> plant) {
    BookingPlan only;
    only.booking = plan_.booking;
    only.lines = plan_.lines;
    only.makeUpStart = plan_.makeUpStart;
    only.makeUpEnd = plan_.makeUpEnd;
    only.driveStart = plan_.driveStart;
    if (!times_) times_ = workTimes(index_, booking_, only);
    only.needs.emplace_back();
    only.needs.back().plant = plant;
    planWindows(index_, booking_, *times_, days_, only);
    const auto& window = only.needs.back().window;
    return window ? daysOf(*window, -1) : std::nullopt;
}

std::optional<BookingWindows::Days> BookingWindows::daysOf(const PlantWindow& window, int round) const {
    if (!window.window.times) return std::nullopt;
    const auto& times = *window.window.times;
    const auto& s = index_.season.theSettings();
    Days days{times.earliest.day, times.latest.day, std::nullopt};
    if (times.earliest.minute > s.workTo) days.from = days.from + 1;
    if (times.latest.minute < s.workFrom) days.to = days.to - 1;
    days.from = std::max(days.from, plan_.makeUpStart.day - furthestCut);
    if (days.to < days.from) days.from = days.to = times.latest.day;
    const auto consider = [&](const CutRound& r) {
        if (days.from <= r.start.day && r.start.day <= days.to) days.best = r.start.day;
    };
    if (round >= 0) {
        consider(plan_.rounds[static_cast<std::size_t>(round)]);
    } else {
        for (const auto& r : plan_.rounds) // in order of time: the last one that will do
            consider(r);
    }
    return days;
}

std::vector<SlotDemand> slotDemands(const Index& index, const model::Booking& booking,
                                    const BookingPlan& plan, cover::Claim claim,
                                    const std::vector<const model::AgreedSwap*>& swaps,
                                    BookingWindows& windows) {
    std::vector<SlotDemand> all;
    for (const auto& [key, gathered] : gather(plan)) {
        SlotDemand slot;
        slot.perPiece = gathered.perPiece;
        slot.cutLength = gathered.cutLength;
        slot.demand.booking = booking.id;
        slot.demand.line = key.first;
        slot.demand.slot = key.second;
        slot.demand.stems = gathered.stems;
        slot.demand.claim = claim;
        slot.demand.event = booking.eventStart.day;
        slot.demand.bench = plan.makeUpStart.day;
        for (const auto& candidate : candidates(index, key.second, gathered, swaps))
            addChoice(index, candidate, windows, slot);
        all.push_back(std::move(slot));
    }
    return all;
}

} // namespace withy::plan
