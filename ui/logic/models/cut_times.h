// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/garden/good_hours.h"
#include "core/plan/plan.h"

#include <QString>

#include <compare>
#include <optional>
#include <utility>
#include <vector>

/// When a booking's stems are cut: the one answer for every page and paper.
namespace withy::ui {

/// One round of the booking.
struct CutTime {
    LocalTime from;
    LocalTime to;
    std::optional<std::size_t> round;       ///< of RunUpPlan::rounds; blank: of the booking's own plan
    std::optional<garden::GoodHourWhy> why; ///< known of the booking's own plan only

    friend bool operator==(const CutTime& a, const CutTime& b) {
        return a.from == b.from && a.round == b.round;
    }
};

/// The rounds of the run-up say so, for they keep clear of everybody's other work. Until the bookings are
/// laid into time together, and for a booking that is no longer laid there (delivered), the rounds of its own
/// plan stand in. The plan must outlive this.
class CutTimes {
public:
    CutTimes(const plan::Plan& plan, Id<model::Booking> booking);

    /// Whether the run-up has the booking's work.
    [[nodiscard]] bool laid() const { return laid_; }

    /// All rounds, in order of time.
    [[nodiscard]] const std::vector<CutTime>& all() const { return all_; }

    /// The round that cuts the plant in the patch, nearest to the day its stems are foretold for; else the
    /// first of that day. Blank: no round on that day.
    [[nodiscard]] std::optional<CutTime> of(Id<model::Patch> patch, Id<model::Plant> plant,
                                            Day foretold) const;
    /// The run-up's rounds that cut the plant in the patch, with how many stems there (for all bookings).
    [[nodiscard]] std::vector<std::pair<CutTime, std::int64_t>> stemsOf(Id<model::Patch> patch,
                                                                        Id<model::Plant> plant) const;
    /// The rounds that cut the plant anywhere, in order of time.
    [[nodiscard]] std::vector<CutTime> of(Id<model::Plant> plant) const;
    /// The round of that day with most stems.
    [[nodiscard]] std::optional<CutTime> on(Day day) const;

private:
    [[nodiscard]] std::int64_t stemsOf(std::size_t i) const;

    const plan::Plan* plan_;
    const plan::BookingPlan* own_ = nullptr; ///< null: there is none
    Id<model::Booking> booking_;
    bool laid_ = false;
    std::vector<CutTime> all_;
};

/// "Mon 6 Sep 19:20"; "Mon 6 Sep 19:20 and 2 more rounds"; empty when no round cuts the plant.
QString cutWhen(const CutTimes& times, Id<model::Plant> plant);

} // namespace withy::ui
