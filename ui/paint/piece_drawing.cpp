// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/piece_drawing.h"

#include "core/designs/volume.h"
#include "core/plan/best_plant.h"
#include "core/plan/convert.h"
#include "core/plan/grown_on.h"
#include "ui/paint/piece_index.h"

#include <algorithm>

namespace withy::ui {

namespace {

using model::PieceKind;
using Outline = VesselDrawing::Outline;

// As many as the model takes.
constexpr std::int64_t mostWraps = 50;
constexpr std::int64_t mostLoops = 40;

double size(Millimetres length) {
    return std::clamp(static_cast<double>(length.value), leastDrawn, mostDrawn);
}

double size(const std::optional<Millimetres>& length, double otherwise) {
    return length ? size(*length) : otherwise;
}

bool bound(PieceKind kind) {
    switch (kind) {
    case PieceKind::table:
    case PieceKind::pedestal:
    case PieceKind::budVase:
    case PieceKind::basket:
        return false;
    default:
        return true;
    }
}

Outline outlineOf(const model::Container& c, PieceKind kind) {
    if (kind == PieceKind::basket) return Outline::basket;
    const double rim = size(c.innerRim);
    const double body = size(c.innerBody, rim);
    switch (c.profile) {
    case model::ProfileKind::cylinder:
        return rim < body * 0.93 ? Outline::jar : Outline::straight;
    case model::ProfileKind::tapered:
        return Outline::tapered;
    case model::ProfileKind::rounded:
        return kind == PieceKind::pedestal ? Outline::urn : Outline::bowl;
    case model::ProfileKind::trough:
        return Outline::trough;
    }
    return Outline::straight;
}

/// The share of the volume as a level; by depth alone when the sizes make no body.
double waterLevel(const model::Container& c, double percent) {
    const double share = std::clamp(percent, 0.0, 100.0) / 100;
    const auto shape = plan::shapeOf(c);
    const auto full = designs::fullVolume(shape);
    if (full.ok()) {
        const auto level = designs::levelFor(shape, full->cubicMillimetres * share);
        if (level.ok()) return level->millimetres;
    }
    return size(c.innerDepth) * share;
}

constexpr double usualWall = 3; // stand-ins, ours
constexpr double usualFloor = 5;
constexpr double usualStand = 1070; ///< a pedestal's, unless the container stands itself
constexpr double standsItself = 250;

/// Where outer sizes are known the wall is what lies between them and the inner ones, whatever that is.
void takeSizes(VesselDrawing& v, const model::Container& c) {
    const bool trough = v.outline == Outline::trough;
    const double rim = trough ? size(c.innerLength, size(c.innerRim) * 3) : size(c.innerRim);
    const double widest = trough ? rim : std::max(size(c.innerBody, rim), rim);
    if (c.outerDiameter && !trough) v.wall = (size(c.outerDiameter, 0) - widest) / 2;
    v.width = widest + 2 * v.wall;
    v.rim = std::max(rim + 2 * v.wall, leastDrawn);
    const double base = v.outline == Outline::bowl ? size(c.innerBase, rim * 0.6) : size(c.innerBase, rim);
    v.base = trough ? v.rim : std::max(base + 2 * v.wall, leastDrawn);
    v.neck = size(c.outerNeck, v.rim);
    v.height = size(c.outerHeight, size(c.innerDepth) + v.floor);
    v.floor = v.height - size(c.innerDepth);
    v.neckHeight = size(c.neckHeight, std::min(14.0, v.height * 0.4));
}

VesselDrawing vesselOf(const model::Container& c, PieceKind kind, double waterShare) {
    VesselDrawing v;
    v.outline = outlineOf(c, kind);
    v.wall = usualWall;
    v.floor = usualFloor;
    takeSizes(v, c);
    v.waterLevel = waterLevel(c, waterShare);
    if (kind == PieceKind::pedestal && v.height < standsItself) v.stand = usualStand;
    return v;
}

model::Container standInContainer(PieceKind kind) {
    model::Container c;
    c.innerRim = Millimetres(58);
    c.innerBody = Millimetres(70);
    c.innerDepth = Millimetres(115);
    if (kind == PieceKind::budVase) c.innerRim = Millimetres(22), c.innerBody = Millimetres(54);
    if (kind == PieceKind::basket || kind == PieceKind::pedestal) {
        c.innerRim = c.innerBody.emplace(200);
        c.innerBase = Millimetres(kind == PieceKind::basket ? 150 : 100);
        c.profile = kind == PieceKind::basket ? model::ProfileKind::tapered : model::ProfileKind::rounded;
    }
    return c;
}

std::optional<RibbonDrawing> ribbonOf(const model::Season& season, const model::Design& d) {
    if (d.finish == model::RibbonFinish::none) return std::nullopt;
    RibbonDrawing r;
    r.colour = QColor::fromRgb(0xB7A88A); // a stand-in: undyed linen
    const model::Ribbon* ribbon = nullptr;
    for (const auto& part : season.ribbonMixParts) {
        if (d.ribbonMix == part.mix && !ribbon) ribbon = season.ribbons.find(part.ribbon);
    }
    if (ribbon && ribbon->colour) r.colour = Palette::bloom(*ribbon->colour);
    if (ribbon) r.width = size(ribbon->width);
    r.wraps = static_cast<int>(std::clamp<std::int64_t>(d.wraps, 1, mostWraps));
    r.finish = d.finish;
    r.loop = d.loop.value > 0 ? size(d.loop) : 0;
    r.loops = static_cast<int>(std::clamp<std::int64_t>(d.loops, 0, mostLoops));
    r.tail = d.tail.value > 0 ? size(d.tail) : 0;
    return r;
}

void inMakingOrder(std::vector<const model::Slot*>& slots) {
    std::stable_sort(slots.begin(), slots.end(),
                     [](const auto* a, const auto* b) { return a->position < b->position; });
}

PieceIndex::Filled filledOf(const model::Season& season, Id<model::Design> design) {
    PieceIndex::Filled filled;
    for (const auto& slot : season.slots) {
        if (slot.design == design && slot.count.value > 0) filled.slots.push_back(&slot);
    }
    inMakingOrder(filled.slots);
    for (const auto* slot : filled.slots)
        filled.plants.push_back(plan::bestPlant(season, slot->id));
    return filled;
}

/// A slot without a plant is drawn by its purpose, in line-grey green.
SlotDrawing slotDrawing(const model::Slot& slot, const model::Plant* plant) {
    SlotDrawing s;
    s.tier = slot.tier;
    s.purpose = slot.purpose;
    s.clump = slot.clump;
    s.count = static_cast<int>(std::clamp<std::int64_t>(slot.count.value, 0, 1'000'000));
    if (!plant) {
        const bool leafy =
            slot.purpose == model::Purpose::foliage || slot.purpose == model::Purpose::trailing;
        s.form = leafy ? HeadForm::leaf : HeadForm::daisy;
        s.bloom = QColor::fromRgb(leafy ? 0x9FB09A : 0xD5DDD6);
        return s;
    }
    s.form = headForm(*plant);
    // Where no colour is known: leaf green for leaves, oat for the rest.
    s.bloom = plant->colour1 ? Palette::bloom(*plant->colour1)
                             : QColor::fromRgb(plant->foliage ? 0x6F8E4E : 0xD8CFAE);
    const bool eyed = s.form == HeadForm::daisy || s.form == HeadForm::darkEyed ||
                      s.form == HeadForm::aster || s.form == HeadForm::layered || s.form == HeadForm::trumpet;
    if (eyed && plant->colour2) s.eye = Palette::bloom(*plant->colour2);
    s.head = std::clamp(plant->headDiameterMm.value_or(50), leastDrawn, mostDrawn);
    s.stem = std::clamp(plant->stemDiameterMm.value_or(4), 0.5, mostDrawn);
    return s;
}

/// Leaves too many stems away, evenly over the slots and at least one of each.
void thinOut(PieceDrawing& piece) {
    std::int64_t all = 0;
    for (const auto& s : piece.slots)
        all += s.count;
    if (all <= mostStemsDrawn) return;
    if (piece.slots.size() > mostStemsDrawn) piece.slots.resize(mostStemsDrawn);
    const double share = static_cast<double>(mostStemsDrawn) / static_cast<double>(all);
    std::int64_t drawn = 0;
    for (auto& s : piece.slots) {
        if (s.count > 0) s.count = std::max(1, static_cast<int>(s.count * share));
        drawn += s.count;
    }
    piece.left = all - drawn;
}

PieceDrawing drawingOf(const model::Season& season, Id<model::Design> id, const PieceIndex::Filled& filled) {
    PieceDrawing piece;
    const auto* d = season.designs.find(id);
    if (!d) {
        piece.vessel = vesselOf(standInContainer(piece.kind), piece.kind, 75);
        return piece;
    }
    piece.kind = d->kind;
    piece.seed = static_cast<std::uint64_t>(id.value);
    piece.lift = std::clamp(static_cast<double>(d->lift.value), 0.0, mostDrawn);
    const auto height = [](Millimetres h) {
        return std::clamp(static_cast<double>(h.value), 0.0, mostDrawn);
    };
    piece.low = height(d->heightLow);
    piece.middle = height(d->heightMiddle);
    piece.tall = height(d->heightTall);
    piece.belowTie = size(d->stemsBelowTie, 130); // a stand-in
    // Stand-ins: a garland of a metre, else what its height bears.
    piece.spread = size(d->spread, d->kind == PieceKind::garland ? 1000 : std::max(60.0, piece.tall * 1.3));
    if (const auto* c = d->container ? season.containers.find(*d->container) : nullptr)
        piece.vessel = vesselOf(*c, d->kind, d->waterShare);
    else if (!bound(d->kind))
        piece.vessel = vesselOf(standInContainer(d->kind), d->kind, d->waterShare);
    piece.ribbon = ribbonOf(season, *d);
    for (std::size_t i = 0; i < filled.slots.size(); ++i)
        piece.slots.push_back(slotDrawing(*filled.slots[i], filled.plants[i]));
    thinOut(piece);
    return piece;
}

} // namespace

VesselDrawing vesselDrawing(const model::Container& container, double waterShare) {
    return vesselOf(container, PieceKind::table, waterShare);
}

PieceIndex::PieceIndex(const model::Season& season) : season_(season) {
    std::map<Id<model::Slot>, const model::SlotPlant*> best;
    for (const auto& choice : season.slotPlants) {
        auto& first = best[choice.slot];
        if (!first || plan::isBefore(choice, *first)) first = &choice;
    }
    for (const auto& slot : season.slots) {
        if (slot.count.value > 0) filled_[slot.design].slots.push_back(&slot);
    }
    for (auto& [design, filled] : filled_) {
        inMakingOrder(filled.slots);
        for (const auto* slot : filled.slots) {
            const auto found = best.find(slot->id);
            filled.plants.push_back(found == best.end() ? nullptr : season.plants.find(found->second->plant));
        }
    }
}

const PieceIndex::Filled& PieceIndex::of(Id<model::Design> design) const {
    const auto found = filled_.find(design);
    return found == filled_.end() ? none_ : found->second;
}

PieceDrawing pieceDrawing(const PieceIndex& index, Id<model::Design> design) {
    return drawingOf(index.season(), design, index.of(design));
}

PieceDrawing pieceDrawing(const model::Season& season, Id<model::Design> design) {
    return drawingOf(season, design, filledOf(season, design));
}

PieceDrawing grownPiece(const model::Season& season, Id<model::Design> design,
                        const std::vector<designs::WaterPhase>& stood) {
    const auto filled = filledOf(season, design);
    auto piece = drawingOf(season, design, filled);
    for (std::size_t i = 0; i < std::min(piece.slots.size(), filled.plants.size()); ++i) {
        if (filled.plants[i]) piece.slots[i].grown = plan::grownOn(*filled.plants[i], stood);
    }
    return piece;
}

} // namespace withy::ui
