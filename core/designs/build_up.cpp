// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/designs/build_up.h"

#include "core/base/range.h"
#include "core/base/working_lines.h"

#include <array>
#include <cstdlib>

namespace withy::designs {

namespace {

constexpr const char* recutSource = "University of Massachusetts: 2.5 cm before placing";

std::optional<Problem> notALength(std::string_view field, Millimetres length) {
    return outside(field, length.value, 0, mostLength);
}

std::optional<Problem> checkHeights(const TierHeights& h) {
    if (auto p = notALength("height_low", h.low)) return p;
    if (auto p = notALength("height_middle", h.middle)) return p;
    return notALength("height_tall", h.tall);
}

std::optional<Problem> check(const Standing& piece) {
    if (auto p = notALength("inner_depth", piece.insideDepth)) return p;
    if (auto p = notALength("lift", piece.lift)) return p;
    if (piece.lift > piece.insideDepth)
        return problemAt(ProblemCode::moreThan, "lift", std::to_string(piece.lift.value),
                         {"inner_depth", std::to_string(piece.insideDepth.value)});
    if (auto p = checkHeights(piece.heights)) return p;
    return notALength("recut", piece.recut);
}

std::optional<Problem> check(const Bound& piece) {
    if (auto p = notALength("stems_below_tie", piece.stemsBelowTie)) return p;
    if (auto p = checkHeights(piece.heights)) return p;
    return notALength("recut", piece.recut);
}

WorkingLine lengthLine(Step step, std::string what, Millimetres length, Basis basis = Basis::mine,
                       std::string source = {}) {
    return lineOf(step, std::move(what), length.value, Unit::millimetres, basis, std::move(source));
}

/// The tail that both kinds of piece share.
CutLength finished(Millimetres below, Working working, Millimetres above, const char* what, Millimetres recut,
                   Basis recutBasis) {
    CutLength cut{below + above + recut, std::move(working)};
    cut.working.push_back(lengthLine(Step::plus, what, above));
    cut.working.push_back(lengthLine(Step::plus, "recut", recut, recutBasis,
                                     recutBasis == Basis::published ? recutSource : ""));
    cut.working.push_back(lengthLine(Step::result, "cut length", cut.length, Basis::computed));
    return cut;
}

/// The highest tier below `tier` whose cut length the stem reaches.
template <class Piece>
std::optional<Tier> reachedTier(const Piece& piece, Tier tier, Millimetres longest) {
    for (const Tier lower : {Tier::middle, Tier::low}) {
        if (lower >= tier) continue;
        const auto cut = cutLength(piece, lower);
        if (cut.ok() && cut->length <= longest) return lower;
    }
    return std::nullopt;
}

template <class Piece>
Result<std::optional<ShortStem>, Problem> measured(const Piece& piece, Tier tier, const StemLength& stem) {
    if (const auto p = notALength("stem_length", stem.longest)) return *p;
    auto cut = cutLength(piece, tier);
    if (!cut.ok()) return cut.error();
    if (stem.longest >= cut->length) return std::optional<ShortStem>{};
    ShortStem s;
    s.missing = cut->length - stem.longest;
    s.working = cut->working;
    s.working.push_back(lineOf(Step::minus, "longest stem", stem.longest.value, Unit::millimetres, stem.basis,
                               stem.source, stem.subject));
    s.working.push_back(lengthLine(Step::result, "missing", s.missing, Basis::computed));
    if (stem.canBePulled) s.choices.push_back({ShortStemMend::pull, {}, {}});
    if (const auto lower = reachedTier(piece, tier, stem.longest))
        s.choices.push_back({ShortStemMend::lowerTier, lower, {}});
    return std::optional<ShortStem>{std::move(s)};
}

} // namespace

Millimetres TierHeights::of(Tier tier) const {
    return tier == Tier::low ? low : tier == Tier::middle ? middle : tall;
}

Result<CutLength, Problem> cutLength(const Standing& piece, Tier tier) {
    if (const auto p = check(piece)) return *p;
    Working w{lengthLine(Step::given, "inside depth", piece.insideDepth),
              lengthLine(Step::minus, "lift", piece.lift)};
    return finished(piece.insideDepth - piece.lift, std::move(w), piece.heights.of(tier),
                    "height above the rim", piece.recut, piece.recutBasis);
}

Result<CutLength, Problem> cutLength(const Bound& piece, Tier tier) {
    if (const auto p = check(piece)) return *p;
    Working w{lengthLine(Step::given, "stems below the tie", piece.stemsBelowTie)};
    return finished(piece.stemsBelowTie, std::move(w), piece.heights.of(tier), "height above the tie",
                    piece.recut, piece.recutBasis);
}

Result<std::optional<ShortStem>, Problem> tooShort(const Standing& piece, Tier tier, const StemLength& stem) {
    auto found = measured(piece, tier, stem);
    if (!found.ok() || !*found) return found;
    ShortStem s = **found;
    const Millimetres depth = piece.insideDepth - s.missing;
    if (depth > piece.lift) s.choices.push_back({ShortStemMend::smallerJar, {}, depth});
    return std::optional<ShortStem>{std::move(s)};
}

Result<std::optional<ShortStem>, Problem> tooShort(const Bound& piece, Tier tier, const StemLength& stem) {
    return measured(piece, tier, stem);
}

} // namespace withy::designs
