// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/money.h"

#include <algorithm>
#include <array>
#include <cassert>

namespace withy {

namespace {

struct Exception {
    std::string_view code;
    int digits;
};

// ISO 4217 list, version of 1 January 2026: the currencies that do not have two decimals.
constexpr std::array<Exception, 26> exceptions{{
    {"BHD", 3}, {"BIF", 0}, {"CLF", 4}, {"CLP", 0}, {"DJF", 0}, {"GNF", 0}, {"IQD", 3},
    {"ISK", 0}, {"JOD", 3}, {"JPY", 0}, {"KMF", 0}, {"KRW", 0}, {"KWD", 3}, {"LYD", 3},
    {"OMR", 3}, {"PYG", 0}, {"RWF", 0}, {"TND", 3}, {"UGX", 0}, {"UYI", 0}, {"UYW", 4},
    {"VND", 0}, {"VUV", 0}, {"XAF", 0}, {"XOF", 0}, {"XPF", 0},
}};

std::int64_t powerOfTen(int digits) {
    std::int64_t p = 1;
    for (int i = 0; i < digits; ++i)
        p *= 10;
    return p;
}

} // namespace

std::optional<int> minorDigits(std::string_view currency) {
    const auto capital = [](char c) { return c >= 'A' && c <= 'Z'; };
    if (currency.size() != 3 || !std::all_of(currency.begin(), currency.end(), capital)) return std::nullopt;
    const auto found = std::find_if(exceptions.begin(), exceptions.end(),
                                    [&](const Exception& e) { return e.code == currency; });
    return found == exceptions.end() ? 2 : found->digits;
}

std::string plainAmount(Money amount, int digits) {
    const bool negative = amount.minor < 0;
    // Unsigned, so that the most negative amount has an absolute value too.
    const auto absolute =
        negative ? 0 - static_cast<std::uint64_t>(amount.minor) : static_cast<std::uint64_t>(amount.minor);
    std::string text = std::to_string(absolute);
    if (digits > 0) {
        const auto places = static_cast<std::size_t>(digits);
        if (text.size() <= places) text.insert(0, places + 1 - text.size(), '0');
        text.insert(text.size() - places, 1, '.');
    }
    return negative ? "-" + text : text;
}

std::optional<Money> parseAmount(std::string_view text, int digits) {
    const bool negative = !text.empty() && text.front() == '-';
    if (negative) text.remove_prefix(1);
    const auto point = text.find('.');
    const std::string_view whole = text.substr(0, point);
    const std::string_view fraction = point == std::string_view::npos ? "" : text.substr(point + 1);
    // Eighteen digits always fit.
    if (whole.empty() || whole.size() > 15 || whole.size() + static_cast<std::size_t>(digits) > 18)
        return std::nullopt;
    if (point != std::string_view::npos && fraction.empty()) return std::nullopt;
    if (fraction.size() > static_cast<std::size_t>(digits)) return std::nullopt;
    std::int64_t value = 0;
    for (const char c : std::string(whole) + std::string(fraction)) {
        if (c < '0' || c > '9') return std::nullopt;
        value = value * 10 + (c - '0');
    }
    value *= powerOfTen(digits - static_cast<int>(fraction.size()));
    return Money{negative ? -value : value};
}

Money scaledHalfUp(Money amount, std::int64_t numerator, std::int64_t denominator) {
    assert(denominator > 0);
    __extension__ using Wide = __int128;
    const Wide product = static_cast<Wide>(amount.minor) * numerator;
    const Wide half = denominator / 2 + denominator % 2; // rounds a true half away from zero
    const Wide magnitude = product < 0 ? -product : product;
    Wide quotient = magnitude / denominator;
    if (magnitude % denominator >= half) ++quotient;
    return Money{static_cast<std::int64_t>(product < 0 ? -quotient : quotient)};
}

} // namespace withy
