// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diary/diary_place.h"

#include "ui/diary/record_pages.h"
#include "ui/diary/week_page.h"
#include "ui/diary/week_papers_page.h"

namespace withy::ui {

DiaryPlace::DiaryPlace(Workbench& bench, QWidget* parent)
    : PagedPlace(bench, "diary", tr("Diary"),
                 {{"week", tr("Week"), [&bench] { return new WeekPage(bench); }},
                  {"papers", tr("On paper"), [&bench] { return new WeekPapersPage(bench); }},
                  {"busy", tr("Busy hours"), [&bench] { return busyPage(bench); }},
                  {"helpers", tr("Helpers"), [&bench] { return helpersPage(bench); }},
                  {"rounds", tr("Rounds"), [&bench] { return roundsPage(bench); }},
                  {"made", tr("Made"), [&bench] { return madePage(bench); }},
                  {"returns", tr("Returns"), [&bench] { return returnsPage(bench); }},
                  {"notes", tr("Job notes"), [&bench] { return notesPage(bench); }}},
                 parent) {}

} // namespace withy::ui
