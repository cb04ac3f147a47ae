// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/ribbon_pages.h"

#include "ui/logic/answers/shed_answers.h"
#include "ui/logic/shed_words.h"

#include <QCoreApplication>

namespace withy::ui {

namespace {

struct RibbonPagesSay {
    Q_DECLARE_TR_FUNCTIONS(RibbonPages)
};

/// Figures that come from a record's parts follow every edit, not only those of the record itself.
void followParts(RecordPage* page, Workbench& bench) {
    QObject::connect(&bench, &Workbench::changed, page, [page] {
        if (page->isVisible()) page->table().records().refreshComputed();
    });
}

} // namespace

RecordPage* ribbonsPage(Workbench& bench) {
    RecordPageSpec spec;
    spec.id = "shed.ribbons";
    spec.name = RibbonPagesSay::tr("Ribbons");
    spec.emptyWords = RibbonPagesSay::tr("No ribbon yet. Unroll, measure, and note the ends too.");
    spec.newWords = RibbonPagesSay::tr("&New ribbon");
    spec.findPrompt = RibbonPagesSay::tr("Find a ribbon");
    spec.answer = [&bench] { return ribbonsAnswer(bench.season(), bench.plan()); };
    spec.table.kind = model::TableKind::ribbons;
    spec.table.columns = {"name", "colour", "width", "cost_per_metre"};
    spec.table.sortField = "name";
    ComputedColumn onHand;
    onHand.head = RibbonPagesSay::tr("On hand");
    onHand.text = [&bench](std::int64_t id) { return ribbonOnHand(bench.season(), Id<model::Ribbon>(id)); };
    spec.table.computed = {onHand};
    spec.groups = {{RibbonPagesSay::tr("Ribbon"), {"name", "colour", "width", "cost_per_metre"}}};
    auto* page = new RecordPage(bench, spec);
    RecordTableSpec lengths;
    lengths.kind = model::TableKind::ribbonLengths;
    lengths.columns = {"kind", "length", "dye_lot"};
    lengths.parent = std::pair<std::string, std::int64_t>{"ribbon", 0};
    page->addPart(RibbonPagesSay::tr("Reels and ends"), lengths,
                  RibbonPagesSay::tr("None measured yet. Ends count too."));
    followParts(page, bench);
    return page;
}

RecordPage* ribbonMixesPage(Workbench& bench) {
    RecordPageSpec spec;
    spec.id = "shed.mixes";
    spec.name = RibbonPagesSay::tr("Ribbon mixes");
    spec.emptyWords = RibbonPagesSay::tr("No mix yet. One ribbon alone is a mix too: give it 100 percent.");
    spec.newWords = RibbonPagesSay::tr("&New mix");
    spec.answer = [&bench] { return mixesAnswer(bench.season()); };
    spec.table.kind = model::TableKind::ribbonMixes;
    spec.table.columns = {"name", "not_two_alike_side_by_side"};
    spec.table.sortField = "name";
    ComputedColumn shares;
    shares.head = RibbonPagesSay::tr("Shares");
    shares.text = [&bench](std::int64_t id) { return mixShares(bench.season(), Id<model::RibbonMix>(id)); };
    spec.table.computed = {shares};
    spec.groups = {{RibbonPagesSay::tr("Mix"), {"name", "not_two_alike_side_by_side"}}};
    auto* page = new RecordPage(bench, spec);
    RecordTableSpec parts;
    parts.kind = model::TableKind::ribbonMixParts;
    parts.columns = {"ribbon", "share"};
    parts.parent = std::pair<std::string, std::int64_t>{"mix", 0};
    page->addPart(RibbonPagesSay::tr("Ribbons in it, and their shares"), parts,
                  RibbonPagesSay::tr("No ribbon in it yet. Shares come to 100 percent."));
    followParts(page, bench);
    return page;
}

} // namespace withy::ui
