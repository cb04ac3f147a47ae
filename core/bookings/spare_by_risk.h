// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/problem.h"
#include "core/base/quantity.h"
#include "core/base/result.h"

namespace withy::bookings {

/// More stems than any garden here grows: what needs more is refused, never rounded down to it.
inline constexpr std::int64_t mostStems = 1'000'000'000;
inline constexpr std::int64_t mostNeed = 100'000'000;

/// How many stems to cut so that enough stay sound.
struct StemsToCut {
    Stems cut;
    double chance = 1;            ///< that at least the need stays sound, cutting `cut`
    double chanceWithOneLess = 0; ///< the same with one stem fewer: below the confidence
};

/// Chance that of `cut` stems, each lost independently with chance `loss`, at least `need` stay sound:
/// P(Binomial(cut, 1 - loss) >= need), by the regularised incomplete beta function
/// (NIST Digital Library of Mathematical Functions 8.17.5). Precondition: 0 <= need, cut; 0 <= loss < 1.
double chanceOfEnough(Stems cut, Stems need, double loss);

/// The least number with chanceOfEnough() >= confidence. A chance within 1e-12 of the confidence counts
/// as equal, so that binary rounding never adds a stem. need 0 to mostNeed, loss in [0, 1), confidence
/// strictly between 0 and 1; fields "need", "loss", "confidence". An answer beyond mostStems is a problem
/// with the loss.
Result<StemsToCut, Problem> stemsToCut(Stems need, double loss, double confidence);

} // namespace withy::bookings
