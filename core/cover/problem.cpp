// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cover/problem.h"

#include <algorithm>
#include <tuple>

namespace withy::cover {

namespace {

using Fault = std::optional<CoverFault>;

Fault faultOf(const PatchSupply& p) {
    if (p.holdDays < 0) return CoverFault{CoverTrouble::negative, "patch", p.patch.value};
    if (p.holdDays > mostDaysApart || p.ready.size() > std::size_t{mostDaysApart})
        return CoverFault{CoverTrouble::outOfRange, "patch", p.patch.value};
    for (const auto ready : p.ready) {
        if (ready < 0) return CoverFault{CoverTrouble::negative, "patch", p.patch.value};
        if (ready > mostStemsCovered) return CoverFault{CoverTrouble::outOfRange, "patch", p.patch.value};
    }
    return std::nullopt;
}

Fault faultOf(const LotSupply& lot) {
    if (lot.stems.value < 0) return CoverFault{CoverTrouble::negative, "lot", lot.lot.value};
    if (lot.stems.value > mostStemsCovered) return CoverFault{CoverTrouble::outOfRange, "lot", lot.lot.value};
    return std::nullopt;
}

Fault faultOf(const Offer& offer) {
    if (offer.bunches < 0 || offer.bunch.value < 1 || offer.pricePerStem.minor < 0)
        return CoverFault{CoverTrouble::negative, "offer", offer.id};
    if (offer.bunch.value > mostStemsCovered || offer.bunches > mostStemsCovered / offer.bunch.value ||
        offer.pricePerStem.minor > mostPricePerStem)
        return CoverFault{CoverTrouble::outOfRange, "offer", offer.id};
    return std::nullopt;
}

Fault faultOf(const Demand& d) {
    if (d.stems.value < 0) return CoverFault{CoverTrouble::negative, "demand", d.booking.value};
    if (d.stems.value > mostStemsCovered)
        return CoverFault{CoverTrouble::outOfRange, "demand", d.booking.value};
    for (const auto& c : d.choices) {
        if (c.to < c.from) return CoverFault{CoverTrouble::outOfOrder, "choice", d.booking.value};
        if (c.best && (*c.best < c.from || c.to < *c.best))
            return CoverFault{CoverTrouble::outOfOrder, "choice", d.booking.value};
        if (c.to - c.from > mostDaysApart)
            return CoverFault{CoverTrouble::outOfRange, "choice", d.booking.value};
        if (c.wanted && c.wanted->value < 0)
            return CoverFault{CoverTrouble::negative, "choice", d.booking.value};
    }
    return std::nullopt;
}

auto keyOf(const PatchSupply& p) {
    return p.patch;
}

auto keyOf(const LotSupply& lot) {
    return lot.lot;
}

auto keyOf(const Offer& offer) {
    return offer.id;
}

auto keyOf(const Demand& d) {
    return std::tuple(d.claim, d.event, d.booking, d.line, d.slot);
}

template <class Rows>
void sortByKey(Rows& rows) {
    std::stable_sort(rows.begin(), rows.end(),
                     [](const auto& a, const auto& b) { return keyOf(a) < keyOf(b); });
}

template <class Rows>
Fault faultIn(const Rows& rows) {
    for (const auto& row : rows) {
        if (auto fault = faultOf(row)) return fault;
    }
    return std::nullopt;
}

/// Of rows in order.
template <class Rows, class IdOf>
Fault repeatedIn(const Rows& rows, const char* field, IdOf idOf) {
    const auto twice = std::adjacent_find(rows.begin(), rows.end(),
                                          [](const auto& a, const auto& b) { return keyOf(a) == keyOf(b); });
    if (twice == rows.end()) return std::nullopt;
    return CoverFault{CoverTrouble::repeated, field, idOf(*twice)};
}

} // namespace

std::optional<CoverFault> coverFault(const CoverProblem& problem) {
    if (auto fault = faultIn(problem.patches)) return fault;
    if (auto fault = faultIn(problem.lots)) return fault;
    if (auto fault = faultIn(problem.offers)) return fault;
    if (auto fault = faultIn(problem.demands)) return fault;
    if (auto f = repeatedIn(problem.patches, "patch", [](const auto& p) { return p.patch.value; })) return f;
    if (auto f = repeatedIn(problem.lots, "lot", [](const auto& l) { return l.lot.value; })) return f;
    if (auto f = repeatedIn(problem.offers, "offer", [](const auto& o) { return o.id; })) return f;
    return repeatedIn(problem.demands, "demand", [](const auto& d) { return d.booking.value; });
}

CoverProblem inOrder(CoverProblem problem) {
    sortByKey(problem.patches);
    sortByKey(problem.lots);
    sortByKey(problem.offers);
    sortByKey(problem.demands);
    return problem;
}

} // namespace withy::cover
