// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"
#include "core/model/schema.h"

#include <string>
#include <string_view>
#include <vector>

/// One value of the model as the text of one cell, and back.
namespace withy::exchange {

/// Why a cell cannot be read; the importer adds record, field, line and column.
struct CellTrouble {
    ProblemCode code{};
    std::vector<std::string> details;
};

/// Blank is empty, yes and no are words, real numbers the shortest decimals that read back to the
/// same double (std::to_chars, never with an exponent), money "9.50" with `moneyDigits` decimals.
std::string cellText(const model::FieldInfo& field, const model::Value& value, int moneyDigits);

/// Reads a cell that is not blank; references are left to the importer, which knows the names.
/// Around all but text, spaces do not count. Words and yes/no are taken in either case.
/// notANumber carries the plain forms the text could stand for ("1,234" -> "1.234" and "1234");
/// notWhole of money carries the decimals its currency has; notAWord the words.
/// Ranges and lengths are not judged here but by model::apply, unless the number fits no 64 bits.
Result<model::Value, CellTrouble> readCell(const model::FieldInfo& field, std::string_view text,
                                           int moneyDigits);

/// A limit of the field as it would be typed: money in amounts, not in minor units.
std::string limitText(const model::FieldInfo& field, double limit, int moneyDigits);

/// A number in digits alone, at most 2^53 - 1 and at least 1: what an id may be.
std::optional<std::int64_t> readId(std::string_view text);

} // namespace withy::exchange
