// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/orders_csv.h"

#include "core/exchange/csv.h"

namespace withy::exchange {

std::string ordersCsv(const model::Season& season, const review::Orders& orders) {
    const auto& currency = season.theSettings().currency;
    const int digits = minorDigits(currency).value_or(2);
    std::string out = csvRow({"booking", "date", "title", "kind", "standing", "pieces", "stems", "currency",
                              "asked", "owed", "given", "unpriced"});
    for (const auto& row : orders.rows) {
        const auto& b = *season.bookings.find(row.booking);
        out += csvRow({std::to_string(b.id.value), b.eventStart.day.iso(), b.title,
                       std::string(model::wordOf(b.kind)), std::string(model::wordOf(b.standing)),
                       std::to_string(row.pieces.value), std::to_string(row.stems.value), currency,
                       plainAmount(row.income, digits), plainAmount(row.owed, digits),
                       plainAmount(row.gift, digits), std::to_string(row.unpriced)});
    }
    return out;
}

} // namespace withy::exchange
