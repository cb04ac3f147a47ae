// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/garden/plants_page.h"

#include "ui/common/text_label.h"
#include "ui/garden/catalogue_field.h"
#include "ui/garden/caution_rows.h"
#include "ui/garden/swatch_row.h"
#include "ui/logic/answers/garden_answers.h"
#include "ui/logic/edits/garden_edits.h"
#include "ui/logic/edits/record_edits.h"
#include "ui/logic/format.h"
#include "ui/logic/garden_words.h"
#include "ui/paint/spacing.h"
#include "ui/shell/actions.h"

#include <QHBoxLayout>
#include <QPushButton>

namespace withy::ui {

namespace {

std::vector<FormGroup> plantGroups() {
    return {{PlantsPage::tr("What it is"),
             {"name", "botanical_name", "shape", "colour_1", "colour_2", "colour_3"}},
            {PlantsPage::tr("What it is for"), {"focal", "spike", "filler", "foliage", "airy", "trailing"}},
            {PlantsPage::tr("Size"),
             {"stem_length_min", "stem_length_max", "stem_diameter_mm", "head_diameter_mm"}},
            {PlantsPage::tr("Cutting"),
             {"stage_to_cut", "method", "habit", "regrowth_days", "hold_days", "stems_per_plant", "bunch",
              "cutting_stems_per_hour", "loss_percent"}},
            {PlantsPage::tr("Conditioning and keeping"),
             {"conditioning", "conditioning_hours_min", "conditioning_hours_max", "opening_hours",
              "vase_life_min_days", "vase_life_max_days", "q10", "storage_days", "storage_celsius",
              "uptake_ml_per_day", "grows_on_mm_per_day", "ethylene_sensitive"}},
            {PlantsPage::tr("Growing"),
             {"base_celsius", "ceiling_celsius", "heat_share", "days_to_flower", "heat_units_to_flower",
              "germination_percent", "weeks_under_cover", "spacing"}},
            {PlantsPage::tr("Money"), {"price_per_stem", "cost_per_stem"}},
            {PlantsPage::tr("Notes"), {"notes"}}};
}

RecordPageSpec plantsSpec(Workbench& bench) {
    RecordPageSpec spec;
    spec.id = "garden.plants";
    spec.name = PlantsPage::tr("Plants");
    spec.emptyWords = PlantsPage::tr("No plant of that name. Type it above to take it from the catalogue.");
    spec.findPrompt = PlantsPage::tr("Find a plant");
    spec.answer = [&bench] { return plantsAnswer(bench.season()); };
    spec.table.kind = model::TableKind::plants;
    spec.table.columns = {"name", "botanical_name"};
    spec.table.sortField = "name";
    spec.table.addRow = false;
    spec.groups = plantGroups();
    return spec;
}

} // namespace

PlantsPage::PlantsPage(Workbench& bench, QWidget* parent)
    : RecordPage(bench, plantsSpec(bench), parent)
    , catalogue_(new CatalogueField(bench))
    , name_(new TextLabel(TypeRole::title))
    , botanical_(new TextLabel(TypeRole::text, {}, Ink::second))
    , swatches_(new SwatchRow)
    , cautions_(new CautionRows(bench))
    , duplicate_(new QPushButton(tr("D&uplicate"))) {
    setListShare(38);
    duplicate_->setObjectName(QStringLiteral("garden.plants.duplicate"));
    addTool(catalogue_);
    addTool(duplicate_);
    auto* head = new QWidget;
    auto* column = new QVBoxLayout(head);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(grid(1));
    auto* row = new QHBoxLayout;
    name_->setWordWrap(true);
    row->addWidget(name_, 1);
    row->addWidget(swatches_, 0, Qt::AlignRight | Qt::AlignVCenter);
    column->addLayout(row);
    column->addWidget(botanical_);
    column->addWidget(cautions_);
    addToDetail(head, true);
    auto* hazards = addPart(tr("Cautions, as you would have them"), hazardSpec(),
                            tr("No caution written down. That is not to say there is none."));
    hazards->setObjectName(QStringLiteral("garden.plants.cautions"));
    connect(this, &RecordPage::chosen, this, &PlantsPage::showPlant);
    connect(&bench, &Workbench::changed, this, [this] {
        if (isVisible()) showPlant(chosenId());
    });
    connect(catalogue_, &CatalogueField::taken, this, &PlantsPage::take);
    connect(catalogue_, &CatalogueField::named, this, &PlantsPage::makeNew);
    connect(duplicate_, &QPushButton::clicked, this, &PlantsPage::duplicate);
    showPlant(chosenId());
}

void PlantsPage::addActions(Actions& actions) {
    actions.add({"garden.plants.add", tr("&Add a plant"), {}, tr("From the catalogue, or one of your own")},
                [this] {
                    Q_EMIT wanted();
                    catalogue_->setFocus();
                });
    actions.add(
        {"garden.plants.copy", tr("D&uplicate the plant"), {}, tr("The same facts under a name of its own")},
        [this] {
            Q_EMIT wanted();
            duplicate();
        });
}

void PlantsPage::showPlant(std::optional<std::int64_t> id) {
    const auto* plant = id ? bench_.season().plants.find(Id<model::Plant>(*id)) : nullptr;
    duplicate_->setEnabled(plant != nullptr);
    if (!plant) return;
    name_->setText(text(plant->name));
    botanical_->setText(text(plant->botanicalName));
    botanical_->setVisible(!plant->botanicalName.empty());
    swatches_->show(*plant);
    static_cast<CautionRows*>(cautions_)->show(plant->id);
    showBases();
}

void PlantsPage::showBases() {
    const auto id = chosenId();
    if (!id) return;
    const Id<model::Plant> plant(*id);
    for (const auto& field : model::tableInfo(model::TableKind::plants).fields) {
        if (!edits::isPlantFact(field.name)) continue;
        const std::string name(field.name);
        if (auto* edit = form()->field(name.c_str()))
            edit->setCaption(factBasis(bench_.season(), plant, field.name),
                             factRemark(bench_.season(), plant, field.name));
    }
}

void PlantsPage::take(Id<model::Plant> inCatalogue) {
    Id<model::Plant> made;
    const auto words = bench_.apply(edits::addFromCatalogue(bench_.season(), inCatalogue, made));
    Q_EMIT refused(words);
    if (words.isEmpty()) goTo({model::TableKind::plants, made.value});
}

void PlantsPage::makeNew(const QString& name) {
    std::int64_t made = 0;
    const auto words = bench_.apply(edits::addNamed(bench_.season(), model::TableKind::plants, name, made));
    Q_EMIT refused(words);
    if (!words.isEmpty()) return;
    goTo({model::TableKind::plants, made});
    if (auto* first = form()->field("botanical_name")) first->control()->setFocus();
}

void PlantsPage::duplicate() {
    if (!chosenId()) return;
    Id<model::Plant> made;
    const Id<model::Plant> from(*chosenId());
    const auto words = bench_.apply(edits::duplicatePlant(bench_.season(), from, made));
    Q_EMIT refused(words);
    if (!words.isEmpty()) return;
    goTo({model::TableKind::plants, made.value});
    if (auto* name = form()->field("name")) name->control()->setFocus();
}

} // namespace withy::ui
