// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/cover_plan.h"

#include <QString>

#include <cstdint>
#include <optional>

namespace withy::ui {

/// How far a booking's stems are covered, as marks and words show it.
struct CoverFacts {
    plan::CoverStanding standing = plan::CoverStanding::nothing;
    std::optional<double> share; ///< covered at the cautious level, or at the likely when short
    std::int64_t shortBy = 0;    ///< stems, at the likely level

    friend bool operator==(const CoverFacts&, const CoverFacts&) = default;
};

/// Nothing while the plan has no cover, or none of this booking.
std::optional<CoverFacts> coverFacts(const plan::CoverPlan* cover, Id<model::Booking> booking);

/// Only asked for: its stems are not promised yet.
bool isAsked(model::Standing standing);

/// "covered", "28 short", "tight"; of what is only asked for, "fits". Empty while nothing is known, or no
/// stems are wanted.
QString coverWords(model::Standing standing, const std::optional<CoverFacts>& cover);

/// Why no stems could be shared out at all, and what to mend.
QString coverFaultSentence(const model::Season& season, const cover::CoverFault& fault);

} // namespace withy::ui
