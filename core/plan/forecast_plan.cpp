// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/forecast_plan.h"

#include "core/base/working_lines.h"
#include "core/model/origin.h"
#include "core/plan/forecast_plan_weather.h"
#include "core/plan/forecast_plan_years.h"
#include "core/plan/plant_facts.h"

#include <algorithm>
#include <cmath>

namespace withy::plan {

namespace {

using garden::Dates;
using garden::Sourced;
using model::Patch;
using model::Plant;
using model::TableKind;

constexpr StandIn usualBase{5, Basis::commonPractice, "planning default for plants of cool springs"};
constexpr StandIn usualShare{0.8, Basis::commonPractice, "most garden plants move with the warmth"};
constexpr StandIn usualHold{2, Basis::commonPractice, "two days on the plant"};

// Standard deviation of a first cut about what is foretold, days (own choice: the calendar misses the longest
// series this was tried on, 84 years of cherry blossom at Washington, by 7.5; warmth without noted years
// is trusted a little more).
constexpr double calendarSpread = 7;
constexpr double warmthSpread = 5;
constexpr double normal60 = 0.8416; ///< half width of the middle 60 % of a normal, standard deviations
constexpr int farFromSeason = 370;
constexpr int aboutTheSeason = 60; ///< days before it in which a first cut may lie

/// What the planner knows of a plant's heat.
struct HeatFacts {
    Sourced base;
    std::optional<Sourced> ceiling;
    Sourced share;
    Sourced hold;

    [[nodiscard]] garden::HeatThresholds thresholds() const {
        return {base.value, ceiling ? std::optional(ceiling->value) : std::nullopt};
    }
};

class Forecasting {
public:
    Forecasting(const Index& index, const model::Season& season, const ForecastOptions& options)
        : index_(index), season_(season), options_(options), weather_(season) {}

    ForecastPlan run() {
        out_.findings = weather_.findings;
        out_.filledDays = weather_.filledDays;
        if (weather_.warmth()) {
            out_.measuredDays = weather_.warmth()->measured;
            out_.forecastDays = weather_.warmth()->forecast;
        }
        out_.fits = fitPlants(season_, weather_, out_.findings);
        gather();
        findLead();
        for (const auto& patch : season_.patches)
            out_.patches.emplace(patch.id, outlook(patch));
        for (const auto& [patch, walks] : walks_)
            for (const auto* w : walks)
                if (season_.patches.find(patch) == nullptr)
                    find(FindingCode::walkWithoutPatch, Severity::warning, {TableKind::walks, w->id.value},
                         {w->date.iso()}, {static_cast<double>(patch.value)});
        std::stable_sort(out_.findings.begin(), out_.findings.end(),
                         [](const auto& a, const auto& b) { return a.place < b.place; });
        return std::move(out_);
    }

private:
    void find(FindingCode code, Severity severity, model::Ref place, std::vector<std::string> subjects,
              std::vector<double> numbers = {}) {
        out_.findings.push_back({code, severity, place, std::move(subjects), std::move(numbers)});
    }

    void find(FindingCode code, Severity severity, const Patch& patch, std::vector<std::string> subjects = {},
              std::vector<double> numbers = {}) {
        subjects.insert(subjects.begin(), patch.label);
        find(code, severity, {TableKind::patches, patch.id.value}, std::move(subjects), std::move(numbers));
    }

    void gather() {
        for (const auto& w : season_.walks)
            walks_[w.patch].push_back(&w);
        for (const auto& t : season_.tallies) {
            const auto* round = season_.rounds.find(t.round);
            if (round != nullptr && t.cut) cuts_[t.patch].emplace_back(round->from.day, t.cut->value);
        }
        for (const auto& p : season_.patches) {
            const auto& s = season_.theSettings();
            if (!p.firstCut || *p.firstCut < s.firstDay - aboutTheSeason || s.lastDay < *p.firstCut)
                continue; // mistyped: it must not steer its neighbours
            const auto [at, fresh] = earliest_.emplace(p.plant, *p.firstCut);
            if (!fresh) at->second = std::min(at->second, *p.firstCut);
        }
    }

    void findLead() {
        if (!weather_.moves()) return;
        const auto today = options_.today ? options_.today : weather_.warmth()->lastMeasured;
        if (!today) return;
        const Day origin = garden::coldestBefore(*weather_.normals(), *today);
        const Sourced base{usualBase.value, usualBase.basis, usualBase.source};
        out_.lead = garden::seasonLead(weather_.sums({base.value, std::nullopt}), origin, *today, base);
    }

    const HeatFacts& factsOf(Id<Plant> id) {
        const auto known = facts_.find(id);
        if (known != facts_.end()) return known->second;
        static const Plant nobody;
        const Plant* found = season_.plants.find(id);
        const Plant& plant = found != nullptr ? *found : nobody;
        PlantFacts facts(index_, plant);
        HeatFacts heat;
        heat.base = facts.get("base_celsius", plant.baseCelsius, usualBase);
        heat.ceiling = facts.maybe("ceiling_celsius", plant.ceilingCelsius);
        heat.share = facts.get("heat_share", plant.heatShare, usualShare);
        heat.hold = facts.get("hold_days", plant.holdDays, usualHold);
        const model::Ref place{TableKind::plants, id.value};
        if (garden::heatUnitsTrouble(heat.thresholds())) {
            find(FindingCode::heatFactsImpossible, Severity::fault, place, {plant.name});
            heat.base = {usualBase.value, usualBase.basis, usualBase.source};
            heat.ceiling.reset();
        }
        auto missing = facts.missing();
        if (!missing.empty()) {
            missing.insert(missing.begin(), plant.name);
            find(FindingCode::heatFactsMissing, Severity::note, place, std::move(missing));
        }
        return facts_.emplace(id, std::move(heat)).first->second;
    }

    /// The usual dates, sound and near the season; the peak two fifths of the way where it is blank.
    std::optional<Dates> usualOf(const Patch& p) {
        if (!p.firstCut || !p.lastCut) {
            find(FindingCode::patchWithoutDates, Severity::note, p);
            return std::nullopt;
        }
        const Dates d{*p.firstCut, p.peakCut.value_or(*p.firstCut + (*p.lastCut - *p.firstCut) * 2 / 5),
                      *p.lastCut};
        if (d.peak < d.first || d.last < d.peak) {
            find(FindingCode::patchDatesOutOfOrder, Severity::fault, p,
                 {d.first.iso(), d.peak.iso(), d.last.iso()});
            return std::nullopt;
        }
        const auto& s = season_.theSettings();
        if (d.first < s.firstDay || s.lastDay < d.last)
            find(FindingCode::patchDatesOutOfSeason, Severity::warning, p, {d.first.iso(), d.last.iso()});
        if (d.first < s.firstDay - farFromSeason || s.lastDay + farFromSeason < d.last) return std::nullopt;
        return d;
    }

    PatchOutlook outlook(const Patch& patch) {
        PatchOutlook o;
        o.patch = patch.id;
        const HeatFacts& facts = factsOf(patch.plant);
        o.holdDays = static_cast<int>(std::clamp(facts.hold.value, 0.0, 90.0));
        o.usual = usualOf(patch);
        if (o.usual) {
            const double spread = moveDates(patch, facts, o);
            const Sourced stems = stemsOf(patch, facts);
            if (stems.basis == Basis::notKnown) {
                find(FindingCode::patchWithoutStems, Severity::note, patch);
            } else {
                o.usualCurve = garden::bloomCurve(*o.usual, stems.value);
                forecastStems(patch, facts, stems, spread, o);
            }
        }
        if (!o.forecast) nameUnusedWalks(patch);
        return o;
    }

    /// Sets this year's dates; returns the standard deviation of what they are trusted to.
    double moveDates(const Patch& patch, const HeatFacts& facts, PatchOutlook& o) {
        o.by = DatesBy::calendar;
        o.dates = o.usual;
        double spread = calendarSpread;
        if (weather_.moves()) {
            garden::FloweringInput in;
            in.patch = patch.label;
            in.usual = *o.usual;
            in.base = facts.base;
            in.ceiling = facts.ceiling;
            in.heatShare = facts.share;
            in.heatShare.value = std::clamp(in.heatShare.value, 0.0, 1.0);
            in.underCover = patch.underCover;
            in.origin = garden::originFor(*weather_.normals(), o.usual->first);
            auto moved = garden::flowering(in, weather_.sums(facts.thresholds()));
            if (moved) {
                o.by = DatesBy::warmth;
                o.dates = moved->dates;
                o.datesWorking = std::move(moved).value().working;
                spread = calendarSpread + in.heatShare.value * (warmthSpread - calendarSpread);
            }
        }
        o.hopefulFirst = o.dates->first - static_cast<int>(std::lround(normal60 * spread));
        o.cautiousFirst = o.dates->first + static_cast<int>(std::lround(normal60 * spread));
        spread = takeYears(patch, o).value_or(spread);
        if (o.datesWorking.empty())
            o.datesWorking = {lineOf(Step::result, "usual first cut",
                                     static_cast<double>(o.dates->first.number) * 1440, Unit::time,
                                     Basis::mine, {}, patch.label)};
        o.daysEarly = o.usual->first - o.dates->first;
        return spread;
    }

    /// The plant's own noted years, where they foretell better by warmth than by the calendar.
    std::optional<double> takeYears(const Patch& patch, PatchOutlook& o) {
        const auto fit = out_.fits.find(patch.plant);
        if (fit == out_.fits.end() || !weather_.moves() || fit->second.warmthShare <= 0) return std::nullopt;
        const auto& w = *weather_.warmth();
        const garden::BloomOutlook known{w.from, w.year, weather_.knownDays(), w.spread};
        const auto begin = earliest_.find(patch.plant);
        if (begin == earliest_.end()) return std::nullopt;
        const Day earliest = begin->second;
        const auto f = garden::predictBloom(fit->second, known, earliest);
        if (!f.byWarmth) return std::nullopt;
        const int behind = o.usual->first - earliest; // patches of one plant keep their distance
        if (std::abs(f.day + behind - o.usual->first) > garden::farthestMove) return std::nullopt;
        const int moved = f.day + behind - o.dates->first;
        o.by = DatesBy::pastYears;
        o.dates = Dates{o.dates->first + moved, o.dates->peak + moved, o.dates->last + moved};
        o.hopefulFirst = f.hopeful + behind;
        o.cautiousFirst = f.cautious + behind;
        o.datesWorking = fit->second.working;
        o.datesWorking.push_back(lineOf(Step::result, "first cut this year",
                                        static_cast<double>(o.dates->first.number) * 1440, Unit::time,
                                        Basis::computed, {}, patch.label));
        return std::max(1.0, static_cast<double>(f.cautious - f.hopeful) / 2 / normal60);
    }

    Sourced stemsOf(const Patch& patch, const HeatFacts&) const {
        if (patch.expectedStems)
            return {static_cast<double>(patch.expectedStems->value), Basis::mine, "",
                    model::originOf(model::TableKind::patches, patch.id.value)};
        const Plant* plant = season_.plants.find(patch.plant);
        if (patch.plants && plant != nullptr && plant->stemsPerPlant)
            return {static_cast<double>(*patch.plants) * *plant->stemsPerPlant, Basis::computed,
                    "plants in the patch by stems per plant"};
        return {};
    }

    void forecastStems(const Patch& patch, const HeatFacts& facts, const Sourced& stems, double spread,
                       PatchOutlook& o) {
        garden::PatchForecastInput in;
        in.patch = patch.label;
        in.dates = *o.dates;
        in.expectedStems = stems;
        in.holdDays = facts.hold;
        in.holdDays.value = o.holdDays;
        in.dateSpread = std::min(spread, 12.0);
        const auto walks = walks_.find(patch.id);
        if (walks != walks_.end())
            for (const auto* w : walks->second)
                in.walks.push_back(countOf(*w, patch, o.holdDays));
        takeHardCut(patch, facts, in);
        auto forecast = garden::patchForecast(in);
        if (!forecast)
            return find(FindingCode::patchForecastImpossible, Severity::fault, patch, {},
                        {stems.value, static_cast<double>(o.dates->last - o.dates->first)});
        o.forecast = std::move(forecast).value();
        for (const auto& n : o.forecast->notes)
            nameWalk(patch, *walks->second[n.walk], n);
        nameWalksOutOfSeason(patch);
    }

    garden::WalkCount countOf(const model::Walk& w, const Patch& patch, int hold) const {
        garden::WalkCount c;
        c.day = w.date;
        if (w.readyNow) c.readyNow = w.readyNow->value;
        if (w.withinThreeDays) c.withinThreeDays = w.withinThreeDays->value;
        if (w.withinWeek) c.withinWeek = w.withinWeek->value;
        const auto cuts = cuts_.find(patch.id);
        if (cuts == cuts_.end()) return c;
        for (const auto& [day, stems] : cuts->second)
            if (day < w.date && w.date - hold <= day) c.cutLately += stems;
        return c;
    }

    void takeHardCut(const Patch& patch, const HeatFacts& facts, garden::PatchForecastInput& in) {
        if (!patch.hardCut) return;
        const Plant* plant = season_.plants.find(patch.plant);
        if (plant == nullptr || plant->habit != model::HarvestHabit::cutAndComeAgain ||
            !plant->regrowthDays || !weather_.warmth())
            return find(FindingCode::hardCutNotUsed, Severity::warning, patch, {patch.hardCut->iso()});
        in.hardCut = *patch.hardCut;
        in.secondFlush =
            garden::regrowth(in.dates, *patch.hardCut, static_cast<int>(*plant->regrowthDays),
                             std::clamp(facts.share.value, 0.0, 1.0), weather_.sums(facts.thresholds()));
        if (!in.secondFlush)
            find(FindingCode::regrowthTooLate, Severity::warning, patch, {patch.hardCut->iso()});
    }

    void nameWalk(const Patch& patch, const model::Walk& w, const garden::WalkNote& n) {
        const auto [code, severity] = [&]() -> std::pair<FindingCode, Severity> {
            switch (n.trouble) {
            case garden::WalkTrouble::blank:
                return {FindingCode::walkBlank, Severity::note};
            case garden::WalkTrouble::negative:
                return {FindingCode::walkNegative, Severity::fault};
            case garden::WalkTrouble::outsideFlowering:
                return {FindingCode::walkOutsideFlowering, Severity::note};
            case garden::WalkTrouble::farAboveExpected:
                return {FindingCode::walkFarAboveExpected, Severity::warning};
            case garden::WalkTrouble::weekUnderThreeDays:
                break;
            }
            return {FindingCode::walkWeekTooSmall, Severity::note};
        }();
        std::vector<double> numbers;
        if (n.trouble == garden::WalkTrouble::farAboveExpected) numbers = {n.counted, n.expected};
        find(code, severity, {TableKind::walks, w.id.value}, {patch.label, w.date.iso()}, std::move(numbers));
    }

    void nameWalksOutOfSeason(const Patch& patch) {
        const auto& s = season_.theSettings();
        const auto walks = walks_.find(patch.id);
        if (walks == walks_.end()) return;
        for (const auto* w : walks->second)
            if (w->date < s.firstDay || s.lastDay < w->date)
                find(FindingCode::walkOutOfSeason, Severity::warning, {TableKind::walks, w->id.value},
                     {patch.label, w->date.iso()});
    }

    void nameUnusedWalks(const Patch& patch) {
        const auto walks = walks_.find(patch.id);
        if (walks == walks_.end()) return;
        for (const auto* w : walks->second)
            find(FindingCode::walkNotUsed, Severity::note, {TableKind::walks, w->id.value},
                 {patch.label, w->date.iso()});
    }

    const Index& index_;
    const model::Season& season_;
    const ForecastOptions& options_;
    GardenWeather weather_;
    std::map<Id<Patch>, std::vector<const model::Walk*>> walks_;
    std::map<Id<Patch>, std::vector<std::pair<Day, std::int64_t>>> cuts_;
    std::map<Id<Plant>, Day> earliest_; ///< usual first cut of the plant's earliest patch
    std::map<Id<Plant>, HeatFacts> facts_;
    ForecastPlan out_;
};

} // namespace

ForecastPlan forecastPlan(const Index& index, const model::Season& season, const ForecastOptions& options) {
    return Forecasting(index, season, options).run();
}

} // namespace withy::plan
