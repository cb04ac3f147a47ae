// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/review/orders.h"

#include <string>

namespace withy::exchange {

/// The orders as CSV, a header and one row a booking in their order: booking, date, title, kind, standing,
/// pieces, stems, currency, asked, owed, given, unpriced. Amounts in the currency's whole units with a
/// point ("9.50"). No row of sums, which a spreadsheet would add up again.
std::string ordersCsv(const model::Season& season, const review::Orders& orders);

} // namespace withy::exchange
