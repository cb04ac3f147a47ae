// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/places.h"

#include "ui/bookings/bookings_place.h"
#include "ui/common/style.h"
#include "ui/designs/designs_place.h"
#include "ui/diary/diary_place.h"
#include "ui/fit/fit_place.h"
#include "ui/garden/garden_place.h"
#include "ui/paint/icons.h"
#include "ui/season/season_place.h"
#include "ui/shed/shed_place.h"

#include <QCoreApplication>

namespace withy::ui {

namespace {

struct PlacesSay {
    Q_DECLARE_TR_FUNCTIONS(Places)
};

RailButton::IconMaker maker(IconName name) {
    return [name] { return icon(name, currentPalette()); };
}

template <class P>
std::function<Place*()> making(Workbench& bench) {
    return [&bench] { return new P(bench, nullptr); };
}

} // namespace

std::vector<PlaceEntry> placesOf(Workbench& bench) {
    return {
        {"go.bookings", PlacesSay::tr("Bookings"), PlacesSay::tr("What is promised, week by week"),
         maker(IconName::bookings), making<BookingsPlace>(bench), true},
        {"go.designs", PlacesSay::tr("Designs"), PlacesSay::tr("How each piece is made"),
         maker(IconName::designs), making<DesignsPlace>(bench)},
        {"go.garden", PlacesSay::tr("Garden"),
         PlacesSay::tr("Patches in walking order, plants, walks and weather"), maker(IconName::garden),
         making<GardenPlace>(bench)},
        {"go.shed", PlacesSay::tr("Shed"), PlacesSay::tr("Containers, ribbons, sundries and trays"),
         maker(IconName::shed), making<ShedPlace>(bench)},
        {"go.diary", PlacesSay::tr("Diary"), PlacesSay::tr("Busy hours, helpers and the week's work"),
         maker(IconName::diary), making<DiaryPlace>(bench)},
        {"go.season", PlacesSay::tr("Season"), PlacesSay::tr("Orders, settings and backups"),
         maker(IconName::season), making<SeasonPlace>(bench)},
        {"fit.check",
         PlacesSay::tr("&Can I take it?"),
         PlacesSay::tr("Stems, hours, containers and buckets against a date"),
         {},
         making<FitPlace>(bench),
         true,
         Qt::Key_F9},
    };
}

} // namespace withy::ui
