// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/plan.h"
#include "ui/logic/models/sheet.h"

/// A booking's money, the plain part: what the work is worth, what is given, asked, paid and owed. Says
/// nothing about tax.
namespace withy::ui {

Answer moneyAnswer(const model::Season& season, const plan::BookingPlan& plan);
/// Pieces at their prices; the price a piece is typed in the row.
Sheet priceSheet(const model::Season& season, const plan::BookingPlan& plan);
/// List price, gift, to pay, paid, owed.
Sheet sumSheet(const model::Season& season, const plan::BookingPlan& plan);

} // namespace withy::ui
