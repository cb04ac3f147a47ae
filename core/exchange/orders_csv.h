// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/plan.h"

#include <string>

namespace withy::exchange {

/// The season's orders as CSV, by date of the event, lost ones last: booking (its id), date, title, kind,
/// standing, pieces (without spare ones), stems (before spare), asked, owed, given (plain amounts in the
/// season's currency), without_price (kinds of piece that have none, so that asked is too low). No sum:
/// it would be counted twice.
std::string ordersCsv(const model::Season& season, const plan::Plan& plan);

} // namespace withy::exchange
