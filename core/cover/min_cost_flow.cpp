// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cover/min_cost_flow.h"

#include <algorithm>
#include <lemon/network_simplex.h>
#include <lemon/static_graph.h>
#include <numeric>
#include <optional>
#include <utility>

namespace withy::cover {

namespace {

using lemon::StaticDigraph;
using Simplex = lemon::NetworkSimplex<StaticDigraph, std::int64_t, std::int64_t>;

/// The simplex starts from artificial arcs that cost 2^62, and its potentials are sums along paths of its
/// tree. A path meets a node once, by two arcs at most; so twice the sum of each node's dearest outgoing arc
/// bounds every path. Below 2^61 it can neither rival an artificial arc nor leave 64 bits when added to one.
constexpr std::int64_t mostPathCost = std::int64_t{1} << 61;

bool tooCostly(const FlowNetwork& network) {
    std::vector<std::int64_t> dearest(network.supply.size(), 0);
    for (const auto& arc : network.arcs) {
        if (arc.cost < -mostPathCost || arc.cost > mostPathCost) return true;
        auto& most = dearest[static_cast<std::size_t>(arc.from)];
        most = std::max(most, arc.cost < 0 ? -arc.cost : arc.cost);
    }
    std::int64_t room = mostPathCost / 2;
    for (const auto cost : dearest) {
        if (cost > room) return true;
        room -= cost;
    }
    return false;
}

std::optional<FlowTrouble> troubleWith(const FlowNetwork& network) {
    const auto nodes = static_cast<std::int64_t>(network.supply.size());
    for (const auto& arc : network.arcs) {
        if (arc.from < 0 || arc.from >= nodes || arc.to < 0 || arc.to >= nodes || arc.least > arc.most)
            return FlowTrouble::badArc;
    }
    if (tooCostly(network)) return FlowTrouble::tooCostly;
    if (std::accumulate(network.supply.begin(), network.supply.end(), std::int64_t{0}) != 0)
        return FlowTrouble::noSolution;
    return std::nullopt;
}

/// The network in the form LEMON reads fastest: arcs in one block, sorted by where they leave.
struct Sorted {
    std::vector<std::size_t> order; ///< the n-th arc of the graph is this one of the network
    StaticDigraph graph;

    explicit Sorted(const FlowNetwork& network) : order(network.arcs.size()) {
        const auto& arcs = network.arcs;
        std::vector<std::size_t> next(network.supply.size() + 1, 0);
        for (const auto& arc : arcs)
            ++next[static_cast<std::size_t>(arc.from) + 1];
        std::partial_sum(next.begin(), next.end(), next.begin());
        for (std::size_t i = 0; i < arcs.size(); ++i)
            order[next[static_cast<std::size_t>(arcs[i].from)]++] = i;
        std::vector<std::pair<int, int>> ends;
        ends.reserve(arcs.size());
        for (const auto i : order)
            ends.emplace_back(arcs[i].from, arcs[i].to);
        graph.build(static_cast<int>(network.supply.size()), ends.begin(), ends.end());
    }
};

/// One figure of each arc, as a map of the graph.
template <std::int64_t FlowArc::*field>
struct ArcField {
    using Key = StaticDigraph::Arc;
    using Value = std::int64_t;
    const FlowNetwork& network;
    const Sorted& sorted;

    Value operator[](const Key& arc) const {
        return network.arcs[sorted.order[static_cast<std::size_t>(StaticDigraph::index(arc))]].*field;
    }
};

struct NodeSupply {
    using Key = StaticDigraph::Node;
    using Value = std::int64_t;
    const FlowNetwork& network;

    Value operator[](const Key& node) const {
        return network.supply[static_cast<std::size_t>(StaticDigraph::index(node))];
    }
};

FlowAnswer answerOf(const Simplex& simplex, const Sorted& sorted, const FlowNetwork& network) {
    FlowAnswer answer;
    answer.carried.resize(network.arcs.size());
    for (std::size_t i = 0; i < sorted.order.size(); ++i)
        answer.carried[sorted.order[i]] = simplex.flow(StaticDigraph::arc(static_cast<int>(i)));
    answer.potential.reserve(network.supply.size());
    for (std::size_t n = 0; n < network.supply.size(); ++n)
        answer.potential.push_back(simplex.potential(StaticDigraph::node(static_cast<int>(n))));
    return answer;
}

} // namespace

Result<FlowAnswer, FlowTrouble> minCostFlow(const FlowNetwork& network) {
    if (const auto trouble = troubleWith(network)) return *trouble;
    if (network.supply.empty()) return FlowAnswer{};
    const Sorted sorted(network);
    Simplex simplex(sorted.graph);
    simplex.lowerMap(ArcField<&FlowArc::least>{network, sorted})
        .upperMap(ArcField<&FlowArc::most>{network, sorted})
        .costMap(ArcField<&FlowArc::cost>{network, sorted})
        .supplyMap(NodeSupply{network});
    if (simplex.run(Simplex::CANDIDATE_LIST) != Simplex::OPTIMAL) return FlowTrouble::noSolution;
    return answerOf(simplex, sorted, network);
}

} // namespace withy::cover
