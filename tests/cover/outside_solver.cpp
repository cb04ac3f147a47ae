// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/cover/outside_solver.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <map>
#include <numeric>
#include <set>
#include <sstream>
#include <tuple>
#include <unistd.h>

namespace withy::cover::tests {

namespace {

/// A sum of variables with their factors.
struct Sum {
    std::string text;

    void add(std::int64_t factor, const std::string& name) {
        if (factor == 0) return;
        text += (factor < 0 ? " - " : " + ") + std::to_string(std::abs(factor)) + " " + name + "\n";
    }
};

/// The constraints of one problem; its objectives are single variables, in order.
class Rows {
public:
    Rows(const CoverProblem& problem, const std::string& prefix) : problem_(problem), prefix_(prefix) {
        std::vector<std::size_t> order(problem.demands.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        std::sort(order.begin(), order.end(), [&](auto a, auto b) {
            const auto key = [&](auto i) {
                const auto& d = problem.demands[i];
                return std::tuple(d.claim, d.event, d.booking, d.line, d.slot);
            };
            return key(a) < key(b);
        });
        for (const auto d : order) {
            writeDemand(d);
            claims.push_back(problem.demands[d].claim);
        }
        for (const auto& [name, supply] : supplies_)
            row(supply.first.text, "<=", supply.second);
        for (const auto& [name, sum] : cuts_)
            row(sum.text, "=", 0);
        objective("price", price_);
        objective("places", places_);
        objective("keeping", keeping_);
    }

    std::string text;
    std::vector<std::string> objectives;
    std::vector<Claim> claims; ///< of the demands in the order served

private:
    void row(const std::string& sum, const std::string& relation, std::int64_t value) {
        if (sum.empty()) return;
        text += " " + prefix_ + "r" + std::to_string(rows_++) + ":" + sum + " " + relation + " " +
                std::to_string(value) + "\n";
    }

    void objective(const std::string& name, Sum sum) {
        const auto variable = prefix_ + name;
        sum.add(-1, variable);
        row(sum.text, "=", 0);
        objectives.push_back(variable);
    }

    void take(const std::string& supply, std::int64_t there, const std::string& variable) {
        auto& entry = supplies_[supply];
        entry.first.add(1, variable);
        entry.second = there;
    }

    void writeDemand(std::size_t d) {
        const auto& demand = problem_.demands[d];
        Sum all;
        for (std::size_t c = 0; c < demand.choices.size(); ++c) {
            Sum chosen;
            const auto name = prefix_ + "d" + std::to_string(d) + "c" + std::to_string(c);
            writeGarden(demand.choices[c], name, all, chosen);
            writeStore(demand.choices[c], demand.bench, name, all, chosen);
            writePlace(demand.choices[c], static_cast<std::int64_t>(c), name, chosen);
        }
        const auto unmet = prefix_ + "u" + std::to_string(d);
        all.add(1, unmet);
        row(all.text, "=", demand.stems.value);
        objectives.push_back(unmet);
    }

    /// Stems of a patch are alike: how many of each age are cut each day, and how many of that day's go
    /// where.
    void writeGarden(const Choice& choice, const std::string& name, Sum& all, Sum& chosen) {
        for (const auto& patch : problem_.patches) {
            if (patch.plant != choice.plant || choice.storeOnly) continue;
            const auto p = "p" + std::to_string(patch.patch.value);
            for (Day cut = choice.from; cut <= choice.to; cut = cut + 1) {
                const auto variable = name + p + "t" + std::to_string(cut.number);
                if (!agesOn(patch, p, cut)) continue;
                all.add(1, variable);
                chosen.add(1, variable);
                cuts_[p + "t" + std::to_string(cut.number)].add(-1, variable);
                keeping_.add(2 * std::abs(choice.best.value_or(choice.to) - cut), variable);
            }
        }
    }

    /// Writes, once, the stems of each age that may be cut on a day; false when there can be none.
    bool agesOn(const PatchSupply& patch, const std::string& p, Day cut) {
        const auto key = p + "t" + std::to_string(cut.number);
        if (const auto known = cuts_.find(key); known != cuts_.end()) return !known->second.text.empty();
        auto& sum = cuts_[key];
        for (int held = 0; held <= patch.holdDays; ++held) {
            const int r = cut - held - patch.first;
            if (r < 0 || r >= static_cast<int>(patch.ready.size())) continue;
            const auto ready = patch.ready[static_cast<std::size_t>(r)];
            if (ready == 0) continue;
            const auto age = p + "r" + std::to_string(r);
            const auto variable = prefix_ + age + "h" + std::to_string(held);
            sum.add(1, variable);
            take(age, ready, variable);
            keeping_.add(held, variable);
        }
        return !sum.text.empty();
    }

    void writeStore(const Choice& choice, Day bench, const std::string& name, Sum& all, Sum& chosen) {
        const auto fit = [&](const auto& s) {
            return s.plant == choice.plant && s.readyFrom <= bench && (!s.useBy || bench <= *s.useBy);
        };
        for (const auto& lot : problem_.lots) {
            if (!fit(lot)) continue;
            const auto variable = name + "l" + std::to_string(lot.lot.value);
            all.add(1, variable);
            chosen.add(1, variable);
            take("l" + std::to_string(lot.lot.value), lot.stems.value, variable);
        }
        for (const auto& offer : problem_.offers) {
            if (!fit(offer)) continue;
            const auto variable = name + "o" + std::to_string(offer.id);
            all.add(1, variable);
            chosen.add(1, variable);
            take("o" + std::to_string(offer.id), offer.bunch.value * offer.bunches, variable);
            price_.add(offer.pricePerStem.minor, variable);
        }
    }

    void writePlace(const Choice& choice, std::int64_t place, const std::string& name, const Sum& chosen) {
        if (chosen.text.empty()) return;
        Sum sum = chosen;
        const auto counted = name + "x"; // stems that count at this place
        sum.add(-1, counted);
        row(sum.text, "<=", choice.wanted ? choice.wanted->value : 0);
        places_.add(choice.wanted ? place + 1 : place, counted);
    }

    const CoverProblem& problem_;
    std::string prefix_;
    int rows_ = 0;
    std::map<std::string, std::pair<Sum, std::int64_t>> supplies_;
    std::map<std::string, Sum> cuts_; ///< of a patch on a day: by age less by where they go
    Sum price_, places_, keeping_;
};

/// The files of one run, gone afterwards.
struct Files {
    std::filesystem::path programme, answer;

    Files() {
        static int count = 0;
        const auto name = "withy-cover-" + std::to_string(::getpid()) + "-" + std::to_string(count++);
        programme = std::filesystem::temp_directory_path() / (name + ".lp");
        answer = std::filesystem::temp_directory_path() / (name + ".out");
    }

    ~Files() {
        std::error_code ignored;
        std::filesystem::remove(programme, ignored);
        std::filesystem::remove(answer, ignored);
    }
};

/// Variables in the order of their first mention, which is that of glpsol's columns.
std::vector<std::string> columnsOf(const std::string& programme) {
    std::vector<std::string> names;
    std::set<std::string> seen;
    std::istringstream words(programme);
    for (std::string word; words >> word;) {
        if (word.front() == 's' && word.back() != ':' && seen.insert(word).second) names.push_back(word);
    }
    return names;
}

Best bestOf(const std::vector<std::int64_t>& values) {
    Best best;
    const auto n = values.size() - 3;
    best.unmet.assign(values.begin(), values.begin() + static_cast<std::ptrdiff_t>(n));
    best.price = values[n];
    best.places = values[n + 1];
    best.keeping = values[n + 2];
    return best;
}

} // namespace

bool outsideSolverIsThere() {
    return std::system("command -v glpsol > /dev/null 2>&1") == 0;
}

std::map<std::string, double> runOutside(const std::string& programme, std::string& error) {
    const Files files;
    std::ofstream(files.programme) << programme;
    const auto command = "glpsol --lp '" + files.programme.string() + "' --write '" + files.answer.string() +
                         "' > /dev/null 2>&1";
    if (std::system(command.c_str()) != 0) error = "glpsol failed";
    const auto names = columnsOf(programme);
    std::ifstream in(files.answer);
    std::map<std::string, double> values;
    std::string solution;
    for (std::string line; std::getline(in, line);) {
        std::istringstream words(line);
        std::string kind;
        words >> kind;
        if (kind == "s") { // s bas ROWS COLUMNS PRIMAL DUAL VALUE, f: feasible; s mip ROWS COLUMNS STATUS
            std::string primal, dual = "f";
            std::size_t rows = 0, columns = 0;
            words >> solution >> rows >> columns >> primal;
            if (solution == "bas") words >> dual;
            const auto* best = solution == "bas" ? "f" : "o";
            if (columns != names.size() || primal != best || dual != "f") error = "not optimal: " + line;
        } else if (kind == "j") { // j COLUMN STATUS VALUE PRICE; of whole numbers j COLUMN VALUE
            std::size_t column = 0;
            std::string status;
            double value = 0;
            words >> column;
            if (solution == "bas") words >> status;
            words >> value;
            if (column >= 1 && column <= names.size()) values[names[column - 1]] = value;
        }
    }
    if (values.size() != names.size() && error.empty()) error = "glpsol left out values";
    return values;
}

std::vector<Best> solveOutside(const std::vector<CoverProblem>& problems, std::string& error) {
    std::vector<Rows> rows;
    std::string constraints;
    std::size_t stages = 0;
    for (std::size_t i = 0; i < problems.size(); ++i) {
        rows.emplace_back(problems[i], "s" + std::to_string(i));
        constraints += rows.back().text;
        stages = std::max(stages, rows.back().objectives.size());
    }
    std::vector<std::vector<std::int64_t>> values(problems.size());
    std::string fixed;
    for (std::size_t stage = 0; stage < stages; ++stage) {
        Sum sum;
        for (const auto& r : rows) {
            if (stage < r.objectives.size()) sum.add(1, r.objectives[stage]);
        }
        const auto found = runOutside(
            "Minimize\n least:" + sum.text + "Subject To\n" + constraints + fixed + "End\n", error);
        if (!error.empty()) return {};
        for (std::size_t i = 0; i < rows.size(); ++i) {
            if (stage >= rows[i].objectives.size()) continue;
            const auto& name = rows[i].objectives[stage];
            const double value = found.at(name);
            if (std::abs(value - std::round(value)) > 1e-6) error = name + " is not whole";
            values[i].push_back(std::llround(value));
            fixed += " f" + name + ": " + name + " = " + std::to_string(values[i].back()) + "\n";
        }
    }
    std::vector<Best> best;
    for (const auto& v : values)
        best.push_back(bestOf(v));
    return best;
}

BestByClaim solveByClaim(const CoverProblem& problem, const std::vector<Stems>& unmet, std::string& error) {
    const Rows rows(problem, "s");
    std::string fixed;
    const auto least = [&](const Sum& sum) -> std::int64_t {
        if (sum.text.empty() || !error.empty()) return 0;
        const auto found =
            runOutside("Minimize\n least: " + sum.text + " + 0 sleast\nSubject To\n" + rows.text +
                           " total: " + sum.text + " - 1 sleast = 0\n" + fixed + "End\n",
                       error);
        return error.empty() ? std::llround(found.at("sleast")) : 0;
    };
    BestByClaim best;
    Sum served;
    for (std::size_t claim = 0; claim < claimCount; ++claim) {
        Sum sum;
        for (std::size_t d = 0; d < rows.claims.size(); ++d) {
            if (static_cast<std::size_t>(rows.claims[d]) == claim) sum.add(1, rows.objectives[d]);
        }
        best.unmet[claim] = least(sum);
        if (!sum.text.empty())
            fixed += " c" + std::to_string(claim) + ": " + sum.text + " = " +
                     std::to_string(best.unmet[claim]) + "\n";
    }
    const std::size_t n = rows.claims.size();
    for (std::size_t d = 0; d < n; ++d)
        served.add(static_cast<std::int64_t>(n - d), rows.objectives[d]);
    best.served = least(served);
    for (std::size_t d = 0; d < n; ++d)
        fixed += " f" + rows.objectives[d] + ": " + rows.objectives[d] + " = " +
                 std::to_string(unmet.at(d).value) + "\n";
    std::int64_t* values[] = {&best.price, &best.places, &best.keeping};
    for (std::size_t i = 0; i < 3; ++i) {
        Sum sum;
        sum.add(1, rows.objectives[n + i]);
        *values[i] = least(sum);
        fixed += " o" + std::to_string(i) + ": " + rows.objectives[n + i] + " = " +
                 std::to_string(*values[i]) + "\n";
    }
    return best;
}

} // namespace withy::cover::tests
