// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packing/tray_fill.h"

#include <gtest/gtest.h>

#include <cmath>
#include <map>
#include <random>

namespace withy::packing {
namespace {

TrayTask taskOf(std::int64_t length, std::int64_t width, std::int64_t padding) {
    TrayTask task;
    task.tray = {Millimetres(length), Millimetres(width), Grams(800), {}};
    task.padding = Millimetres(padding);
    return task;
}

TrayPiece jars(std::int64_t diameter, std::int64_t count, std::int64_t grams) {
    return {Millimetres(diameter), count, Grams(grams), {}};
}

/// Every piece in one tray, inside it, and the padding kept between any two.
void expectSound(const TrayTask& task, const TrayFillPlan& plan) {
    std::map<std::size_t, std::int64_t> counts;
    const auto padding = static_cast<double>(task.padding.value);
    for (const auto& tray : plan.trays) {
        Grams weight = task.tray.tare.value_or(Grams{});
        for (std::size_t i = 0; i < tray.pieces.size(); ++i) {
            const auto& [piece, at] = tray.pieces[i];
            const double d = static_cast<double>(task.pieces[piece].diameter.value);
            weight += task.pieces[piece].weight.value_or(Grams{});
            ++counts[piece];
            const double toSide = std::min({at.x, at.y, static_cast<double>(task.tray.length.value) - at.x,
                                            static_cast<double>(task.tray.width.value) - at.y});
            EXPECT_GE(toSide, (d + padding) / 2 - 1e-6);
            for (std::size_t j = 0; j < i; ++j) {
                const auto& other = tray.pieces[j];
                const double e = static_cast<double>(task.pieces[other.piece].diameter.value);
                EXPECT_GE(std::hypot(at.x - other.centre.x, at.y - other.centre.y),
                          (d + e) / 2 + padding - 1e-6);
            }
        }
        EXPECT_EQ(tray.weight, weight);
        EXPECT_EQ(tray.overLimit, task.liftingLimit && weight > *task.liftingLimit);
        EXPECT_EQ(tray.working.size() > 2, true);
    }
    for (std::size_t i = 0; i < task.pieces.size(); ++i)
        EXPECT_EQ(counts[i], task.pieces[i].count);
}

} // namespace

/// By hand: 600 x 400 with jars of 130 and 20 between them holds 9 (see CircleRows); 24 jars take 3 trays.
TEST(TrayFill, FillsTraysOfOneSize) {
    auto task = taskOf(600, 400, 20);
    task.pieces = {jars(130, 10, 700), jars(130, 14, 700)};
    const auto plan = fillTrays(task);
    ASSERT_TRUE(plan.ok());
    expectSound(task, *plan);
    ASSERT_EQ(plan->trays.size(), 3U);
    EXPECT_EQ(plan->trays[0].pieces.size(), 9U);
    EXPECT_EQ(plan->trays[0].weight.value, 800 + 9 * 700);
    EXPECT_FALSE(plan->traysMissing.has_value());
    task.tray.owned = 2;
    EXPECT_EQ(fillTrays(task)->traysMissing, 1);
}

TEST(TrayFill, KeepsToTheLiftingLimitWhenAsked) {
    auto task = taskOf(600, 400, 20);
    task.pieces = {jars(130, 18, 1000)};
    task.liftingLimit = Grams(7000);
    const auto kept = fillTrays(task); // 800 + 6 x 1000
    ASSERT_TRUE(kept.ok());
    expectSound(task, *kept);
    EXPECT_EQ(kept->trays.size(), 3U);
    EXPECT_EQ(kept->overLimit, 0);
    task.keepToLimit = false;
    const auto passed = fillTrays(task);
    expectSound(task, *passed);
    EXPECT_EQ(passed->trays.size(), 2U);
    EXPECT_EQ(passed->overLimit, 2);
    // One piece alone over the limit is carried, and said to be.
    task.keepToLimit = true;
    task.pieces = {jars(130, 2, 9000)};
    EXPECT_EQ(fillTrays(task)->overLimit, 2);
}

/// 300 random mixes: sound, and never more trays than one for each piece or fewer than area and weight ask.
TEST(TrayFill, MixesSizesSoundly) {
    std::mt19937 random(5);
    int shared = 0;
    for (int row = 0; row < 300; ++row) {
        SCOPED_TRACE("row " + std::to_string(row));
        auto task = taskOf(400 + random() % 500, 300 + random() % 300, random() % 30);
        double area = 0;
        std::int64_t pieces = 0, grams = 0;
        for (std::size_t kinds = 1 + random() % 4; kinds > 0; --kinds) {
            task.pieces.push_back(jars(60 + random() % 200, random() % 12, 300 + random() % 900));
            const auto& last = task.pieces.back();
            const double across = static_cast<double>((last.diameter + task.padding).value);
            area += static_cast<double>(last.count) * across * across * 0.785398;
            pieces += last.count;
            grams += last.count * last.weight->value;
        }
        if (row % 2 == 0) task.liftingLimit = Grams(6000);
        const auto plan = fillTrays(task);
        ASSERT_TRUE(plan.ok());
        expectSound(task, *plan);
        const auto trays = static_cast<double>(plan->trays.size());
        EXPECT_LE(trays, static_cast<double>(pieces));
        EXPECT_GE(trays * static_cast<double>((task.tray.length.value) * task.tray.width.value) * 0.9069,
                  area);
        if (task.liftingLimit) {
            EXPECT_GE(trays * (6000 - 800), static_cast<double>(grams));
        }
        for (const auto& tray : plan->trays)
            shared += tray.mixed;
    }
    EXPECT_GT(shared, 50);
}

TEST(TrayFill, NamesBadInput) {
    struct Bad {
        TrayTask task;
        const char* field;
        ProblemCode code;
    };

    auto noLength = taskOf(0, 300, 10), small = taskOf(600, 140, 20), noPadding = taskOf(600, 400, -1);
    auto noDiameter = taskOf(600, 400, 0), lessThanNone = taskOf(600, 400, 0), noLimit = taskOf(600, 400, 0);
    small.pieces = {jars(130, 1, 1)};
    noDiameter.pieces = {jars(0, 1, 1)};
    lessThanNone.pieces = {jars(10, -1, 1)};
    noLimit.liftingLimit = Grams(0);
    const Bad rows[] = {{noLength, "tray_length", ProblemCode::belowLeast},
                        {small, "piece_diameter", ProblemCode::moreThan},
                        {noPadding, "padding", ProblemCode::belowLeast},
                        {noDiameter, "piece_diameter", ProblemCode::belowLeast},
                        {lessThanNone, "pieces", ProblemCode::belowLeast},
                        {noLimit, "lifting_limit", ProblemCode::belowLeast}};
    for (const auto& row : rows) {
        SCOPED_TRACE(row.field);
        const auto plan = fillTrays(row.task);
        ASSERT_FALSE(plan.ok());
        EXPECT_EQ(plan.error().field, row.field);
        EXPECT_EQ(plan.error().code, row.code);
    }
    EXPECT_EQ(fillTrays(small).error().details, (std::vector<std::string>{"tray_width", "120"}));
}

} // namespace withy::packing
