// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/finding.h"
#include "core/plan/index.h"

#include <vector>

/// Sizes of a design and what it stands in that contradict each other (more stems than the neck takes are the
/// design plan's neckOverfull). The drawing shows each as it is.
namespace withy::plan {

enum class SizeFault {
    deeperThanHigh,       ///< inner_depth over outer_height: first, second in mm
    widerInsideThanOut,   ///< inner width over outer_diameter
    neckTallerThanJar,    ///< neck_height over outer_height
    ribbonWiderThanNeck,  ///< ribbon's width over neck_height; subject: ribbon
    liftOverRim,          ///< lift over inner_depth: stem ends in the air
    endsOverWater,        ///< lift over the water's level at the start
    headsNarrowerThanJar, ///< spread under the container's width: the jar is the wider
    headWiderThanSpread,  ///< one head over the spread; subject: plant
    tiersOutOfOrder,      ///< low over middle, or middle over tall: the two heights
    tailOverGround        ///< tail over what is free below its knot: it lies on the table
};

struct SizeFinding {
    SizeFault fault{};
    model::Ref place;       ///< record whose field is to be changed
    const char* field = ""; ///< of that record
    std::string subject;    ///< plant, ribbon or container; else the design
    double first = 0;       ///< mm, what is too large
    double second = 0;      ///< mm, what it is held against
    bool note = false;      ///< possible, but worth saying
};

/// In the order of SizeFault.
std::vector<SizeFinding> sizeFindings(const Index& index, const model::Design& design);
std::vector<SizeFinding> sizeFindings(const model::Season& season, Id<model::Design> design);

/// As a finding among the others: the codes go on where those of the shed end, one for each fault; subjects:
/// the plant, ribbon or container, and the design; numbers: first and second. What may be meant so is a note.
Finding findingOf(const SizeFinding& size, const model::Design& design);
/// The fault a code stands for; blank: the code is none of these.
std::optional<SizeFault> sizeFaultOf(FindingCode code);
/// As findingWord(); empty for a code that is none of these.
std::string_view sizeFindingWord(FindingCode code);

} // namespace withy::plan
