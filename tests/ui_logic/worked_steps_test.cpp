// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/papers/text_render.h"
#include "core/plan/run_up_plan.h"
#include "tests/ui_logic/laid_run_up.h"
#include "ui/logic/answers/diary_answers.h"
#include "ui/logic/calendar_file.h"
#include "ui/logic/format.h"
#include "ui/logic/models/week_steps.h"
#include "ui/logic/paper_shop.h"
#include "ui/logic/run_up_stretches.h"
#include "ui/logic/wording.h"

#include <gmock/gmock.h>

/// The steps of the run-up are the same work, at the same times, on every page and paper.
namespace withy::ui::tests {

namespace {

using plan::StepKind;
using testing::HasSubstr;
using testing::Not;

LocalTime at(int day, int hour, int minute) {
    return {model::sample::day(2027, 9, day), hour * 60 + minute};
}

template <class B>
std::vector<B> blocksIn(const std::vector<papers::Block>& body) {
    std::vector<B> out;
    for (const auto& block : body)
        if (const auto* b = std::get_if<B>(&block.content)) out.push_back(*b);
    return out;
}

} // namespace

class WorkedSteps : public ChangedDemo {
protected:
    /// The demo's steps laid by hand, then changed.
    template <class Change>
    void lay(Change change) {
        plan = withRunUp(season, demoPlanned());
        auto runUp = std::make_shared<plan::RunUpPlan>(*plan.runUp);
        change(*runUp);
        plan.runUp = runUp;
    }

    [[nodiscard]] papers::Document paper(PaperKind kind) const {
        return paperOf(kind, {season, plan, roofSupper, {}, std::nullopt, at(10, 0, 0).day});
    }

    [[nodiscard]] std::vector<papers::BoardItem> boardOn(int dayOfWeek) const {
        const auto board = blocksIn<papers::Lanes>(paper(PaperKind::weekBoard).body);
        return blocksIn<papers::BoardItem>(board.front().lanes[static_cast<std::size_t>(dayOfWeek)]);
    }
};

/// Five hours of work from Thursday afternoon to Friday morning are five hours, not twenty.
TEST_F(WorkedSteps, TheNightIsNoWork) {
    plan::StepKey key;
    lay([&](plan::RunUpPlan& runUp) {
        bool given = false;
        for (auto& step : runUp.steps) {
            if (step.key.step != StepKind::make || step.bookings != std::vector{roofSupper} || given) {
                std::erase(step.who, plan::Worker{wilf}); // he does nothing else that week
                continue;
            }
            given = step.splittable = true;
            key = step.key;
            step.from = at(9, 15, 0);
            step.to = at(10, 11, 0);
            step.minutes = Minutes(300);
            step.who = {{wilf}};
        }
        ASSERT_TRUE(given);
        for (auto& person : runUp.people)
            if (person.worker.helper)
                person.there = {{at(9, 13, 0), at(9, 18, 0)}, {at(10, 9, 0), at(10, 17, 0)}};
    });
    const auto& steps = plan.runUp->steps;
    const auto made = std::find_if(steps.begin(), steps.end(), [&](const auto& s) { return s.key == key; });
    ASSERT_NE(made, steps.end());
    const auto worked = workedAt(plan.runUp.get(), *made);
    ASSERT_EQ(worked.size(), 2u);
    EXPECT_EQ(worked[0].to, at(9, 18, 0));
    EXPECT_EQ(worked[1].from, at(10, 9, 0));
    EXPECT_EQ(minutesEach(*made), Minutes(300));

    papers::Document sheet = paper(PaperKind::helperSheet);
    std::vector<papers::Document> sheets{sheet};
    sheets.insert(sheets.end(), sheet.sheets.begin(), sheet.sheets.end());
    const auto his =
        std::find_if(sheets.begin(), sheets.end(), [](const auto& d) { return d.name == "Wilf"; });
    ASSERT_NE(his, sheets.end());
    const auto words = papers::renderText(*his);
    EXPECT_THAT(words, HasSubstr("| work 5 h\n"));
    EXPECT_THAT(words, HasSubstr("goes on"));
    EXPECT_EQ(blocksIn<papers::TimedTask>(his->body).size(), 2u);

    const auto timesOf = [&](int day) {
        std::vector<std::string> out;
        for (const auto& item : boardOn(day))
            if (item.title.rfind("Make up", 0) == 0 && item.detail.find("Wilf") != std::string::npos)
                out.push_back(item.time);
        return out;
    };
    EXPECT_EQ(timesOf(3), std::vector<std::string>{"15:00–18:00"});
    EXPECT_EQ(timesOf(4), std::vector<std::string>{"09:00–11:00"});

    std::size_t entries = 0, stretches = 0;
    for (const auto& step : runUpSteps(season, plan))
        if (step.to > step.from) stretches += workedAt(plan.runUp.get(), step).size();
    const auto calendar = seasonCalendar(season, plan, QDateTime(QDate(2027, 9, 6), QTime(7, 0), Qt::UTC));
    std::set<std::string> uids;
    Minutes asleep;
    for (const auto& entry : calendar.entries) {
        uids.insert(entry.uid);
        if (entry.category == "Booking") continue;
        ++entries;
        const auto from = std::max(entry.from, at(9, 18, 0)), to = std::min(entry.to, at(10, 9, 0));
        if (entry.summary.rfind("Make up", 0) == 0 && from < to) asleep += to - from;
    }
    EXPECT_EQ(entries, stretches);
    EXPECT_EQ(uids.size(), calendar.entries.size());
    EXPECT_EQ(asleep, Minutes(0));
}

/// Begun on Sunday and taken up again on Monday: that is not "nothing to do", and it has its letter.
TEST_F(WorkedSteps, ADayOnWhichAStepOnlyGoesOnIsNotEmpty) {
    auto settings = season.theSettings();
    settings.heatLimitCelsius = 60; // no day is warm
    season.settings.put(settings);
    lay([&](plan::RunUpPlan& runUp) {
        const auto made = std::find_if(runUp.steps.begin(), runUp.steps.end(), [](const auto& s) {
            return s.key.step == StepKind::make && s.bookings == std::vector{roofSupper};
        });
        ASSERT_NE(made, runUp.steps.end());
        plan::RunUpStep step = *made;
        step.splittable = true;
        step.from = at(12, 15, 0);
        step.to = at(13, 11, 0);
        step.minutes = Minutes(300);
        step.who = {{wilf}};
        runUp.steps = {step};
        for (auto& person : runUp.people)
            if (person.worker.helper)
                person.there = {{at(12, 13, 0), at(12, 18, 0)}, {at(13, 9, 0), at(13, 17, 0)}};
    });
    // Whatever else has steps that week is no part of this.
    std::erase_if(plan.bookings, [](const auto& booked) { return booked.first != roofSupper; });
    const auto board =
        paperOf(PaperKind::weekBoard, {season, plan, std::nullopt, {}, std::nullopt, at(13, 0, 0).day});
    for (const auto& fact : board.facts)
        EXPECT_THAT(papers::words(fact), Not(HasSubstr("Nothing to do")));
    const auto lanes = blocksIn<papers::Lanes>(board.body).front().lanes;
    EXPECT_EQ(blocksIn<papers::BoardHead>(lanes[0]).front().note, "goes on");
    EXPECT_EQ(blocksIn<papers::BoardHead>(lanes[1]).front().note, "nothing to do");
    bool told = false;
    for (const auto& item : blocksIn<papers::BoardItem>(lanes[0])) {
        if (item.title.rfind("Make up", 0) != 0) continue;
        told = true;
        EXPECT_EQ(item.time, "09:00–11:00");
        EXPECT_THAT(item.title, HasSubstr("goes on"));
        EXPECT_FALSE(item.mark.empty());
    }
    EXPECT_TRUE(told);
}

/// Two together work when both are there.
TEST_F(WorkedSteps, TwoWorkWhenBothAreThere) {
    plan::RunUpPlan runUp;
    runUp.people = {{{}, {{at(9, 8, 0), at(9, 18, 0)}}, {{{at(9, 12, 0), at(9, 13, 0)}, "Lunch"}}},
                    {{wilf}, {{at(9, 10, 0), at(9, 16, 0)}}, {}}};
    plan::RunUpStep step;
    step.splittable = true;
    step.from = at(9, 10, 0);
    step.to = at(9, 15, 0);
    step.minutes = Minutes(480);
    step.who = {{}, {wilf}};
    const auto worked = workedAt(&runUp, step);
    ASSERT_EQ(worked.size(), 2u);
    EXPECT_EQ(worked[0].to, at(9, 12, 0));
    EXPECT_EQ(worked[1].from, at(9, 13, 0));
    EXPECT_EQ(minutesEach(step), Minutes(240));
    step.splittable = false;
    EXPECT_EQ(workedAt(&runUp, step).size(), 1u);
    EXPECT_EQ(workedAt(nullptr, step).size(), 1u);
}

/// "Each latest time still meets the guests": it is never told later than it is, nor the plan after it.
TEST_F(WorkedSteps, TheLatestTimeIsNeverLate) {
    struct Case {
        LocalTime from;
        std::int64_t inHand;
        const char *plan, *latest;
    };

    const Case cases[] = {{at(11, 13, 33), 0, "13:30", "13:30"},  {at(11, 13, 33), 1, "13:30", "13:30"},
                          {at(11, 13, 33), 2, "13:35", "13:35"},  {at(11, 13, 33), 31, "13:35", "14:00"},
                          {at(11, 13, 31), 0, "13:30", "13:30"},  {at(11, 23, 58), 0, "23:55", "23:55"},
                          {at(11, 23, 58), 30, "23:55", "00:25"}, {at(11, 9, 0), 30, "09:00", "09:30"}};
    for (const auto& c : cases) {
        SCOPED_TRACE(std::string(c.plan) + " " + c.latest);
        lay([&](plan::RunUpPlan& runUp) {
            for (auto& step : runUp.steps) {
                if (step.key.step != StepKind::load || step.bookings != std::vector{roofSupper}) continue;
                step.from = c.from;
                step.to = c.from + Minutes(20);
                step.latest = step.to + Minutes(c.inHand);
            }
        });
        bool told = false;
        for (const auto& task : blocksIn<papers::TimedTask>(paper(PaperKind::runSheet).body)) {
            if (task.title.rfind("Load", 0) != 0) continue;
            told = true;
            EXPECT_EQ(task.time, c.plan);
            EXPECT_EQ(task.latest, c.latest);
        }
        EXPECT_TRUE(told);
    }
}

TEST_F(WorkedSteps, WorkedOutTimesAreToldToFiveMinutes) {
    lay([&](plan::RunUpPlan& runUp) {
        for (auto& step : runUp.steps) {
            if (step.key.step != StepKind::make || step.bookings != std::vector{roofSupper}) continue;
            step.from = at(10, 6, 33);
            step.to = at(10, 7, 52);
        }
    });
    bool told = false;
    for (const auto& item : boardOn(4))
        if (item.title.rfind("Make up", 0) == 0) {
            told = true;
            EXPECT_EQ(item.time, "06:35–07:50");
        }
    EXPECT_TRUE(told);
    const auto night = sentence(plan::Finding{plan::FindingCode::workInTheNight,
                                              plan::Severity::note,
                                              {},
                                              {"The drive", "2027-06-05T06:33"},
                                              {}},
                                model::UnitSystem::metric);
    EXPECT_THAT(night.toStdString(), HasSubstr("is at Sat 5 Jun, 06:35"));
}

/// The week as it really is, with bookings settled long since: the wall says what the page says.
TEST_F(WorkedSteps, TheBoardHasAllTheWorkOfItsPage) {
    ASSERT_TRUE(plan.runUp);
    std::set<Id<model::Booking>> laid;
    for (const auto& step : plan.runUp->steps)
        laid.insert(step.bookings.begin(), step.bookings.end());
    int alone = 0;
    for (Day monday = *Day::fromYmd(2027, 3, 1); monday < *Day::fromYmd(2027, 11, 1); monday = monday + 7) {
        SCOPED_TRACE(shortDay(monday).toStdString());
        const auto days = stepsOfWeek(season, plan, monday);
        Minutes work;
        for (const auto& day : days) {
            work += day.work;
            for (const auto& step : day.steps)
                alone += step.booking && !laid.contains(*step.booking) ? 1 : 0;
        }
        const auto board =
            paperOf(PaperKind::weekBoard, {season, plan, std::nullopt, {}, std::nullopt, monday});
        std::string facts;
        for (const auto& fact : board.facts)
            facts += papers::words(fact) + "\n";
        if (work.value == 0) {
            EXPECT_THAT(facts, HasSubstr("Nothing to do this week."));
            continue;
        }
        EXPECT_THAT(facts,
                    HasSubstr(utf8(workWords(work).replace(QLatin1Char(' '), QChar::Nbsp)) + " of work"));
        EXPECT_EQ(nextWeekWithWork(season, plan, monday), monday);
    }
    EXPECT_GT(alone, 0) << "the demo has settled bookings, which are in no run-up";
    const auto steps = runUpSteps(season, plan);
    std::set<std::string> uids;
    const auto calendar = seasonCalendar(season, plan, QDateTime(QDate(2027, 9, 6), QTime(7, 0), Qt::UTC));
    for (const auto& entry : calendar.entries)
        uids.insert(entry.uid);
    EXPECT_EQ(uids.size(), calendar.entries.size());
    EXPECT_GT(steps.size(), plan.runUp->steps.size());
}

TEST_F(WorkedSteps, ARoundForTwoIsWorkForTwo) {
    lay([&](plan::RunUpPlan& runUp) {
        plan::RunUpStep round;
        round.key.step = StepKind::cut;
        round.from = at(10, 6, 0);
        round.to = at(10, 7, 0);
        round.minutes = Minutes(60);
        for (const auto& [id, booked] : plan.bookings)
            if (season.bookings.find(id)->standing != model::Standing::lost) round.bookings.push_back(id);
        round.bookings.resize(2);
        runUp.steps = {round};
    });
    // Whatever else has steps that week is no part of this.
    std::erase_if(plan.bookings, [&](const auto& booked) {
        const auto& both = plan.runUp->steps.front().bookings;
        return std::find(both.begin(), both.end(), booked.first) == both.end();
    });
    const auto days = stepsOfWeek(season, plan, weekOf(at(10, 0, 0).day));
    EXPECT_THAT(plainWords(weekAnswer(days, season, plan)).toStdString(),
                HasSubstr("1 h of work for 2 bookings."));
}

} // namespace withy::ui::tests
