// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/garden/warmth.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>

namespace withy::garden {

namespace {

constexpr int spreadWindow = 15; ///< days either side
constexpr int fewestSpreadDays = 10;
constexpr int fewestFahrenheitDays = 3;
constexpr int mostOfAMonth = 20; ///< days; a warm spell of less must not read like Fahrenheit

class Faults {
public:
    void note(WeatherTrouble trouble, Day day) {
        for (auto& f : list) {
            if (f.trouble != trouble) continue;
            f.day = std::min(f.day, day);
            ++f.days;
            return;
        }
        list.push_back({trouble, day, 1});
    }

    std::vector<WeatherFault> list;
};

WeatherTrouble troubleOf(HeatUnitsTrouble t) {
    if (t == HeatUnitsTrouble::notFinite) return WeatherTrouble::notFinite;
    return t == HeatUnitsTrouble::minAboveMax ? WeatherTrouble::minAboveMax : WeatherTrouble::badCelsius;
}

double middle(const DayRange& d) {
    return (d.minimum + d.maximum) / 2;
}

/// Lays the weather over the normals.
void lay(Warmth& w, const std::vector<WeatherDay>& weather, Faults& faults) {
    for (const auto& one : weather) {
        if (one.day < w.from || w.to() < one.day) continue;
        if (const auto bad = heatUnitsTrouble(one.range.minimum, one.range.maximum)) {
            faults.note(troubleOf(*bad), one.day);
            continue;
        }
        const auto i = static_cast<std::size_t>(one.day - w.from);
        if (w.kinds[i] == one.kind) faults.note(WeatherTrouble::doubled, one.day);
        if (w.kinds[i] == TemperatureKind::measured && one.kind != TemperatureKind::measured) continue;
        w.kinds[i] = one.kind;
        w.year[i] = one.range;
    }
}

void count(Warmth& w) {
    std::optional<std::size_t> last;
    for (std::size_t i = 0; i < w.kinds.size(); ++i) {
        if (w.kinds[i] == TemperatureKind::normal) continue;
        const Day day = w.from + static_cast<int>(i);
        const auto before = last.value_or(i);
        if (i > before + 1) {
            w.gaps += static_cast<int>(i - before - 1);
            if (!w.firstGap) w.firstGap = w.from + static_cast<int>(before + 1);
        }
        last = i;
        if (w.kinds[i] == TemperatureKind::forecast) {
            ++w.forecast;
        } else {
            ++w.measured;
            w.lastMeasured = day;
        }
    }
}

/// Of the measured days' departures from normal about their own running mean.
double spreadOf(const Warmth& w) {
    const auto n = w.year.size();
    std::vector<double> sums(n + 1, 0);
    std::vector<double> days(n + 1, 0);
    for (std::size_t i = 0; i < n; ++i) {
        const bool measured = w.kinds[i] == TemperatureKind::measured;
        sums[i + 1] = sums[i] + (measured ? middle(w.year[i]) - middle(w.normal[i]) : 0);
        days[i + 1] = days[i] + (measured ? 1 : 0);
    }
    double squares = 0;
    double freedom = 0;
    for (std::size_t i = 0; i < n; ++i) {
        if (w.kinds[i] != TemperatureKind::measured) continue;
        const std::size_t a = i < spreadWindow ? 0 : i - spreadWindow;
        const std::size_t b = std::min(n, i + spreadWindow + 1);
        const double about = days[b] - days[a];
        if (about < fewestSpreadDays) continue;
        const double off = sums[i + 1] - sums[i] - (sums[b] - sums[a]) / about;
        squares += off * off;
        freedom += 1 - 1 / about;
    }
    return freedom > 0 ? std::sqrt(squares / freedom) : 0;
}

/// Middle of the coldest thirty days of a year, 1 January being 0.
int coldestOf(const std::vector<DayNormal>& days) {
    const int n = static_cast<int>(days.size());
    const auto at = [&](int i) {
        const auto& d = days[static_cast<std::size_t>((i + n) % n)];
        return d.minimum + d.maximum;
    };
    double sum = 0;
    for (int i = -15; i < 15; ++i)
        sum += at(i);
    double least = sum;
    int coldest = 0;
    for (int i = 1; i < n; ++i) {
        sum += at(i + 14) - at(i - 16);
        if (sum >= least - 1e-9) continue;
        least = sum;
        coldest = i;
    }
    return coldest;
}

} // namespace

Result<YearNormals, NormalsTrouble> YearNormals::fromMonths(const MonthlyMeans& minimum,
                                                            const MonthlyMeans& maximum) {
    auto common = dailyNormals(minimum, maximum, false);
    if (!common) return common.error();
    auto leap = dailyNormals(minimum, maximum, true);
    if (!leap) return leap.error();
    const int coldest = coldestOf(*common);
    return YearNormals{std::move(common).value(), std::move(leap).value(), coldest};
}

DayNormal YearNormals::on(Day day) const {
    const auto i = static_cast<std::size_t>(day.dayOfYear() - 1);
    return Day::fromYmd(day.year(), 2, 29) ? leap[i] : common[i];
}

Warmth warmthOf(const YearNormals& normals, const std::vector<WeatherDay>& weather, Day from, Day to) {
    Warmth w;
    w.from = from;
    for (Day day = from; day <= to;) {
        const Day newYear = *Day::fromYmd(day.year() + 1, 1, 1);
        const auto& of = Day::fromYmd(day.year(), 2, 29) ? normals.leap : normals.common;
        auto i = static_cast<std::size_t>(day.dayOfYear() - 1);
        for (; day <= to && day < newYear; day = day + 1)
            w.normal.push_back(of[i++]);
    }
    w.year = w.normal;
    w.kinds.assign(w.normal.size(), TemperatureKind::normal);
    Faults faults;
    lay(w, weather, faults);
    count(w);
    w.spread = spreadOf(w);
    if (readsLikeFahrenheit(normals, weather)) faults.note(WeatherTrouble::looksFahrenheit, from);
    w.faults = std::move(faults.list);
    return w;
}

bool readsLikeFahrenheit(const YearNormals& normals, const std::vector<WeatherDay>& weather) {
    struct Strangeness {
        double asCelsius = 0;
        double asFahrenheit = 0;
        int days = 0;

        [[nodiscard]] bool reads(int fewest) const { return days >= fewest && asFahrenheit < asCelsius; }
    };

    Strangeness all;
    std::map<std::pair<int, int>, Strangeness> months;
    for (const auto& w : weather) {
        if (!std::isfinite(w.range.minimum) || !std::isfinite(w.range.maximum)) continue;
        const double normal = middle(normals.on(w.day));
        const double given = middle(w.range);
        for (auto* s : {&all, &months[{w.day.year(), w.day.month()}]}) {
            s->asCelsius += std::abs(given - normal);
            s->asFahrenheit += std::abs((given - 32) / 1.8 - normal);
            ++s->days;
        }
    }
    return all.reads(fewestFahrenheitDays) || std::any_of(months.begin(), months.end(), [](const auto& m) {
               return m.second.reads(mostOfAMonth);
           });
}

HeatSums::HeatSums(const Warmth& w, const HeatThresholds& thresholds) : from_(w.from) {
    year_.reserve(w.year.size() + 1);
    normal_.reserve(w.year.size() + 1);
    year_.push_back(0);
    normal_.push_back(0);
    for (std::size_t i = 0; i < w.year.size(); ++i) {
        const auto& n = w.normal[i];
        const double normal = expectedHeatUnits(n.minimum, n.maximum, w.spread, thresholds);
        const bool known = w.kinds[i] != TemperatureKind::normal;
        const double year = known ? soundHeatUnits(w.year[i].minimum, w.year[i].maximum, thresholds) : normal;
        normal_.push_back(normal_.back() + normal);
        year_.push_back(year_.back() + year);
    }
}

double HeatSums::at(const std::vector<double>& sums, Day day) const {
    const int last = static_cast<int>(sums.size()) - 1;
    return sums[static_cast<std::size_t>(std::clamp(day - from_ + 1, 0, last))];
}

std::optional<Day> HeatSums::reached(const std::vector<double>& sums, Day origin, double heat) const {
    const int start = std::clamp(origin - from_, 0, static_cast<int>(sums.size()) - 1);
    // What differs in the last bits only, from sums that started elsewhere, is the same day.
    const double wanted = sums[static_cast<std::size_t>(start)] + heat - 1e-9;
    const auto first = sums.begin() + std::min(start + 1, static_cast<int>(sums.size()) - 1);
    const auto at = std::lower_bound(first, sums.end(), wanted);
    if (at == sums.end()) return std::nullopt;
    return from_ + static_cast<int>(at - sums.begin() - 1);
}

} // namespace withy::garden
