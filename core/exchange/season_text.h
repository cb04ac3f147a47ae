// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/season.h"

#include <string>

namespace withy::exchange {

/// The whole season as text: each table in file order, empty ones too, as a line "[name]" and its CSV.
/// Two seasons give the same bytes if and only if all their records are the same.
std::string exportSeason(const model::Season& season);

} // namespace withy::exchange
