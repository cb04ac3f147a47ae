// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace withy::fuzz {

/// Reads any bytes as CSV and as the CSV of several tables of a small season, and says which promise
/// was broken ("" when all were kept): what is read can be written and read again to the same; what
/// cannot be read is complained of with a line of the text; what an import accepts survives an export.
std::string brokenCsvPromise(std::string_view bytes);

} // namespace withy::fuzz
