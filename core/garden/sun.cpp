// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/garden/sun.h"

#include "core/garden/sun_position.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <vector>

namespace withy::garden {

namespace {

constexpr double hour = 3600.0;
constexpr double dayLong = 86400.0;

std::optional<SunTrouble> trouble(Day day, GeoPoint at) {
    if (!(std::abs(at.latitude) <= 90.0)) return SunTrouble::badLatitude;
    if (!(std::abs(at.longitude) <= 180.0)) return SunTrouble::badLongitude;
    const Day first = *Day::fromYmd(1900, 1, 1);
    const Day last = *Day::fromYmd(2200, 12, 31);
    if (day < first || day > last) return SunTrouble::badDay;
    return std::nullopt;
}

double startOf(Day day) {
    return day.number * dayLong;
}

Instant rounded(double seconds) {
    return Instant{std::llround(seconds)};
}

/// Local mean noon less the equation of time, taken at the transit itself.
double transitOf(Day day, double longitude) {
    const double meanNoon = startOf(day) + dayLong / 2 - longitude * 240.0;
    double t = meanNoon;
    for (int i = 0; i < 4; ++i)
        t = meanNoon - solarPosition(julianCentury(t)).equationOfTime * 60.0;
    return t;
}

struct Span {
    double from = 0;
    double to = 0;
};

struct Crossings {
    bool aboveAtStart = false;
    std::optional<double> up;   ///< the first
    std::optional<double> down; ///< the first
};

struct Sample {
    double time = 0;
    double height = 0; ///< degrees over the chosen altitude

    [[nodiscard]] bool above() const { return height >= 0; }
};

/// The sun's altitude over a chosen one, as a function of time.
class Height {
public:
    Height(GeoPoint at, double level) : at_(at), level_(level) {}

    [[nodiscard]] Sample at(double t) const {
        return {t, solarAltitude(t, at_.latitude, at_.longitude) - level_};
    }

    /// When it crosses zero between a and b, to a hundredth of a second: false position, with a
    /// plain halving every fourth step so that it cannot stall.
    [[nodiscard]] double zero(Sample a, Sample b) const {
        for (int i = 0; b.time - a.time > 0.01; ++i) {
            const bool bisect = i % 4 == 3 || a.height == b.height;
            const double share = bisect ? 0.5 : a.height / (a.height - b.height);
            const double margin = 0.004 / (b.time - a.time);
            const Sample middle = at(a.time + (b.time - a.time) * std::clamp(share, margin, 1 - margin));
            (middle.above() == a.above() ? a : b) = middle;
        }
        return (a.time + b.time) / 2;
    }

    /// The highest (sign 1) or lowest (sign -1) point between a and b, by thirds, to a second.
    [[nodiscard]] Sample extreme(double a, double b, double sign) const {
        while (b - a > 1.0) {
            const double third = (b - a) / 3;
            if (sign * at(a + third).height < sign * at(b - third).height)
                a += third;
            else
                b -= third;
        }
        return at((a + b) / 2);
    }

private:
    GeoPoint at_;
    double level_;
};

/// True when the four heights around the gap before `i` do not run all one way, so that the sun
/// may turn inside it. Gaps at either end are always doubted.
bool mayTurn(const std::vector<Sample>& s, std::size_t i) {
    if (i < 2 || i + 1 >= s.size()) return true;
    const bool rising = s[i].height > s[i - 1].height;
    return (s[i - 1].height > s[i - 2].height) != rising || (s[i + 1].height > s[i].height) != rising;
}

/// Altitudes by the hour, from end to end.
std::vector<Sample> hourlyAltitudes(GeoPoint at, Span span) {
    const Height horizon(at, 0);
    const int steps = static_cast<int>(std::ceil((span.to - span.from) / hour));
    std::vector<Sample> hourly;
    hourly.reserve(static_cast<std::size_t>(steps) + 1);
    for (int i = 0; i <= steps; ++i)
        hourly.push_back(horizon.at(std::min(span.from + i * hour, span.to)));
    return hourly;
}

/// Hourly heights and, where the sun only just crosses between two of them, the turning point too:
/// within half an hour of its turn the sun moves at most 15 x sin(7.5 deg) / 2 < 1 degree.
std::vector<Sample> samples(const Height& height, double level, std::vector<Sample> hourly) {
    constexpr double near = 1.0;
    for (auto& sample : hourly)
        sample.height -= level;
    std::vector<Sample> all{hourly.front()};
    for (std::size_t i = 1; i < hourly.size(); ++i) {
        const Sample a = hourly[i - 1];
        const Sample b = hourly[i];
        const bool close = std::min(std::abs(a.height), std::abs(b.height)) < near;
        if (a.above() == b.above() && close && mayTurn(hourly, i))
            all.push_back(height.extreme(a.time, b.time, a.above() ? -1.0 : 1.0));
        all.push_back(b);
    }
    return all;
}

Crossings crossings(GeoPoint at, double level, const std::vector<Sample>& hourly) {
    const Height height(at, level);
    const std::vector<Sample> all = samples(height, level, hourly);
    Crossings found;
    found.aboveAtStart = all.front().above();
    for (std::size_t i = 1; i < all.size(); ++i) {
        std::optional<double>& event = all[i].above() ? found.up : found.down;
        if (all[i].above() != all[i - 1].above() && !event) event = height.zero(all[i - 1], all[i]);
    }
    return found;
}

/// From the midnight before the transit to the midnight after it, by the sun.
Span solarDay(Day day, double noon, double longitude) {
    const double before = transitOf(day - 1, longitude);
    const double after = transitOf(day + 1, longitude);
    return {(before + noon) / 2, (noon + after) / 2};
}

Span utDate(Day day) {
    return {startOf(day), startOf(day) + dayLong};
}

std::optional<Instant> instantOf(const std::optional<double>& seconds) {
    if (!seconds) return std::nullopt;
    return rounded(*seconds);
}

SunDay sunIn(GeoPoint at, const std::vector<Sample>& hourly) {
    const Crossings c = crossings(at, riseSetAltitude, hourly);
    SunDay result;
    if (!c.up && !c.down) result.status = c.aboveAtStart ? SunStatus::allDay : SunStatus::allNight;
    result.rise = instantOf(c.up);
    result.set = instantOf(c.down);
    return result;
}

TwilightDay twilightIn(GeoPoint at, const std::vector<Sample>& hourly) {
    const Crossings c = crossings(at, civilAltitude, hourly);
    TwilightDay result;
    if (!c.up && !c.down)
        result.status = c.aboveAtStart ? TwilightStatus::brightAllNight : TwilightStatus::darkAllDay;
    result.dawn = instantOf(c.up);
    result.dusk = instantOf(c.down);
    return result;
}

} // namespace

Result<SunAndTwilight, SunTrouble> sunAndTwilightOn(Day day, GeoPoint at) {
    if (const auto bad = trouble(day, at)) return *bad;
    const double noon = transitOf(day, at.longitude);
    const auto hourly = hourlyAltitudes(at, solarDay(day, noon, at.longitude));
    SunAndTwilight both{sunIn(at, hourly), twilightIn(at, hourly)};
    both.sun.transit = rounded(noon);
    return both;
}

Result<SunDay, SunTrouble> sunOn(Day day, GeoPoint at) {
    const auto both = sunAndTwilightOn(day, at);
    if (!both) return both.error();
    return both->sun;
}

Result<TwilightDay, SunTrouble> civilTwilightOn(Day day, GeoPoint at) {
    const auto both = sunAndTwilightOn(day, at);
    if (!both) return both.error();
    return both->twilight;
}

Result<SunDay, SunTrouble> sunOnUtDate(Day day, GeoPoint at) {
    if (const auto bad = trouble(day, at)) return *bad;
    const Span span = utDate(day);
    SunDay result = sunIn(at, hourlyAltitudes(at, span));
    for (const Day solar : {day - 1, day, day + 1}) {
        const double transit = transitOf(solar, at.longitude);
        if (transit >= span.from && transit < span.to && !result.transit) result.transit = rounded(transit);
    }
    return result;
}

Result<TwilightDay, SunTrouble> civilTwilightOnUtDate(Day day, GeoPoint at) {
    if (const auto bad = trouble(day, at)) return *bad;
    return twilightIn(at, hourlyAltitudes(at, utDate(day)));
}

double clockHours(const Zone& zone, Day day, Instant at) {
    const LocalTime local = zone.local(at);
    const std::int64_t second = ((at.seconds % 60) + 60) % 60;
    const auto minutes = static_cast<double>((local - LocalTime{day, 0}).value);
    return minutes / 60.0 + static_cast<double>(second) / 3600.0;
}

} // namespace withy::garden
