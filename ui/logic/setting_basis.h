// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/season.h"

#include <QString>

#include <string_view>

namespace withy::ui {

/// Where a setting comes from, for the caption beside it: "Common practice, not yet yours." while it is
/// still the one the program began with, "Yours." once it has been changed; empty where only the grower
/// can know it (place, dates, terms).
QString settingBasis(const model::Settings& settings, std::string_view field);

} // namespace withy::ui
