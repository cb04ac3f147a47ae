// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cover/network.h"

#include <algorithm>
#include <cstdlib>

namespace withy::cover {

namespace {

/// A day off the one that suits best costs a round or a day in the store: more than a day on the plant (own
/// choice).
constexpr std::int64_t dayOff = 2;
constexpr std::int64_t heldDay = 1;

class Builder {
public:
    explicit Builder(const CoverProblem& p) : problem_(p) { addNode(); } // the garden

    Result<CoverNetwork, CoverFault> build() {
        for (std::size_t i = 0; i < problem_.patches.size(); ++i)
            addPatch(static_cast<std::uint32_t>(i));
        for (std::size_t i = 0; i < problem_.lots.size(); ++i)
            addLot(static_cast<std::uint32_t>(i));
        for (std::size_t i = 0; i < problem_.offers.size(); ++i)
            addOffer(static_cast<std::uint32_t>(i));
        for (std::size_t i = 0; i < problem_.demands.size(); ++i)
            addDemand(static_cast<std::uint32_t>(i));
        if (!weigh()) return CoverFault{CoverTrouble::tooLarge, "demand", 0};
        for (std::size_t i = 0; i < net_.tiers.size(); ++i)
            net_.flow.arcs[i].cost = net_.weights.costOf(net_.tiers[i]);
        return std::move(net_);
    }

private:
    std::int32_t addNode() {
        net_.flow.supply.push_back(0);
        return static_cast<std::int32_t>(net_.flow.supply.size() - 1);
    }

    void addArc(std::int32_t from, std::int32_t to, std::int64_t most, const Tiers& tiers,
                const ArcMeaning& meaning) {
        net_.flow.arcs.push_back({from, to, 0, most, 0});
        net_.tiers.push_back(tiers);
        net_.meanings.push_back(meaning);
    }

    void addPatch(std::uint32_t index) {
        const auto& patch = problem_.patches[index];
        net_.patchesOf[patch.plant].push_back(index);
        const auto isThere = [](std::int64_t n) { return n > 0; };
        const auto begin = std::find_if(patch.ready.begin(), patch.ready.end(), isThere);
        const auto end = std::find_if(patch.ready.rbegin(), patch.ready.rend(), isThere).base();
        CoverNetwork::PatchNodes nodes;
        nodes.first = patch.first + static_cast<int>(begin - patch.ready.begin());
        if (begin < end) nodes.days = static_cast<int>(end - begin) + patch.holdDays;
        for (int i = 0; i < nodes.days; ++i) {
            const auto node = addNode();
            if (i == 0) nodes.firstNode = node;
            const Day day = nodes.first + i;
            const std::int64_t fresh = begin + i < end ? *(begin + i) : 0;
            if (fresh > 0) addArc(gardenNode, node, fresh, {}, {ArcKind::ready, index, 0, day.number});
            const std::int64_t carried = readyWithin(patch, day - patch.holdDays, day - 1);
            if (i > 0 && carried > 0) {
                addArc(node - 1, node, carried, {0, 0, 0, heldDay},
                       {ArcKind::hold, index, 0, day.number - 1});
                ++holdArcs_;
            }
        }
        net_.patchNodes.push_back(nodes);
    }

    static std::int64_t readyWithin(const PatchSupply& patch, Day from, Day to) {
        std::int64_t sum = 0;
        for (Day d = std::max(from, patch.first); d <= to; d = d + 1) {
            const auto i = static_cast<std::size_t>(d - patch.first);
            if (i < patch.ready.size()) sum += patch.ready[i];
        }
        return sum;
    }

    void addLot(std::uint32_t index) {
        const auto& lot = problem_.lots[index];
        net_.lotsOf[lot.plant].push_back(index);
        net_.lotNodes.push_back(addNode());
        addArc(gardenNode, net_.lotNodes.back(), lot.stems.value, {}, {ArcKind::store, index, 0, 0});
    }

    void addOffer(std::uint32_t index) {
        const auto& offer = problem_.offers[index];
        net_.offersOf[offer.plant].push_back(index);
        net_.offerNodes.push_back(addNode());
        addArc(gardenNode, net_.offerNodes.back(), offer.bunch.value * offer.bunches,
               {0, offer.pricePerStem.minor, 0, 0}, {ArcKind::buy, index, 0, 0});
        dearestOffer_ = std::max(dearestOffer_, offer.pricePerStem.minor);
    }

    void addDemand(std::uint32_t index) {
        const auto& demand = problem_.demands[index];
        const auto node = addNode();
        net_.demandNodes.push_back(node);
        net_.firstChoiceNode.push_back(node + 1);
        net_.flow.supply[static_cast<std::size_t>(node)] = -demand.stems.value;
        net_.flow.supply[gardenNode] += demand.stems.value;
        const auto served = static_cast<std::int64_t>(problem_.demands.size() - index);
        addArc(gardenNode, node, demand.stems.value, {served, 0, 0, 0}, {ArcKind::unmet, 0, index, 0});
        std::int64_t lowest = 0;
        for (std::size_t c = 0; c < demand.choices.size(); ++c)
            lowest = std::max(lowest, addChoice(index, c, node));
        lowestPlaces_ += lowest;
    }

    static ArcKind kindOf(Source source) {
        if (source == Source::patch) return ArcKind::cut;
        return source == Source::lot ? ArcKind::useLot : ArcKind::useOffer;
    }

    /// The lowest place on the way through it.
    std::int64_t addChoice(std::uint32_t index, std::size_t c, std::int32_t demandNode) {
        const auto& demand = problem_.demands[index];
        const auto& choice = demand.choices[c];
        const auto node = addNode();
        std::int64_t longestOff = 0;
        forEachSource(problem_, net_, choice, demand.bench,
                      [&](std::int32_t from, Source source, std::uint32_t at, Day day) {
                          const bool cut = source == Source::patch;
                          const std::int64_t kept =
                              cut ? dayOff * std::abs(choice.best.value_or(choice.to) - day) : 0;
                          longestOff = std::max(longestOff, kept);
                          addArc(from, node, demand.stems.value, {0, 0, 0, kept},
                                 {kindOf(source), at, index, day.number});
                      });
        longestOff_ += longestOff;
        return addFill(index, c, node, demandNode);
    }

    /// Plants with a wished part stand first up to it; beyond it, and where no part is wished, the order
    /// decides.
    std::int64_t addFill(std::uint32_t index, std::size_t c, std::int32_t node, std::int32_t demandNode) {
        const auto& demand = problem_.demands[index];
        const auto& wanted = demand.choices[c].wanted;
        const auto place = static_cast<std::int64_t>(c);
        const ArcMeaning meaning{ArcKind::fill, 0, index, 0};
        if (!wanted) {
            addArc(node, demandNode, demand.stems.value, {0, 0, place, 0}, meaning);
            return place;
        }
        const std::int64_t within = std::min(wanted->value, demand.stems.value);
        addArc(node, demandNode, within, {}, meaning);
        addArc(node, demandNode, demand.stems.value - within, {0, 0, place + 1, 0}, meaning);
        return place + 1;
    }

    /// a x b + c, or false when it is not below 2^60.
    static bool grow(std::int64_t a, std::int64_t b, std::int64_t c, std::int64_t& out) {
        constexpr std::int64_t most = std::int64_t{1} << 60;
        if (a > 0 && b > (most - c) / a) return false;
        out = a * b + c;
        return true;
    }

    /// The weights of the proof; false when they do not fit.
    bool weigh() {
        constexpr std::int64_t many = std::int64_t{1} << 40;
        const std::int64_t keeping = heldDay * holdArcs_ + longestOff_;
        if (keeping > many || lowestPlaces_ > many) return false;
        auto& w = net_.weights;
        w.places = 2 * keeping + 1;
        std::int64_t below = 0;
        if (!grow(lowestPlaces_, w.places, keeping, below)) return false;
        if (!grow(2, below, 1, w.price)) return false;
        if (!grow(dearestOffer_, w.price, below, below)) return false;
        if (!grow(2, below, 1, w.unmet)) return false;
        std::int64_t all = 0;
        return grow(static_cast<std::int64_t>(problem_.demands.size()), w.unmet, 0, all);
    }

    const CoverProblem& problem_;
    CoverNetwork net_;
    std::int64_t holdArcs_ = 0;
    std::int64_t longestOff_ = 0;
    std::int64_t lowestPlaces_ = 0;
    std::int64_t dearestOffer_ = 0;
};

/// The multiple of `unit` nearest to `cost`, taken out of it.
std::int64_t takeOut(std::int64_t& cost, std::int64_t unit) {
    const std::int64_t half = (unit - 1) / 2;
    const std::int64_t n = cost >= 0 ? (cost + half) / unit : -((-cost + half) / unit);
    cost -= n * unit;
    return n;
}

} // namespace

Tiers Weights::tiersOf(std::int64_t cost) const {
    Tiers t;
    t.unmet = takeOut(cost, unmet);
    t.price = takeOut(cost, price);
    t.places = takeOut(cost, places);
    t.keeping = cost;
    return t;
}

Result<CoverNetwork, CoverFault> buildNetwork(const CoverProblem& problem) {
    return Builder(problem).build();
}

} // namespace withy::cover
