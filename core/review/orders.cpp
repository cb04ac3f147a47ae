// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/review/orders.h"

#include <algorithm>

namespace withy::review {

namespace {

OrderRow rowOf(const model::Season& season, const plan::BookingPlan& plan) {
    OrderRow row;
    row.booking = plan.booking;
    row.stems = plan.stemsNeeded;
    for (const auto& line : plan.lines) {
        // The plan may be an edit older than the season.
        if (const auto* record = season.lines.find(line.line)) row.pieces += record->pieces;
    }
    if (plan.money) {
        row.income = plan.money->split.asked;
        row.owed = plan.money->owed.owed;
        row.overpaid = plan.money->owed.overpaid;
        row.gift = plan.money->gift.gift;
        row.unpriced = plan.money->income.unpriced;
    }
    return row;
}

void add(OrderRow& sum, const OrderRow& row) {
    sum.pieces += row.pieces;
    sum.stems += row.stems;
    sum.income += row.income;
    sum.owed += row.owed;
    sum.overpaid += row.overpaid;
    sum.gift += row.gift;
    sum.unpriced += row.unpriced;
}

} // namespace

Orders seasonOrders(const model::Season& season, const plan::Plan& plan) {
    Orders orders;
    const auto lost = [&](const OrderRow& r) {
        return season.bookings.find(r.booking)->standing == model::Standing::lost;
    };
    for (const auto& [id, booking] : plan.bookings) {
        if (season.bookings.find(id)) orders.rows.push_back(rowOf(season, *booking));
    }
    std::stable_sort(orders.rows.begin(), orders.rows.end(), [&](const OrderRow& a, const OrderRow& b) {
        if (lost(a) != lost(b)) return lost(b);
        return season.bookings.find(a.booking)->eventStart < season.bookings.find(b.booking)->eventStart;
    });
    for (const auto& row : orders.rows) {
        if (!lost(row)) add(orders.sum, row);
    }
    return orders;
}

} // namespace withy::review
