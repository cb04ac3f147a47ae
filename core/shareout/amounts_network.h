// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/cover/min_cost_flow.h"
#include "core/shareout/problem.h"

#include <map>

namespace withy::shareout {

enum class Goal { pieceSquares, slotSquares, places };

/// From the tally through plants, slots and lines to the end; what is left over goes straight there. Between
/// a slot and its line, and between a line and the end, one arc for each stem of a piece, wide enough for all
/// the pieces: so squares are sums of rising costs.
class AmountsNetwork {
public:
    explicit AmountsNetwork(const ShareProblem& problem);

    /// Makes a goal least for the lines of a turn, and holds it there from now on.
    void make(Goal goal, int turn);

    /// By line, slot and choice; after the last make().
    [[nodiscard]] std::vector<std::vector<std::vector<std::int64_t>>> given() const;

private:
    enum class Part { other, choice, slotStem, lineStem };

    /// What an arc stands for.
    struct Role {
        Part part = Part::other;
        std::size_t line = 0, slot = 0, choice = 0;
        std::int64_t step = 0; ///< the place it counts as, or which stem of the piece it is
    };

    void add(std::int32_t from, std::int32_t to, std::int64_t most, Role role);
    void addPlants();
    void addLine(std::size_t line, std::int32_t node);
    void addSlot(std::size_t line, std::size_t slot, std::int32_t node, std::int32_t lineNode);
    [[nodiscard]] std::int64_t costOf(const Role& role, Goal goal, int turn) const;
    std::int32_t newNode();

    const ShareProblem& problem_;
    cover::FlowNetwork network_;
    std::vector<Role> roles_; ///< by arc
    std::map<Id<model::Plant>, std::int32_t> plants_;
    std::vector<std::int64_t> carried_;
};

} // namespace withy::shareout
