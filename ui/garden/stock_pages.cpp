// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/garden/stock_pages.h"

#include "ui/logic/answers/garden_answers.h"

#include <QCoreApplication>

namespace withy::ui {

namespace {

struct StockPagesSay {
    Q_DECLARE_TR_FUNCTIONS(StockPages)
};

} // namespace

RecordPage* pastBloomsPage(Workbench& bench) {
    RecordPageSpec spec;
    spec.id = "garden.past_blooms";
    spec.name = StockPagesSay::tr("First cuts of past years");
    spec.emptyWords =
        StockPagesSay::tr("No past year yet. When was the first stem cut? One date a plant is a start.");
    spec.findPrompt = StockPagesSay::tr("Find a plant or patch");
    spec.newWords = StockPagesSay::tr("&New first cut");
    spec.answer = [&bench] { return pastBloomsAnswer(bench.season()); };
    spec.table.kind = model::TableKind::pastBlooms;
    spec.table.columns = {"plant", "patch", "first_cut", "last_cut", "stems"};
    spec.table.sortField = "first_cut";
    return new RecordPage(bench, spec);
}

RecordPage* stockPage(Workbench& bench) {
    RecordPageSpec spec;
    spec.id = "garden.stock";
    spec.name = StockPagesSay::tr("Stems in the store");
    spec.emptyWords = StockPagesSay::tr("Nothing stands in the store.");
    spec.findPrompt = StockPagesSay::tr("Find a plant or supplier");
    spec.newWords = StockPagesSay::tr("&New lot");
    spec.answer = [&bench] { return stockAnswer(bench.season(), bench.today()); };
    spec.table.kind = model::TableKind::stockLots;
    spec.table.columns = {"plant",  "stems",     "origin",   "ready_from",
                          "use_by", "unit_cost", "supplier", "home_grown"};
    spec.table.sortField = "ready_from";
    auto* page = new RecordPage(bench, spec);
    page->table().setAsks([&bench, page](std::int64_t id, int column) { // past its day
        const auto* lot = bench.season().stockLots.find(Id<model::StockLot>(id));
        const auto today = bench.today();
        return column == page->table().records().columnOf("use_by") && lot && today && lot->useBy &&
               *lot->useBy < *today;
    });
    return page;
}

} // namespace withy::ui
