// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/model/sample.h"

/// A cutting day small enough to count by hand: 24 jars of ten stems, and 51 dahlias, 64 zinnias, 25
/// snapdragons, 58 fennel, 54 ninebark and 5 cosmos cut for them; 72 zinnias were needed.
namespace withy::ui::tests {

inline constexpr Id<model::Plant> dahlia{1}, zinnia{2}, snapdragon{3}, fennel{4}, ninebark{5}, cosmos{6};
inline constexpr Id<model::Booking> supper{1}, otherSupper{2};
inline constexpr Id<model::Line> supperLine{1};
inline constexpr Id<model::Slot> roundSlot{2};
inline const Day supperBench = model::sample::day(2027, 9, 10);

inline void addPlant(model::Edit& e, Id<model::Plant> id, const char* name, const char* colour) {
    auto p = model::sample::plant(id.value, name);
    p.colour1 = Colour::parse(colour);
    p.stemLengthMax = Millimetres(600);
    e.put(p);
}

inline void addSlot(model::Edit& e, std::int64_t id, const char* label, model::Purpose purpose,
                    std::int64_t count, Id<model::Plant> plant,
                    Id<model::Design> design = Id<model::Design>(1)) {
    model::Slot s;
    s.id = Id<model::Slot>(id);
    s.design = design;
    s.position = id;
    s.label = label;
    s.purpose = purpose;
    s.count = Stems(count);
    e.put(s);
    model::SlotPlant sp;
    sp.id = Id<model::SlotPlant>(id);
    sp.slot = s.id;
    sp.plant = plant;
    e.put(sp);
}

/// One patch and one count for each plant; a blank is not counted.
inline void addTally(model::Edit& e, Id<model::Plant> plant, std::optional<std::int64_t> cut) {
    model::Patch patch;
    patch.id = Id<model::Patch>(plant.value);
    patch.plant = plant;
    patch.label = "Bed " + std::to_string(plant.value);
    e.put(patch);
    model::Tally t;
    t.id = Id<model::Tally>(plant.value);
    t.round = Id<model::Round>(1);
    t.patch = patch.id;
    if (cut) t.cut = Stems(*cut);
    e.put(t);
}

inline void addJars(model::Edit& e, Id<model::Booking> id, std::int64_t jars) {
    auto b = model::sample::booking(id.value, "Supper " + std::to_string(id.value));
    b.standing = model::Standing::booked;
    e.put(b);
    model::Line l;
    l.id = Id<model::Line>(id.value);
    l.booking = id;
    l.design = Id<model::Design>(1);
    l.pieces = Pieces(jars);
    e.put(l);
}

inline model::Edit supperRecords(bool tallied) {
    model::Edit e("test.supper");
    auto settings = model::sample::settings();
    settings.sparePercent = 0;
    e.put(settings);
    addPlant(e, dahlia, "Dahlia, plum", "#6b1f3a");
    auto z = model::sample::plant(zinnia.value, "Zinnia, coral");
    z.colour1 = Colour::parse("#ff7f50");
    z.focal = true;
    z.bunch = Stems(5);
    z.costPerStem = Money{90};
    z.stemLengthMax = Millimetres(600);
    e.put(z);
    addPlant(e, snapdragon, "Snapdragon, apricot", "#f2b48a");
    addPlant(e, fennel, "Fennel, bronze", "#8f8b3e");
    addPlant(e, ninebark, "Ninebark, dark leaf", "#4a1f33");
    addPlant(e, cosmos, "Cosmos, apricot", "#f6b58a");
    model::Container c;
    c.id = Id<model::Container>(1);
    c.name = "Honey jar";
    c.innerRim = Millimetres(66);
    c.innerDepth = Millimetres(105);
    e.put(c);
    model::Design d;
    d.id = Id<model::Design>(1);
    d.name = "Supper jar";
    d.container = c.id;
    d.minutes = 6;
    e.put(d);
    addSlot(e, 1, "Face", model::Purpose::focal, 2, dahlia);
    addSlot(e, 2, "Round", model::Purpose::focal, 3, zinnia);
    addSlot(e, 3, "Spike", model::Purpose::spike, 1, snapdragon);
    addSlot(e, 4, "Airy", model::Purpose::airy, 2, fennel);
    addSlot(e, 5, "Leaf", model::Purpose::foliage, 2, ninebark);
    addJars(e, supper, 24);
    model::AgreedSwap swap;
    swap.id = Id<model::AgreedSwap>(1);
    swap.booking = supper;
    swap.plant = zinnia;
    swap.standIn = cosmos;
    e.put(swap);
    model::Round r;
    r.id = Id<model::Round>(1);
    r.from = model::sample::at(2027, 9, 10, 6);
    r.to = model::sample::at(2027, 9, 10, 8);
    e.put(r);
    model::RoundBooking rb;
    rb.id = Id<model::RoundBooking>(1);
    rb.round = r.id;
    rb.booking = supper;
    e.put(rb);
    const std::pair<Id<model::Plant>, std::int64_t> cut[] = {{dahlia, 51}, {zinnia, 64},   {snapdragon, 25},
                                                             {fennel, 58}, {ninebark, 54}, {cosmos, 5}};
    for (const auto& [plant, stems] : cut)
        addTally(e, plant, tallied ? std::optional(stems) : std::nullopt);
    return e;
}

inline model::Season seasonOf(const model::Edit& edit) {
    auto done = model::apply(model::Season{}, edit);
    return std::move(done).value().season;
}

/// 64 zinnias of 72.
inline model::Season supperSeason() {
    return seasonOf(supperRecords(true));
}

} // namespace withy::ui::tests
