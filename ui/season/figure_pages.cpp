// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/season/figure_pages.h"

#include "ui/logic/answers/season_answers.h"

#include <QCoreApplication>

namespace withy::ui {

namespace {

struct FigurePagesSay {
    Q_DECLARE_TR_FUNCTIONS(FigurePages)
};

} // namespace

RecordPage* ratesPage(Workbench& bench) {
    RecordPageSpec spec;
    spec.id = "season.rates";
    spec.name = FigurePagesSay::tr("Times of work");
    spec.emptyWords = FigurePagesSay::tr("None of your own yet: common practice stands in for all of them.");
    spec.newWords = FigurePagesSay::tr("&New time");
    spec.answer = [&bench] { return ratesAnswer(bench.season()); };
    spec.table.kind = model::TableKind::rates;
    spec.table.columns = {"work", "minutes", "basis", "note"};
    spec.table.sortField = "work";
    return new RecordPage(bench, spec);
}

} // namespace withy::ui
