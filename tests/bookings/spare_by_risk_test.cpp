// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/bookings/spare_by_risk.h"

#include <gtest/gtest.h>

#include <chrono>
#include <cmath>
#include <limits>

namespace withy::bookings {
namespace {

struct CutRow {
    int need;
    double loss;
    double confidence;
    int cut;
    double chance;
    double chanceWithOneLess;
};

// How many stems to cut: made with exact rational arithmetic; R 4.2.2 (qnbinom) and scipy 1.10.1 (nbinom.ppf)
// give the same number in every row. The rows of loss 0.95 and need 1 to 5 are the one-sided 95/95
// tolerance-limit sample sizes (Wilks, from memory). Several chances equal the confidence exactly.
constexpr CutRow cutRows[] = {
    {1, 0, 0.95, 1, 1.0, 0.0},
    {7, 0, 0.95, 7, 1.0, 0.0},
    {100, 0, 0.95, 100, 1.0, 0.0},
    {1, 0.05, 0.95, 1, 0.95, 0.0},
    {1, 0.1, 0.9, 1, 0.9, 0.0},
    {1, 0.1, 0.99, 2, 0.99, 0.9},
    {2, 0.5, 0.25, 2, 0.25, 0.0},
    {1, 0.95, 0.95, 59, 0.951505474750577, 0.948953131316397},
    {2, 0.95, 0.95, 93, 0.950024204757383, 0.947863597068323},
    {3, 0.95, 0.95, 124, 0.950470222321313, 0.948579180213387},
    {4, 0.95, 0.95, 153, 0.95055520195698, 0.948835481928304},
    {5, 0.95, 0.95, 181, 0.95083742108524, 0.949250657900804},
    {1, 0.3, 0.99, 4, 0.9919, 0.973},
    {300, 0.01, 0.99, 308, 0.995729172317143, 0.986975134820569},
    {36, 0.25, 0.95, 55, 0.959523395419438, 0.938288193304098},
    {24, 0.15, 0.95, 32, 0.958702001852166, 0.917795616385005},
    {4, 0.2, 0.95, 7, 0.966656, 0.90112},
    {180, 0.35, 0.9, 293, 0.909348956947931, 0.896240052214276},
    {750, 0.05, 0.8, 795, 0.826236165139232, 0.785633486193329},
    {6, 0.15, 0.95, 9, 0.966068484273437, 0.894787225820312},
    {8, 0.3, 0.95, 16, 0.974326469945027, 0.949987459946224},
    {400, 0.08, 0.95, 445, 0.954251355033461, 0.938175799052443},
    {20, 0.07, 0.95, 24, 0.976735942918118, 0.926934755635081},
    {60, 0.01, 0.99, 63, 0.996273757597946, 0.975580293382728},
    {2, 0.35, 0.95, 6, 0.977678203125, 0.9459775},
    {30, 0.4, 0.95, 60, 0.955519685815782, 0.940447995732178},
    {150, 0.4, 0.95, 272, 0.954390008202685, 0.947224505616197},
    {150, 0.05, 0.8, 160, 0.82104209948239, 0.726197652201089},
    {1000, 0.12, 0.8, 1147, 0.81548446708331, 0.793950388337289},
    {200, 0.02, 0.95, 208, 0.974815928344748, 0.941989046262636},
    {1000, 0.02, 0.95, 1028, 0.955994643194696, 0.934444330203585},
    {20, 0.35, 0.95, 38, 0.959285198760073, 0.939387943895487},
    {300, 0.25, 0.9, 415, 0.907463912201587, 0.893189386613409},
    {6, 0.07, 0.99, 9, 0.99772873781817, 0.985301350374482},
    {500, 0.5, 0.9, 1041, 0.90350955370874, 0.89821013907305},
    {20, 0.08, 0.95, 24, 0.961426627838361, 0.892987406396351},
    {1000, 0.15, 0.95, 1201, 0.956167122567101, 0.949690217155584},
    {3, 0.07, 0.95, 4, 0.97327197, 0.804357},
    {300, 0.5, 0.9, 632, 0.905373892439782, 0.898669078369883},
    {1, 0.12, 0.95, 2, 0.9856, 0.88},
    {75, 0.03, 0.95, 80, 0.966693618099789, 0.910924680358791},
    {25, 0.05, 0.9, 28, 0.950926130358287, 0.849505567685617},
    {120, 0.1, 0.95, 140, 0.960808029914718, 0.937912754736023},
    {75, 0.4, 0.8, 133, 0.826076221465347, 0.79862007324049},
    {300, 0.12, 0.99, 358, 0.992502416778318, 0.989394931569605},
    {1000, 0.01, 0.95, 1016, 0.970013032286247, 0.94676302226205},
    {48, 0.02, 0.95, 51, 0.981028525948968, 0.921572251649031},
    {750, 0.4, 0.8, 1274, 0.803065086560707, 0.793530891851455},
    {48, 0.07, 0.8, 53, 0.835533513344404, 0.701420374799253},
    {24, 0.07, 0.9, 28, 0.957273237231137, 0.883438616876201},
    {300, 0.05, 0.95, 323, 0.963927114743173, 0.943410143623293},
    {12, 0.08, 0.99, 16, 0.993242804655691, 0.972686429855352},
    {6, 0.5, 0.95, 18, 0.951873779296875, 0.928268432617188},
    {150, 0.5, 0.95, 329, 0.951005430078877, 0.945410454139885},
    {1, 0.2, 0.9, 2, 0.96, 0.8},
    {12, 0.07, 0.95, 15, 0.982467277191552, 0.930204692258658},
    {180, 0.3, 0.95, 275, 0.955007215840254, 0.946147260441433},
    {200, 0.07, 0.99, 225, 0.991499520919392, 0.985397073310373},
    {30, 0.15, 0.99, 42, 0.993158208616152, 0.985338041739537},
    {200, 0.3, 0.95, 304, 0.950651359170158, 0.941586037983222},
    {15, 0.2, 0.8, 20, 0.804207785459549, 0.673288144291889},
    {50, 0.1, 0.99, 62, 0.992431051345126, 0.983452871014433},
    {2, 0.18, 0.95, 4, 0.97982128, 0.914464},
    {250, 0.12, 0.9, 292, 0.907842732784393, 0.880847807638019},
    {40, 0.1, 0.99, 50, 0.990645398412671, 0.978498731118861},
    {500, 0.3, 0.9, 737, 0.905666682718401, 0.89613769154328},
    {150, 0.1, 0.95, 174, 0.958431670891592, 0.937041155482247},
    {180, 0.03, 0.95, 190, 0.970721016197002, 0.939832361373224},
    {10, 0.5, 0.95, 28, 0.956420723348856, 0.938960939645767},
    {300, 0.35, 0.95, 488, 0.952731120108339, 0.946599669038516},
    {250, 0.07, 0.8, 273, 0.850936061334391, 0.797847432910433},
    {40, 0.25, 0.8, 57, 0.840224076536152, 0.782859230904924},
};

std::string nameOf(const CutRow& row) {
    return std::to_string(row.need) + " sound of stems lost at " + std::to_string(row.loss) + " with " +
           std::to_string(row.confidence);
}

TEST(SpareByRisk, AgreesWithTheExactTable) {
    for (const auto& row : cutRows) {
        SCOPED_TRACE(nameOf(row));
        const auto answer = stemsToCut(Stems(row.need), row.loss, row.confidence);
        ASSERT_TRUE(answer.ok());
        EXPECT_EQ(answer->cut.value, row.cut);
        EXPECT_NEAR(answer->chance, row.chance, 1e-10);
        EXPECT_NEAR(answer->chanceWithOneLess, row.chanceWithOneLess, 1e-10);
    }
}

TEST(SpareByRisk, TheIncompleteBetaFunctionGivesTheSameChances) {
    for (const auto& row : cutRows) {
        SCOPED_TRACE(nameOf(row));
        EXPECT_NEAR(chanceOfEnough(Stems(row.cut), Stems(row.need), row.loss), row.chance, 1e-10);
        EXPECT_NEAR(chanceOfEnough(Stems(row.cut - 1), Stems(row.need), row.loss), row.chanceWithOneLess,
                    1e-10);
    }
}

struct WideRow {
    std::int64_t need;
    double loss;
    double confidence;
    std::int64_t cut;
};

TEST(SpareByRisk, LargeNeedsAndLossesAgreeWithFortyDigits) {
    // mpmath 1.2.1, regularised betainc with 40 digits, both neighbours compared with the confidence.
    constexpr WideRow rows[] = {
        {5000, 0.95, 0.95, 102278},
        {200, 0.95, 0.95, 4464},
        {24, 0.15, 0.9999999999, 51},
        {3, 0.999, 0.95, 6294},
        // The same sum in 40-digit decimals, own arithmetic.
        {20000, 0.3, 0.95, 28754},
        {100000, 0.1, 0.99, 111370},
        {1000, 0.99, 0.95, 105231},
        {300000, 0.25, 0.95, 400601},
    };
    for (const auto& row : rows) {
        SCOPED_TRACE(std::to_string(row.need) + " at " + std::to_string(row.loss));
        const auto answer = stemsToCut(Stems(row.need), row.loss, row.confidence);
        ASSERT_TRUE(answer.ok());
        EXPECT_EQ(answer->cut.value, row.cut);
    }
}

TEST(SpareByRisk, IsTheLeastNumberThatIsEnough) {
    for (const std::int64_t need : {1, 2, 9, 70, 240, 999}) {
        for (const double loss : {0.01, 0.1, 0.25, 0.5, 0.9}) {
            for (const double confidence : {0.5, 0.8, 0.95, 0.999, 1 - 1e-10}) {
                SCOPED_TRACE(std::to_string(need) + " " + std::to_string(loss) + " " +
                             std::to_string(confidence));
                const auto answer = stemsToCut(Stems(need), loss, confidence);
                ASSERT_TRUE(answer.ok());
                EXPECT_GE(chanceOfEnough(answer->cut, Stems(need), loss), confidence - 1e-12);
                EXPECT_LT(chanceOfEnough(answer->cut - Stems(1), Stems(need), loss), confidence);
            }
        }
    }
}

TEST(SpareByRisk, ThousandsOfCallsTakeNoTime) {
    const auto start = std::chrono::steady_clock::now();
    std::int64_t sum = 0;
    for (int i = 0; i < 2'000; ++i) {
        for (const double loss : {0.05, 0.95})
            sum += stemsToCut(Stems(200), loss, 0.95)->cut.value;
    }
    const std::chrono::duration<double> taken = std::chrono::steady_clock::now() - start;
    EXPECT_GT(sum, 0);
    // A plan makes some thousand calls; this bound leaves room for sanitizers and a busy machine.
    EXPECT_LT(taken.count(), 5);
}

struct BadRow {
    std::int64_t need;
    double loss;
    double confidence;
    const char* field;
    ProblemCode code;
};

TEST(SpareByRisk, WhatMakesNoSenseIsRefusedByName) {
    const double nan = std::nan("");
    const double endless = std::numeric_limits<double>::infinity();
    const BadRow rows[] = {
        {-1, 0.1, 0.95, "need", ProblemCode::belowLeast},
        {1'000'000'000'000, 0.1, 0.95, "need", ProblemCode::aboveMost},
        {10, -0.1, 0.95, "loss", ProblemCode::belowLeast},
        {10, 1, 0.95, "loss", ProblemCode::aboveMost},
        {10, endless, 0.95, "loss", ProblemCode::aboveMost},
        {10, nan, 0.95, "loss", ProblemCode::notANumber},
        {10, 0.1, 0, "confidence", ProblemCode::belowLeast},
        {10, 0.1, 1, "confidence", ProblemCode::aboveMost},
        {10, 0.1, nan, "confidence", ProblemCode::notANumber},
        {10, 0, 1, "confidence", ProblemCode::aboveMost},
        // Would need more than mostStems.
        {10, 1 - 1e-12, 0.95, "loss", ProblemCode::aboveMost},
        {mostNeed, 0.95, 0.95, "loss", ProblemCode::aboveMost},
    };
    for (const auto& row : rows) {
        SCOPED_TRACE(std::to_string(row.need) + " " + std::to_string(row.loss) + " " +
                     std::to_string(row.confidence));
        const auto answer = stemsToCut(Stems(row.need), row.loss, row.confidence);
        ASSERT_FALSE(answer.ok());
        EXPECT_EQ(answer.error().field, row.field);
        EXPECT_EQ(answer.error().code, row.code);
    }
}

TEST(SpareByRisk, NoNeedNeedsNoStems) {
    const auto answer = stemsToCut(Stems(0), 0.5, 0.95);
    ASSERT_TRUE(answer.ok());
    EXPECT_EQ(answer->cut.value, 0);
    EXPECT_EQ(answer->chance, 1);
}

} // namespace
} // namespace withy::bookings
