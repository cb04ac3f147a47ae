// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/zone.h"

#include <algorithm>
#include <cassert>

namespace withy {

namespace {

/// One yearly change of the clocks: the day by month, week and weekday, or by number, and the wall time.
struct Change {
    enum class Kind { weekdayOfMonth, dayWithoutLeapDay, dayFromNought } kind = Kind::weekdayOfMonth;
    int month = 0;
    int week = 0;
    int day = 0; ///< weekday with Sunday 0, or the day's number in the year
    std::int64_t seconds = 2 * 3600;

    /// Wall-clock seconds since 1970 of this year's change.
    [[nodiscard]] std::int64_t wall(int year) const { return dayIn(year) * std::int64_t{86'400} + seconds; }

private:
    [[nodiscard]] std::int64_t dayIn(int year) const {
        const Day newYear = *Day::fromYmd(year, 1, 1);
        if (kind == Kind::dayFromNought) return newYear.number + day;
        if (kind == Kind::dayWithoutLeapDay) {
            const bool leap = Day::fromYmd(year, 2, 29).has_value();
            return newYear.number + day - 1 + (leap && day > 59 ? 1 : 0);
        }
        const Day first = *Day::fromYmd(year, month, 1);
        Day found = first + (day - first.weekday() % 7 + 7) % 7 + 7 * (week - 1);
        while (found.month() != month) // week 5 means the last
            found = found - 7;
        return found.number;
    }
};

/// Reads a POSIX TZ text from left to right; every reader says whether it found its part.
class Reader {
public:
    explicit Reader(std::string_view text) : rest_(text) {}

    [[nodiscard]] bool atEnd() const { return rest_.empty(); }

    bool take(char c) {
        if (rest_.empty() || rest_.front() != c) return false;
        rest_.remove_prefix(1);
        return true;
    }

    /// Three letters or more, or such as <+0545>.
    bool name() {
        const bool quoted = take('<');
        const auto letter = [&](char c) {
            return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') ||
                   (quoted && ((c >= '0' && c <= '9') || c == '+' || c == '-'));
        };
        const auto end = std::find_if_not(rest_.begin(), rest_.end(), letter);
        const auto length = static_cast<std::size_t>(end - rest_.begin());
        rest_.remove_prefix(length);
        return length >= 3 && (!quoted || take('>'));
    }

    bool number(int most, int& value) {
        std::size_t digits = 0;
        value = 0;
        for (; digits < rest_.size() && digits < 3 && rest_[digits] >= '0' && rest_[digits] <= '9'; ++digits)
            value = value * 10 + (rest_[digits] - '0');
        rest_.remove_prefix(digits);
        return digits > 0 && value <= most;
    }

    /// [+-]hh[:mm[:ss]]
    bool time(int mostHours, std::int64_t& seconds) {
        const bool negative = take('-');
        if (!negative) take('+');
        int hours = 0;
        int minutes = 0;
        int rest = 0;
        if (!number(mostHours, hours)) return false;
        if (take(':') && !number(59, minutes)) return false;
        if (take(':') && !number(59, rest)) return false;
        seconds = std::int64_t{hours} * 3600 + minutes * 60 + rest;
        if (negative) seconds = -seconds;
        return true;
    }

    bool change(Change& c) {
        if (!take(',') || !changeDay(c)) return false;
        return !take('/') || time(167, c.seconds);
    }

private:
    bool changeDay(Change& c) {
        if (take('M'))
            return number(12, c.month) && c.month > 0 && take('.') && number(5, c.week) && c.week > 0 &&
                   take('.') && number(6, c.day);
        c.kind = take('J') ? Change::Kind::dayWithoutLeapDay : Change::Kind::dayFromNought;
        return number(365, c.day) && (c.kind == Change::Kind::dayFromNought || c.day > 0);
    }

    std::string_view rest_;
};

std::int64_t wallSeconds(LocalTime t) {
    return t.minutesSinceEpoch() * 60;
}

int yearOf(std::int64_t seconds) {
    return LocalTime::fromMinutes(seconds / 60).day.year();
}

} // namespace

struct Zone::Rule {
    std::int64_t standard = 0; ///< seconds east of Greenwich
    std::int64_t summer = 0;   ///< the same as `standard` where the clocks never change
    Change start;              ///< of summer, in standard time
    Change end;                ///< of summer, in summer time

    [[nodiscard]] bool changes() const { return summer != standard; }

    [[nodiscard]] std::int64_t startOf(int year) const { return start.wall(year) - standard; }

    [[nodiscard]] std::int64_t endOf(int year) const { return end.wall(year) - summer; }

    [[nodiscard]] std::int64_t offsetAt(std::int64_t utc) const {
        if (!changes()) return standard;
        const int year = yearOf(utc + standard);
        const std::int64_t from = startOf(year);
        const std::int64_t to = endOf(year);
        const bool inSummer = from < to ? from <= utc && utc < to : utc < to || from <= utc;
        return inSummer ? summer : standard;
    }

    /// POSIX counts offsets westward, so that Greenwich minus five is written 5.
    bool read(Reader& text) {
        std::int64_t west = 0;
        if (!text.name() || !text.time(24, west)) return false;
        standard = summer = -west;
        if (text.atEnd()) return true;
        if (!text.name()) return false;
        summer = standard + 3600;
        if (text.time(24, west)) summer = -west;
        return text.change(start) && text.change(end) && text.atEnd();
    }
};

std::optional<Zone> Zone::fromPosix(const std::string& text) {
    constexpr std::int64_t most = 15 * 3600;
    if (text.size() > 100) return std::nullopt;
    Reader reader(text);
    auto rule = std::make_shared<Rule>();
    if (!rule->read(reader)) return std::nullopt;
    if (std::abs(rule->standard) > most || std::abs(rule->summer) > most) return std::nullopt;
    Zone z;
    z.rule_ = std::move(rule);
    return z;
}

Zone Zone::utc() {
    return *fromPosix("UTC0");
}

Result<Instant, ClockTrouble> Zone::instant(LocalTime t) const {
    const std::int64_t byStandard = wallSeconds(t) - rule_->standard;
    const std::int64_t bySummer = wallSeconds(t) - rule_->summer;
    const bool standardHolds = rule_->offsetAt(byStandard) == rule_->standard;
    const bool summerHolds = rule_->offsetAt(bySummer) == rule_->summer;
    if (standardHolds && summerHolds && byStandard != bySummer) return ClockTrouble::repeated;
    if (standardHolds) return Instant{byStandard};
    if (summerHolds) return Instant{bySummer};
    return ClockTrouble::skipped;
}

Instant Zone::instantNear(LocalTime t) const {
    const auto exact = instant(t);
    if (exact.ok()) return exact.value();
    const std::int64_t wall = wallSeconds(t);
    const std::int64_t first = wall - std::max(rule_->standard, rule_->summer);
    if (exact.error() == ClockTrouble::repeated) return Instant{first};
    // The clocks went forward between the two readings of the skipped minute: that moment is wanted.
    const std::int64_t last = wall - std::min(rule_->standard, rule_->summer);
    const int year = t.day.year();
    const std::int64_t start = rule_->startOf(year);
    return Instant{first < start && start <= last ? start : rule_->endOf(year)};
}

LocalTime Zone::local(Instant t) const {
    const std::int64_t wall = t.seconds + rule_->offsetAt(t.seconds);
    return LocalTime::fromMinutes(wall / 60 - (wall % 60 < 0 ? 1 : 0));
}

double Zone::hoursBetween(LocalTime a, LocalTime b) const {
    return static_cast<double>(instantNear(b).seconds - instantNear(a).seconds) / 3600.0;
}

} // namespace withy
