// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diary/record_pages.h"

#include "ui/logic/answers/diary_answers.h"

#include <QCoreApplication>

namespace withy::ui {

namespace {

struct RecordPagesSay {
    Q_DECLARE_TR_FUNCTIONS(DiaryPages)
};

RecordTableSpec partOf(model::TableKind kind, const char* owner, std::vector<std::string> columns,
                       std::string sortField = {}) {
    RecordTableSpec spec;
    spec.kind = kind;
    spec.columns = std::move(columns);
    spec.parent = std::pair<std::string, std::int64_t>{owner, 0};
    spec.sortField = std::move(sortField);
    return spec;
}

template <class Record>
ComputedColumn told(Workbench& bench, const QString& head, int at, bool figure,
                    QString (*words)(const model::Season&, Id<Record>)) {
    ComputedColumn column;
    column.head = head;
    column.figure = figure;
    column.at = at;
    column.text = [&bench, words](std::int64_t id) { return words(bench.season(), Id<Record>(id)); };
    return column;
}

} // namespace

RecordPage* busyPage(Workbench& bench) {
    RecordPageSpec spec;
    spec.id = "diary.busy";
    spec.name = RecordPagesSay::tr("Busy hours");
    spec.emptyWords =
        RecordPagesSay::tr("No busy hours yet. Shop, school run, market: the run-up keeps clear of them.");
    spec.newWords = RecordPagesSay::tr("&New busy hours");
    spec.findPrompt = RecordPagesSay::tr("Find busy hours");
    spec.answer = [&bench] { return busyAnswer(bench.season()); };
    spec.table.kind = model::TableKind::busyHours;
    spec.table.columns = {"label", "from", "to", "repeats", "repeats_until", "helper"};
    spec.table.computed = {told(bench, RecordPagesSay::tr("When"), 1, false, &busyWhenWords)};
    spec.table.sortField = "from";
    return new RecordPage(bench, spec);
}

RecordPage* helpersPage(Workbench& bench) {
    RecordPageSpec spec;
    spec.id = "diary.helpers";
    spec.name = RecordPagesSay::tr("Helpers");
    spec.emptyWords =
        RecordPagesSay::tr("Nobody yet. Who would come for an afternoon, and what can they do?");
    spec.newWords = RecordPagesSay::tr("&New helper");
    spec.answer = [&bench] { return helpersAnswer(bench.season()); };
    spec.table.kind = model::TableKind::helpers;
    spec.table.columns = {"name", "speed", "can_cut", "can_condition", "can_make", "can_drive"};
    spec.table.sortField = "name";
    spec.groups = {{RecordPagesSay::tr("Helper"), {"name", "speed", "rate", "note"}},
                   {RecordPagesSay::tr("Can do"), {"can_cut", "can_condition", "can_make", "can_drive"}}};
    auto* page = new RecordPage(bench, spec);
    page->addPart(RecordPagesSay::tr("Hours here"),
                  partOf(model::TableKind::helperHours, "helper", {"from", "to"}, "from"),
                  RecordPagesSay::tr("No hours agreed yet."));
    return page;
}

RecordPage* roundsPage(Workbench& bench) {
    RecordPageSpec spec;
    spec.id = "diary.rounds";
    spec.name = RecordPagesSay::tr("Rounds");
    spec.emptyWords = RecordPagesSay::tr("No round yet. What was really cut teaches the next forecast.");
    spec.newWords = RecordPagesSay::tr("&New round");
    spec.answer = [&bench] { return roundsAnswer(bench.season()); };
    spec.table.kind = model::TableKind::rounds;
    spec.table.columns = {"from", "to", "note"};
    spec.table.computed = {told(bench, RecordPagesSay::tr("For"), 2, false, &roundForWords),
                           told(bench, RecordPagesSay::tr("Stems cut"), 3, true, &roundStemsWords)};
    spec.table.sortField = "from";
    spec.table.newestFirst = true;
    auto* page = new RecordPage(bench, spec);
    page->addPart(RecordPagesSay::tr("Tally: what was really cut"),
                  partOf(model::TableKind::tallies, "round", {"patch", "cut", "thrown_away"}),
                  RecordPagesSay::tr("Nothing keyed in yet. A blank is not a nought."));
    page->addPart(RecordPagesSay::tr("For these bookings"),
                  partOf(model::TableKind::roundBookings, "round", {"booking"}),
                  RecordPagesSay::tr("No booking named yet."));
    return page;
}

RecordPage* madePage(Workbench& bench) {
    RecordPageSpec spec;
    spec.id = "diary.made";
    spec.name = RecordPagesSay::tr("Pieces made");
    spec.emptyWords =
        RecordPagesSay::tr("Nothing timed yet. Write down how long the pieces took, even roughly.");
    spec.newWords = RecordPagesSay::tr("&New entry");
    spec.findPrompt = RecordPagesSay::tr("Find a piece or person");
    spec.answer = [&bench] { return madeAnswer(bench.season()); };
    spec.table.kind = model::TableKind::made;
    spec.table.columns = {"line", "pieces", "minutes", "by_whom"};
    spec.table.computed = {told(bench, RecordPagesSay::tr("Booking"), 0, false, &madeForWords),
                           told(bench, RecordPagesSay::tr("of"), 3, true, &madeAskedWords)};
    return new RecordPage(bench, spec);
}

RecordPage* returnsPage(Workbench& bench) {
    RecordPageSpec spec;
    spec.id = "diary.returns";
    spec.name = RecordPagesSay::tr("Containers out and back");
    spec.emptyWords = RecordPagesSay::tr("Nothing is out.");
    spec.newWords = RecordPagesSay::tr("&New return");
    spec.findPrompt = RecordPagesSay::tr("Find a booking or container");
    spec.answer = [&bench] { return returnsAnswer(bench.season()); };
    spec.table.kind = model::TableKind::returns;
    spec.table.columns = {"booking", "container", "out", "back", "broken"};
    return new RecordPage(bench, spec);
}

RecordPage* notesPage(Workbench& bench) {
    RecordPageSpec spec;
    spec.id = "diary.notes";
    spec.name = RecordPagesSay::tr("Job notes");
    spec.emptyWords = RecordPagesSay::tr("No note yet. What drooped, what was left, what to do next time?");
    spec.newWords = RecordPagesSay::tr("&New note");
    spec.findPrompt = RecordPagesSay::tr("Find a note");
    spec.answer = [&bench] { return notesAnswer(bench.season()); };
    spec.table.kind = model::TableKind::jobNotes;
    spec.table.columns = {"booking", "next_time"};
    spec.groups = {{RecordPagesSay::tr("Next time"), {"booking", "next_time", "drooped"}},
                   {RecordPagesSay::tr("Hours it really took"),
                    {"hours_cutting", "hours_conditioning", "hours_making", "hours_on_the_road"}}};
    auto* page = new RecordPage(bench, spec);
    page->addPart(RecordPagesSay::tr("Used and left"),
                  partOf(model::TableKind::jobNotePlants, "note", {"plant", "used", "left"}),
                  RecordPagesSay::tr("Nothing written down yet."));
    page->setListShare(50);
    return page;
}

} // namespace withy::ui
