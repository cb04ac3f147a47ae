// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/shed/load_entries.h"

#include "core/plan/shed/kit_holds.h"
#include "core/plan/shed/piece_sizes.h"

#include <algorithm>
#include <cmath>

namespace withy::plan {

namespace {

using model::TableKind;

constexpr Millimetres trayWall{10};
constexpr Millimetres bucketWall{5};
constexpr Millimetres canLength{300}, canWidth{200};
constexpr double canTareKg = 0.5;

Stems roomFor(const model::Holder& bucket, Millimetres stem) {
    switch (shed::lengthClass(stem)) {
    case shed::LengthClass::shortStems:
        return bucket.shortStems.value_or(Stems(0));
    case shed::LengthClass::middleStems:
        return bucket.middleStems.value_or(Stems(0));
    case shed::LengthClass::longStems:
        break;
    }
    return bucket.longStems.value_or(Stems(0));
}

Millimetres longestCut(const DesignPlan& design) {
    Millimetres longest;
    for (const auto& slot : design.slots)
        if (slot.cutLength) longest = std::max(longest, slot.cutLength->length);
    return longest;
}

void addBuckets(const ShedInput& in, const LinePlan& line, std::size_t drop, BookingPacking& packing) {
    const auto* bucket = commonestHolder(in.season(), model::HolderKind::bucket);
    if (!bucket) return;
    const auto room = roomFor(*bucket, longestCut(*in.plan.designs.at(line.design)));
    if (room.value < 1) return;
    for (std::int64_t left = line.stems.value; left > 0; left -= room.value) {
        LoadEntry entry;
        entry.kind = LoadKind::bucket;
        entry.drop = drop;
        entry.line = line.line;
        entry.holder = bucket->id;
        entry.count = std::min(left, room.value);
        entry.length = bucket->innerLength.value_or(Millimetres(280)) + 2 * bucketWall;
        entry.width =
            bucket->innerWidth.value_or(bucket->innerLength.value_or(Millimetres(280))) + 2 * bucketWall;
        const auto weight =
            designs::pieceWeight(bucket->tare, bucket->water.value_or(Millilitres(0)), Stems(entry.count));
        if (weight.ok() && !weight->containerUnknown) entry.mass = weight->total;
        packing.entries.push_back(entry);
    }
}

packing::LoadFloor floorOf(const model::Vehicle& vehicle) {
    packing::LoadFloor floor{*vehicle.floorLength, *vehicle.floorWidth, std::nullopt};
    if (vehicle.plateLoadKg)
        floor.plateLoad = Grams(static_cast<std::int64_t>(std::llround(*vehicle.plateLoadKg * 1000)));
    return floor;
}

packing::LoadPlan loadOnto(const model::Vehicle& vehicle, const BookingPacking& packed) {
    const auto floor = floorOf(vehicle);
    std::vector<packing::LoadItem> items;
    for (const auto& e : packed.entries)
        items.push_back({e.length, e.width, e.mass, static_cast<std::int64_t>(e.drop) + 1, true, {}});
    auto load = packing::loadVehicle(floor, items);
    if (load.ok()) return std::move(load).value();
    packing::LoadPlan none; // too many to be laid out at once: nothing is, and that is what is said
    for (std::size_t i = 0; i < items.size(); ++i)
        none.notLoaded.push_back(i);
    return none;
}

double over(double whole, double part) {
    return part > 0 ? std::ceil(whole / part - 1e-9) : 1;
}

/// Fewer cannot do, by the floor's area and by the plate; how many really do is for the laying out.
double tripsAtLeast(const model::Vehicle& vehicle, const BookingPacking& packing) {
    const auto floor = floorOf(vehicle);
    const auto area = [](Millimetres length, Millimetres width) {
        return static_cast<double>(length.value) * static_cast<double>(width.value);
    };
    double things = 0, grams = 0;
    for (const auto& e : packing.entries) {
        things += area(e.length, e.width);
        if (e.mass) grams += static_cast<double>(e.mass->value);
    }
    const double byPlate = floor.plateLoad ? over(grams, static_cast<double>(floor.plateLoad->value)) : 1;
    return std::max({2.0, over(things, area(floor.length, floor.width)), byPlate});
}

/// Those that no trip takes, however they are turned.
double largerThanFloor(const model::Vehicle& vehicle, const BookingPacking& packing) {
    const auto [floorShort, floorLong] = std::minmax(*vehicle.floorLength, *vehicle.floorWidth);
    return static_cast<double>(
        std::count_if(packing.load->notLoaded.begin(), packing.load->notLoaded.end(), [&](std::size_t i) {
            const auto& e = packing.entries[i];
            return std::min(e.length, e.width) > floorShort || std::max(e.length, e.width) > floorLong;
        }));
}

void findLoad(const model::Vehicle& vehicle, BookingPacking& packing) {
    const model::Ref place{TableKind::vehicles, vehicle.id.value};
    const double things = static_cast<double>(packing.entries.size());
    if (packing.entries.size() > packing::mostLoadItems)
        packing.findings.push_back(
            findingOf(ShedCode::loadTooMany, Severity::warning, place, {vehicle.name},
                      {things, static_cast<double>(packing::mostLoadItems), tripsAtLeast(vehicle, packing)}));
    else if (!packing.load->notLoaded.empty())
        packing.findings.push_back(
            findingOf(ShedCode::loadNoRoom, Severity::warning, place, {vehicle.name},
                      {static_cast<double>(packing.load->notLoaded.size()), tripsAtLeast(vehicle, packing),
                       largerThanFloor(vehicle, packing)}));
    if (packing.load->overPlate && packing.load->overPlate->value > 0)
        packing.findings.push_back(
            findingOf(ShedCode::loadOverPlate, Severity::fault, place, {vehicle.name},
                      {static_cast<double>(packing.load->overPlate->value) / 1000, *vehicle.plateLoadKg}));
}

} // namespace

void addMadeThere(const ShedInput& in, const LinePlan& line, const model::Container& container,
                  std::size_t drop, BookingPacking& packing) {
    for (std::int64_t i = 0; i < line.pieces.value; ++i) {
        LoadEntry entry;
        entry.kind = LoadKind::container;
        entry.drop = drop;
        entry.line = line.line;
        entry.count = 1;
        entry.length = entry.width = outsideOf(container);
        entry.mass = container.emptyWeight;
        packing.entries.push_back(entry);
    }
    addBuckets(in, line, drop, packing);
}

void addTrayEntries(const model::Season& season, BookingPacking& packing) {
    std::vector<LoadEntry> trays;
    for (std::size_t d = 0; d < packing.drops.size(); ++d) {
        for (std::size_t t = 0; t < packing.drops[d].trays.size(); ++t) {
            const auto& tray = packing.drops[d].trays[t];
            LoadEntry entry;
            entry.kind = LoadKind::tray;
            entry.drop = d;
            entry.tray = t;
            entry.holder = tray.holder;
            entry.count = static_cast<std::int64_t>(tray.pieces.size());
            entry.length = tray.length + 2 * trayWall;
            entry.width = tray.width + 2 * trayWall;
            const auto* holder = season.holders.find(tray.holder);
            if (holder && !tray.partlyKnown) entry.mass = tray.weight;
            trays.push_back(entry);
        }
    }
    packing.entries.insert(packing.entries.begin(), trays.begin(), trays.end());
}

void addWaterCans(const model::Season& season, BookingPacking& packing) {
    const double most = std::max(1.0, std::floor(season.theSettings().liftingLimitKg - canTareKg));
    for (std::size_t d = 0; d < packing.drops.size();
         ++d) { // each drop's own, to come off where it is poured
        const auto& drop = packing.drops[d];
        for (double left = drop.topUpLitres + drop.checkLitres; left > 1e-9; left -= most) {
            LoadEntry entry;
            entry.kind = LoadKind::waterCan;
            entry.drop = d;
            entry.litres = std::min(left, most);
            entry.length = canLength;
            entry.width = canWidth;
            entry.mass =
                Grams(static_cast<std::int64_t>(std::ceil((entry.litres + canTareKg) * 1000 - 1e-6)));
            packing.entries.push_back(entry);
        }
    }
}

void loadEntries(const ShedInput& in, BookingPacking& packing) {
    const model::Vehicle* chosen = nullptr;
    for (const auto& vehicle : in.season().vehicles) {
        if (!vehicle.floorLength || !vehicle.floorWidth) continue;
        auto load = loadOnto(vehicle, packing);
        const auto worse = [](const packing::LoadPlan& l) {
            return std::pair(l.notLoaded.size(),
                             std::max<std::int64_t>(0, l.overPlate.value_or(Grams(0)).value));
        };
        if (packing.load && worse(load) >= worse(*packing.load)) continue;
        packing.load = std::move(load);
        packing.vehicle = vehicle.id;
        chosen = &vehicle;
        if (packing.load->notLoaded.empty() && packing.load->overPlate.value_or(Grams(0)).value <= 0) break;
    }
    if (chosen) findLoad(*chosen, packing);
}

} // namespace withy::plan
