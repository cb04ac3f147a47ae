// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/garden/good_hours.h"

#include "core/garden/cool_hours.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <tuple>

namespace withy::garden {

namespace {

constexpr int grid = 15; ///< minutes between starts
constexpr double endless = std::numeric_limits<double>::infinity();

using Trouble = std::optional<GoodHoursTrouble>;

bool soundTime(LocalTime t) {
    const bool date = t.day >= *Day::fromYmd(1900, 1, 1) && t.day <= *Day::fromYmd(2200, 12, 31);
    return date && t.minute >= 0 && t.minute < 1440;
}

Trouble trouble(const GardenDay& day) {
    const auto finite = [](const std::optional<double>& v) { return !v || std::isfinite(*v); };
    if (!finite(day.civilDawn) || !finite(day.civilDusk)) return GoodHoursTrouble::notFinite;
    if (heatTrouble(day.heat)) return GoodHoursTrouble::badDay;
    return std::nullopt;
}

Trouble trouble(const CutHours& in) {
    if (!std::isfinite(in.heatLimit)) return GoodHoursTrouble::notFinite;
    if (!soundTime(in.earliest) || !soundTime(in.latest)) return GoodHoursTrouble::badTime;
    if (in.latest < in.earliest) return GoodHoursTrouble::outOfOrder;
    if (in.latest.day - in.earliest.day > 366) return GoodHoursTrouble::tooWide;
    if (in.work < Minutes(0) || in.work > Minutes(1440)) return GoodHoursTrouble::badWork;
    for (const GardenDay& day : in.days)
        if (const auto bad = trouble(day)) return bad;
    return std::nullopt;
}

/// The light of a day in hours of the clock, where it can be worked by.
struct Light {
    double from = 0; ///< civil dawn
    double to = 0;   ///< civil dusk
};

Light lightOf(const GardenDay& day) {
    if (day.twilight == TwilightStatus::darkAllDay) return {endless, -endless};
    if (day.twilight == TwilightStatus::brightAllNight) return {-endless, endless};
    return {day.civilDawn.value_or(-endless), day.civilDusk.value_or(endless)};
}

HourLight lightAt(const GardenDay& day, double hour) {
    if (day.sun == SunStatus::allDay) return HourLight::polarDay;
    if (day.twilight == TwilightStatus::darkAllDay) return HourLight::polarNight;
    const Light light = lightOf(day);
    if (hour < light.from || hour > light.to) return HourLight::dark;
    const bool risen =
        hour >= day.heat.sunrise.value_or(-endless) && hour <= day.heat.sunset.value_or(endless);
    return risen && day.sun == SunStatus::normal ? HourLight::daylight : HourLight::twilight;
}

bool byLamp(HourLight light) {
    return light == HourLight::dark || light == HourLight::polarNight;
}

/// Smaller is better: under the limit, in the light, cool, late.
auto worth(const GoodHour& h) {
    return std::tuple(h.overLimit, byLamp(h.light), h.celsius, -h.start.minutesSinceEpoch());
}

bool better(const GoodHour& a, const GoodHour& b) {
    return worth(a) < worth(b);
}

/// One window with its days in order.
class Search {
public:
    /// `lastStart`: no start after it.
    Search(const CutHours& in, LocalTime lastStart)
        : in_(in), work_(static_cast<double>(in.work.value) / 60), lastStart_(lastStart) {
        for (const GardenDay& day : in.days)
            if (day.day >= in.earliest.day && day.day <= in.latest.day + 1) days_.emplace(day.day, day);
    }

    /// The usual answer: dawns and evenings, the latest first.
    [[nodiscard]] std::vector<GoodHour> coolOnes(std::size_t most) const {
        std::vector<GoodHour> found;
        for (auto day = days_.rbegin(); day != days_.rend() && found.size() < most; ++day)
            for (const auto& hour : coolOnesOf(day->second))
                if (hour && found.size() < most) found.push_back(*hour);
        return found;
    }

    /// What is left when there are none: the best hour of each day, coolest first.
    [[nodiscard]] std::vector<GoodHour> others(std::size_t most) const {
        std::vector<GoodHour> found;
        for (const auto& [date, day] : days_)
            if (const auto hour = coolestOf(day)) found.push_back(*hour);
        std::sort(found.begin(), found.end(), better);
        if (found.empty()) return found;
        const GoodHour best = found.front();
        std::erase_if(found, [&](const GoodHour& h) {
            return h.overLimit != best.overLimit || byLamp(h.light) != byLamp(best.light);
        });
        found.resize(std::min(found.size(), most), best);
        return found;
    }

private:
    [[nodiscard]] std::vector<std::optional<GoodHour>> coolOnesOf(const GardenDay& day) const {
        if (const auto cool = coolHours(day)) return {evening(day, *cool), dawn(day, *cool)};
        const auto coolest = coolestOf(day);
        return {coolest && !coolest->overLimit ? coolest : std::nullopt};
    }

    [[nodiscard]] std::optional<GoodHour> dawn(const GardenDay& day, const CoolHours& cool) const {
        for (const LocalTime start : starts(day.day)) {
            const double hour = hourOf(start);
            if (hour < cool.dawnFrom || hour >= cool.dawnUntil || hour + work_ > cool.dusk) continue;
            const GoodHour found = hourAt(day, start, GoodHourWhy::dawn);
            if (!found.overLimit) return found;
        }
        return std::nullopt;
    }

    [[nodiscard]] std::optional<GoodHour> evening(const GardenDay& day, const CoolHours& cool) const {
        if (const auto found = eveningUntil(day, cool, cool.sunset)) return found;
        return eveningUntil(day, cool, cool.dusk);
    }

    [[nodiscard]] std::optional<GoodHour> eveningUntil(const GardenDay& day, const CoolHours& cool,
                                                       double end) const {
        const double from = std::max(cool.middle, std::min(cool.eveningFrom, end - work_ - grid / 60.0));
        const std::vector<LocalTime> all = starts(day.day);
        for (auto start = all.rbegin(); start != all.rend(); ++start) {
            const double hour = hourOf(*start);
            if (hour < from || hour + work_ > end) continue;
            const GoodHour found = hourAt(day, *start, GoodHourWhy::evening);
            if (!found.overLimit) return found;
        }
        return std::nullopt;
    }

    [[nodiscard]] std::optional<GoodHour> coolestOf(const GardenDay& day) const {
        std::optional<GoodHour> best;
        for (const LocalTime start : starts(day.day)) {
            const GoodHour found = hourAt(day, start, GoodHourWhy::coolestThereIs);
            if (!best || better(found, *best)) best = found;
        }
        return best;
    }

    /// The quarter hours of a day inside the window, and the window's own first minute.
    [[nodiscard]] std::vector<LocalTime> starts(Day day) const {
        std::vector<LocalTime> all;
        if (day == in_.earliest.day && in_.earliest.minute % grid != 0) all.push_back(in_.earliest);
        for (std::int32_t minute = 0; minute < 1440; minute += grid) {
            const LocalTime start{day, minute};
            if (start >= in_.earliest && start <= lastStart_) all.push_back(start);
        }
        return all;
    }

    [[nodiscard]] GoodHour hourAt(const GardenDay& day, LocalTime start, GoodHourWhy why) const {
        GoodHour h;
        h.start = start;
        h.why = why;
        h.celsius = warmest(start);
        h.overLimit = h.celsius > in_.heatLimit;
        h.runsPast = start + in_.work > in_.latest;
        h.light = lightAt(day, hourOf(start));
        return h;
    }

    /// Looked at every quarter of an hour and at the end; days not given are left out.
    [[nodiscard]] double warmest(LocalTime start) const {
        double most = celsiusAt(start).value_or(-endless);
        for (std::int64_t m = grid; m < in_.work.value + grid; m += grid) {
            const auto later = celsiusAt(start + Minutes(std::min(m, in_.work.value)));
            most = std::max(most, later.value_or(-endless));
        }
        return most;
    }

    [[nodiscard]] std::optional<double> celsiusAt(LocalTime t) const {
        const auto day = days_.find(t.day);
        if (day == days_.end()) return std::nullopt;
        const auto celsius = temperatureAt(day->second.heat, hourOf(t));
        return celsius.ok() ? std::optional(celsius.value()) : std::nullopt;
    }

    static double hourOf(LocalTime t) { return t.minute / 60.0; }

    const CutHours& in_;
    double work_ = 0; ///< hours
    LocalTime lastStart_;
    std::map<Day, GardenDay> days_; ///< of the window, and the day after it for work past midnight
};

std::vector<GoodHour> search(const CutHours& in, LocalTime lastStart, std::size_t most) {
    const Search inWindow(in, lastStart);
    const std::vector<GoodHour> found = inWindow.coolOnes(most);
    return found.empty() ? inWindow.others(most) : found;
}

/// A window shorter than the work: start with it, so that the work runs past it the least; only
/// when that is too warm, at another of its hours.
std::vector<GoodHour> searchShort(const CutHours& in, std::size_t most) {
    std::vector<GoodHour> first = search(in, in.earliest, most);
    if (!first.empty() && !first.front().overLimit) return first;
    return search(in, in.latest, most);
}

} // namespace

Result<std::vector<GoodHour>, GoodHoursTrouble> goodHours(const CutHours& in, std::size_t most) {
    if (const auto bad = trouble(in)) return *bad;
    const std::size_t wanted = std::max<std::size_t>(most, 1);
    const LocalTime lastStart = in.latest - in.work;
    const auto found = lastStart < in.earliest ? searchShort(in, wanted) : search(in, lastStart, wanted);
    if (found.empty()) return GoodHoursTrouble::dayNotGiven;
    return found;
}

} // namespace withy::garden
