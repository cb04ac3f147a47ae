// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>
#include <cstdint>

namespace withy {

/// A whole number of one small unit. Units do not mix: stems cannot be added to millimetres.
template <class Unit>
struct Quantity {
    std::int64_t value = 0;

    constexpr Quantity() = default;

    constexpr explicit Quantity(std::int64_t v) : value(v) {}

    friend constexpr auto operator<=>(const Quantity&, const Quantity&) = default;

    friend constexpr Quantity operator+(Quantity a, Quantity b) { return Quantity(a.value + b.value); }

    friend constexpr Quantity operator-(Quantity a, Quantity b) { return Quantity(a.value - b.value); }

    friend constexpr Quantity operator*(Quantity a, std::int64_t n) { return Quantity(a.value * n); }

    friend constexpr Quantity operator*(std::int64_t n, Quantity a) { return Quantity(a.value * n); }

    constexpr Quantity& operator+=(Quantity b) {
        value += b.value;
        return *this;
    }

    constexpr Quantity& operator-=(Quantity b) {
        value -= b.value;
        return *this;
    }
};

using Stems = Quantity<struct StemUnit>;             ///< cut stems
using Pieces = Quantity<struct PieceUnit>;           ///< finished pieces
using Millimetres = Quantity<struct MillimetreUnit>; ///< every length, plants and ribbon alike
using Millilitres = Quantity<struct MillilitreUnit>; ///< every volume
using Grams = Quantity<struct GramUnit>;             ///< every weight
using Minutes = Quantity<struct MinuteUnit>;         ///< every duration a person plans with

/// For what is reckoned in halves, angles and shares.
constexpr double asMm(Millimetres length) {
    return static_cast<double>(length.value);
}

/// Smallest multiple of `step` not below `n`; `step` < 2 leaves `n` as it is. Both non-negative.
/// The one place where stems are rounded up to whole bunches.
constexpr std::int64_t roundUpTo(std::int64_t n, std::int64_t step) {
    return step < 2 ? n : (n + step - 1) / step * step;
}

} // namespace withy
