// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/garden/ageing.h"

#include <vector>

namespace withy::garden {

/// A stem's hours from the cut to the event's last hour. Before the make-up: first the patch-side
/// bucket, then what is left of the conditioning, then the store for as long as it takes. All
/// hours are real ones; "aged hours" are hours at 20 C that use as much life.
struct CutTimeline {
    double q10 = 1;
    Phase bucket;
    Phase conditioning; ///< whole conditioning time; it begins in the bucket
    double storeCelsius = 20;
    std::vector<Phase> afterMakeUp;
};

/// The stretches before the make-up of a stem cut `hours` ahead of it: bucket, conditioning, store.
std::vector<Phase> phasesBefore(const CutTimeline& t, double hours);

double agedHours(const CutTimeline& t, const std::vector<Phase>& phases);

/// Aged hours from the start of the make-up to `hours` after it.
double agedAfter(const CutTimeline& t, double hours);

/// How many hours ahead of the make-up a stem must be cut to age by `aged` hours before it; nothing
/// ages less than nothing, so a negative `aged` gives 0.
double hoursAheadFor(const CutTimeline& t, double aged);

} // namespace withy::garden
