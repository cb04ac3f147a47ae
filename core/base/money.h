// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace withy {

/// An exact amount in the smallest unit of the season's currency (pence, cents, yen).
struct Money {
    std::int64_t minor = 0;

    friend constexpr auto operator<=>(const Money&, const Money&) = default;

    friend constexpr Money operator+(Money a, Money b) { return Money{a.minor + b.minor}; }

    friend constexpr Money operator-(Money a, Money b) { return Money{a.minor - b.minor}; }

    friend constexpr Money operator*(Money a, std::int64_t n) { return Money{a.minor * n}; }

    constexpr Money& operator+=(Money b) {
        minor += b.minor;
        return *this;
    }
};

/// Digits after the point by ISO 4217 (2 for GBP, 0 for JPY, 3 for BHD); nothing for a text that
/// is not three capital letters. Codes not in the list of exceptions have two, as most do.
std::optional<int> minorDigits(std::string_view currency);

/// "9.50" for 950 pence; no thousands separator, sign in front. Machine form: the window words it.
std::string plainAmount(Money amount, int digits);

/// Reads "9.5", "9.50", "-3" exactly; nothing when it is no number or has too many decimals.
std::optional<Money> parseAmount(std::string_view text, int digits);

/// `amount` x `numerator` / `denominator`, halves away from zero (HMRC VATREC12030: half up).
/// Precondition: denominator > 0. Exact in 128 bits.
Money scaledHalfUp(Money amount, std::int64_t numerator, std::int64_t denominator);

} // namespace withy
