// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/quantity.h"

#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace withy {

/// A calendar day (proleptic Gregorian), checked once when it is made and trusted afterwards.
struct Day {
    std::int32_t number = 0; ///< days since 1970-01-01

    /// Nothing when the date does not exist (29 February of a common year, month 13 ...).
    static std::optional<Day> fromYmd(int year, int month, int day);
    /// Reads exactly YYYY-MM-DD, years 1900 to 2200.
    static std::optional<Day> parse(std::string_view iso);

    [[nodiscard]] int year() const;
    [[nodiscard]] int month() const;      ///< 1-12
    [[nodiscard]] int dayOfMonth() const; ///< 1-31
    [[nodiscard]] int weekday() const;    ///< ISO: Monday 1 to Sunday 7
    [[nodiscard]] int dayOfYear() const;  ///< 1-366
    [[nodiscard]] std::string iso() const;

    friend constexpr auto operator<=>(const Day&, const Day&) = default;

    friend constexpr Day operator+(Day d, int n) { return Day{d.number + n}; }

    friend constexpr Day operator-(Day d, int n) { return Day{d.number - n}; }

    friend constexpr int operator-(Day a, Day b) { return a.number - b.number; }
};

/// Wall-clock time in the season's place, to the minute. Not an instant: see Zone for that.
struct LocalTime {
    Day day;
    std::int32_t minute = 0; ///< minutes after midnight, 0 to 1439

    /// Reads YYYY-MM-DDTHH:MM (a space in place of T is taken too).
    static std::optional<LocalTime> parse(std::string_view iso);
    [[nodiscard]] std::string iso() const;   ///< YYYY-MM-DDTHH:MM
    [[nodiscard]] std::string clock() const; ///< HH:MM

    [[nodiscard]] std::int64_t minutesSinceEpoch() const { return std::int64_t{day.number} * 1440 + minute; }

    static LocalTime fromMinutes(std::int64_t minutesSinceEpoch);

    friend constexpr auto operator<=>(const LocalTime&, const LocalTime&) = default;

    /// Moves the hands of the clock; takes no notice of daylight saving.
    friend LocalTime operator+(LocalTime t, Minutes m) {
        return fromMinutes(t.minutesSinceEpoch() + m.value);
    }

    friend LocalTime operator-(LocalTime t, Minutes m) {
        return fromMinutes(t.minutesSinceEpoch() - m.value);
    }

    friend Minutes operator-(LocalTime a, LocalTime b) {
        return Minutes(a.minutesSinceEpoch() - b.minutesSinceEpoch());
    }
};

} // namespace withy
