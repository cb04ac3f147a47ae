// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/schema.h"
#include "core/model/season.h"

#include <string>

namespace withy::test {

/// Every table and value as text; reals in hexadecimal, so that equal texts are equal to the last bit.
std::string textOf(const model::Season& season);

/// Every table filled with `perTable` records of any values that fit the fields' shapes: least and
/// most, blanks, the longest texts, emoji, quotes. References hold; the rules between fields do not.
model::Season wildSeason(unsigned seed, int perTable);

/// Every table filled (settings: one record), all rules kept. Precondition: perTable > 1, as a
/// swap needs two plants.
model::Season lawfulSeason(unsigned seed, int perTable, std::size_t longestText = std::string::npos);

} // namespace withy::test
