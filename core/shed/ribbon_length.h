// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/problem.h"
#include "core/base/quantity.h"
#include "core/base/result.h"
#include "core/base/working.h"

#include <optional>

/// How much ribbon a piece takes, and all of them together. Millimetres; rounded up only at the end.
/// Problem fields: outer_neck, stems, stem_diameter, packing, girth, wraps, overlap, tail, tails, loop,
/// loops, centre, trim, pieces, spare_pieces, on_hand.
namespace withy::shed {

/// In the model's order.
enum class Finish {
    none,  ///< no ribbon at all
    plain, ///< wrapped and fixed
    knot,  ///< two tails
    bow,   ///< loops and tails
};

struct Tie {
    std::int64_t wraps = 1;
    Millimetres overlap; ///< added to every wrap
    Finish finish = Finish::plain;
    Millimetres tail;       ///< one tail
    std::int64_t tails = 2; ///< knot and bow
    Millimetres loop;       ///< one bow loop laid flat: takes twice its length
    std::int64_t loops = 2;
    Millimetres centre; ///< for the bow's centre loop; none: 0
    Millimetres trim;   ///< cut off to neaten the ends
};

inline constexpr std::int64_t mostTieLength = 10'000;
inline constexpr std::int64_t mostWraps = 100;
inline constexpr std::int64_t mostLoops = 200;
inline constexpr std::int64_t mostTiedPieces = 1'000'000;

/// Share of the binding's section that stems fill. Equal round stems cannot exceed 0.9069 (Thue, hexagonal)
/// in a large bunch; hand-bound ones lie looser: three quarters, from memory.
inline constexpr double usualPacking = 0.75;

/// pi x outer diameter of the neck, 1 mm to 10 m.
Result<Figure, Problem> girthOfNeck(Millimetres outerDiameter);

/// Bound stems: d = stem x sqrt(N / packing), girth = pi d. N from 1, packing in (0, 1].
Result<Figure, Problem> girthOfBound(Stems stems, double stemDiameter, double packing = usualPacking,
                                     Basis packingBasis = Basis::fromMemory);

struct RibbonPiece {
    Millimetres length; ///< rounded up to the whole millimetre
    double exact = 0;   ///< before rounding
    Working working;
};

/// wraps x (girth + overlap) + finish + trim; nothing for Finish::none.
Result<RibbonPiece, Problem> ribbonForPiece(double girth, const Tie& tie);

struct RibbonTotal {
    Millimetres needed;
    double metres = 0;
    std::optional<Millimetres> onHand;  ///< blank: not counted
    std::optional<Millimetres> missing; ///< 0 when there is enough; blank when on hand is
    std::optional<Millimetres> left;    ///< likewise
    Working working;
};

/// per piece x (pieces + spare pieces), against the sum of the lengths on hand. Enough in the sum is no
/// promise that each piece can be cut whole from the reels and ends: the cutting plan says that.
Result<RibbonTotal, Problem> ribbonTotal(Millimetres perPiece, std::int64_t pieces, std::int64_t sparePieces,
                                         std::optional<Millimetres> onHand);

} // namespace withy::shed
