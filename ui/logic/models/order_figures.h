// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/review/orders.h"
#include "ui/logic/models/sheet.h"

namespace withy::ui {

struct OrderSums {
    QString whose;                                        ///< "All bookings", "Library roof supper"
    std::vector<std::pair<QString, SheetFigure>> figures; ///< with what each is of: "Pieces"
};

/// The figures of one booking with their workings, or of the sum of all that are not lost; empty when nothing
/// is planned.
OrderSums orderSums(const model::Season& season, const plan::Plan& plan, const review::Orders& orders,
                    std::optional<Id<model::Booking>> booking);

} // namespace withy::ui
