// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/containers_page.h"

#include "ui/common/figure.h"
#include "ui/common/text_label.h"
#include "ui/logic/answers/shed_answers.h"
#include "ui/logic/shed_words.h"
#include "ui/paint/spacing.h"

#include <QHBoxLayout>

namespace withy::ui {

namespace {

RecordPageSpec containersSpec(Workbench& bench) {
    RecordPageSpec spec;
    spec.id = "shed.containers";
    spec.name = ContainersPage::tr("Containers");
    spec.emptyWords = ContainersPage::tr("Nothing on the shelf yet. Count what is there.");
    spec.newWords = ContainersPage::tr("&New container");
    spec.findPrompt = ContainersPage::tr("Find a container");
    spec.answer = [&bench] { return containersAnswer(bench.season(), bench.plan()); };
    spec.table.kind = model::TableKind::containers;
    spec.table.columns = {"name", "profile", "inner_rim", "inner_depth", "owned"};
    spec.table.sortField = "name";
    ComputedColumn needed;
    needed.head = ContainersPage::tr("Most needed");
    needed.text = [&bench](std::int64_t id) {
        return mostNeededWords(bench.plan(), Id<model::Container>(id));
    };
    ComputedColumn volume;
    volume.head = ContainersPage::tr("Holds");
    volume.text = [&bench](std::int64_t id) { return volumeWords(bench.season(), Id<model::Container>(id)); };
    spec.table.computed = {volume, needed};
    spec.groups = {{ContainersPage::tr("What it is"), {"name", "owned", "returnable", "notes"}},
                   {ContainersPage::tr("Inside, where the water stands"),
                    {"profile", "inner_rim", "inner_body", "inner_base", "inner_length", "inner_depth",
                     "measured_volume"}},
                   {ContainersPage::tr("Outside, as it stands on the table"),
                    {"outer_height", "outer_diameter", "outer_neck", "neck_height", "empty_weight"}},
                   {ContainersPage::tr("Money"), {"cost", "replacement_price"}}};
    return spec;
}

} // namespace

ContainersPage::ContainersPage(Workbench& bench, QWidget* parent)
    : RecordPage(bench, containersSpec(bench), parent)
    , volume_(new FigureButton)
    , working_(new WorkingPanel)
    , note_(new TextLabel(TypeRole::text, {}, Ink::second)) {
    auto* box = new QWidget;
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(grid(1));
    auto* row = new QHBoxLayout;
    row->setSpacing(grid(2));
    row->addWidget(new TextLabel(TypeRole::text, tr("Holds, filled to the rim:")));
    row->addWidget(volume_);
    row->addWidget(note_, 1);
    column->addLayout(row);
    column->addWidget(working_);
    addToDetail(box, true);
    volume_->setObjectName(QStringLiteral("shed.containers.volume"));
    note_->setWordWrap(true);
    working_->hide();
    connect(volume_, &FigureButton::opened, working_, &QWidget::setVisible);
    connect(working_, &WorkingPanel::leadTo, this, &SubPage::leadTo);
    connect(this, &RecordPage::chosen, this, &ContainersPage::showVolume);
    connect(&bench, &Workbench::changed, this, [this] {
        if (isVisible()) showVolume();
    });
    showVolume();
}

void ContainersPage::showVolume() {
    table().records().refreshComputed();
    const auto id = chosenId();
    if (!id) return;
    const auto figure = containerVolume(bench_.season(), Id<model::Container>(*id));
    volume_->setVisible(!figure.figure.isEmpty());
    note_->setText(figure.note);
    if (figure.figure.isEmpty()) {
        volume_->setChecked(false);
        return;
    }
    const FigureFacts facts{figure.figure,
                            tr("when filled to the rim"),
                            figure.working,
                            std::nullopt,
                            {},
                            {},
                            bench_.season().theSettings().units};
    volume_->setFacts(facts);
    working_->setFacts(facts);
}

} // namespace withy::ui
