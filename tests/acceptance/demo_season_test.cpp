// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/papers/text_render.h"
#include "core/plan/cover_plan.h"
#include "core/plan/plan.h"
#include "core/plan/plan_json.h"
#include "core/review/orders.h"
#include "tests/support/season_text.h"
#include "ui/logic/paper_shop.h"
#include "ui/logic/starting_seasons.h"

#include <gmock/gmock.h>

#include <regex>

namespace withy {

namespace {

Id<model::Booking> supperOf(const model::Season& season) {
    for (const auto& b : season.bookings) {
        if (b.title == "Library roof supper") return b.id;
    }
    return {};
}

/// Need, spare 10 % rounded up, whole bunches: counted by hand from the designs of the demo season.
struct ByHand {
    const char* plant;
    std::int64_t need; ///< 24 jars, 1 pedestal, 1 posy
    std::int64_t toCut;
};

constexpr ByHand supper[] = {
    {"Ninebark, dark leaf", 24 * 2 + 10 + 4, 70}, // 62 + 7 = 69
    {"Fennel, bronze", 24 * 2 + 6, 60},           // 54 + 6 = 60
    {"Dahlia, plum", 24 * 2 + 8 + 2, 70},         // 58 + 6 = 64
    {"Zinnia, coral", 24 * 3, 80},                // 72 + 8 = 80
    {"Snapdragon, apricot", 24 * 1 + 4 + 3, 40},  // 31 + 4 = 35
    {"Aster, lavender", 10, 20},                  // 10 + 1 = 11
    {"Sedum, dusk", 4, 5},                        // 4 + 1 = 5, bunches of five
    {"Cosmos, pale", 4, 10},                      // 4 + 1 = 5
};

} // namespace

TEST(DemoSeason, IsSoundAndGenerous) {
    const auto season = ui::demoSeason();
    EXPECT_TRUE(model::check(season).empty());
    EXPECT_GE(season.patches.size(), 40u);
    EXPECT_GE(season.designs.size(), 25u);
    EXPECT_GE(season.bookings.size(), 20u);
}

TEST(DemoSeason, SupperNeedsWhatAHandCountGives) {
    const auto season = ui::demoSeason();
    const auto plan = plan::plan(season);
    const auto& b = *plan.bookings.at(supperOf(season));
    ASSERT_EQ(b.needs.size(), std::size(supper));
    EXPECT_EQ(b.stemsNeeded.value, 295);
    EXPECT_EQ(b.stemsToCut.value, 355);
    for (const auto& hand : supper) {
        SCOPED_TRACE(hand.plant);
        const auto found = std::find_if(b.needs.begin(), b.needs.end(), [&](const plan::PlantNeed& n) {
            return season.plants.find(n.plant)->name == hand.plant;
        });
        ASSERT_NE(found, b.needs.end());
        EXPECT_EQ(found->need.need.value, hand.need);
        EXPECT_EQ(found->need.total.value, hand.toCut);
        ASSERT_TRUE(found->window && found->window->window.times);
        const auto& times = *found->window->window.times;
        ASSERT_GE(found->round, 0);
        const auto& round = b.rounds[static_cast<std::size_t>(found->round)];
        EXPECT_LE(times.earliest, round.start);
        EXPECT_LE(round.start, times.latest);
    }
}

TEST(DemoSeason, PrepSheetSaysTheCounts) {
    const auto season = ui::demoSeason();
    const auto plan = plan::plan(season);
    const auto sheet = ui::paperOf(ui::PaperKind::prepSheet, {season, plan, supperOf(season), {}});
    const auto words = papers::renderText(sheet);
    EXPECT_THAT(words, testing::HasSubstr("Library roof supper"));
    // Whatever outings they are cut on, the 355 stems of the hand count are all cut once.
    std::int64_t cut = 0;
    const std::regex step("Cut ([0-9]+) stems");
    for (auto at = std::sregex_iterator(words.begin(), words.end(), step); at != std::sregex_iterator(); ++at)
        cut += std::stoll((*at)[1]);
    EXPECT_EQ(cut, 355);
    EXPECT_THAT(words, testing::HasSubstr("70 Dahlia, plum"));
    EXPECT_THAT(words, testing::HasSubstr("Decoration, not food"));
}

TEST(DemoSeason, StepsOfABookingFollowInOrder) {
    const auto season = ui::demoSeason();
    const auto plan = plan::plan(season);
    for (const auto& [id, b] : plan.bookings) {
        SCOPED_TRACE(season.bookings.find(id)->title);
        EXPECT_LE(b->makeUpStart, b->makeUpEnd);
        EXPECT_LE(b->makeUpEnd, b->driveStart);
        for (const auto& step : b->steps) {
            EXPECT_LE(step.from, step.to);
            EXPECT_TRUE(step.kind != plan::StepKind::cut || step.from <= b->makeUpStart);
        }
    }
}

// Stems stand in water as soon as they are cut (common practice, no source): whatever the clock says, nothing
// but busy hours comes between cutting and stripping.
TEST(DemoSeason, EveningStemsAreStrippedTheSameEvening) {
    const auto season = ui::demoSeason();
    const auto planned = plan::plan(season);
    int evenings = 0;
    for (const auto& [id, booking] : planned.bookings) {
        SCOPED_TRACE(season.bookings.find(id)->title);
        for (std::size_t i = 0; i < booking->steps.size(); ++i) {
            const auto& cut = booking->steps[i];
            if (cut.kind != plan::StepKind::cut) continue;
            const bool busy = std::any_of(booking->busy.begin(), booking->busy.end(), [&](const auto& b) {
                return b.span.from < cut.to + Minutes(240) && cut.to < b.span.to;
            });
            const auto strip = std::find_if(booking->steps.begin(), booking->steps.end(), [&](const auto& s) {
                return s.kind == plan::StepKind::strip && s.from >= cut.to && s.count == cut.count;
            });
            ASSERT_NE(strip, booking->steps.end());
            if (!busy) {
                EXPECT_EQ(strip->from, cut.to);
            }
            evenings += cut.to.minute > 18 * 60 ? 1 : 0;
        }
    }
    EXPECT_GT(evenings, 0); // the case is in the demo season at all
}

TEST(DemoSeason, ReplanningGivesThePlanAnew) {
    const auto before = ui::demoSeason();
    const auto first = plan::plan(before);
    model::Line line = *before.lines.begin();
    line.pieces = Pieces(line.pieces.value + 3);
    const auto after = model::apply(before, model::Edit("line.pieces").put(line)).value().season;
    const auto kept = plan::replan(after, {}, before, first, {}).value();
    EXPECT_EQ(plan::planJson(after, kept), plan::planJson(after, plan::plan(after)));
    int same = 0;
    for (const auto& [id, b] : kept.bookings)
        same += b == first.bookings.at(id) ? 1 : 0;
    EXPECT_EQ(same, static_cast<int>(kept.bookings.size()) - 1);
}

TEST(DemoSeason, NothingIsToBeCutBeforeToday) {
    const auto season = ui::demoSeason();
    const auto today = *Day::fromYmd(2027, 9, 9);
    const auto plan = plan::plan(season, {today, {}});
    int cut = 0;
    for (const auto& [id, booking] : plan.cover->bookings) {
        if (plan.bookings.at(id)->makeUpStart.day < today) continue; // made up already
        for (const auto& slot : booking.slots)
            for (const auto& level : slot.at)
                for (const auto& piece : level.pieces) {
                    if (piece.source != cover::Source::patch) continue;
                    EXPECT_GE(piece.cut, today) << season.bookings.find(id)->title;
                    ++cut;
                }
    }
    EXPECT_GT(cut, 50);
}

TEST(DemoSeason, AStoppedRunGivesNothing) {
    const auto season = ui::demoSeason();
    std::stop_source stop;
    plan::PlanOptions options;
    options.stop = stop.get_token();
    EXPECT_TRUE(plan::replan(season, options, {}, {}, {}));
    stop.request_stop();
    EXPECT_FALSE(plan::replan(season, options, {}, {}, {}));
    EXPECT_EQ(plan::plan(season, options).bookings.size(), season.bookings.size());
}

TEST(DemoSeason, OrdersSumUp) {
    const auto season = ui::demoSeason();
    const auto orders = review::seasonOrders(season, plan::plan(season));
    Money income;
    for (const auto& row : orders.rows) {
        if (season.bookings.find(row.booking)->standing != model::Standing::lost) income += row.income;
    }
    EXPECT_EQ(orders.sum.income, income);
    EXPECT_EQ(orders.rows.size(), season.bookings.size());
}

} // namespace withy
