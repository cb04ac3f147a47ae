// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shareout/amounts_network.h"

#include <algorithm>
#include <cassert>

namespace withy::shareout {

namespace {

constexpr std::int32_t tallyNode = 0, endNode = 1;

} // namespace

AmountsNetwork::AmountsNetwork(const ShareProblem& problem) : problem_(problem) {
    network_.supply.assign(2, 0);
    addPlants();
    for (std::size_t line = 0; line < problem.lines.size(); ++line)
        addLine(line, newNode());
    carried_.assign(network_.arcs.size(), 0);
}

std::int32_t AmountsNetwork::newNode() {
    network_.supply.push_back(0);
    return static_cast<std::int32_t>(network_.supply.size() - 1);
}

void AmountsNetwork::add(std::int32_t from, std::int32_t to, std::int64_t most, Role role) {
    if (most <= 0) return;
    network_.arcs.push_back({.from = from, .to = to, .least = 0, .most = most, .cost = 0});
    roles_.push_back(role);
}

void AmountsNetwork::addPlants() {
    std::int64_t all = 0;
    for (const auto& counted : problem_.counted) {
        if (!counted.stems) continue;
        const auto node = newNode();
        plants_[counted.plant] = node;
        add(tallyNode, node, counted.stems->value, {});
        all += counted.stems->value;
    }
    add(tallyNode, endNode, all, {});
    network_.supply[tallyNode] = all;
    network_.supply[endNode] = -all;
}

void AmountsNetwork::addLine(std::size_t line, std::int32_t node) {
    const auto& ask = problem_.lines[line];
    for (std::size_t slot = 0; slot < ask.slots.size(); ++slot)
        addSlot(line, slot, newNode(), node);
    for (std::int64_t stem = 1; stem <= ask.target().value; ++stem)
        add(node, endNode, ask.pieces.value, {Part::lineStem, line, 0, 0, stem});
}

void AmountsNetwork::addSlot(std::size_t line, std::size_t slot, std::int32_t node, std::int32_t lineNode) {
    const auto& ask = problem_.lines[line].slots[slot];
    const auto most = ask.count.value + ask.mayVaryBy.value;
    const auto stems = problem_.lines[line].pieces.value * most;
    for (std::size_t c = 0; c < ask.choices.size(); ++c) {
        const auto plant = plants_.find(ask.choices[c].plant);
        if (plant == plants_.end()) continue;
        const auto& wanted = ask.choices[c].wanted;
        const auto place = static_cast<std::int64_t>(c);
        if (wanted)
            add(plant->second, node, std::min(stems, wanted->value), {Part::choice, line, slot, c, 0});
        add(plant->second, node, stems, {Part::choice, line, slot, c, wanted ? place + 1 : place});
    }
    for (std::int64_t stem = 1; stem <= most; ++stem)
        add(node, lineNode, problem_.lines[line].pieces.value, {Part::slotStem, line, slot, 0, stem});
}

std::int64_t AmountsNetwork::costOf(const Role& role, Goal goal, int turn) const {
    if (role.part == Part::other) return 0;
    const auto& line = problem_.lines[role.line];
    if (line.served() != turn) return 0;
    // (k - n)^2 - (k - 1 - n)^2: what the k-th stem adds to the square of the distance from n
    if (goal == Goal::pieceSquares && role.part == Part::lineStem)
        return 2 * (role.step - line.target().value) - 1;
    if (goal == Goal::slotSquares && role.part == Part::slotStem)
        return 2 * (role.step - line.slots[role.slot].count.value) - 1;
    return goal == Goal::places && role.part == Part::choice ? role.step : 0;
}

void AmountsNetwork::make(Goal goal, int turn) {
    for (std::size_t i = 0; i < roles_.size(); ++i)
        network_.arcs[i].cost = costOf(roles_[i], goal, turn);
    const auto found = cover::minCostFlow(network_);
    assert(found.ok()); // leaving everything over, or what was found before, is a flow; costs are small
    carried_ = found->carried;
    for (std::size_t i = 0; i < roles_.size(); ++i) {
        auto& arc = network_.arcs[i];
        const auto reduced = arc.cost + found->potential[static_cast<std::size_t>(arc.from)] -
                             found->potential[static_cast<std::size_t>(arc.to)];
        if (reduced != 0) arc.least = arc.most = carried_[i];
    }
}

std::vector<std::vector<std::vector<std::int64_t>>> AmountsNetwork::given() const {
    std::vector<std::vector<std::vector<std::int64_t>>> given;
    for (const auto& line : problem_.lines) {
        auto& slots = given.emplace_back();
        for (const auto& slot : line.slots)
            slots.emplace_back(slot.choices.size(), 0);
    }
    for (std::size_t i = 0; i < roles_.size(); ++i) {
        const auto& role = roles_[i];
        if (role.part == Part::choice) given[role.line][role.slot][role.choice] += carried_[i];
    }
    return given;
}

} // namespace withy::shareout
