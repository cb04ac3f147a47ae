// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/run_up_plan.h"
#include "tests/ui_logic/planned_demo.h"
#include "ui/logic/answers/diary_answers.h"
#include "ui/logic/answers/season_answers.h"
#include "ui/logic/begin/known_places.h"
#include "ui/logic/format.h"
#include "ui/logic/models/booking_words.h"
#include "ui/logic/models/free_weeks.h"
#include "ui/logic/models/run_up_rows.h"
#include "ui/logic/models/water_view.h"
#include "ui/logic/paper_shop.h"
#include "ui/logic/run_up_words.h"
#include "ui/logic/shed/shelf_rows.h"
#include "ui/logic/wording.h"

#include <gmock/gmock.h>

#include <set>

/// What an answer says stands as it says it.
namespace withy::ui::tests {

namespace {

using testing::HasSubstr;

class AnswersAgree : public PlannedDemo {};

} // namespace

TEST_F(AnswersAgree, NothingIsPromisedInAWeekGoneBy) {
    FreeWeeksModel model;
    model.show(season(), plan().cover.get(), FreeWeeksModel::Figure::free);
    const QString all = wordsOf(model.answer());
    for (const char* day : {"2027-06-01", "2027-09-06"}) {
        const auto today = *Day::parse(day);
        const QString words = wordsOf(model.answer(today));
        const QString week = words.section(QStringLiteral("week of "), 1).section(QLatin1Char(':'), 0, 0);
        int column = -1;
        for (int c = 0; c < model.columnCount(); ++c)
            if (model.headerData(c, Qt::Horizontal).toString() == week) column = c;
        EXPECT_GE(column, model.columnOf(today)) << words.toStdString();
    }
    EXPECT_TRUE(wordsOf(model.answer(*Day::parse("2029-01-01"))).contains(QStringLiteral("gone by")));
    EXPECT_FALSE(all.isEmpty());
}

TEST_F(AnswersAgree, YearsWithoutWeatherAreNotCalledNone) {
    const auto said = [](std::vector<double> numbers) {
        return sentence(plan::Finding{plan::FindingCode::bloomYearsTooFew,
                                      plan::Severity::note,
                                      {},
                                      {"Tulip, blush"},
                                      std::move(numbers)},
                        season())
            .toStdString();
    };
    EXPECT_EQ(said({0, 4, 5}),
              "Tulip, blush: 5 years noted, none with its weather, so the usual dates stand. "
              "Import the weather of those years; 4 are wanted.");
    EXPECT_THAT(said({2, 4, 2}), HasSubstr("2 noted years are too few"));
    EXPECT_THAT(said({1, 4, 5}), HasSubstr("5 years noted, only 1 with its weather"));
}

TEST_F(AnswersAgree, ScreenAndPaperCountTheSameBookings) {
    const auto orders = review::seasonOrders(season(), plan());
    std::int64_t lost = 0;
    for (const auto& b : season().bookings)
        lost += b.standing == model::Standing::lost ? 1 : 0;
    ASSERT_GT(lost, 0);
    const auto taken = std::to_string(std::ssize(season().bookings) - lost);
    EXPECT_THAT(wordsOf(ordersAnswer(season(), orders)).toStdString(),
                HasSubstr("over " + taken + " bookings"));
    const auto paper = paperOf(PaperKind::seasonOrders, {season(), plan(), std::nullopt});
    EXPECT_EQ(papers::words(paper.facts[0]), taken + " bookings, " + std::to_string(lost) + " lost");
}

/// The shelf, a booking's kit list, the buying list and the graph name one number, and nobody who is over.
TEST_F(AnswersAgree, ShelfKitAndBuyingNameTheSame) {
    const auto& shed = *plan().shed;
    const Day today = *shed.today;
    int counted = 0, kits = 0;
    const auto toCome = [&](const std::vector<Id<model::Booking>>& ids) {
        for (const auto id : ids)
            EXPECT_GE(season().bookings.find(id)->eventEnd.day, today) << season().bookings.find(id)->title;
    };
    for (const auto& item : shed.kit) {
        SCOPED_TRACE(itemName(season(), item.item).toStdString());
        if (!item.owned) continue;
        ++counted;
        EXPECT_LE(item.out + item.broken, *item.owned);
        EXPECT_EQ(*item.here, *item.owned - item.out - item.broken);
        if (item.firstShort) toCome(item.firstShort->bookings);
        for (const auto& hold : item.holds) {
            const auto on = kitOnDay(&shed, item.item, hold.booking);
            ASSERT_TRUE(on);
            ++kits;
            if (on->lacking == 0) continue;
            EXPECT_EQ(on->needed + on->others + on->broken - on->owned, on->lacking);
            ASSERT_TRUE(item.worst);
            EXPECT_LE(on->lacking, item.worst->by);
        }
    }
    EXPECT_GT(counted, 10);
    EXPECT_GT(kits, 50);
    for (const auto& line : shed.buying)
        toCome(line.bookings);
    for (const auto group : {ShelfGroup::containers, ShelfGroup::holders, ShelfGroup::sundries}) {
        const auto last = shelfSpan(season(), shed).last;
        for (const auto& row : shelfRows(season(), shed, group)) {
            const auto item = std::find_if(shed.kit.begin(), shed.kit.end(),
                                           [&](const auto& k) { return k.item == row.item; });
            if (item == shed.kit.end() || !item->lowest) continue;
            EXPECT_GE(last, (item->firstShort ? item->firstShort : item->lowest)->day);
        }
    }
}

/// 12 trestles of 8 in the demo's library carry the jars; three round tables carry none.
TEST_F(AnswersAgree, ABookingSeatsWhoHasPiecesBeforeThem) {
    std::set<std::int64_t> tables;
    for (const auto& p : season().placements)
        if (season().lines.find(p.line)->booking == theSupper) tables.insert(p.table.value);
    std::int64_t seats = 0;
    for (const auto id : tables) {
        const auto* t = season().venueTables.find(Id<model::VenueTable>(id));
        seats += t->covers * t->howMany;
    }
    ASSERT_GT(seats, 0);
    const auto said = bookingFacts(season(), *season().bookings.find(theSupper)).join("; ").toStdString();
    EXPECT_THAT(said, HasSubstr(std::to_string(seats) + " seats")) << said;
}

/// A week's work is one number: the list's head, the diary's sentence and its days.
TEST_F(AnswersAgree, AWeeksWorkIsOneNumber) {
    const Day monday = *Day::fromYmd(2027, 9, 6);
    Minutes days;
    for (const auto& day : stepsOfWeek(season(), plan(), monday)) {
        EXPECT_EQ(day.work.value % 5, 0);
        days += day.work;
    }
    ASSERT_GT(days.value, 0);
    const auto work = workByDay(season(), plan());
    EXPECT_EQ(workBetween(work, monday, monday + 6), days);
    int weeks = 0; // those of bookings settled long since among them
    for (Day week = *Day::fromYmd(2027, 3, 1); week < *Day::fromYmd(2027, 11, 1); week = week + 7) {
        Minutes sum;
        for (const auto& day : stepsOfWeek(season(), plan(), week))
            sum += day.work;
        EXPECT_EQ(workBetween(work, week, week + 6), sum) << shortDay(week).toStdString();
        weeks += sum.value > 0;
    }
    EXPECT_GT(weeks, 10);
    EXPECT_THAT(wordsOf(weekAnswer(stepsOfWeek(season(), plan(), monday), season(), plan())).toStdString(),
                HasSubstr(utf8(workWords(days)) + " of work"));
}

TEST_F(AnswersAgree, TimesNobodyTookAreListedWithWhatStandsIn) {
    model::Season blank;
    const auto all = standInTimes(blank);
    EXPECT_EQ(all.size(), model::Words<model::RateKind>::list.size());
    for (const auto& time : all)
        EXPECT_GT(time.minutes.section(QLatin1Char(' '), 0, 0).toDouble(), 0) << time.work.toStdString();
    EXPECT_EQ(standInTimes(season()).size() + season().rates.size(), all.size());
}

TEST(KnownPlaces, TheOnlyMatchIsFoundAndElseItIsSaid) {
    EXPECT_EQ(placesWith(QStringLiteral("shrop")).size(), 1);
    EXPECT_GT(placesWith(QStringLiteral("shire")).size(), 1);
    EXPECT_TRUE(placesWith(QStringLiteral("Nowhere at all")).isEmpty());
    EXPECT_TRUE(nearTrouble(QStringLiteral("Atlantis"), 0).contains(QStringLiteral("Atlantis")));
}

/// Three shortages on two days: a day is told once, with the sum, the worst first.
TEST_F(AnswersAgree, ADayThatIsTooFullIsToldOnce) {
    plan::Plan full = plan();
    auto runUp = std::make_shared<plan::RunUpPlan>(*full.runUp);
    runUp->over.clear();
    const Day monday = *Day::fromYmd(2027, 9, 6);
    const auto add = [&](int day, std::int64_t minutes) {
        plan::RunUpOver over;
        over.day = monday + day;
        over.minutes = Minutes(minutes);
        runUp->over.push_back(over);
    };
    add(2, 17);
    add(2, 103);
    add(4, 440);
    add(5, 5000); // one step in the way of many: no day has more too much than it has work
    full.runUp = runUp;
    const auto words = wordsOf(weekAnswer(stepsOfWeek(season(), full, monday), season(), full)).toStdString();
    EXPECT_THAT(words, HasSubstr("Friday 7 h 20")) << words;
    EXPECT_THAT(words, testing::AnyOf(HasSubstr("Wednesday 2 h"), HasSubstr("1 more day"))) << words;
    EXPECT_THAT(words, testing::Not(HasSubstr("83 h"))) << words;
}

TEST_F(AnswersAgree, WorkAfterTheWorkingDayIsOwnedTo) {
    const auto end = season().theSettings().workTo;
    std::int64_t latest = 0;
    for (const auto& s : runUpSteps(season(), plan(), theSupper))
        if (s.key.step == plan::StepKind::strip || s.key.step == plan::StepKind::cut)
            latest =
                std::max(latest, s.to.minutesSinceEpoch() - LocalTime{s.from.day, 0}.minutesSinceEpoch());
    ASSERT_GT(latest, end) << "the demo strips in the cool of the evening";
    const auto words = wordsOf(runUpAnswer(season(), plan(), theSupper)).toStdString();
    EXPECT_THAT(words, HasSubstr(utf8(workWords(Minutes(latest - end))) + " after your working day"))
        << words;
    auto settings = season().theSettings();
    settings.workTo = 23 * 60;
    const auto long_ = model::apply(season(), model::Edit("t").put(settings))->season;
    EXPECT_THAT(wordsOf(runUpAnswer(long_, plan(), theSupper)).toStdString(),
                testing::Not(HasSubstr("after your working")));
}

TEST_F(AnswersAgree, TheWaterFallsFromWhenTheRunUpMakes) {
    Id<model::Design> jar;
    std::optional<LocalTime> made;
    for (const auto& s : runUpSteps(season(), plan(), theSupper)) {
        if (s.key.step != plan::StepKind::make || !s.key.line) continue;
        const auto design = season().lines.find(*s.key.line)->design;
        if (!season().designs.find(design)->container || (made && design != jar)) continue;
        jar = design;
        made = made ? std::min(*made, s.from) : s.from;
    }
    ASSERT_TRUE(made);
    const auto view = waterView(season(), plan(), jar, Day::fromYmd(2027, 9, 6));
    EXPECT_EQ(view.from, QStringLiteral("%1, %2").arg(shortDay(made->day), planClock(*made)));
}

} // namespace withy::ui::tests
