// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/shelf_pages.h"

#include "ui/logic/answers/shed_answers.h"

#include <QCoreApplication>

namespace withy::ui {

namespace {

struct ShelfPagesSay {
    Q_DECLARE_TR_FUNCTIONS(ShelfPages)
};

} // namespace

RecordPage* sundriesPage(Workbench& bench) {
    RecordPageSpec spec;
    spec.id = "shed.sundries";
    spec.name = ShelfPagesSay::tr("Sundries");
    spec.emptyWords = ShelfPagesSay::tr("No sundries yet: pins, tape, wire, cable ties, tissue.");
    spec.newWords = ShelfPagesSay::tr("&New sundry");
    spec.findPrompt = ShelfPagesSay::tr("Find a sundry");
    spec.answer = [&bench] { return sundriesAnswer(bench.season(), bench.plan()); };
    spec.table.kind = model::TableKind::sundries;
    spec.table.columns = {"name", "on_hand", "unit", "cost", "amount", "rule"};
    spec.table.sortField = "name";
    return new RecordPage(bench, spec);
}

RecordPage* holdersPage(Workbench& bench) {
    RecordPageSpec spec;
    spec.id = "shed.holders";
    spec.name = ShelfPagesSay::tr("Trays, gridded boxes and buckets");
    spec.emptyWords = ShelfPagesSay::tr("No buckets or trays yet. Clean buckets run out first.");
    spec.newWords = ShelfPagesSay::tr("&New tray or bucket");
    spec.answer = [&bench] { return holdersAnswer(bench.season(), bench.plan()); };
    spec.table.kind = model::TableKind::holders;
    spec.table.columns = {"name", "kind", "owned"};
    spec.table.sortField = "name";
    spec.groups = {
        {ShelfPagesSay::tr("What it is"), {"name", "kind", "owned", "tare"}},
        {ShelfPagesSay::tr("Inside"), {"inner_length", "inner_width", "inner_height"}},
        {ShelfPagesSay::tr("A gridded box"), {"cells", "stems_per_cell"}},
        {ShelfPagesSay::tr("A bucket's room"), {"short_stems", "middle_stems", "long_stems", "water"}}};
    return new RecordPage(bench, spec);
}

RecordPage* vehiclesPage(Workbench& bench) {
    RecordPageSpec spec;
    spec.id = "shed.vehicles";
    spec.name = ShelfPagesSay::tr("Vehicles");
    spec.emptyWords =
        ShelfPagesSay::tr("No vehicle yet. Measure the load floor; the plate says what it may carry.");
    spec.newWords = ShelfPagesSay::tr("&New vehicle");
    spec.answer = [&bench] { return vehiclesAnswer(bench.season()); };
    spec.table.kind = model::TableKind::vehicles;
    spec.table.columns = {"name", "floor_length", "floor_width", "plate_load_kg"};
    spec.table.sortField = "name";
    return new RecordPage(bench, spec);
}

} // namespace withy::ui
