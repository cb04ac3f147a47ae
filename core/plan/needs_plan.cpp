// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/needs_plan.h"

#include "core/model/origin.h"
#include "core/plan/convert.h"
#include "core/plan/plant_facts.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace withy::plan {

namespace {

using model::Plant;

constexpr StandIn usualLoss{10, Basis::commonPractice, "one event florist's allowance for breakage (TIPSY)"};

Basis spareBasis(const model::Settings& s) {
    return s.sparePercent == model::Settings{}.sparePercent ? Basis::commonPractice : Basis::mine;
}

void addUse(std::map<Id<Plant>, PlantNeed>& needs, Id<Plant> plant, SlotUse use) {
    auto& need = needs[plant];
    need.plant = plant;
    if (use.cutLength) need.longestCut = std::max(need.longestCut.value_or(Millimetres(0)), *use.cutLength);
    need.uses.push_back(use);
}

void useSlots(const DesignPlan& design, const Index& index, const LinePlan& line,
              std::map<Id<Plant>, PlantNeed>& needs) {
    for (const auto& slotPlan : design.slots) {
        const model::Slot* slot = index.season.slots.find(slotPlan.slot);
        std::vector<double> weights;
        for (const auto& [plant, share] : slotPlan.fill)
            weights.push_back(share);
        const auto stems = shareOut(slot->count.value * line.pieces.value, weights);
        for (std::size_t i = 0; i < stems.size(); ++i) {
            if (stems[i] == 0) continue;
            std::optional<Millimetres> cut;
            if (slotPlan.cutLength) cut = slotPlan.cutLength->length;
            addUse(needs, slotPlan.fill[i].first,
                   {line.line, slot->id, slot->count, line.pieces, Stems(stems[i]), cut});
        }
    }
}

/// A slot shared between plants has no whole count a piece; it enters as so many stems in one lot.
std::vector<bookings::NeedPart> partsOf(const PlantNeed& need, const model::Season& season) {
    std::vector<bookings::NeedPart> parts;
    for (const auto& use : need.uses) {
        const model::Line* line = season.lines.find(use.line);
        const model::Design* design = season.designs.find(line->design);
        const bool whole = use.stems.value == use.perPiece.value * use.pieces.value;
        parts.push_back(whole ? bookings::NeedPart{use.perPiece.value, use.pieces.value, design->name}
                              : bookings::NeedPart{use.stems.value, 1, design->name});
        if (whole) parts.back().piecesFrom = model::originOf(model::TableKind::lines, line->id.value);
        parts.back().stemsFrom = model::originOf(model::TableKind::designs, design->id.value);
    }
    return parts;
}

} // namespace

std::vector<std::int64_t> shareOut(std::int64_t total, const std::vector<double>& weights) {
    std::vector<std::int64_t> out;
    std::vector<double> rest;
    for (const double w : weights) {
        const double exact = static_cast<double>(total) * w;
        // A hair above a whole number is that number: shares like 1/3 + 1/3 + 1/3 must not lose a stem.
        const double floor = std::floor(exact + 1e-9);
        out.push_back(static_cast<std::int64_t>(floor));
        rest.push_back(exact - floor);
    }
    std::vector<std::size_t> order(weights.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](auto a, auto b) { return rest[a] > rest[b] + 1e-12; });
    std::int64_t left = total - std::accumulate(out.begin(), out.end(), std::int64_t{0});
    for (std::size_t i = 0; i < order.size() && left > 0; ++i, --left)
        ++out[order[i]];
    return out;
}

bookings::SpareTerms spareTerms(const Index& index, const Plant& plant) {
    const auto& settings = index.season.theSettings();
    bookings::SpareTerms terms;
    terms.bunch = plant.bunch ? plant.bunch->value : 0;
    terms.bunchFrom = model::originOf(model::TableKind::plants, plant.id.value);
    if (settings.spareRule == model::SpareRule::percent) {
        terms.rule = bookings::PercentSpare{tenThousandths(settings.sparePercent), spareBasis(settings), "",
                                            model::originInSettings()};
    } else {
        const auto loss = PlantFacts(index, plant).get("loss_percent", plant.lossPercent, usualLoss);
        terms.rule =
            bookings::RiskSpare{loss.value / 100, settings.spareConfidence / 100, loss.basis, loss.source,
                                loss.from,        model::originInSettings()};
    }
    return terms;
}

void planNeeds(const Index& index, const model::Booking& booking,
               const std::map<Id<model::Design>, std::shared_ptr<const DesignPlan>>& designs,
               BookingPlan& plan) {
    std::map<Id<Plant>, PlantNeed> needs;
    for (const auto* line : Index::of(index.lines, booking.id)) {
        const auto& design = *designs.at(line->design);
        LinePlan lp{line->id, line->design, line->pieces + line->sparePieces, Stems(0)};
        lp.stems = design.stemsPerPiece * lp.pieces.value;
        plan.stemsNeeded += lp.stems;
        if (lp.pieces.value > 0) useSlots(design, index, lp, needs);
        plan.lines.push_back(lp);
    }
    for (auto& [id, need] : needs) {
        const Plant& plant = *index.season.plants.find(id);
        auto total = bookings::stemNeed(partsOf(need, index.season), spareTerms(index, plant));
        if (!total.ok()) {
            plan.findings.push_back({FindingCode::sizesImpossible,
                                     Severity::fault,
                                     {model::TableKind::bookings, booking.id.value},
                                     {plant.name, total.error().field},
                                     {}});
            continue;
        }
        need.need = std::move(total).value();
        plan.stemsToCut += need.need.total;
        plan.needs.push_back(std::move(need));
    }
}

} // namespace withy::plan
