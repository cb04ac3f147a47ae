// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/season.h"
#include "core/runup/work_calendar.h"

#include <string>
#include <vector>

namespace withy::runup {

struct BusySpan {
    TimeSpan span;
    std::string label;
};

/// The grower's own busy hours that touch the days from..to, repeats written out, in order of time.
std::vector<BusySpan> growersBusySpans(const model::Season& season, Day from, Day to);
/// The same of a helper; blank: the grower.
std::vector<BusySpan> busySpansOf(const model::Season& season, std::optional<Id<model::Helper>> who, Day from,
                                  Day to);

} // namespace withy::runup
