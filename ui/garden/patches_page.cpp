// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/garden/patches_page.h"

#include "ui/logic/answers/garden_answers.h"
#include "ui/logic/garden_words.h"
#include "ui/shell/actions.h"

namespace withy::ui {

namespace {

RecordPageSpec patchesSpec(Workbench& bench) {
    RecordPageSpec spec;
    spec.id = "garden.patches";
    spec.name = PatchesPage::tr("Patches in walking order");
    spec.emptyWords = PatchesPage::tr("No patch yet. Write down what grows where, in the order you walk.");
    spec.newWords = PatchesPage::tr("&New patch");
    spec.findPrompt = PatchesPage::tr("Find a patch or plant");
    spec.answer = [&bench] { return patchesAnswer(bench.season()); };
    spec.table.kind = model::TableKind::patches;
    spec.table.columns = {"label", "plant", "plants", "expected_stems"};
    spec.table.orderField = "place";
    ComputedColumn place;
    place.head = PatchesPage::tr("Walk");
    place.text = [&bench](std::int64_t id) { return walkingPlace(bench.season(), Id<model::Patch>(id)); };
    place.at = 0;
    ComputedColumn last;
    last.head = PatchesPage::tr("Last walk");
    last.text = [&bench](std::int64_t id) { return lastWalkWords(bench.season(), Id<model::Patch>(id)); };
    spec.table.computed = {place, last};
    spec.groups = {
        {PatchesPage::tr("Where it is"), {"label", "plant", "way_there", "under_cover"}},
        {PatchesPage::tr("What it gives"),
         {"plants", "bed_length", "expected_stems", "first_cut", "peak_cut", "last_cut", "hard_cut"}},
        {PatchesPage::tr("Notes"), {"notes"}}};
    return spec;
}

} // namespace

PatchesPage::PatchesPage(Workbench& bench, QWidget* parent) : RecordPage(bench, patchesSpec(bench), parent) {
    connect(&bench, &Workbench::changed, this, [this] {
        if (isVisible()) table().records().refreshComputed();
    });
}

void PatchesPage::addActions(Actions& actions) {
    RecordPage::addActions(actions);
    actions.add({"garden.patches.up", tr("Patch ea&rlier on the walk"), {}, tr("Alt+Up in the list")},
                [this] { table().moveChosen(-1); });
    actions.add({"garden.patches.down", tr("Patch &later on the walk"), {}, tr("Alt+Down in the list")},
                [this] { table().moveChosen(1); });
}

} // namespace withy::ui
