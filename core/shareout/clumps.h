// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <vector>

namespace withy::shareout {

/// A slot whose stems stand in clumps: small heads read as one only when a few of a plant stand together.
struct ClumpSlot {
    std::int64_t size = 2;           ///< stems of one clump, 2 or more
    std::vector<std::int64_t> room;  ///< stems of the slot in each piece; differing by one at most
    std::vector<std::int64_t> stems; ///< of each plant; as many as there is room in all
};

struct Clumped {
    std::vector<std::vector<std::int64_t>> counts; ///< by piece and plant
    std::int64_t wholeClumps = 0; ///< the most there can be: min(sum of room/size, sum of stems/size)
};

/// Whole clumps first, as many as there can be, those of each plant spread over the pieces to within one
/// clump; the odd stems that are left join a clump of their plant where there is room, and stand together,
/// piece after piece, where there is none.
Clumped clumped(const ClumpSlot& slot);

} // namespace withy::shareout
