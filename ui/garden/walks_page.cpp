// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/garden/walks_page.h"

#include "ui/logic/answers/garden_answers.h"
#include "ui/logic/edits/garden_edits.h"
#include "ui/logic/garden_words.h"
#include "ui/shell/actions.h"

#include <QPushButton>

#include <algorithm>

namespace withy::ui {

namespace {

RecordPageSpec walksSpec(Workbench& bench) {
    RecordPageSpec spec;
    spec.id = "garden.walks";
    spec.name = WalksPage::tr("Walks");
    spec.emptyWords =
        WalksPage::tr("No walk yet. Count what stands ready, even roughly; one walk is worth ten guesses.");
    spec.findPrompt = WalksPage::tr("Find a day or patch");
    spec.answer = [&bench] { return walksAnswer(bench.season()); };
    spec.table.kind = model::TableKind::walks;
    spec.table.columns = {"date", "patch", "ready_now", "within_three_days", "within_week", "remark"};
    spec.table.sortField = "date";
    spec.table.newestFirst = true;
    ComputedColumn before;
    before.head = WalksPage::tr("Walk before");
    before.text = [&bench](std::int64_t id) { return walkBeforeWords(bench.season(), Id<model::Walk>(id)); };
    before.at = 2;
    before.figure = false;
    spec.table.computed = {before};
    return spec;
}

/// Today, or the nearest day of the season.
Day walkDay(const Workbench& bench) {
    const auto& s = bench.season().theSettings();
    return std::clamp(bench.today().value_or(s.firstDay), s.firstDay, s.lastDay);
}

} // namespace

WalksPage::WalksPage(Workbench& bench, QWidget* parent) : RecordPage(bench, walksSpec(bench), parent) {
    connect(&bench, &Workbench::changed, this, [this] {
        if (isVisible()) table().records().refreshComputed();
    });
}

void WalksPage::addActions(Actions& actions) {
    auto* action = actions.add({"garden.walks.today",
                                tr("New &walk today"),
                                {},
                                tr("A blank row for each patch, in walking order; blanks stay blank")},
                               [this] {
                                   Q_EMIT wanted();
                                   startWalk();
                               });
    auto* button = new QPushButton(tr("New &walk today"));
    button->setObjectName(QStringLiteral("garden.walks.today_button"));
    button->setProperty("look", QStringLiteral("main"));
    button->setToolTip(action->toolTip());
    connect(button, &QPushButton::clicked, action, &QAction::trigger);
    addTool(button);
}

void WalksPage::startWalk() {
    std::int64_t first = 0;
    const auto edit = edits::newWalk(bench_.season(), walkDay(bench_), first);
    if (edit.empty()) {
        Q_EMIT said(bench_.season().patches.empty() ? tr("There is no patch to walk to yet. Add one first.")
                                                    : tr("Every patch has its row for today."));
        return;
    }
    const auto words = bench_.apply(edit);
    Q_EMIT refused(words);
    if (!words.isEmpty()) return;
    table().choose(first);
    auto& records = table().records();
    const auto at = records.index(records.rowOf(first), records.columnOf("ready_now"));
    table().setFocus();
    table().setCurrentIndex(at);
}

} // namespace withy::ui
