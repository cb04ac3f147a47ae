// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packing/load_floor.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>
#include <set>

namespace withy::packing {
namespace {

LoadItem item(std::int64_t length, std::int64_t width, std::int64_t drop = 1, std::int64_t grams = 5000) {
    LoadItem i;
    i.length = Millimetres(length);
    i.width = Millimetres(width);
    i.mass = Grams(grams);
    i.drop = drop;
    return i;
}

bool overlap(std::int64_t a, std::int64_t aSize, std::int64_t b, std::int64_t bSize) {
    return a < b + bSize && b < a + aSize;
}

/// On the floor, none over another, each item once, and none of an earlier drop behind one of a later.
void expectSound(const LoadFloor& floor, const std::vector<LoadItem>& items, const LoadPlan& plan) {
    std::set<std::size_t> seen(plan.notLoaded.begin(), plan.notLoaded.end());
    Grams mass;
    for (std::size_t i = 0; i < plan.loaded.size(); ++i) {
        const auto& a = plan.loaded[i];
        EXPECT_TRUE(seen.insert(a.item).second);
        const auto& asked = items[a.item];
        EXPECT_EQ(a.length, a.turned ? asked.width : asked.length);
        EXPECT_EQ(a.width, a.turned ? asked.length : asked.width);
        EXPECT_TRUE(asked.mayTurn || !a.turned);
        EXPECT_GE(std::min(a.x, a.y).value, 0);
        EXPECT_LE(a.x + a.length, floor.length);
        EXPECT_LE(a.y + a.width, floor.width);
        mass += asked.mass.value_or(Grams{});
        for (std::size_t j = 0; j < i; ++j) {
            const auto& b = plan.loaded[j];
            const bool beside = overlap(a.y.value, a.width.value, b.y.value, b.width.value);
            EXPECT_FALSE(beside && overlap(a.x.value, a.length.value, b.x.value, b.length.value));
            const auto& [early, late] = asked.drop < items[b.item].drop ? std::pair(a, b) : std::pair(b, a);
            if (beside && items[early.item].drop < items[late.item].drop) {
                EXPECT_GT(early.x, late.x);
            }
        }
    }
    EXPECT_EQ(seen.size(), items.size());
    EXPECT_EQ(plan.mass, mass);
}

/// Whether all items can stand on a small floor: every place and turn tried.
bool allFit(std::int64_t length, std::int64_t width, const std::vector<LoadItem>& items, std::size_t next,
            std::vector<LoadedItem>& placed) {
    if (next == items.size()) return true;
    for (const bool turned : {false, true}) {
        const auto l = (turned ? items[next].width : items[next].length).value;
        const auto w = (turned ? items[next].length : items[next].width).value;
        for (std::int64_t x = 0; x + l <= length; ++x) {
            for (std::int64_t y = 0; y + w <= width; ++y) {
                const bool free = std::none_of(placed.begin(), placed.end(), [&](const LoadedItem& p) {
                    return overlap(x, l, p.x.value, p.length.value) &&
                           overlap(y, w, p.y.value, p.width.value);
                });
                if (!free) continue;
                placed.push_back(
                    {next, Millimetres(x), Millimetres(y), Millimetres(l), Millimetres(w), turned});
                if (allFit(length, width, items, next + 1, placed)) return true;
                placed.pop_back();
            }
        }
    }
    return false;
}

} // namespace

TEST(LoadFloor, LoadsTheLastDropFirst) {
    const LoadFloor floor{Millimetres(1600), Millimetres(1200), Grams(400'000)};
    std::vector<LoadItem> items;
    for (std::int64_t n = 0; n < 8; ++n)
        items.push_back(item(600, 400, 1 + n % 3, 5700));
    const auto plan = loadVehicle(floor, items);
    ASSERT_TRUE(plan.ok());
    expectSound(floor, items, *plan);
    EXPECT_EQ(plan->loaded.size(), 8U); // exactly the floor's area
    EXPECT_EQ(items[plan->loaded.front().item].drop, 3);
    EXPECT_EQ(plan->mass.value, 8 * 5700);
    EXPECT_EQ(plan->overPlate, Grams(0));
}

TEST(LoadFloor, SaysWhatIsTooMuch) {
    const LoadFloor floor{Millimetres(1000), Millimetres(800), Grams(9'000)};
    std::vector<LoadItem> items = {item(500, 800, 1, 6000), item(500, 800, 2, 6000), item(400, 300),
                                   item(2000, 10)};
    items[2].mass.reset();
    const auto plan = loadVehicle(floor, items);
    ASSERT_TRUE(plan.ok());
    expectSound(floor, items, *plan);
    EXPECT_EQ(plan->loaded.size(), 2U);
    EXPECT_EQ(plan->overPlate, Grams(3000));
    EXPECT_EQ(loadVehicle({Millimetres(9), Millimetres(9), {}}, items)->notLoaded.size(), items.size());
    EXPECT_FALSE(loadVehicle({Millimetres(9), Millimetres(9), {}}, items)->overPlate.has_value());
    items = {item(100, 100)};
    items[0].mass.reset();
    EXPECT_EQ(loadVehicle(floor, items)->massNotKnown, 1);
}

TEST(LoadFloor, IsSoundOnRandomLoads) {
    std::mt19937 random(3);
    for (int row = 0; row < 100; ++row) {
        SCOPED_TRACE("row " + std::to_string(row));
        const LoadFloor floor{Millimetres(1200 + random() % 1500), Millimetres(1000 + random() % 800), {}};
        std::vector<LoadItem> items;
        for (std::size_t n = 1 + random() % 20; n > 0; --n) {
            items.push_back(item(200 + random() % 500, 200 + random() % 400, 1 + random() % 4));
            items.back().mayTurn = random() % 4 != 0;
        }
        expectSound(floor, items, *loadVehicle(floor, items));
    }
}

/// Four or five small rectangles on a small floor, every place tried: where all can stand, all are loaded in
/// at least nineteen of twenty; where they cannot, never.
TEST(LoadFloor, LoadsAlmostAllThatBruteForceLoads) {
    std::mt19937 random(11);
    int possible = 0, found = 0, impossible = 0;
    for (int row = 0; row < 150; ++row) {
        const LoadFloor floor{Millimetres(6 + random() % 3), Millimetres(5 + random() % 3), {}};
        std::vector<LoadItem> items;
        for (std::size_t n = 4 + random() % 2; n > 0; --n)
            items.push_back(item(2 + random() % 4, 2 + random() % 3));
        const auto plan = loadVehicle(floor, items);
        ASSERT_TRUE(plan.ok());
        expectSound(floor, items, *plan);
        std::vector<LoadedItem> placed;
        const bool can = allFit(floor.length.value, floor.width.value, items, 0, placed);
        possible += can;
        impossible += !can;
        found += can && plan->notLoaded.empty();
        EXPECT_TRUE(can || !plan->notLoaded.empty());
    }
    EXPECT_GT(possible, 30);
    EXPECT_GT(impossible, 20);
    EXPECT_GE(20 * found, 19 * possible) << found << " of " << possible;
}

TEST(LoadFloor, NamesBadInput) {
    const LoadFloor floor{Millimetres(1000), Millimetres(800), {}};
    EXPECT_EQ(loadVehicle({Millimetres(0), Millimetres(1), {}}, {}).error().field, "floor_length");
    EXPECT_EQ(loadVehicle({Millimetres(1), Millimetres(-1), {}}, {}).error().field, "floor_width");
    EXPECT_EQ(loadVehicle({Millimetres(1), Millimetres(1), Grams(0)}, {}).error().field, "plate_load");
    EXPECT_EQ(loadVehicle(floor, {item(0, 1)}).error().field, "item_length");
    EXPECT_EQ(loadVehicle(floor, {item(1, 0)}).error().field, "item_width");
    EXPECT_EQ(loadVehicle(floor, {item(1, 1, 0)}).error().field, "drop");
    EXPECT_EQ(loadVehicle(floor, {item(1, 1, 1, -1)}).error().field, "item_mass");
}

} // namespace withy::packing
