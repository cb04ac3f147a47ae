// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cover/room.h"

#include "core/cover/network.h"

#include <algorithm>

namespace withy::cover {

/// What every trial starts from: the arcs that may change, and by which ways a stem can come to each node.
struct Room::Ground {
    const CoverProblem* problem;
    const Solved* solved;

    struct Way {
        std::int32_t node; ///< where the stem comes from
        std::uint32_t arc;
        bool forward; ///< the arc carries one more; else one less
    };

    std::vector<std::vector<Way>> ways; ///< by node
    std::vector<std::int64_t> most;     ///< by arc
};

namespace {

using Way = Room::Ground::Way;

/// One trial: its demands are nodes beside the network, and what the arcs carry is its own copy.
class Trial {
public:
    Trial(const Room::Ground& ground, std::size_t demands)
        : ground_(ground)
        , most_(ground.most)
        , carried_(ground.solved->answer.carried)
        , extra_(ground.ways.size() + demands)
        , marks_(extra_.size()) {}

    Stems bring(const Demand& demand) {
        const auto node = static_cast<std::int32_t>(ground_.ways.size()) + demands_++;
        for (const auto& choice : demand.choices) {
            forEachSource(*ground_.problem, ground_.solved->network, choice, demand.bench,
                          [&](std::int32_t from, Source, std::uint32_t, Day) {
                              addArc(from, node, demand.stems.value);
                          });
        }
        std::int64_t brought = 0;
        while (brought < demand.stems.value) {
            const std::int64_t n = augment(node, demand.stems.value - brought);
            if (n == 0) break;
            brought += n;
        }
        return Stems(brought);
    }

private:
    void addArc(std::int32_t from, std::int32_t to, std::int64_t most) {
        const auto arc = static_cast<std::uint32_t>(most_.size());
        most_.push_back(most);
        carried_.push_back(0);
        extra_[static_cast<std::size_t>(to)].push_back({from, arc, true});
        extra_[static_cast<std::size_t>(from)].push_back({to, arc, false});
    }

    [[nodiscard]] std::int64_t spare(const Way& way) const {
        return way.forward ? most_[way.arc] - carried_[way.arc] : carried_[way.arc];
    }

    /// Sends up to `most` stems from the garden to the node by a shortest path; how many it could.
    std::int64_t augment(std::int32_t to, std::int64_t most) {
        if (!search(to)) return 0;
        std::int64_t n = most;
        forPath(to, [&](const Way& way) { n = std::min(n, spare(way)); });
        forPath(to, [&](const Way& way) { carried_[way.arc] += way.forward ? n : -n; });
        return n;
    }

    /// Breadth first, backwards from the node, until the garden is met.
    bool search(std::int32_t to) {
        ++turn_;
        open_.assign(1, to);
        marks_[static_cast<std::size_t>(to)].turn = turn_;
        for (std::size_t i = 0; i < open_.size(); ++i) {
            const auto node = static_cast<std::size_t>(open_[i]);
            if (node < ground_.ways.size() && reach(ground_.ways[node], open_[i])) return true;
            if (reach(extra_[node], open_[i])) return true;
        }
        return false;
    }

    /// True when the garden is met.
    bool reach(const std::vector<Way>& ways, std::int32_t next) {
        for (const auto& way : ways) {
            auto& mark = marks_[static_cast<std::size_t>(way.node)];
            if (mark.turn == turn_ || spare(way) == 0) continue;
            mark = {turn_, way, next};
            if (way.node == gardenNode) return true;
            open_.push_back(way.node);
        }
        return false;
    }

    /// From the garden to the node, way by way.
    template <class Visit>
    void forPath(std::int32_t to, Visit visit) {
        for (std::int32_t node = gardenNode; node != to;) {
            const auto& mark = marks_[static_cast<std::size_t>(node)];
            visit(mark.way);
            node = mark.next;
        }
    }

    struct Mark {
        int turn = 0;
        Way way{};
        std::int32_t next = -1;
    };

    const Room::Ground& ground_;
    std::vector<std::int64_t> most_;
    std::vector<std::int64_t> carried_;
    std::vector<std::vector<Way>> extra_; ///< to and from the trial's demands, by node
    std::vector<Mark> marks_;
    std::vector<std::int32_t> open_;
    int turn_ = 0;
    std::int32_t demands_ = 0;
};

} // namespace

Room::Room(const Allocation& allocation) {
    auto ground = std::make_shared<Ground>();
    ground->problem = &allocation.problem;
    ground->solved = allocation.solved.get();
    const auto& network = allocation.solved->network;
    ground->ways.resize(network.flow.supply.size());
    for (std::size_t i = 0; i < network.flow.arcs.size(); ++i) {
        const auto& arc = network.flow.arcs[i];
        ground->most.push_back(arc.most);
        // What a demand lacks it goes on lacking, and no more.
        if (network.meanings[i].kind == ArcKind::unmet) continue;
        const auto index = static_cast<std::uint32_t>(i);
        ground->ways[static_cast<std::size_t>(arc.to)].push_back({arc.from, index, true});
        ground->ways[static_cast<std::size_t>(arc.from)].push_back({arc.to, index, false});
    }
    ground_ = std::move(ground);
}

std::vector<Stems> Room::forTrial(const std::vector<Demand>& trial) const {
    Trial run(*ground_, trial.size());
    std::vector<Stems> brought;
    brought.reserve(trial.size());
    for (const auto& demand : trial)
        brought.push_back(run.bring(demand));
    return brought;
}

} // namespace withy::cover
