// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/zone.h"

#include <string>
#include <vector>

namespace withy::exchange {

/// A moment at which a place's clocks are moved. Offsets are minutes east of Greenwich.
struct ZoneChange {
    Instant at;
    LocalTime before; ///< what the clock shows when it is moved
    int offsetBefore = 0;
    int offsetAfter = 0;
};

/// Minutes east of Greenwich at this moment.
int offsetAt(const Zone& zone, Instant at);

/// Every change from 1 January of the first year to 31 December of the last, in order of time; none where
/// the clocks are never moved. To the minute, as Zone is read.
std::vector<ZoneChange> zoneChanges(const Zone& zone, int firstYear, int lastYear);

/// The yearly rule of these changes as a recurrence of RFC 5545 ("FREQ=YEARLY;BYMONTH=3;BYDAY=-1SU"), which
/// all of them keep to, one each year; empty when there is none. All are of one kind.
std::string yearlyRule(const std::vector<LocalTime>& changes);

} // namespace withy::exchange
