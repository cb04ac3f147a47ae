// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/review/orders.h"
#include "ui/logic/answers/answer.h"

#include <vector>

/// What the season's pages begin with.
namespace withy::ui {

/// "£6,940 to pay over 24 bookings and £1,310 given; £640 is still owed."
Answer ordersAnswer(const model::Season& season, const review::Orders& orders);
Answer settingsAnswer(const model::Season& season);
Answer ratesAnswer(const model::Season& season);

/// Common practice that stands in where no time of one's own is written down.
struct StandInTime {
    QString work;    ///< "Wash container"
    QString minutes; ///< "0.75 min"
};

std::vector<StandInTime> standInTimes(const model::Season& season);
/// "12 backups, the newest 2 hours ago."
Answer backupsAnswer(int backups, const QString& newestAge);
Answer tablesAnswer(const model::Season& season);
Answer acceptedAnswer(const model::Season& season);

} // namespace withy::ui
