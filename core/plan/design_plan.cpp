// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/design_plan.h"

#include "core/base/working_lines.h"
#include "core/model/origin.h"
#include "core/plan/convert.h"
#include "core/plan/plant_facts.h"
#include "core/plan/size_faults.h"
#include "core/runup/rates.h"

#include <algorithm>
#include <cmath>

namespace withy::plan {

namespace {

using model::Container;
using model::Design;
using model::Plant;
using model::Slot;

constexpr StandIn usualStem{4, Basis::fromMemory, ""}; ///< mm
constexpr double looseBelow = 0.15;   ///< of the neck: stems lean (common practice, no source)
constexpr double overfullAbove = 0.9; ///< round stems cannot fill more (hexagonal packing 0.9069)

Origin originOf(const Design& design) {
    return model::originOf(model::TableKind::designs, design.id.value);
}

/// Everything about one design while its plan is made.
struct PieceWork {
    const Index& index;
    const Design& design;
    const Container* container;
    DesignPlan plan;

    [[nodiscard]] const model::Settings& settings() const { return index.season.theSettings(); }

    void find(FindingCode code, Severity severity, std::vector<std::string> subjects,
              std::vector<double> numbers = {}) {
        plan.findings.push_back({code,
                                 severity,
                                 {model::TableKind::designs, design.id.value},
                                 std::move(subjects),
                                 std::move(numbers)});
    }

    void impossible(const Problem& p) {
        find(FindingCode::sizesImpossible, Severity::fault, {design.name, p.field});
    }
};

/// The plant's longest stem against the tier; names what is missing and what would do.
template <class Piece>
void checkReach(PieceWork& w, const Piece& piece, const Slot& slot, const Plant& plant) {
    if (!plant.stemLengthMax) return;
    const bool canPull =
        plant.method == model::HarvestMethod::cut && plant.habit == model::HarvestHabit::oneCut;
    const auto length = PlantFacts(w.index, plant).known("stem_length_max", 0);
    const auto shortStem = designs::tooShort(
        piece, tierOf(slot.tier), {*plant.stemLengthMax, canPull, length.basis, length.source, plant.name});
    if (!shortStem.ok() || !*shortStem) return;
    double depth = -1;
    for (const auto& choice : (*shortStem)->choices) {
        if (choice.depth) depth = static_cast<double>(choice.depth->value);
    }
    w.find(FindingCode::stemsTooShort, Severity::warning, {plant.name, w.design.name},
           {static_cast<double>((*shortStem)->missing.value), depth});
}

template <class Piece>
void planSlots(PieceWork& w, const Piece& piece) {
    for (const auto* slot : Index::of(w.index.slots, w.design.id)) {
        SlotPlan sp{slot->id, slotFill(w.index, slot->id), std::nullopt};
        w.plan.stemsPerPiece += slot->count;
        auto cut = designs::cutLength(piece, tierOf(slot->tier));
        if (cut.ok())
            sp.cutLength = std::move(cut).value();
        else
            w.impossible(cut.error());
        if (sp.fill.empty())
            w.find(FindingCode::slotWithoutPlant, Severity::warning, {w.design.name, slot->label});
        for (const auto& [plant, share] : sp.fill)
            checkReach(w, piece, *slot, *w.index.season.plants.find(plant));
        w.plan.slots.push_back(std::move(sp));
    }
    if (w.plan.slots.empty()) w.find(FindingCode::designWithoutSlots, Severity::note, {w.design.name});
}

void planNeck(PieceWork& w, const designs::ProfileShape& shape,
              const std::vector<designs::StemGroup>& groups) {
    auto filling = designs::neckFilling(shape, groups);
    if (!filling.ok()) return w.impossible(filling.error());
    const double share = filling->share;
    if (share > overfullAbove)
        w.find(FindingCode::neckOverfull, Severity::warning, {w.design.name}, {std::round(share * 100)});
    else if (w.design.loose && share < looseBelow && !groups.empty())
        w.find(FindingCode::neckLoose, Severity::note, {w.design.name}, {std::round(share * 100)});
    w.plan.neck = std::move(filling).value();
}

void planVesselWater(PieceWork& w) {
    const auto groups = stemGroups(w.index, w.design.id);
    const auto shape = shapeOf(*w.container);
    planNeck(w, shape, groups);
    auto water = designs::waterFill({shape, w.container->measuredVolume, tenThousandths(w.design.waterShare),
                                     static_cast<double>(w.design.lift.value), groups});
    if (!water.ok()) return w.impossible(water.error());
    auto weight = designs::pieceWeight(w.container->emptyWeight, water->water, w.plan.stemsPerPiece);
    if (weight.ok()) w.plan.weight = std::move(weight).value();
    w.plan.water = std::move(water).value();
}

double meanStemDiameter(const std::vector<designs::StemGroup>& groups) {
    double sum = 0;
    std::int64_t stems = 0;
    for (const auto& g : groups) {
        sum += g.diameter * static_cast<double>(g.count);
        stems += g.count;
    }
    return stems > 0 ? sum / static_cast<double>(stems) : usualStem.value;
}

std::optional<Result<Figure, Problem>> girth(const PieceWork& w) {
    if (w.container) {
        if (w.container->outerNeck) return shed::girthOfNeck(*w.container->outerNeck);
        constexpr double usualWall = 3; // mm of glass, from memory
        return designs::outerGirth(shapeOf(*w.container), usualWall);
    }
    if (w.plan.stemsPerPiece.value < 1) return std::nullopt;
    return shed::girthOfBound(w.plan.stemsPerPiece, meanStemDiameter(stemGroups(w.index, w.design.id)));
}

void planRibbon(PieceWork& w) {
    const auto finish = w.design.finish;
    if (!w.design.ribbonMix || finish == model::RibbonFinish::none) return;
    if (finish == model::RibbonFinish::knot && w.design.tail.value == 0)
        w.find(FindingCode::ribbonWithoutTail, Severity::note, {w.design.name});
    const auto g = girth(w);
    if (!g) return;
    if (!g->ok()) return w.impossible(g->error());
    auto piece = shed::ribbonForPiece((*g)->value, tieOf(w.design));
    if (!piece.ok()) return w.impossible(piece.error());
    Working working = (*g)->working;
    append(working, piece->working);
    w.plan.ribbon = std::move(piece).value();
    w.plan.ribbon->working = std::move(working);
}

void planMinutes(PieceWork& w) {
    runup::RateUsed rate = runup::defaultMakingMinutes(w.design.kind);
    if (w.design.minutes) rate = {*w.design.minutes, w.design.minutesBasis, ""};
    w.plan.minutes.value = rate.minutes;
    w.plan.minutes.unit = Unit::minutes;
    w.plan.minutes.working = {
        from(originOf(w.design), lineOf(Step::result, "minutes a piece", rate.minutes, Unit::minutes,
                                        rate.basis, rate.source, w.design.name))};
}

/// What the grower has measured or drawn leads to the container or the design it is a size of.
void nameOrigins(PieceWork& w) {
    const auto name = [&w](Working& working) {
        for (auto& line : working) {
            if (line.from.table >= 0 || line.basis == Basis::computed) continue;
            const bool inside = line.what.rfind("inner ", 0) == 0 || line.what == "inside depth" ||
                                line.what == "outer neck" || line.what == "measured volume" ||
                                line.what == "empty weight" || line.what == "empty weight not known";
            if (line.what == "recut")
                line.from = model::originInSettings();
            else if (inside && w.container)
                line.from = model::originOf(model::TableKind::containers, w.container->id.value);
            else if (line.basis == Basis::mine)
                line.from = originOf(w.design);
        }
    };
    for (auto& slot : w.plan.slots)
        if (slot.cutLength) name(slot.cutLength->working);
    if (w.plan.water) name(w.plan.water->working);
    if (w.plan.neck) name(w.plan.neck->working);
    if (w.plan.weight) name(w.plan.weight->working);
    if (w.plan.ribbon) name(w.plan.ribbon->working);
}

/// What the sizes themselves say is said better than that the sum of them cannot be right.
void planSizes(PieceWork& w) {
    const auto sizes = sizeFindings(w.index, w.design);
    std::erase_if(w.plan.findings, [&](const Finding& f) {
        return f.code == FindingCode::sizesImpossible &&
               std::any_of(sizes.begin(), sizes.end(),
                           [&](const SizeFinding& s) { return f.subjects.back() == s.field; });
    });
    for (const auto& size : sizes)
        w.plan.findings.push_back(findingOf(size, w.design));
}

} // namespace

std::vector<std::pair<Id<Plant>, double>> slotFill(const Index& index, Id<Slot> slot) {
    const auto& plants = Index::of(index.slotPlants, slot);
    std::vector<std::pair<Id<Plant>, double>> fill;
    double sum = 0;
    for (const auto* p : plants) {
        if (p->share && *p->share > 0) {
            fill.emplace_back(p->plant, *p->share);
            sum += *p->share;
        }
    }
    if (fill.empty() && !plants.empty()) return {{plants.front()->plant, 1.0}};
    for (auto& [plant, share] : fill)
        share /= sum;
    return fill;
}

std::vector<designs::StemGroup> stemGroups(const Index& index, Id<Design> design) {
    std::vector<designs::StemGroup> groups;
    for (const auto* slot : Index::of(index.slots, design)) {
        const auto fill = slotFill(index, slot->id);
        const Plant* plant = fill.empty() ? nullptr : index.season.plants.find(fill.front().first);
        garden::Sourced diameter{usualStem.value, usualStem.basis, usualStem.source, {}};
        if (plant)
            diameter = PlantFacts(index, *plant).get("stem_diameter_mm", plant->stemDiameterMm, usualStem);
        groups.push_back({slot->count.value, diameter.value, diameter.basis,
                          plant ? plant->name : slot->label, diameter.from});
    }
    return groups;
}

DesignPlan designPlan(const Index& index, const Design& design) {
    PieceWork w{
        index, design, design.container ? index.season.containers.find(*design.container) : nullptr, {}};
    w.plan.design = design.id;
    if (w.container)
        planSlots(w, standingOf(design, *w.container, w.settings()));
    else
        planSlots(w, boundOf(design, w.settings()));
    if (w.container) planVesselWater(w);
    planRibbon(w);
    planMinutes(w);
    nameOrigins(w);
    planSizes(w);
    return std::move(w.plan);
}

} // namespace withy::plan
