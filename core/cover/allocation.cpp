// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cover/allocation.h"

#include "core/cover/network.h"

#include <algorithm>
#include <deque>
#include <tuple>

namespace withy::cover {

namespace {

/// Stems leaving one place on one day for one choice.
struct Taken {
    std::size_t demand;
    std::size_t choice;
    std::int64_t stems;
};

using ByDay = std::map<std::int32_t, std::vector<Taken>>;

/// Reads the pieces out of a flow.
class Reader {
public:
    Reader(const CoverProblem& problem, const Solved& solved) : problem_(problem), solved_(solved) {}

    void read(Allocation& to) {
        to.unmet.assign(problem_.demands.size(), Stems(0));
        fresh_.resize(problem_.patches.size());
        cuts_.resize(problem_.patches.size());
        const auto& arcs = solved_.network.flow.arcs;
        for (std::size_t i = 0; i < arcs.size(); ++i) {
            if (solved_.answer.carried[i] > 0) readArc(i, to);
        }
        for (std::size_t p = 0; p < problem_.patches.size(); ++p)
            oldestFirst(p, to);
        std::sort(to.pieces.begin(), to.pieces.end(), [](const Piece& a, const Piece& b) {
            return std::tuple(a.demand, a.choice, a.source, a.from, a.cut, a.ready) <
                   std::tuple(b.demand, b.choice, b.source, b.from, b.cut, b.ready);
        });
    }

private:
    void readArc(std::size_t i, Allocation& to) {
        const auto& meaning = solved_.network.meanings[i];
        const std::int64_t stems = solved_.answer.carried[i];
        switch (meaning.kind) {
        case ArcKind::unmet:
            to.unmet[meaning.demand] = Stems(stems);
            break;
        case ArcKind::ready:
            fresh_[meaning.source][meaning.day] = stems;
            break;
        case ArcKind::cut:
            cuts_[meaning.source][meaning.day].push_back(takenBy(i, stems));
            break;
        case ArcKind::useLot:
        case ArcKind::useOffer:
            to.pieces.push_back(fromStore(i, stems));
            break;
        case ArcKind::hold:
        case ArcKind::store:
        case ArcKind::buy:
        case ArcKind::fill:
            break;
        }
    }

    [[nodiscard]] Taken takenBy(std::size_t arc, std::int64_t stems) const {
        const std::size_t demand = solved_.network.meanings[arc].demand;
        const auto choice = solved_.network.flow.arcs[arc].to - solved_.network.firstChoiceNode[demand];
        return {demand, static_cast<std::size_t>(choice), stems};
    }

    [[nodiscard]] Piece fromStore(std::size_t arc, std::int64_t stems) const {
        const auto taken = takenBy(arc, stems);
        const auto& meaning = solved_.network.meanings[arc];
        const auto& demand = problem_.demands[taken.demand];
        const bool isLot = meaning.kind == ArcKind::useLot;
        Piece piece;
        piece.demand = taken.demand;
        piece.choice = taken.choice;
        piece.source = isLot ? Source::lot : Source::offer;
        piece.from = isLot ? problem_.lots[meaning.source].lot.value : problem_.offers[meaning.source].id;
        piece.plant = demand.choices[taken.choice].plant;
        piece.ready =
            isLot ? problem_.lots[meaning.source].readyFrom : problem_.offers[meaning.source].readyFrom;
        piece.cut = demand.bench;
        piece.stems = Stems(stems);
        return piece;
    }

    /// The oldest stems are cut first, for the demands served first.
    void oldestFirst(std::size_t p, Allocation& to) {
        std::deque<std::pair<std::int32_t, std::int64_t>> waiting;
        auto fresh = fresh_[p].begin();
        for (auto& [day, taken] : cuts_[p]) {
            for (; fresh != fresh_[p].end() && fresh->first <= day; ++fresh)
                waiting.emplace_back(fresh->first, fresh->second);
            std::sort(taken.begin(), taken.end(), [](const Taken& a, const Taken& b) {
                return std::pair(a.demand, a.choice) < std::pair(b.demand, b.choice);
            });
            for (auto& t : taken) {
                while (t.stems > 0) {
                    auto& [ready, left] = waiting.front();
                    const std::int64_t n = std::min(t.stems, left);
                    to.pieces.push_back({t.demand, t.choice, Source::patch, problem_.patches[p].patch.value,
                                         problem_.patches[p].plant, Day{ready}, Day{day}, Stems(n)});
                    t.stems -= n;
                    left -= n;
                    if (left == 0) waiting.pop_front();
                }
            }
        }
    }

    const CoverProblem& problem_;
    const Solved& solved_;
    std::vector<std::map<std::int32_t, std::int64_t>> fresh_; ///< by patch and day
    std::vector<ByDay> cuts_;                                 ///< by patch
};

Objectives objectivesOf(const Allocation& a, const Solved& solved) {
    Objectives o;
    for (std::size_t d = 0; d < a.unmet.size(); ++d)
        o.unmet[static_cast<std::size_t>(a.problem.demands[d].claim)] += a.unmet[d].value;
    for (std::size_t i = 0; i < solved.answer.carried.size(); ++i) {
        const std::int64_t n = solved.answer.carried[i];
        if (n == 0) continue;
        o.price += n * solved.network.tiers[i].price;
        o.places += n * solved.network.tiers[i].places;
        o.keeping += n * solved.network.tiers[i].keeping;
    }
    return o;
}

} // namespace

Result<Allocation, CoverFault> allocate(CoverProblem problem) {
    Allocation a;
    a.problem = inOrder(std::move(problem));
    if (const auto fault = coverFault(a.problem)) return *fault;
    auto network = buildNetwork(a.problem);
    if (!network.ok()) return network.error();
    auto solved = std::make_shared<Solved>();
    solved->network = std::move(network).value();
    auto answer = minCostFlow(solved->network.flow);
    if (!answer.ok()) return CoverFault{CoverTrouble::tooLarge, "demand", 0};
    solved->answer = std::move(answer).value();
    Reader(a.problem, *solved).read(a);
    a.objectives = objectivesOf(a, *solved);
    a.solved = std::move(solved);
    return a;
}

} // namespace withy::cover
