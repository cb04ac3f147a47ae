// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/shed/table_plan.h"

#include "core/plan/shed/piece_sizes.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace withy::plan {

namespace {

using model::TableKind;

packing::PiecesOnTable onTable(const PlacedTable& table) {
    Millimetres widest(1);
    for (const auto& p : table.pieces)
        if (p.perTable > 0) widest = std::max(widest, p.footprint);
    return {widest, table.onEach, usualClearance};
}

/// Places one booking's pieces on the tables of its venue.
class TableSetter {
public:
    TableSetter(const ShedInput& in, const model::Booking& booking, const BookingPlan& plan)
        : in_(in), booking_(booking), plan_(plan) {}

    BookingTables tables() {
        if (!booking_.venue) return std::move(out_);
        for (const auto& table : in_.season().venueTables)
            if (table.venue == *booking_.venue) addTable(table);
        std::stable_partition(out_.tables.begin(), out_.tables.end(),
                              [](const PlacedTable& t) { return t.onEach > 0; });
        return std::move(out_);
    }

private:
    void addTable(const model::VenueTable& record) {
        PlacedTable table;
        table.table = record.id;
        table.top = tableTop(record, out_.setting);
        auto middle = packing::freeMiddle(table.top, out_.setting);
        if (!middle.ok()) {
            find(ShedCode::tableSizesImpossible, Severity::fault, record,
                 {record.label, middle.error().field});
            return;
        }
        table.middle = std::move(middle).value();
        for (const auto& line : plan_.lines)
            addPieces(record, line, table);
        if (table.middle.tooManyCovers)
            find(ShedCode::tooManyCovers, table.onEach > 0 ? Severity::warning : Severity::note, record,
                 {record.label},
                 {static_cast<double>(record.covers), static_cast<double>(table.middle.mostCovers)});
        if (table.onEach > 0) judge(record, table);
        out_.tables.push_back(std::move(table));
    }

    void addPieces(const model::VenueTable& record, const LinePlan& line, PlacedTable& table) {
        std::int64_t perTable = 0;
        for (const auto& p : in_.season().placements)
            if (p.line == line.line && p.table == record.id) perTable += p.perTable;
        const auto* design = in_.season().designs.find(line.design);
        if (perTable <= 0 || !design) return;
        const auto size = pieceSize(in_.season(), *design);
        const auto grown = grownByEvent(in_, booking_, plan_, line.design);
        table.pieces.push_back(
            {line.line, line.design, perTable, size.footprint, size.foot, size.height + grown, grown});
        table.onEach += perTable;
        auto& left = left_.try_emplace(line.line, line.pieces.value).first->second;
        const auto there = left;
        left -= std::min(left, perTable * record.howMany);
        const auto reach = (there + perTable - 1) / perTable;
        if (reach >= record.howMany) return;
        table.without = std::max(table.without, record.howMany - reach);
        find(
            ShedCode::tablesWithoutPieces, Severity::note, record, {design->name, record.label},
            {static_cast<double>(there), static_cast<double>(perTable), static_cast<double>(record.howMany)});
    }

    void judge(const model::VenueTable& record, PlacedTable& table) {
        const auto pieces = onTable(table);
        auto fit = packing::fitOnTable(table.top, out_.setting, pieces);
        if (!fit.ok()) {
            find(ShedCode::tableSizesImpossible, Severity::fault, record, {record.label, fit.error().field});
            return;
        }
        table.fit = std::move(fit).value();
        findLargest(pieces, table);
        sayFit(record, table);
        if (record.covers > 0) see(record, table);
    }

    void findLargest(const packing::PiecesOnTable& pieces, PlacedTable& table) {
        std::vector<Millimetres> footprints;
        std::vector<Id<model::Container>> ids;
        for (const auto& c : in_.season().containers) {
            footprints.push_back(outsideOf(c));
            ids.push_back(c.id);
        }
        const auto largest = packing::largestThatFits(table.top, out_.setting, pieces, footprints);
        if (largest.ok() && *largest) table.largest = ids[**largest];
    }

    void sayFit(const model::VenueTable& record, const PlacedTable& table) {
        if (table.fit->fit == packing::TableFit::fits) return;
        const auto* container = table.largest ? in_.season().containers.find(*table.largest) : nullptr;
        const bool over = table.fit->fit == packing::TableFit::tooBig;
        find(over ? ShedCode::pieceTooBigForTable : ShedCode::pieceTightOnTable,
             over ? Severity::warning : Severity::note, record,
             {widestName(table), record.label, container ? container->name : std::string()},
             {std::round(std::abs(table.fit->eachSide))});
    }

    [[nodiscard]] std::string widestName(const PlacedTable& table) const {
        const auto widest = std::max_element(
            table.pieces.begin(), table.pieces.end(),
            [](const TablePieces& a, const TablePieces& b) { return a.footprint < b.footprint; });
        return in_.season().designs.find(widest->design)->name;
    }

    void see(const model::VenueTable& record, PlacedTable& table) {
        const auto tallest =
            std::max_element(table.pieces.begin(), table.pieces.end(),
                             [](const TablePieces& a, const TablePieces& b) { return a.top < b.top; });
        auto sight = packing::sightline({tallest->top, std::nullopt});
        if (!sight.ok()) return;
        table.sight = std::move(sight).value();
        if (table.sight->sight != packing::Sightline::inTheWay) return;
        find(ShedCode::sightInTheWay, Severity::note, record,
             {in_.season().designs.find(tallest->design)->name, record.label},
             {static_cast<double>(table.sight->lowerBy.value)});
    }

    void find(FindingCode code, Severity severity, const model::VenueTable& table,
              std::vector<std::string> subjects, std::vector<double> numbers = {}) {
        out_.findings.push_back(findingOf(code, severity, {TableKind::venueTables, table.id.value},
                                          std::move(subjects), std::move(numbers)));
    }

    const ShedInput& in_;
    const model::Booking& booking_;
    const BookingPlan& plan_;
    std::map<Id<model::Line>, std::int64_t> left_; ///< pieces no kind of table has taken yet
    BookingTables out_;
};

} // namespace

packing::TableTop tableTop(const model::VenueTable& table, const packing::PlaceSetting& setting) {
    packing::TableTop top;
    top.form =
        table.shape == model::TableShape::round ? packing::TableForm::round : packing::TableForm::rectangular;
    top.length = table.length;
    if (top.form == packing::TableForm::rectangular) top.width = table.width.value_or(table.length);
    top.covers = table.covers;
    if (top.form == packing::TableForm::round) return top;
    const auto sides = 2 * (top.length.value / setting.width.value);
    const auto ends = 2 * (top.width->value / setting.width.value);
    top.coversAtEnds = std::clamp<std::int64_t>(top.covers - sides, 0, ends);
    return top;
}

BookingTables bookingTables(const ShedInput& in, const model::Booking& booking, const BookingPlan& plan) {
    return TableSetter(in, booking, plan).tables();
}

} // namespace withy::plan
