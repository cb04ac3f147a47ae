// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/edit.h"
#include "core/model/season.h"

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
    std::string subject;    ///< plant, ribbon or container
    double first = 0;       ///< mm, what is too large
    double second = 0;      ///< mm, what it is held against
    bool note = false;      ///< possible, but worth saying
};

/// In the order of SizeFault.
std::vector<SizeFinding> sizeFindings(const model::Season& season, Id<model::Design> design);

} // namespace withy::plan
