// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/designs/growing_on.h"

#include "core/base/range.h"
#include "core/base/working_lines.h"

#include <cmath>

namespace withy::designs {

namespace {

constexpr double mostGrowth = 500; ///< mm a day
constexpr double longestPhase = 24.0 * 366;

std::optional<Problem> checkGrowth(const GrowingOn& asked) {
    if (auto p = outsideReal("grows_on", asked.millimetresPerDay, 0, mostGrowth)) return p;
    if (auto p = outsideReal("q10", asked.q10, 0.1, 20)) return p;
    for (const auto& phase : asked.phases) {
        if (auto p = outsideReal("hours", phase.hours, 0, longestPhase)) return p;
        if (auto p = outsideReal("celsius", phase.celsius, -40, 60)) return p;
    }
    return std::nullopt;
}

} // namespace

Result<GrownOn, Problem> growOn(const GrowingOn& asked) {
    if (const auto p = checkGrowth(asked)) return *p;
    GrownOn grown;
    grown.working.push_back(
        lineOf(Step::given, "grows on in a day at 20 C", asked.millimetresPerDay, Unit::millimetres));
    for (const auto& phase : asked.phases) {
        const double warmth = std::pow(asked.q10, (phase.celsius - 20) / 10);
        const double more = asked.millimetresPerDay * phase.hours / 24 * warmth;
        grown.millimetres += more;
        grown.working.push_back(
            lineOf(Step::plus, "grown at this temperature", more, Unit::millimetres, Basis::computed));
    }
    grown.working.push_back(lineOf(Step::result, "grown on", grown.millimetres, Unit::millimetres));
    return grown;
}

} // namespace withy::designs
