// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/day.h"
#include "core/base/money.h"
#include "core/shareout/share_out.h"

/// What to do when the tally is short of the need: the ways out, each with what it does to every piece.
namespace withy::shareout {

struct SlotRef {
    Id<model::Line> line;
    Id<model::Slot> slot;

    friend auto operator<=>(const SlotRef&, const SlotRef&) = default;
};

/// Another plant that could stand in.
struct StandIn {
    Id<model::Plant> plant;
    Stems stems;               ///< free beyond the tally; nought: what the tally leaves over of it
    bool agreed = false;       ///< the client has agreed to the swap
    std::vector<SlotRef> fits; ///< slots it could fill, after their own plants
};

/// Stems that a later booking can spare and still be covered.
struct Release {
    Id<model::Booking> from;
    Id<model::Plant> plant;
    Stems stems;
};

/// Stems to be bought, in whole bunches.
struct BunchOffer {
    std::int64_t id = 0;
    Id<model::Plant> plant;
    Stems bunch{1};
    std::int64_t bunches = 0; ///< at most
    Money price;              ///< of a bunch
    Day orderBy;
    std::vector<SlotRef> fits; ///< slots it could fill beside those that name it
};

struct LadderInput {
    Day today;
    std::vector<StandIn> standIns;
    std::vector<Release> releases;
    std::vector<BunchOffer> offers;
};

enum class WayKind {
    spread,      ///< all pieces are made, some with a stem less; nothing stands in
    fewerPieces, ///< line, pieces: the most at full count, nothing standing in, that leave every other line
                 ///< as whole as it would be without this one
    oneLess,     ///< line, slot, stems: every piece has so many fewer in the slot, the fewest that will do
    swap,        ///< plant, stems: an agreed swap stands in
    freeStems,   ///< plant, stems: another plant stands in
    release,     ///< from, plant, stems: as many as mend what they can mend, no more
    buyIn,       ///< offer, plant, bunches, stems, cost, orderBy, inTime: as few bunches as do
};

struct Way {
    WayKind kind{};
    Id<model::Line> line{};
    Id<model::Slot> slot{};
    Id<model::Plant> plant{};
    Id<model::Booking> from{};
    std::int64_t offer = 0;
    Pieces pieces{};
    Stems stems{};
    Stems added{}; ///< of the stems, those that were not in the tally
    std::int64_t bunches = 0;
    Money cost{};
    Day orderBy{};
    bool inTime = true;     ///< false: the last day to order has gone by
    ShareProblem problem{}; ///< as it is with this way taken
    ShareOut share{};       ///< and shared out
};

struct Ladder {
    ShareOut now;
    std::vector<Way> ways; ///< by kind; none when every slot has what the design asks
};

inline constexpr std::int64_t mostBunchPrice = 100'000'000; ///< minor units

/// Every way that mends something (spread always, when short), each on its own. Ways are mixed by taking one
/// and asking again: ladder(way.problem, without(input, way)). Going back is using the problem as it was.
/// Stems, bunches and pieces are found by bisection on the real share-out: with more stems no objective of
/// TurnObjectives gets worse. Faults: those of the problem; fields "standIn", "release", "bunch", "bunches",
/// "price" of the input, where `most` is what may still come to the plant's count.
Result<Ladder, ShareFault> ladder(const ShareProblem& problem, const LadderInput& input);

/// What can still be had when a way has been taken.
LadderInput without(LadderInput input, const Way& taken);

} // namespace withy::shareout
