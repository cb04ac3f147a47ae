// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cover/shortage.h"

#include "core/cover/network.h"

#include <algorithm>
#include <limits>
#include <numeric>
#include <queue>

namespace withy::cover {

namespace {

constexpr std::int64_t nowhere = std::numeric_limits<std::int64_t>::max();

/// Least cost of sending one more stem from each node back to the garden through the residual network: what
/// it replaces. Dijkstra's algorithm from the garden, arcs reversed, over costs reduced by the potentials,
/// which are nowhere below nought.
class WaysHome {
public:
    explicit WaysHome(const Solved& solved) : solved_(solved) {
        listArcs();
        search();
        findCuts();
    }

    /// Nothing where a stem would be of no use.
    [[nodiscard]] std::optional<std::int64_t> costFrom(std::int32_t node) const {
        const auto n = static_cast<std::size_t>(node);
        if (reduced_[n] == nowhere) return std::nullopt;
        const auto& pi = solved_.answer.potential;
        return reduced_[n] - pi[n] + pi[gardenNode];
    }

    /// Of a stem that is cut from this patch on this very day.
    [[nodiscard]] std::optional<std::int64_t> costOfCut(std::int32_t node) const {
        const std::int64_t cost = cuts_[static_cast<std::size_t>(node)];
        return cost == nowhere ? std::nullopt : std::optional(cost);
    }

private:
    struct Into {
        std::int32_t from;
        std::int64_t cost;
    };

    /// Calls f(into, from, cost) for every residual arc.
    template <class F>
    void forEachResidual(F f) const {
        const auto& arcs = solved_.network.flow.arcs;
        for (std::size_t i = 0; i < arcs.size(); ++i) {
            const auto& arc = arcs[i];
            const std::int64_t carried = solved_.answer.carried[i];
            if (carried < arc.most) f(static_cast<std::size_t>(arc.to), arc.from, reducedCost(arc, 1));
            if (carried > arc.least) f(static_cast<std::size_t>(arc.from), arc.to, reducedCost(arc, -1));
        }
    }

    /// The residual arcs by the node they lead into: those of node n from begin_[n] to begin_[n + 1].
    void listArcs() {
        nodes_ = solved_.network.flow.supply.size();
        begin_.assign(nodes_ + 2, 0);
        forEachResidual([&](std::size_t into, std::int32_t, std::int64_t) { ++begin_[into + 2]; });
        std::partial_sum(begin_.begin(), begin_.end(), begin_.begin());
        into_.resize(begin_.back());
        forEachResidual([&](std::size_t into, std::int32_t from, std::int64_t cost) {
            into_[begin_[into + 1]++] = {from, cost};
        });
    }

    [[nodiscard]] std::int64_t reducedCost(const FlowArc& arc, std::int64_t sign) const {
        const auto& pi = solved_.answer.potential;
        return sign *
               (arc.cost + pi[static_cast<std::size_t>(arc.from)] - pi[static_cast<std::size_t>(arc.to)]);
    }

    void search() {
        using At = std::pair<std::int64_t, std::int32_t>;
        std::priority_queue<At, std::vector<At>, std::greater<>> open;
        reduced_.assign(nodes_, nowhere);
        reduced_[gardenNode] = 0;
        open.emplace(0, gardenNode);
        while (!open.empty()) {
            const auto [cost, node] = open.top();
            open.pop();
            if (cost > reduced_[static_cast<std::size_t>(node)]) continue;
            const auto n = static_cast<std::size_t>(node);
            for (std::size_t i = begin_[n]; i < begin_[n + 1]; ++i) {
                const Into& arc = into_[i];
                auto& known = reduced_[static_cast<std::size_t>(arc.from)];
                if (arc.cost > nowhere - 1 - cost || cost + arc.cost >= known) continue;
                known = cost + arc.cost;
                open.emplace(known, arc.from);
            }
        }
    }

    void findCuts() {
        cuts_.assign(nodes_, nowhere);
        const auto& arcs = solved_.network.flow.arcs;
        for (std::size_t i = 0; i < arcs.size(); ++i) {
            if (solved_.network.meanings[i].kind != ArcKind::cut) continue;
            const auto home = costFrom(arcs[i].to);
            auto& least = cuts_[static_cast<std::size_t>(arcs[i].from)];
            if (home) least = std::min(least, arcs[i].cost + *home);
        }
    }

    const Solved& solved_;
    std::size_t nodes_ = 0;
    std::vector<std::size_t> begin_;
    std::vector<Into> into_;
    std::vector<std::int64_t> reduced_;
    std::vector<std::int64_t> cuts_;
};

std::optional<Worth> worthOf(const Allocation& a, std::int64_t cost) {
    const Tiers t = a.solved->network.weights.tiersOf(-cost);
    Worth worth{std::nullopt, t.price, t.places, t.keeping};
    if (t.unmet > 0) worth.goesTo = a.problem.demands.size() - static_cast<std::size_t>(t.unmet);
    return worth;
}

/// The best of the places one more stem could appear in; the bench itself where there is none.
std::optional<Worth> oneMore(const Allocation& a, const WaysHome& ways, std::size_t demand, std::size_t c) {
    const auto& d = a.problem.demands[demand];
    std::optional<std::int64_t> least;
    const auto consider = [&](std::optional<std::int64_t> cost) {
        if (cost && (!least || *cost < *least)) least = cost;
    };
    const auto& network = a.solved->network;
    forEachSource(a.problem, network, d.choices[c], d.bench,
                  [&](std::int32_t node, Source source, std::uint32_t, Day) {
                      if (source == Source::offer) return;
                      consider(source == Source::patch ? ways.costOfCut(node) : ways.costFrom(node));
                  });
    if (!least) consider(ways.costFrom(network.firstChoiceNode[demand] + static_cast<std::int32_t>(c)));
    if (!least || *least >= 0) return std::nullopt;
    return worthOf(a, *least);
}

} // namespace

Holders::Holders(const Allocation& a) : allocation_(a) {
    for (const auto& p : a.pieces)
        byPlant_[p.plant].push_back(&p);
    for (const auto& p : a.problem.patches)
        holdDays_[p.patch.value] = p.holdDays;
}

bool Holders::couldServe(const Piece& piece, const Choice& choice, Day bench) const {
    if (piece.source == Source::patch)
        return !choice.storeOnly && piece.ready <= choice.to &&
               choice.from <= piece.ready + holdDays_.at(piece.from);
    if (piece.source == Source::lot) {
        const auto& lots = allocation_.problem.lots;
        const auto lot =
            std::lower_bound(lots.begin(), lots.end(), piece.from,
                             [](const LotSupply& row, std::int64_t id) { return row.lot.value < id; });
        return fitOn(lot->useBy, lot->readyFrom, bench);
    }
    const auto& offers = allocation_.problem.offers;
    const auto offer = std::lower_bound(offers.begin(), offers.end(), piece.from,
                                        [](const Offer& row, std::int64_t id) { return row.id < id; });
    return fitOn(offer->useBy, offer->readyFrom, bench);
}

std::vector<Competitor> Holders::competitorsOf(const Demand& demand) const {
    std::map<std::pair<Id<model::Booking>, Id<model::Plant>>, Stems> has;
    for (const auto& choice : demand.choices) {
        const auto pieces = byPlant_.find(choice.plant);
        if (pieces == byPlant_.end()) continue;
        for (const Piece* piece : pieces->second) {
            const auto booking = allocation_.problem.demands[piece->demand].booking;
            if (booking != demand.booking && couldServe(*piece, choice, demand.bench))
                has[{booking, piece->plant}] += piece->stems;
        }
    }
    std::vector<Competitor> all;
    all.reserve(has.size());
    for (const auto& [key, stems] : has)
        all.push_back({key.first, key.second, stems});
    std::stable_sort(all.begin(), all.end(),
                     [](const Competitor& x, const Competitor& y) { return x.stems > y.stems; });
    return all;
}

bool supplyKnown(const Allocation& a, const Demand& d) {
    const auto& n = a.solved->network;
    return std::any_of(d.choices.begin(), d.choices.end(), [&](const Choice& c) {
        return n.patchesOf.count(c.plant) || n.lotsOf.count(c.plant) || n.offersOf.count(c.plant);
    });
}

std::vector<Shortage> shortages(const Allocation& a) {
    std::vector<Shortage> all;
    std::optional<WaysHome> ways;
    std::optional<Holders> holders;
    for (std::size_t d = 0; d < a.unmet.size(); ++d) {
        if (a.unmet[d].value == 0) continue;
        if (!ways) ways.emplace(*a.solved);
        if (!holders) holders.emplace(a);
        const auto& demand = a.problem.demands[d];
        Shortage s;
        s.demand = d;
        s.stems = a.unmet[d];
        s.supplyKnown = supplyKnown(a, demand);
        s.competitors = holders->competitorsOf(demand);
        for (std::size_t c = 0; c < demand.choices.size(); ++c)
            s.oneMore.push_back(oneMore(a, *ways, d, c));
        all.push_back(std::move(s));
    }
    return all;
}

FreeStock::FreeStock(const Allocation& a) : allocation_(a) {
    std::map<std::int64_t, std::size_t> patchAt, lotAt;
    for (const auto& patch : a.problem.patches) {
        patchAt[patch.patch.value] = left_.size();
        left_.push_back(patch.ready);
    }
    for (const auto& lot : a.problem.lots) {
        lotAt[lot.lot.value] = leftInLot_.size();
        leftInLot_.push_back(lot.stems.value);
    }
    for (const auto& p : a.pieces) {
        if (p.source == Source::lot) leftInLot_[lotAt.at(p.from)] -= p.stems.value;
        if (p.source != Source::patch) continue;
        const std::size_t i = patchAt.at(p.from);
        left_[i][static_cast<std::size_t>(p.ready - a.problem.patches[i].first)] -= p.stems.value;
    }
}

Stems FreeStock::of(Id<model::Plant> plant, Day from, Day to, Day bench) const {
    const auto& network = allocation_.solved->network;
    std::int64_t free = 0;
    if (const auto at = network.patchesOf.find(plant); at != network.patchesOf.end()) {
        for (const auto i : at->second) {
            const auto& patch = allocation_.problem.patches[i];
            const int last = std::min(to - patch.first, static_cast<int>(left_[i].size()) - 1);
            for (int n = std::max(0, from - patch.first - patch.holdDays); n <= last; ++n)
                free += left_[i][static_cast<std::size_t>(n)];
        }
    }
    if (const auto at = network.lotsOf.find(plant); at != network.lotsOf.end()) {
        for (const auto i : at->second) {
            const auto& lot = allocation_.problem.lots[i];
            if (fitOn(lot.useBy, lot.readyFrom, bench)) free += leftInLot_[i];
        }
    }
    return Stems(free);
}

} // namespace withy::cover
