// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/designs/build_up.h"
#include "core/designs/volume.h"
#include "core/model/season.h"
#include "core/shed/ribbon_length.h"

/// From records to the plain values that computations take.
namespace withy::plan {

designs::ProfileShape shapeOf(const model::Container& c);
designs::Tier tierOf(model::Tier tier);
designs::Standing standingOf(const model::Design& d, const model::Container& c, const model::Settings& s);
/// Stems below the tie default to 180 mm (common practice, no source) when the design does not say.
designs::Bound boundOf(const model::Design& d, const model::Settings& s);
shed::Tie tieOf(const model::Design& d);
/// Parts of ten thousand of a percentage as typed.
std::int64_t tenThousandths(double percent);

} // namespace withy::plan
