// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/shed_plan.h"

#include <QString>

#include <optional>
#include <vector>

namespace withy::ui {

/// A booking's containers of one kind that went out, or will have.
struct ReturnFacts {
    Id<model::Container> container;
    QString name; ///< "24 Honey jar went out"
    std::int64_t out = 0;
    std::optional<std::int64_t> back;
    std::optional<std::int64_t> broken;
    bool home = false; ///< nothing is left to be counted
    bool asks = false; ///< should be home by now
    QString said;      ///< "22 home, 2 broken"; "not counted yet"
};

/// Of the containers that come home at all, once they have gone out: from the make-up's day on, or where
/// something was noted already.
std::vector<ReturnFacts> returnFacts(const model::Season& season, const plan::BookingPlan& plan,
                                     std::optional<Day> today);

} // namespace withy::ui
