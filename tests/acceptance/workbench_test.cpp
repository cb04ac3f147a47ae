// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/plan_json.h"
#include "tests/support/season_text.h"
#include "ui/logic/edits.h"
#include "ui/logic/edits/booking_edits.h"
#include "ui/logic/edits/design_edits.h"
#include "ui/logic/edits/record_edits.h"
#include "ui/logic/starting_seasons.h"
#include "ui/logic/workbench.h"

#include <QTemporaryDir>

#include <gmock/gmock.h>

#include <random>

namespace withy::ui {

namespace {

/// One random but sensible edit.
model::Edit someEdit(const model::Season& season, std::mt19937& random, int n) {
    const auto pick = [&](const auto& table) {
        auto at = table.begin();
        std::advance(at, std::uniform_int_distribution<std::size_t>(0, table.size() - 1)(random));
        return at->id;
    };
    const int count = std::uniform_int_distribution<int>(1, 40)(random);
    Id<model::Booking> made;
    std::int64_t payment = 0;
    switch (n % 6) {
    case 0:
        return edits::setPieces(season, pick(season.lines), count);
    case 1:
        return edits::setSlotCount(season, pick(season.slots), count);
    case 2:
        return edits::newBooking(season, "Booking " + std::to_string(n),
                                 season.theSettings().firstDay + count, made);
    case 3: {
        Id<model::Line> line;
        return edits::addPieces(season, pick(season.bookings), pick(season.designs), count, line);
    }
    case 4:
        return edits::addRecord(
            season, model::TableKind::payments,
            {{"booking", pick(season.bookings).value}, {"amount", std::int64_t{count} * 100}}, payment);
    default:
        return n % 4 == 1 ? edits::eraseBooking(season, pick(season.bookings))
                          : edits::eraseLine(season, pick(season.lines));
    }
}

} // namespace

TEST(Workbench, UndoOf500RandomEditsBringsBackTheSeasonByteForByte) {
    QTemporaryDir folder;
    const auto path = folder.filePath(QStringLiteral("a.withy"));
    Workbench bench(store::SeasonFile::create(path, demoSeason()));
    const auto before = exchange::exportSeason(bench.season());
    std::mt19937 random(2027);
    int kept = 0;
    for (int n = 0; n < 500; ++n)
        kept += bench.apply(someEdit(bench.season(), random, n)).isEmpty() ? 1 : 0;
    EXPECT_GT(kept, 400);
    const auto after = exchange::exportSeason(bench.season());
    EXPECT_NE(before, after);
    while (bench.canUndo())
        ASSERT_EQ(bench.undo(), QString());
    EXPECT_EQ(exchange::exportSeason(bench.season()), before);
    while (bench.canRedo())
        ASSERT_EQ(bench.redo(), QString());
    EXPECT_EQ(exchange::exportSeason(bench.season()), after);
    bench.waitForPlan();
    EXPECT_EQ(plan::planJson(bench.season(), bench.plan()),
              plan::planJson(bench.season(), plan::plan(bench.season())));
}

TEST(Workbench, EveryEditIsInTheFile) {
    QTemporaryDir folder;
    const auto path = folder.filePath(QStringLiteral("a.withy"));
    std::string text;
    {
        Workbench bench(store::SeasonFile::create(path, demoSeason()));
        Id<model::Booking> made;
        ASSERT_EQ(bench.apply(edits::newBooking(bench.season(), "Barn tea", *Day::fromYmd(2027, 7, 3), made)),
                  QString());
        text = exchange::exportSeason(bench.season());
    }
    const auto again = store::SeasonFile::open(path, store::SeasonFile::Mode::read);
    EXPECT_EQ(exchange::exportSeason(again.season()), text);
}

TEST(Workbench, RefusesInASentenceAndKeepsWhatWasThere) {
    QTemporaryDir folder;
    Workbench bench(store::SeasonFile::create(folder.filePath(QStringLiteral("a.withy")), demoSeason()));
    const auto before = exchange::exportSeason(bench.season());
    Id<model::Booking> made;
    const auto trouble =
        bench.apply(edits::newBooking(bench.season(), "Early", *Day::fromYmd(2027, 1, 2), made));
    EXPECT_TRUE(trouble.contains(QStringLiteral("outside the season"))) << trouble.toStdString();
    EXPECT_EQ(exchange::exportSeason(bench.season()), before);
    EXPECT_FALSE(bench.canUndo());
}

} // namespace withy::ui
