// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/base/working.h"
#include "core/shareout/amounts.h"

/// The share-out: whole stems in every piece.
namespace withy::shareout {

/// Stems of a plant in one slot of one piece; never nought.
struct Portion {
    Id<model::Slot> slot;
    Id<model::Plant> plant;
    Stems stems;

    friend bool operator==(const Portion&, const Portion&) = default;
};

/// Pieces that are made alike.
struct PieceGroup {
    Pieces pieces;
    Stems total;                   ///< of one piece
    std::vector<Portion> portions; ///< of one piece, slots in making order, plants best first

    friend bool operator==(const PieceGroup&, const PieceGroup&) = default;
};

struct PlantShare {
    Id<model::Plant> plant;
    Stems stems;  ///< over all pieces
    Stems fewest; ///< in a piece
    Stems most;   ///< in a piece; in a slot without clumps at most one more
};

struct SlotShare {
    Id<model::Slot> slot;
    Stems asked;                    ///< pieces x count
    Stems given;                    ///< over all pieces
    Stems fewest;                   ///< in a piece
    Stems most;                     ///< in a piece; at most one more
    std::vector<PlantShare> plants; ///< by choice, noughts among them
    std::int64_t wholeClumps = 0;   ///< as many as these stems can make; nought in a slot without clumps
};

struct LineShare {
    Id<model::Line> line;
    Pieces pieces;
    Stems target;                   ///< of every piece
    Stems missing;                  ///< over all pieces
    std::vector<PieceGroup> groups; ///< most pieces first
    std::vector<SlotShare> slots;   ///< in making order
};

struct PlantUse {
    Id<model::Plant> plant;
    Stems counted;
    Stems used;
    Stems left; ///< counted - used
};

enum class ShareFinding {
    plantInNoSlot,    ///< plant, stems: counted, and no slot may use it
    plantNotCounted,  ///< plant: a slot may use it, and its tally is blank; shared out without it
    piecesEmpty,      ///< line; stems: how many pieces get none at all
    slotWithoutPlant, ///< line, slot: no plant may fill it
    lineWithoutSlots, ///< line
};

struct ShareNote {
    ShareFinding finding{};
    Id<model::Plant> plant;
    Id<model::Line> line;
    Id<model::Slot> slot;
    std::int64_t number = 0;
};

struct ShareOut {
    std::vector<LineShare> lines;           ///< by id
    std::vector<PlantUse> plants;           ///< of what was counted, by id
    std::vector<TurnObjectives> objectives; ///< by turn
    std::vector<Proof> proofs;              ///< by turn: why not more
    std::vector<ShareNote> notes;

    [[nodiscard]] Stems missing() const; ///< over all lines
    [[nodiscard]] Stems used() const;
    [[nodiscard]] Stems left() const;
};

/// Deals out what was cut: TurnObjectives is what is made least, exactly. Within a line any two pieces differ
/// by one stem at most in their total, in each slot, in each plant of a slot and in each plant over the slots
/// without clumps; where a slot stands in clumps its plants are dealt by clumped() instead. Of all that, no
/// stem is used twice and none is left over that any piece still lacks (proofs). The same for the same
/// problem, always, however it is listed.
/// Bad input is a fault and nothing is shared out.
Result<ShareOut, ShareFault> shareOut(const ShareProblem& problem);

/// How a plant's count is used up: "64 = 16 x 3 + 8 x 2". Empty for a plant that was not counted.
Working workingOf(const ShareOut& share, Id<model::Plant> plant);

} // namespace withy::shareout
