// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/season.h"

#include <cstdint>
#include <string>

namespace withy::tests {

/// A season with `rows` records in every table (one in the settings), made from the model's description:
/// values anywhere within their limits, blanks where they may be, texts full of quotes, commas, breaks
/// and signs, and references to records that are there. Same seed, same season. It need not make sense
/// as a season: rules between fields are not kept.
model::Season filledSeason(std::uint64_t seed, int rows, const std::string& currency);

} // namespace withy::tests
