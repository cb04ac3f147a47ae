// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "core/plan/plan.h"
#endif

#include <QString>

#include <map>
#include <optional>

/// Which designs can be made from what is in bloom. A slot that grows here asks for a likely stem of one of
/// its plants on the same day as the others; one whose plants stand in no patch (bought in, dried) for
/// nothing.
namespace withy::ui {

struct DesignBloom {
    bool inWeek = true;       ///< on one day of the week at least
    std::optional<Day> first; ///< the season's first such day; blank: none, or nothing of it grows here

    friend bool operator==(const DesignBloom&, const DesignBloom&) = default;
};

using DesignBlooms = std::map<Id<model::Design>, DesignBloom>;

/// For the seven days from Monday. Empty while there is no forecast.
DesignBlooms designBlooms(const model::Season& season, const plan::Plan& plan, Day monday);

/// "13 of 37 designs can be made this week."
QString designsInBloomWords(const DesignBlooms& blooms);
/// "In bloom 6–12 Sep"
QString inBloomWords(Day monday);
/// "from 30 May", "not this season": in place of the stems and price of a design that cannot be made.
QString outOfBloomWords(const DesignBloom& bloom);
/// Why a design is drawn in line only.
QString drawnInLineWords(const DesignBloom& bloom, Day monday);

} // namespace withy::ui
