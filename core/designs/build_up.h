// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/problem.h"
#include "core/base/quantity.h"
#include "core/base/result.h"
#include "core/base/working.h"

#include <optional>
#include <string>
#include <vector>

/// How long the stems of a piece are cut, and which are too short for it. Millimetres.
/// Problem fields are those of the design and its container: inner_depth, lift, height_low, height_middle,
/// height_tall, stems_below_tie, recut, stem_length.
namespace withy::designs {

/// In the model's order.
enum class Tier { low, middle, tall };

/// Heads above the rim, or above the tie of a bound piece.
struct TierHeights {
    Millimetres low;
    Millimetres middle;
    Millimetres tall;

    [[nodiscard]] Millimetres of(Tier tier) const;
};

/// Longest length taken anywhere here, 10 m.
inline constexpr std::int64_t mostLength = 10'000;

/// Cut off again at the bench, just before placing: 2.5 cm (University of Massachusetts, care of cut
/// flowers).
inline constexpr Millimetres usualRecut{25};

/// A piece that stands in a container.
struct Standing {
    Millimetres insideDepth;
    Millimetres lift; ///< stem ends off the inside of the bottom
    TierHeights heights;
    Millimetres recut = usualRecut;
    Basis recutBasis = Basis::published;
};

/// A bound piece: hand-tied, sheaf, buttonhole.
struct Bound {
    Millimetres stemsBelowTie;
    TierHeights heights;
    Millimetres recut = usualRecut;
    Basis recutBasis = Basis::published;
};

struct CutLength {
    Millimetres length;
    Working working;
};

/// inside depth - lift + height above the rim + recut. The lift may not exceed the inside depth.
Result<CutLength, Problem> cutLength(const Standing& piece, Tier tier);
/// stems below the tie + height above the tie + recut.
Result<CutLength, Problem> cutLength(const Bound& piece, Tier tier);

/// What could help a stem that is too short.
enum class ShortStemMend {
    pull,      ///< pull the stem instead of cutting it: it comes with its foot
    lowerTier, ///< use it in a lower tier, where it is long enough
    smallerJar ///< a container no deeper than `depth`, the lift staying as it is
};

struct MendChoice {
    ShortStemMend mend{};
    std::optional<Tier> tier;         ///< lowerTier: the highest one the stem reaches
    std::optional<Millimetres> depth; ///< smallerJar: the greatest inside depth that works
};

struct ShortStem {
    Millimetres missing;
    std::vector<MendChoice> choices; ///< only those that can help; may be empty
    Working working;
};

/// How a plant's stems come.
struct StemLength {
    Millimetres longest;
    bool canBePulled = false; ///< and is cut at present
    Basis basis = Basis::notKnown;
    std::string source;
    std::string subject;
};

/// Nothing when the longest stem is long enough for the tier.
Result<std::optional<ShortStem>, Problem> tooShort(const Standing& piece, Tier tier, const StemLength& stem);
Result<std::optional<ShortStem>, Problem> tooShort(const Bound& piece, Tier tier, const StemLength& stem);

} // namespace withy::designs
