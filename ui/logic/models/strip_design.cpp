// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/strip_design.h"

#include "core/plan/forecast_plan.h"
#include "ui/logic/format.h"

#include <QCoreApplication>

#include <algorithm>

namespace withy::ui {

namespace {

struct StripDesignSay {
    Q_DECLARE_TR_FUNCTIONS(StripDesign)
};

using Days = std::vector<char>;

/// Days on which one of the plants has a likely stem; empty when none of them stands in a patch.
Days bloomOf(const std::set<Id<model::Plant>>& plants, const model::Season& season, const plan::Plan& plan,
             const StripFigures& figures) {
    Days days;
    for (const auto& patch : season.patches) {
        if (!plants.contains(patch.plant)) continue;
        days.resize(static_cast<std::size_t>(figures.days));
        const auto found = plan.garden->patches.find(patch.id);
        if (found == plan.garden->patches.end() || !found->second.forecast) continue;
        const auto& forecast = *found->second.forecast;
        for (std::size_t i = 0; i < forecast.days.size(); ++i) {
            const int at = forecast.from + static_cast<int>(i) - figures.first;
            if (at >= 0 && at < figures.days && forecast.days[i].standing.likely.value > 0)
                days[static_cast<std::size_t>(at)] = 1;
        }
    }
    return days;
}

std::vector<std::pair<int, int>> spansOf(const Days& days) {
    std::vector<std::pair<int, int>> spans;
    for (int d = 0; d < static_cast<int>(days.size()); ++d) {
        if (!days[static_cast<std::size_t>(d)]) continue;
        if (spans.empty() || spans.back().second + 1 < d) spans.emplace_back(d, d);
        spans.back().second = d;
    }
    return spans;
}

} // namespace

StripDesign stripDesign(const model::Season& season, const plan::Plan& plan, const StripFigures& figures,
                        Id<model::Design> design) {
    StripDesign held;
    std::map<Id<model::Slot>, std::set<Id<model::Plant>>> slots;
    for (const auto& slot : season.slots)
        if (slot.design == design) slots[slot.id];
    for (const auto& choice : season.slotPlants) {
        const auto slot = slots.find(choice.slot);
        if (slot == slots.end()) continue;
        slot->second.insert(choice.plant);
        held.plants.insert(choice.plant);
    }
    if (!plan.garden) return held;
    Days all;
    for (const auto& [slot, plants] : slots) {
        const Days days = bloomOf(plants, season, plan, figures);
        if (days.empty()) continue;
        if (all.empty()) all.assign(days.size(), 1);
        std::transform(all.begin(), all.end(), days.begin(), all.begin(),
                       [](char a, char b) { return a && b; });
    }
    held.spans = spansOf(all);
    return held;
}

QString stripDesignWords(const model::Season& season, const StripFigures& figures, Id<model::Design> design,
                         const StripDesign& held) {
    const auto* record = season.designs.find(design);
    if (!record || held.plants.empty()) return {};
    if (held.spans.empty())
        return StripDesignSay::tr("%1: there is no day on which all its slots bloom").arg(text(record->name));
    QStringList spans;
    for (const auto& [from, to] : held.spans)
        spans << (from == to ? shortDay(figures.dayAt(from))
                             : StripDesignSay::tr("%1 to %2")
                                   .arg(shortDay(figures.dayAt(from)), shortDay(figures.dayAt(to))));
    return StripDesignSay::tr("%1: all slots bloom %2")
        .arg(text(record->name), spans.join(QStringLiteral(", ")));
}

} // namespace withy::ui
