// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

/// Numbers as files write them: a point, no separators, no exponent, no locale.
namespace withy::exchange {

/// The shortest decimals that read back to the same double, without an exponent; "" for what is
/// not finite.
std::string decimalText(double x);

inline bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

/// "-12.5": a sign, digits, a point with digits after it; nothing else.
bool isPlainDecimal(std::string_view text);

/// What a number with commas, spaces or apostrophes could stand for, as plain decimals: "1,5" gives
/// "1.5", "1 234" gives "1234", "1,234" gives both "1.234" and "1234". Empty when it is no number.
std::vector<std::string> plainForms(std::string_view text);

} // namespace withy::exchange
