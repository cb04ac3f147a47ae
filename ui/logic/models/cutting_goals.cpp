// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/cutting_goals.h"

#include "core/plan/needs_plan.h"
#include "ui/logic/answers/garden_answers.h"
#include "ui/logic/models/stem_sources.h"

#include <algorithm>
#include <cstdlib>
#include <map>
#include <utility>

namespace withy::ui {

namespace {

/// One source of a slot's stems; a blank patch stands for the store and what is bought.
struct GoalPart {
    Id<model::Patch> patch;
    Id<model::Plant> plant;
    Day day;
    std::int64_t stems = 0;
    std::optional<CutTime> when{};
};

struct SlotGoal {
    std::int64_t need = 0;
    std::int64_t all = 0;
    bool orAll = false;
    bool personal = false;
    std::optional<Millimetres> length;
    std::vector<GoalPart> parts;
};

const plan::BookingPlan* cutPlanOf(const plan::Plan& plan, Id<model::Booking> booking) {
    const auto found = plan.bookings.find(booking);
    return found == plan.bookings.end() ? nullptr : found->second.get();
}

std::optional<Id<model::Patch>> firstPatchOf(const std::vector<const model::Patch*>& walk,
                                             Id<model::Plant> plant) {
    for (const auto* patch : walk)
        if (patch->plant == plant) return patch->id;
    return std::nullopt;
}

void addPart(std::vector<GoalPart>& parts, const GoalPart& part) {
    for (auto& p : parts) {
        if (p.patch != part.patch || p.plant != part.plant || p.day != part.day || p.when != part.when)
            continue;
        p.stems += part.stems;
        return;
    }
    parts.push_back(part);
}

/// Of a patch, the one that gives most; null when no patch gives any.
const GoalPart* largestPatch(const std::vector<GoalPart>& parts) {
    const GoalPart* most = nullptr;
    for (const auto& p : parts)
        if (p.patch && (!most || p.stems > most->stems)) most = &p;
    return most;
}

class Goals {
public:
    Goals(const model::Season& season, const plan::Plan& plan, const plan::BookingPlan& booking)
        : season_(season), booking_(booking), times_(plan, booking.booking), walk_(inWalkingOrder(season)) {}

    void add(const plan::SlotCover& slot) {
        SlotGoal goal;
        goal.all = slot.needed.value;
        readUses(slot, goal);
        const auto& likely = slot.at[plan::indexOf(plan::Level::likely)];
        for (const auto& piece : likely.pieces)
            if (piece.source == cover::Source::patch)
                addTimed(goal.parts,
                         {Id<model::Patch>(piece.from), piece.plant, piece.cut, piece.stems.value});
            else
                addPart(goal.parts, GoalPart{{}, piece.plant, piece.cut, piece.stems.value});
        if (likely.shortBy.value > 0) addShortage(slot, likely.shortBy.value, goal);
        goal.personal = isWorn(slot.line);
        goal.orAll = slot.at[plan::indexOf(plan::Level::cautious)].shortBy.value > 0;
        take(goal);
    }

    /// While nobody knows who gets which stems.
    void add(const plan::PlantNeed& need) {
        const auto patch = firstPatchOf(walk_, need.plant);
        if (!patch) return;
        SlotGoal goal;
        goal.need = need.need.need.value;
        goal.all = goal.need + need.need.spare.value;
        goal.length = need.longestCut;
        const bool inRound = need.round >= 0 && static_cast<std::size_t>(need.round) < booking_.rounds.size();
        const Day day = inRound ? booking_.rounds[static_cast<std::size_t>(need.round)].start.day
                                : booking_.makeUpStart.day;
        addTimed(goal.parts, {*patch, need.plant, day, goal.all});
        take(goal);
    }

    /// Stems that fill the last bunch are cut where most of their plant are.
    void fillBunches() {
        for (const auto& need : booking_.needs) {
            const auto extra = (need.need.total - need.need.need - need.need.spare).value;
            const CuttingGoal* most = nullptr;
            for (const auto& g : goals_)
                if (g.plant == need.plant && (!most || most->goal() < g.goal())) most = &g;
            if (!most || extra <= 0) continue;
            SlotGoal fill;
            fill.personal = most->personal;
            addTimed(fill.parts, {most->patch, most->plant, most->day, extra});
            for (const auto& part : fill.parts)
                put(part, 0, fill);
        }
    }

    std::vector<CuttingGoal> inOrder() {
        std::map<Id<model::Patch>, std::size_t> place;
        for (std::size_t i = 0; i < walk_.size(); ++i)
            place[walk_[i]->id] = i;
        std::vector<CuttingGoal> out;
        for (const auto& g : goals_)
            if (place.contains(g.patch) && g.goal() > 0) out.push_back(g);
        std::stable_sort(out.begin(), out.end(), [&](const auto& a, const auto& b) {
            return std::pair(place[a.patch], timeOf(a)) < std::pair(place[b.patch], timeOf(b));
        });
        return out;
    }

private:
    /// The cover foretells a day; the rounds that cut the stems may be on others. Each takes as many as the
    /// run-up has on it, the nearest first; what no round has room for goes with the nearest.
    void addTimed(std::vector<GoalPart>& parts, const GoalPart& foretold) {
        const std::pair key(foretold.patch, foretold.plant);
        const auto [known, isNew] = room_.try_emplace(key);
        if (isNew) known->second = times_.stemsOf(foretold.patch, foretold.plant);
        auto rounds = known->second;
        std::stable_sort(rounds.begin(), rounds.end(), [&](const auto& a, const auto& b) {
            const auto apart = [&](const auto& r) { return std::abs(r.first.from.day - foretold.day); };
            return apart(a) < apart(b);
        });
        auto rest = foretold.stems;
        for (const auto& [time, stems] : rounds) {
            const auto taken = std::min(rest, stems);
            if (taken <= 0) continue;
            addPart(parts, {foretold.patch, foretold.plant, time.from.day, taken, time});
            rest -= taken;
            for (auto& [at, left] : known->second)
                if (at == time) left -= taken;
        }
        if (rest <= 0) return;
        const auto when = times_.of(foretold.patch, foretold.plant, foretold.day);
        addPart(parts, {foretold.patch, foretold.plant, when ? when->from.day : foretold.day, rest, when});
    }

    static LocalTime timeOf(const CuttingGoal& goal) {
        return goal.when ? goal.when->from : LocalTime{goal.day, 0};
    }

    [[nodiscard]] bool isWorn(Id<model::Line> line) const {
        const auto* l = season_.lines.find(line);
        const auto* design = l ? season_.designs.find(l->design) : nullptr;
        if (!design) return false;
        using enum model::PieceKind;
        return design->kind == buttonhole || design->kind == corsage || design->kind == crown;
    }

    void readUses(const plan::SlotCover& slot, SlotGoal& goal) const {
        for (const auto& need : booking_.needs)
            for (const auto& use : need.uses) {
                if (use.line != slot.line || use.slot != slot.slot) continue;
                goal.need += use.stems.value;
                goal.length = use.cutLength;
            }
    }

    void addShortage(const plan::SlotCover& slot, std::int64_t stems, SlotGoal& goal) {
        if (const auto* most = largestPatch(goal.parts))
            return addTimed(goal.parts, {most->patch, most->plant, most->day, stems});
        for (const auto& choice : slot.choices) {
            const auto patch = firstPatchOf(walk_, choice.plant);
            if (!patch || choice.storeOnly) continue;
            return addTimed(goal.parts, {*patch, choice.plant, choice.best.value_or(choice.to), stems});
        }
        addPart(goal.parts, GoalPart{{}, {}, {}, stems});
    }

    /// The need is shared out over where the stems come from; the rest of each part is spare.
    void take(const SlotGoal& goal) {
        std::vector<double> weights;
        for (const auto& p : goal.parts)
            weights.push_back(static_cast<double>(p.stems) /
                              static_cast<double>(std::max<std::int64_t>(1, goal.all)));
        const auto needs = plan::shareOut(std::min(goal.need, goal.all), weights);
        for (std::size_t i = 0; i < goal.parts.size() && i < needs.size(); ++i)
            if (goal.parts[i].patch) put(goal.parts[i], needs[i], goal);
    }

    void put(const GoalPart& part, std::int64_t need, const SlotGoal& slot) {
        auto same = std::find_if(goals_.begin(), goals_.end(), [&](const CuttingGoal& g) {
            return g.patch == part.patch && g.plant == part.plant && g.day == part.day && g.when == part.when;
        });
        if (same == goals_.end()) {
            goals_.push_back({part.patch, part.plant, part.day, 0, 0, false, slot.personal, {}, part.when});
            same = goals_.end() - 1;
        }
        same->need += need;
        same->spare += part.stems - need;
        same->orAll = same->orAll || slot.orAll;
        same->personal = same->personal && slot.personal;
        if (slot.length && (!same->length || *same->length < *slot.length)) same->length = slot.length;
    }

    const model::Season& season_;
    const plan::BookingPlan& booking_;
    CutTimes times_;
    /// Stems that the rounds have and no goal has taken yet.
    std::map<std::pair<Id<model::Patch>, Id<model::Plant>>, std::vector<std::pair<CutTime, std::int64_t>>>
        room_;
    std::vector<const model::Patch*> walk_;
    std::vector<CuttingGoal> goals_;
};

} // namespace

std::vector<CuttingGoal> cuttingGoals(const model::Season& season, const plan::Plan& plan,
                                      Id<model::Booking> id) {
    const auto* booking = cutPlanOf(plan, id);
    if (!booking || !season.bookings.find(id)) return {};
    Goals goals(season, plan, *booking);
    const auto* cover = coverOf(plan, id);
    if (cover && !cover->slots.empty()) {
        for (const auto& slot : cover->slots)
            goals.add(slot);
    } else {
        for (const auto& need : booking->needs)
            goals.add(need);
    }
    goals.fillBunches();
    return goals.inOrder();
}

std::vector<CuttingGoal> goalsByPatch(const std::vector<CuttingGoal>& goals) {
    std::vector<CuttingGoal> out;
    std::int64_t most = 0;
    for (const auto& g : goals) {
        if (out.empty() || out.back().patch != g.patch || out.back().plant != g.plant) {
            out.push_back(g);
            most = g.goal();
            continue;
        }
        auto& sum = out.back();
        if (g.goal() > most) {
            sum.day = g.day;
            sum.when = g.when;
            most = g.goal();
        }
        sum.need += g.need;
        sum.spare += g.spare;
        sum.orAll = sum.orAll || g.orAll;
        sum.personal = sum.personal && g.personal;
        sum.length = std::max(sum.length, g.length);
    }
    return out;
}

std::map<Id<model::Plant>, std::int64_t> needByPlant(const std::vector<CuttingGoal>& goals) {
    std::map<Id<model::Plant>, std::int64_t> out;
    for (const auto& goal : goals)
        out[goal.plant] += goal.need;
    return out;
}

Day cuttingDay(const model::Season& season, const plan::Plan& plan, Id<model::Booking> id,
               std::optional<Day> today) {
    const auto* booking = season.bookings.find(id);
    if (!booking) return today.value_or(Day{});
    std::map<Day, std::int64_t> stems;
    for (const auto& goal : cuttingGoals(season, plan, id))
        stems[goal.day] += goal.goal();
    const Day event = booking->eventStart.day;
    if (stems.empty()) return today ? std::min(*today, event) : event;
    if (today && stems.begin()->first <= *today && *today <= event) return *today;
    return std::max_element(stems.begin(), stems.end(),
                            [](const auto& a, const auto& b) { return a.second < b.second; })
        ->first;
}

} // namespace withy::ui
