// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/piece_colours.h"

#include "core/plan/design_plan.h"

#include <algorithm>
#include <cmath>

namespace withy::plan {

namespace {

using designs::Shown;
using designs::ShownThing;
using model::BloomShape;

// Lengths of what is not round, in diameters; as drawn (own choice).
constexpr double leafLength = 1.15;
constexpr double leafWidth = 0.66;
constexpr double grassLength = 2;

std::vector<Colour> coloursOfPlant(const model::Plant& p) {
    std::vector<Colour> colours;
    for (const auto& c : {p.colour1, p.colour2, p.colour3}) {
        if (c) colours.push_back(*c);
    }
    return colours;
}

ShownThing shownPlant(const model::Plant& p, std::int64_t count) {
    ShownThing thing;
    thing.count = count;
    thing.subject = p.name;
    thing.colours = coloursOfPlant(p);
    thing.across = p.headDiameterMm;
    if (p.shape == BloomShape::leaf && p.headDiameterMm) {
        thing.shape = Shown::leaf;
        thing.across = *p.headDiameterMm * leafWidth;
        thing.along = *p.headDiameterMm * leafLength;
    } else if (p.shape == BloomShape::grass && p.headDiameterMm) {
        thing.shape = Shown::grass;
        thing.along = *p.headDiameterMm * grassLength;
    } else if (p.shape == BloomShape::leaf || p.shape == BloomShape::grass) {
        thing.shape = Shown::leaf;
    }
    return thing;
}

double shownMm(Millimetres length) {
    return static_cast<double>(length.value);
}

/// What is seen of a piece's ribbon from one side: its wraps across the neck, loops and tails.
double ribbonSeen(const model::Season& season, const model::Design& d) {
    double neck = 40; // of a hand-tied bunch (own choice)
    if (const auto* c = d.container ? season.containers.find(*d.container) : nullptr)
        neck = shownMm(c->outerNeck.value_or(c->innerRim));
    double seen = neck * static_cast<double>(d.wraps);
    if (d.finish == model::RibbonFinish::knot || d.finish == model::RibbonFinish::bow)
        seen += 2 * shownMm(d.tail);
    if (d.finish == model::RibbonFinish::bow) seen += shownMm(d.loop) * static_cast<double>(d.loops);
    return seen;
}

void addShownRibbon(std::vector<ShownPart>& out, const model::Season& season, const model::Design& d,
                    std::int64_t pieces) {
    if (!d.ribbonMix || d.finish == model::RibbonFinish::none) return;
    for (const auto& part : season.ribbonMixParts) {
        if (part.mix != *d.ribbonMix) continue;
        const auto* ribbon = season.ribbons.find(part.ribbon);
        if (!ribbon) continue;
        ShownThing thing;
        thing.shape = Shown::ribbon;
        thing.count = pieces;
        thing.across = shownMm(ribbon->width) * part.share / 100;
        thing.along = ribbonSeen(season, d);
        if (ribbon->colour) thing.colours = {*ribbon->colour};
        thing.subject = ribbon->name;
        out.push_back({thing, d.id, std::nullopt, std::nullopt});
    }
}

/// Whole stems of each plant of a slot, over all pieces: parts by wished share, the rest to the best.
void addShownSlot(std::vector<ShownPart>& out, const Index& index, const model::Slot& slot,
                  std::int64_t pieces) {
    const auto fill = slotFill(index, slot.id);
    std::int64_t left = slot.count.value * pieces;
    for (std::size_t i = fill.size(); i-- > 0;) {
        const double wanted = fill[i].second * static_cast<double>(slot.count.value * pieces);
        const auto stems = i == 0 ? left : std::min<std::int64_t>(left, std::llround(wanted));
        left -= stems;
        const auto& plant = *index.season.plants.find(fill[i].first);
        if (stems > 0) out.push_back({shownPlant(plant, stems), slot.design, slot.id, plant.id});
    }
}

std::vector<ShownPart> shownWith(const Index& index, Id<model::Design> design, std::int64_t pieces) {
    std::vector<ShownPart> out;
    const auto* d = index.season.designs.find(design);
    if (!d || pieces < 1) return out;
    for (const auto* slot : Index::of(index.slots, design))
        addShownSlot(out, index, *slot, pieces);
    addShownRibbon(out, index.season, *d, pieces);
    return out;
}

void takeShown(std::vector<ShownPart>& to, std::vector<ShownPart> more) {
    to.insert(to.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
}

} // namespace

std::vector<ShownPart> shownBy(const model::Season& season, Id<model::Design> design, std::int64_t pieces) {
    return shownWith(Index(season), design, pieces);
}

std::vector<ShownPart> shownBy(const model::Season& season, const shareout::ShareOut& share) {
    std::vector<ShownPart> out;
    for (const auto& line : share.lines) {
        const auto* l = season.lines.find(line.line);
        const auto* d = l ? season.designs.find(l->design) : nullptr;
        if (!d) continue;
        for (const auto& slot : line.slots) {
            for (const auto& given : slot.plants) {
                const auto* plant = season.plants.find(given.plant);
                if (plant && given.stems.value > 0)
                    out.push_back({shownPlant(*plant, given.stems.value), d->id, slot.slot, plant->id});
            }
        }
        addShownRibbon(out, season, *d, line.pieces.value);
    }
    return out;
}

std::vector<ShownPart> shownIn(const model::Season& season, Id<model::Booking> booking) {
    const Index index(season);
    std::vector<ShownPart> out;
    for (const auto* line : Index::of(index.lines, booking))
        takeShown(out, shownWith(index, line->design, line->pieces.value));
    return out;
}

std::vector<ShownPart> shownOn(const model::Season& season, Id<model::VenueTable> table,
                               Id<model::Booking> booking) {
    const Index index(season);
    std::vector<ShownPart> out;
    for (const auto& placement : season.placements) {
        const auto* line = season.lines.find(placement.line);
        if (placement.table == table && line && line->booking == booking)
            takeShown(out, shownWith(index, line->design, placement.perTable));
    }
    return out;
}

std::vector<designs::ColourWish> wishesOf(const model::Season& season, Id<model::Booking> booking) {
    std::vector<designs::ColourWish> wishes;
    for (const auto& colour : season.bookingColours) {
        if (colour.booking == booking) wishes.push_back({colour.colour, colour.share});
    }
    return wishes;
}

std::optional<ColoursShown> coloursShown(std::vector<ShownPart> parts,
                                         const std::vector<designs::ColourWish>& wishes) {
    std::vector<ShownThing> things;
    for (const auto& part : parts)
        things.push_back(part.thing);
    auto balance = designs::colourBalance(things, wishes);
    if (!balance.ok()) return std::nullopt;
    return ColoursShown{std::move(parts), std::move(balance).value()};
}

} // namespace withy::plan
