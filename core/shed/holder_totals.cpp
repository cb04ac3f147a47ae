// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shed/holder_totals.h"

#include "core/base/range.h"
#include "core/base/working_lines.h"

namespace withy::shed {

namespace {

constexpr std::int64_t mostStems = 100'000'000;
constexpr std::int64_t mostPieces = 1'000'000;
constexpr std::int64_t mostMillilitres = 10'000'000;
constexpr std::int64_t mostRoom = 100'000;

constexpr ByLength<const char*> stemWords{"short stems", "middle stems", "long stems"};

std::int64_t holdersFor(std::int64_t things, std::int64_t room) {
    return roundUpTo(things, room) / room;
}

std::optional<Problem> addClass(std::size_t i, Stems stems, std::optional<Stems> room, Buckets& buckets) {
    if (auto p = outside("stems", stems.value, 0, mostStems)) return p;
    if (room) {
        if (auto p = outside("stems_per_bucket", room->value, 1, mostRoom)) return p;
    }
    if (stems.value == 0) {
        buckets.byClass[i] = 0;
        return std::nullopt;
    }
    buckets.working.push_back(lineOf(Step::given, stemWords[i], stems.value, Unit::stems));
    if (!room) {
        buckets.partlyKnown = true;
        buckets.working.push_back(
            lineOf(Step::given, "stems a bucket not known", 0, Unit::stems, Basis::notKnown));
        return std::nullopt;
    }
    buckets.byClass[i] = holdersFor(stems.value, room->value);
    buckets.total += *buckets.byClass[i];
    buckets.working.push_back(lineOf(Step::over, "stems a bucket", room->value, Unit::stems, Basis::mine));
    buckets.working.push_back(
        lineOf(Step::result, "buckets of one length", *buckets.byClass[i], Unit::count));
    return std::nullopt;
}

std::optional<Problem> addWater(const WaterUse& use, WaterTotal& total) {
    if (auto p = outside("pieces", use.pieces, 0, mostPieces)) return p;
    total.working.push_back(
        lineOf(Step::given, "pieces", use.pieces, Unit::pieces, Basis::mine, {}, use.subject));
    if (!use.each) {
        if (use.pieces > 0) ++total.unknownUses;
        total.working.push_back(
            lineOf(Step::times, "water not known", 0, Unit::millilitres, Basis::notKnown, {}, use.subject));
        return std::nullopt;
    }
    if (auto p = outside("water", use.each->value, 0, mostMillilitres)) return p;
    total.total += *use.each * use.pieces;
    if (auto p = outside("water", total.total.value, 0, mostMillilitres * mostPieces)) return p;
    total.working.push_back(from(use.from, lineOf(Step::times, "water a piece", use.each->value,
                                                  Unit::millilitres, Basis::computed, {}, use.subject)));
    return std::nullopt;
}

} // namespace

LengthClass lengthClass(Millimetres stem) {
    if (stem < middleFrom) return LengthClass::shortStems;
    return stem <= middleTo ? LengthClass::middleStems : LengthClass::longStems;
}

Result<Buckets, Problem> bucketsFor(const ByLength<Stems>& stems,
                                    const ByLength<std::optional<Stems>>& perBucket) {
    Buckets buckets;
    for (std::size_t i = 0; i < stems.size(); ++i) {
        if (const auto p = addClass(i, stems[i], perBucket[i], buckets)) return *p;
    }
    buckets.working.push_back(lineOf(Step::result, "buckets", buckets.total, Unit::count));
    return buckets;
}

Result<WaterTotal, Problem> waterTotal(const std::vector<WaterUse>& uses) {
    WaterTotal total;
    for (const auto& use : uses) {
        if (const auto p = addWater(use, total)) return *p;
    }
    total.litres = static_cast<double>(total.total.value) / 1000;
    total.working.push_back(lineOf(Step::result, "water", total.total.value, Unit::millilitres));
    return total;
}

Result<GriddedBoxes, Problem> griddedBoxes(const std::vector<CellUse>& uses, std::int64_t stemsPerCell,
                                           std::int64_t cellsPerBox) {
    if (const auto p = outside("stems_per_cell", stemsPerCell, 1, mostRoom)) return *p;
    if (const auto p = outside("cells", cellsPerBox, 1, mostRoom)) return *p;
    GriddedBoxes grid;
    for (const auto& use : uses) {
        if (const auto p = outside("stems", use.stems.value, 0, mostStems)) return *p;
        const std::int64_t cells = holdersFor(use.stems.value, stemsPerCell);
        grid.cells += cells;
        if (const auto p = outside("cells", grid.cells, 0, mostStems)) return *p;
        grid.working.push_back(
            lineOf(Step::given, "stems", use.stems.value, Unit::stems, Basis::computed, {}, use.subject));
        grid.working.push_back(
            lineOf(Step::result, "cells", cells, Unit::count, Basis::computed, {}, use.subject));
    }
    grid.boxes = holdersFor(grid.cells, cellsPerBox);
    grid.cellsFree = grid.boxes * cellsPerBox - grid.cells;
    grid.working.push_back(lineOf(Step::given, "cells in a box", cellsPerBox, Unit::count, Basis::mine));
    grid.working.push_back(lineOf(Step::result, "gridded boxes", grid.boxes, Unit::count));
    return grid;
}

} // namespace withy::shed
