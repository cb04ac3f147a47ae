// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shareout/clumps.h"

#include <algorithm>
#include <numeric>

namespace withy::shareout {

namespace {

/// How many clumps each plant stands in: always one more of the plant with most stems left over.
std::vector<std::int64_t> clumpsOfPlants(const ClumpSlot& slot, std::int64_t most) {
    std::vector<std::int64_t> clumps(slot.stems.size(), 0);
    auto left = slot.stems;
    for (; most > 0; --most) {
        const auto plant = std::max_element(left.begin(), left.end());
        if (plant == left.end() || *plant < slot.size) break;
        *plant -= slot.size;
        ++clumps[static_cast<std::size_t>(plant - left.begin())];
    }
    return clumps;
}

/// Pieces with more room first, so that dealing round after round never meets a full one early.
std::vector<std::size_t> byRoom(const ClumpSlot& slot) {
    std::vector<std::size_t> order(slot.room.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(),
                     [&](auto a, auto b) { return slot.room[a] / slot.size > slot.room[b] / slot.size; });
    return order;
}

class Dealer {
public:
    explicit Dealer(const ClumpSlot& slot) : slot_(slot), room_(slot.room), left_(slot.stems) {
        counts_.assign(room_.size(), std::vector<std::int64_t>(left_.size(), 0));
    }

    Clumped deal() {
        std::int64_t seats = 0;
        for (const auto room : slot_.room)
            seats += room / slot_.size;
        const auto clumps = clumpsOfPlants(slot_, seats);
        const auto order = byRoom(slot_);
        std::size_t next = 0;
        for (std::size_t plant = 0; plant < clumps.size(); ++plant) {
            for (auto n = clumps[plant]; n > 0; --n)
                put(order[next++ % order.size()], plant, slot_.size);
        }
        joinClumps();
        standTogether();
        return {std::move(counts_), std::accumulate(clumps.begin(), clumps.end(), std::int64_t{0})};
    }

private:
    void put(std::size_t piece, std::size_t plant, std::int64_t stems) {
        counts_[piece][plant] += stems;
        room_[piece] -= stems;
        left_[plant] -= stems;
    }

    void joinClumps() {
        for (std::size_t piece = 0; piece < room_.size(); ++piece) {
            for (std::size_t plant = 0; plant < left_.size(); ++plant) {
                if (counts_[piece][plant] > 0) put(piece, plant, std::min(room_[piece], left_[plant]));
            }
        }
    }

    void standTogether() {
        std::size_t plant = 0;
        for (std::size_t piece = 0; piece < room_.size(); ++piece) {
            while (room_[piece] > 0 && plant < left_.size()) {
                put(piece, plant, std::min(room_[piece], left_[plant]));
                if (left_[plant] == 0) ++plant;
            }
        }
    }

    const ClumpSlot& slot_;
    std::vector<std::int64_t> room_, left_;
    std::vector<std::vector<std::int64_t>> counts_;
};

} // namespace

Clumped clumped(const ClumpSlot& slot) {
    return Dealer(slot).deal();
}

} // namespace withy::shareout
