// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/bookings/stem_needs.h"

#include "core/base/working_lines.h"
#include "core/bookings/spare_by_risk.h"

#include <cmath>

namespace withy::bookings {

namespace {

std::optional<Problem> addPart(const NeedPart& part, bool only, StemNeed& sum) {
    if (auto p = outside("count", part.stemsPerPiece, 0, mostStemsPerPiece)) return p;
    if (auto p = outside("pieces", part.pieces, 0, mostPieces)) return p;
    const std::int64_t stems = part.stemsPerPiece * part.pieces;
    sum.need += Stems(stems);
    if (auto p = outside("need", sum.need.value, 0, mostNeed)) return p;
    sum.working.push_back(from(part.piecesFrom, lineOf(Step::given, "pieces", part.pieces, Unit::pieces,
                                                       Basis::mine, {}, part.subject)));
    sum.working.push_back(from(part.stemsFrom, lineOf(Step::times, "stems a piece", part.stemsPerPiece,
                                                      Unit::stems, Basis::mine, {}, part.subject)));
    if (!only)
        sum.working.push_back(
            lineOf(Step::result, "part", stems, Unit::stems, Basis::computed, {}, part.subject));
    return std::nullopt;
}

std::optional<Problem> addSpare(const PercentSpare& rule, StemNeed& sum) {
    const auto spare = spareByPercent(sum.need, rule.perTenThousand);
    if (!spare.ok()) return spare.error();
    sum.spare = *spare;
    sum.working.push_back(
        from(rule.from, lineOf(Step::given, "spare share", static_cast<double>(rule.perTenThousand) / 100,
                               Unit::percent, rule.basis, rule.source)));
    return std::nullopt;
}

std::optional<Problem> addSpare(const RiskSpare& rule, StemNeed& sum) {
    const auto answer = stemsToCut(sum.need, rule.loss, rule.confidence);
    if (!answer.ok()) return answer.error();
    sum.spare = answer->cut - sum.need;
    sum.chance = answer->chance;
    sum.working.push_back(from(
        rule.from, lineOf(Step::given, "loss", rule.loss * 100, Unit::percent, rule.basis, rule.source)));
    sum.working.push_back(from(rule.confidenceFrom, lineOf(Step::given, "confidence", rule.confidence * 100,
                                                           Unit::percent, Basis::mine)));
    sum.working.push_back(lineOf(Step::given, "chance of enough", answer->chance * 100, Unit::percent));
    return std::nullopt;
}

void addBunches(const SpareTerms& terms, StemNeed& sum) {
    const auto bunch = terms.bunch;
    const Stems wanted = sum.need + sum.spare;
    sum.total = Stems(roundUpTo(wanted.value, bunch));
    sum.toBunches = sum.total - wanted;
    if (bunch > 1) {
        sum.working.push_back(
            from(terms.bunchFrom, lineOf(Step::given, "bunch", bunch, Unit::stems, Basis::mine)));
        sum.working.push_back(lineOf(Step::plus, "to bunches", sum.toBunches.value, Unit::stems));
    }
    sum.working.push_back(lineOf(Step::result, "total", sum.total.value, Unit::stems));
}

} // namespace

Result<std::int64_t, Problem> perTenThousand(double percent, std::string_view field) {
    if (const auto p = outsideReal(field, percent, 0, 1000)) return *p;
    return std::int64_t{std::llround(percent * 100)};
}

Result<Stems, Problem> spareByPercent(Stems need, std::int64_t share) {
    if (const auto p = outside("need", need.value, 0, mostNeed)) return *p;
    if (const auto p = outside("spare_percent", share, 0, mostSparePerTenThousand)) return *p;
    return Stems((need.value * share + 9'999) / 10'000);
}

Result<StemNeed, Problem> stemNeed(const std::vector<NeedPart>& parts, const SpareTerms& terms) {
    if (const auto p = outside("bunch", terms.bunch, 0, mostBunch)) return *p;
    StemNeed sum;
    for (const auto& part : parts) {
        if (const auto p = addPart(part, parts.size() == 1, sum)) return *p;
    }
    sum.working.push_back(lineOf(Step::result, "need", sum.need.value, Unit::stems));
    const auto spareProblem = std::visit([&](const auto& rule) { return addSpare(rule, sum); }, terms.rule);
    if (spareProblem) return *spareProblem;
    sum.working.push_back(lineOf(Step::plus, "spare", sum.spare.value, Unit::stems));
    addBunches(terms, sum);
    return sum;
}

Result<StemNeed, Problem> stemNeed(const NeedPart& part, const SpareTerms& terms) {
    return stemNeed(std::vector<NeedPart>{part}, terms);
}

} // namespace withy::bookings
