// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/bookings/stem_needs.h"

#include "core/bookings/spare_by_risk.h"

#include <gtest/gtest.h>

#include <cmath>

namespace withy::bookings {
namespace {

SpareTerms percent(std::int64_t share, std::int64_t bunch = 0) {
    return {PercentSpare{share, Basis::mine, {}}, bunch};
}

SpareTerms byRisk(double loss, double confidence, std::int64_t bunch = 0) {
    return {RiskSpare{loss, confidence, Basis::lastSeasons, "three seasons"}, bunch};
}

struct PercentRow {
    std::int64_t need;
    double percent;
    std::int64_t spare;
};

TEST(StemNeeds, PercentSpareIsRoundedUpFromTheExactShare) {
    constexpr PercentRow rows[] = {
        // Book of the trade: 20 % on every count (FERNWOOD), 10 % for breakage (TIPSY); counts by hand.
        {176, 20, 36}, // 35.2
        {70, 10, 7},   // a binary 0.1 makes 7.000000000000001 of it, and 8
        {120, 10, 12},
        {110, 10, 11},
        {30, 10, 3},
        {1, 10, 1},
        {0, 10, 0},
        {10, 0, 0},
        {3, 100, 3},
        {7, 150, 11},
        // 33.33 % of 3 is 0.9999; 12.5 % of 8 is 1; 0.29 % of 100 is 0.29
        {3, 33.33, 1},
        {8, 12.5, 1},
        {100, 0.29, 1},
        {10'000, 0.29, 29},
        {10'000, 1.15, 115},
        {100, 1.1, 2},
    };
    for (const auto& row : rows) {
        SCOPED_TRACE(std::to_string(row.percent) + " % of " + std::to_string(row.need));
        const auto share = perTenThousand(row.percent);
        ASSERT_TRUE(share.ok());
        const auto spare = spareByPercent(Stems(row.need), *share);
        ASSERT_TRUE(spare.ok());
        EXPECT_EQ(spare->value, row.spare);
    }
}

TEST(StemNeeds, TheWorkingLeadsFromPiecesToBunches) {
    const auto answer = stemNeed(NeedPart{5, 24, "Supper jar"}, percent(1000, 10));
    ASSERT_TRUE(answer.ok());
    EXPECT_EQ(answer->need.value, 120);
    EXPECT_EQ(answer->spare.value, 12);
    EXPECT_EQ(answer->toBunches.value, 8);
    EXPECT_EQ(answer->total.value, 140);
    EXPECT_FALSE(answer->chance.has_value());

    struct Line {
        const char* what;
        double value;
        Step step;
    };

    constexpr Line lines[] = {
        {"pieces", 24, Step::given},      {"stems a piece", 5, Step::times}, {"need", 120, Step::result},
        {"spare share", 10, Step::given}, {"spare", 12, Step::plus},         {"bunch", 10, Step::given},
        {"to bunches", 8, Step::plus},    {"total", 140, Step::result},
    };
    ASSERT_EQ(answer->working.size(), std::size(lines));
    for (std::size_t i = 0; i < std::size(lines); ++i) {
        SCOPED_TRACE(lines[i].what);
        EXPECT_EQ(answer->working[i].what, lines[i].what);
        EXPECT_EQ(answer->working[i].value, lines[i].value);
        EXPECT_EQ(answer->working[i].step, lines[i].step);
    }
    EXPECT_EQ(answer->working.front().subject, "Supper jar");
}

TEST(StemNeeds, ByRiskIsTheExactTableRoundedToBunches) {
    // stems_to_cut table: 24 sound at loss 0.15 and confidence 0.95 take 32 (chance 0.958702001852166).
    const auto answer = stemNeed(NeedPart{1, 24, {}}, byRisk(0.15, 0.95, 5));
    ASSERT_TRUE(answer.ok());
    EXPECT_EQ(answer->need.value, 24);
    EXPECT_EQ(answer->spare.value, 8);
    EXPECT_EQ(answer->toBunches.value, 3);
    EXPECT_EQ(answer->total.value, 35);
    ASSERT_TRUE(answer->chance.has_value());
    EXPECT_NEAR(*answer->chance, 0.958702001852166, 1e-10);
    const auto loss = std::find_if(answer->working.begin(), answer->working.end(),
                                   [](const WorkingLine& line) { return line.what == "loss"; });
    ASSERT_NE(loss, answer->working.end());
    EXPECT_EQ(loss->basis, Basis::lastSeasons);
    EXPECT_EQ(loss->source, "three seasons");
}

TEST(StemNeeds, SeveralPartsShareOneSpare) {
    // 3 x 11 + 7 x 1 = 40; 10 % of 40 is 4. Part by part it would be 4 + 1.
    const auto answer = stemNeed({{11, 3, "Jar"}, {1, 7, "Buttonhole"}}, percent(1000));
    ASSERT_TRUE(answer.ok());
    EXPECT_EQ(answer->need.value, 40);
    EXPECT_EQ(answer->spare.value, 4);
    EXPECT_EQ(answer->total.value, 44);
    // stems_to_cut table: 300 sound at 0.05 and 0.95 take 323; twice 150 would take more.
    const auto risk = stemNeed({{10, 15, {}}, {15, 10, {}}}, byRisk(0.05, 0.95));
    ASSERT_TRUE(risk.ok());
    EXPECT_EQ(risk->total.value, 323);
}

TEST(StemNeeds, NothingNeededNeedsNothing) {
    for (const auto& terms : {percent(1000, 10), byRisk(0.2, 0.95, 10)}) {
        const auto none = stemNeed(std::vector<NeedPart>{}, terms);
        ASSERT_TRUE(none.ok());
        EXPECT_EQ(none->total.value, 0);
        const auto noPieces = stemNeed(NeedPart{5, 0, {}}, terms);
        ASSERT_TRUE(noPieces.ok());
        EXPECT_EQ(noPieces->total.value, 0);
    }
}

TEST(StemNeeds, WhatMakesNoSenseIsRefusedByName) {
    struct Row {
        NeedPart part;
        SpareTerms terms;
        const char* field;
    };

    const Row rows[] = {
        {{-1, 24, {}}, percent(0), "count"},
        {{1'000'000'000'000, 24, {}}, percent(0), "count"},
        {{5, -24, {}}, percent(0), "pieces"},
        {{5, 1'000'000'000'000, {}}, percent(0), "pieces"},
        {{100'000, 1'000'000, {}}, percent(0), "need"},
        {{5, 24, {}}, percent(-1), "spare_percent"},
        {{5, 24, {}}, percent(1'000'000'000'000), "spare_percent"},
        {{5, 24, {}}, percent(0, -1), "bunch"},
        {{5, 24, {}}, percent(0, 1'000'000'000'000), "bunch"},
        {{5, 24, {}}, byRisk(1, 0.95), "loss"},
        {{5, 24, {}}, byRisk(std::nan(""), 0.95), "loss"},
        {{5, 24, {}}, byRisk(0.1, 1), "confidence"},
        {{5, 24, {}}, byRisk(0.1, -1), "confidence"},
    };
    for (const auto& row : rows) {
        SCOPED_TRACE(std::string(row.field) + " " + std::to_string(row.part.stemsPerPiece) + " x " +
                     std::to_string(row.part.pieces));
        const auto answer = stemNeed(row.part, row.terms);
        ASSERT_FALSE(answer.ok());
        EXPECT_EQ(answer.error().field, row.field);
    }
    for (const double bad : {-0.01, 1000.5, std::nan(""), 1e300})
        EXPECT_EQ(perTenThousand(bad).error().field, "spare_percent");
}

TEST(StemNeeds, ManyLargePartsCannotWrapTheSum) {
    const std::vector<NeedPart> parts(2'000, NeedPart{100'000, 1'000, {}});
    const auto answer = stemNeed(parts, percent(1000));
    ASSERT_FALSE(answer.ok());
    EXPECT_EQ(answer.error().field, "need");
}

} // namespace
} // namespace withy::bookings
