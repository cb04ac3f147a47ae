// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/zone.h"

#include <string>
#include <vector>

namespace withy::exchange {

/// One thing in a calendar. Texts are worded by who calls; they may hold anything.
struct CalendarEntry {
    std::string uid; ///< the same every time this thing is written, and no other thing's
    LocalTime from;
    LocalTime to; ///< not after `from`: a moment
    std::string summary;
    std::string location;
    std::string description;
    std::string category;
    bool tentative = false;   ///< not promised yet
    bool takesNoTime = false; ///< whoever reads it stays free meanwhile
};

struct CalendarOut {
    std::string name;
    std::string zoneRule; ///< POSIX TZ text, see Zone
    Instant written;      ///< now, as the caller's clock says
    std::vector<CalendarEntry> entries;
};

/// An iCalendar file (RFC 5545) as text, lines ended by CR LF. Times bear the place's own zone, written out
/// as a VTIMEZONE of yearly rules where the changes keep to one, else of dates from 1971 to 2040; a time that
/// the clocks leap over becomes the first after the gap, of an hour that comes twice the first is meant (as
/// RFC 5545, 3.3.5, reads it too). With a rule that cannot be read, times are written without a zone. A file
/// of a later second has the larger SEQUENCE (3.8.7.4) and the later DTSTAMP in every entry, so that who
/// takes it in updates what an earlier one brought and doubles nothing.
std::string calendarText(const CalendarOut& calendar);

} // namespace withy::exchange
