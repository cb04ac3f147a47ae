// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cutting/ribbon_box.h"

#include "core/base/range.h"
#include "core/base/working_lines.h"
#include "core/cutting/box_search.h"
#include "core/cutting/piece_kinds.h"

#include <algorithm>
#include <numeric>

namespace withy::cutting {

namespace {

constexpr std::size_t mostOneByOne = 64; ///< reels and ends the exact search takes
constexpr std::int64_t searchShare = 3;  ///< the exact search may use one part in so many of the effort

std::optional<Problem> checkBox(const RibbonBox& box, const CutEffort& effort) {
    std::int64_t all = 0;
    for (const auto& on : box.onHand) {
        if (auto p = outside("ribbon_length", on.length.value, 1, longestRoll)) return p;
        if (auto p = outside("ribbon_count", on.count, 0, mostOnHand)) return p;
        all += on.count;
        if (auto p = outside("lengths_on_hand", all, 0, mostOnHand)) return p;
    }
    if (box.keepFrom) {
        if (auto p = outside("keep_from", box.keepFrom->value, 0, longestRoll)) return p;
    }
    return outside("effort", effort.steps, 0, std::numeric_limits<std::int64_t>::max());
}

/// The task with reels and ends one by one, and which entry of the box each comes from.
struct Laid {
    BoxTask task;
    std::vector<std::size_t> entry;
    std::vector<PieceWish> tooLong; ///< longer than anything in the box
};

Laid layOut(const RibbonBox& box, const PieceKinds& kinds) {
    Laid laid;
    std::vector<std::size_t> order(box.onHand.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](auto a, auto b) {
        const auto &x = box.onHand[a], &y = box.onHand[b];
        return x.kind != y.kind ? x.kind == RibbonKind::end : x.length < y.length;
    });
    std::int64_t longest = 0;
    for (const auto i : order) {
        for (std::int64_t n = 0; n < box.onHand[i].count; ++n) {
            laid.task.stock.push_back({box.onHand[i].kind == RibbonKind::reel, box.onHand[i].length.value});
            laid.entry.push_back(i);
            longest = std::max(longest, box.onHand[i].length.value);
        }
    }
    for (std::size_t k = 0; k < kinds.lengths.size(); ++k) {
        if (kinds.lengths[k] > longest) {
            laid.tooLong.push_back({Millimetres(kinds.lengths[k]), kinds.demand[k]});
            continue;
        }
        laid.task.lengths.push_back(kinds.lengths[k]);
        laid.task.demand.push_back(kinds.demand[k]);
    }
    laid.task.keepFrom =
        box.keepFrom ? box.keepFrom->value : (kinds.lengths.empty() ? 0 : kinds.lengths.back());
    return laid;
}

/// Equal reels or ends of the task become one stock. One plain cost stands for the order of BoxCost: a
/// missing millimetre outweighs a thousand of waste, and all that is cut from reels half a millimetre of it.
CutProblem problemOf(const BoxTask& task, std::int64_t& measure, std::vector<std::size_t>& firstOf) {
    auto all = task.lengths;
    for (const auto& stock : task.stock)
        all.push_back(stock.length);
    measure = commonMeasure(all);
    CutProblem problem;
    problem.demand = task.demand;
    std::int64_t wanted = 0;
    for (std::size_t k = 0; k < task.lengths.size(); ++k) {
        problem.lengths.push_back(task.lengths[k] / measure);
        problem.alone.push_back(1000.0 * static_cast<double>(task.lengths[k] / measure));
        wanted += task.lengths[k] / measure * task.demand[k];
    }
    const double reelPrice = 0.5 / static_cast<double>(wanted * measure);
    for (std::size_t s = 0; s < task.stock.size(); ++s) {
        const auto& stock = task.stock[s];
        if (s > 0 && stock.reel == task.stock[s - 1].reel && stock.length == task.stock[s - 1].length) {
            ++problem.stocks.back().count;
            continue;
        }
        firstOf.push_back(s);
        problem.stocks.push_back({stock.length / measure, 1, 0, stock.reel ? reelPrice : 0, 1,
                                  (task.keepFrom + measure - 1) / measure});
    }
    const auto least = leastCost(task);
    problem.least = 1000.0 * static_cast<double>(least.missing / measure) +
                    reelPrice * static_cast<double>(least.fromReels / measure);
    return problem;
}

BoxPlan boxPlanOf(const BoxTask& task, const WholePlan& whole, const std::vector<std::size_t>& firstOf) {
    BoxPlan plan;
    plan.cuts.assign(task.stock.size(), Counts(task.lengths.size(), 0));
    std::vector<std::size_t> nextOf = firstOf;
    for (const auto& used : whole.used) {
        if (used.pattern.stock == noStock) continue;
        for (std::int64_t n = 0; n < used.times; ++n) {
            auto& counts = plan.cuts[nextOf[used.pattern.stock]++];
            for (const auto& [kind, count] : used.pattern.cuts)
                counts[kind] = count;
        }
    }
    plan.cost = costOf(task, plan.cuts);
    return plan;
}

bool sameButOpened(BoxCost a, BoxCost b) {
    a.opened = b.opened = 0;
    return a == b;
}

struct Solved {
    BoxPlan plan;
    bool proved = false;
};

/// Quick plans first, then the exact search, then column generation where that was too much.
Solved solve(const BoxTask& task, Effort& effort, std::stop_token stop) {
    if (task.lengths.empty() || task.stock.empty()) {
        BoxPlan nothing{std::vector<Counts>(task.stock.size(), Counts(task.lengths.size(), 0)), {}};
        nothing.cost = costOf(task, nothing.cuts);
        return {nothing, true};
    }
    std::int64_t measure = 1;
    std::vector<std::size_t> firstOf;
    const auto problem = problemOf(task, measure, firstOf);
    auto whole = fillFalling(problem, stateOf(problem));
    auto best = boxPlanOf(task, whole, firstOf);
    if (auto full = fillFullest(problem, stateOf(problem), effort); full.cost < whole.cost) whole = full;
    if (auto plan = boxPlanOf(task, whole, firstOf); plan.cost < best.cost) best = plan;
    if (task.stock.size() <= mostOneByOne) {
        Effort share(effort.left() / searchShare, stop);
        auto found = searchAll(task, best, share);
        effort.spend(share.spent());
        if (found) return {std::move(*found), true};
    }
    if (!sameButOpened(best.cost, leastCost(task))) {
        const auto answer = dive(problem, whole, 0, effort);
        if (auto plan = boxPlanOf(task, answer.plan, firstOf); plan.cost < best.cost) best = std::move(plan);
    }
    const bool proved = sameButOpened(best.cost, leastCost(task));
    return {std::move(best), proved};
}

void addCuts(const Laid& laid, const BoxPlan& plan, RibbonCuts& out) {
    for (std::size_t s = 0; s < plan.cuts.size(); ++s) {
        RibbonCut cut;
        cut.onHand = laid.entry[s];
        std::int64_t used = 0;
        for (std::size_t k = 0; k < plan.cuts[s].size(); ++k) {
            if (plan.cuts[s][k] == 0) continue;
            cut.cuts.push_back({Millimetres(laid.task.lengths[k]), plan.cuts[s][k]});
            used += laid.task.lengths[k] * plan.cuts[s][k];
        }
        if (used == 0) continue;
        cut.left = Millimetres(laid.task.stock[s].length - used);
        cut.keep = cut.left.value > 0 && cut.left.value >= laid.task.keepFrom;
        if (!laid.task.stock[s].reel) out.fromEnds += Millimetres(used);
        const bool again = s > 0 && laid.entry[s - 1] == laid.entry[s] && plan.cuts[s - 1] == plan.cuts[s];
        if (again)
            ++out.cuts.back().times;
        else
            out.cuts.push_back(std::move(cut));
    }
}

void addMissing(const Laid& laid, const BoxPlan& plan, RibbonCuts& out) {
    out.missing = laid.tooLong;
    for (std::size_t k = 0; k < laid.task.lengths.size(); ++k) {
        std::int64_t done = 0;
        for (const auto& counts : plan.cuts)
            done += counts[k];
        if (done < laid.task.demand[k])
            out.missing.push_back({Millimetres(laid.task.lengths[k]), laid.task.demand[k] - done});
    }
    out.cost = plan.cost;
    for (const auto& piece : laid.tooLong)
        out.cost.missing += piece.length.value * piece.count;
}

Working workingOf(const RibbonBox& box, const RibbonCuts& out) {
    const auto mm = [](Step step, std::string what, std::int64_t value, Basis basis = Basis::computed,
                       const std::string& subject = {}) {
        return lineOf(step, std::move(what), value, Unit::millimetres, basis, {}, subject);
    };
    Working working;
    std::int64_t cutInto = 0, cut = 0, kept = 0;
    for (const auto& c : out.cuts) {
        const auto& on = box.onHand[c.onHand];
        working.push_back(mm(Step::given, on.kind == RibbonKind::reel ? "reel cut into" : "end cut into",
                             on.length.value * c.times, Basis::counted, on.subject));
        cutInto += on.length.value * c.times;
        cut += (on.length - c.left).value * c.times;
        kept += c.keep ? c.left.value * c.times : 0;
    }
    working.push_back(mm(Step::result, "ribbon cut into", cutInto));
    working.push_back(mm(Step::minus, "pieces cut", cut));
    working.push_back(mm(Step::minus, "left to keep", kept));
    working.push_back(mm(Step::result, "waste", out.cost.waste));
    if (out.cost.missing == 0) return working;
    for (const auto& piece : out.missing) {
        working.push_back(lineOf(Step::given, "pieces not cut", piece.count, Unit::pieces));
        working.push_back(mm(Step::times, "piece length", piece.length.value));
    }
    working.push_back(mm(Step::result, "ribbon missing", out.cost.missing));
    return working;
}

} // namespace

Result<RibbonCuts, Problem> cutFromBox(const RibbonBox& box, const CutEffort& steps, std::stop_token stop) {
    if (const auto p = checkBox(box, steps)) return *p;
    const auto kinds = kindsOf(box.pieces);
    if (!kinds.ok()) return kinds.error();
    const auto laid = layOut(box, *kinds);
    Effort effort(steps.steps, stop);
    const auto solved = solve(laid.task, effort, stop);
    RibbonCuts out;
    out.keepFrom = Millimetres(laid.task.keepFrom);
    addCuts(laid, solved.plan, out);
    addMissing(laid, solved.plan, out);
    out.proved = solved.proved;
    out.stopped = effort.stopped();
    out.steps = effort.spent();
    out.working = workingOf(box, out);
    return out;
}

} // namespace withy::cutting
