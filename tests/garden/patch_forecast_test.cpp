// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/garden/patch_forecast.h"

#include <boost/math/distributions/negative_binomial.hpp>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace withy::garden {
namespace {

const Day d0 = *Day::fromYmd(2027, 6, 1);

PatchForecastInput patch(double stems = 600, double dateSpread = 0) {
    PatchForecastInput in;
    in.patch = "Bed 4";
    in.dates = {d0, d0 + 14, d0 + 40};
    in.expectedStems = {stems, Basis::mine, ""};
    in.holdDays = {2, Basis::mine, ""};
    in.dateSpread = dateSpread;
    return in;
}

PatchForecast forecast(const PatchForecastInput& in) {
    auto f = patchForecast(in);
    EXPECT_TRUE(f.ok());
    return f.ok() ? std::move(f).value() : PatchForecast{};
}

TEST(PatchForecast, CurveSumsToTheStemsAndPeaksOnItsDay) {
    struct Case {
        int peak, last;
    };

    for (const auto& c :
         {Case{14, 40}, Case{0, 20}, Case{20, 20}, Case{0, 0}, Case{1, 364}, Case{180, 364}}) {
        SCOPED_TRACE(testing::Message() << c.peak << " of " << c.last);
        const auto curve = bloomCurve({d0, d0 + c.peak, d0 + c.last}, 812);
        ASSERT_EQ(curve.size(), static_cast<std::size_t>(c.last + 1));
        EXPECT_NEAR(std::accumulate(curve.begin(), curve.end(), 0.0), 812, 1e-9);
        const auto top = std::max_element(curve.begin(), curve.end());
        EXPECT_EQ(top - curve.begin(), c.peak);
        EXPECT_TRUE(std::is_sorted(curve.begin(), top + 1));
        EXPECT_TRUE(std::is_sorted(top, curve.end(), std::greater<>()));
        EXPECT_GT(*std::min_element(curve.begin(), curve.end()), 0);
    }
}

// Against Boost.Math's own distribution, an implementation apart from ours.
TEST(NegativeBinomial, QuantilesOfBoost) {
    namespace bm = boost::math;
    using Up = bm::policies::policy<bm::policies::discrete_quantile<bm::policies::integer_round_up>>;
    for (const double shape : {0.4, 1.0, 3.0, 6.0, 14.0, 250.0, 5000.0}) {
        for (const double mean : {0.02, 0.7, 3.0, 12.5, 60.0, 480.0, 3000.0, 90000.0}) {
            SCOPED_TRACE(testing::Message() << "shape " << shape << ", mean " << mean);
            const bm::negative_binomial_distribution<double, Up> of(shape, shape / (shape + mean));
            const auto got = negativeBinomialQuantiles(mean, shape, {0.2, 0.5, 0.8});
            const double levels[] = {0.2, 0.5, 0.8};
            for (std::size_t i = 0; i < 3; ++i) {
                const double p = levels[i];
                const bool nought = bm::cdf(of, 0) >= p;
                EXPECT_EQ(got[i], nought ? 0 : static_cast<std::int64_t>(bm::quantile(of, p)));
            }
        }
    }
}

// Large shape: Poisson. Medians of Poisson 1, 5, 10 are 1, 5, 10; P(X <= 7) = 0.2202, P(X <= 6) = 0.1301
// for mean 10 (from memory: the usual printed table of the Poisson distribution).
TEST(NegativeBinomial, PoissonAtTheEdge) {
    EXPECT_EQ(negativeBinomialQuantiles(10, 1e6, {0.2, 0.5, 0.8}), (std::array<std::int64_t, 3>{7, 10, 13}));
    EXPECT_EQ(negativeBinomialQuantiles(5, 1e6, {0.2, 0.5, 0.8})[1], 5);
    EXPECT_EQ(negativeBinomialQuantiles(1, 1e6, {0.2, 0.5, 0.8})[1], 1);
    EXPECT_EQ(negativeBinomialQuantiles(0, 6, {0.2, 0.5, 0.8}), (std::array<std::int64_t, 3>{0, 0, 0}));
}

// A. Gelman and others, Bayesian Data Analysis, section 2.6 (figures from memory): prior Gamma(3, 5), three
// cases at exposure 2 give Gamma(6, 7), mean 0.86; thirty at exposure 20 give Gamma(33, 25), mean 1.32.
// Scaled so that the prior has mean 1: theta = rate / 0.6, exposures times 0.6.
TEST(PatchForecast, ConjugateUpdateOfTheTextbook) {
    struct Case {
        double exposure;
        int cases;
        double priorWalks; ///< so few that a walk is not thinned
        double mean;
    };

    for (const auto& c : {Case{2, 3, 1, 6.0 / 7}, Case{20, 30, 0.1, 33.0 / 25}}) {
        SCOPED_TRACE(c.exposure);
        PatchForecastInput in;
        in.dates = {d0, d0, d0};
        in.expectedStems = {c.exposure * 0.6, Basis::mine, ""};
        in.dateSpread = 0;
        in.priorShape = 3;
        in.priorWalks = c.priorWalks;
        in.walks.push_back({d0, c.cases, std::nullopt, std::nullopt, 0});
        EXPECT_NEAR(forecast(in).amountFactor * 0.6, c.mean, 1e-12);
    }
}

double expectedReady(const PatchForecastInput& in, Day day) {
    const auto curve = bloomCurve(in.dates, in.expectedStems.value);
    double sum = 0;
    for (int back = 0; back <= 2; ++back)
        sum += curve[static_cast<std::size_t>(day - back - in.dates.first)];
    return sum;
}

const WorkingLine* lineIn(const Working& working, const std::string& what) {
    const auto at =
        std::find_if(working.begin(), working.end(), [&](const auto& l) { return l.what == what; });
    return at == working.end() ? nullptr : &*at;
}

// The prior is worth three walks: after one of half the expectation, (3 + 1/2) / 4.
TEST(PatchForecast, AWalkOfHalfTheExpectationLowersItAsTheWorkingSays) {
    auto in = patch(2000);
    const auto before = forecast(in);
    const double ready = expectedReady(in, d0 + 14);
    in.walks.push_back({d0 + 14, std::llround(ready / 2), std::nullopt, std::nullopt, 0});
    const auto after = forecast(in);
    EXPECT_NEAR(after.amountFactor, 0.875, 0.001);
    EXPECT_NEAR(after.expected, before.expected * after.amountFactor, 1e-6);
    EXPECT_LT(after.on(d0 + 20)->fresh.likely, before.on(d0 + 20)->fresh.likely);
    EXPECT_LT(after.total.cautious, before.total.cautious);
    const auto& w = after.working;
    EXPECT_NEAR(w.back().value, w.front().value * lineIn(w, "amount after the walks")->value / 100, 1e-6);
    EXPECT_NEAR(lineIn(w, "expected then")->value, ready, 1e-9);
    EXPECT_EQ(lineIn(w, "counted")->value, std::round(ready / 2));
    EXPECT_NEAR(lineIn(w, "worth in walks")->value, 1, 1e-9);
    EXPECT_EQ(w.back().step, Step::result);
    EXPECT_EQ(w.back().value, after.expected);
}

TEST(PatchForecast, BlankCountsAreNotNoughts) {
    auto in = patch(600, 4);
    const auto before = forecast(in);
    in.walks = {{d0 + 14, std::nullopt, std::nullopt, std::nullopt, 0}};
    const auto blank = forecast(in);
    EXPECT_EQ(blank.expected, before.expected);
    EXPECT_EQ(blank.walksUsed, 0);
    ASSERT_EQ(blank.notes.size(), 1u);
    EXPECT_EQ(blank.notes[0].trouble, WalkTrouble::blank);
    in.walks = {{d0 + 14, 0, std::nullopt, std::nullopt, 0}};
    EXPECT_LT(forecast(in).expected, before.expected * 0.9);
    // As expected now and nothing said of the week: as expected.
    in = patch(600);
    in.walks = {{d0 + 14, std::llround(expectedReady(in, d0 + 14)), std::nullopt, std::nullopt, 0}};
    EXPECT_NEAR(forecast(in).amountFactor, 1, 0.01);
}

TEST(PatchForecast, StemsCutLatelyStoodThereToo) {
    auto in = patch(600);
    const auto ready = std::llround(expectedReady(in, d0 + 14));
    in.walks = {{d0 + 14, ready - 30, std::nullopt, std::nullopt, 30}};
    EXPECT_NEAR(forecast(in).amountFactor, 1, 0.01);
}

TEST(PatchForecast, CountsMoveTheDates) {
    auto in = patch(600, 5);
    in.walks = {{d0 - 3, 40, 60, 140, 0}, {d0, 60, 70, 150, 0}};
    const auto early = forecast(in);
    EXPECT_LT(early.shiftDays, -1);
    in.walks = {{d0 + 7, 0, 0, 3, 0}, {d0 + 10, 0, 1, 6, 0}};
    const auto late = forecast(in);
    EXPECT_GT(late.shiftDays, 1);
    in.dateSpread = 0;
    EXPECT_EQ(forecast(in).shiftDays, 0);
}

TEST(PatchForecast, AThousandTimesTheExpectationIsNamedAndBounded) {
    auto in = patch(600);
    const auto before = forecast(in);
    in.walks = {{d0 + 14, std::llround(1000 * expectedReady(in, d0 + 14)), std::nullopt, std::nullopt, 0}};
    const auto after = forecast(in);
    ASSERT_EQ(after.notes.size(), 1u);
    EXPECT_EQ(after.notes[0].trouble, WalkTrouble::farAboveExpected);
    EXPECT_EQ(after.walksUsed, 1);
    EXPECT_GT(after.expected, before.expected);
    EXPECT_LT(after.expected, 2.5 * before.expected);
}

TEST(PatchForecast, OddWalksAreNamed) {
    struct Case {
        const char* name;
        WalkCount walk;
        WalkTrouble want;
        int used;
    };

    using enum WalkTrouble;
    const Case cases[] = {
        {"negative", {d0 + 14, -3, std::nullopt, std::nullopt, 0}, negative, 0},
        {"outside", {d0 - 60, 12, std::nullopt, std::nullopt, 0}, outsideFlowering, 0},
        {"after", {d0 + 90, 0, 0, 0, 0}, outsideFlowering, 0},
        {"week", {d0 + 14, 50, 60, 20, 0}, weekUnderThreeDays, 1},
    };
    for (const auto& c : cases) {
        SCOPED_TRACE(c.name);
        auto in = patch();
        in.walks = {c.walk};
        const auto f = forecast(in);
        ASSERT_EQ(f.notes.size(), 1u);
        EXPECT_EQ(f.notes[0].trouble, c.want);
        EXPECT_EQ(f.walksUsed, c.used);
        if (c.used == 0) {
            EXPECT_NEAR(f.expected, 600, 1e-9);
        }
    }
}

TEST(PatchForecast, NothingIsLostOrMade) {
    for (const double spread : {0.0, 4.0}) {
        for (const bool walked : {false, true}) {
            SCOPED_TRACE(testing::Message() << spread << walked);
            auto in = patch(777, spread);
            if (walked) in.walks = {{d0 + 10, 20, 30, 90, 0}};
            const auto f = forecast(in);
            double mean = 0;
            StemLevels sum;
            for (const auto& d : f.days) {
                mean += d.mean;
                sum.cautious += d.supply.cautious;
                sum.likely += d.supply.likely;
                sum.hopeful += d.supply.hopeful;
                EXPECT_LE(d.fresh.cautious, d.fresh.likely);
                EXPECT_LE(d.fresh.likely, d.fresh.hopeful);
                EXPECT_LE(d.fresh.likely, d.standing.hopeful);
                EXPECT_GE(d.supply.cautious.value, 0);
                EXPECT_LE(sum.cautious, sum.likely);
                EXPECT_LE(sum.likely, sum.hopeful);
                EXPECT_TRUE(std::isfinite(d.mean) && std::isfinite(d.standingMean));
            }
            EXPECT_NEAR(mean, f.expected, 1e-6);
            EXPECT_EQ(sum, f.total);
            EXPECT_LT(f.total.cautious.value, f.expected);
            EXPECT_GT(f.total.hopeful.value, f.expected);
        }
    }
}

TEST(PatchForecast, StandingIsWhatTheHoldDaysKeep) {
    const auto in = patch(600);
    const auto f = forecast(in);
    EXPECT_NEAR(f.on(d0 + 20)->standingMean, expectedReady(in, d0 + 20), 1e-9);
    EXPECT_NEAR(f.on(d0 + 42)->standingMean, f.on(d0 + 40)->mean, 1e-9); // the last waits two days
    EXPECT_EQ(f.on(d0 - 1), nullptr);
}

TEST(PatchForecast, AHardCutAndItsSecondFlush) {
    auto in = patch(1000);
    in.hardCut = d0 + 16;
    in.secondFlush = Dates{d0 + 30, d0 + 33, d0 + 40};
    const auto curve = bloomCurve(in.dates, 1000);
    const double kept = std::accumulate(curve.begin(), curve.begin() + 17, 0.0) +
                        std::accumulate(curve.begin() + 30, curve.end(), 0.0);
    const auto f = forecast(in);
    EXPECT_NEAR(f.expected, kept, 1e-9);
    EXPECT_EQ(f.on(d0 + 20)->standingMean, 0);
    EXPECT_NEAR(f.on(d0 + 10)->mean, curve[10], 1e-9);
    EXPECT_GT(f.on(d0 + 33)->mean, 0);
    in.secondFlush.reset();
    EXPECT_EQ(forecast(in).on(d0 + 33)->mean, 0);
}

TEST(PatchForecast, Troubles) {
    struct Case {
        const char* name;
        PatchForecastTrouble want;
        void (*spoil)(PatchForecastInput&);
    };

    using enum PatchForecastTrouble;
    using In = PatchForecastInput;
    const Case cases[] = {
        {"not a number", notFinite, [](In& in) { in.expectedStems.value = std::nan(""); }},
        {"order", outOfOrder, [](In& in) { in.dates.peak = in.dates.last + 1; }},
        {"long", tooLong, [](In& in) { in.dates.last = in.dates.first + 401; }},
        {"amount", badAmount, [](In& in) { in.expectedStems.value = -1; }},
        {"hold", badHold, [](In& in) { in.holdDays.value = 91; }},
        {"prior", badPrior, [](In& in) { in.priorWalks = 0; }},
        {"spread", badPrior, [](In& in) { in.dateSpread = -1; }},
        {"flush", outOfOrder,
         [](In& in) {
             in.secondFlush = Dates{d0 + 9, d0 + 8, d0 + 9};
         }},
    };
    for (const auto& c : cases) {
        SCOPED_TRACE(c.name);
        auto in = patch();
        c.spoil(in);
        const auto f = patchForecast(in);
        ASSERT_FALSE(f.ok());
        EXPECT_EQ(f.error(), c.want);
    }
}

} // namespace
} // namespace withy::garden
