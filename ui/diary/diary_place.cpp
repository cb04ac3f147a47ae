// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/diary/diary_place.h"

#include "ui/diary/record_pages.h"
#include "ui/diary/week_page.h"

namespace withy::ui {

DiaryPlace::DiaryPlace(Workbench& bench, QWidget* parent)
    : PagedPlace(bench, "diary", tr("Diary"),
                 {{"week", tr("Week"), new WeekPage(bench)},
                  {"busy", tr("Busy hours"), busyPage(bench)},
                  {"helpers", tr("Helpers"), helpersPage(bench)},
                  {"rounds", tr("Rounds"), roundsPage(bench)},
                  {"made", tr("Made"), madePage(bench)},
                  {"returns", tr("Returns"), returnsPage(bench)},
                  {"notes", tr("Job notes"), notesPage(bench)}},
                 parent) {}

} // namespace withy::ui
