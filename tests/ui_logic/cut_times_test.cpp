// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/papers/text_render.h"
#include "core/plan/run_up_plan.h"
#include "tests/ui_logic/planned_demo.h"
#include "ui/logic/edits/tally_edits.h"
#include "ui/logic/format.h"
#include "ui/logic/models/booking_words.h"
#include "ui/logic/models/cover_rows.h"
#include "ui/logic/models/cutting_goals.h"
#include "ui/logic/models/stem_rows.h"
#include "ui/logic/models/stem_sources.h"
#include "ui/logic/models/tally_rows.h"
#include "ui/logic/paper_shop.h"
#include "ui/logic/run_up_words.h"

#include <gmock/gmock.h>

#include <map>
#include <set>
#include <utility>

/// When and how much is cut is the same wherever it is said.
namespace withy::ui::tests {

namespace {

using testing::HasSubstr;

class CutTimesAgree : public PlannedDemo {};

/// When the run-up begins to cut for the supper: what the prep sheet and the week board print.
std::set<LocalTime> cutTimesOf(const model::Season& season, const plan::Plan& plan,
                               Id<model::Booking> booking) {
    std::set<LocalTime> out;
    for (const auto& step : runUpSteps(season, plan, booking))
        if (step.key.step == plan::StepKind::cut) out.insert(step.from);
    return out;
}

QString dayAndHour(LocalTime t) {
    return shortDay(t.day) + QLatin1Char(' ') + planClock(t);
}

} // namespace

TEST_F(CutTimesAgree, EveryPageCutsWhenTheRunUpCuts) {
    const auto steps = cutTimesOf(season(), plan(), theSupper);
    ASSERT_GT(steps.size(), 1U);
    std::set<QString> said;
    for (const auto t : steps)
        said.insert(dayAndHour(t));
    const CutTimes times(plan(), theSupper);
    std::set<LocalTime> rounds;
    for (const auto& t : times.all())
        rounds.insert(t.from);
    EXPECT_EQ(rounds, steps);
    // Stems, Covered by.
    int fromPatches = 0;
    for (const auto& source : sourcesOf(season(), times, plan().cover->bookings.at(theSupper))) {
        if (source.origin != StemOrigin::patch) continue;
        ++fromPatches;
        EXPECT_TRUE(said.contains(shortDay(source.day) + QLatin1Char(' ') + source.hour))
            << source.place.toStdString() << " " << source.hour.toStdString();
    }
    EXPECT_GT(fromPatches, 4);
    // Cutting day, and the cutting list.
    for (const auto& goal : cuttingGoals(season(), plan(), theSupper)) {
        ASSERT_TRUE(goal.when) << goal.patch.value;
        EXPECT_EQ(goal.day, goal.when->from.day);
        EXPECT_TRUE(steps.contains(goal.when->from));
    }
    // Stems, Cutting rounds and When.
    const auto sheet = roundSheet(season(), plan(), ofSupper());
    ASSERT_EQ(sheet.rows.size(), steps.size());
    std::size_t row = 0;
    for (const auto t : steps)
        EXPECT_TRUE(sheet.rows[row++].cells[0].words.startsWith(planClock(t)));
    for (const auto& r : stemSheet(season(), plan(), ofSupper()).rows) {
        if (r.look != RowLook::body) continue;
        EXPECT_TRUE(std::any_of(said.begin(), said.end(), [&](const QString& at) {
            return r.cells[3].words.startsWith(at);
        })) << r.cells[3].words.toStdString();
    }
}

TEST_F(CutTimesAgree, BeforeThereIsARunUpTheBookingsOwnRoundsStandIn) {
    plan::Plan early = plan();
    early.runUp.reset();
    const CutTimes times(early, theSupper);
    EXPECT_FALSE(times.laid());
    ASSERT_EQ(times.all().size(), ofSupper().rounds.size());
    EXPECT_EQ(times.all().front().from, ofSupper().rounds.front().start);
    EXPECT_EQ(times.on(ofSupper().rounds.front().start.day)->to, ofSupper().rounds.front().end);
}

TEST_F(CutTimesAgree, TheCuttingDayShowsItsOwnDay) {
    const auto goals = cuttingGoals(season(), plan(), theSupper);
    Day first = goals.front().day, last = first;
    std::int64_t all = 0;
    for (const auto& g : goals) {
        first = std::min(first, g.day);
        last = std::max(last, g.day);
        all += g.need;
    }
    ASSERT_LT(first, last);
    std::int64_t due = 0;
    for (const auto& row : tallyRows(season(), plan(), theSupper, first)) {
        due += row.need;
        EXPECT_FALSE(row.place.contains(QStringLiteral("planned for"))) << row.place.toStdString();
        EXPECT_FALSE(row.place.contains(QStringLiteral("Sep"))) << "the head has the day";
    }
    const auto later = tallyLater(season(), plan(), theSupper, first);
    ASSERT_TRUE(later);
    EXPECT_EQ(due + later->stems, all);
    EXPECT_EQ(later->last, last);
    EXPECT_FALSE(tallyLater(season(), plan(), theSupper, last));
    std::int64_t onLast = 0;
    for (const auto& row : tallyRows(season(), plan(), theSupper, last))
        onLast += row.need;
    EXPECT_EQ(onLast, all) << "by the last day all is due";
    // Counted before its day, a patch is told to be early.
    const auto ahead = std::find_if(goals.begin(), goals.end(), [&](const CuttingGoal& g) {
        return std::none_of(goals.begin(), goals.end(),
                            [&](const CuttingGoal& o) { return o.patch == g.patch && o.day == first; });
    });
    ASSERT_NE(ahead, goals.end());
    const auto cutting = edits::cuttingOn(season(), plan(), theSupper, first);
    const auto step = edits::addStems(season(), cutting, ahead->patch, edits::TallyCount::cut, 5);
    const auto tallied = model::apply(season(), step.edit)->season;
    bool told = false;
    for (const auto& row : tallyRows(tallied, plan(), theSupper, first))
        if (row.patch == ahead->patch) told = row.place.contains(QStringLiteral("early: planned for "));
    EXPECT_TRUE(told);
}

/// 295 and 355 by hand: tests/acceptance/demo_season_test.cpp.
TEST_F(CutTimesAgree, OneSentenceOfStemsOnEveryPage) {
    std::int64_t withSpare = 0;
    for (const auto& need : ofSupper().needs)
        withSpare += (need.need.need + need.need.spare).value;
    EXPECT_EQ(withSpare, plan().cover->bookings.at(theSupper).needed.value);
    const QString counts =
        QStringLiteral("295 stems, %1 with the spare, 355 to cut in whole bunches").arg(withSpare);
    EXPECT_EQ(stemCounts(ofSupper()), counts);
    const CutTimes times(plan(), theSupper);
    const CoverView view{season(), ofSupper(),         *plan().cover, plan().cover->bookings.at(theSupper),
                         times,    plan().garden.get()};
    const QString said = QStringLiteral("26 pieces, %1. ").arg(counts);
    EXPECT_TRUE(wordsOf(coverAnswer(view)).startsWith(said)) << wordsOf(coverAnswer(view)).toStdString();
    EXPECT_TRUE(wordsOf(piecesAnswer(season(), theSupper, &ofSupper())).startsWith(said));
    EXPECT_TRUE(wordsOf(stemAnswer(season(), ofSupper(), {})).startsWith(said));
    for (const auto kind : {PaperKind::prepSheet, PaperKind::bookingSummary})
        EXPECT_THAT(papers::renderText(paperOf(kind, {season(), plan(), theSupper})),
                    HasSubstr(counts.toStdString()));
}

/// The prep sheet prints the rounds of the run-up, the cutting list its goals: plant by plant the same stems on
/// the same round, 355 in all.
TEST_F(CutTimesAgree, ARoundCutsWhatItsGoalsAskFor) {
    std::map<std::pair<std::size_t, Id<model::Plant>>, std::int64_t> laid, asked;
    std::int64_t all = 0;
    for (const auto i : runUpRounds(plan(), theSupper)) {
        const auto& round = plan().runUp->rounds[i];
        ASSERT_EQ(round.bookings.size(), 1u) << "the demo's supper shares no round";
        for (const auto& row : round.patches)
            laid[{i, row.plant}] += row.stems.value;
        all += round.stems.value;
    }
    for (const auto& goal : cuttingGoals(season(), plan(), theSupper)) {
        ASSERT_TRUE(goal.when && goal.when->round);
        asked[{*goal.when->round, goal.plant}] += goal.goal();
    }
    EXPECT_EQ(laid, asked);
    EXPECT_EQ(all, 355);
}

} // namespace withy::ui::tests
