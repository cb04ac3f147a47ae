// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/bookings/spare_by_risk.h"

#include "core/base/range.h"

#include <boost/math/special_functions/beta.hpp>

#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>
#include <optional>

namespace withy::bookings {

namespace {

namespace bmp = boost::math::policies;
using Quiet = bmp::policy<bmp::overflow_error<bmp::ignore_error>, bmp::evaluation_error<bmp::ignore_error>>;

constexpr double edge = 1e-12;
constexpr std::int64_t mostTerms = 50'000;

/// Chance that fewer than `need` stay sound; keeps its digits when it is very small.
double chanceOfTooFew(std::int64_t cut, std::int64_t need, double loss) {
    if (need <= 0) return 0;
    if (cut < need) return 1;
    if (loss == 0) return 0;
    return boost::math::ibeta(static_cast<double>(cut - need + 1), static_cast<double>(need), loss, Quiet());
}

struct Wanted {
    std::int64_t need;
    double loss;
    double confidence;

    /// Close to certainty the allowance shrinks with what is left, or it would be the whole of it.
    [[nodiscard]] double allowance() const { return std::min(edge, (1 - confidence) / 1000); }

    [[nodiscard]] bool met(std::int64_t cut) const {
        return chanceOfTooFew(cut, need, loss) <= (1 - confidence) + allowance();
    }
};

/// Few enough losses to add up one by one, no underflow at the start, no confidence next to 1.
bool canAddUp(const Wanted& w) {
    const long double sound = 1.0L - w.loss;
    const auto need = static_cast<long double>(w.need);
    const long double digits = need * std::log10(sound);
    return need * w.loss / sound <= static_cast<long double>(mostTerms) && w.confidence <= 1 - 1e-9 &&
           digits > std::numeric_limits<long double>::min_exponent10 + 30;
}

/// Adds up the chances that the need-th sound stem comes after exactly k lost ones (negative binomial).
/// All terms are positive, so the sum is good to the last digits, and it is quick.
std::optional<StemsToCut> byAddingUp(const Wanted& w) {
    const long double loss = w.loss;
    const long double enough = static_cast<long double>(w.confidence) - w.allowance();
    long double term = std::pow(1.0L - loss, static_cast<long double>(w.need));
    long double sum = term;
    long double before = 0;
    std::int64_t lost = 0;
    while (sum < enough) {
        ++lost;
        if (w.need + lost > mostStems || lost > 40 * mostTerms) return std::nullopt;
        term *= static_cast<long double>(w.need + lost - 1) / static_cast<long double>(lost) * loss;
        before = sum;
        sum += term;
    }
    return StemsToCut{Stems(w.need + lost), static_cast<double>(std::min(sum, 1.0L)),
                      static_cast<double>(before)};
}

/// Halves the range between a number that is too few and one that is enough.
std::optional<StemsToCut> byHalving(const Wanted& w) {
    if (!w.met(mostStems)) return std::nullopt;
    const double sound = 1 - w.loss;
    const double middle = std::min(static_cast<double>(w.need) / sound, static_cast<double>(mostStems));
    std::int64_t tooFew = w.need - 1;
    std::int64_t enough = std::max(w.need, static_cast<std::int64_t>(middle));
    std::int64_t step = 1;
    while (!w.met(enough)) {
        tooFew = enough;
        enough = std::min(mostStems, enough + step);
        step *= 2;
    }
    while (enough - tooFew > 1) {
        const std::int64_t half = tooFew + (enough - tooFew) / 2;
        (w.met(half) ? enough : tooFew) = half;
    }
    return StemsToCut{Stems(enough), chanceOfEnough(Stems(enough), Stems(w.need), w.loss),
                      chanceOfEnough(Stems(enough - 1), Stems(w.need), w.loss)};
}

/// Strictly between `low` and `high`, or the problem.
std::optional<Problem> notBetween(std::string_view field, double value, double low, double high) {
    if (const auto p = outsideReal(field, value, low, high)) return p;
    if (value == low) return problemAt(ProblemCode::belowLeast, field, numberText(value), {numberText(low)});
    if (value == high) return problemAt(ProblemCode::aboveMost, field, numberText(value), {numberText(high)});
    return std::nullopt;
}

} // namespace

double chanceOfEnough(Stems cut, Stems need, double loss) {
    assert(need.value >= 0 && cut.value >= 0 && loss >= 0 && loss < 1);
    if (need.value == 0) return 1;
    if (cut < need) return 0;
    if (loss == 0) return 1;
    return boost::math::ibetac(static_cast<double>(cut.value - need.value + 1),
                               static_cast<double>(need.value), loss, Quiet());
}

Result<StemsToCut, Problem> stemsToCut(Stems need, double loss, double confidence) {
    if (const auto p = outside("need", need.value, 0, mostNeed)) return *p;
    if (const auto p = notBetween("confidence", confidence, 0, 1)) return *p;
    if (loss != 0) {
        if (const auto p = notBetween("loss", loss, 0, 1)) return *p;
    }
    if (need.value == 0) return StemsToCut{};
    if (loss == 0) return StemsToCut{need, 1, 0};
    const Wanted wanted{need.value, loss, confidence};
    auto answer = canAddUp(wanted) ? byAddingUp(wanted) : byHalving(wanted);
    if (!answer) answer = byHalving(wanted);
    if (!answer) return problemAt(ProblemCode::aboveMost, "loss", numberText(loss));
    return *answer;
}

} // namespace withy::bookings
