// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/garden/good_hours.h"
#include "ui/logic/models/cutting_goals.h"
#include "ui/logic/paper_shop.h"

#include <optional>
#include <utility>
#include <vector>

/// The outings on which a booking's stems are cut: those of the run-up, with what they cut for others.
namespace withy::ui {

struct OutingRow {
    Id<model::Booking> booking;
    CuttingGoal goal;
};

struct CuttingOuting {
    Day day;
    std::optional<std::pair<LocalTime, LocalTime>> hours;
    std::optional<garden::GoodHourWhy> why;
    std::vector<Id<model::Booking>> bookings; ///< the paper's own first
    std::vector<OutingRow> goals;             ///< in walking order

    [[nodiscard]] std::int64_t stems() const;
};

/// In order of time; of one day alone when the order names one. A stem goes on
/// the round that cuts it (cut_times.h); on a day without one it makes an outing of its own, with the hours
/// of the round on record. Stems of one plant, patch and booking are one row of an outing.
std::vector<CuttingOuting> cuttingOutings(const PaperOrder& order);

} // namespace withy::ui
