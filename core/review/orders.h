// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/plan.h"

#include <vector>

/// What the season's bookings come to.
namespace withy::review {

struct OrderRow {
    Id<model::Booking> booking;
    Pieces pieces; ///< without spare ones
    Pieces spare;
    Stems stems;  ///< before spare
    Money income; ///< asked
    Money owed;
    Money overpaid; ///< paid beyond what was asked
    Money gift;
    int unpriced = 0; ///< lines without a price: the sums are then too low, and say so
};

struct Orders {
    std::vector<OrderRow> rows; ///< by date of the event; lost bookings last and not in the sum
    OrderRow sum;
};

enum class OrderFigure { pieces, stems, asked, owed, given };

/// How one figure of the sum came about: a line for each booking that adds to it, and leads to it.
Working sumWorking(const model::Season& season, const Orders& orders, OrderFigure figure);
/// The same of one booking's; empty when the plan does not know it.
Working orderWorking(const model::Season& season, const plan::Plan& plan, Id<model::Booking> booking,
                     OrderFigure figure);

Orders seasonOrders(const model::Season& season, const plan::Plan& plan);

} // namespace withy::review
