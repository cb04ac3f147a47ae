// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/day.h"

#include <QString>

#include <optional>

/// Days and hours as people write them: "11 sep", "11/9", "11.9.2027", "6.30pm".
namespace withy::ui {

/// Where a day without a year belongs.
struct YearRange {
    Day first;
    Day last;
};

struct DayReading {
    std::optional<Day> day;
    QString sentence;
};

/// Day before month, as in Britain; ISO 8601 as well ("2027-09-11"). A weekday in front is not
/// checked: it is what is left standing when only the figure is changed. Without a year it is the first
/// such day within the range, else the one in the year the range begins.
DayReading readDay(const QString& typed, const YearRange& range);

/// Minutes after midnight, up to 1440: "18:30", "6.30pm", "6 pm", "1830", "18", "noon", "midnight".
std::optional<int> readClock(const QString& typed);

/// Splits "sat 11 sep, 6.30pm" into the day and the hour; either may be missing.
struct DayAndClock {
    QString day;
    std::optional<int> minute;
};

DayAndClock splitDayAndClock(const QString& typed);

} // namespace withy::ui
