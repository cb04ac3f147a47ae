// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/design_bloom.h"

#include "core/plan/forecast_plan.h"
#include "ui/logic/format.h"
#include "ui/logic/models/booking_groups.h"

#include <QCoreApplication>

#include <algorithm>
#include <set>
#include <vector>

namespace withy::ui {

namespace {

struct DesignBloomSay {
    Q_DECLARE_TR_FUNCTIONS(DesignBloom)
};

using Days = std::vector<char>; ///< of the season, in order
using Plants = std::set<Id<model::Plant>>;

/// The days on which each plant that stands in a patch has a likely stem.
std::map<Id<model::Plant>, Days> daysOfPlants(const model::Season& season, const plan::ForecastPlan& garden) {
    const auto& s = season.theSettings();
    const int length = s.lastDay - s.firstDay + 1;
    std::map<Id<model::Plant>, Days> all;
    for (const auto& patch : season.patches) {
        auto& days = all[patch.plant];
        days.resize(static_cast<std::size_t>(std::max(0, length)));
        const auto found = garden.patches.find(patch.id);
        if (found == garden.patches.end() || !found->second.forecast) continue;
        const auto& forecast = *found->second.forecast;
        for (std::size_t i = 0; i < forecast.days.size(); ++i) {
            const int at = forecast.from + static_cast<int>(i) - s.firstDay;
            if (at >= 0 && at < length && forecast.days[i].standing.likely.value > 0)
                days[static_cast<std::size_t>(at)] = 1;
        }
    }
    return all;
}

/// The days on which every slot that grows here has one; nothing when none does.
std::optional<Days> daysOfAll(const std::map<Id<model::Slot>, Plants>& slots,
                              const std::map<Id<model::Plant>, Days>& plants) {
    std::optional<Days> all;
    for (const auto& [slot, choices] : slots) {
        std::optional<Days> any;
        for (const auto plant : choices) {
            const auto found = plants.find(plant);
            if (found == plants.end()) continue;
            if (!any) any.emplace(found->second.size());
            std::transform(any->begin(), any->end(), found->second.begin(), any->begin(),
                           [](char a, char b) { return static_cast<char>(a || b); });
        }
        if (!any) continue;
        if (!all) all.emplace(any->size(), char{1});
        std::transform(all->begin(), all->end(), any->begin(), all->begin(),
                       [](char a, char b) { return static_cast<char>(a && b); });
    }
    return all;
}

DesignBloom bloomOfDays(const Days& days, Day firstDay, Day monday) {
    DesignBloom bloom;
    const auto at = std::find(days.begin(), days.end(), char{1});
    if (at != days.end()) bloom.first = firstDay + static_cast<int>(at - days.begin());
    bloom.inWeek = false;
    for (int d = 0; d < 7; ++d) {
        const int i = monday + d - firstDay;
        if (i >= 0 && i < static_cast<int>(days.size()) && days[static_cast<std::size_t>(i)])
            bloom.inWeek = true;
    }
    return bloom;
}

} // namespace

DesignBlooms designBlooms(const model::Season& season, const plan::Plan& plan, Day monday) {
    DesignBlooms blooms;
    if (!plan.garden) return blooms;
    std::map<Id<model::Slot>, Id<model::Design>> owners;
    std::map<Id<model::Design>, std::map<Id<model::Slot>, Plants>> slots;
    for (const auto& slot : season.slots)
        owners.emplace(slot.id, slot.design);
    for (const auto& choice : season.slotPlants) {
        const auto owner = owners.find(choice.slot);
        if (owner != owners.end()) slots[owner->second][choice.slot].insert(choice.plant);
    }
    const auto plants = daysOfPlants(season, *plan.garden);
    for (const auto& design : season.designs) {
        const auto days = daysOfAll(slots[design.id], plants);
        blooms.emplace(design.id,
                       days ? bloomOfDays(*days, season.theSettings().firstDay, monday) : DesignBloom());
    }
    return blooms;
}

QString designsInBloomWords(const DesignBlooms& blooms) {
    if (blooms.empty()) return {};
    const auto now =
        std::count_if(blooms.begin(), blooms.end(), [](const auto& one) { return one.second.inWeek; });
    return DesignBloomSay::tr("%1 of %n design(s) can be made this week.", nullptr,
                              static_cast<int>(blooms.size()))
        .arg(whole(now));
}

QString inBloomWords(Day monday) {
    return DesignBloomSay::tr("In bloom %1").arg(weekSpanWords(monday));
}

QString outOfBloomWords(const DesignBloom& bloom) {
    if (!bloom.first) return DesignBloomSay::tr("not this season");
    return DesignBloomSay::tr("from %1").arg(shortDay(*bloom.first).section(QLatin1Char(' '), 1));
}

QString drawnInLineWords(const DesignBloom& bloom, Day monday) {
    if (bloom.inWeek) return {};
    const QString week = weekSpanWords(monday);
    return bloom.first ? DesignBloomSay::tr("Drawn in line: not all of it is in bloom %1. The date is its "
                                            "first likely day this season.")
                             .arg(week)
                       : DesignBloomSay::tr("Drawn in line: there is no day this season on which all of it "
                                            "is in bloom.");
}

} // namespace withy::ui
