// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/shed/shed_codes.h"
#include "core/plan/shed_plan.h"
#include "tests/model/sample.h"

/// A shed small enough to count by hand: honey jars tied with moss ribbon, three suppers in September.
namespace withy::plan::tests {

inline constexpr Id<model::Container> honeyJar{1};
inline constexpr Id<model::Ribbon> moss{1};
inline constexpr Id<model::Design> supperJar{1};
inline constexpr Id<model::Holder> slatted{1};

inline model::Container jarRecord(std::optional<std::int64_t> owned) {
    model::Container c;
    c.id = honeyJar;
    c.name = "Honey jar";
    c.innerRim = Millimetres(58);
    c.innerBody = Millimetres(70);
    c.innerDepth = Millimetres(115);
    c.outerHeight = Millimetres(120);
    c.outerDiameter = Millimetres(76);
    c.outerNeck = Millimetres(66);
    c.measuredVolume = Millilitres(400);
    c.emptyWeight = Grams(200);
    c.owned = owned;
    c.cost = Money{55};
    return c;
}

/// Girth of the neck pi x 66 = 207.3; one wrap with 20 over, two tails of 60, 10 trimmed: 357.3, so 358 mm.
inline model::Design jarDesign() {
    model::Design d;
    d.id = supperJar;
    d.name = "Supper jar";
    d.container = honeyJar;
    d.ribbonMix = Id<model::RibbonMix>(1);
    d.wraps = 1;
    d.overlap = Millimetres(20);
    d.finish = model::RibbonFinish::knot;
    d.tail = Millimetres(60);
    d.trim = Millimetres(10);
    d.spread = Millimetres(210);
    d.heightTall = Millimetres(170);
    d.waterShare = 75;
    d.minutes = 6;
    return d;
}

inline void putRibbon(model::Edit& e) {
    model::Ribbon r;
    r.id = moss;
    r.name = "Moss";
    r.width = Millimetres(15);
    r.costPerMetre = Money{22};
    e.put(r);
    model::RibbonMix mix;
    mix.id = Id<model::RibbonMix>(1);
    mix.name = "Moss alone";
    e.put(mix);
    model::RibbonMixPart part;
    part.id = Id<model::RibbonMixPart>(1);
    part.mix = mix.id;
    part.ribbon = moss;
    part.share = 100;
    e.put(part);
}

inline void putLength(model::Edit& e, std::int64_t id, model::RibbonPieceKind kind, std::int64_t mm) {
    model::RibbonLength l;
    l.id = Id<model::RibbonLength>(id);
    l.ribbon = moss;
    l.kind = kind;
    l.length = Millimetres(mm);
    e.put(l);
}

struct Supper {
    std::int64_t id;
    int day; ///< of September 2027; made up the day before, cleared the day after
    std::int64_t jars;
    model::Standing standing = model::Standing::booked;
};

inline void putSupper(model::Edit& e, const Supper& s) {
    auto b = model::sample::booking(s.id, "Supper " + std::to_string(s.id));
    b.eventStart = model::sample::at(2027, 9, s.day, 18, 30);
    b.eventEnd = model::sample::at(2027, 9, s.day, 22, 30);
    b.makeFrom = model::sample::at(2027, 9, s.day - 1, 9);
    b.standing = s.standing;
    if (s.standing == model::Standing::held) b.heldUntil = model::sample::day(2027, 9, 1);
    e.put(b);
    model::Drop d;
    d.id = Id<model::Drop>(s.id);
    d.booking = b.id;
    d.place = "Hall";
    d.time = model::sample::at(2027, 9, s.day, 13);
    d.clearedAt = model::sample::at(2027, 9, s.day + 1, 10);
    e.put(d);
    model::Line l;
    l.id = Id<model::Line>(s.id);
    l.booking = b.id;
    l.design = supperJar;
    l.pieces = Pieces(s.jars);
    l.drop = d.id;
    e.put(l);
}

inline model::Season applied(const model::Season& season, const model::Edit& edit) {
    const auto done = model::apply(season, edit);
    if (!done.ok()) throw std::runtime_error("not sound: " + done.error().front().field);
    return done.value().season;
}

inline model::Season shedSeason(const std::vector<Supper>& suppers, std::optional<std::int64_t> owned = 46) {
    model::Edit e("test.shed");
    e.put(model::sample::settings());
    e.put(jarRecord(owned));
    e.put(jarDesign());
    putRibbon(e);
    for (const auto& s : suppers)
        putSupper(e, s);
    return applied({}, e);
}

inline PlanOptions on(int month, int day) {
    PlanOptions o;
    o.today = model::sample::day(2027, month, day);
    return o;
}

inline const KitItem& kitOf(const ShedPlan& shed, model::Ref item) {
    for (const auto& k : shed.kit)
        if (k.item == item) return k;
    throw std::runtime_error("no such item");
}

inline bool finds(const ShedPlan& shed, FindingCode code) {
    for (const auto& f : shed.findings)
        if (f.finding.code == code) return true;
    return false;
}

} // namespace withy::plan::tests
