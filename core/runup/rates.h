// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/working.h"
#include "core/model/season.h"

#include <string>

/// How long work takes. The grower's own rates win; the defaults are common practice with no source,
/// cutting excepted, and every screen says so.
namespace withy::runup {

struct RateUsed {
    double minutes = 0;
    Basis basis = Basis::commonPractice;
    std::string source;
    Origin from{}; ///< the grower's own rate; where there is none, the page on which one can be made
};

RateUsed defaultRate(model::RateKind work);
RateUsed rateOf(const model::Season& season, model::RateKind work);
/// "× 12 min, minutes for 100 (common practice)".
WorkingLine rateLine(const RateUsed& rate, std::string what);
/// To make one piece of a kind, when the design does not say.
RateUsed defaultMakingMinutes(model::PieceKind kind);

} // namespace withy::runup
