// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/day.h"
#include "core/garden/heat_units.h"
#include "core/garden/normals.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace withy::garden {

using DayRange = DayNormal; ///< minimum and maximum of a day, C

enum class TemperatureKind { measured, forecast, normal };

/// A day's weather as noted. A measured day stands before a forecast one.
struct WeatherDay {
    Day day;
    DayRange range;
    TemperatureKind kind = TemperatureKind::measured;
};

/// The normal year of a place, day by day.
struct YearNormals {
    std::vector<DayNormal> common; ///< 365 days, 1 January first
    std::vector<DayNormal> leap;   ///< 366 days
    int coldest = 0;               ///< middle of the coldest thirty days, days after 1 January

    /// From monthly means (normals.h).
    static Result<YearNormals, NormalsTrouble> fromMonths(const MonthlyMeans& minimum,
                                                          const MonthlyMeans& maximum);
    [[nodiscard]] DayNormal on(Day day) const;
};

enum class WeatherTrouble {
    notFinite,      ///< left out, the normal stands in
    badCelsius,     ///< outside -90 to 60 C; left out
    minAboveMax,    ///< left out
    doubled,        ///< the same day twice of one kind: the later in the list stands
    looksFahrenheit ///< not left out: see readsLikeFahrenheit()
};

struct WeatherFault {
    WeatherTrouble trouble{};
    Day day; ///< the first such day
    int days = 1;
};

/// A year's temperatures beside the normal year's, day for day: measured before forecast before normal.
struct Warmth {
    Day from;
    std::vector<DayRange> year;
    std::vector<DayRange> normal; ///< as long
    std::vector<TemperatureKind> kinds;
    /// Standard deviation of measured days about their own 31-day mean departure from normal, C; nought
    /// without measured days. The normal's heat is counted with it (expectedHeatUnits()).
    double spread = 0;
    std::optional<Day> lastMeasured;
    int measured = 0;
    int forecast = 0;
    int gaps = 0; ///< days without a figure between measured or forecast ones, filled from the normals
    std::optional<Day> firstGap;
    std::vector<WeatherFault> faults; ///< at most one of each trouble

    [[nodiscard]] Day to() const { return from + (static_cast<int>(year.size()) - 1); }
};

/// `from` not after `to`. Weather in any order; days outside are passed over.
Warmth warmthOf(const YearNormals& normals, const std::vector<WeatherDay>& weather, Day from, Day to);

/// True when the figures lie nearer the normals read as Fahrenheit than as Celsius (mean absolute
/// difference, at least three days).
bool readsLikeFahrenheit(const YearNormals& normals, const std::vector<WeatherDay>& weather);

/// Running heat sums of a Warmth for one pair of thresholds.
class HeatSums {
public:
    /// Precondition: sound thresholds.
    HeatSums(const Warmth& warmth, const HeatThresholds& thresholds);

    [[nodiscard]] Day from() const { return from_; }

    [[nodiscard]] Day to() const { return from_ + (static_cast<int>(year_.size()) - 2); }

    /// From the first day up to and with `day`; held at both ends.
    [[nodiscard]] double yearTo(Day day) const { return at(year_, day); }

    [[nodiscard]] double normalTo(Day day) const { return at(normal_, day); }

    /// First day on which the sum since before `origin` is `heat`; nothing when not reached.
    [[nodiscard]] std::optional<Day> yearReaches(Day origin, double heat) const {
        return reached(year_, origin, heat);
    }

    [[nodiscard]] std::optional<Day> normalReaches(Day origin, double heat) const {
        return reached(normal_, origin, heat);
    }

private:
    [[nodiscard]] double at(const std::vector<double>& sums, Day day) const;
    [[nodiscard]] std::optional<Day> reached(const std::vector<double>& sums, Day origin, double heat) const;

    Day from_;
    std::vector<double> year_; ///< [i]: before day i
    std::vector<double> normal_;
};

} // namespace withy::garden
