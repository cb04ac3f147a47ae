// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/designs/water_fill.h"

#include "core/base/range.h"
#include "core/base/working_lines.h"
#include "core/designs/solids.h"

#include <algorithm>
#include <cmath>

namespace withy::designs {

namespace {

constexpr std::int64_t mostMillilitres = 10'000'000;
constexpr std::int64_t mostGrams = 10'000'000;

/// Volume in cubic millimetres that the share is taken of.
Result<double, Problem> volumeOf(const WaterWanted& wanted, double computed) {
    if (!wanted.measured) return computed;
    if (const auto p = outside("measured_volume", wanted.measured->value, 1, mostMillilitres)) return *p;
    return static_cast<double>(wanted.measured->value) * 1000;
}

std::optional<Problem> check(const WaterWanted& wanted) {
    if (auto p = outside("water_share", wanted.sharePerTenThousand, 0, 10'000)) return p;
    if (auto p = outsideReal("lift", wanted.lift, 0, mostSize)) return p;
    if (wanted.lift > wanted.shape.depth)
        return problemAt(ProblemCode::moreThan, "lift", numberText(wanted.lift),
                         {"inner_depth", numberText(wanted.shape.depth)});
    return std::nullopt;
}

/// Where the computed shape holds `share` of its own volume.
Result<double, Problem> lineAt(const ProfileShape& shape, double computed, double share) {
    const auto level = levelFor(shape, computed * share);
    if (!level.ok()) return level.error();
    return level->millimetres;
}

Working workingOf(const WaterWanted& wanted, double volume, const WaterFill& fill) {
    const auto ml = [](Step step, std::string what, double value, Basis basis = Basis::computed) {
        return lineOf(step, std::move(what), value, Unit::millilitres, basis);
    };
    return {ml(Step::given, wanted.measured ? "measured volume" : "computed volume", volume / 1000,
               wanted.measured ? Basis::counted : Basis::computed),
            lineOf(Step::times, "water share", static_cast<double>(wanted.sharePerTenThousand) / 100,
                   Unit::percent, Basis::mine),
            ml(Step::result, "filled", fill.filled),
            lineOf(Step::given, "water level", fill.level, Unit::millimetres),
            lineOf(Step::given, "lift", wanted.lift, Unit::millimetres, Basis::mine),
            ml(Step::minus, "stems in the water", fill.immersed),
            ml(Step::result, "water", static_cast<double>(fill.water.value))};
}

} // namespace

Result<double, Problem> stemSections(const std::vector<StemGroup>& stems) {
    double sum = 0;
    std::int64_t count = 0;
    for (const auto& group : stems) {
        if (const auto p = outside("count", group.count, 0, mostStemsInPiece)) return *p;
        if (const auto p = outsideReal("stem_diameter", group.diameter, 0, mostStemDiameter)) return *p;
        count += group.count;
        if (const auto p = outside("count", count, 0, mostStemsInPiece)) return *p;
        sum += static_cast<double>(group.count) * circleArea(group.diameter);
    }
    return sum;
}

Result<NeckFilling, Problem> neckFilling(const ProfileShape& shape, const std::vector<StemGroup>& stems) {
    const auto opening = neck(shape);
    if (!opening.ok()) return opening.error();
    const auto sections = stemSections(stems);
    if (!sections.ok()) return sections.error();
    NeckFilling filling{*sections / opening->area, {}};
    for (const auto& group : stems) {
        filling.working.push_back(
            lineOf(Step::given, "stems", group.count, Unit::stems, Basis::mine, {}, group.subject));
        filling.working.push_back(
            from(group.from, lineOf(Step::given, "stem diameter", group.diameter, Unit::millimetres,
                                    group.basis, {}, group.subject)));
    }
    filling.working.push_back(
        lineOf(Step::result, "stem sections in square millimetres", *sections, Unit::none));
    filling.working.push_back(
        lineOf(Step::over, "neck area in square millimetres", opening->area, Unit::none));
    filling.working.push_back(lineOf(Step::result, "neck filled", filling.share * 100, Unit::percent));
    return filling;
}

Result<WaterFill, Problem> waterFill(const WaterWanted& wanted) {
    const auto computed = fullVolume(wanted.shape);
    if (!computed.ok()) return computed.error();
    if (const auto p = check(wanted)) return *p;
    const auto volume = volumeOf(wanted, computed->cubicMillimetres);
    if (!volume.ok()) return volume.error();
    const auto sections = stemSections(wanted.stems);
    if (!sections.ok()) return sections.error();
    const double share = static_cast<double>(wanted.sharePerTenThousand) / 10'000;
    const auto level = lineAt(wanted.shape, computed->cubicMillimetres, share);
    if (!level.ok()) return level.error();
    WaterFill fill;
    fill.level = *level;
    fill.filled = *volume * share / 1000;
    fill.immersed = *sections * std::max(0.0, fill.level - wanted.lift) / 1000;
    if (fill.immersed > fill.filled)
        return problemAt(ProblemCode::moreThan, "stems", numberText(fill.immersed),
                         {"filled", numberText(fill.filled)});
    fill.water = Millilitres(std::llround(fill.filled - fill.immersed));
    fill.working = workingOf(wanted, *volume, fill);
    return fill;
}

Result<PieceWeight, Problem> pieceWeight(std::optional<Grams> empty, Millilitres water, Stems stems,
                                         const StemMass& mass) {
    if (empty) {
        if (const auto p = outside("empty_weight", empty->value, 0, mostGrams)) return *p;
    }
    if (const auto p = outside("water", water.value, 0, mostMillilitres)) return *p;
    if (const auto p = outside("stems", stems.value, 0, mostStemsInPiece)) return *p;
    if (const auto p = outsideReal("stem_mass", mass.grams, 0, 10'000)) return *p;
    const double flowers = static_cast<double>(stems.value) * mass.grams;
    PieceWeight weight;
    weight.containerUnknown = !empty;
    // The small allowance keeps a binary fraction from adding a gram.
    weight.total = empty.value_or(Grams{}) + Grams(water.value) +
                   Grams(static_cast<std::int64_t>(std::ceil(flowers - 1e-6)));
    weight.working = {
        empty ? lineOf(Step::given, "empty weight", empty->value, Unit::grams, Basis::counted)
              : lineOf(Step::given, "empty weight not known", 0, Unit::grams, Basis::notKnown),
        lineOf(Step::plus, "water", water.value, Unit::grams),
        lineOf(Step::given, "stems", stems.value, Unit::stems, Basis::mine),
        lineOf(Step::given, "weight of a stem", mass.grams, Unit::grams, mass.basis, mass.source),
        lineOf(Step::plus, "stems together", flowers, Unit::grams),
        lineOf(Step::result, "weight", weight.total.value, Unit::grams)};
    return weight;
}

} // namespace withy::designs
