// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/day.h"
#include "core/base/result.h"

#include <memory>
#include <string>
#include <string_view>

namespace withy {

/// Seconds of universal time since 1970-01-01T00:00Z (leap seconds not counted).
struct Instant {
    std::int64_t seconds = 0;
    friend constexpr auto operator<=>(const Instant&, const Instant&) = default;
};

/// Why a wall-clock time has no single instant.
enum class ClockTrouble {
    skipped,  ///< the clocks go forward over this minute: it never happens
    repeated, ///< the clocks go back: it happens twice
};

/// A place's time-zone rule, daylight saving included, from a POSIX TZ text such as
/// "GMT0BST,M3.5.0/1:00,M10.5.0/2:00" (the last line of a system zoneinfo file): IEEE Std 1003.1, Base
/// Definitions 8.3, with the hours beyond a day and the negative ones that RFC 8536 section 3.3.1 adds.
/// POSIX counts offsets westward: New York is EST5EDT. Without dates for the changes it is refused.
class Zone {
public:
    /// Nothing when the rule cannot be read.
    static std::optional<Zone> fromPosix(const std::string& rule);
    static Zone utc();

    [[nodiscard]] Result<Instant, ClockTrouble> instant(LocalTime t) const;
    /// As instant(), but a skipped minute becomes the first one after the gap, and of a repeated
    /// one the first is taken. For arithmetic on times that were already accepted.
    [[nodiscard]] Instant instantNear(LocalTime t) const;
    [[nodiscard]] LocalTime local(Instant t) const;
    /// Real hours from a to b, so that the night the clocks change counts 23 or 25.
    [[nodiscard]] double hoursBetween(LocalTime a, LocalTime b) const;

private:
    struct Rule;
    std::shared_ptr<const Rule> rule_;
};

} // namespace withy
