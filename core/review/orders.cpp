// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/review/orders.h"

#include "core/base/working_lines.h"
#include "core/model/origin.h"

#include <algorithm>

namespace withy::review {

namespace {

OrderRow rowOf(const model::Season& season, const plan::BookingPlan& plan) {
    OrderRow row;
    row.booking = plan.booking;
    row.stems = plan.stemsNeeded;
    for (const auto& line : plan.lines) {
        // The plan may be an edit older than the season.
        const auto* record = season.lines.find(line.line);
        if (!record) continue;
        row.pieces += record->pieces;
        row.spare += record->sparePieces;
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
    sum.spare += row.spare;
    sum.stems += row.stems;
    sum.income += row.income;
    sum.owed += row.owed;
    sum.overpaid += row.overpaid;
    sum.gift += row.gift;
    sum.unpriced += row.unpriced;
}

struct FigureOf {
    std::int64_t value;
    Unit unit;
    const char* what;
};

FigureOf figureOf(const OrderRow& row, OrderFigure figure) {
    switch (figure) {
    case OrderFigure::pieces:
        return {row.pieces.value, Unit::pieces, "pieces"};
    case OrderFigure::stems:
        return {row.stems.value, Unit::stems, "stems"};
    case OrderFigure::asked:
        return {row.income.minor, Unit::minorMoney, "to pay"};
    case OrderFigure::owed:
        return {row.owed.minor, Unit::minorMoney, "owed"};
    case OrderFigure::given:
        break;
    }
    return {row.gift.minor, Unit::minorMoney, "gift value"};
}

bool isLost(const model::Season& season, Id<model::Booking> id) {
    const auto* booking = season.bookings.find(id);
    return !booking || booking->standing == model::Standing::lost;
}

/// Of a booking's lines, one each.
Working lineWorking(const model::Season& season, const plan::BookingPlan& plan, OrderFigure figure) {
    Working working;
    std::int64_t sum = 0;
    const bool stems = figure == OrderFigure::stems;
    const Unit unit = stems ? Unit::stems : Unit::pieces;
    const char* what = stems ? "stems" : "pieces";
    for (const auto& line : plan.lines) {
        const auto* record = season.lines.find(line.line);
        const auto* design = season.designs.find(line.design);
        if (!record) continue;
        const auto count = stems ? line.stems.value : record->pieces.value;
        sum += count;
        working.push_back(
            from(model::originOf(model::TableKind::lines, line.line.value),
                 lineOf(working.empty() ? Step::given : Step::plus, what, count, unit,
                        stems ? Basis::computed : Basis::mine, {}, design ? design->name : std::string())));
    }
    working.push_back(lineOf(Step::result, what, sum, unit));
    return working;
}

} // namespace

Working sumWorking(const model::Season& season, const Orders& orders, OrderFigure figure) {
    Working working;
    for (const auto& row : orders.rows) {
        const auto part = figureOf(row, figure);
        if (part.value == 0 || isLost(season, row.booking)) continue;
        working.push_back(
            from(model::originOf(model::TableKind::bookings, row.booking.value),
                 lineOf(working.empty() ? Step::given : Step::plus, part.what, part.value, part.unit,
                        Basis::computed, {}, season.bookings.find(row.booking)->title)));
    }
    const auto sum = figureOf(orders.sum, figure);
    working.push_back(lineOf(Step::result, sum.what, sum.value, sum.unit));
    return working;
}

Working orderWorking(const model::Season& season, const plan::Plan& plan, Id<model::Booking> booking,
                     OrderFigure figure) {
    const auto found = plan.bookings.find(booking);
    if (found == plan.bookings.end()) return {};
    const auto& booked = *found->second;
    if (figure == OrderFigure::pieces || figure == OrderFigure::stems)
        return lineWorking(season, booked, figure);
    if (!booked.money) return {};
    const auto& money = *booked.money;
    if (figure == OrderFigure::owed) return money.owed.working;
    if (figure == OrderFigure::given) return money.gift.working;
    Working working = money.income.working;
    append(working, money.split.working);
    return working;
}

Orders seasonOrders(const model::Season& season, const plan::Plan& plan) {
    Orders orders;
    const auto lost = [&](const OrderRow& r) { return isLost(season, r.booking); };
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
