// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/papers/document.h"
#include "core/plan/day_heat.h"
#include "ui/logic/measures.h"

#include <QString>

#include <optional>

/// The hours of a cutting day, side by side.
namespace withy::ui {

/// Seven hours around a round that begins at `from` (blank: from sunrise on) with the temperature at each,
/// the sun's rise or set beneath, and those hatched in which it is over `limit` (C) for some time.
/// Temperatures are left out where nothing is known of the day.
papers::HourStrip cuttingHours(const plan::PlaceDay& day, double limit, std::optional<int> fromMinute,
                               Units units);

/// "09:12": from when on it is too warm to cut; empty when it never is, or nothing is known.
QString tooWarmFrom(const plan::PlaceDay& day, double limit, std::optional<int> fromMinute);

} // namespace withy::ui
