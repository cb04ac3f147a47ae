// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures of the garden, shed, diary and season pages, to be looked at: WITHY_SHOTS names the folder.
#include "tests/window/place_fixture.h"
#include "ui/diary/diary_place.h"
#include "ui/garden/garden_place.h"
#include "ui/season/season_place.h"
#include "ui/shed/shed_place.h"

namespace withy::ui {

namespace {

struct Shot {
    const char* name;
    QSize size;
    Theme theme;
    double points;
};

const Shot shots[] = {
    {"1280", {1188, 700}, Theme::light, 10.5},
    {"1280-dark", {1188, 700}, Theme::dark, 10.5},
    {"1920", {1828, 980}, Theme::light, 10.5},
    {"150", {1142, 660}, Theme::light, 15.75},
};

} // namespace

class PlaceShots : public PlaceTest {
protected:
    template <class P>
    void shoot(const QString& folder, const char* place, const model::Season& season, const char* what) {
        for (const auto& shot : shots) {
            applyStyle(*qApp, shot.theme, shot.points);
            openPlace<P>(season);
            bare_->resize(shot.size);
            for (auto* action : actions_->all()) {
                const auto id = action->objectName();
                if (!id.startsWith(QStringLiteral("page."))) continue;
                action->trigger();
                QTest::qWait(20);
                EXPECT_TRUE(bare_->grab().save(
                    QStringLiteral("%1/%2-%3-%4.png")
                        .arg(folder, id.mid(5), QString::fromLatin1(what), QString::fromLatin1(shot.name))))
                    << place;
            }
        }
    }
};

TEST_F(PlaceShots, OfEveryPage) {
    const auto folder = qEnvironmentVariable("WITHY_SHOTS");
    if (folder.isEmpty()) GTEST_SKIP() << "WITHY_SHOTS names no folder for the pictures";
    for (const bool demo : {true, false}) {
        const auto season = demo ? demoSeason() : emptySeason(2027);
        const char* what = demo ? "demo" : "empty";
        shoot<GardenPlace>(folder, "garden", season, what);
        shoot<ShedPlace>(folder, "shed", season, what);
        shoot<DiaryPlace>(folder, "diary", season, what);
        shoot<SeasonPlace>(folder, "season", season, what);
    }
    applyStyle(*qApp, Theme::light, 10.5);
}

} // namespace withy::ui
