// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/cover/allocation.h"
#include "core/cover/min_cost_flow.h"

#include <map>

/// The season as a network, expanded over time.
///
///   garden --ready--> patch on a day --cut--> choice --fill--> demand
///                      |  hold  v                                ^
///                     patch on the next day                      |
///   garden --in store--> lot --use--> choice                     |
///   garden --buy--> offer --use--> choice                        |
///   garden --unmet-----------------------------------------------+
///
/// Hold days need no node for each age. What passes from one day to the next is at most what became ready
/// within the last `holdDays` days; cutting the oldest first then never cuts a stem that waited longer, and
/// stems of a patch are alike. (In a least-cost flow a stem is taken young where it can be, so the pieces
/// show it too.)
namespace withy::cover {

/// What one arc adds to each objective, the first first.
struct Tiers {
    std::int64_t unmet = 0; ///< how early the demand is served: the last counts 1
    std::int64_t price = 0;
    std::int64_t places = 0;
    std::int64_t keeping = 0;
};

/// One objective's unit in terms of the next, so that a single cost orders as the four do.
///
/// Proof. Let f be a flow of least single cost and g one that is better in the order of the objectives. g - f
/// is a sum of simple cycles of the residual network of f, so one of these cycles is better than nought in
/// that order. Its first objective that differs is at most -1. A simple cycle meets each node once, so what
/// the later ones add to it is bounded: keeping by K, one for every hold arc and the dearest cut of every
/// choice; places by P, the lowest place of every demand; price by C, the dearest offer, for price and unmet
/// stand only on arcs at the garden, of which a cycle has two. With places = 2K + 1, price = 2(P places + K)
/// + 1 and unmet = 2(C price + P places + K) + 1, one unit outweighs twice all that follow; the cycle's
/// single cost is below nought and f was not least. The factor two makes a sum of the four readable again
/// (tiersOf).
///
/// Within `unmet` a demand counts by how early it is served. The amounts that a network can bring to a set of
/// ends form a polymatroid (N. Megiddo, "Optimal flows in networks with multiple sources and sinks",
/// Mathematical Programming 7, 1974), on which any strictly falling weights give the same: the first demand
/// as much as possible, then the second, and so on.
struct Weights {
    std::int64_t unmet = 1;
    std::int64_t price = 1;
    std::int64_t places = 1;

    [[nodiscard]] std::int64_t costOf(const Tiers& t) const {
        return t.unmet * unmet + t.price * price + t.places * places + t.keeping;
    }

    /// Back from a cost whose parts are within the bounds of the proof.
    [[nodiscard]] Tiers tiersOf(std::int64_t cost) const;
};

enum class ArcKind { ready, hold, store, buy, cut, useLot, useOffer, fill, unmet };

struct ArcMeaning {
    ArcKind kind{};
    std::uint32_t source = 0; ///< patch, lot or offer, by index; unset for fill and unmet
    std::uint32_t demand = 0; ///< by index, for cut, use, fill and unmet
    std::int32_t day = 0;     ///< number of the day, for ready, hold and cut
};

struct CoverNetwork {
    FlowNetwork flow;
    std::vector<Tiers> tiers;         ///< by arc
    std::vector<ArcMeaning> meanings; ///< by arc
    Weights weights;

    struct PatchNodes {
        std::int32_t firstNode = -1;
        Day first;
        int days = 0; ///< nought: nothing ever becomes ready
    };

    std::vector<PatchNodes> patchNodes;
    std::vector<std::int32_t> lotNodes;
    std::vector<std::int32_t> offerNodes;
    std::vector<std::int32_t> demandNodes;
    std::vector<std::int32_t> firstChoiceNode; ///< of a demand; the others follow
    std::map<Id<model::Plant>, std::vector<std::uint32_t>> patchesOf;
    std::map<Id<model::Plant>, std::vector<std::uint32_t>> lotsOf;
    std::map<Id<model::Plant>, std::vector<std::uint32_t>> offersOf;
};

inline constexpr std::int32_t gardenNode = 0;

/// Calls visit(node, kind, index, day) for every place that could give stems to a choice.
template <class Visit>
void forEachSource(const CoverProblem& problem, const CoverNetwork& network, const Choice& choice, Day bench,
                   Visit visit);

/// Of a sound problem in order; the weights are there, the costs are not when they would not fit.
Result<CoverNetwork, CoverFault> buildNetwork(const CoverProblem& problem);

/// A network with its best flow.
class Solved {
public:
    CoverNetwork network;
    FlowAnswer answer;
};

// ---

inline bool fitOn(const std::optional<Day>& useBy, Day readyFrom, Day bench) {
    return readyFrom <= bench && (!useBy || bench <= *useBy);
}

template <class Visit>
void forEachSource(const CoverProblem& problem, const CoverNetwork& network, const Choice& choice, Day bench,
                   Visit visit) {
    const auto listOf = [&](const auto& map) {
        const auto found = map.find(choice.plant);
        return found == map.end() ? nullptr : &found->second;
    };
    if (const auto* patches = choice.storeOnly ? nullptr : listOf(network.patchesOf)) {
        for (const auto p : *patches) {
            const auto& nodes = network.patchNodes[p];
            const Day last = std::min(choice.to, nodes.first + (nodes.days - 1));
            for (Day d = std::max(choice.from, nodes.first); d <= last; d = d + 1)
                visit(nodes.firstNode + (d - nodes.first), Source::patch, p, d);
        }
    }
    if (const auto* lots = listOf(network.lotsOf)) {
        for (const auto i : *lots) {
            const auto& lot = problem.lots[i];
            if (fitOn(lot.useBy, lot.readyFrom, bench)) visit(network.lotNodes[i], Source::lot, i, bench);
        }
    }
    if (const auto* offers = listOf(network.offersOf)) {
        for (const auto i : *offers) {
            const auto& offer = problem.offers[i];
            if (fitOn(offer.useBy, offer.readyFrom, bench))
                visit(network.offerNodes[i], Source::offer, i, bench);
        }
    }
}

} // namespace withy::cover
