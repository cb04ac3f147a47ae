// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/garden/negative_binomial.h"

#include <boost/math/special_functions/beta.hpp>

#include <array>
#include <cmath>

namespace withy::garden {

namespace {

namespace bmp = boost::math::policies;
using Quiet = bmp::policy<bmp::promote_double<false>, bmp::overflow_error<bmp::ignore_error>,
                          bmp::underflow_error<bmp::ignore_error>>;

constexpr double smallestLog = -690; ///< below it the chance of nought is no double any more
constexpr double longestScan = 20000;

/// 1 / (k + 1): dividing is what the sum below would spend its time on.
constexpr std::size_t tabled = 1024;
constexpr auto reciprocals = [] {
    std::array<double, tabled> r{};
    for (std::size_t k = 0; k < tabled; ++k)
        r[k] = 1.0 / static_cast<double>(k + 1);
    return r;
}();

double overNext(double k) {
    return k < static_cast<double>(tabled) ? reciprocals[static_cast<std::size_t>(k)] : 1 / (k + 1);
}

double upTo(double k, double shape, double p) {
    return boost::math::ibeta(shape, k + 1, p, Quiet());
}

/// By halving; for means so large that adding up chance by chance would be slow or lose the first of them.
std::int64_t byHalving(double mean, double shape, double level) {
    const double p = shape / (shape + mean);
    double low = -1;
    double high = std::ceil(mean) + 1;
    while (upTo(high, shape, p) < level)
        high *= 2;
    while (high - low > 1) {
        const double middle = std::floor((low + high) / 2);
        (upTo(middle, shape, p) >= level ? high : low) = middle;
    }
    return static_cast<std::int64_t>(high);
}

} // namespace

std::array<std::int64_t, 3> negativeBinomialQuantiles(double mean, double shape,
                                                      const std::array<double, 3>& levels) {
    std::array<std::int64_t, 3> answer{};
    if (mean <= 1 - levels[2]) return answer; // P(X >= 1) <= mean (Markov)
    const double logNought = -shape * std::log1p(mean / shape);
    if (logNought < smallestLog || mean > longestScan) {
        for (std::size_t i = 0; i < 3; ++i)
            answer[i] = byHalving(mean, shape, levels[i]);
        return answer;
    }
    const double q = mean / (shape + mean);
    double chance = std::exp(logNought);
    double sum = chance;
    double k = 0;
    for (std::size_t i = 0; i < 3; ++i) {
        while (sum < levels[i]) {
            chance *= q * (shape + k) * overNext(k); // P(k + 1) from P(k)
            sum += chance;
            k += 1;
        }
        answer[i] = static_cast<std::int64_t>(k);
    }
    return answer;
}

} // namespace withy::garden
