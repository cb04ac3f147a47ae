// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/shed/ribbon_days.h"

#include "core/base/working_lines.h"
#include "core/cutting/ribbon_box.h"

#include <algorithm>

namespace withy::plan {

namespace {

using RibbonId = Id<model::Ribbon>;

/// A few milliseconds at worst: the plan follows every key that is pressed. The boxes of a shed take far
/// less.
constexpr cutting::CutEffort effortOfADay{6'000'000};

/// What one day asks of each ribbon.
struct RibbonDayAsked {
    std::vector<Id<model::Booking>> bookings;
    std::map<RibbonId, std::vector<RibbonPieces>> wanted;
};

std::map<Day, RibbonDayAsked> askedByDay(const ShedInput& in) {
    std::map<Day, RibbonDayAsked> days;
    for (const auto& [id, booked] : in.plan.bookings) {
        const auto* booking = in.season().bookings.find(id);
        if (!booking || !stillTakes(booking->standing) || booked->kit.ribbons.empty()) continue;
        if (ribbonIsWrittenBack(in.season(), id)) continue;
        auto& day = days[booked->makeUpStart.day];
        day.bookings.push_back(id);
        for (const auto& need : booked->kit.ribbons) {
            auto& wanted = day.wanted[need.ribbon];
            for (const auto& cut : need.cuts)
                wanted.push_back({cut.line, cut.each, cut.pieces.value});
        }
    }
    return days;
}

/// Ends before reels, the shorter first: as the cutting plan takes them.
void sortShelf(std::vector<RibbonOnShelf>& shelf) {
    std::stable_sort(shelf.begin(), shelf.end(), [](const RibbonOnShelf& a, const RibbonOnShelf& b) {
        return a.kind != b.kind ? a.kind == model::RibbonPieceKind::end : a.length < b.length;
    });
}

std::map<RibbonId, std::vector<RibbonOnShelf>> shelvesOf(const model::Season& season) {
    std::map<RibbonId, std::vector<RibbonOnShelf>> shelves;
    for (const auto& l : season.ribbonLengths) {
        auto& shelf = shelves[l.ribbon]; // measured, even when nothing is on it
        if (l.length.value > 0) shelf.push_back({l.id, l.kind, l.length, l.dyeLot});
    }
    return shelves;
}

cutting::RibbonBox boxOf(const RibbonCutPlan& plan) {
    cutting::RibbonBox box;
    for (const auto& on : plan.shelf)
        box.onHand.push_back(
            {on.kind == model::RibbonPieceKind::reel ? cutting::RibbonKind::reel : cutting::RibbonKind::end,
             on.length, 1, on.dyeLot});
    for (const auto& pieces : plan.wanted)
        box.pieces.push_back({pieces.each, pieces.count});
    box.keepFrom = plan.keepFrom;
    return box;
}

/// Pieces of one length belong to whichever line wants that length next, in the order the lines are in.
class RibbonDealer {
public:
    explicit RibbonDealer(const std::vector<RibbonPieces>& wanted) : left_(wanted) {}

    std::vector<RibbonPieces> take(const std::vector<cutting::PieceWish>& cuts) {
        std::vector<RibbonPieces> out;
        for (const auto& cut : cuts) {
            std::int64_t count = cut.count;
            for (auto& pieces : left_) {
                const auto now = pieces.each == cut.length ? std::min(count, pieces.count) : 0;
                if (now == 0) continue;
                out.push_back({pieces.line, pieces.each, now});
                pieces.count -= now;
                count -= now;
            }
        }
        return out;
    }

private:
    std::vector<RibbonPieces> left_;
};

void fillBars(const cutting::RibbonCuts& cuts, RibbonCutPlan& plan) {
    RibbonDealer dealer(plan.wanted);
    for (const auto& on : plan.shelf)
        plan.bars.push_back({on, {}, on.length, true});
    for (const auto& cut : cuts.cuts) {
        auto& bar = plan.bars[cut.onHand];
        bar.cuts = dealer.take(cut.cuts);
        bar.left = cut.left;
        bar.keep = cut.keep;
    }
    plan.missing = dealer.take(cuts.missing);
}

/// Nothing when it was stopped. What is beyond all cutting stays as it was asked for, without a cut.
std::shared_ptr<const RibbonCutPlan> cutPlan(RibbonCutPlan plan, std::stop_token stop) {
    for (const auto& pieces : plan.wanted)
        plan.needed += pieces.each * pieces.count;
    const auto cuts = cutting::cutFromBox(boxOf(plan), effortOfADay, stop);
    if (!cuts.ok()) return std::make_shared<const RibbonCutPlan>(std::move(plan));
    if (cuts->stopped) return nullptr;
    fillBars(*cuts, plan);
    plan.missingLength = Millimetres(cuts->cost.missing);
    plan.waste = Millimetres(cuts->cost.waste);
    plan.fromEnds = cuts->fromEnds;
    plan.proved = cuts->proved;
    plan.working = cuts->working;
    return std::make_shared<const RibbonCutPlan>(std::move(plan));
}

bool sameAsked(const RibbonCutPlan& a, const RibbonCutPlan& b) {
    return a.ribbon == b.ribbon && a.keepFrom == b.keepFrom && a.counted == b.counted && a.shelf == b.shelf &&
           a.wanted == b.wanted;
}

std::shared_ptr<const RibbonCutPlan> keptPlan(const ShedPlan* before, Day day, const RibbonCutPlan& asked) {
    if (!before) return nullptr;
    for (const auto& was : before->ribbon) {
        if (was->day != day) continue;
        for (const auto& plan : was->ribbons)
            if (sameAsked(*plan, asked)) return plan;
    }
    return nullptr;
}

/// What the day leaves on the shelf.
std::vector<RibbonOnShelf> leftOnShelf(const RibbonCutPlan& plan) {
    std::vector<RibbonOnShelf> shelf;
    for (const auto& bar : plan.bars) {
        if (!bar.keep) continue;
        shelf.push_back(bar.from);
        shelf.back().length = bar.left;
    }
    return shelf;
}

std::map<RibbonId, Millimetres> shortestWanted(const std::map<Day, RibbonDayAsked>& days) {
    std::map<RibbonId, Millimetres> shortest;
    for (const auto& [day, asked] : days)
        for (const auto& [ribbon, wanted] : asked.wanted)
            for (const auto& pieces : wanted) {
                const auto [at, fresh] = shortest.emplace(ribbon, pieces.each);
                if (!fresh) at->second = std::min(at->second, pieces.each);
            }
    return shortest;
}

void addShades(const ShedInput& in, Id<model::Booking> booking, RibbonDay& day) {
    for (const auto& line : in.plan.bookings.at(booking)->lines) {
        const auto* design = in.season().designs.find(line.design);
        const auto& ribbon = in.plan.designs.at(line.design)->ribbon;
        if (!design || !design->ribbonMix || !ribbon || ribbon->length.value == 0) continue;
        const auto& parts = Index::of(in.index.mixParts, *design->ribbonMix);
        if (parts.empty()) continue;
        RibbonShades shades{line.line, {}, {}};
        std::vector<double> shares;
        for (const auto* part : parts) {
            shades.ribbons.push_back(part->ribbon);
            shares.push_back(part->share);
        }
        const auto* mix = in.season().ribbonMixes.find(*design->ribbonMix);
        auto spread = cutting::spreadShades(line.pieces.value, shares, mix && mix->notTwoAlikeSideBySide);
        if (!spread.ok()) continue;
        shades.spread = std::move(spread).value();
        day.shades.push_back(std::move(shades));
    }
}

/// What it is that is beyond all cutting, and the most it may be.
Finding notCutFinding(const RibbonCutPlan& plan, std::string ribbon, Day day) {
    const auto cuts = cutting::cutFromBox(boxOf(plan), effortOfADay); // refused before anything is cut
    std::string field;
    double most = 0;
    if (!cuts.ok()) {
        field = cuts.error().field;
        most = field == "pieces"            ? static_cast<double>(cutting::mostPieces)
               : field == "kinds"           ? static_cast<double>(cutting::mostKinds)
               : field == "lengths_on_hand" ? static_cast<double>(cutting::mostOnHand)
                                            : static_cast<double>(cutting::longestRoll);
    }
    return findingOf(ShedCode::ribbonNotCut, Severity::warning,
                     {model::TableKind::ribbons, plan.ribbon.value},
                     {std::move(ribbon), day.iso(), std::move(field)}, {most});
}

bool saysSoItself(const ShedInput& in, const RibbonDay& day, RibbonId ribbon) {
    for (const auto id : day.bookings)
        for (const auto& need : in.plan.bookings.at(id)->kit.ribbons)
            if (need.ribbon == ribbon && need.missing && need.missing->value > 0) return true;
    return false;
}

} // namespace

bool ribbonIsOver(const model::Season& season, const RibbonDay& day, std::optional<Day> today) {
    return today && std::none_of(day.bookings.begin(), day.bookings.end(), [&](Id<model::Booking> id) {
               const auto* booking = season.bookings.find(id);
               return booking && *today <= booking->eventEnd.day;
           });
}

bool ribbonIsNotCut(const RibbonCutPlan& plan) {
    return plan.needed.value > 0 && plan.bars.empty() && plan.missing.empty();
}

bool ribbonIsWrittenBack(const model::Season& season, Id<model::Booking> booking) {
    return std::any_of(season.stepMarks.begin(), season.stepMarks.end(), [&](const model::StepMark& m) {
        return m.step == model::StepKind::cutRibbon && m.booking == booking &&
               m.number == writtenBackNumber && m.done;
    });
}

std::vector<std::shared_ptr<const RibbonDay>> ribbonDays(const ShedInput& in) {
    const auto days = askedByDay(in);
    const auto shortest = shortestWanted(days);
    auto shelves = shelvesOf(in.season());
    std::vector<std::shared_ptr<const RibbonDay>> out;
    for (const auto& [when, asked] : days) {
        RibbonDay day{when, asked.bookings, {}, {}};
        for (const auto& [ribbon, wanted] : asked.wanted) {
            const auto shelf = shelves.find(ribbon);
            RibbonCutPlan plan;
            plan.ribbon = ribbon;
            plan.counted = shelf != shelves.end();
            if (plan.counted) plan.shelf = shelf->second;
            sortShelf(plan.shelf);
            plan.wanted = wanted;
            plan.keepFrom = shortest.at(ribbon);
            auto done = keptPlan(in.before, when, plan);
            if (!done) done = cutPlan(std::move(plan), in.stop);
            if (!done) continue;
            if (done->counted && !ribbonIsNotCut(*done)) shelves[ribbon] = leftOnShelf(*done);
            day.ribbons.push_back(std::move(done));
        }
        for (const auto id : day.bookings)
            addShades(in, id, day);
        out.push_back(std::make_shared<const RibbonDay>(std::move(day)));
    }
    return out;
}

std::vector<ShedFinding> ribbonFindings(const ShedInput& in,
                                        const std::vector<std::shared_ptr<const RibbonDay>>& days) {
    std::vector<ShedFinding> out;
    for (const auto& l : in.season().ribbonLengths) {
        if (l.length.value > 0) continue;
        const auto* ribbon = in.season().ribbons.find(l.ribbon);
        out.push_back({std::nullopt, findingOf(ShedCode::ribbonLengthNought, Severity::warning,
                                               {model::TableKind::ribbons, l.ribbon.value},
                                               {ribbon ? ribbon->name : std::string()})});
    }
    for (const auto& day : days)
        for (const auto& plan : day->ribbons) {
            const auto* ribbon = in.season().ribbons.find(plan->ribbon);
            if (ribbonIsNotCut(*plan))
                out.push_back({day->bookings.front(),
                               notCutFinding(*plan, ribbon ? ribbon->name : std::string(), day->day)});
            if (!plan->counted || plan->missingLength.value == 0 || saysSoItself(in, *day, plan->ribbon))
                continue;
            const auto* line =
                plan->missing.empty() ? nullptr : in.season().lines.find(plan->missing.front().line);
            out.push_back({line ? line->booking : day->bookings.front(),
                           findingOf(ShedCode::ribbonRunsOut, Severity::warning,
                                     {model::TableKind::ribbons, plan->ribbon.value},
                                     {ribbon ? ribbon->name : std::string(), day->day.iso()},
                                     {static_cast<double>(plan->missingLength.value)})});
        }
    return out;
}

} // namespace withy::plan
