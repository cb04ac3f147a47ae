// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/bookings.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// How a counted, mixed harvest is dealt out over matching pieces: what there is, and what is to be made.
namespace withy::shareout {

/// What was really cut of a plant and may be used here. Blank: not counted, which is not nought.
struct Counted {
    Id<model::Plant> plant;
    std::optional<Stems> stems;
};

/// A plant that may fill a slot.
struct Choice {
    Id<model::Plant> plant;
    std::optional<Stems> wanted =
        std::nullopt; ///< its wished part of the slot, over all pieces; more of it counts as a lower place
};

struct SlotAsk {
    Id<model::Slot> slot;
    model::Purpose purpose = model::Purpose::filler;
    Stems count{1};              ///< per piece
    Stems mayVaryBy{0};          ///< a piece may hold so many more where another slot of it is short
    Stems clump{0};              ///< 2 or more: the slot's plants stand in clumps of so many
    std::vector<Choice> choices; ///< best first
};

/// All pieces of one line of the booking, spare pieces among them.
struct LineAsk {
    Id<model::Line> line;
    Pieces pieces;
    bool inHand = false;        ///< carried or worn: served before what stands on a table
    std::optional<int> turn;    ///< the grower's own order, lowest first; blank: 0 in hand, else 1
    std::optional<Stems> total; ///< stems of every piece; blank: its slots' counts
    std::vector<SlotAsk> slots; ///< in making order

    [[nodiscard]] int served() const { return turn.value_or(inHand ? 0 : 1); }

    [[nodiscard]] Stems target() const; ///< stems of every piece
};

/// One booking, all its lines at once.
struct ShareProblem {
    std::vector<Counted> counted;
    std::vector<LineAsk> lines;
};

inline constexpr std::int64_t mostCounted = 10'000'000; ///< stems of one plant; more is a slip of the keys
inline constexpr std::int64_t mostPiecesShared = 10'000;
inline constexpr std::int64_t mostInSlot = 1'000; ///< stems of a piece, in count, in what it may vary by

enum class ShareTrouble {
    noTally,         ///< no plant of any slot has been counted
    negative,        ///< fewer than no stems or pieces
    tooSmall,        ///< nought where there must be something
    tooLarge,        ///< beyond the limits above
    repeated,        ///< the same plant, line, slot of a line or choice of a slot twice
    totalOutOfReach, ///< no mix of the slots comes to the total that is asked; see least and most
};

struct ShareFault {
    ShareTrouble trouble{};
    std::string field;      ///< "counted", "pieces", "count", "vary", "clump", "wanted", "total"
    std::int64_t id = 0;    ///< of the plant, line or slot; nought where none is to blame
    std::int64_t value = 0; ///< the figure that was given
    std::int64_t least = 0;
    std::int64_t most = 0;

    friend bool operator==(const ShareFault&, const ShareFault&) = default;
};

/// Nothing when the problem is sound.
std::optional<ShareFault> shareFault(const ShareProblem& problem);

/// The same with plants and lines by id: what comes out does not depend on how it was listed. Slots and
/// choices keep their order, which means something.
ShareProblem inOrder(ShareProblem problem);

} // namespace withy::shareout
