// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/designs/water_level.h"

#include "core/base/range.h"
#include "core/base/working_lines.h"
#include "core/designs/filling.h"

#include <algorithm>
#include <cmath>

namespace withy::designs {

namespace {

constexpr double mostHours = 24 * 60;

/// Water between bottom and level, stems taken off; millilitres.
class WaterShape {
public:
    WaterShape(const WaterWanted& wanted, double sections, double stretch)
        : wanted_(wanted), sound_(!checkShape(wanted.shape)), sections_(sections), stretch_(stretch) {}

    [[nodiscard]] double below(double level) const {
        const double full =
            sound_ ? cubicMillimetresTo(wanted_.shape, std::clamp(level, 0.0, wanted_.shape.depth)) : 0.0;
        const double stems = sections_ * std::max(0.0, level - wanted_.lift);
        return (full * stretch_ - stems) / 1000;
    }

    /// The level at which so much water stands, between 0 and `top`: regula falsi, Illinois form.
    [[nodiscard]] double levelOf(double millilitres, double top) const {
        double a = 0, b = top, fa = below(a) - millilitres, fb = below(b) - millilitres;
        if (fa >= 0) return a;
        if (fb <= 0) return b;
        for (int n = 0; n < 200 && b - a > 1e-10 * top; ++n) {
            const double c = (a * fb - b * fa) / (fb - fa), fc = below(c) - millilitres;
            if (std::abs(fc) < 1e-10) return c;
            if (fc > 0) {
                b = c;
                fb = fc;
                fa /= 2;
            } else {
                a = c;
                fa = fc;
                fb /= 2;
            }
        }
        return (a + b) / 2;
    }

private:
    const WaterWanted& wanted_;
    bool sound_;
    double sections_;
    double stretch_; ///< measured volume / computed volume
};

/// Millilitres an hour in one phase.
struct Fall {
    double hours = 0;
    double drunk = 0;
    double evaporated = 0;
};

std::optional<Problem> checkCourse(const WaterCourseAsked& asked) {
    double hours = 0;
    for (const auto& phase : asked.phases) {
        if (auto p = outsideReal("hours", phase.hours, 0, mostHours)) return p;
        if (auto p = outsideReal("celsius", phase.celsius, -5, 50)) return p;
        hours += phase.hours;
    }
    if (auto p = outsideReal("hours", hours, 0, mostHours)) return p;
    for (const auto& drinker : asked.drinkers) {
        if (auto p = outside("stems", drinker.stems.value, 0, mostStemsInPiece)) return p;
        if (auto p = outsideReal("uptake", drinker.millilitresPerDay.value_or(0), 0, 5'000)) return p;
    }
    if (auto p = outsideReal("q10", asked.uptakeQ10, 0.1, 20)) return p;
    if (auto p = outsideReal("evaporation", asked.evaporation, 0, 100)) return p;
    if (auto p = outsideReal("margin", asked.margin, 0, mostSize)) return p;
    if (auto p = outside("pieces", asked.pieces, 0, 1'000'000)) return p;
    return outside("points", static_cast<std::int64_t>(asked.points), 2, 10'000);
}

std::vector<Fall> fallsOf(const WaterCourseAsked& asked, double openNeck) {
    double perDay = 0;
    for (const auto& drinker : asked.drinkers)
        perDay += static_cast<double>(drinker.stems.value) * drinker.millilitresPerDay.value_or(0);
    std::vector<Fall> falls;
    for (const auto& phase : asked.phases) {
        const double drunk = perDay / 24 * std::pow(asked.uptakeQ10, (phase.celsius - 20) / 10);
        const double air = saturationPressure(phase.celsius) / saturationPressure(20);
        falls.push_back({phase.hours, drunk, asked.evaporation / 24 * openNeck / 1000 * air});
    }
    return falls;
}

/// Water left after so many hours; below `dry` nothing is drunk any more.
double waterAfter(const std::vector<Fall>& falls, double water, double dry, double hours) {
    for (const auto& fall : falls) {
        double left = std::min(fall.hours, hours);
        hours -= left;
        const double both = fall.drunk + fall.evaporated;
        if (water > dry && both > 0) {
            const double wet = std::min(left, (water - dry) / both);
            water -= wet * both;
            left -= wet;
            if (left > 0) water = dry;
        }
        if (left > 0 && water <= dry) water -= left * fall.evaporated;
    }
    return std::max(water, 0.0);
}

/// Hours until the water is down to `to`, everything drinking; nothing when it is not before the end.
std::optional<double> hoursUntil(const std::vector<Fall>& falls, double water, double to) {
    double passed = 0;
    for (const auto& fall : falls) {
        const double both = fall.drunk + fall.evaporated;
        if (water <= to) return passed;
        if (both > 0 && water - fall.hours * both <= to) return passed + (water - to) / both;
        water -= fall.hours * both;
        passed += fall.hours;
    }
    return std::nullopt;
}

void workOut(const WaterCourseAsked& asked, const std::vector<Fall>& falls, double above,
             WaterCourse& course) {
    const auto ml = [](Step step, std::string what, double value) {
        return lineOf(step, std::move(what), value, Unit::millilitres);
    };
    double drunk = 0, lost = 0;
    for (const auto& fall : falls) {
        drunk += fall.hours * fall.drunk;
        lost += fall.hours * fall.evaporated;
    }
    for (const auto& drinker : asked.drinkers) {
        course.unknownDrinkers += drinker.millilitresPerDay ? 0 : 1;
        course.working.push_back(
            lineOf(Step::given, "stems", drinker.stems.value, Unit::stems, Basis::mine, {}, drinker.subject));
        course.working.push_back(
            lineOf(Step::times, drinker.millilitresPerDay ? "uptake a day at 20 C" : "uptake not known",
                   drinker.millilitresPerDay.value_or(0), Unit::millilitres,
                   drinker.millilitresPerDay ? drinker.basis : Basis::notKnown, {}, drinker.subject));
    }
    course.wantedByEnd = drunk + lost;
    const double each = std::max(course.wantedByEnd - std::max(above, 0.0), 0.0);
    course.toCarry =
        Millilitres(static_cast<std::int64_t>(std::ceil(each * static_cast<double>(asked.pieces) - 1e-6)));
    const Working rest = {ml(Step::result, "drunk by the end", drunk),
                          ml(Step::plus, "evaporated", lost),
                          ml(Step::minus, "water above the margin", std::max(above, 0.0)),
                          ml(Step::result, "to top up each", each),
                          lineOf(Step::times, "pieces", asked.pieces, Unit::pieces, Basis::mine),
                          ml(Step::result, "water to carry", static_cast<double>(course.toCarry.value))};
    append(course.working, rest);
}

} // namespace

double saturationPressure(double celsius) {
    return 6.1094 * std::exp(17.625 * celsius / (celsius + 243.04));
}

Result<WaterCourse, Problem> waterCourse(const WaterCourseAsked& asked) {
    if (const auto p = checkCourse(asked)) return *p;
    const auto fill = waterFill(asked.filling);
    if (!fill.ok()) return fill.error();
    const auto sections = stemSections(asked.filling.stems);
    const auto opening = neck(asked.filling.shape);
    const auto volume = fullVolume(asked.filling.shape);
    if (!sections.ok()) return sections.error();
    if (!opening.ok()) return opening.error();
    if (!volume.ok()) return volume.error();
    const double stretch = asked.filling.measured ? static_cast<double>(asked.filling.measured->value) *
                                                        1000 / volume->cubicMillimetres
                                                  : 1.0;
    const WaterShape shape(asked.filling, *sections, stretch);
    const auto falls = fallsOf(asked, std::max(opening->area - *sections, 0.0));
    const double start = shape.below(fill->level), dry = std::min(shape.below(asked.filling.lift), start);
    const double atMargin = shape.below(std::min(asked.filling.lift + asked.margin, fill->level));
    double end = 0;
    for (const auto& fall : falls)
        end += fall.hours;
    WaterCourse course;
    for (std::size_t i = 0; i < asked.points; ++i) {
        const double hours = end * static_cast<double>(i) / static_cast<double>(asked.points - 1);
        const double left = waterAfter(falls, start, dry, hours);
        course.curve.push_back({hours, shape.levelOf(left, fill->level), left});
    }
    course.dryAfter = hoursUntil(falls, start, dry);
    course.topUpAfter = hoursUntil(falls, start, atMargin);
    course.endIsDry = course.dryAfter && *course.dryAfter < end;
    workOut(asked, falls, start - atMargin, course);
    return course;
}

} // namespace withy::designs
