// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/run_up_plan.h"
#include "tests/ui_logic/planned_demo.h"
#include "ui/logic/answers/diary_answers.h"
#include "ui/logic/answers/season_answers.h"
#include "ui/logic/format.h"
#include "ui/logic/models/free_weeks.h"
#include "ui/logic/models/run_up_rows.h"
#include "ui/logic/models/water_view.h"
#include "ui/logic/paper_shop.h"
#include "ui/logic/run_up_words.h"
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
                                      std::move(numbers)})
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
    add(2, 345);
    add(4, 500);
    full.runUp = runUp;
    const auto words = wordsOf(weekAnswer(stepsOfWeek(season(), full, monday), season(), full)).toStdString();
    EXPECT_THAT(words, HasSubstr("Too much for the hours there are: Friday 8 h 20 and Wednesday 6 h 02."))
        << words;
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
    EXPECT_EQ(view.from, QStringLiteral("%1, %2").arg(shortDay(made->day), clock(*made)));
}

} // namespace withy::ui::tests
