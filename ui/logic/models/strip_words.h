// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/models/bloom_strip_model.h"

/// What the bloom strip says.
namespace withy::ui {

/// The line at its top left: the strong part stands alone where there is no room for the rest.
struct StripReadout {
    QString strong; ///< "742 stems ready today"
    QString rest;   ///< "most of them dahlia 139 and aster 92"

    [[nodiscard]] QString whole() const;
};

/// Of a day; of the band on that day when there is one; of today, or the fullest day, when neither.
StripReadout stripReadout(const StripFigures& figures, std::optional<int> day = std::nullopt,
                          std::optional<std::size_t> band = std::nullopt);
/// Of the bookings that share a mark: "Library roof supper, Sat 11 Sep" and "booked, 28 short".
StripReadout pinReadout(const StripFigures& figures, const std::vector<std::size_t>& pins);
/// The one sentence that stands where nothing can be drawn; empty when something can, or is not known yet.
QString stripEmptyWords(const model::Season& season, const StripFigures& figures);
/// Which line is which.
QString stripLegend();
QString todayWords(Day today, bool brief); ///< "Today, Mon 6 Sep", "Mon 6 Sep"
QString monthWords(Day day, bool brief);   ///< "September", "Sep"
QString dayOfMonthWords(Day day);          ///< "6 Sep"

} // namespace withy::ui
