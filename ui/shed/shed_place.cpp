// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/shed_place.h"

#include "ui/print/desk_page.h"
#include "ui/shed/containers_page.h"
#include "ui/shed/ribbon_pages.h"
#include "ui/shed/shelf_pages.h"
#include "ui/shed/shelves_page.h"

namespace withy::ui {

ShedPlace::ShedPlace(Workbench& bench, QWidget* parent)
    : PagedPlace(bench, "shed", tr("Shed"),
                 {{"shelves", tr("Shelves"), [&bench] { return new ShelvesPage(bench); }},
                  {"containers", tr("Containers"), [&bench] { return new ContainersPage(bench); }},
                  {"ribbons", tr("Ribbons"), [&bench] { return ribbonsPage(bench); }},
                  {"mixes", tr("Ribbon mixes"), [&bench] { return ribbonMixesPage(bench); }},
                  {"sundries", tr("Sundries"), [&bench] { return sundriesPage(bench); }},
                  {"holders", tr("Trays and buckets"), [&bench] { return holdersPage(bench); }},
                  {"vehicles", tr("Vehicles"), [&bench] { return vehiclesPage(bench); }},
                  {"buying", tr("Buying list"),
                   [&bench] {
                       return new DeskPage(
                           bench, PaperKind::buyingList,
                           {{tr("What to get, and by when, for all that is booked and asked for.")}});
                   }}},
                 parent) {}

} // namespace withy::ui
