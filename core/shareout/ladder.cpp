// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shareout/ladder.h"

#include "core/shareout/ladder_steps.h"

#include <algorithm>

namespace withy::shareout {

namespace {

bool inShort(const SlotShare& slot) {
    return slot.given < slot.asked;
}

bool inShort(const LineShare& line) {
    return line.missing.value > 0 ||
           std::any_of(line.slots.begin(), line.slots.end(), [](const auto& slot) { return inShort(slot); });
}

const LineShare& sharedLine(const ShareOut& share, Id<model::Line> line) {
    return *std::find_if(share.lines.begin(), share.lines.end(),
                         [&](const auto& l) { return l.line == line; });
}

/// A problem that came of a sound one: no fault is possible.
ShareOut shared(const ShareProblem& problem) {
    return shareOut(problem).value();
}

/// How whole all pieces are, whatever fills them.
std::vector<std::int64_t> wholeness(const std::vector<TurnObjectives>& objectives) {
    std::vector<std::int64_t> squares;
    for (const auto& o : objectives)
        squares.push_back(o.pieceSquares);
    for (const auto& o : objectives)
        squares.push_back(o.slotSquares);
    return squares;
}

std::int64_t missingIn(const std::vector<TurnObjectives>& objectives) {
    std::int64_t missing = 0;
    for (const auto& o : objectives)
        missing += o.missing;
    return missing;
}

/// Stems of the plant in slots.
Stems standing(const ShareOut& share, Id<model::Plant> plant, const std::vector<SlotRef>& slots) {
    Stems stems;
    for (const auto& line : share.lines) {
        for (const auto& slot : line.slots) {
            if (std::find(slots.begin(), slots.end(), SlotRef{line.line, slot.slot}) == slots.end()) continue;
            for (const auto& p : slot.plants) {
                if (p.plant == plant) stems += p.stems;
            }
        }
    }
    return stems;
}

class Ways {
public:
    Ways(const ShareProblem& problem, const LadderInput& input)
        : problem_(inOrder(problem)), input_(input), ladder_{shared(problem_), {}} {}

    Ladder found() && {
        if (std::none_of(ladder_.now.lines.begin(), ladder_.now.lines.end(),
                         [](const auto& line) { return inShort(line); }))
            return std::move(ladder_);
        spread();
        for (const auto& line : ladder_.now.lines) {
            if (inShort(line)) fewerPieces(line);
        }
        for (const auto& line : ladder_.now.lines) {
            for (const auto& slot : line.slots) {
                if (inShort(slot)) oneLess(line, slot);
            }
        }
        for (const bool agreed : {true, false}) {
            for (const auto& standIn : input_.standIns) {
                if (standIn.agreed == agreed) swap(standIn);
            }
        }
        for (const auto& release : input_.releases)
            take(release);
        for (const auto& offer : input_.offers)
            buy(offer);
        return std::move(ladder_);
    }

private:
    void keep(Way way, ShareProblem problem) {
        way.share = shared(problem);
        way.problem = std::move(problem);
        ladder_.ways.push_back(std::move(way));
    }

    [[nodiscard]] bool mends(const ShareProblem& problem) const {
        return wholeness(amountsOf(inOrder(problem)).objectives) < wholeness(ladder_.now.objectives);
    }

    void spread() {
        auto problem = problem_;
        for (const auto& line : problem_.lines)
            problem = asDesigned(std::move(problem), line.line);
        keep({.kind = WayKind::spread}, std::move(problem));
    }

    void fewerPieces(const LineShare& line) {
        const auto designed = asDesigned(problem_, line.line);
        const auto alone = missingIn(amountsOf(withPieces(designed, line.line, Pieces(0))).objectives);
        const auto whole = [&](std::int64_t pieces) {
            const auto problem = withPieces(designed, line.line, Pieces(pieces));
            return missingIn(amountsOf(problem).objectives) == alone &&
                   !inShort(sharedLine(shared(problem), line.line));
        };
        const auto pieces = largestThat(0, line.pieces.value, whole);
        if (pieces == 0 || pieces == line.pieces.value) return;
        keep({.kind = WayKind::fewerPieces, .line = line.line, .pieces = Pieces(pieces)},
             withPieces(designed, line.line, Pieces(pieces)));
    }

    void oneLess(const LineShare& line, const SlotShare& slot) {
        const SlotRef at{line.line, slot.slot};
        const auto count = slotIn(problem_, at).count.value;
        auto stems = ((slot.asked - slot.given).value + line.pieces.value - 1) / line.pieces.value;
        for (; stems < count; ++stems) {
            auto problem = withFewer(problem_, at, Stems(stems));
            if (shareFault(problem)) return; // the total asked for cannot come down so far
            const auto share = shared(problem);
            const auto& slots = sharedLine(share, line.line).slots;
            const auto same =
                std::find_if(slots.begin(), slots.end(), [&](const auto& s) { return s.slot == slot.slot; });
            if (inShort(*same)) continue;
            keep({.kind = WayKind::oneLess, .line = line.line, .slot = slot.slot, .stems = Stems(stems)},
                 std::move(problem));
            return;
        }
    }

    /// The fewest stems of the plant, `most` at most, that mend as much as all of them would; nought when
    /// even all would mend nothing.
    [[nodiscard]] std::int64_t enough(const ShareProblem& problem, Id<model::Plant> plant, Stems most) const {
        const auto with = [&](std::int64_t stems) {
            return wholeness(amountsOf(inOrder(withStems(problem, plant, Stems(stems)))).objectives);
        };
        const auto best = with(most.value);
        if (!(best < wholeness(ladder_.now.objectives))) return 0;
        return most.value -
               largestThat(0, most.value, [&](auto fewer) { return with(most.value - fewer) == best; });
    }

    void swap(const StandIn& standIn) {
        auto problem = withChoice(problem_, standIn.plant, standIn.fits);
        const auto added = standIn.stems.value > 0 ? enough(problem, standIn.plant, standIn.stems) : 0;
        if (added > 0) problem = withStems(std::move(problem), standIn.plant, Stems(added));
        if (!mends(problem)) return;
        keep({.kind = standIn.agreed ? WayKind::swap : WayKind::freeStems,
              .plant = standIn.plant,
              .added = Stems(added)},
             std::move(problem));
        auto& way = ladder_.ways.back();
        way.stems = standing(way.share, standIn.plant, standIn.fits) -
                    standing(ladder_.now, standIn.plant, standIn.fits);
    }

    void take(const Release& release) {
        const auto stems = enough(problem_, release.plant, release.stems);
        if (stems == 0) return;
        keep({.kind = WayKind::release,
              .plant = release.plant,
              .from = release.from,
              .stems = Stems(stems),
              .added = Stems(stems)},
             withStems(problem_, release.plant, Stems(stems)));
    }

    void buy(const BunchOffer& offer) {
        const auto problem = withChoice(problem_, offer.plant, offer.fits);
        const auto stems = enough(problem, offer.plant, offer.bunch * offer.bunches);
        if (stems == 0) return;
        const auto bunches = roundUpTo(stems, offer.bunch.value) / offer.bunch.value;
        keep({.kind = WayKind::buyIn,
              .plant = offer.plant,
              .offer = offer.id,
              .stems = offer.bunch * bunches,
              .added = offer.bunch * bunches,
              .bunches = bunches,
              .cost = offer.price * bunches,
              .orderBy = offer.orderBy,
              .inTime = input_.today <= offer.orderBy},
             withStems(problem, offer.plant, offer.bunch * bunches));
    }

    ShareProblem problem_;
    const LadderInput& input_;
    Ladder ladder_;
};

std::optional<ShareFault> beyond(const char* field, std::int64_t id, std::int64_t value, std::int64_t least,
                                 std::int64_t most) {
    if (value >= least && value <= most) return std::nullopt;
    return ShareFault{value < 0       ? ShareTrouble::negative
                      : value < least ? ShareTrouble::tooSmall
                                      : ShareTrouble::tooLarge,
                      field,
                      id,
                      value,
                      least,
                      most};
}

std::optional<ShareFault> inputFault(const ShareProblem& problem, const LadderInput& input) {
    const auto roomFor = [&](Id<model::Plant> plant) {
        for (const auto& c : problem.counted) {
            if (c.plant == plant && c.stems) return mostCounted - c.stems->value;
        }
        return mostCounted;
    };
    for (const auto& s : input.standIns) {
        if (auto f = beyond("standIn", s.plant.value, s.stems.value, 0, roomFor(s.plant))) return f;
    }
    for (const auto& r : input.releases) {
        if (auto f = beyond("release", r.plant.value, r.stems.value, 0, roomFor(r.plant))) return f;
    }
    for (const auto& o : input.offers) {
        if (auto f = beyond("bunch", o.id, o.bunch.value, 1, mostInSlot)) return f;
        if (auto f = beyond("bunches", o.id, o.bunches, 0, roomFor(o.plant) / o.bunch.value)) return f;
        if (auto f = beyond("price", o.id, o.price.minor, 0, mostBunchPrice)) return f;
    }
    return std::nullopt;
}

} // namespace

Result<Ladder, ShareFault> ladder(const ShareProblem& problem, const LadderInput& input) {
    if (const auto fault = shareFault(problem)) return *fault;
    if (const auto fault = inputFault(problem, input)) return *fault;
    return Ways(problem, input).found();
}

LadderInput without(LadderInput input, const Way& taken) {
    for (auto& s : input.standIns) {
        const bool kind = taken.kind == (s.agreed ? WayKind::swap : WayKind::freeStems);
        if (kind && s.plant == taken.plant) s.stems = s.stems - std::min(s.stems, taken.added);
    }
    for (auto& r : input.releases) {
        if (taken.kind == WayKind::release && r.from == taken.from && r.plant == taken.plant)
            r.stems = r.stems - taken.stems;
    }
    for (auto& o : input.offers) {
        if (taken.kind == WayKind::buyIn && o.id == taken.offer) o.bunches -= taken.bunches;
    }
    return input;
}

} // namespace withy::shareout
