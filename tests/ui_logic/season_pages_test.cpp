// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/csv.h"
#include "core/exchange/orders_csv.h"
#include "core/model/origin.h"
#include "core/review/orders.h"
#include "tests/model/sample.h"
#include "tests/support/season_text.h"
#include "tests/ui_logic/supper_jars.h"
#include "ui/logic/answers/diary_answers.h"
#include "ui/logic/answers/season_answers.h"
#include "ui/logic/answers/shed_answers.h"
#include "ui/logic/english_plurals.h"
#include "ui/logic/models/copied_rows.h"
#include "ui/logic/models/kit_rows.h"
#include "ui/logic/models/order_figures.h"
#include "ui/logic/models/orders_model.h"
#include "ui/logic/models/week_steps.h"
#include "ui/logic/setting_basis.h"
#include "ui/logic/shed/shelf_rows.h"
#include "ui/logic/shed_words.h"
#include "ui/logic/starting_seasons.h"
#include "ui/logic/table_files.h"

#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace withy::ui {

namespace {

model::Season with(const model::Season& season, const model::Edit& edit) {
    auto applied = model::apply(season, edit);
    EXPECT_TRUE(applied.ok()) << (applied.ok()
                                      ? std::string()
                                      : applied.error().front().table + applied.error().front().field);
    return applied.ok() ? applied->season : season;
}

/// Two bookings of a jar at 9.50, three stems each: 10 jars in September, 4 in August, and a lost one.
model::Season threeOrders() {
    auto season = model::sample::season();
    model::Edit edit("orders");
    tests::putSupperJar(edit);
    edit.put(model::sample::plant(1, "Zinnia, coral"));
    model::Slot slot;
    slot.id = Id<model::Slot>(1);
    slot.design = Id<model::Design>(1);
    slot.label = "Round";
    slot.count = Stems(3);
    edit.put(slot);
    model::SlotPlant filled;
    filled.id = Id<model::SlotPlant>(1);
    filled.slot = slot.id;
    filled.plant = Id<model::Plant>(1);
    edit.put(filled);
    tests::putSupper(edit, 1, "Supper, with a comma", 9, 10);
    tests::putSupper(edit, 2, "Lunch", 8, 4);
    tests::putSupper(edit, 3, "Lost fair", 7, 7, model::Standing::lost);
    return with(season, edit);
}

QString cell(const OrdersModel& model, int row, int column) {
    return model.index(row, column).data().toString();
}

} // namespace

TEST(Orders, AreSummedWithoutTheLostOnesWhateverTheyAreSortedBy) {
    const auto season = threeOrders();
    const auto plan = plan::plan(season);
    OrdersModel model;
    model.show(season, plan);
    ASSERT_EQ(model.rowCount(), 4);
    EXPECT_EQ(cell(model, 0, OrdersModel::title).toStdString(), "Lost fair"); // by date
    EXPECT_EQ(cell(model, 3, OrdersModel::pieces).toStdString(), "14");       // 10 + 4
    EXPECT_EQ(cell(model, 3, OrdersModel::stems).toStdString(), "42");        // 14 x 3
    EXPECT_EQ(cell(model, 3, OrdersModel::asked).toStdString(), "£133.00");   // 14 x 9.50
    model.sort(OrdersModel::pieces, Qt::DescendingOrder);
    EXPECT_EQ(cell(model, 0, OrdersModel::pieces).toStdString(), "10");
    EXPECT_TRUE(model.isSum(3)) << "the sum stays last";
    EXPECT_EQ(cell(model, 3, OrdersModel::pieces).toStdString(), "14");
    EXPECT_EQ(plainWords(ordersAnswer(season, model.orders())).toStdString(),
              "£133.00 to pay over 2 bookings and £0.00 given; £133.00 is still owed. 1 lost booking is not "
              "counted.");
}

TEST(Orders, TheSumOpensByBookingAndABookingByPiece) {
    const auto season = threeOrders();
    const auto plan = plan::plan(season);
    const auto orders = review::seasonOrders(season, plan);
    // The lost fair is not in the sum: 10 + 4 pieces at 9.50, by hand 95.00 + 38.00 = 133.00.
    const auto sums = orderSums(season, plan, orders, std::nullopt);
    ASSERT_EQ(sums.figures.size(), 5u);
    const auto& asked = sums.figures[2].second;
    EXPECT_EQ(asked.words.toStdString(), "£133.00");
    ASSERT_EQ(asked.working.size(), 3u);
    EXPECT_EQ(asked.working[0].value + asked.working[1].value, 9500 + 3800);
    EXPECT_EQ(asked.working[2].value, 13300);
    EXPECT_EQ(asked.working[2].step, Step::result);
    for (int i = 0; i < 2; ++i) {
        const auto place = model::placeOf(asked.working[static_cast<std::size_t>(i)].from);
        ASSERT_TRUE(place);
        EXPECT_EQ(place->table, model::TableKind::bookings);
    }
    EXPECT_TRUE(asked.lines.last().startsWith(QStringLiteral("= £133.00")))
        << asked.lines.last().toStdString();
    // One booking's own: its stems line by line, each leading to its pieces.
    for (const auto& row : orders.rows) {
        const auto one = orderSums(season, plan, orders, row.booking);
        const auto& stems = one.figures[1].second;
        EXPECT_EQ(stems.working.back().value, static_cast<double>(row.stems.value));
        EXPECT_EQ(model::placeOf(stems.working.front().from)->table, model::TableKind::lines);
        EXPECT_EQ(one.figures[2].second.working.back().value, static_cast<double>(row.income.minor));
    }
}

TEST(Orders, RowsAreCopiedWithTheirHeadsAndNoCellBreaksThem) {
    auto season = threeOrders();
    auto renamed = *season.bookings.begin();
    renamed.title = "Tab\there";
    season.bookings.put(renamed);
    OrdersModel model;
    model.show(season, plan::plan(season));
    const auto row = model.rowOf(renamed.id);
    const auto text = rowsAsText(model, {row, 3}, {OrdersModel::title, OrdersModel::pieces});
    const auto expected = QStringLiteral("Booking\tPieces + spare\nTab here\t%1\nlost ones left out\t14\n")
                              .arg(cell(model, row, 4));
    EXPECT_EQ(text.toStdString(), expected.toStdString());
    installEnglishPlurals();
    EXPECT_EQ(rowsCopiedWords(1).toStdString(), "1 row copied; paste it into a spreadsheet.");
    EXPECT_EQ(rowsCopiedWords(3).toStdString(), "3 rows copied; paste them into a spreadsheet.");
}

TEST(Orders, AnOlderPlanIsPassedOverInSilence) {
    const auto season = threeOrders();
    const auto plan = plan::plan(season);
    model::Edit away("away");
    away.erase(Id<model::Line>(1)).erase(Id<model::Booking>(1));
    const auto fewer = with(season, away);
    OrdersModel model;
    model.show(fewer, plan);
    EXPECT_EQ(model.rowCount(), 3);
    EXPECT_EQ(model.rowOf(Id<model::Booking>(1)), -1);
    for (const auto& day : stepsOfWeek(fewer, plan, weekOf(model::sample::day(2027, 9, 11))))
        EXPECT_TRUE(day.steps.empty());
}

TEST(Orders, AsCsvReadBackTheSame) {
    const auto season = threeOrders();
    const auto rows =
        exchange::parseCsv(exchange::ordersCsv(season, review::seasonOrders(season, plan::plan(season))));
    ASSERT_TRUE(rows.ok());
    ASSERT_EQ(rows->size(), 4u);
    EXPECT_EQ((*rows)[0].fields[2].text, "title");
    EXPECT_EQ((*rows)[1].fields[2].text, "Lunch");
    EXPECT_EQ((*rows)[2].fields[2].text, "Supper, with a comma");
    EXPECT_EQ((*rows)[2].fields[8].text, "95.00"); // 10 x 9.50
    EXPECT_EQ((*rows)[3].fields[4].text, "lost");
}

TEST(ShedAnswers, SayWhatRunsShortFirst) {
    const auto season = threeOrders();
    // 10 jars wanted on 11 September, 6 owned; August's 4 are there. They leave the shelf on the make-up day.
    EXPECT_EQ(plainWords(containersAnswer(season, plan::plan(season))).toStdString(),
              "First to run short: Honey jar, 4 short on Fri 10 Sep for Supper, with a comma.");
    auto jar = *season.containers.begin();
    jar.owned = 10;
    const auto enough = with(season, model::Edit("more").put(jar));
    EXPECT_EQ(plainWords(containersAnswer(enough, plan::plan(enough))).toStdString(),
              "1 kind of container, enough for every booking.");
    EXPECT_EQ(mostNeededWords(plan::plan(enough), jar.id).toStdString(), "10");
}

/// Ten jars are enough for either, not for both: 10 and 4 on one evening are four more than there are.
TEST(ShedAnswers, ABookingsKitCountsWhatOthersHaveOutThen) {
    auto season = threeOrders();
    auto jar = *season.containers.begin();
    jar.owned = 10;
    auto lunch = *season.bookings.find(Id<model::Booking>(2));
    lunch.eventStart = model::sample::at(2027, 9, 11, 12, 0);
    lunch.eventEnd = model::sample::at(2027, 9, 11, 14, 0);
    season = with(season, model::Edit("same day").put(jar).put(lunch));
    const auto plan = plan::plan(season);
    const auto* item = firstShortOf(*plan.shed);
    ASSERT_NE(item, nullptr);
    EXPECT_EQ(amountOf(*item, item->firstShort->by).toStdString(), "4");
    EXPECT_EQ(plainWords(containersAnswer(season, plan)).toStdString().substr(0, 48),
              "First to run short: Honey jar, 4 short on Fri 10");
    for (const auto& [id, booked] : plan.bookings) {
        if (season.bookings.find(id)->standing == model::Standing::lost) continue;
        EXPECT_EQ(plainWords(kitAnswer(season, *booked)).toStdString(), "Everything is on the shelf.")
            << "by itself";
        EXPECT_EQ(plainWords(kitAnswer(season, *booked, plan.shed.get())).toStdString(),
                  "Short, with what others have out then: 4 Honey jar.");
    }
}

TEST(ShedWords, AJarsVolumeIsItsCylinder) {
    const auto season = threeOrders();
    // pi / 4 x 68^2 x 100 mm = 363,168 mm3 (the cylinder's formula)
    EXPECT_EQ(containerVolume(season, Id<model::Container>(1)).figure.toStdString(), "363 ml");
    auto jar = *season.containers.begin();
    jar.measuredVolume = Millilitres(340);
    const auto measured = with(season, model::Edit("measured").put(jar));
    EXPECT_EQ(volumeWords(measured, jar.id).toStdString(), "340 ml, as noted");
}

TEST(Week, TheSunIsTheAlmanacs) {
    auto settings = model::sample::settings();
    settings.latitude = 51;
    settings.longitude = -1;
    settings.zoneRule = "GMT0BST,M3.5.0/1:00,M10.5.0/2:00";
    // Worked out with PyEphem 4.1.4 (see tests/garden/sun_test.cpp): 12 April 2026, rise 05:15:52, set
    // 18:54:42 universal time; an hour later on British clocks in summer.
    EXPECT_EQ(sunWords(settings, *Day::fromYmd(2026, 4, 12)).toStdString(), "sun up 06:16, down 19:55");
    // 15 January 2026, rise 08:00:46, set 16:26:26.
    EXPECT_EQ(sunWords(settings, *Day::fromYmd(2026, 1, 15)).toStdString(), "sun up 08:01, down 16:26");
    settings.latitude = 78;
    EXPECT_EQ(sunWords(settings, *Day::fromYmd(2026, 6, 21)).toStdString(), "the sun does not set");
    settings.zoneRule = "nonsense";
    EXPECT_TRUE(sunWords(settings, *Day::fromYmd(2026, 6, 21)).isEmpty());
}

TEST(Week, StepsStandUnderTheirDayAndOnlyWorkIsCounted) {
    const auto season = demoSeason();
    const auto plan = plan::plan(season);
    const auto days = stepsOfWeek(season, plan, weekOf(model::sample::day(2027, 9, 9)));
    ASSERT_EQ(days.size(), 7u);
    EXPECT_EQ(days.front().day.weekday(), 1);
    int steps = 0;
    for (const auto& day : days) {
        Minutes work;
        for (std::size_t i = 0; i < day.steps.size(); ++i) {
            const auto& s = day.steps[i];
            EXPECT_EQ(s.from.day, day.day);
            EXPECT_LE(i > 0 ? day.steps[i - 1].from : s.from, s.from);
            EXPECT_TRUE(!s.nobody || s.minutes.value == 0) << s.words.toStdString();
            work += s.minutes;
            ++steps;
        }
        EXPECT_EQ(toldWork(work), day.work);
        EXPECT_LE(std::abs(work.value - day.work.value), 4);
    }
    EXPECT_GT(steps, 10);
    WeekStepsModel model;
    model.show(days);
    EXPECT_EQ(model.rowCount(), steps + 7);
    EXPECT_TRUE(model.isHead(0));
}

TEST(WorkWords, ReadAsPeopleSayThem) {
    EXPECT_EQ(workWords(Minutes(40)).toStdString(), "40 min");
    EXPECT_EQ(workWords(Minutes(60)).toStdString(), "1 h");
    EXPECT_EQ(workWords(Minutes(495)).toStdString(), "8 h 15");
    EXPECT_EQ(workWords(Minutes(1265)).toStdString(), "21 h 05");
}

TEST(SettingBasis, IsCommonPracticeUntilItIsChanged) {
    auto settings = model::sample::settings();
    EXPECT_TRUE(settingBasis(settings, "store_celsius").startsWith(QStringLiteral("Common practice")));
    settings.storeCelsius = 6;
    EXPECT_EQ(settingBasis(settings, "store_celsius").toStdString(), "Yours.");
    EXPECT_TRUE(settingBasis(settings, "recut_mm").startsWith(QStringLiteral("Published")));
    EXPECT_TRUE(settingBasis(settings, "season_name").isEmpty());
    EXPECT_TRUE(settingBasis(settings, "no_such_field").isEmpty());
}

TEST(TableFiles, OutAndInAgainIsTheSameSeason) {
    const QTemporaryDir folder;
    const auto season = demoSeason();
    const auto path = folder.filePath(QStringLiteral("patch.csv"));
    ASSERT_EQ(writeTable(season, model::TableKind::patches, path), QString());
    const auto reading = readTable(season, model::TableKind::patches, path);
    ASSERT_TRUE(reading.edit) << reading.sentence.toStdString();
    EXPECT_EQ(exchange::exportSeason(with(season, *reading.edit)), exchange::exportSeason(season));
}

TEST(TableFiles, WhatCannotBeTakenIsSaidByLineAndChangesNothing) {
    const auto season = demoSeason();

    struct Case {
        const char* name;
        model::TableKind kind;
        const char* csv;
    };

    const Case cases[] = {
        {"empty", model::TableKind::patches, ""},
        {"the wrong table", model::TableKind::patches, "title,event_start\r\nSupper,2027-09-11T18:00\r\n"},
        {"no such plant", model::TableKind::patches, "plant,label\r\nnobody grows this,Bed\r\n"},
        {"no number", model::TableKind::weather, "date,min_celsius,max_celsius\r\n2027-05-01,cold,12\r\n"},
        {"semicolons", model::TableKind::weather, "date;min_celsius\r\n2027-05-01;3\r\n"},
    };
    for (const auto& c : cases) {
        SCOPED_TRACE(c.name);
        const auto reading = readTableText(season, c.kind, c.csv);
        EXPECT_FALSE(reading.edit);
        EXPECT_FALSE(reading.sentence.isEmpty());
    }
    EXPECT_FALSE(readTable(season, model::TableKind::patches, QStringLiteral("/no/such/file.csv")).edit);
    EXPECT_FALSE(
        writeTable(season, model::TableKind::patches, QStringLiteral("/no/such/folder/a.csv")).isEmpty());
}

} // namespace withy::ui
