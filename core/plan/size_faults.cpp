// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/size_faults.h"

#include "core/designs/volume.h"
#include "core/plan/best_plant.h"
#include "core/plan/convert.h"

#include <algorithm>
#include <iterator>

namespace withy::plan {

namespace {

using model::Container;
using model::Design;
using model::TableKind;

constexpr int firstSizeCode = 2000;

/// In the order of SizeFault.
constexpr std::string_view sizeWords[] = {
    "deeper than high",   "wider inside than out", "neck taller than jar",    "ribbon wider than neck",
    "lift over rim",      "stem ends over water",  "heads narrower than jar", "head wider than spread",
    "tiers out of order", "tail over ground",
};

/// Gathers what contradicts.
struct SizeSearch {
    const Index& index;
    const Design& design;
    const Container* container;
    std::vector<SizeFinding> found;

    [[nodiscard]] model::Ref ofDesign() const { return {TableKind::designs, design.id.value}; }

    [[nodiscard]] model::Ref ofContainer() const { return {TableKind::containers, container->id.value}; }

    /// Said when `first` is over `second`.
    void over(SizeFault fault, model::Ref place, const char* field, std::string subject, double first,
              double second, bool note = false) {
        if (first > second + 1e-9)
            found.push_back({fault, place, field, std::move(subject), first, second, note});
    }
};

const model::Plant* bestOf(const Index& index, Id<model::Slot> slot) {
    const auto& choices = Index::of(index.slotPlants, slot);
    const auto best = std::min_element(choices.begin(), choices.end(),
                                       [](const auto* a, const auto* b) { return isBefore(*a, *b); });
    return best == choices.end() ? nullptr : index.season.plants.find((*best)->plant);
}

void checkContainer(SizeSearch& s) {
    const auto& c = *s.container;
    if (c.outerHeight)
        s.over(SizeFault::deeperThanHigh, s.ofContainer(), "inner_depth", c.name, asMm(c.innerDepth),
               asMm(*c.outerHeight));
    const double inside = std::max(asMm(c.innerRim), asMm(c.innerBody.value_or(c.innerRim)));
    if (c.outerDiameter)
        s.over(SizeFault::widerInsideThanOut, s.ofContainer(), c.innerBody ? "inner_body" : "inner_rim",
               c.name, inside, asMm(*c.outerDiameter));
    if (c.neckHeight && c.outerHeight)
        s.over(SizeFault::neckTallerThanJar, s.ofContainer(), "neck_height", c.name, asMm(*c.neckHeight),
               asMm(*c.outerHeight));
}

void checkRibbon(SizeSearch& s) {
    const auto& d = s.design;
    if (!d.ribbonMix || d.finish == model::RibbonFinish::none) return;
    for (const auto* part : Index::of(s.index.mixParts, *d.ribbonMix)) {
        const auto* ribbon = s.index.season.ribbons.find(part->ribbon);
        if (ribbon && s.container->neckHeight)
            s.over(SizeFault::ribbonWiderThanNeck, s.ofDesign(), "ribbon_mix", ribbon->name,
                   asMm(ribbon->width), asMm(*s.container->neckHeight));
    }
}

void checkWater(SizeSearch& s) {
    const auto& d = s.design;
    const double depth = asMm(s.container->innerDepth), lift = asMm(d.lift);
    s.over(SizeFault::liftOverRim, s.ofDesign(), "lift", s.container->name, lift, depth);
    if (lift > depth) return;
    const auto shape = shapeOf(*s.container);
    const auto full = designs::fullVolume(shape);
    if (!full.ok()) return;
    const double share = std::clamp(d.waterShare, 0.0, 100.0) / 100;
    const auto level = designs::levelFor(shape, full->cubicMillimetres * share);
    if (level.ok())
        s.over(SizeFault::endsOverWater, s.ofDesign(), "water_share", s.container->name, lift,
               level->millimetres);
}

void checkHeads(SizeSearch& s) {
    const auto& d = s.design;
    if (d.spread && s.container && s.container->outerDiameter)
        s.over(SizeFault::headsNarrowerThanJar, s.ofDesign(), "spread", s.container->name,
               asMm(*s.container->outerDiameter), asMm(*d.spread), true);
    double widest = 0;
    std::string wide;
    for (const auto* slot : Index::of(s.index.slots, d.id)) {
        const auto* plant = slot->count.value > 0 ? bestOf(s.index, slot->id) : nullptr;
        if (!plant || plant->shape == model::BloomShape::leaf || plant->shape == model::BloomShape::grass)
            continue; // sprays lean inwards
        if (plant->headDiameterMm.value_or(0) <= widest) continue;
        widest = *plant->headDiameterMm;
        wide = plant->name;
    }
    if (d.spread)
        s.over(SizeFault::headWiderThanSpread, s.ofDesign(), "spread", wide, widest, asMm(*d.spread));
    s.over(SizeFault::tiersOutOfOrder, s.ofDesign(), "height_low", d.name, asMm(d.heightLow),
           asMm(d.heightMiddle));
    s.over(SizeFault::tiersOutOfOrder, s.ofDesign(), "height_middle", d.name, asMm(d.heightMiddle),
           asMm(d.heightTall));
}

void checkTails(SizeSearch& s) {
    const auto& d = s.design;
    const bool tails = d.finish == model::RibbonFinish::knot || d.finish == model::RibbonFinish::bow;
    const bool stands = d.kind == model::PieceKind::table || d.kind == model::PieceKind::budVase;
    if (!d.ribbonMix || !tails || !stands || !s.container) return;
    const double height = asMm(s.container->outerHeight.value_or(s.container->innerDepth));
    const double below = height - asMm(s.container->neckHeight.value_or(Millimetres{})) / 2;
    s.over(SizeFault::tailOverGround, s.ofDesign(), "tail", d.name, asMm(d.tail), below, true);
}

} // namespace

std::vector<SizeFinding> sizeFindings(const Index& index, const Design& d) {
    SizeSearch s{index, d, d.container ? index.season.containers.find(*d.container) : nullptr, {}};
    if (s.container) {
        checkContainer(s);
        checkRibbon(s);
        checkWater(s);
    }
    checkHeads(s);
    checkTails(s);
    std::stable_sort(s.found.begin(), s.found.end(),
                     [](const auto& a, const auto& b) { return a.fault < b.fault; });
    return std::move(s.found);
}

std::vector<SizeFinding> sizeFindings(const model::Season& season, Id<Design> id) {
    const auto* d = season.designs.find(id);
    return d ? sizeFindings(Index(season), *d) : std::vector<SizeFinding>();
}

Finding findingOf(const SizeFinding& size, const Design& design) {
    return {static_cast<FindingCode>(firstSizeCode + static_cast<int>(size.fault)),
            size.note ? Severity::note : Severity::warning,
            size.place,
            {size.subject, design.name},
            {size.first, size.second}};
}

std::optional<SizeFault> sizeFaultOf(FindingCode code) {
    const int at = static_cast<int>(code) - firstSizeCode;
    return at >= 0 && at < static_cast<int>(std::size(sizeWords)) ? std::optional(static_cast<SizeFault>(at))
                                                                  : std::nullopt;
}

std::string_view sizeFindingWord(FindingCode code) {
    const auto fault = sizeFaultOf(code);
    return fault ? sizeWords[static_cast<std::size_t>(*fault)] : std::string_view();
}

} // namespace withy::plan
