// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/kit_plan.h"

#include "core/base/working_lines.h"
#include "core/model/origin.h"
#include "core/plan/needs_plan.h"
#include "core/plan/usual_holder.h"

namespace withy::plan {

namespace {

using model::TableKind;

std::string designName(const Index& index, const LinePlan& line) {
    return index.season.designs.find(line.design)->name;
}

/// Gathers findings and totals for one booking.
struct KitWork {
    const Index& index;
    const std::map<Id<model::Design>, std::shared_ptr<const DesignPlan>>& designs;
    BookingPlan& plan;

    void find(FindingCode code, Severity severity, TableKind table, std::int64_t id,
              std::vector<std::string> subjects, std::vector<double> numbers = {}) {
        plan.findings.push_back({code, severity, {table, id}, std::move(subjects), std::move(numbers)});
    }
};

void planContainers(KitWork& w) {
    std::vector<shed::KeyedUse<Id<model::Container>>> uses;
    std::map<Id<model::Container>, shed::KitStock> stock;
    for (const auto& line : w.plan.lines) {
        const model::Design& design = *w.index.season.designs.find(line.design);
        if (!design.container) continue;
        const model::Container& c = *w.index.season.containers.find(*design.container);
        shed::KitUse use;
        use.counts = {line.pieces.value, line.stems.value, 1, std::nullopt};
        use.subject = design.name;
        use.from = model::originOf(TableKind::designs, design.id.value);
        uses.push_back({c.id, use});
        stock[c.id].thousandths = c.owned ? std::optional(*c.owned * 1000) : std::nullopt;
        stock[c.id].from = model::originOf(TableKind::containers, c.id.value);
    }
    const auto totals = shed::kitTotals(uses, stock);
    if (!totals.ok()) return;
    for (const auto& [id, total] : *totals) {
        const auto& name = w.index.season.containers.find(id)->name;
        if (!total.onHand)
            w.find(FindingCode::containerNotCounted, Severity::note, TableKind::containers, id.value, {name});
        else if (total.missing.value_or(0) > 0) {
            const std::int64_t whole = *total.onHand / 1000;
            w.find(FindingCode::containerShort, Severity::warning, TableKind::containers, id.value, {name},
                   {static_cast<double>(shed::wholeUnits(total.needed)), static_cast<double>(whole)});
        }
        w.plan.kit.containers.push_back({id, total});
    }
}

shed::UseRule ruleOf(model::UseRule rule) {
    return static_cast<shed::UseRule>(rule);
}

void useSundries(const KitWork& w, const LinePlan& line,
                 std::vector<shed::KeyedUse<Id<model::Sundry>>>& uses) {
    for (const auto* ds : Index::of(w.index.designSundries, line.design)) {
        const model::Sundry& sundry = *w.index.season.sundries.find(ds->sundry);
        const auto amount = shed::thousandthsOf(ds->amount);
        if (!amount.ok()) continue;
        shed::KitUse use;
        // A design says how much of it one piece takes, whatever the sundry's own rule counts by.
        use.rule = sundry.rule == model::UseRule::perStem ? shed::UseRule::perStem : shed::UseRule::perPiece;
        use.thousandths = *amount;
        use.counts = {line.pieces.value, line.stems.value, 1, std::nullopt};
        use.subject = designName(w.index, line);
        use.from = model::originOf(TableKind::designs, line.design.value);
        uses.push_back({sundry.id, use});
    }
}

void planSundries(KitWork& w) {
    std::vector<shed::KeyedUse<Id<model::Sundry>>> uses;
    std::map<Id<model::Sundry>, shed::KitStock> stock;
    for (const auto& line : w.plan.lines)
        useSundries(w, line, uses);
    for (const auto& sundry : w.index.season.sundries) {
        const auto here = model::originOf(TableKind::sundries, sundry.id.value);
        stock[sundry.id].from = here;
        if (sundry.onHand) {
            const auto there = shed::thousandthsOf(*sundry.onHand);
            if (there.ok()) stock[sundry.id].thousandths = *there;
        }
        if (sundry.rule != model::UseRule::perBooking || w.plan.lines.empty()) continue;
        const auto amount = shed::thousandthsOf(sundry.amount);
        if (!amount.ok()) continue;
        uses.push_back({sundry.id, {ruleOf(sundry.rule), *amount, {0, 0, 1, std::nullopt}, "", here}});
    }
    const auto totals = shed::kitTotals(uses, stock);
    if (!totals.ok()) return;
    for (const auto& [id, total] : *totals) {
        if (total.missing.value_or(0) > 0)
            w.find(FindingCode::sundryShort, Severity::warning, TableKind::sundries, id.value,
                   {w.index.season.sundries.find(id)->name},
                   {static_cast<double>(total.needed) / 1000, static_cast<double>(*total.onHand) / 1000});
        w.plan.kit.sundries.push_back({id, total});
    }
}

std::optional<Millimetres> ribbonOnHand(const Index& index, Id<model::Ribbon> ribbon) {
    const auto& lengths = Index::of(index.ribbonLengths, ribbon);
    if (lengths.empty()) return std::nullopt; // never counted, which is not the same as none left
    Millimetres sum;
    for (const auto* l : lengths)
        sum += l->length;
    return sum;
}

/// A line's pieces over the ribbons of its mix, by their shares.
void cutRibbons(const KitWork& w, const LinePlan& line, std::map<Id<model::Ribbon>, RibbonNeed>& needs) {
    const auto& design = *w.designs.at(line.design);
    if (!design.ribbon || design.ribbon->length.value == 0) return;
    const model::Design& record = *w.index.season.designs.find(line.design);
    const auto& parts = Index::of(w.index.mixParts, *record.ribbonMix);
    double sum = 0;
    for (const auto* part : parts)
        sum += part->share;
    std::vector<double> weights;
    for (const auto* part : parts)
        weights.push_back(part->share / sum);
    const auto pieces = shareOut(line.pieces.value, weights);
    for (std::size_t i = 0; i < parts.size(); ++i) {
        if (pieces[i] == 0) continue;
        auto& need = needs[parts[i]->ribbon];
        need.ribbon = parts[i]->ribbon;
        need.cuts.push_back({line.line, design.ribbon->length, Pieces(pieces[i])});
    }
}

void sumRibbon(KitWork& w, RibbonNeed& need) {
    for (const auto& cut : need.cuts) {
        const auto total = shed::ribbonTotal(cut.each, cut.pieces.value, 0, std::nullopt);
        if (!total.ok()) continue;
        need.needed += total->needed;
        append(need.working, total->working);
    }
    const auto& ribbon = *w.index.season.ribbons.find(need.ribbon);
    need.working.push_back(lineOf(Step::result, "ribbon needed", need.needed.value, Unit::millimetres,
                                  Basis::computed, "", ribbon.name));
    need.onHand = ribbonOnHand(w.index, need.ribbon);
    if (!need.onHand) return;
    need.working.push_back(lineOf(Step::given, "on hand", need.onHand->value, Unit::millimetres,
                                  Basis::counted, "", ribbon.name));
    need.missing = std::max(Millimetres(0), need.needed - *need.onHand);
    if (need.missing->value > 0)
        w.find(FindingCode::ribbonShort, Severity::warning, TableKind::ribbons, ribbon.id.value,
               {ribbon.name}, {static_cast<double>(need.missing->value)});
}

void planRibbons(KitWork& w) {
    std::map<Id<model::Ribbon>, RibbonNeed> needs;
    for (const auto& line : w.plan.lines)
        cutRibbons(w, line, needs);
    for (auto& [id, need] : needs) {
        sumRibbon(w, need);
        w.plan.kit.ribbons.push_back(std::move(need));
    }
}

void planBuckets(KitWork& w) {
    shed::ByLength<Stems> stems{};
    for (const auto& need : w.plan.needs) {
        const auto length = need.longestCut.value_or(Millimetres(500));
        stems[static_cast<std::size_t>(shed::lengthClass(length))] += need.need.total;
    }
    const auto* usual = commonestHolder(w.index.season, model::HolderKind::bucket);
    std::optional<std::int64_t> owned;
    for (const auto& h : w.index.season.holders)
        if (h.kind == model::HolderKind::bucket && h.owned) owned = owned.value_or(0) + *h.owned;
    if (!usual) return;
    auto buckets = shed::bucketsFor(stems, {usual->shortStems, usual->middleStems, usual->longStems});
    if (!buckets.ok()) return;
    if (owned && buckets->total > *owned)
        w.find(FindingCode::bucketsShort, Severity::warning, TableKind::holders, usual->id.value,
               {usual->name}, {static_cast<double>(buckets->total), static_cast<double>(*owned)});
    w.plan.kit.buckets = std::move(buckets).value();
    w.plan.kit.bucketsOwned = owned;
}

void planWater(KitWork& w) {
    std::vector<shed::WaterUse> uses;
    for (const auto& line : w.plan.lines) {
        if (!w.index.season.designs.find(line.design)->container || line.pieces.value == 0) continue;
        const auto& water = w.designs.at(line.design)->water;
        uses.push_back({designName(w.index, line), line.pieces.value,
                        water ? std::optional(water->water) : std::nullopt,
                        model::originOf(TableKind::designs, line.design.value)});
    }
    auto total = shed::waterTotal(uses);
    if (total.ok()) w.plan.kit.water = std::move(total).value();
}

} // namespace

void planKit(const Index& index,
             const std::map<Id<model::Design>, std::shared_ptr<const DesignPlan>>& designs,
             BookingPlan& plan) {
    KitWork w{index, designs, plan};
    planContainers(w);
    planRibbons(w);
    planSundries(w);
    planBuckets(w);
    planWater(w);
}

} // namespace withy::plan
