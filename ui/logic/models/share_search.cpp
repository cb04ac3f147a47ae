// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/share_search.h"

#include "core/base/colour_difference.h"
#include "core/cover/room.h"

#include <algorithm>
#include <map>
#include <set>

namespace withy::ui {

namespace {

constexpr int waitDays = 2;                ///< a ready stem may have stood so long (own choice)
constexpr double nearEnough = 25;          ///< CIEDE2000, as the cover proposes swaps (own choice)
constexpr std::size_t mostOtherPlants = 4; ///< free stems of so many other plants are offered

/// A slot that has less than the design asks.
struct ShortSlot {
    shareout::SlotRef at;
    Stems missing;
    std::vector<Id<model::Plant>> plants; ///< by choice
};

bool servesPurpose(const model::Plant& plant, model::Purpose purpose) {
    using enum model::Purpose;
    switch (purpose) {
    case focal:
        return plant.focal;
    case spike:
        return plant.spike;
    case filler:
        return plant.filler;
    case foliage:
        return plant.foliage;
    case airy:
        return plant.airy;
    case trailing:
        return plant.trailing;
    }
    return false;
}

bool nearInColour(const model::Plant* own, const model::Plant& other) {
    if (!own || !own->colour1) return true;
    for (const auto& colour : {other.colour1, other.colour2, other.colour3})
        if (colour && colourDifference(*own->colour1, *colour) <= nearEnough) return true;
    return false;
}

std::vector<ShortSlot> shortSlots(const shareout::ShareOut& share) {
    std::vector<ShortSlot> all;
    for (const auto& line : share.lines) {
        for (const auto& slot : line.slots) {
            if (!(slot.given < slot.asked)) continue;
            ShortSlot s{{line.line, slot.slot}, slot.asked - slot.given, {}};
            for (const auto& p : slot.plants)
                s.plants.push_back(p.plant);
            all.push_back(std::move(s));
        }
    }
    return all;
}

std::set<Id<model::Round>> roundsServing(const model::Season& season, Id<model::Booking> booking) {
    std::set<Id<model::Round>> rounds;
    for (const auto& r : season.roundBookings)
        if (r.booking == booking) rounds.insert(r.round);
    return rounds;
}

std::set<Id<model::Patch>> talliedPatches(const model::Season& season, Id<model::Booking> booking) {
    const auto rounds = roundsServing(season, booking);
    std::set<Id<model::Patch>> patches;
    for (const auto& t : season.tallies)
        if (t.cut && rounds.contains(t.round)) patches.insert(t.patch);
    return patches;
}

/// What the other bookings have, with this one out of the way and the patches that were cut today empty: what
/// was counted there is known better than the forecast knows it.
std::optional<cover::Allocation> withoutThis(const ShareQuestion& q) {
    if (!q.cover || !q.cover->allocations[plan::indexOf(plan::Level::cautious)]) return std::nullopt;
    cover::CoverProblem problem = q.cover->allocations[plan::indexOf(plan::Level::cautious)]->problem;
    std::erase_if(problem.demands, [&](const auto& d) { return d.booking == q.booking; });
    const auto cut = talliedPatches(q.season, q.booking);
    for (auto& patch : problem.patches) {
        if (!cut.contains(patch.patch)) continue;
        for (std::size_t i = 0; i < patch.ready.size(); ++i)
            if (patch.first + static_cast<int>(i) <= q.bench) patch.ready[i] = 0;
    }
    auto allocation = cover::allocate(problem);
    if (!allocation.ok()) return std::nullopt;
    return std::move(allocation).value();
}

/// What the cover has cut in patches for the booking, and what it would have cut all there is of: the first
/// plant of a slot that is short (cutting_goals.h).
std::optional<std::set<Id<model::Plant>>> plantsCutFor(const ShareQuestion& q) {
    if (!q.cover) return std::nullopt;
    const auto found = q.cover->bookings.find(q.booking);
    if (found == q.cover->bookings.end()) return std::nullopt;
    std::set<Id<model::Plant>> plants;
    for (const auto& slot : found->second.slots) {
        const auto& likely = slot.at[plan::indexOf(plan::Level::likely)];
        bool any = false;
        for (const auto& piece : likely.pieces) {
            if (piece.source != cover::Source::patch) continue;
            plants.insert(piece.plant);
            any = true;
        }
        if (likely.shortBy.value > 0 && !any && !slot.choices.empty())
            plants.insert(slot.choices.front().plant);
    }
    return plants;
}

/// The first plant of each short slot none of whose plants has a figure: blank is not nought, so there is
/// nothing yet to find a way out of. What the tally has no row for is not waited for: another stands in.
std::vector<Id<model::Plant>> stillToCount(const plan::SharePlan& plan,
                                           const std::optional<std::set<Id<model::Plant>>>& cutFor) {
    std::set<Id<model::Plant>> counted;
    for (const auto& c : plan.problem.counted)
        if (c.stems) counted.insert(c.plant);
    std::vector<Id<model::Plant>> waits;
    for (const auto& slot : shortSlots(plan.share)) {
        const auto known = [&](Id<model::Plant> p) { return counted.contains(p); };
        if (slot.plants.empty() || std::any_of(slot.plants.begin(), slot.plants.end(), known)) continue;
        const auto hasRow = [&](Id<model::Plant> p) { return !cutFor || cutFor->contains(p); };
        const auto row = std::find_if(slot.plants.begin(), slot.plants.end(), hasRow);
        if (row != slot.plants.end() && std::find(waits.begin(), waits.end(), *row) == waits.end())
            waits.push_back(*row);
    }
    return waits;
}

/// Everything the ladder may offer.
class Offers {
public:
    Offers(const ShareQuestion& q, const plan::SharePlan& plan)
        : q_(q)
        , plan_(plan)
        , short_(shortSlots(plan.share))
        , allocation_(short_.empty() ? std::nullopt : withoutThis(q)) {
        if (allocation_) free_.emplace(*allocation_);
        from_ = q.today && *q.today <= q.bench ? std::max(*q.today, q.bench - waitDays) : q.bench - waitDays;
    }

    shareout::LadderInput input() {
        shareout::LadderInput input;
        input.today = q_.today.value_or(q_.bench);
        if (short_.empty()) return input;
        input.standIns = plan::agreedStandIns(q_.season, q_.booking, plan_.problem);
        for (auto& s : input.standIns)
            s.stems = freeOf(s.plant);
        addOwnPlants(input);
        addOtherPlants(input);
        addReleases(input);
        addBunches(input);
        return input;
    }

private:
    [[nodiscard]] Stems freeOf(Id<model::Plant> plant) const {
        return free_ ? free_->of(plant, from_, q_.bench, q_.bench) : Stems(0);
    }

    /// Of the slots' own plants: what stands in patches that nobody cut yet.
    void addOwnPlants(shareout::LadderInput& input) const {
        std::map<Id<model::Plant>, std::vector<shareout::SlotRef>> fits;
        for (const auto& slot : short_)
            for (const auto plant : slot.plants)
                fits[plant].push_back(slot.at);
        for (auto& [plant, slots] : fits)
            if (const Stems there = freeOf(plant); there.value > 0)
                input.standIns.push_back({plant, there, false, std::move(slots)});
    }

    [[nodiscard]] bool leftInTally(Id<model::Plant> plant) const {
        return std::any_of(plan_.share.plants.begin(), plan_.share.plants.end(),
                           [&](const auto& p) { return p.plant == plant && p.left.value > 0; });
    }

    /// Of plants the design does not name: left over in the tally, or free in the garden.
    void addOtherPlants(shareout::LadderInput& input) const {
        std::set<Id<model::Plant>> known;
        for (const auto& s : input.standIns)
            known.insert(s.plant);
        std::vector<shareout::StandIn> others;
        for (const auto& plant : q_.season.plants) {
            if (known.contains(plant.id)) continue;
            const bool left = leftInTally(plant.id);
            shareout::StandIn s{plant.id, freeOf(plant.id), false, {}};
            if (!left && s.stems.value == 0) continue;
            for (const auto& slot : short_)
                if (couldFill(plant, slot, left)) s.fits.push_back(slot.at);
            if (!s.fits.empty()) others.push_back(std::move(s));
        }
        std::stable_sort(others.begin(), others.end(), [&](const auto& a, const auto& b) {
            return std::pair(!leftInTally(a.plant), -a.stems.value) <
                   std::pair(!leftInTally(b.plant), -b.stems.value);
        });
        if (others.size() > mostOtherPlants) others.resize(mostOtherPlants);
        input.standIns.insert(input.standIns.end(), others.begin(), others.end());
    }

    [[nodiscard]] bool couldFill(const model::Plant& plant, const ShortSlot& slot, bool left) const {
        if (std::find(slot.plants.begin(), slot.plants.end(), plant.id) != slot.plants.end()) return false;
        const auto* record = q_.season.slots.find(slot.at.slot);
        if (!record || !servesPurpose(plant, record->purpose)) return false;
        const auto* own = slot.plants.empty() ? nullptr : q_.season.plants.find(slot.plants.front());
        return left || nearInColour(own, plant);
    }

    /// Beyond what is free: what later bookings could spare because the season mends them otherwise.
    void addReleases(shareout::LadderInput& input) const {
        if (!allocation_) return;
        const cover::Room room(*allocation_);
        std::map<Id<model::Plant>, Stems> missing;
        for (const auto& slot : short_)
            for (const auto plant : slot.plants)
                missing[plant] += slot.missing;
        for (const auto& [plant, stems] : missing) {
            cover::Demand trial;
            trial.booking = q_.booking;
            trial.stems = stems + freeOf(plant);
            trial.event = trial.bench = q_.bench;
            trial.choices = {{plant, from_, q_.bench, std::nullopt}};
            Stems spare = room.forTrial({trial}).front() - freeOf(plant);
            for (const auto& [from, has] : laterWith(plant)) {
                const Stems take = std::min(spare, has);
                if (take.value <= 0) break;
                input.releases.push_back({from, plant, take});
                spare = spare - take;
            }
        }
    }

    /// Later bookings that have the plant, the first event first.
    [[nodiscard]] std::vector<std::pair<Id<model::Booking>, Stems>> laterWith(Id<model::Plant> plant) const {
        std::map<std::pair<Day, Id<model::Booking>>, Stems> has;
        for (const auto& piece : allocation_->pieces) {
            const auto& demand = allocation_->problem.demands[piece.demand];
            if (piece.plant == plant && demand.bench > q_.bench)
                has[{demand.event, demand.booking}] += piece.stems;
        }
        std::vector<std::pair<Id<model::Booking>, Stems>> all;
        for (const auto& [key, stems] : has)
            all.emplace_back(key.second, stems);
        return all;
    }

    void addBunches(shareout::LadderInput& input) const {
        std::map<Id<model::Plant>, Stems> missing;
        for (const auto& slot : short_)
            if (!slot.plants.empty()) missing[slot.plants.front()] += slot.missing;
        for (const auto& [id, stems] : missing) {
            const auto* plant = q_.season.plants.find(id);
            if (!plant) continue;
            shareout::BunchOffer offer;
            offer.id = id.value;
            offer.plant = id;
            offer.bunch = Stems(
                std::clamp<std::int64_t>(plant->bunch.value_or(Stems(1)).value, 1, shareout::mostInSlot));
            offer.bunches = roundUpTo(stems.value, offer.bunch.value) / offer.bunch.value;
            if (plant->costPerStem)
                offer.price =
                    Money{std::min(plant->costPerStem->minor * offer.bunch.value, shareout::mostBunchPrice)};
            offer.orderBy = q_.bench - shareLeadDays;
            input.offers.push_back(offer);
        }
    }

    const ShareQuestion& q_;
    const plan::SharePlan& plan_;
    std::vector<ShortSlot> short_;
    std::optional<cover::Allocation> allocation_;
    std::optional<cover::FreeStock> free_;
    Day from_;
};

} // namespace

bool isTallied(const model::Season& season, Id<model::Booking> booking) {
    return !talliedPatches(season, booking).empty();
}

std::vector<shareout::TallyLine> storeFor(const model::Season& season, const plan::CoverPlan* cover,
                                          Id<model::Booking> booking, Day bench) {
    std::map<std::int64_t, Stems> taken; // of each lot, by other bookings
    const auto* allocation = cover && cover->allocations[plan::indexOf(plan::Level::cautious)]
                                 ? &*cover->allocations[plan::indexOf(plan::Level::cautious)]
                                 : nullptr;
    if (allocation)
        for (const auto& piece : allocation->pieces)
            if (piece.source == cover::Source::lot &&
                allocation->problem.demands[piece.demand].booking != booking)
                taken[piece.from] += piece.stems;
    std::vector<shareout::TallyLine> lines;
    for (const auto& lot : season.stockLots) {
        if (lot.readyFrom > bench || (lot.useBy && *lot.useBy < bench)) continue;
        const Stems left = lot.stems - std::min(lot.stems, taken[lot.id.value]);
        if (left.value > 0) lines.push_back({{}, lot.plant, left, std::nullopt, std::nullopt});
    }
    return lines;
}

ShareFound findShare(const ShareQuestion& q) {
    ShareFound found;
    found.tallied = isTallied(q.season, q.booking);
    found.fromStore = storeFor(q.season, q.cover.get(), q.booking, q.bench);
    auto plan = plan::planShare(q.season, q.booking, found.fromStore);
    if (!plan.ok()) {
        found.stop = plan.error();
        return found;
    }
    found.plan = std::move(plan).value();
    if (!found.tallied && found.plan.share.missing().value > 0) return found;
    found.cutFor = plantsCutFor(q);
    found.waitsFor = stillToCount(found.plan, found.cutFor);
    if (!found.waitsFor.empty()) return found;
    found.input = Offers(q, found.plan).input();
    for (const auto& way : q.mixed)
        found.input = shareout::without(std::move(found.input), way);
    auto ladder =
        shareout::ladder(q.mixed.empty() ? found.plan.problem : q.mixed.back().problem, found.input);
    if (ladder.ok())
        found.ladder = std::move(ladder).value();
    else
        found.stop = ladder.error();
    return found;
}

} // namespace withy::ui
