// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/shareout/share_checks.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <functional>

namespace withy::shareout::tests {

namespace {

/// Four jars of 2 + 1: enough of both.
ShareProblem fourJars() {
    return {{counted(1, 8), counted(2, 4)}, {lineOf(1, 4, {slotOf(11, 2, {1}), slotOf(12, 1, {2})})}};
}

const ShareNote* noteOf(const ShareOut& share, ShareFinding finding) {
    const auto at = std::find_if(share.notes.begin(), share.notes.end(),
                                 [&](const auto& n) { return n.finding == finding; });
    return at == share.notes.end() ? nullptr : &*at;
}

struct FaultRow {
    const char* name;
    std::function<void(ShareProblem&)> spoil;
    ShareTrouble trouble;
    const char* field;
    std::int64_t id;
};

const FaultRow faultRows[] = {
    {"negative tally", [](auto& p) { p.counted[0].stems = Stems(-1); }, ShareTrouble::negative, "counted", 1},
    {"tally beyond reason", [](auto& p) { p.counted[1].stems = Stems(mostCounted + 1); },
     ShareTrouble::tooLarge, "counted", 2},
    {"a plant twice", [](auto& p) { p.counted.push_back(counted(1, 3)); }, ShareTrouble::repeated, "counted",
     1},
    {"negative pieces", [](auto& p) { p.lines[0].pieces = Pieces(-4); }, ShareTrouble::negative, "pieces", 1},
    {"pieces beyond reason", [](auto& p) { p.lines[0].pieces = Pieces(mostPiecesShared + 1); },
     ShareTrouble::tooLarge, "pieces", 1},
    {"a line twice", [](auto& p) { p.lines.push_back(p.lines[0]); }, ShareTrouble::repeated, "line", 1},
    {"a slot twice", [](auto& p) { p.lines[0].slots.push_back(p.lines[0].slots[0]); }, ShareTrouble::repeated,
     "slot", 11},
    {"negative count", [](auto& p) { p.lines[0].slots[0].count = Stems(-1); }, ShareTrouble::negative,
     "count", 11},
    {"a choice twice", [](auto& p) { p.lines[0].slots[0].choices.push_back({plant(1)}); },
     ShareTrouble::repeated, "choice", 1},
    {"total no mix reaches", [](auto& p) { p.lines[0].total = Stems(4); }, ShareTrouble::totalOutOfReach,
     "total", 1},
    {"total below any mix", [](auto& p) { p.lines[0].total = Stems(2); }, ShareTrouble::totalOutOfReach,
     "total", 1},
    {"no tally at all",
     [](auto& p) {
         p.counted = {{plant(1), {}}, {plant(2), {}}};
     },
     ShareTrouble::noTally, "counted", 0},
    {"only another plant's tally", [](auto& p) { p.counted = {counted(9, 50)}; }, ShareTrouble::noTally,
     "counted", 0},
};

} // namespace

TEST(ShareOutBadInput, IsAFaultAndNothingIsSharedOut) {
    ASSERT_TRUE(shareOut(fourJars()).ok());
    for (const auto& row : faultRows) {
        SCOPED_TRACE(row.name);
        auto problem = fourJars();
        row.spoil(problem);
        const auto share = shareOut(problem);
        ASSERT_FALSE(share.ok());
        EXPECT_EQ(share.error().trouble, row.trouble);
        EXPECT_EQ(share.error().field, row.field);
        EXPECT_EQ(share.error().id, row.id);
    }
}

TEST(ShareOutBadInput, ATotalOutOfReachSaysWhatIsInReach) {
    auto problem = fourJars();
    problem.lines[0].slots[1].mayVaryBy = Stems(1);
    problem.lines[0].total = Stems(5);
    const auto share = shareOut(problem);
    ASSERT_FALSE(share.ok());
    EXPECT_EQ(share.error().value, 5);
    EXPECT_EQ(share.error().least, 2); // 2 + 0
    EXPECT_EQ(share.error().most, 4);  // 2 + 2
}

TEST(ShareOutBadInput, APlantInNoSlotIsNamedAndLeft) {
    auto problem = fourJars();
    problem.counted.push_back(counted(9, 7));
    const auto share = shareOut(problem);
    ASSERT_TRUE(share.ok());
    const auto* note = noteOf(*share, ShareFinding::plantInNoSlot);
    ASSERT_TRUE(note);
    EXPECT_EQ(note->plant, plant(9));
    EXPECT_EQ(note->number, 7);
    EXPECT_EQ(share->plants[2].left, Stems(7));
}

/// A blank is not nought: the plant is named, and a nought is not.
TEST(ShareOutBadInput, ABlankIsNotANought) {
    auto problem = fourJars();
    problem.counted[1].stems.reset();
    const auto blank = shareOut(problem);
    ASSERT_TRUE(blank.ok());
    const auto* note = noteOf(*blank, ShareFinding::plantNotCounted);
    ASSERT_TRUE(note);
    EXPECT_EQ(note->plant, plant(2));
    EXPECT_EQ(blank->plants.size(), 1U);
    problem.counted[1].stems = Stems(0);
    const auto nought = shareOut(problem);
    ASSERT_TRUE(nought.ok());
    EXPECT_FALSE(noteOf(*nought, ShareFinding::plantNotCounted));
    EXPECT_EQ(nought->plants.size(), 2U);
    EXPECT_EQ(nought->missing(), Stems(4));
}

TEST(ShareOutBadInput, OneStemForFortyPieces) {
    const ShareProblem problem{{counted(1, 1)}, {lineOf(1, 40, {slotOf(11, 3, {1})})}};
    const auto share = shareOut(problem);
    ASSERT_TRUE(share.ok());
    EXPECT_EQ(groupsAsText(share->lines.front(), {1}), (std::vector<std::string>{"39 x 0", "1 x 1"}));
    EXPECT_EQ(share->missing(), Stems(119));
    const auto* note = noteOf(*share, ShareFinding::piecesEmpty);
    ASSERT_TRUE(note);
    EXPECT_EQ(note->number, 39);
    EXPECT_EQ(wrongWith(problem, *share), std::vector<std::string>{});
}

TEST(ShareOutBadInput, EmptyLinesAndSlotsAreNamed) {
    auto problem = fourJars();
    problem.lines.push_back(lineOf(2, 3, {}));
    problem.lines.push_back(lineOf(3, 3, {slotOf(31, 2, {})}));
    problem.lines.push_back(lineOf(4, 0, {slotOf(41, 2, {1})}));
    const auto share = shareOut(problem);
    ASSERT_TRUE(share.ok());
    ASSERT_TRUE(noteOf(*share, ShareFinding::lineWithoutSlots));
    EXPECT_EQ(noteOf(*share, ShareFinding::lineWithoutSlots)->line, line(2));
    ASSERT_TRUE(noteOf(*share, ShareFinding::slotWithoutPlant));
    EXPECT_EQ(noteOf(*share, ShareFinding::slotWithoutPlant)->slot, slot(31));
    EXPECT_EQ(wrongWith(problem, *share), std::vector<std::string>{});
}

/// Bouquets come first: with 12 of 20, the bouquet has its 8 and the jars 4; unless the grower says
/// otherwise.
TEST(ShareOutBadInput, HandHeldPiecesAreServedFirst) {
    ShareProblem problem{{counted(1, 12)},
                         {lineOf(1, 4, {slotOf(11, 3, {1})}), lineOf(2, 1, {slotOf(21, 8, {1})})}};
    problem.lines[1].inHand = true;
    const auto first = shareOut(problem);
    ASSERT_TRUE(first.ok());
    EXPECT_EQ(first->lines[0].missing, Stems(8));
    EXPECT_EQ(first->lines[1].missing, Stems(0));
    problem.lines[1].turn = 2;
    const auto last = shareOut(problem);
    ASSERT_TRUE(last.ok());
    EXPECT_EQ(last->lines[0].missing, Stems(0));
    EXPECT_EQ(last->lines[1].missing, Stems(8));
}

} // namespace withy::shareout::tests
