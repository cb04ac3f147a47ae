// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/run_up_plan.h"
#include "tests/model/sample.h"
#include "tests/ui_logic/logic_fixture.h"
#include "ui/logic/edits/tally_edits.h"
#include "ui/logic/models/cutting_goals.h"
#include "ui/logic/models/tally_offers.h"
#include "ui/logic/models/tally_rows.h"

#include <gmock/gmock.h>

#include <set>

namespace withy::ui {

namespace {

using edits::TallyCount;
using testing::HasSubstr;

constexpr Id<model::Booking> supper{1};
constexpr Id<model::Plant> zinnia{28};
const Day cutDay = model::sample::day(2027, 9, 10);

/// The demo season with its plan, and what a tally does to it.
Id<model::Booking> otherBookingOf(const model::Season& season) {
    for (const auto& b : season.bookings)
        if (b.id != supper && b.eventStart.day > cutDay && edits::tallyClosed(season, b.id).isEmpty())
            return b.id;
    ADD_FAILURE() << "the demo has no other booking still to be cut for";
    return {};
}

class TallyEdits : public testing::Test {
protected:
    static const plan::Plan& planOfDemo() {
        static const plan::Plan plan = [] {
            plan::PlanOptions options;
            options.today = model::sample::day(2027, 9, 6);
            return plan::plan(demoSeason(), options);
        }();
        return plan;
    }

    [[nodiscard]] edits::Cutting cutting(Day day = cutDay) const {
        return edits::cuttingOn(season, planOfDemo(), supper, day);
    }

    /// Takes the step; its sentence when there is one.
    std::string take(const edits::TallyStep& step) {
        if (!step.ok()) return step.sentence.toStdString();
        auto applied = model::apply(season, step.edit);
        EXPECT_TRUE(applied.ok());
        if (!applied.ok()) return "refused by the model";
        undo = applied->inverse;
        season = applied->season;
        return {};
    }

    std::string add(std::int64_t by, TallyCount count = TallyCount::cut, Day day = cutDay) {
        return take(edits::addStems(season, cutting(day), patch(), count, by));
    }

    std::string type(const char* words, TallyCount count = TallyCount::cut, Day day = cutDay) {
        return take(edits::typeStems(season, cutting(day), patch(), count, QString::fromUtf8(words)));
    }

    /// Tunnel side, where the zinnias stand.
    [[nodiscard]] Id<model::Patch> patch() const {
        for (const auto& p : season.patches)
            if (p.plant == zinnia) return p.id;
        return {};
    }

    [[nodiscard]] std::optional<std::int64_t> counted(TallyCount count = TallyCount::cut,
                                                      Day day = cutDay) const {
        return edits::tallied(season, supper, patch(), day, count).all;
    }

    [[nodiscard]] std::vector<TallyRow> rows() const {
        return tallyRows(season, planOfDemo(), supper, cutDay);
    }

    [[nodiscard]] TallyRow rowOf(Id<model::Patch> id) const {
        for (const auto& row : rows())
            if (row.patch == id) return row;
        ADD_FAILURE() << "no row of patch " << id.value;
        return {};
    }

    model::Season season = demoSeason();
    model::Edit undo;
};

/// By value: sameRows() asks whether a table is the very same.
bool same(const model::Season& a, const model::Season& b) {
    for (const auto kind : {model::TableKind::rounds, model::TableKind::roundBookings,
                            model::TableKind::patches, model::TableKind::agreedSwaps})
        if (model::sizeOf(a, kind) != model::sizeOf(b, kind)) return false;
    if (a.tallies.size() != b.tallies.size()) return false;
    for (const auto& t : a.tallies) {
        const auto* other = b.tallies.find(t.id);
        if (!other || other->cut != t.cut || other->thrownAway != t.thrownAway || other->patch != t.patch)
            return false;
    }
    return true;
}

} // namespace

TEST_F(TallyEdits, TheFirstPressMakesTheRoundAndTheNextFindsIt) {
    const auto before = season;
    const CutTimes times(planOfDemo(), supper);
    ASSERT_FALSE(times.all().empty());
    const Day day = times.all().back().from.day;
    ASSERT_EQ(edits::roundOn(season, supper, day), nullptr);
    EXPECT_EQ(add(1, TallyCount::cut, day), "");
    const auto* round = edits::roundOn(season, supper, day);
    ASSERT_NE(round, nullptr);
    const auto planned = times.on(day);
    ASSERT_TRUE(planned);
    EXPECT_EQ(round->from, planned->from) << "the plan's hours";
    EXPECT_EQ(round->to, planned->to);
    EXPECT_TRUE(same(model::apply(season, undo)->season, before)) << "one undo takes round and count back";
    EXPECT_EQ(add(10, TallyCount::cut, day), "");
    EXPECT_EQ(counted(), 11);
    EXPECT_EQ(season.rounds.size(), before.rounds.size() + 1);
    EXPECT_EQ(season.roundBookings.size(), before.roundBookings.size() + 1);
    EXPECT_EQ(season.tallies.size(), before.tallies.size() + 1);
}

TEST_F(TallyEdits, CountsAsTheyAreTyped) {
    struct Case {
        const char* typed;
        std::optional<std::int64_t> count; ///< from 20 on
        const char* says;
    };

    const Case cases[] = {{"64", 64, ""},
                          {"12+10+8", 30, ""},
                          {" 12 + 10 + 8 ", 30, ""},
                          {"1,240", 1240, ""},
                          {"+12", 32, ""},
                          {"+12+10", 42, ""},
                          {"-3", 17, ""},
                          {"−3", 17, ""},
                          {"0", 0, ""},
                          {"", {}, ""},
                          {"-21", 20, "never goes below nought"},
                          {"12+", 20, "middle of a sum"},
                          {"+", 20, "middle of a sum"},
                          {"lots", 20, "no count of stems"},
                          {"2.5", 20, "no count of stems"},
                          {"12+-3", 20, "no count of stems"},
                          {"99999999", 20, "A digit too many?"},
                          {"9999999999999999999999", 20, "no count of stems"}};
    for (const auto& c : cases) {
        SCOPED_TRACE(c.typed);
        season = demoSeason();
        ASSERT_EQ(type("20"), "");
        const std::string says = type(c.typed);
        EXPECT_EQ(counted(), c.count);
        EXPECT_EQ(says.empty(), *c.says == '\0') << says;
        EXPECT_THAT(says, HasSubstr(c.says));
    }
}

TEST_F(TallyEdits, ABlankStaysBlankAndNeverGoesBelowNought) {
    EXPECT_THAT(add(-1), HasSubstr("Nothing is counted yet"));
    EXPECT_EQ(counted(), std::nullopt);
    EXPECT_TRUE(edits::setStems(season, cutting(), patch(), TallyCount::cut, std::nullopt).edit.empty());
    EXPECT_EQ(type("0"), "");
    EXPECT_EQ(counted(), 0) << "a nought is a count";
    EXPECT_NE(add(-1), "");
    EXPECT_EQ(type(""), "");
    EXPECT_EQ(counted(), std::nullopt);
    EXPECT_TRUE(edits::setStems(season, cutting(), patch(), TallyCount::cut, Stems(-4)).edit.empty());
}

TEST_F(TallyEdits, ThrownAwayStandsApartAndIsNeverMoreThanCut) {
    EXPECT_EQ(type("20"), "");
    EXPECT_EQ(add(3, TallyCount::thrownAway), "");
    EXPECT_EQ(counted(), 20);
    EXPECT_EQ(counted(TallyCount::thrownAway), 3);
    EXPECT_THAT(type("21", TallyCount::thrownAway), HasSubstr("20 were cut that day"));
    EXPECT_THAT(type("2"), HasSubstr("3 of these were thrown away"));
    const auto row = rowOf(patch());
    EXPECT_EQ(row.net(), 17);
    EXPECT_EQ(row.thrownWords.toStdString(), "3 thrown away");
    EXPECT_EQ(type("", TallyCount::thrownAway), "");
    EXPECT_EQ(counted(TallyCount::thrownAway), std::nullopt);
}

TEST_F(TallyEdits, TwoDaysAddUpAndEachIsChangedOnItsOwn) {
    EXPECT_EQ(type("8", TallyCount::cut, cutDay - 1), "");
    EXPECT_EQ(type("49"), "");
    EXPECT_EQ(counted(), 49) << "the whole cutting is what is typed";
    EXPECT_EQ(edits::tallied(season, supper, patch(), cutDay).onDay, 41);
    EXPECT_THAT(type("5"), HasSubstr("noted on other days"));
    EXPECT_THAT(rowOf(patch()).remark.toStdString(), HasSubstr("8 of them on other days"));
}

TEST_F(TallyEdits, AClosedBookingAndAPatchThatIsGoneAreSaid) {
    auto booking = *season.bookings.find(supper);
    for (const auto standing :
         {model::Standing::delivered, model::Standing::settled, model::Standing::lost}) {
        booking.standing = standing;
        season = model::apply(season, model::Edit("t").put(booking))->season;
        EXPECT_THAT(add(1), HasSubstr("its tally is closed"));
        EXPECT_EQ(counted(), std::nullopt);
    }
    season = demoSeason();
    EXPECT_THAT(take(edits::addStems(season, cutting(), Id<model::Patch>(9999), TallyCount::cut, 1)),
                HasSubstr("no longer in the season"));
}

// Of the 72 zinnias of 24 jars the garden's other plants of the slot fill some; what the patch is asked for
// stands in its row, and the words are reckoned from that by hand.
TEST_F(TallyEdits, TheRunningTotalStandsAgainstTheNeedInWords) {
    const auto need = rowOf(patch()).need;
    ASSERT_GT(need, 8);
    ASSERT_LE(need, 72);
    const auto check = [&](std::int64_t typed, const std::string& against, bool asks) {
        SCOPED_TRACE(typed);
        ASSERT_EQ(type(std::to_string(typed).c_str()), "");
        EXPECT_EQ(rowOf(patch()).against.toStdString(), "of " + std::to_string(need) + ", " + against);
        EXPECT_EQ(rowOf(patch()).asks, asks);
    };
    EXPECT_EQ(rowOf(patch()).against.toStdString(), "of " + std::to_string(need) + ", not counted");
    EXPECT_FALSE(rowOf(patch()).asks);
    check(need, "all there", false);
    check(need + 3, "3 spare", false);
    check(0, std::to_string(need) + " short", true);
    check(need - 8, "8 short", true);
    EXPECT_THAT(plainWords(tallyAnswer(season, rows())).toStdString(), HasSubstr("Short by 8 zinnias."));
}

TEST_F(TallyEdits, GoalsAreWhatTheCoverPromisesAndWhatIsShort) {
    const auto& cover = planOfDemo().cover->bookings.at(supper);
    std::int64_t needed = 0;
    std::int64_t stored = 0;
    for (const auto& slot : cover.slots) {
        needed += slot.needed.value;
        for (const auto& piece : slot.at[plan::indexOf(plan::Level::likely)].pieces)
            if (piece.source != cover::Source::patch) stored += piece.stems.value;
    }
    std::int64_t need = 0;
    std::int64_t spare = 0;
    for (const auto& goal : cuttingGoals(season, planOfDemo(), supper)) {
        need += goal.need;
        spare += goal.spare;
        EXPECT_GE(goal.need, 0);
        EXPECT_GE(goal.spare, 0);
    }
    // And what fills the last bunch of each plant that is cut.
    std::set<Id<model::Plant>> cut;
    for (const auto& goal : cuttingGoals(season, planOfDemo(), supper))
        cut.insert(goal.plant);
    std::int64_t filling = 0;
    for (const auto& n : planOfDemo().bookings.at(supper)->needs)
        if (cut.contains(n.plant)) filling += (n.need.total - n.need.need - n.need.spare).value;
    EXPECT_GT(filling, 0);
    EXPECT_EQ(need + spare + stored, needed + filling);
    EXPECT_GT(spare, 0);
    int place = 0; // in walking order
    for (const auto& row : rows()) {
        EXPECT_GE(row.mark.toInt(), place);
        place = row.mark.toInt();
    }
    EXPECT_GT(rows().size(), 4U);
}

TEST_F(TallyEdits, MoreThanThePatchGivesIsKeptAndSaid) {
    const auto expected = season.patches.find(patch())->expectedStems;
    ASSERT_TRUE(expected);
    ASSERT_EQ(type(std::to_string(expected->value + 1).c_str()), "");
    EXPECT_THAT(rowOf(patch()).remark.toStdString(), HasSubstr("A digit too many?"));
    ASSERT_EQ(type(std::to_string(expected->value).c_str()), "");
    EXPECT_EQ(rowOf(patch()).remark.toStdString(), "");
}

TEST_F(TallyEdits, APlantNobodyPlannedOnJoinsBlankAndIsOfferedToSlots) {
    const auto choices = foundChoices(season, planOfDemo(), supper, rows(), cutDay);
    ASSERT_FALSE(choices.empty());
    EXPECT_TRUE(choices.front().inFlower) << "what is in flower comes first";
    bool offered = false;
    for (const auto& choice : choices) {
        if (!choice.patch) continue;
        const auto before = season;
        ASSERT_EQ(take(edits::addFound(season, cutting(), *choice.patch)), "");
        const auto row = rowOf(*choice.patch);
        EXPECT_FALSE(row.planned);
        EXPECT_EQ(row.cut, std::nullopt) << "found is not counted";
        EXPECT_FALSE(row.remark.isEmpty());
        EXPECT_NE(take(edits::addFound(season, cutting(), *choice.patch)), "") << "twice";
        if (!row.offers.empty()) {
            offered = true;
            const auto slot = row.offers.front().slot;
            ASSERT_EQ(take(edits::letStandIn(season, supper, slot, row.plant)), "");
            EXPECT_THAT(rowOf(*choice.patch).remark.toStdString(), HasSubstr("May fill"));
            EXPECT_NE(take(edits::letStandIn(season, supper, slot, row.plant)), "") << "agreed already";
            season = model::apply(season, undo)->season;
        }
        season = before;
    }
    EXPECT_TRUE(offered);
}

TEST_F(TallyEdits, APlantWithoutAPatchGetsOneAtTheEndOfTheWalk) {
    auto choices = foundChoices(season, planOfDemo(), supper, rows(), cutDay);
    const auto wild = std::find_if(choices.begin(), choices.end(), [](const auto& c) { return !c.patch; });
    if (wild == choices.end()) { // every plant of the demo has a patch: one more that has none
        season =
            model::apply(season, model::Edit("t").put(model::sample::plant(900, "Old man's beard")))->season;
        choices = foundChoices(season, planOfDemo(), supper, rows(), cutDay);
    }
    ASSERT_FALSE(choices.back().patch);
    const auto patches = season.patches.size();
    ASSERT_EQ(take(edits::addFoundPlant(season, cutting(), choices.back().plant)), "");
    EXPECT_EQ(season.patches.size(), patches + 1);
    EXPECT_FALSE(rows().back().planned);
    EXPECT_EQ(rows().back().plant, choices.back().plant);
    EXPECT_EQ(model::apply(season, undo)->season.patches.size(), patches);
}

TEST_F(TallyEdits, TheDayIsTodayWhileThereIsCuttingAndTheMainDayElse) {
    const auto main = cuttingDay(season, planOfDemo(), supper, model::sample::day(2027, 9, 1));
    EXPECT_LE(main, model::sample::day(2027, 9, 11));
    EXPECT_GE(main, model::sample::day(2027, 9, 6));
    EXPECT_EQ(cuttingDay(season, planOfDemo(), supper, model::sample::day(2027, 9, 11)),
              model::sample::day(2027, 9, 11));
    EXPECT_EQ(cuttingDay(season, planOfDemo(), supper, std::nullopt), main);
    EXPECT_TRUE(tallyRows(season, planOfDemo(), Id<model::Booking>(9999), cutDay).empty());
    EXPECT_TRUE(cuttingGoals(emptySeason(2027), plan::Plan(), supper).empty());
}

/// The run-up cuts for two bookings on one outing: the round of the first count serves both, each sees what
/// came in, and a count is only half the first one's when the goal says so.
TEST_F(TallyEdits, AnOutingForTwoBookingsIsOneRoundForBoth) {
    const auto other = otherBookingOf(season);
    plan::Plan plan = planOfDemo();
    auto runUp = std::make_shared<plan::RunUpPlan>();
    plan::RunUpRound outing;
    outing.from = {cutDay, 6 * 60};
    outing.to = {cutDay, 8 * 60};
    outing.bookings = {supper, other};
    runUp->rounds = {outing};
    plan.runUp = runUp;
    const auto first = edits::cuttingOn(season, plan, supper, cutDay);
    EXPECT_EQ(first.others, std::vector{other});
    ASSERT_EQ(take(edits::addStems(season, first, patch(), TallyCount::cut, 12)), "");
    const auto* round = edits::roundOn(season, supper, cutDay);
    ASSERT_NE(round, nullptr);
    EXPECT_EQ(edits::roundOn(season, other, cutDay), round);
    EXPECT_EQ(edits::tallied(season, other, patch(), cutDay).all, 12);
    // The other goes on with the same count, not with one of its own.
    const auto second = edits::cuttingOn(season, plan, other, cutDay);
    ASSERT_EQ(take(edits::addStems(season, second, patch(), TallyCount::cut, 3)), "");
    EXPECT_EQ(edits::tallied(season, supper, patch(), cutDay).all, 15);
    EXPECT_EQ(season.rounds.size(), demoSeason().rounds.size() + 1);
}

/// Counts that were made for one booking alone stay its own, whatever the run-up lays together later.
TEST_F(TallyEdits, ABookingWithItsOwnRoundKeepsIt) {
    const auto other = otherBookingOf(season);
    edits::Cutting alone{supper, {cutDay, 6 * 60}, {cutDay, 8 * 60}, {}};
    ASSERT_EQ(take(edits::addStems(season, alone, patch(), TallyCount::cut, 12)), "");
    plan::Plan plan = planOfDemo();
    auto runUp = std::make_shared<plan::RunUpPlan>();
    plan::RunUpRound outing;
    outing.from = {cutDay, 6 * 60};
    outing.to = {cutDay, 8 * 60};
    outing.bookings = {supper, other};
    runUp->rounds = {outing};
    plan.runUp = runUp;
    const auto theirs = edits::cuttingOn(season, plan, other, cutDay);
    EXPECT_TRUE(theirs.others.empty());
    ASSERT_EQ(take(edits::addStems(season, theirs, patch(), TallyCount::cut, 3)), "");
    EXPECT_EQ(edits::tallied(season, supper, patch(), cutDay).all, 12);
    EXPECT_EQ(edits::tallied(season, other, patch(), cutDay).all, 3);
}

/// On a shared round a patch is to bring what both want; how much is for the other is said.
TEST_F(TallyEdits, ASharedRoundsGoalIsThatOfBoth) {
    const auto other = otherBookingOf(season);
    const auto theirs = cuttingGoals(season, planOfDemo(), other);
    ASSERT_FALSE(theirs.empty());
    const auto& goal = theirs.front();
    std::int64_t own = 0, their = 0;
    for (const auto& g : cuttingGoals(season, planOfDemo(), supper))
        own += g.patch == goal.patch && g.day <= cutDay ? g.need : 0;
    for (const auto& g : theirs)
        their += g.patch == goal.patch && g.day == goal.day ? g.need : 0;
    ASSERT_GT(their, 0);
    edits::Cutting outing{supper, {goal.day, 6 * 60}, {goal.day, 8 * 60}, {other}};
    ASSERT_EQ(take(edits::addStems(season, outing, goal.patch, TallyCount::cut, 1)), "");
    const auto row = rowOf(goal.patch);
    EXPECT_EQ(row.need, own + their);
    EXPECT_TRUE(row.planned);
    EXPECT_THAT(row.remark.toStdString(), testing::HasSubstr(season.bookings.find(other)->title));
}

} // namespace withy::ui
