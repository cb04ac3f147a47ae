// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shareout/tally.h"

#include <gtest/gtest.h>

namespace withy::shareout::tests {

namespace {

TallyLine note(std::int64_t patch, std::int64_t plant, std::optional<std::int64_t> cut,
               std::optional<std::int64_t> thrown = {}, std::optional<std::int64_t> most = {}) {
    TallyLine line;
    line.patch = Id<model::Patch>(patch);
    line.plant = Id<model::Plant>(plant);
    if (cut) line.cut = Stems(*cut);
    if (thrown) line.thrownAway = Stems(*thrown);
    if (most) line.mostExpected = Stems(*most);
    return line;
}

} // namespace

/// By hand: two cutters in patch 1 (30 + 24 - 3 thrown away), patch 2 (13), patch 3 blank.
TEST(Tally, CuttersAndPatchesAddUp) {
    const auto sum = sumTally({note(1, 7, 30), note(2, 7, 13), note(1, 7, 24, 3), note(3, 8, {})});
    ASSERT_TRUE(sum.ok());
    ASSERT_EQ(sum->counted.size(), 2U);
    EXPECT_EQ(sum->counted[0].stems, std::optional(Stems(64)));
    EXPECT_EQ(sum->counted[1].stems, std::nullopt);
    EXPECT_TRUE(sum->notes.empty());
}

TEST(Tally, NotesWhatIsOdd) {
    const auto sum = sumTally({note(1, 7, 90, 0, 80), note(2, 7, {}), note(3, 8, {}, 5)});
    ASSERT_TRUE(sum.ok());
    ASSERT_EQ(sum->notes.size(), 3U);
    EXPECT_EQ(sum->notes[0].finding, TallyFinding::abovePatch);
    EXPECT_EQ(sum->notes[0].cut, Stems(90));
    EXPECT_EQ(sum->notes[0].most, Stems(80));
    EXPECT_EQ(sum->notes[1].finding, TallyFinding::thrownWithoutTally);
    EXPECT_EQ(sum->notes[2].finding, TallyFinding::patchNotCounted);
    EXPECT_EQ(sum->notes[2].patch, Id<model::Patch>(2));
    EXPECT_EQ(sum->counted[0].stems, std::optional(Stems(90)));
    EXPECT_EQ(sum->counted[1].stems, std::nullopt);
}

struct TallyRow {
    const char* name;
    std::vector<TallyLine> lines;
    TallyTrouble trouble;
    std::int64_t value;
};

TEST(Tally, BadFiguresAreFaults) {
    const TallyRow rows[] = {
        {"negative cut", {note(1, 7, -1)}, TallyTrouble::negative, -1},
        {"negative thrown away", {note(1, 7, 5, -2)}, TallyTrouble::negative, -2},
        {"beyond reason", {note(1, 7, mostCounted + 1)}, TallyTrouble::tooLarge, mostCounted + 1},
        {"beyond reason together",
         {note(1, 7, mostCounted), note(2, 7, 1)},
         TallyTrouble::tooLarge,
         mostCounted + 1},
        {"more thrown away than cut", {note(1, 7, 5), note(1, 7, {}, 6)}, TallyTrouble::moreThrownAway, 6},
    };
    for (const auto& row : rows) {
        SCOPED_TRACE(row.name);
        const auto sum = sumTally(row.lines);
        ASSERT_FALSE(sum.ok());
        EXPECT_EQ(sum.error().trouble, row.trouble);
        EXPECT_EQ(sum.error().value, row.value);
    }
}

} // namespace withy::shareout::tests
