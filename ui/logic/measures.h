// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/season.h"

#include <QString>

/// Lengths, volumes, weights, temperatures and distances with their unit, in the system of units the season
/// is kept in. Beside the fields (fields/units.h) and the rules of drawings no other source writes a unit's
/// word. Metric reads as it always did. What is customary in inches, pounds and gallons is decided here,
/// once: lengths to a tenth of an inch, as decimals (which is how the fields show and read them, to a
/// hundredth); below one inch to a hundredth; tables from 36 in on in feet and inches; ribbon and beds in
/// feet, as their fields; volumes in US fluid ounces, from a quart on in US quarts, from a gallon on in US
/// gallons, always with the "US", as other ounces and gallons are larger or smaller; weights in ounces, from
/// a pound on in pounds and ounces, from 20 lb on in pounds; temperatures in degrees Fahrenheit; ways in
/// miles.
namespace withy::ui {

/// The system of units, out of whatever is at hand.
class Units {
public:
    Units(model::UnitSystem system) : system_(system) {} // NOLINT(*-explicit-*)

    Units(const model::Settings& settings) : system_(settings.units) {} // NOLINT(*-explicit-*)

    Units(const model::Season& season) : Units(season.theSettings()) {} // NOLINT(*-explicit-*)

    [[nodiscard]] model::UnitSystem system() const { return system_; }

    [[nodiscard]] bool imperial() const { return system_ == model::UnitSystem::imperial; }

private:
    model::UnitSystem system_;
};

QString lengthWords(double mm, Units units); ///< "312 mm", "12.3 in"
QString lengthWords(Millimetres mm, Units units);
QString lengthFigure(double mm, Units units); ///< without its unit: "312", "12.3"
QString lengthUnit(Units units);              ///< "mm", "in"
/// What is measured with a tape: "30.5 cm", "12 in"; and its bare figure.
QString tapeWords(Millimetres mm, Units units, int decimals = -1);
QString tapeFigure(Millimetres mm, Units units, int decimals = -1);
QString sidesWords(Millimetres length, Millimetres width, Units units); ///< "1,800 × 750 mm"
QString tableLengthWords(Millimetres mm, Units units);                  ///< "1,800 mm", "5 ft 10.9 in"
QString reelWords(Millimetres mm, Units units, int decimals = 2);       ///< "11.04 m", "36.22 ft"

QString millilitresWords(double ml, Units units);              ///< "350 ml", "11.8 US fl oz"
QString litresWords(double litres, Units units);               ///< "6.6 litres", "1.74 US gal"
QString litresInShort(double litres, Units units);             ///< "6.6 l", "1.74 US gal"
QString weightWords(double kg, Units units, int decimals = 1); ///< "4.2 kg", "9 lb 4 oz"
/// -1: as many decimals as it has, in Fahrenheit a tenth at most.
QString temperatureWords(double celsius, Units units, int decimals = -1); ///< "22 °C", "71.6 °F"
QString temperatureFigure(double celsius, Units units, int decimals = -1);
QString warmthFigure(double celsiusDays, Units units); ///< "1,318"
QString warmthWords(double celsiusDays, Units units);  ///< "1,318 °C days", "2,372 °F days"
QString distanceWords(double km, Units units);         ///< "12.5 km", "7.8 miles"

/// The same figures as the lines of a working need them, in one unit a kind and fine enough to be added up.
QString workingLength(double mm, Units units);
QString workingVolume(double ml, Units units);
QString workingWeight(double grams, Units units);
QString workingTemperature(double celsius, Units units, bool tenths);
/// Whole numbers as they are; of others no more places than the eye can use.
QString workingNumber(double value);

} // namespace withy::ui
