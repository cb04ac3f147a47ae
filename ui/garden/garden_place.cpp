// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/garden/garden_place.h"

#include "ui/garden/forecast_page.h"
#include "ui/garden/free_page.h"
#include "ui/garden/patches_page.h"
#include "ui/garden/plants_page.h"
#include "ui/garden/stock_pages.h"
#include "ui/garden/walk_entry_page.h"
#include "ui/garden/walk_sheet_page.h"
#include "ui/garden/walks_page.h"
#include "ui/garden/weather_page.h"

namespace withy::ui {

GardenPlace::GardenPlace(Workbench& bench, QWidget* parent)
    : PagedPlace(bench, "garden", tr("Garden"),
                 {{"forecast", tr("Forecast"), [&bench] { return new ForecastPage(bench); }},
                  {"walk_entry", tr("Key in a walk"), [&bench] { return new WalkEntryPage(bench); }},
                  {"walk_sheet", tr("Walk sheet"), [&bench] { return new WalkSheetPage(bench); }},
                  {"patches", tr("Patches"), [&bench] { return new PatchesPage(bench); }},
                  {"plants", tr("Plants"), [&bench] { return new PlantsPage(bench); }},
                  {"walks", tr("Walks"), [&bench] { return new WalksPage(bench); }},
                  {"weather", tr("Weather"), [&bench] { return new WeatherPage(bench); }},
                  {"free", tr("Free to promise"), [&bench] { return new FreePage(bench); }},
                  {"past_blooms", tr("Past blooms"), [&bench] { return pastBloomsPage(bench); }},
                  {"stock", tr("In the store"), [&bench] { return stockPage(bench); }}},
                 parent) {}

} // namespace withy::ui
