// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/shareout/problem.h"

/// From what was noted in the patches to what there is of each plant.
namespace withy::shareout {

/// One note of one patch on one round; several cutters' notes of a patch add up. Stems out of the store come
/// as a line without a patch.
struct TallyLine {
    Id<model::Patch> patch;
    Id<model::Plant> plant;
    std::optional<Stems> cut; ///< blank: not counted
    std::optional<Stems> thrownAway;
    std::optional<Stems> mostExpected; ///< what the patch can give; blank: not known
};

enum class TallyFinding {
    abovePatch,        ///< more was cut of the patch than it can give: a slip, or a good year; counted
    patchNotCounted,   ///< blank, though another patch of the same plant has a figure; counted without it
    thrownWithoutTally ///< thrown away is noted and the cut is blank; passed over
};

struct TallyNote {
    TallyFinding finding{};
    Id<model::Patch> patch;
    Id<model::Plant> plant;
    Stems cut;
    Stems most;
};

enum class TallyTrouble {
    negative,
    tooLarge,       ///< one figure, or a plant's sum, above mostCounted
    moreThrownAway, ///< than the patch's notes together were cut
};

struct TallyFault {
    TallyTrouble trouble{};
    Id<model::Patch> patch;
    Id<model::Plant> plant;
    std::int64_t value = 0;
    std::int64_t most = 0;

    friend bool operator==(const TallyFault&, const TallyFault&) = default;
};

struct TallySum {
    std::vector<Counted>
        counted; ///< by plant: cut - thrown away over its patches; blank where none is counted
    std::vector<TallyNote> notes;
};

/// A blank stays blank: a plant none of whose lines has a figure is not counted, which is not nought.
Result<TallySum, TallyFault> sumTally(const std::vector<TallyLine>& lines);

} // namespace withy::shareout
