// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/shareout/share_programme.h"

#include "tests/cover/outside_solver.h"

#include <array>
#include <cmath>
#include <map>
#include <set>

namespace withy::shareout::tests {

namespace {

constexpr std::size_t goals = 4; // missing, piece squares, slot squares, places

std::string term(std::int64_t factor, const std::string& name) {
    return (factor < 0 ? " - " : " + ") + std::to_string(std::abs(factor)) + " " + name + "\n";
}

/// The rows of one problem. `targets[goal][n]` is the variable that holds a goal's sum for the n-th turn.
class Programme {
public:
    Programme(const ShareProblem& problem, std::string prefix) : problem_(problem), p_(std::move(prefix)) {
        for (const auto& l : problem.lines)
            turns_.insert(l.served());
        for (std::size_t l = 0; l < problem.lines.size(); ++l)
            writeLine(l);
        for (const auto& c : problem.counted) {
            if (taken_.contains(c.plant)) row(taken_[c.plant], "<=", c.stems ? c.stems->value : 0);
            taken_.erase(c.plant);
        }
        for (const auto& [plant, sum] : taken_) // never mentioned: not counted
            row(sum, "<=", 0);
        static const char* const words[goals] = {"missing", "pieces", "slots", "places"};
        for (std::size_t goal = 0; goal < goals; ++goal) {
            for (const auto turn : turns_) {
                const auto name = p_ + words[goal] + std::to_string(turn);
                row(sums_[goal][turn] + term(-1, name), "=", 0);
                targets[goal].push_back(name);
            }
        }
    }

    std::string rows, bounds, whole;
    std::array<std::vector<std::string>, goals> targets;

private:
    void row(const std::string& sum, const char* relation, std::int64_t value) {
        rows += " " + p_ + "r" + std::to_string(count_++) + ":" + sum + " " + relation + " " +
                std::to_string(value) + "\n";
    }

    /// `sum` falls short of, or goes beyond, a figure by steps of one stem that cost 1, 3, 5, ...: together
    /// the square. Returns the steps to add to the sum.
    std::string steps(const std::string& name, std::int64_t many, std::int64_t sign, std::string& squares) {
        std::string all;
        for (std::int64_t k = 1; k <= many; ++k) {
            const auto step = name + std::to_string(k);
            all += term(sign, step);
            squares += term(2 * k - 1, step);
            bounds += " 0 <= " + step + " <= 1\n";
        }
        return all;
    }

    void writeLine(std::size_t l) {
        const auto& line = problem_.lines[l];
        std::map<std::pair<std::size_t, std::size_t>, std::string> all;
        for (std::int64_t j = 0; j < line.pieces.value; ++j) {
            const auto name = p_ + "l" + std::to_string(l) + "j" + std::to_string(j);
            std::string piece;
            for (std::size_t s = 0; s < line.slots.size(); ++s) {
                const auto& slot = line.slots[s];
                const auto at = name + "s" + std::to_string(s);
                std::string sum;
                for (std::size_t c = 0; c < slot.choices.size(); ++c) {
                    const auto x = at + "c" + std::to_string(c);
                    sum += term(1, x);
                    taken_[slot.choices[c].plant] += term(1, x);
                    all[{s, c}] += term(1, x);
                    whole += " " + x + "\n";
                }
                piece += sum;
                auto& squares = sums_[2][line.served()];
                row(sum + steps(at + "u", slot.count.value, 1, squares) +
                        steps(at + "o", slot.mayVaryBy.value, -1, squares),
                    "=", slot.count.value);
            }
            const auto target = line.target().value;
            const auto lacks = steps(name + "m", target, 1, sums_[1][line.served()]);
            for (std::int64_t k = 1; k <= target; ++k)
                sums_[0][line.served()] += term(1, name + "m" + std::to_string(k));
            row(piece + lacks, "=", target);
        }
        for (const auto& [key, sum] : all)
            writePlace(line, l, key.first, key.second, sum);
    }

    void writePlace(const LineAsk& line, std::size_t l, std::size_t s, std::size_t c,
                    const std::string& sum) {
        const auto& wanted = line.slots[s].choices[c].wanted;
        const auto place = static_cast<std::int64_t>(c) + (wanted ? 1 : 0);
        if (place == 0) return;
        const auto counts = p_ + "l" + std::to_string(l) + "y" + std::to_string(s) + "c" + std::to_string(c);
        row(sum + term(-1, counts), "<=", wanted ? wanted->value : 0);
        sums_[3][line.served()] += term(place, counts);
    }

    const ShareProblem& problem_;
    std::string p_;
    int count_ = 0;
    std::set<int> turns_;
    std::map<Id<model::Plant>, std::string> taken_;
    std::array<std::map<int, std::string>, goals> sums_;
};

} // namespace

std::vector<BestShare> solveShares(const std::vector<ShareProblem>& problems, std::string& error) {
    std::vector<Programme> programmes;
    std::string rows, bounds, whole, fixed;
    std::size_t turns = 0;
    for (std::size_t i = 0; i < problems.size(); ++i) {
        const auto& p = programmes.emplace_back(problems[i], "s" + std::to_string(i));
        rows += p.rows;
        bounds += p.bounds;
        whole += p.whole;
        turns = std::max(turns, p.targets[0].size());
    }
    std::vector<BestShare> best(problems.size());
    const std::array lists{&BestShare::missing, &BestShare::pieceSquares, &BestShare::slotSquares,
                           &BestShare::places};
    for (std::size_t goal = 0; goal < goals; ++goal) {
        for (std::size_t turn = 0; turn < turns; ++turn) {
            std::string sum;
            for (const auto& p : programmes) {
                if (turn < p.targets[goal].size()) sum += term(1, p.targets[goal][turn]);
            }
            const auto found =
                cover::tests::runOutside("Minimize\n least:" + sum + "Subject To\n" + rows + fixed +
                                             "Bounds\n" + bounds + "General\n" + whole + "End\n",
                                         error);
            if (!error.empty()) return {};
            for (std::size_t i = 0; i < programmes.size(); ++i) {
                if (turn >= programmes[i].targets[goal].size()) continue;
                const auto& name = programmes[i].targets[goal][turn];
                const auto value = found.at(name);
                if (std::abs(value - std::round(value)) > 1e-6) error = name + " is not whole";
                (best[i].*lists[goal]).push_back(std::llround(value));
                fixed += " f" + name + ": " + name + " = " + std::to_string(std::llround(value)) + "\n";
            }
        }
    }
    return best;
}

} // namespace withy::shareout::tests
