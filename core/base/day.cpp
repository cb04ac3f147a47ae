// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/day.h"

#include <chrono>
#include <cstdio>

namespace withy {

namespace {

std::chrono::year_month_day ymd(Day d) {
    return std::chrono::year_month_day{std::chrono::sys_days{std::chrono::days{d.number}}};
}

/// Reads exactly `digits` decimal digits at `at`.
std::optional<int> digitsAt(std::string_view text, std::size_t at, std::size_t digits) {
    if (at + digits > text.size()) return std::nullopt;
    int value = 0;
    for (const char c : text.substr(at, digits)) {
        if (c < '0' || c > '9') return std::nullopt;
        value = value * 10 + (c - '0');
    }
    return value;
}

} // namespace

std::optional<Day> Day::fromYmd(int year, int month, int day) {
    // std::chrono keeps only the low bits of larger numbers, and would make dates of them.
    if (year < -9999 || year > 9999 || month < 1 || month > 12 || day < 1 || day > 31) return std::nullopt;
    const std::chrono::year_month_day date{std::chrono::year{year},
                                           std::chrono::month{static_cast<unsigned>(month)},
                                           std::chrono::day{static_cast<unsigned>(day)}};
    if (!date.ok()) return std::nullopt;
    return Day{static_cast<std::int32_t>(std::chrono::sys_days{date}.time_since_epoch().count())};
}

std::optional<Day> Day::parse(std::string_view iso) {
    if (iso.size() != 10 || iso[4] != '-' || iso[7] != '-') return std::nullopt;
    const auto y = digitsAt(iso, 0, 4);
    const auto m = digitsAt(iso, 5, 2);
    const auto d = digitsAt(iso, 8, 2);
    if (!y || !m || !d || *y < 1900 || *y > 2200) return std::nullopt;
    return fromYmd(*y, *m, *d);
}

int Day::year() const {
    return static_cast<int>(ymd(*this).year());
}

int Day::month() const {
    return static_cast<int>(static_cast<unsigned>(ymd(*this).month()));
}

int Day::dayOfMonth() const {
    return static_cast<int>(static_cast<unsigned>(ymd(*this).day()));
}

int Day::weekday() const {
    const std::chrono::weekday w{std::chrono::sys_days{std::chrono::days{number}}};
    return static_cast<int>(w.iso_encoding());
}

int Day::dayOfYear() const {
    return *this - *fromYmd(year(), 1, 1) + 1;
}

std::string Day::iso() const {
    char text[16];
    std::snprintf(text, sizeof text, "%04d-%02d-%02d", year(), month(), dayOfMonth());
    return text;
}

std::optional<LocalTime> LocalTime::parse(std::string_view iso) {
    if (iso.size() != 16 || (iso[10] != 'T' && iso[10] != ' ') || iso[13] != ':') return std::nullopt;
    const auto day = Day::parse(iso.substr(0, 10));
    const auto hour = digitsAt(iso, 11, 2);
    const auto minute = digitsAt(iso, 14, 2);
    if (!day || !hour || !minute || *hour > 23 || *minute > 59) return std::nullopt;
    return LocalTime{*day, *hour * 60 + *minute};
}

std::string LocalTime::clock() const {
    char text[16];
    std::snprintf(text, sizeof text, "%02d:%02d", minute / 60, minute % 60);
    return text;
}

std::string LocalTime::iso() const {
    return day.iso() + "T" + clock();
}

LocalTime LocalTime::fromMinutes(std::int64_t minutes) {
    std::int64_t days = minutes / 1440;
    std::int64_t rest = minutes % 1440;
    if (rest < 0) {
        rest += 1440;
        --days;
    }
    return LocalTime{Day{static_cast<std::int32_t>(days)}, static_cast<std::int32_t>(rest)};
}

} // namespace withy
