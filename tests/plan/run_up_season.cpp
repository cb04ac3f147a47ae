// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/plan/run_up_season.h"

#include <random>
#include <set>
#include <stdexcept>

namespace withy::plan::tests {

namespace {

using model::sample::at;
using model::sample::day;

model::Line lineOfJars(std::int64_t id, Id<model::Booking> booking, std::int64_t pieces,
                       std::int64_t design = 1) {
    model::Line line;
    line.id = Id<model::Line>(id);
    line.booking = booking;
    line.design = Id<model::Design>(design);
    line.pieces = Pieces(pieces);
    return line;
}

model::Drop dropAt(std::int64_t id, Id<model::Booking> booking, LocalTime time) {
    model::Drop drop;
    drop.id = Id<model::Drop>(id);
    drop.booking = booking;
    drop.place = "Door " + std::to_string(id);
    drop.time = time;
    return drop;
}

model::Booking bookingAt(std::int64_t id, LocalTime start) {
    auto b = model::sample::booking(id, "Supper " + std::to_string(id));
    b.eventStart = start;
    b.eventEnd = start + Minutes(240);
    b.standing = model::Standing::booked;
    return b;
}

void addSlot(model::Edit& e, std::int64_t id, std::int64_t design, std::int64_t stems) {
    model::Slot slot;
    slot.id = Id<model::Slot>(id);
    slot.design = Id<model::Design>(design);
    slot.label = "Face";
    slot.purpose = model::Purpose::focal;
    slot.count = Stems(stems);
    e.put(slot);
    model::SlotPlant fill;
    fill.id = Id<model::SlotPlant>(id);
    fill.slot = slot.id;
    fill.plant = Id<model::Plant>(1);
    e.put(fill);
}

void addDesigns(model::Edit& e) {
    model::Container jar;
    jar.id = Id<model::Container>(1);
    jar.name = "Jar";
    jar.innerRim = Millimetres(70);
    jar.innerDepth = Millimetres(110);
    e.put(jar);
    model::Design design;
    design.id = Id<model::Design>(1);
    design.name = "Supper jar";
    design.container = jar.id;
    design.minutes = 6;
    e.put(design);
    addSlot(e, 1, 1, 5);
    model::Design worn;
    worn.id = Id<model::Design>(2);
    worn.name = "Buttonhole";
    worn.kind = model::PieceKind::buttonhole;
    worn.minutes = 12;
    e.put(worn);
    addSlot(e, 2, 2, 1);
}

model::Helper helperOf(Id<model::Helper> id, const char* name, model::Speed speed) {
    model::Helper h;
    h.id = id;
    h.name = name;
    h.speed = speed;
    h.canMake = true;
    return h;
}

void addHours(model::Edit& e, std::int64_t id, Id<model::Helper> helper, LocalTime from, LocalTime to) {
    model::HelperHours hours;
    hours.id = Id<model::HelperHours>(id);
    hours.helper = helper;
    hours.from = from;
    hours.to = to;
    e.put(hours);
}

class SeasonDice {
public:
    explicit SeasonDice(std::uint64_t seed) : random_(seed) {}

    model::Edit edit() {
        e_ = tenJars();
        people();
        const int bookings = between(1, 4);
        for (int b = 1; b <= bookings; ++b)
            booking(b);
        for (int n = between(0, 5); n > 0; --n)
            busy();
        for (int n = between(0, 3); n > 0; --n)
            mark(between(1, bookings));
        return std::move(e_);
    }

private:
    int between(int a, int b) {
        return a + static_cast<int>(random_() % static_cast<std::uint64_t>(b - a + 1));
    }

    bool percent(int p) { return between(1, 100) <= p; }

    LocalTime some(int firstDay, int lastDay) {
        return at(2027, 9, between(firstDay, lastDay), between(6, 19), between(0, 3) * 15);
    }

    void people() {
        std::int64_t hours = 1;
        for (int h = 1; h <= between(0, 2); ++h) {
            auto helper = helperOf(Id<model::Helper>(h), h == 1 ? "Wilf" : "Tess",
                                   percent(50) ? model::Speed::learning : model::Speed::skilled);
            helper.canCut = percent(40);
            helper.canDrive = percent(40);
            helper.canMake = percent(70);
            e_.put(helper);
            for (int n = between(0, 4); n > 0; --n) {
                const auto from = some(6, 12);
                addHours(e_, hours++, helper.id, from, from + Minutes(between(2, 20) * 15));
            }
            helpers_ = h;
        }
    }

    void booking(int b) {
        const auto start = at(2027, 9, between(9, 12), between(10, 19), 0);
        auto record = bookingAt(b, start);
        if (percent(30)) record.makeFrom = LocalTime{start.day - between(0, 1), between(7, 12) * 60};
        if (record.makeFrom && start - Minutes(120) < *record.makeFrom) record.makeFrom.reset();
        e_.put(record);
        e_.put(lineOfJars(b * 10, record.id, between(2, 25)));
        if (percent(40)) e_.put(lineOfJars(b * 10 + 1, record.id, between(1, 8), 2));
        for (int d = between(0, 2); d > 0; --d) {
            auto drop = dropAt(b * 10 + d, record.id, start - Minutes(between(4, 20) * 15));
            if (percent(40)) drop.clearedAt = record.eventEnd + Minutes(between(0, 40) * 15);
            e_.put(drop);
        }
    }

    void busy() {
        model::BusyHours b;
        b.id = Id<model::BusyHours>(++busy_);
        b.label = "Shop hours";
        b.from = some(6, 12);
        b.to = b.from + Minutes(between(1, 24) * 15);
        b.repeats = percent(30) ? model::Repeat::daily : model::Repeat::never;
        if (helpers_ > 0 && percent(30)) b.helper = Id<model::Helper>(1);
        e_.put(b);
    }

    void mark(int booking) {
        constexpr StepKind kinds[] = {StepKind::washContainers, StepKind::fillWater, StepKind::make,
                                      StepKind::pack};
        model::StepMark m;
        m.id = Id<model::StepMark>(++marks_);
        m.step = kinds[between(0, 3)];
        m.booking = Id<model::Booking>(booking);
        if (m.step == StepKind::make) m.line = Id<model::Line>(booking * 10);
        if (m.step == StepKind::pack) return;               // its drop is not known here
        if (!said_.emplace(m.step, booking).second) return; // one mark says all there is to say
        const auto when = some(7, 10);
        if (percent(60))
            m.pinned = when;
        else
            m.done = when;
        e_.put(m);
    }

    std::mt19937_64 random_;
    model::Edit e_{"dice"};
    std::set<std::pair<StepKind, int>> said_;
    int helpers_ = 0;
    std::int64_t busy_ = 0;
    std::int64_t marks_ = 0;
};

} // namespace

model::Season changed(const model::Season& season, const model::Edit& edit) {
    auto done = model::apply(season, edit);
    if (!done.ok()) throw std::runtime_error("the edit is not sound: " + done.error().front().field);
    return std::move(done).value().season;
}

model::Edit tenJars() {
    model::Edit e("test.jars");
    auto settings = model::sample::settings();
    settings.sparePercent = 0;
    settings.workTo = 19 * 60;
    e.put(settings);
    auto zinnia = model::sample::plant(1, "Zinnia, coral");
    zinnia.focal = true;
    zinnia.stemLengthMin = Millimetres(300);
    zinnia.stemLengthMax = Millimetres(600);
    zinnia.vaseLifeMinDays = 9;
    e.put(zinnia);
    addDesigns(e);
    return e;
}

model::Season tenJarsSeason() {
    auto e = tenJars();
    e.put(bookingAt(1, at(2027, 9, 11, 18, 30)));
    e.put(lineOfJars(1, supper, 10));
    e.put(dropAt(1, supper, at(2027, 9, 11, 13)));
    return changed({}, e);
}

model::Season threeBookings() {
    auto e = tenJars();
    e.put(helperOf(wilf, "Wilf", model::Speed::skilled));
    auto learner = helperOf(tess, "Tess", model::Speed::learning);
    learner.canCut = true;
    learner.canMake = false;
    e.put(learner);
    std::int64_t hours = 1;
    for (const int d : {8, 9, 10, 11}) {
        addHours(e, hours++, wilf, at(2027, 9, d, 9), at(2027, 9, d, 15));
        addHours(e, hours++, tess, at(2027, 9, d, 13), at(2027, 9, d, 18));
    }
    const LocalTime starts[] = {at(2027, 9, 10, 14), at(2027, 9, 11, 15), at(2027, 9, 11, 19)};
    for (int b = 1; b <= 3; ++b) {
        const auto start = starts[b - 1];
        e.put(bookingAt(b, start));
        e.put(lineOfJars(b * 10, Id<model::Booking>(b), 14));
        e.put(lineOfJars(b * 10 + 1, Id<model::Booking>(b), 4, 2));
        auto drop = dropAt(b, Id<model::Booking>(b), start - Minutes(150));
        drop.clearedAt = start + Minutes(20 * 60);
        e.put(drop);
    }
    return changed({}, e);
}

model::Season diceSeason(std::uint64_t seed) {
    return changed({}, SeasonDice(seed).edit());
}

} // namespace withy::plan::tests
