// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/plan.h"

#include <QString>

#include <optional>

namespace withy::ui {

/// A booking as it stood: its season and its plan, made for each other.
struct BookingThen {
    const model::Season& season;
    const plan::BookingPlan& plan;
    std::optional<int> toMend = std::nullopt; ///< of the whole plan; blank: not known (yet), so not compared
};

/// What an edit moved, in one line: "24 to 30 jars: 60 stems more, 6 jars more, 3.3 m of ribbon more, £57.00
/// more." Empty when nothing that is counted moved. Stems are those to cut, spare and bunches included.
QString whatMoved(const BookingThen& before, const BookingThen& after);

} // namespace withy::ui
