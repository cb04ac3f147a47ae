// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/cover/simple_supply.h"
#include "tests/model/sample.h"

/// A season small enough to count by hand: one bed of coral zinnias, a bed of a near colour and one of a far
/// one, and two suppers of thirty jars with three stems each on the same evening.
namespace withy::plan::tests {

inline constexpr Id<model::Plant> coral{1}, salmon{2}, white{3};
inline constexpr Id<model::Booking> bookedSupper{1}, askedSupper{2};
inline constexpr Id<model::Design> jar{1};

inline model::Plant zinnia(Id<model::Plant> id, const char* name, const char* colour) {
    auto p = model::sample::plant(id.value, name);
    p.focal = true;
    p.colour1 = Colour::parse(colour);
    p.stemLengthMin = Millimetres(300);
    p.stemLengthMax = Millimetres(600);
    p.vaseLifeMinDays = 7;
    p.bunch = Stems(10);
    p.costPerStem = Money{30};
    p.holdDays = 3;
    return p;
}

inline model::Patch bedOf(std::int64_t id, Id<model::Plant> plant, std::int64_t stems) {
    model::Patch p;
    p.id = Id<model::Patch>(id);
    p.plant = plant;
    p.label = "Bed " + std::to_string(id);
    p.expectedStems = Stems(stems);
    p.firstCut = model::sample::day(2027, 9, 7);
    p.peakCut = model::sample::day(2027, 9, 9);
    p.lastCut = model::sample::day(2027, 9, 9);
    return p;
}

inline model::Edit ninetyRecords(std::int64_t coralStems) {
    model::Edit e("test.ninety");
    auto settings = model::sample::settings();
    settings.sparePercent = 0;
    e.put(settings);
    e.put(zinnia(coral, "Zinnia, coral", "#ff7f50"));
    e.put(zinnia(salmon, "Zinnia, salmon", "#fa8072"));
    e.put(zinnia(white, "Zinnia, white", "#ffffff"));
    e.put(bedOf(1, coral, coralStems));
    e.put(bedOf(2, salmon, 60));
    e.put(bedOf(3, white, 500));
    model::Container c;
    c.id = Id<model::Container>(1);
    c.name = "Jar";
    c.innerRim = Millimetres(70);
    c.innerDepth = Millimetres(110);
    c.owned = 70;
    e.put(c);
    model::Design d;
    d.id = jar;
    d.name = "Supper jar";
    d.container = c.id;
    d.minutes = 6;
    e.put(d);
    model::Slot s;
    s.id = Id<model::Slot>(1);
    s.design = jar;
    s.label = "Face";
    s.purpose = model::Purpose::focal;
    s.count = Stems(3);
    e.put(s);
    model::SlotPlant sp;
    sp.id = Id<model::SlotPlant>(1);
    sp.slot = s.id;
    sp.plant = coral;
    e.put(sp);
    return e;
}

inline void addSupper(model::Edit& e, Id<model::Booking> id, model::Standing standing, std::int64_t jars) {
    auto b = model::sample::booking(id.value, "Supper " + std::to_string(id.value));
    b.standing = standing;
    e.put(b);
    model::Line l;
    l.id = Id<model::Line>(id.value);
    l.booking = id;
    l.design = jar;
    l.pieces = Pieces(jars);
    e.put(l);
}

inline model::Season applied(const model::Season& season, const model::Edit& edit) {
    auto done = model::apply(season, edit);
    return std::move(done).value().season;
}

inline model::Season ninetySeason(std::int64_t coralStems = 90) {
    auto e = ninetyRecords(coralStems);
    addSupper(e, bookedSupper, model::Standing::booked, 30);
    addSupper(e, askedSupper, model::Standing::enquiry, 30);
    return applied({}, e);
}

} // namespace withy::plan::tests
