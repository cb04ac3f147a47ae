// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packing/table_fit.h"

#include <gtest/gtest.h>

#include <cmath>

namespace withy::packing {
namespace {

TableTop trestle(std::int64_t length, std::int64_t width, std::int64_t covers, std::int64_t atEnds = 0) {
    return {TableForm::rectangular, Millimetres(length), Millimetres(width), covers, atEnds};
}

TableTop roundTable(std::int64_t diameter, std::int64_t covers) {
    return {TableForm::round, Millimetres(diameter), {}, covers, 0};
}

struct FitRow {
    const char* name;
    TableTop table;
    PiecesOnTable pieces;
    TableFit fit;
    double eachSide;
};

} // namespace

/// By hand, with settings 260 deep.
TEST(TableFit, MeasuresTheRoomOnEachSide) {
    const FitRow rows[] = {
        {"trestle, 210 in 240",
         trestle(2440, 760, 8),
         {Millimetres(210), 1, Millimetres(15)},
         TableFit::fits,
         15},
        {"the same, more wanted",
         trestle(2440, 760, 8),
         {Millimetres(210), 1, Millimetres(16)},
         TableFit::tight,
         15},
        {"narrow, 210 in 170",
         trestle(1800, 690, 8),
         {Millimetres(210), 1, Millimetres(0)},
         TableFit::tooBig,
         -20},
        {"exactly", trestle(2440, 760, 8), {Millimetres(240), 1, Millimetres(0)}, TableFit::fits, 0},
        {"one side only", trestle(2000, 500, 1), {Millimetres(200), 1, Millimetres(20)}, TableFit::fits, 20},
        {"no settings", trestle(2000, 500, 0), {Millimetres(400), 1, Millimetres(50)}, TableFit::fits, 50},
        {"ten in a row of 1920",
         trestle(2440, 760, 10, 2),
         {Millimetres(190), 10, Millimetres(5)},
         TableFit::tight,
         1},
        {"round, 1500", roundTable(1500, 8), {Millimetres(900), 1, Millimetres(40)}, TableFit::fits, 40},
        {"round, three of 300 in 980",
         roundTable(1500, 8),
         {Millimetres(300), 3, Millimetres(50)},
         TableFit::fits,
         (980 / (1 + 2 / std::sqrt(3.0)) - 300) / 2},
    };
    for (const auto& row : rows) {
        SCOPED_TRACE(row.name);
        const auto answer = fitOnTable(row.table, {}, row.pieces);
        ASSERT_TRUE(answer.ok());
        EXPECT_EQ(answer->fit, row.fit);
        EXPECT_NEAR(answer->eachSide, row.eachSide, 1e-9);
        EXPECT_EQ(answer->working.back().what, "room on each side");
        EXPECT_EQ(answer->working.back().value, answer->eachSide);
    }
}

/// The smallest circle round n equal circles, in their diameters: Wikipedia, "Circle packing in a circle"
/// (proved up to 13). Ours may ask for more, never for less; up to nine it is the same.
TEST(TableFit, AgreesWithCirclesInACircle) {
    const double published[] = {1, 2, 2.155, 2.414, 2.701, 3, 3, 3.305, 3.613, 3.814, 3.924, 4.030, 4.237};
    for (std::int64_t n = 1; n <= 13; ++n) {
        SCOPED_TRACE(std::to_string(n) + " pieces");
        const auto answer = fitOnTable(roundTable(100'000, 0), {}, {Millimetres(1), n, Millimetres(0)});
        ASSERT_TRUE(answer.ok());
        const double ratio = 100'000 / (2 * answer->eachSide + 1);
        EXPECT_GE(ratio, published[n - 1] - 6e-4);
        if (n <= 9) {
            EXPECT_NEAR(ratio, published[n - 1], 6e-4);
        }
    }
}

/// Regular polygons: six chords of a radius each go round a circle (Euclid, Elements IV 15), four of a
/// radius x sqrt 2 (IV 6).
TEST(TableFit, CountsTheCoversAnEdgeHasRoomFor) {
    EXPECT_EQ(freeMiddle(roundTable(1200, 6), {Millimetres(600), Millimetres(260)})->mostCovers, 6);
    EXPECT_EQ(freeMiddle(roundTable(1200, 6), {Millimetres(601), Millimetres(260)})->mostCovers, 5);
    EXPECT_EQ(freeMiddle(roundTable(1000, 4), {Millimetres(707), Millimetres(260)})->mostCovers, 4);
    EXPECT_EQ(freeMiddle(roundTable(1000, 4), {Millimetres(708), Millimetres(260)})->mostCovers, 3);
    EXPECT_TRUE(freeMiddle(roundTable(1200, 7), {})->tooManyCovers);
    EXPECT_FALSE(freeMiddle(roundTable(1200, 6), {})->tooManyCovers);
    EXPECT_EQ(freeMiddle(trestle(2440, 760, 8), {})->mostCovers, 8);
    EXPECT_TRUE(freeMiddle(trestle(2440, 760, 9), {})->tooManyCovers);
    EXPECT_FALSE(freeMiddle(trestle(2440, 760, 10, 2), {})->tooManyCovers);
    EXPECT_TRUE(freeMiddle(trestle(2440, 500, 10, 2), {})->tooManyCovers);
}

TEST(TableFit, FindsTheLargestThatFits) {
    const std::vector<Millimetres> jars = {Millimetres(170), Millimetres(215), Millimetres(205),
                                           Millimetres(205)};
    const auto found = largestThatFits(trestle(2440, 760, 8), {}, {Millimetres(1), 1, Millimetres(15)}, jars);
    ASSERT_TRUE(found.ok());
    EXPECT_EQ(*found, std::size_t{2});
    EXPECT_FALSE(
        largestThatFits(trestle(2440, 560, 8), {}, {Millimetres(1), 1, Millimetres(15)}, jars)->has_value());
}

TEST(Sightline, IsBelowInTheWayOrAbove) {
    struct Row {
        const char* name;
        SightlineAsked asked;
        Sightline sight;
        std::int64_t spare, lowerBy;
    };

    const Row rows[] = {
        {"low", {Millimetres(320), {}, Millimetres(400), Millimetres(0)}, Sightline::below, 80, 0},
        {"at the eyes", {Millimetres(400), {}, Millimetres(400), Millimetres(0)}, Sightline::inTheWay, 0, 1},
        {"in the band",
         {Millimetres(380), {}, Millimetres(400), Millimetres(60)},
         Sightline::inTheWay,
         0,
         11},
        {"on a stand",
         {Millimetres(900), Millimetres(500), Millimetres(400), Millimetres(60)},
         Sightline::above,
         70,
         0},
        {"a low stand",
         {Millimetres(800), Millimetres(410), Millimetres(400), Millimetres(60)},
         Sightline::inTheWay,
         0,
         431},
    };
    for (const auto& row : rows) {
        SCOPED_TRACE(row.name);
        const auto answer = sightline(row.asked);
        ASSERT_TRUE(answer.ok());
        EXPECT_EQ(answer->sight, row.sight);
        EXPECT_EQ(answer->spare.value, row.spare);
        EXPECT_EQ(answer->lowerBy.value, row.lowerBy);
        if (answer->sight != Sightline::inTheWay) continue;
        auto lower = row.asked; // what it advises does
        lower.top = lower.top - answer->lowerBy;
        lower.underside.reset();
        EXPECT_EQ(sightline(lower)->sight, Sightline::below);
        if (!answer->raiseBy) continue;
        auto higher = row.asked;
        higher.top += *answer->raiseBy;
        *higher.underside += *answer->raiseBy;
        EXPECT_EQ(sightline(higher)->sight, Sightline::above);
    }
}

TEST(TableFit, NamesBadInput) {
    const PiecesOnTable jar{Millimetres(200), 1, Millimetres(10)};
    EXPECT_EQ(fitOnTable(trestle(0, 760, 8), {}, jar).error().field, "table_length");
    EXPECT_EQ(fitOnTable(trestle(2000, 0, 8), {}, jar).error().field, "table_width");
    EXPECT_EQ(fitOnTable({TableForm::rectangular, Millimetres(2000), {}, 8, 0}, {}, jar).error().code,
              ProblemCode::required);
    EXPECT_EQ(fitOnTable(trestle(2000, 700, -1), {}, jar).error().field, "covers");
    EXPECT_EQ(fitOnTable(trestle(2000, 700, 2, 3), {}, jar).error().field, "covers_at_ends");
    EXPECT_EQ(fitOnTable(trestle(2000, 700, 2), {Millimetres(0), {}}, jar).error().field, "setting_width");
    EXPECT_EQ(fitOnTable(trestle(2000, 700, 2), {}, {Millimetres(0), 1, {}}).error().field, "footprint");
    EXPECT_EQ(fitOnTable(trestle(2000, 700, 2), {}, {Millimetres(1), 0, {}}).error().field, "pieces");
    EXPECT_EQ(sightline({Millimetres(-1), {}, Millimetres(400), {}}).error().field, "top");
    EXPECT_EQ(sightline({Millimetres(1), Millimetres(2), Millimetres(400), {}}).error().field, "underside");
    EXPECT_EQ(sightline({Millimetres(1), {}, Millimetres(0), {}}).error().field, "eye_line");
}

} // namespace withy::packing
