// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shed/ribbon_length.h"

#include "core/base/range.h"
#include "core/base/working_lines.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace withy::shed {

namespace {

using std::numbers::pi;

constexpr double mostGirth = 100'000;
constexpr std::int64_t mostRibbon = 1'000'000'000'000; ///< a million kilometres of millimetres

WorkingLine mm(Step step, std::string what, double value, Basis basis = Basis::computed) {
    return lineOf(step, std::move(what), value, Unit::millimetres, basis);
}

WorkingLine number(Step step, std::string what, std::int64_t value) {
    return lineOf(step, std::move(what), value, Unit::count, Basis::mine);
}

std::optional<Problem> check(const Tie& tie) {
    if (auto p = outside("wraps", tie.wraps, 0, mostWraps)) return p;
    if (auto p = outside("overlap", tie.overlap.value, 0, mostTieLength)) return p;
    if (auto p = outside("tail", tie.tail.value, 0, mostTieLength)) return p;
    if (auto p = outside("tails", tie.tails, 0, mostLoops)) return p;
    if (auto p = outside("loop", tie.loop.value, 0, mostTieLength)) return p;
    if (auto p = outside("loops", tie.loops, 0, mostLoops)) return p;
    if (auto p = outside("centre", tie.centre.value, 0, mostTieLength)) return p;
    return outside("trim", tie.trim.value, 0, mostTieLength);
}

double length(Millimetres m) {
    return static_cast<double>(m.value);
}

/// Loops and tails beyond the wraps, written down as they are added.
double finishOf(const Tie& tie, Working& working) {
    double sum = 0;
    if (tie.finish == Finish::knot || tie.finish == Finish::bow) {
        const double tails = length(tie.tail * tie.tails);
        working.push_back(number(Step::given, "tails", tie.tails));
        working.push_back(mm(Step::times, "tail", length(tie.tail), Basis::mine));
        working.push_back(mm(Step::plus, "tails together", tails));
        sum += tails;
    }
    if (tie.finish == Finish::bow) {
        const double loops = 2 * length(tie.loop * tie.loops);
        working.push_back(number(Step::given, "loops", tie.loops));
        working.push_back(mm(Step::times, "twice the loop", 2 * length(tie.loop), Basis::mine));
        working.push_back(mm(Step::plus, "loops together", loops));
        working.push_back(mm(Step::plus, "centre loop", length(tie.centre), Basis::mine));
        sum += loops + length(tie.centre);
    }
    return sum;
}

/// Whole millimetres, up; the small allowance keeps a binary fraction from adding one.
Millimetres up(double exact) {
    return Millimetres(static_cast<std::int64_t>(std::ceil(exact - 1e-6)));
}

} // namespace

Result<Figure, Problem> girthOfNeck(Millimetres outerDiameter) {
    if (const auto p = outside("outer_neck", outerDiameter.value, 1, mostTieLength)) return *p;
    Figure girth{pi * length(outerDiameter), Unit::millimetres, {}};
    girth.working = {mm(Step::given, "outer neck", length(outerDiameter), Basis::mine),
                     lineOf(Step::times, "pi", pi, Unit::none), mm(Step::result, "girth", girth.value)};
    return girth;
}

Result<Figure, Problem> girthOfBound(Stems stems, double stemDiameter, double packing, Basis packingBasis) {
    if (const auto p = outside("stems", stems.value, 1, 100'000)) return *p;
    if (const auto p = outsideReal("stem_diameter", stemDiameter, 0.1, 100)) return *p;
    if (const auto p = outsideReal("packing", packing, 0.01, 1)) return *p;
    const double bunch = stemDiameter * std::sqrt(static_cast<double>(stems.value) / packing);
    Figure girth{pi * bunch, Unit::millimetres, {}};
    girth.working = {lineOf(Step::given, "stems", stems.value, Unit::stems, Basis::mine),
                     mm(Step::given, "stem diameter", stemDiameter, Basis::mine),
                     lineOf(Step::given, "packing", packing * 100, Unit::percent, packingBasis),
                     mm(Step::result, "bunch diameter", bunch),
                     lineOf(Step::times, "pi", pi, Unit::none),
                     mm(Step::result, "girth", girth.value)};
    return girth;
}

Result<RibbonPiece, Problem> ribbonForPiece(double girth, const Tie& tie) {
    if (const auto p = outsideReal("girth", girth, 0, mostGirth)) return *p;
    if (const auto p = check(tie)) return *p;
    RibbonPiece piece;
    if (tie.finish == Finish::none) {
        piece.working = {mm(Step::result, "ribbon a piece", 0)};
        return piece;
    }
    const double wraps = static_cast<double>(tie.wraps) * (girth + length(tie.overlap));
    piece.working = {mm(Step::given, "girth", girth),
                     mm(Step::plus, "overlap", length(tie.overlap), Basis::mine),
                     number(Step::times, "wraps", tie.wraps), mm(Step::result, "wraps together", wraps)};
    piece.exact = wraps + finishOf(tie, piece.working) + length(tie.trim);
    piece.length = up(piece.exact);
    piece.working.push_back(mm(Step::plus, "trim", length(tie.trim), Basis::mine));
    piece.working.push_back(mm(Step::result, "ribbon a piece", length(piece.length)));
    return piece;
}

Result<RibbonTotal, Problem> ribbonTotal(Millimetres perPiece, std::int64_t pieces, std::int64_t sparePieces,
                                         std::optional<Millimetres> onHand) {
    if (const auto p = outside("ribbon", perPiece.value, 0, 100'000'000)) return *p;
    if (const auto p = outside("pieces", pieces, 0, mostTiedPieces)) return *p;
    if (const auto p = outside("spare_pieces", sparePieces, 0, mostTiedPieces)) return *p;
    if (onHand) {
        if (const auto p = outside("on_hand", onHand->value, 0, mostRibbon)) return *p;
    }
    RibbonTotal total;
    total.needed = perPiece * (pieces + sparePieces);
    total.metres = length(total.needed) / 1000;
    total.onHand = onHand;
    total.working = {mm(Step::given, "ribbon a piece", length(perPiece)),
                     lineOf(Step::given, "pieces", pieces, Unit::pieces, Basis::mine),
                     lineOf(Step::plus, "spare pieces", sparePieces, Unit::pieces, Basis::mine),
                     mm(Step::result, "ribbon", length(total.needed))};
    if (!onHand) return total;
    total.missing = std::max(total.needed - *onHand, Millimetres{});
    total.left = std::max(*onHand - total.needed, Millimetres{});
    total.working.push_back(mm(Step::minus, "on hand", length(*onHand), Basis::counted));
    total.working.push_back(total.missing->value > 0 ? mm(Step::result, "missing", length(*total.missing))
                                                     : mm(Step::result, "left", length(*total.left)));
    return total;
}

} // namespace withy::shed
