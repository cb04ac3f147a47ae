// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/plan.h"
#include "ui/logic/answers/answer.h"

/// What the shed's pages begin with: the first day something runs short, as the shelves have it: all bookings
/// together. Bookings that are lost ask for nothing.
namespace withy::ui {

/// "First to run short: Honey jar, 18 short on Fri 10 Sep for Library roof supper."
Answer containersAnswer(const model::Season& season, const plan::Plan& plan);
Answer ribbonsAnswer(const model::Season& season, const plan::Plan& plan);
Answer sundriesAnswer(const model::Season& season, const plan::Plan& plan);
Answer holdersAnswer(const model::Season& season, const plan::Plan& plan);
/// Whether every mix's shares come to 100 percent.
Answer mixesAnswer(const model::Season& season);
Answer vehiclesAnswer(const model::Season& season);

/// The most any one booking needs of it; blank when none does.
std::optional<std::int64_t> mostNeeded(const plan::Plan& plan, Id<model::Container> container);

} // namespace withy::ui
