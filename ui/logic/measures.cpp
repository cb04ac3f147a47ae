// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/measures.h"

#include "core/base/conversion.h"
#include "core/garden/ageing.h"
#include "ui/logic/format.h"

#include <QCoreApplication>

#include <cmath>

namespace withy::ui {

namespace {

struct MeasuresSay {
    Q_DECLARE_TR_FUNCTIONS(Measures)
};

constexpr int inchesOfTable = 36; ///< from here on in feet and inches
constexpr double poundsAlone = 20;

/// At most so many decimals, none of them a nought at the end, with the thousands' comma.
QString trimmedFigure(double x, int decimals) {
    const double scale = std::pow(10.0, decimals);
    const double rounded = std::round(std::abs(x) * scale) / scale;
    QString digits = QString::number(rounded, 'f', decimals);
    if (decimals > 0) {
        while (digits.endsWith(QLatin1Char('0')))
            digits.chop(1);
        if (digits.endsWith(QLatin1Char('.'))) digits.chop(1);
    }
    const auto point = digits.indexOf(QLatin1Char('.'));
    const QString words = whole((point < 0 ? digits : digits.left(point)).toLongLong()) +
                          (point < 0 ? QString() : digits.mid(point));
    return x < 0 && rounded > 0 ? QLatin1Char('-') + words : words;
}

/// A tenth of an inch; below one inch a hundredth.
QString inchesFigure(double mm) {
    const double inches = mm / millimetresInInch;
    return trimmedFigure(inches, std::abs(inches) < 1 ? 2 : 1);
}

QString inUsMeasure(double ml, int decimals) {
    if (std::abs(ml) < millilitresInUsQuart)
        return MeasuresSay::tr("%1 US fl oz").arg(trimmedFigure(ml / millilitresInUsFluidOunce, decimals));
    if (std::abs(ml) < millilitresInUsGallon)
        return MeasuresSay::tr("%1 US qt").arg(trimmedFigure(ml / millilitresInUsQuart, 2));
    return MeasuresSay::tr("%1 US gal").arg(trimmedFigure(ml / millilitresInUsGallon, 2));
}

QString poundsWords(double grams) {
    if (std::abs(grams) < gramsInPound)
        return MeasuresSay::tr("%1 oz").arg(trimmedFigure(grams / gramsInOunce, 1));
    if (std::abs(grams) >= poundsAlone * gramsInPound)
        return MeasuresSay::tr("%1 lb").arg(trimmedFigure(grams / gramsInPound, 1));
    const auto ounces = std::llround(std::abs(grams) / gramsInOunce);
    const QString pounds =
        MeasuresSay::tr("%1 lb").arg((grams < 0 ? QStringLiteral("-") : QString()) + whole(ounces / 16));
    return ounces % 16 == 0 ? pounds : MeasuresSay::tr("%1 %2 oz").arg(pounds, whole(ounces % 16));
}

} // namespace

QString lengthFigure(double mm, Units units) {
    return units.imperial() ? inchesFigure(mm) : whole(std::llround(mm));
}

QString lengthUnit(Units units) {
    return units.imperial() ? MeasuresSay::tr("in") : MeasuresSay::tr("mm");
}

QString lengthWords(double mm, Units units) {
    return units.imperial() ? MeasuresSay::tr("%1 in").arg(lengthFigure(mm, units))
                            : MeasuresSay::tr("%1 mm").arg(lengthFigure(mm, units));
}

QString lengthWords(Millimetres mm, Units units) {
    return lengthWords(asMm(mm), units);
}

QString tapeFigure(Millimetres mm, Units units, int decimals) {
    if (units.imperial()) return inchesFigure(asMm(mm));
    const double cm = asMm(mm) / 10;
    return decimals < 0 ? QString::number(cm, 'g', 4) : QString::number(cm, 'f', decimals);
}

QString tapeWords(Millimetres mm, Units units, int decimals) {
    const QString figure = tapeFigure(mm, units, decimals);
    return units.imperial() ? MeasuresSay::tr("%1 in").arg(figure) : MeasuresSay::tr("%1 cm").arg(figure);
}

QString tableLengthWords(Millimetres mm, Units units) {
    const double inches = asMm(mm) / millimetresInInch;
    if (!units.imperial() || inches < inchesOfTable) return lengthWords(mm, units);
    const auto tenths = std::llround(inches * 10);
    const QString feet = MeasuresSay::tr("%1 ft").arg(whole(tenths / 120));
    if (tenths % 120 == 0) return feet;
    return MeasuresSay::tr("%1 %2 in").arg(feet, trimmedFigure(static_cast<double>(tenths % 120) / 10, 1));
}

QString sidesWords(Millimetres length, Millimetres width, Units units) {
    return MeasuresSay::tr("%1 × %2").arg(units.imperial() ? tableLengthWords(length, units)
                                                           : lengthFigure(asMm(length), units),
                                          tableLengthWords(width, units));
}

QString reelWords(Millimetres mm, Units units, int decimals) {
    return units.imperial()
               ? MeasuresSay::tr("%1 ft").arg(QString::number(asMm(mm) / millimetresInFoot, 'f', decimals))
               : MeasuresSay::tr("%1 m").arg(QString::number(asMm(mm) / 1000, 'f', decimals));
}

QString millilitresWords(double ml, Units units) {
    return units.imperial() ? inUsMeasure(ml, 1) : MeasuresSay::tr("%1 ml").arg(whole(std::llround(ml)));
}

QString litresWords(double litres, Units units) {
    return units.imperial() ? inUsMeasure(litres * 1000, 1)
                            : MeasuresSay::tr("%1 litres").arg(QString::number(litres, 'f', 1));
}

QString litresInShort(double litres, Units units) {
    return units.imperial() ? inUsMeasure(litres * 1000, 1)
                            : MeasuresSay::tr("%1 l").arg(QString::number(litres, 'f', 1));
}

QString weightWords(double kg, Units units, int decimals) {
    if (units.imperial()) return poundsWords(kg * 1000);
    return MeasuresSay::tr("%1 kg").arg(decimals < 0 ? QString::number(kg)
                                                     : QString::number(kg, 'f', decimals));
}

QString temperatureFigure(double celsius, Units units, int decimals) {
    const double degrees = units.imperial() ? garden::fahrenheitFromCelsius(celsius) : celsius;
    if (decimals >= 0) return QString::number(degrees, 'f', decimals);
    return units.imperial() ? trimmedFigure(degrees, 1) : QString::number(degrees);
}

QString temperatureWords(double celsius, Units units, int decimals) {
    const QString figure = temperatureFigure(celsius, units, decimals);
    return units.imperial() ? MeasuresSay::tr("%1 °F").arg(figure) : MeasuresSay::tr("%1 °C").arg(figure);
}

QString warmthFigure(double celsiusDays, Units units) {
    return whole(
        std::llround(units.imperial() ? garden::fahrenheitIntervalFromCelsius(celsiusDays) : celsiusDays));
}

QString warmthWords(double celsiusDays, Units units) {
    const QString figure = warmthFigure(celsiusDays, units);
    return units.imperial() ? MeasuresSay::tr("%1 °F days").arg(figure)
                            : MeasuresSay::tr("%1 °C days").arg(figure);
}

QString distanceWords(double km, Units units) {
    if (!units.imperial()) return MeasuresSay::tr("%1 km").arg(QString::number(km));
    const QString miles = trimmedFigure(km / kilometresInMile, 1);
    return miles == QLatin1String("1") ? MeasuresSay::tr("%1 mile").arg(miles)
                                       : MeasuresSay::tr("%1 miles").arg(miles);
}

QString workingNumber(double value) {
    const double size = std::abs(value);
    const double places = size >= 100 ? 10 : size >= 10 ? 100 : 0;
    const QString plain = QString::number(places > 0 ? std::round(value * places) / places : value, 'g', 7);
    if (size < 1000 || plain.contains(QLatin1Char('e'))) return plain;
    const auto point = plain.indexOf(QLatin1Char('.'));
    const QString digits = point < 0 ? plain : plain.left(point);
    return whole(digits.toLongLong()) + (point < 0 ? QString() : plain.mid(point));
}

QString workingLength(double mm, Units units) {
    if (units.imperial()) return MeasuresSay::tr("%1 in").arg(trimmedFigure(mm / millimetresInInch, 2));
    return MeasuresSay::tr("%1 mm").arg(workingNumber(mm));
}

QString workingVolume(double ml, Units units) {
    if (units.imperial()) return inUsMeasure(ml, 2);
    if (std::abs(ml) < 1000) return MeasuresSay::tr("%1 ml").arg(workingNumber(ml));
    return MeasuresSay::tr("%1 litres").arg(workingNumber(std::round(ml / 10) / 100));
}

QString workingWeight(double grams, Units units) {
    if (!units.imperial()) return MeasuresSay::tr("%1 g").arg(workingNumber(grams));
    return std::abs(grams) < poundsAlone * gramsInPound
               ? MeasuresSay::tr("%1 oz").arg(trimmedFigure(grams / gramsInOunce, 2))
               : MeasuresSay::tr("%1 lb").arg(trimmedFigure(grams / gramsInPound, 1));
}

QString workingTemperature(double celsius, Units units, bool tenths) {
    if (units.imperial()) return temperatureWords(celsius, units, tenths ? 1 : -1);
    return MeasuresSay::tr("%1 °C").arg(tenths ? QString::number(celsius, 'f', 1) : workingNumber(celsius));
}

} // namespace withy::ui
