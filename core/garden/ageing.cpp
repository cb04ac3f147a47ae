// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/garden/ageing.h"

#include <cmath>
#include <initializer_list>
#include <optional>

namespace withy::garden {

namespace {

using MaybeTrouble = std::optional<AgeingTrouble>;

MaybeTrouble q10Trouble(double q10) {
    if (!std::isfinite(q10)) return AgeingTrouble::notFinite;
    if (q10 <= 0 || q10 > 20) return AgeingTrouble::badQ10;
    return std::nullopt;
}

MaybeTrouble celsiusTrouble(std::initializer_list<double> temperatures) {
    for (const double t : temperatures) {
        if (!std::isfinite(t)) return AgeingTrouble::notFinite;
        if (t < -40 || t > 60) return AgeingTrouble::badCelsius;
    }
    return std::nullopt;
}

MaybeTrouble rateTrouble(std::initializer_list<double> rates) {
    for (const double r : rates) {
        if (!std::isfinite(r)) return AgeingTrouble::notFinite;
        if (r <= 0) return AgeingTrouble::badRate;
    }
    return std::nullopt;
}

} // namespace

Result<double, AgeingTrouble> ageingRate(double q10, double celsius) {
    if (const auto bad = q10Trouble(q10)) return *bad;
    if (const auto bad = celsiusTrouble({celsius})) return *bad;
    return std::pow(q10, (celsius - lifeCelsius) / 10);
}

Result<double, AgeingTrouble> lifeUsed(std::span<const Phase> phases, double q10) {
    if (const auto bad = q10Trouble(q10)) return *bad;
    double days = 0;
    for (const Phase& phase : phases) {
        if (!std::isfinite(phase.hours)) return AgeingTrouble::notFinite;
        if (phase.hours < 0) return AgeingTrouble::negativeHours;
        const auto rate = ageingRate(q10, phase.celsius);
        if (!rate) return rate.error();
        days += phase.hours / 24 * *rate;
    }
    if (!std::isfinite(days)) return AgeingTrouble::notFinite;
    return days;
}

Result<double, AgeingTrouble> q10FromRates(double rate1, double celsius1, double rate2, double celsius2) {
    if (const auto bad = rateTrouble({rate1, rate2})) return *bad;
    if (const auto bad = celsiusTrouble({celsius1, celsius2})) return *bad;
    if (celsius1 == celsius2) return AgeingTrouble::sameCelsius;
    const double q10 = std::pow(rate2 / rate1, 10 / (celsius2 - celsius1));
    if (!std::isfinite(q10)) return AgeingTrouble::notFinite;
    return q10;
}

Result<double, AgeingTrouble> rateAt(double rate, double fromCelsius, double q10, double toCelsius) {
    if (const auto bad = rateTrouble({rate})) return *bad;
    if (const auto bad = q10Trouble(q10)) return *bad;
    if (const auto bad = celsiusTrouble({fromCelsius, toCelsius})) return *bad;
    return rate * std::pow(q10, (toCelsius - fromCelsius) / 10);
}

Result<double, AgeingTrouble> celsiusAtRate(double rate, double celsius, double q10, double otherRate) {
    if (const auto bad = rateTrouble({rate, otherRate})) return *bad;
    if (const auto bad = q10Trouble(q10)) return *bad;
    if (const auto bad = celsiusTrouble({celsius})) return *bad;
    if (q10 == 1) return AgeingTrouble::flatQ10;
    return celsius + 10 * std::log(otherRate / rate) / std::log(q10);
}

} // namespace withy::garden
