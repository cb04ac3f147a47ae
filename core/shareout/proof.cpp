// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shareout/proof.h"

#include <map>
#include <numeric>
#include <set>

namespace withy::shareout {

namespace {

using Given = std::vector<std::vector<std::vector<std::int64_t>>>;

class Reach {
public:
    Reach(const ShareProblem& problem, const Given& given, int turn)
        : problem_(problem), given_(given), turn_(turn) {
        for (const auto& counted : problem.counted) {
            if (counted.stems) left_[counted.plant] = counted.stems->value;
        }
        each([&](std::size_t l, std::size_t s, std::size_t c) {
            const auto plant = left_.find(problem_.lines[l].slots[s].choices[c].plant);
            if (plant == left_.end()) return;
            plant->second -= given_[l][s][c];
            wanted_.insert(plant->first);
        });
        for (const auto plant : wanted_) {
            if (left_.at(plant) > 0) plants_.insert(plant);
        }
        while (grow()) {
        }
    }

    [[nodiscard]] Proof proof() const {
        Proof proof;
        proof.turn = turn_;
        for (const auto& counted : problem_.counted) {
            if (!counted.stems || !wanted_.contains(counted.plant) || plants_.contains(counted.plant))
                continue;
            proof.usedUp.push_back(counted.plant);
            proof.most += *counted.stems;
        }
        for (std::size_t l = 0; l < problem_.lines.size(); ++l) {
            const auto& line = problem_.lines[l];
            if (lines_.contains(l)) {
                proof.complete.push_back(line.line);
                proof.most += line.target() * line.pieces.value;
                continue;
            }
            for (std::size_t s = 0; s < line.slots.size(); ++s) {
                if (!slots_.contains({l, s})) continue;
                proof.full.emplace_back(line.line, line.slots[s].slot);
                proof.most += Stems(roomOf(l, s));
            }
        }
        return proof;
    }

private:
    template <class Use>
    void each(Use use) const {
        for (std::size_t l = 0; l < problem_.lines.size(); ++l) {
            if (problem_.lines[l].served() > turn_) continue;
            for (std::size_t s = 0; s < problem_.lines[l].slots.size(); ++s) {
                for (std::size_t c = 0; c < problem_.lines[l].slots[s].choices.size(); ++c)
                    use(l, s, c);
            }
        }
    }

    [[nodiscard]] std::int64_t roomOf(std::size_t l, std::size_t s) const {
        const auto& slot = problem_.lines[l].slots[s];
        return problem_.lines[l].pieces.value * (slot.count.value + slot.mayVaryBy.value);
    }

    [[nodiscard]] std::int64_t stemsIn(std::size_t l, std::size_t s) const {
        return std::accumulate(given_[l][s].begin(), given_[l][s].end(), std::int64_t{0});
    }

    /// One round over everything; true when something new was reached.
    bool grow() {
        const auto before = plants_.size() + slots_.size() + lines_.size();
        each([&](std::size_t l, std::size_t s, std::size_t c) {
            const auto plant = problem_.lines[l].slots[s].choices[c].plant;
            if (plants_.contains(plant)) slots_.insert({l, s});
            if (slots_.contains({l, s}) && stemsIn(l, s) < roomOf(l, s)) lines_.insert(l);
            if (lines_.contains(l) && stemsIn(l, s) > 0) slots_.insert({l, s});
            if (slots_.contains({l, s}) && given_[l][s][c] > 0) plants_.insert(plant);
        });
        return plants_.size() + slots_.size() + lines_.size() > before;
    }

    const ShareProblem& problem_;
    const Given& given_;
    int turn_;
    std::map<Id<model::Plant>, std::int64_t> left_; ///< of each counted plant, these lines served
    std::set<Id<model::Plant>> wanted_;             ///< counted, and a choice of one of these lines
    std::set<Id<model::Plant>> plants_;             ///< reached
    std::set<std::pair<std::size_t, std::size_t>> slots_;
    std::set<std::size_t> lines_;
};

} // namespace

Proof proofFor(const ShareProblem& problem, const Given& given, int turn) {
    return Reach(problem, given, turn).proof();
}

} // namespace withy::shareout
