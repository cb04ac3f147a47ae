// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/index.h"
#include "core/plan/shed/shed_codes.h"
#include "core/plan/shed_plan.h"

namespace withy::plan {

/// What every part of the shed's plan is made from.
struct ShedInput {
    const Index& index;
    const Plan& plan; ///< with designs and bookings
    std::optional<Day> today;
    const ShedPlan* before = nullptr; ///< an earlier one, to keep equal parts of; null: none
    std::stop_token stop;
    packing::TrayRooms* rooms = nullptr;

    [[nodiscard]] const model::Season& season() const { return index.season; }
};

inline bool isFirm(model::Standing s) {
    return s >= model::Standing::booked && s != model::Standing::lost;
}

/// Bookings that still take from reels and boxes of sundries; what is settled has had its share, and what is
/// on hand was counted without it.
inline bool stillTakes(model::Standing s) {
    return s != model::Standing::settled && s != model::Standing::lost;
}

inline Finding findingOf(FindingCode code, Severity severity, model::Ref place,
                         std::vector<std::string> subjects, std::vector<double> numbers = {}) {
    return {code, severity, place, std::move(subjects), std::move(numbers)};
}

} // namespace withy::plan
