// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/colour.h"
#include "core/base/problem.h"
#include "core/base/result.h"
#include "core/base/working.h"

#include <optional>
#include <string>
#include <vector>

/// What the eye sees of a piece, a table or a booking, against the colours wished for.
/// Problem fields: count, across, along, wish_share, reach.
namespace withy::designs {

/// The outline that shows: own choice, simple on purpose.
enum class Shown {
    head,  ///< circle of the head's diameter
    leaf,  ///< ellipse, across by along
    grass, ///< slender triangle, across by along
    ribbon ///< rectangle, across by along
};

struct ShownThing {
    std::int64_t count = 0;
    Shown shape = Shown::head;
    std::optional<double> across; ///< mm; blank: not known
    std::optional<double> along;  ///< mm; not for heads
    std::vector<Colour> colours;  ///< share its area evenly; none: not known
    std::string subject;
};

struct ColourWish {
    Colour colour;
    std::optional<double> share; ///< percent; blank: an even part of what the others leave
};

inline constexpr double usualReach =
    25; ///< CIEDE2000; beyond it a colour is none of those wished: own choice

/// How to mend a wish that is short: so many more of one thing, all else as it is.
struct ColourMend {
    std::size_t thing = 0;
    std::int64_t add = 0;
    bool smallHeads = false; ///< its pieces of colour are under half the common size: clump them
};

struct WishShown {
    double area = 0;                ///< square millimetres
    double share = 0;               ///< percent of all that is seen
    double wished = 0;              ///< percent
    std::optional<ColourMend> mend; ///< where less is shown than wished and something here has the colour
    Working working;                ///< of the share
};

struct ColourBalance {
    std::vector<WishShown> wishes; ///< in the order asked
    double otherArea = 0;
    double otherShare = 0;     ///< percent
    std::int64_t notKnown = 0; ///< things left out: no size or no colour
};

/// count x area, its colours each an even part, each to the nearest wish by CIEDE2000 or, beyond `reach`, to
/// "other". Nothing seen: all shares 0.
Result<ColourBalance, Problem> colourBalance(const std::vector<ShownThing>& things,
                                             const std::vector<ColourWish>& wishes,
                                             double reach = usualReach);

/// Square millimetres of one; blank when a size is.
std::optional<double> shownArea(const ShownThing& thing);

} // namespace withy::designs
