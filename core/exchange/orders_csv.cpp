// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/orders_csv.h"

#include "core/exchange/csv.h"
#include "core/review/orders.h"

namespace withy::exchange {

std::string ordersCsv(const model::Season& season, const plan::Plan& plan) {
    const int digits = minorDigits(season.theSettings().currency).value_or(2);
    std::string csv = csvRow({"booking", "date", "title", "kind", "standing", "pieces", "stems", "asked",
                              "owed", "given", "without_price"});
    for (const auto& row : review::seasonOrders(season, plan).rows) {
        const auto* b = season.bookings.find(row.booking);
        if (!b) continue;
        csv += csvRow({std::to_string(row.booking.value), b->eventStart.day.iso(), b->title,
                       std::string(model::wordOf(b->kind)), std::string(model::wordOf(b->standing)),
                       std::to_string(row.pieces.value), std::to_string(row.stems.value),
                       plainAmount(row.income, digits), plainAmount(row.owed, digits),
                       plainAmount(row.gift, digits), std::to_string(row.unpriced)});
    }
    return csv;
}

} // namespace withy::exchange
