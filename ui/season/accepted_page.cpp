// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/season/accepted_page.h"

#include "ui/logic/answers/season_answers.h"
#include "ui/logic/edits/season_edits.h"
#include "ui/shell/actions.h"

#include <QPushButton>

namespace withy::ui {

namespace {

RecordPageSpec acceptedSpec(Workbench& bench) {
    RecordPageSpec spec;
    spec.id = "season.accepted";
    spec.name = AcceptedPage::tr("Warnings left so");
    spec.emptyWords = AcceptedPage::tr("Nothing is left so: you are told of everything.");
    spec.answer = [&bench] { return acceptedAnswer(bench.season()); };
    spec.table.kind = model::TableKind::acceptedFindings;
    spec.table.columns = {"finding", "facts", "accepted_on"};
    spec.table.sortField = "accepted_on";
    spec.table.newestFirst = true;
    spec.table.addRow = false;
    return spec;
}

} // namespace

AcceptedPage::AcceptedPage(Workbench& bench, QWidget* parent)
    : RecordPage(bench, acceptedSpec(bench), parent), again_(new QPushButton(tr("&Ask again"))) {
    again_->setObjectName(QStringLiteral("season.accepted.again_button"));
    again_->setToolTip(tr("Counts the chosen warnings among what wants looking at"));
    addTool(again_);
    table().setEditTriggers(QAbstractItemView::NoEditTriggers);
    connect(again_, &QPushButton::clicked, this, &AcceptedPage::tellAgain);
    connect(this, &RecordPage::chosen, this,
            [this](std::optional<std::int64_t> id) { again_->setEnabled(id.has_value()); });
    again_->setEnabled(chosenId().has_value());
    // The answer says that there is none: an empty frame would say nothing more.
    const auto show = [this] { table().setVisible(!bench_.season().acceptedFindings.empty()); };
    connect(&bench_, &Workbench::changed, this, show);
    show();
}

void AcceptedPage::addActions(Actions& actions) {
    actions.add({"season.accepted.again",
                 tr("&Ask again about the chosen warnings"),
                 {},
                 tr("They count again among what wants looking at")},
                [this] {
                    Q_EMIT wanted();
                    tellAgain();
                });
}

void AcceptedPage::tellAgain() {
    const auto words = bench_.apply(edits::tellAgain(bench_.season(), table().chosenIds()));
    Q_EMIT refused(words);
}

} // namespace withy::ui
