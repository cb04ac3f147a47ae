// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/plan.h"
#include "ui/logic/models/cut_times.h"
#include "ui/logic/models/finding_list.h"
#include "ui/logic/models/sheet.h"

/// The stems of a booking, design by design, and the rounds that cut them. Whether the garden has them is
/// not said here: that is the cover's business.
namespace withy::ui {

/// Stems of one plant as a part of all, for the bar in bloom colours.
struct StemShare {
    QString plant;
    std::optional<Colour> colour;
    std::int64_t stems = 0;
};

Answer stemAnswer(const model::Season& season, const plan::BookingPlan& plan,
                  const std::vector<ListedFinding>& findings);
/// Largest first.
std::vector<StemShare> stemShares(const model::Season& season, const plan::BookingPlan& plan);
/// In words for who cannot see the bar: "Dahlia, plum 53, ...".
QString sharesInWords(const std::vector<StemShare>& shares);
Sheet stemSheet(const model::Season& season, const plan::Plan& plan, const plan::BookingPlan& booking);
/// The rounds that cut for the booking, with what they cut for others besides.
Sheet roundSheet(const model::Season& season, const plan::Plan& plan, const plan::BookingPlan& booking);

} // namespace withy::ui
