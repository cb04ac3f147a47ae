// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/shared_rounds.h"

#include "core/plan/needs_plan.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

namespace withy::plan {

namespace {

using model::Standing;
using Rounds = std::set<Id<model::Round>>;
using StemsByPlant = std::map<Id<model::Plant>, std::int64_t>;

/// The first has had its stems already.
int rankOf(Standing standing) {
    switch (standing) {
    case Standing::made:
    case Standing::delivered:
    case Standing::settled:
        return 0;
    case Standing::booked:
        return 1;
    case Standing::held:
        return 2;
    case Standing::quoted:
        return 3;
    case Standing::enquiry:
    case Standing::lost:
        return 4;
    }
    return 4;
}

auto turnOf(const model::Booking& b) {
    return std::tuple(rankOf(b.standing), b.eventStart, b.id);
}

Rounds roundsServing(const model::Season& season, Id<model::Booking> booking) {
    Rounds rounds;
    for (const auto& r : season.roundBookings) {
        if (r.booking == booking) rounds.insert(r.round);
    }
    return rounds;
}

/// Wished shares of a slot, else its first plant.
void addSlot(const Index& index, const model::Slot& slot, std::int64_t pieces, StemsByPlant& wants) {
    const auto& order = Index::of(index.slotPlants, slot.id);
    if (order.empty()) return;
    const auto wished = [](const auto* p) { return p->share && *p->share > 0; };
    double all = 0;
    for (const auto* p : order)
        all += wished(p) ? *p->share : 0;
    const std::int64_t stems = pieces * slot.count.value;
    if (all <= 0) {
        wants[order.front()->plant] += stems;
        return;
    }
    std::vector<double> weights;
    for (const auto* p : order)
        weights.push_back(wished(p) ? *p->share / all : 0);
    const auto parts = shareOut(stems, weights);
    for (std::size_t i = 0; i < order.size(); ++i)
        wants[order[i]->plant] += parts[i];
}

StemsByPlant wantsOf(const Index& index, Id<model::Booking> booking) {
    StemsByPlant wants;
    for (const auto* line : Index::of(index.lines, booking)) {
        for (const auto* slot : Index::of(index.slots, line->design))
            addSlot(index, *slot, line->pieces.value + line->sparePieces.value, wants);
    }
    return wants;
}

/// Less what its rounds brought that do not serve this booking.
StemsByPlant wantsOfShared(const Index& index, Id<model::Booking> other, const Rounds& shared) {
    auto wants = wantsOf(index, other);
    const auto own = roundsServing(index.season, other);
    for (const auto& tally : index.season.tallies) {
        const auto* patch = index.season.patches.find(tally.patch);
        if (!patch || !tally.cut || shared.contains(tally.round) || !own.contains(tally.round)) continue;
        auto& want = wants[patch->plant];
        want -= std::min(want, tally.cut->value - tally.thrownAway.value_or(Stems(0)).value);
    }
    return wants;
}

/// Other bookings on these rounds, in turn; a lost one needs nothing.
std::vector<const model::Booking*> othersOn(const model::Season& season, Id<model::Booking> booking,
                                            const Rounds& rounds) {
    std::set<Id<model::Booking>> ids;
    for (const auto& r : season.roundBookings) {
        if (r.booking != booking && rounds.contains(r.round)) ids.insert(r.booking);
    }
    std::vector<const model::Booking*> all;
    for (const auto id : ids) {
        const auto* b = season.bookings.find(id);
        if (b && b->standing != Standing::lost) all.push_back(b);
    }
    std::sort(all.begin(), all.end(), [](auto a, auto b) { return turnOf(*a) < turnOf(*b); });
    return all;
}

} // namespace

std::vector<SetAside> setAsideForOthers(const Index& index, Id<model::Booking> id,
                                        const std::vector<shareout::Counted>& counted) {
    const auto rounds = roundsServing(index.season, id);
    const auto others = othersOn(index.season, id, rounds);
    if (others.empty()) return {};
    StemsByPlant left;
    for (const auto& c : counted) {
        if (c.stems) left[c.plant] = c.stems->value;
    }
    const auto& booking = *index.season.bookings.find(id);
    std::vector<SetAside> aside;
    const auto serve = [&](const model::Booking& other) {
        for (const auto& [plant, want] : wantsOfShared(index, other.id, rounds)) {
            const auto there = left.find(plant);
            if (there == left.end()) continue;
            const auto stems = std::min(there->second, want);
            there->second -= stems;
            if (stems > 0) aside.push_back({other.id, plant, Stems(stems)});
        }
    };
    const auto mine = std::find_if(others.begin(), others.end(),
                                   [&](const auto* o) { return turnOf(booking) < turnOf(*o); });
    std::for_each(others.begin(), mine, [&](const auto* o) { serve(*o); });
    for (const auto& [plant, want] : wantsOf(index, id)) { // out of the way of those who come after
        if (const auto there = left.find(plant); there != left.end())
            there->second -= std::min(there->second, want);
    }
    std::for_each(mine, others.end(), [&](const auto* o) { serve(*o); });
    std::sort(aside.begin(), aside.end(), [](const auto& a, const auto& b) {
        return std::tie(a.booking, a.plant) < std::tie(b.booking, b.plant);
    });
    return aside;
}

} // namespace withy::plan
