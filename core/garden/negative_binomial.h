// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>

namespace withy::garden {

/// Least k with P(X <= k) >= p for each p, X negative binomial with this mean and shape (variance = mean +
/// mean^2 / shape): a Poisson count whose mean is itself Gamma spread. Levels rising, each above 0 and
/// below 1; mean and shape finite, mean not negative, shape above nought.
/// P(X <= k) = I_p(shape, k + 1), p = shape / (shape + mean) (Abramowitz and Stegun, 26.5.26).
std::array<std::int64_t, 3> negativeBinomialQuantiles(double mean, double shape,
                                                      const std::array<double, 3>& levels);

} // namespace withy::garden
