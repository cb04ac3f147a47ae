// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cover/min_cost_flow.h"
#include "tests/garden/reference.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <sstream>

namespace withy::cover {

namespace {

/// DIMACS form for minimum cost flow: p min NODES ARCS, n NODE SUPPLY, a FROM TO LEAST MOST COST.
FlowNetwork dimacs(std::istream& in) {
    FlowNetwork network;
    for (std::string line; std::getline(in, line);) {
        std::istringstream words(line);
        char kind = ' ';
        words >> kind;
        if (kind == 'p') {
            std::string min;
            std::size_t nodes = 0;
            words >> min >> nodes;
            network.supply.resize(nodes);
        } else if (kind == 'n') {
            std::size_t node = 0;
            std::int64_t supply = 0;
            words >> node >> supply;
            network.supply[node - 1] = supply;
        } else if (kind == 'a') {
            FlowArc arc;
            words >> arc.from >> arc.to >> arc.least >> arc.most >> arc.cost;
            --arc.from;
            --arc.to;
            network.arcs.push_back(arc);
        }
    }
    return network;
}

std::int64_t costOf(const FlowNetwork& network, const FlowAnswer& answer) {
    std::int64_t cost = 0;
    for (std::size_t i = 0; i < network.arcs.size(); ++i)
        cost += answer.carried[i] * network.arcs[i].cost;
    return cost;
}

/// Bounds, balances, and that the potentials prove the cost least (complementary slackness).
void expectSound(const FlowNetwork& network, const FlowAnswer& answer) {
    auto left = network.supply;
    for (std::size_t i = 0; i < network.arcs.size(); ++i) {
        const auto& arc = network.arcs[i];
        const auto from = static_cast<std::size_t>(arc.from), to = static_cast<std::size_t>(arc.to);
        EXPECT_GE(answer.carried[i], arc.least);
        EXPECT_LE(answer.carried[i], arc.most);
        left[from] -= answer.carried[i];
        left[to] += answer.carried[i];
        const std::int64_t reduced = arc.cost + answer.potential[from] - answer.potential[to];
        EXPECT_TRUE(answer.carried[i] == arc.most || reduced >= 0);
        EXPECT_TRUE(answer.carried[i] == arc.least || reduced <= 0);
    }
    EXPECT_TRUE(std::all_of(left.begin(), left.end(), [](auto n) { return n == 0; }));
}

} // namespace

/// S. P. Bradley, A. C. Hax, T. L. Magnanti, Applied Mathematical Programming, 1977, figure 8.1: least cost
/// 150.
TEST(MinCostFlow, SolvesTheTextbooksNetwork) {
    std::istringstream in("p min 5 9\nn 1 20\nn 4 -5\nn 5 -15\n"
                          "a 1 2 0 15 4\na 1 3 0 8 4\na 2 3 0 20 2\na 2 4 0 4 2\na 2 5 0 10 6\n"
                          "a 3 4 0 15 1\na 3 5 0 4 3\na 4 5 0 20 2\na 5 3 0 5 3\n");
    const auto network = dimacs(in);
    const auto answer = minCostFlow(network);
    ASSERT_TRUE(answer.ok());
    expectSound(network, *answer);
    EXPECT_EQ(costOf(network, *answer), 150);
}

TEST(MinCostFlow, CostsWhatThreeSolversAgreeOn) {
    const auto rows = garden::tests::referenceRows("flow/optima.csv");
    if (!rows) GTEST_SKIP() << "WITHY_REFERENCE is not set: the reference networks are not checked";
    ASSERT_GE(rows->size(), 28u);
    for (const auto& row : *rows) {
        SCOPED_TRACE(row[0]);
        std::ifstream in(std::string(std::getenv("WITHY_REFERENCE")) + "/flow/dimacs/" + row[0] + ".min");
        ASSERT_TRUE(in.good());
        const auto network = dimacs(in);
        EXPECT_EQ(std::to_string(network.supply.size()), row[2]);
        EXPECT_EQ(std::to_string(network.arcs.size()), row[3]);
        const auto answer = minCostFlow(network);
        if (row[4] == "infeasible") {
            ASSERT_FALSE(answer.ok());
            EXPECT_EQ(answer.error(), FlowTrouble::noSolution);
            continue;
        }
        ASSERT_TRUE(answer.ok());
        expectSound(network, *answer);
        EXPECT_EQ(std::to_string(costOf(network, *answer)), row[4]);
    }
}

TEST(MinCostFlow, RefusesWhatItCannotAnswer) {
    constexpr std::int64_t huge = std::int64_t{1} << 60;

    const struct {
        const char* what;
        FlowNetwork network;
        FlowTrouble trouble;
    } rows[] = {
        {"an end that is no node", {{0, 0}, {{0, 2, 0, 1, 1}}}, FlowTrouble::badArc},
        {"bounds the wrong way round", {{0, 0}, {{0, 1, 2, 1, 1}}}, FlowTrouble::badArc},
        {"more given than taken", {{2, -1}, {{0, 1, 0, 5, 1}}}, FlowTrouble::noSolution},
        {"too narrow", {{2, -2}, {{0, 1, 0, 1, 1}}}, FlowTrouble::noSolution},
        {"a path beyond 64 bits",
         {{1, 0, -1}, {{0, 1, 0, 1, huge}, {1, 2, 0, 1, huge}}},
         FlowTrouble::tooCostly},
    };

    for (const auto& row : rows) {
        SCOPED_TRACE(row.what);
        const auto answer = minCostFlow(row.network);
        ASSERT_FALSE(answer.ok());
        EXPECT_EQ(answer.error(), row.trouble);
    }
    EXPECT_TRUE(minCostFlow(FlowNetwork{}).ok());
}

} // namespace withy::cover
