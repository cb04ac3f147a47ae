// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/model/sample.h"

#include <gmock/gmock.h>

#include <limits>

namespace withy::model {

using namespace sample;

namespace {

Season with(const Season& s, const Edit& e) {
    return apply(s, e).value().season;
}

} // namespace

TEST(Edit, PutsAndItsInverseTakesBack) {
    const auto before = season();
    const auto applied = apply(before, Edit("plant.add", {"Zinnia"}).put(plant(1, "Zinnia"))).value();
    ASSERT_NE(applied.season.plants.find(Id<Plant>(1)), nullptr);
    EXPECT_EQ(applied.inverse.name().key, "plant.add");
    const auto back = apply(applied.season, applied.inverse).value();
    EXPECT_TRUE(back.season.plants.empty());
    const auto again = apply(back.season, back.inverse).value();
    EXPECT_EQ(again.season.plants.find(Id<Plant>(1))->name, "Zinnia");
}

TEST(Edit, ThatChangesNothingIsEmpty) {
    const auto s = with(season(), Edit("plant.add").put(plant(1, "Zinnia")));
    const auto same = apply(s, Edit("plant.add").put(plant(1, "Zinnia")).erase(Id<Plant>(99))).value();
    EXPECT_TRUE(same.done.empty());
    EXPECT_TRUE(same.inverse.empty());
    EXPECT_TRUE(same.season.plants.sameRowsAs(s.plants));
}

TEST(Edit, IdsHaveAnEnd) {
    const auto s = with(season(), Edit("x").put(plant(7, "Zinnia")).put(plant(mostId, "Dahlia")));
    EXPECT_EQ(s.plants.nextId().value, 8) << "the widest gap begins after 7";
    const auto full = with(s, Edit("x").put(plant(mostId - 5, "Aster")).put(plant(mostId / 2, "Phlox")));
    const auto next = full.plants.nextId().value;
    EXPECT_EQ(full.plants.find(Id<Plant>(next)), nullptr);
    EXPECT_EQ(full.plants.find(Id<Plant>(next + 1'000'000)), nullptr);
    EXPECT_TRUE(apply(full, Edit("x").put(plant(next, "Stock"))).ok());
    for (const std::int64_t id : {mostId + 1, std::numeric_limits<std::int64_t>::max(), std::int64_t{0}}) {
        const auto refused = apply(s, Edit("x").put(plant(id, "Stock")));
        ASSERT_FALSE(refused.ok()) << id;
        EXPECT_EQ(refused.error().front().code, ProblemCode::badId);
        EXPECT_EQ(refused.error().front().value, std::to_string(id));
    }
}

TEST(Edit, IsAllOrNothing) {
    const auto s = season();
    const auto refused = apply(s, Edit("x").put(plant(1, "Zinnia")).put(plant(2, "")));
    ASSERT_FALSE(refused.ok());
    ASSERT_EQ(refused.error().size(), 1u);
    EXPECT_EQ(refused.error()[0].code, ProblemCode::required);
    EXPECT_EQ(refused.error()[0].table, "plant");
    EXPECT_EQ(refused.error()[0].record, 2);
    EXPECT_EQ(refused.error()[0].field, "name");
    EXPECT_TRUE(s.plants.empty());
}

TEST(Edit, OrderWithinAnEditDoesNotMatter) {
    Patch patch;
    patch.id = Id<Patch>(1);
    patch.plant = Id<Plant>(1);
    patch.label = "Long border";
    const auto s = with(season(), Edit("x").put(patch).put(plant(1, "Dahlia")));
    EXPECT_EQ(s.patches.size(), 1u);
}

TEST(Edit, NamesWhoStillUsesWhatIsErased) {
    Patch patch;
    patch.id = Id<Patch>(1);
    patch.plant = Id<Plant>(1);
    patch.label = "Long border";
    const auto s = with(season(), Edit("x").put(patch).put(plant(1, "Dahlia")));
    const auto refused = apply(s, Edit("plant.erase").erase(Id<Plant>(1)));
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(refused.error()[0].code, ProblemCode::inUse);
    EXPECT_EQ(refused.error()[0].value, "Dahlia");
    EXPECT_THAT(refused.error()[0].details, testing::ElementsAre("patch: Long border"));
    EXPECT_TRUE(apply(s, Edit("x").erase(Id<Plant>(1)).erase(Id<Patch>(1))).ok());
}

TEST(Edit, SeasonsShareTheRowsThatDidNotChange) {
    const auto a = with(season(), Edit("x").put(plant(1, "Dahlia")));
    const auto b = with(a, Edit("x").put(booking(1, "Supper")));
    EXPECT_TRUE(sameRows(a, b, TableKind::plants));
    EXPECT_FALSE(sameRows(a, b, TableKind::bookings));
}

TEST(Edit, NeedsSettings) {
    const auto refused = apply(Season{}, Edit("x").put(plant(1, "Dahlia")));
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(refused.error()[0].code, ProblemCode::noSettings);
}

} // namespace withy::model
