// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/bloom_strip_model.h"

#include "core/plan/forecast_plan.h"
#include "ui/logic/format.h"

#include <algorithm>
#include <map>

namespace withy::ui {

namespace {

constexpr int margin = 7;     ///< days left empty before the first stem and after the last
constexpr int farthest = 200; ///< days from the season's ends that are still shown
constexpr int shortest = 28;  ///< days shown at least

struct Stretch {
    std::optional<Day> from, to;

    void take(Day a, Day b) {
        from = from ? std::min(*from, a) : a;
        to = to ? std::max(*to, b) : b;
    }
};

struct Flowering {
    const model::Patch* patch;
    const garden::PatchForecast* forecast;
    bool leaf = false;
    int from = 0; ///< into forecast->days: the first and the last that have a hopeful stem
    int to = 0;
};

bool isLeaf(const model::Plant& p) {
    return p.foliage && !p.focal && !p.spike && !p.filler;
}

std::vector<Flowering> floweringOf(const model::Season& season, const plan::Plan& plan) {
    std::vector<Flowering> all;
    if (!plan.garden) return all;
    for (const auto& patch : season.patches) {
        const auto found = plan.garden->patches.find(patch.id);
        if (found == plan.garden->patches.end() || !found->second.forecast) continue;
        const auto* plant = season.plants.find(patch.plant);
        if (!plant) continue;
        const auto& forecast = *found->second.forecast;
        const auto stands = [](const garden::DayForecast& d) { return d.standing.hopeful.value > 0; };
        const auto& days = forecast.days;
        const auto begin = std::find_if(days.begin(), days.end(), stands);
        if (begin == days.end()) continue;
        const auto end = std::find_if(days.rbegin(), days.rend(), stands).base();
        all.push_back({&patch, &forecast, isLeaf(*plant), static_cast<int>(begin - days.begin()),
                       static_cast<int>(end - days.begin()) - 1});
    }
    if (std::all_of(all.begin(), all.end(), [](const auto& f) { return f.leaf; }))
        for (auto& f : all)
            f.leaf = false;
    return all;
}

bool isPinned(const model::Booking& b) {
    return b.standing != model::Standing::lost;
}

/// The season, its bookings before and after it too; without the ends in which nothing stands.
void setDays(StripFigures& f, const model::Season& season, const std::vector<Flowering>& flowering) {
    const auto& s = season.theSettings();
    const Day last = std::max(s.firstDay, s.lastDay);
    Stretch shown; // bookings first: nothing of them is cut off
    for (const auto& b : season.bookings) {
        const Day day = b.eventStart.day;
        if (isPinned(b) && s.firstDay - farthest <= day && day <= last + farthest) shown.take(day, day);
    }
    const Day from = shown.from ? std::min(*shown.from, s.firstDay) : s.firstDay;
    const Day to = shown.to ? std::max(*shown.to, last) : last;
    for (const auto& p : flowering) {
        const Day begins = p.forecast->from + p.from;
        const Day ends = p.forecast->from + p.to;
        if (begins <= to && from <= ends) shown.take(std::max(begins, from), std::min(ends, to));
    }
    if (!shown.from) shown.take(from, to);
    f.first = *shown.from - margin;
    f.days = std::max(*shown.to + margin - f.first + 1, shortest);
}

void addTo(StripLevels& sum, const garden::StemLevels& day) {
    sum.cautious += day.cautious.value;
    sum.likely += day.likely.value;
    sum.hopeful += day.hopeful.value;
}

int peakOf(const std::vector<StripLevels>& days) {
    const auto most = std::max_element(days.begin(), days.end(),
                                       [](const auto& a, const auto& b) { return a.likely < b.likely; });
    return static_cast<int>(most - days.begin());
}

void addBands(StripFigures& f, const model::Season& season, const std::vector<Flowering>& flowering) {
    std::map<Id<model::Plant>, StripBand> bands;
    const auto days = static_cast<std::size_t>(f.days);
    for (const auto& p : flowering) {
        auto* band = p.leaf ? nullptr : &bands[p.patch->plant].days;
        if (band) band->resize(days);
        auto& sums = p.leaf ? f.leaf : f.sums;
        for (int i = p.from; i <= p.to; ++i) {
            const int at = p.forecast->from + i - f.first;
            if (at < 0 || at >= f.days) continue;
            const auto& standing = p.forecast->days[static_cast<std::size_t>(i)].standing;
            if (band) addTo((*band)[static_cast<std::size_t>(at)], standing);
            addTo(sums[static_cast<std::size_t>(at)], standing);
        }
    }
    for (auto& [plant, band] : bands) {
        band.peak = peakOf(band.days);
        if (band.days[static_cast<std::size_t>(band.peak)].likely == 0) continue;
        const auto* record = season.plants.find(plant);
        band.plant = plant;
        band.name = text(record->name);
        band.colour = record->colour1;
        f.bands.push_back(std::move(band));
    }
    std::stable_sort(f.bands.begin(), f.bands.end(),
                     [](const auto& a, const auto& b) { return a.peak < b.peak; });
}

/// "Dahlia" of "Dahlia, plum", unless there is another dahlia.
void nameKinds(std::vector<StripBand>& bands) {
    std::map<QString, int> count;
    const auto kindOf = [](const StripBand& b) { return b.name.section(QLatin1Char(','), 0, 0).trimmed(); };
    for (const auto& b : bands)
        ++count[kindOf(b)];
    for (auto& b : bands) {
        const QString kind = kindOf(b);
        b.kind = kind.isEmpty() || count[kind] > 1 ? b.name : kind;
    }
}

void addPins(StripFigures& f, const model::Season& season, const plan::Plan& plan) {
    for (const auto& b : season.bookings) {
        const int day = b.eventStart.day - f.first;
        if (!isPinned(b) || day < 0 || day >= f.days) continue;
        f.pins.push_back({b.id, day, text(b.title), b.standing, coverFacts(plan.cover.get(), b.id)});
    }
    std::stable_sort(f.pins.begin(), f.pins.end(),
                     [](const auto& a, const auto& b) { return a.day < b.day; });
}

} // namespace

std::int64_t StripFigures::most() const {
    std::int64_t most = 0;
    for (const auto& day : sums)
        most = std::max(most, day.likely);
    return most;
}

StripFigures stripFigures(const model::Season& season, const plan::Plan& plan, std::optional<Day> today) {
    StripFigures f;
    f.known = plan.garden != nullptr;
    const auto flowering = floweringOf(season, plan);
    setDays(f, season, flowering);
    f.sums.resize(static_cast<std::size_t>(f.days));
    f.leaf.resize(static_cast<std::size_t>(f.days));
    addBands(f, season, flowering);
    nameKinds(f.bands);
    addPins(f, season, plan);
    if (today && f.first <= *today && *today < f.first + f.days) f.today = *today - f.first;
    return f;
}

} // namespace withy::ui
