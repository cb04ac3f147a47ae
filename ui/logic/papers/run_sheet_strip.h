// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/run_up_plan.h"

#include "core/papers/document.h"

/// The day of the road on one line of hours.
namespace withy::ui {

struct StripBox {
    LocalTime from;
    LocalTime to;
    std::string words;
    enum class Look { work, road, guests } look = Look::work;
};

/// Boxes on one scale of whole hours: work outlined with its words inside, or after it when they do not fit;
/// the road as a heavy line; guests black, below. What lies outside twelve hours from the first is left out.
papers::Drawing roadStrip(const std::vector<StripBox>& boxes, double width);

} // namespace withy::ui
