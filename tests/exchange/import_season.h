// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/season.h"

namespace withy::tests {

/// Settings, three plants (1 "Zinnia, coral", 2 and 7 both "Dill") and booking 4, "Library supper".
model::Season importSeason(const char* currency = "GBP");

} // namespace withy::tests
