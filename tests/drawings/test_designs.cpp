// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/drawings/test_designs.h"

namespace withy {

namespace {

using model::BloomShape;
using model::PieceKind;
using model::Purpose;
using model::RibbonFinish;
using model::Tier;

struct Flower {
    const char* name;
    BloomShape shape;
    Purpose purpose;
    std::uint32_t colour;
    std::uint32_t eye; ///< nought: none
    double head;
    double stem;
};

// All figures are invented: these plants stand for shapes.
constexpr Flower flowers[]{
    {"plum ball", BloomShape::globe, Purpose::focal, 0x83304F, 0, 95, 6},
    {"coral round", BloomShape::daisy, Purpose::focal, 0xE8705A, 0, 55, 4},
    {"white daisy", BloomShape::daisy, Purpose::filler, 0xF7F3E8, 0xE0B13A, 60, 3},
    {"dark eye", BloomShape::daisy, Purpose::focal, 0xC77A2B, 0x2E1A12, 70, 4},
    {"lilac star", BloomShape::daisy, Purpose::filler, 0x9B8ACB, 0xE0B13A, 30, 3},
    {"olive umbel", BloomShape::umbel, Purpose::airy, 0x8F8B45, 0, 75, 4},
    {"cream plate", BloomShape::umbel, Purpose::filler, 0xEADFB8, 0, 60, 4},
    {"apricot spike", BloomShape::spike, Purpose::spike, 0xF4B27E, 0, 28, 7},
    {"blue spike", BloomShape::spike, Purpose::spike, 0x5566A8, 0, 26, 4},
    {"pink bell", BloomShape::bell, Purpose::filler, 0xD98BA5, 0, 40, 4},
    {"red cup", BloomShape::bell, Purpose::focal, 0xB83A3A, 0, 45, 6},
    {"yellow trumpet", BloomShape::trumpet, Purpose::focal, 0xF0D14A, 0xE59A2C, 60, 5},
    {"rose plume", BloomShape::plume, Purpose::filler, 0xCF7F95, 0, 40, 4},
    {"sweet pea", BloomShape::pea, Purpose::filler, 0xC65E9C, 0, 40, 2},
    {"dark leaf", BloomShape::leaf, Purpose::foliage, 0x5B2A36, 0, 90, 3},
    {"green leaf", BloomShape::leaf, Purpose::foliage, 0x6F8E4E, 0, 80, 3},
    {"hanging stem", BloomShape::leaf, Purpose::trailing, 0x5F8050, 0, 120, 2},
    {"oat grass", BloomShape::grass, Purpose::airy, 0xC9B57A, 0, 60, 1.5},
    {"red berry", BloomShape::berry, Purpose::filler, 0xA02C2C, 0, 45, 3},
};

Colour rgb(std::uint32_t v) {
    return {static_cast<std::uint8_t>(v >> 16 & 0xFF), static_cast<std::uint8_t>(v >> 8 & 0xFF),
            static_cast<std::uint8_t>(v & 0xFF)};
}

/// Builds one season with everything in it.
class Maker {
public:
    Maker() {
        for (const auto& f : flowers)
            season.plants.put(plantOf(f));
        ribbon("moss", 0x6F8E4E, 15);
        ribbon("oat", 0xD8C7A3, 25);
        ribbon("plum", 0x6E2F50, 38);
    }

    Id<model::Container> container(const char* name, model::ProfileKind profile, int rim, int depth,
                                   int height, int across, int neck = 0) {
        model::Container c;
        c.id = season.containers.nextId();
        c.name = name;
        c.profile = profile;
        c.innerRim = Millimetres(rim);
        c.innerDepth = Millimetres(depth);
        c.outerHeight = Millimetres(height);
        c.outerDiameter = Millimetres(across);
        if (neck > 0) c.neckHeight = Millimetres(neck);
        season.containers.put(c);
        return c.id;
    }

    template <class How>
    void change(Id<model::Container> id, How how) {
        model::Container c = *season.containers.find(id);
        how(c);
        season.containers.put(c);
    }

    struct Heights {
        int low, middle, tall, spread;
    };

    Id<model::Design> design(const char* name, PieceKind kind, Heights h) {
        model::Design d;
        d.id = season.designs.nextId();
        d.name = name;
        d.kind = kind;
        d.heightLow = Millimetres(h.low);
        d.heightMiddle = Millimetres(h.middle);
        d.heightTall = Millimetres(h.tall);
        d.spread = Millimetres(h.spread);
        season.designs.put(d);
        all.push_back({name, d.id});
        return d.id;
    }

    template <class How>
    void change(Id<model::Design> id, How how) {
        model::Design d = *season.designs.find(id);
        how(d);
        season.designs.put(d);
    }

    void tie(Id<model::Design> id, std::int64_t mix, int wraps, RibbonFinish finish, int loop, int tail) {
        change(id, [&](auto& d) {
            d.ribbonMix = Id<model::RibbonMix>(mix);
            d.wraps = wraps;
            d.finish = finish;
            d.loop = Millimetres(loop);
            d.tail = Millimetres(tail);
        });
    }

    void slot(Id<model::Design> design, const char* plant, int count, Tier tier, bool clump = false) {
        model::Slot s;
        s.id = season.slots.nextId();
        s.design = design;
        s.position = s.id.value;
        s.label = plant;
        s.count = Stems(count);
        s.tier = tier;
        s.clump = clump;
        model::SlotPlant choice;
        choice.id = season.slotPlants.nextId();
        choice.slot = s.id;
        for (const auto& p : season.plants) {
            if (p.name != plant) continue;
            choice.plant = p.id;
            s.purpose = purposeOf(p);
        }
        season.slots.put(s);
        season.slotPlants.put(choice);
    }

    model::Season season;
    std::vector<TestDesign> all;

private:
    model::Plant plantOf(const Flower& f) {
        model::Plant p;
        p.id = season.plants.nextId();
        p.name = f.name;
        p.shape = f.shape;
        p.focal = f.purpose == Purpose::focal;
        p.spike = f.purpose == Purpose::spike;
        p.filler = f.purpose == Purpose::filler;
        p.foliage = f.purpose == Purpose::foliage;
        p.airy = f.purpose == Purpose::airy;
        p.trailing = f.purpose == Purpose::trailing;
        p.colour1 = rgb(f.colour);
        if (f.eye != 0) p.colour2 = rgb(f.eye);
        p.headDiameterMm = f.head;
        p.stemDiameterMm = f.stem;
        return p;
    }

    static Purpose purposeOf(const model::Plant& p) {
        return p.focal      ? Purpose::focal
               : p.spike    ? Purpose::spike
               : p.foliage  ? Purpose::foliage
               : p.airy     ? Purpose::airy
               : p.trailing ? Purpose::trailing
                            : Purpose::filler;
    }

    void ribbon(const char* name, std::uint32_t colour, int width) {
        model::Ribbon r;
        r.id = season.ribbons.nextId();
        r.name = name;
        r.colour = rgb(colour);
        r.width = Millimetres(width);
        season.ribbons.put(r);
        model::RibbonMix mix;
        mix.id = season.ribbonMixes.nextId();
        mix.name = name;
        season.ribbonMixes.put(mix);
        model::RibbonMixPart part;
        part.id = season.ribbonMixParts.nextId();
        part.mix = mix.id;
        part.ribbon = r.id;
        season.ribbonMixParts.put(part);
    }
};

void addStanding(Maker& m) {
    const auto jar = m.container("jar", model::ProfileKind::cylinder, 60, 105, 112, 76, 16);
    m.change(jar, [](auto& c) { c.innerBody = Millimetres(70); });
    const auto table = m.design("table", PieceKind::table, {60, 110, 170, 210});
    m.change(table, [&](auto& d) { d.container = jar; });
    m.tie(table, 1, 1, RibbonFinish::knot, 0, 70);
    m.slot(table, "dark leaf", 2, Tier::low);
    m.slot(table, "olive umbel", 2, Tier::tall);
    m.slot(table, "plum ball", 2, Tier::middle);
    m.slot(table, "coral round", 3, Tier::low);
    m.slot(table, "apricot spike", 1, Tier::tall);

    const auto bowl = m.container("bowl", model::ProfileKind::rounded, 180, 100, 112, 196);
    m.change(bowl, [](auto& c) { c.innerBase = Millimetres(90); });
    const auto lunch = m.design("bowl", PieceKind::table, {40, 90, 120, 330});
    m.change(lunch, [&](auto& d) { d.container = bowl; });
    m.slot(lunch, "green leaf", 6, Tier::low);
    m.slot(lunch, "dark eye", 7, Tier::middle);
    m.slot(lunch, "red cup", 5, Tier::tall);
    m.slot(lunch, "lilac star", 8, Tier::low);

    const auto bottle = m.container("bottle", model::ProfileKind::cylinder, 22, 130, 137, 60, 40);
    m.change(bottle, [](auto& c) { c.innerBody = Millimetres(54); });
    const auto bud = m.design("bud-vase", PieceKind::budVase, {45, 80, 130, 90});
    m.change(bud, [&](auto& d) { d.container = bottle; });
    m.tie(bud, 1, 2, RibbonFinish::plain, 0, 0);
    m.slot(bud, "sweet pea", 2, Tier::tall);
    m.slot(bud, "white daisy", 1, Tier::low);

    const auto urn = m.container("urn", model::ProfileKind::rounded, 260, 180, 200, 280);
    m.change(urn, [](auto& c) { c.innerBase = Millimetres(110); });
    const auto pedestal = m.design("pedestal", PieceKind::pedestal, {120, 300, 520, 900});
    m.change(pedestal, [&](auto& d) { d.container = urn; });
    m.slot(pedestal, "hanging stem", 4, Tier::low);
    m.slot(pedestal, "green leaf", 8, Tier::middle);
    m.slot(pedestal, "blue spike", 7, Tier::tall);
    m.slot(pedestal, "plum ball", 7, Tier::middle);
    m.slot(pedestal, "cream plate", 8, Tier::low);

    const auto trug = m.container("trug", model::ProfileKind::tapered, 240, 120, 130, 250);
    m.change(trug, [](auto& c) { c.innerBase = Millimetres(180); });
    const auto basket = m.design("basket", PieceKind::basket, {50, 100, 150, 340});
    m.change(basket, [&](auto& d) { d.container = trug; });
    m.slot(basket, "oat grass", 5, Tier::tall);
    m.slot(basket, "rose plume", 5, Tier::middle);
    m.slot(basket, "yellow trumpet", 5, Tier::middle);
    m.slot(basket, "red berry", 4, Tier::low);
}

void addTied(Maker& m) {
    const auto hand = m.design("hand-tied", PieceKind::handTied, {70, 120, 190, 300});
    m.change(hand, [](auto& d) {
        d.stemsBelowTie = Millimetres(140);
        d.loose = false;
    });
    m.tie(hand, 2, 3, RibbonFinish::bow, 90, 260);
    m.slot(hand, "dark leaf", 5, Tier::low);
    m.slot(hand, "plum ball", 5, Tier::middle);
    m.slot(hand, "pink bell", 5, Tier::low);
    m.slot(hand, "apricot spike", 4, Tier::tall);
    m.slot(hand, "white daisy", 6, Tier::middle);

    const auto button = m.design("buttonhole", PieceKind::buttonhole, {15, 30, 45, 60});
    m.change(button, [](auto& d) { d.stemsBelowTie = Millimetres(45); });
    m.tie(button, 1, 3, RibbonFinish::plain, 0, 0);
    m.slot(button, "green leaf", 1, Tier::tall);
    m.slot(button, "lilac star", 2, Tier::middle);
    m.slot(button, "red berry", 1, Tier::low);

    const auto corsage = m.design("corsage", PieceKind::corsage, {15, 30, 45, 110});
    m.change(corsage, [](auto& d) { d.stemsBelowTie = Millimetres(30); });
    m.tie(corsage, 1, 1, RibbonFinish::bow, 30, 60);
    m.slot(corsage, "green leaf", 3, Tier::low);
    m.slot(corsage, "red cup", 1, Tier::middle);
    m.slot(corsage, "lilac star", 3, Tier::middle);

    const auto sheaf = m.design("sheaf", PieceKind::sheaf, {120, 260, 420, 380});
    m.change(sheaf, [](auto& d) { d.stemsBelowTie = Millimetres(220); });
    m.tie(sheaf, 3, 2, RibbonFinish::bow, 140, 300);
    m.slot(sheaf, "green leaf", 6, Tier::middle);
    m.slot(sheaf, "blue spike", 6, Tier::tall);
    m.slot(sheaf, "plum ball", 5, Tier::low);
    m.slot(sheaf, "cream plate", 5, Tier::middle);

    const auto spray = m.design("spray", PieceKind::spray, {80, 220, 380, 420});
    m.change(spray, [](auto& d) { d.stemsBelowTie = Millimetres(180); });
    m.tie(spray, 2, 1, RibbonFinish::knot, 0, 180);
    m.slot(spray, "green leaf", 7, Tier::middle);
    m.slot(spray, "dark eye", 6, Tier::low);
    m.slot(spray, "oat grass", 5, Tier::tall);
    m.slot(spray, "white daisy", 6, Tier::middle);

    const auto pew = m.design("pew-end", PieceKind::pewEnd, {60, 110, 170, 240});
    m.change(pew, [](auto& d) { d.stemsBelowTie = Millimetres(120); });
    m.tie(pew, 2, 2, RibbonFinish::bow, 110, 350);
    m.slot(pew, "hanging stem", 3, Tier::low);
    m.slot(pew, "coral round", 4, Tier::middle);
    m.slot(pew, "olive umbel", 3, Tier::tall);
}

void addRings(Maker& m) {
    const auto crown = m.design("crown", PieceKind::crown, {20, 35, 50, 200});
    m.tie(crown, 1, 1, RibbonFinish::bow, 60, 200);
    m.slot(crown, "green leaf", 14, Tier::low);
    m.slot(crown, "coral round", 8, Tier::middle);
    m.slot(crown, "lilac star", 10, Tier::middle);

    const auto wreath = m.design("wreath", PieceKind::wreath, {20, 40, 60, 360});
    m.tie(wreath, 3, 1, RibbonFinish::bow, 120, 260);
    m.slot(wreath, "dark leaf", 18, Tier::low);
    m.slot(wreath, "red berry", 8, Tier::middle);
    m.slot(wreath, "white daisy", 9, Tier::middle);

    const auto garland = m.design("garland", PieceKind::garland, {60, 100, 140, 1600});
    m.slot(garland, "green leaf", 26, Tier::low);
    m.slot(garland, "coral round", 14, Tier::middle);
    m.slot(garland, "plum ball", 9, Tier::middle);
}

} // namespace

TestDesigns testDesigns() {
    Maker m;
    addStanding(m);
    addTied(m);
    addRings(m);
    return {std::move(m.season), std::move(m.all)};
}

} // namespace withy
