// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/shareout/share_checks.h"

#include <algorithm>
#include <map>
#include <set>

namespace withy::shareout::tests {

namespace {

/// Least and most of a figure over pieces.
struct Span {
    std::int64_t least = INT64_MAX, most = INT64_MIN;

    void add(std::int64_t n) {
        least = std::min(least, n);
        most = std::max(most, n);
    }

    [[nodiscard]] bool even() const { return most - least <= 1; }
};

class Checker {
public:
    Checker(const ShareProblem& problem, const ShareOut& share) : problem_(problem), share_(share) {
        for (const auto& c : problem.counted) {
            if (c.stems) counted_[c.plant] = c.stems->value;
        }
        say(problem.lines.size() == share.lines.size(), "lines");
        for (const auto& l : share.lines)
            checkLine(l);
        checkPlants();
        for (const auto& o : share.objectives)
            say(o == sums_[o.turn], "objectives of turn " + std::to_string(o.turn));
        say(share.objectives.size() == sums_.size(), "turns");
        for (const auto& p : share.proofs)
            checkProof(p);
        say(share.proofs.size() == sums_.size(), "proofs");
    }

    std::vector<std::string> wrong;

private:
    void say(bool holds, const std::string& what) {
        if (!holds) wrong.push_back(what);
    }

    [[nodiscard]] const LineAsk& askOf(Id<model::Line> id) const {
        return *std::find_if(problem_.lines.begin(), problem_.lines.end(),
                             [&](const auto& l) { return l.line == id; });
    }

    static std::int64_t inSlot(const PieceGroup& group, const SlotAsk& slot) {
        std::int64_t n = 0;
        for (const auto& p : group.portions)
            n += p.slot == slot.slot ? p.stems.value : 0;
        return n;
    }

    void checkLine(const LineShare& l) {
        const auto& ask = askOf(l.line);
        auto& sum = sums_[ask.served()];
        sum.turn = ask.served();
        std::int64_t pieces = 0, target = 0;
        for (const auto& s : ask.slots)
            target += s.count.value;
        if (ask.total) target = ask.total->value;
        Span totals;
        for (const auto& group : l.groups) {
            pieces += group.pieces.value;
            std::int64_t total = 0;
            for (const auto& p : group.portions)
                total += p.stems.value;
            say(total == group.total.value && total <= target, "total of a piece");
            totals.add(total);
            sum.missing += group.pieces.value * (target - total);
            sum.pieceSquares += group.pieces.value * (target - total) * (target - total);
        }
        say(pieces == ask.pieces.value, "number of pieces");
        say(l.groups.empty() || totals.even(), "totals of pieces");
        for (const auto& s : ask.slots)
            checkSlot(l, s, sum);
        checkPlantsOverSlots(l, ask);
    }

    void checkSlot(const LineShare& l, const SlotAsk& ask, TurnObjectives& sum) {
        Span spans;
        for (const auto& group : l.groups) {
            const auto n = inSlot(group, ask);
            spans.add(n);
            const auto off = n - ask.count.value;
            sum.slotSquares += group.pieces.value * off * off;
            say(off <= ask.mayVaryBy.value, "room in a slot");
        }
        say(l.groups.empty() || spans.even(), "slot over pieces");
        std::int64_t wholeClumps = 0, clumpRoom = 0, clumpStems = 0;
        for (std::size_t c = 0; c < ask.choices.size(); ++c) {
            Span span;
            std::int64_t all = 0;
            for (const auto& group : l.groups) {
                std::int64_t n = 0;
                for (const auto& p : group.portions) {
                    if (p.slot == ask.slot && p.plant == ask.choices[c].plant) n += p.stems.value;
                }
                span.add(n);
                all += n * group.pieces.value;
                if (ask.clump.value > 1) wholeClumps += n / ask.clump.value * group.pieces.value;
            }
            if (ask.clump.value > 1) clumpStems += all / ask.clump.value;
            say(ask.clump.value > 1 || l.groups.empty() || span.even(), "plant of a slot over pieces");
            const auto place = static_cast<std::int64_t>(c);
            const auto& wanted = ask.choices[c].wanted;
            sum.places += wanted ? std::max<std::int64_t>(0, all - wanted->value) * (place + 1) : all * place;
        }
        if (ask.clump.value < 2) return;
        for (const auto& group : l.groups)
            clumpRoom += group.pieces.value * (inSlot(group, ask) / ask.clump.value);
        say(wholeClumps == std::min(clumpRoom, clumpStems), "whole clumps");
    }

    void checkPlantsOverSlots(const LineShare& l, const LineAsk& ask) {
        std::map<Id<model::Slot>, std::set<Id<model::Plant>>> allowed;
        std::set<Id<model::Slot>> inClumps;
        std::set<Id<model::Plant>> plants;
        for (const auto& s : ask.slots) {
            for (const auto& c : s.choices) {
                allowed[s.slot].insert(c.plant);
                plants.insert(c.plant);
            }
            if (s.clump.value > 1) inClumps.insert(s.slot);
        }
        for (const auto id : plants) {
            Span span;
            for (const auto& group : l.groups) {
                std::int64_t n = 0;
                for (const auto& p : group.portions) {
                    if (p.plant == id && !inClumps.contains(p.slot)) n += p.stems.value;
                }
                span.add(n);
            }
            say(l.groups.empty() || span.even(), "plant over slots");
        }
        for (const auto& group : l.groups) {
            for (const auto& p : group.portions) {
                say(p.stems.value > 0 && allowed[p.slot].contains(p.plant), "plant that may not be there");
                used_[p.plant] += group.pieces.value * p.stems.value;
                usedUpTo_[ask.served()] += group.pieces.value * p.stems.value;
            }
        }
    }

    void checkPlants() {
        say(share_.plants.size() == counted_.size(), "plants");
        for (const auto& p : share_.plants) {
            say(p.counted.value == counted_.at(p.plant), "counted");
            say(p.used.value == used_[p.plant] && p.left.value == p.counted.value - p.used.value &&
                    p.left.value >= 0,
                "used and left over");
        }
        for (const auto& [id, stems] : used_)
            say(stems == 0 || counted_.contains(id), "a plant that was not counted");
    }

    /// Each way of a stem into these lines meets the cut, and the cut carries what is used.
    void checkProof(const Proof& proof) {
        const auto has = [](const auto& list, const auto& key) {
            return std::find(list.begin(), list.end(), key) != list.end();
        };
        std::int64_t most = 0, used = 0;
        for (const auto id : proof.usedUp)
            most += counted_.at(id);
        for (const auto& l : problem_.lines) {
            if (l.served() > proof.turn) continue;
            if (has(proof.complete, l.line)) most += l.pieces.value * l.target().value;
            for (const auto& s : l.slots) {
                const bool full = has(proof.full, std::pair(l.line, s.slot));
                if (full) most += l.pieces.value * (s.count.value + s.mayVaryBy.value);
                for (const auto& c : s.choices)
                    say(!counted_.contains(c.plant) || full || has(proof.complete, l.line) ||
                            has(proof.usedUp, c.plant),
                        "a way round the proof");
            }
        }
        for (const auto& [turn, stems] : usedUpTo_)
            used += turn <= proof.turn ? stems : 0;
        say(most == proof.most.value && used == most, "proof of turn " + std::to_string(proof.turn));
    }

    const ShareProblem& problem_;
    const ShareOut& share_;
    std::map<Id<model::Plant>, std::int64_t> counted_, used_;
    std::map<int, std::int64_t> usedUpTo_; ///< by turn
    std::map<int, TurnObjectives> sums_;
};

} // namespace

std::vector<std::string> wrongWith(const ShareProblem& problem, const ShareOut& share) {
    return Checker(problem, share).wrong;
}

Stems belowDesign(const ShareOut& share) {
    Stems sum;
    for (const auto& line : share.lines) {
        for (const auto& slot : line.slots)
            sum += std::max(Stems(0), slot.asked - slot.given);
    }
    return sum;
}

Id<model::Plant> plant(std::int64_t id) {
    return Id<model::Plant>(id);
}

Id<model::Line> line(std::int64_t id) {
    return Id<model::Line>(id);
}

Id<model::Slot> slot(std::int64_t id) {
    return Id<model::Slot>(id);
}

Counted counted(std::int64_t plant, std::int64_t stems) {
    return {Id<model::Plant>(plant), Stems(stems)};
}

SlotAsk slotOf(std::int64_t id, std::int64_t count, const std::vector<std::int64_t>& plants) {
    SlotAsk ask;
    ask.slot = slot(id);
    ask.count = Stems(count);
    for (const auto p : plants)
        ask.choices.push_back({plant(p)});
    return ask;
}

LineAsk lineOf(std::int64_t id, std::int64_t pieces, std::vector<SlotAsk> slots) {
    LineAsk ask;
    ask.line = line(id);
    ask.pieces = Pieces(pieces);
    ask.slots = std::move(slots);
    return ask;
}

std::vector<std::string> groupsAsText(const LineShare& line, const std::vector<std::int64_t>& plants) {
    std::vector<std::string> text;
    for (const auto& group : line.groups) {
        auto& row = text.emplace_back(std::to_string(group.pieces.value) + " x");
        for (const auto id : plants) {
            std::int64_t n = 0;
            for (const auto& p : group.portions)
                n += p.plant.value == id ? p.stems.value : 0;
            row += " " + std::to_string(n);
        }
    }
    return text;
}

} // namespace withy::shareout::tests
