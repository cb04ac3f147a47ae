// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/share_plan.h"

#include "core/plan/index.h"
#include "core/plan/needs_plan.h"

#include <algorithm>
#include <set>

namespace withy::plan {

namespace {

bool heldInHand(model::PieceKind kind) {
    using enum model::PieceKind;
    return kind == handTied || kind == buttonhole || kind == corsage || kind == crown;
}

std::vector<shareout::Choice> shareChoices(const Index& index, const model::Slot& slot, std::int64_t pieces) {
    const auto& order = Index::of(index.slotPlants, slot.id);
    const auto wished = [](const auto* p) { return p->share && *p->share > 0; };
    double all = 0;
    for (const auto* p : order)
        all += wished(p) ? *p->share : 0;
    std::vector<double> weights;
    std::vector<shareout::Choice> choices;
    for (const auto* p : order) {
        if (!wished(p)) continue;
        weights.push_back(*p->share / all);
        choices.push_back({p->plant});
    }
    const auto parts = shareOut(pieces * slot.count.value, weights);
    for (std::size_t i = 0; i < choices.size(); ++i)
        choices[i].wanted = Stems(parts[i]);
    for (const auto* p : order) {
        if (!wished(p)) choices.push_back({p->plant});
    }
    return choices;
}

shareout::LineAsk shareLine(const Index& index, const model::Line& line) {
    shareout::LineAsk ask;
    ask.line = line.id;
    ask.pieces = line.pieces + line.sparePieces;
    const auto* design = index.season.designs.find(line.design);
    ask.inHand = design && heldInHand(design->kind);
    for (const auto* slot : Index::of(index.slots, line.design)) {
        auto& s = ask.slots.emplace_back();
        s.slot = slot->id;
        s.purpose = slot->purpose;
        s.count = slot->count;
        s.mayVaryBy = slot->mayVaryBy;
        if (slot->clump) s.clump = std::min(Stems(stemsOfClump), slot->count);
        s.choices = shareChoices(index, *slot, ask.pieces.value);
    }
    return ask;
}

std::set<Id<model::Round>> roundsOf(const model::Season& season, Id<model::Booking> booking) {
    std::set<Id<model::Round>> rounds;
    for (const auto& r : season.roundBookings) {
        if (r.booking == booking) rounds.insert(r.round);
    }
    return rounds;
}

std::vector<shareout::TallyLine> talliesOf(const model::Season& season,
                                           const std::set<Id<model::Round>>& rounds) {
    std::vector<shareout::TallyLine> lines;
    for (const auto& tally : season.tallies) {
        const auto* patch = season.patches.find(tally.patch);
        if (!patch || !rounds.contains(tally.round)) continue;
        lines.push_back({patch->id, patch->plant, tally.cut, tally.thrownAway, patch->expectedStems});
    }
    return lines;
}

bool names(const shareout::SlotAsk& slot, Id<model::Plant> plant) {
    return std::any_of(slot.choices.begin(), slot.choices.end(),
                       [&](const auto& c) { return c.plant == plant; });
}

std::vector<shareout::Counted> withoutSetAside(std::vector<shareout::Counted> counted,
                                               const std::vector<SetAside>& aside) {
    for (auto& c : counted) {
        for (const auto& a : aside) {
            if (c.stems && c.plant == a.plant) c.stems = *c.stems - a.stems;
        }
    }
    return counted;
}

} // namespace

Result<SharePlan, ShareStop> planShare(const model::Season& season, Id<model::Booking> id,
                                       const std::vector<shareout::TallyLine>& fromStore) {
    const auto* booking = season.bookings.find(id);
    if (!booking) return ShareStop(ShareRefusal::noSuchBooking);
    using enum model::Standing;
    if (booking->standing == delivered || booking->standing == settled || booking->standing == lost)
        return ShareStop(ShareRefusal::alreadyDelivered);
    const Index index(season);
    auto lines = talliesOf(season, roundsOf(season, id));
    const auto cut = shareout::sumTally(lines);
    if (!cut.ok()) return ShareStop(cut.error());
    lines.insert(lines.end(), fromStore.begin(), fromStore.end());
    auto tally = shareout::sumTally(lines);
    if (!tally.ok()) return ShareStop(tally.error());
    SharePlan plan;
    plan.setAside = setAsideForOthers(index, id, cut->counted);
    plan.tally = std::move(tally).value();
    plan.problem.counted = withoutSetAside(plan.tally.counted, plan.setAside);
    for (const auto* line : Index::of(index.lines, id))
        plan.problem.lines.push_back(shareLine(index, *line));
    auto share = shareout::shareOut(plan.problem);
    if (!share.ok()) return ShareStop(share.error());
    plan.share = std::move(share).value();
    return plan;
}

std::vector<shareout::StandIn> agreedStandIns(const model::Season& season, Id<model::Booking> booking,
                                              const shareout::ShareProblem& problem) {
    std::vector<const model::AgreedSwap*> swaps;
    for (const auto& swap : season.agreedSwaps) {
        if (swap.booking == booking) swaps.push_back(&swap);
    }
    std::stable_sort(swaps.begin(), swaps.end(),
                     [](const auto* a, const auto* b) { return a->position < b->position; });
    std::vector<shareout::StandIn> standIns;
    for (const auto* swap : swaps) {
        shareout::StandIn standIn{swap->standIn, Stems(0), true, {}};
        for (const auto& line : problem.lines) {
            for (const auto& slot : line.slots) {
                // One that is among the slot's own plants stands in for nothing there.
                if (names(slot, swap->plant) && !names(slot, swap->standIn))
                    standIn.fits.push_back({line.line, slot.slot});
            }
        }
        if (!standIn.fits.empty()) standIns.push_back(std::move(standIn));
    }
    return standIns;
}

} // namespace withy::plan
