// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/cutting/one_length.h"

#include <compare>
#include <optional>
#include <string>

/// Pieces of one ribbon cut from the reels and ends of it that are in the box.
/// Problem fields: ribbon_length, ribbon_count, lengths_on_hand, keep_from, piece_length, pieces, kinds,
/// effort.
namespace withy::cutting {

enum class RibbonKind { reel, end };

struct RibbonOnHand {
    RibbonKind kind = RibbonKind::reel;
    Millimetres length;
    std::int64_t count = 1;
    std::string subject; ///< how the grower knows it; may be empty
};

struct RibbonBox {
    std::vector<RibbonOnHand> onHand;
    std::vector<PieceWish> pieces;
    /// A remainder at least so long goes back into the box; a shorter one is waste. Blank: as long as the
    /// shortest piece wanted here.
    std::optional<Millimetres> keepFrom;
};

inline constexpr std::int64_t mostOnHand = 10'000;

/// What a plan is judged by, in this order. The metres used up are those of the pieces and the waste, so that
/// least waste is also fewest metres.
struct BoxCost {
    std::int64_t missing = 0;   ///< millimetres of pieces that cannot be cut
    std::int64_t waste = 0;     ///< millimetres left over, too short to keep
    std::int64_t fromReels = 0; ///< millimetres of pieces cut from reels: ends first
    std::int64_t opened = 0;    ///< reels and ends cut into
    friend constexpr auto operator<=>(const BoxCost&, const BoxCost&) = default;
};

/// Reels or ends of one entry that are cut alike.
struct RibbonCut {
    std::size_t onHand = 0; ///< index into RibbonBox::onHand
    std::int64_t times = 1;
    std::vector<PieceWish> cuts; ///< longest first
    Millimetres left;            ///< of each
    bool keep = false;           ///< what is left goes back into the box
};

struct RibbonCuts {
    std::vector<RibbonCut> cuts;    ///< ends first, in order of length
    std::vector<PieceWish> missing; ///< pieces to buy ribbon for, longest first
    BoxCost cost;
    Millimetres keepFrom; ///< as used
    Millimetres fromEnds;
    bool proved = false;  ///< no plan has less missing, then less waste, then less cut from reels
    bool stopped = false; ///< told to stop before it was done
    std::int64_t steps = 0;
    Working working; ///< of the waste; where ribbon is missing, of the missing length
};

/// Exact for the boxes of a shed (a handful of lengths to cut, a dozen reels and ends); beyond the effort, a
/// plan by column generation, with `proved` only where the plain sums leave no room for better.
Result<RibbonCuts, Problem> cutFromBox(const RibbonBox& box, const CutEffort& effort = {},
                                       std::stop_token stop = {});

} // namespace withy::cutting
