// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/forecast_plan.h"
#include "tests/ui_logic/logic_fixture.h"
#include "ui/logic/answers/walk_answers.h"
#include "ui/logic/english_plurals.h"
#include "ui/logic/models/bloom_strip_model.h"
#include "ui/logic/models/strip_design.h"
#include "ui/logic/models/strip_span.h"
#include "ui/logic/models/strip_table_model.h"
#include "ui/logic/models/strip_words.h"

#include <QAbstractItemModelTester>

#include <map>

namespace withy::ui {

namespace {

const Day monday = *Day::fromYmd(2027, 9, 6);

class BloomStripTest : public LogicTest {
protected:
    void SetUp() override { installEnglishPlurals(); }

    static const model::Season& demo() {
        static const model::Season season = demoSeason();
        return season;
    }

    static const plan::Plan& demoPlan() {
        static const plan::Plan plan = plan::plan(demo(), {monday, {}});
        return plan;
    }

    static StripFigures demoStrip() { return stripFigures(demo(), demoPlan(), monday); }

    /// A plan whose only patch of a plant stands so many stems (cautious, likely, hopeful) from a day on.
    static void stand(model::Season& season, plan::ForecastPlan& garden, const char* plant, const char* from,
                      const std::vector<garden::StemLevels>& days) {
        model::Edit edit("x");
        model::Patch patch;
        patch.id = season.patches.nextId();
        patch.label = std::string("Patch of ") + plant;
        for (const auto& p : season.plants)
            if (p.name == plant) patch.plant = p.id;
        if (!patch.plant) {
            model::Plant made;
            made.id = patch.plant = season.plants.nextId();
            made.name = plant;
            edit.put(made);
        }
        edit.put(patch);
        auto applied = model::apply(season, edit);
        ASSERT_TRUE(applied.ok());
        season = applied->season;
        plan::PatchOutlook outlook;
        outlook.patch = patch.id;
        outlook.forecast.emplace();
        outlook.forecast->from = *Day::parse(from);
        for (const auto& levels : days) {
            garden::DayForecast day;
            day.standing = levels;
            outlook.forecast->days.push_back(day);
        }
        garden.patches.emplace(patch.id, outlook);
    }

    static std::vector<garden::StemLevels> likely(const std::vector<int>& stems) {
        std::vector<garden::StemLevels> days;
        for (const int n : stems)
            days.push_back({Stems(n - n / 2), Stems(n), Stems(2 * n)});
        return days;
    }
};

} // namespace

TEST_F(BloomStripTest, BandsAreTheSumsOfThePatchesForecasts) {
    const auto strip = demoStrip();
    ASSERT_TRUE(strip.known);
    ASSERT_GT(strip.bands.size(), 10u);
    std::int64_t seen = 0;
    for (int day = 0; day < strip.days; ++day) {
        std::map<Id<model::Plant>, StripLevels> plants;
        StripLevels all, leaf;
        for (const auto& patch : demo().patches) {
            const auto& outlook = demoPlan().garden->patches.at(patch.id);
            const auto* on = outlook.forecast ? outlook.forecast->on(strip.dayAt(day)) : nullptr;
            if (!on) continue;
            const auto& p = *demo().plants.find(patch.plant);
            const bool isLeaf = p.foliage && !p.focal && !p.spike && !p.filler;
            for (auto* sum : {isLeaf ? &leaf : &all, &plants[patch.plant]}) {
                sum->cautious += on->standing.cautious.value;
                sum->likely += on->standing.likely.value;
                sum->hopeful += on->standing.hopeful.value;
            }
        }
        const auto at = static_cast<std::size_t>(day);
        SCOPED_TRACE(strip.dayAt(day).iso());
        EXPECT_EQ(strip.sums[at], all);
        EXPECT_EQ(strip.leaf[at], leaf);
        for (const auto& band : strip.bands)
            EXPECT_EQ(band.days[at], plants[band.plant]) << band.name.toStdString();
        seen += all.likely;
    }
    EXPECT_GT(seen, 1000);
}

TEST_F(BloomStripTest, TheBandsLieInOrderOfTheirPeaks) {
    const auto strip = demoStrip();
    for (std::size_t i = 1; i < strip.bands.size(); ++i)
        EXPECT_LE(strip.bands[i - 1].peak, strip.bands[i].peak) << strip.bands[i].name.toStdString();
    for (const auto& b : strip.bands) {
        const auto most = b.days[static_cast<std::size_t>(b.peak)].likely;
        EXPECT_GT(most, 0);
        for (const auto& day : b.days)
            EXPECT_LE(day.likely, most);
    }
}

TEST_F(BloomStripTest, EveryBookingButTheLostHasAPinOnItsDay) {
    const auto strip = demoStrip();
    std::size_t pinned = 0;
    for (const auto& b : demo().bookings)
        pinned += b.standing != model::Standing::lost;
    EXPECT_EQ(strip.pins.size(), pinned);
    for (const auto& pin : strip.pins) {
        const auto* b = demo().bookings.find(pin.booking);
        ASSERT_NE(b, nullptr);
        EXPECT_EQ(strip.dayAt(pin.day), b->eventStart.day);
        EXPECT_EQ(pin.title.toStdString(), b->title);
    }
    EXPECT_EQ(strip.dayAt(*strip.today), monday);
}

TEST_F(BloomStripTest, WhatGrowsAllYearDoesNotStretchTheSeason) {
    auto season = emptySeason(2027);
    plan::ForecastPlan garden;
    stand(season, garden, "Ivy", "2026-12-01", likely(std::vector<int>(600, 5)));
    plan::Plan plan;
    plan.garden = std::make_shared<const plan::ForecastPlan>(garden);
    const auto& s = season.theSettings();
    const auto strip = stripFigures(season, plan, std::nullopt);
    EXPECT_EQ(strip.first, s.firstDay - 7);
    EXPECT_EQ(strip.dayAt(strip.days - 1), s.lastDay + 7);
    EXPECT_FALSE(strip.today);
}

TEST_F(BloomStripTest, SaysTheDayTheBandAndTheRange) {
    auto season = emptySeason(2027);
    plan::ForecastPlan garden;
    stand(season, garden, "Dahlia, plum", "2027-09-05", likely({100, 139, 120}));
    stand(season, garden, "Aster", "2027-09-05", likely({10, 92, 60}));
    stand(season, garden, "Aster", "2027-09-06", likely({1000}));
    stand(season, garden, "Sweet pea, white", "2027-09-06", likely({3}));
    stand(season, garden, "Sweet pea, pink", "2027-09-06", likely({0, 2}));
    plan::Plan plan;
    plan.garden = std::make_shared<const plan::ForecastPlan>(garden);
    const auto strip = stripFigures(season, plan, monday);
    const auto at = [&](const char* day) { return *Day::parse(day) - strip.first; };
    const auto band = [&](const char* name) {
        for (std::size_t i = 0; i < strip.bands.size(); ++i)
            if (strip.bands[i].name == QLatin1String(name)) return i;
        ADD_FAILURE() << name;
        return std::size_t{0};
    };
    const auto words = [&](std::optional<int> day, std::optional<std::size_t> b = {}) {
        return stripReadout(strip, day, b).whole().toStdString();
    };
    EXPECT_EQ(words({}), "1,234 stems ready today, most of them aster 1,092 and dahlia 139");
    EXPECT_EQ(words(at("2027-09-05")), "Sun 5 Sep: 110 stems ready, most of them dahlia 100 and aster 10");
    EXPECT_EQ(words(at("2027-09-07")),
              "Tue 7 Sep: 182 stems likely ready, 91 to 364, most of them dahlia 120 and aster 60");
    EXPECT_EQ(words(at("2027-09-04")), "Sat 4 Sep: nothing ready");
    EXPECT_EQ(words(at("2027-09-07"), band("Dahlia, plum")),
              "Dahlia, plum, Tue 7 Sep: 120 ready, 60 to 240, of 182 stems, fullest Mon 6 Sep");
    EXPECT_EQ(words({}, band("Sweet pea, white")),
              "Sweet pea, white, today: 3 ready, of 1,234 stems, fullest Mon 6 Sep");
    EXPECT_EQ(strip.bands[band("Dahlia, plum")].kind, QStringLiteral("Dahlia"));
    EXPECT_EQ(strip.bands[band("Sweet pea, pink")].kind, QStringLiteral("Sweet pea, pink"))
        << "two sweet peas keep their colours";
    EXPECT_EQ(stripReadout(stripFigures(season, plan, std::nullopt)).strong,
              QStringLiteral("Mon 6 Sep: 1,234 stems ready"))
        << "with no today, the fullest day";
}

TEST_F(BloomStripTest, FoliageIsCountedBesideTheBloomAndAloneIsABand) {
    auto season = emptySeason(2027);
    plan::ForecastPlan garden;
    stand(season, garden, "Ninebark", "2027-09-05", likely({400, 400, 400}));
    auto leaf = *season.plants.begin();
    leaf.foliage = true;
    const auto applied = model::apply(season, model::Edit("x").put(leaf));
    ASSERT_TRUE(applied.ok());
    season = applied->season;
    plan::Plan plan;
    plan.garden = std::make_shared<const plan::ForecastPlan>(garden);
    EXPECT_EQ(stripReadout(stripFigures(season, plan, monday)).whole().toStdString(),
              "400 stems ready today, all of them ninebark");
    stand(season, garden, "Zinnia", "2027-09-05", likely({7, 8, 9}));
    plan.garden = std::make_shared<const plan::ForecastPlan>(garden);
    const auto strip = stripFigures(season, plan, monday);
    ASSERT_EQ(strip.bands.size(), 1u);
    EXPECT_EQ(stripReadout(strip).whole().toStdString(),
              "8 stems ready today, all of them zinnia, besides 400 of foliage");
}

TEST_F(BloomStripTest, SaysOneSentenceWhereThereIsNothing) {
    const auto empty = emptySeason(2027);
    plan::Plan plan;
    EXPECT_EQ(stripEmptyWords(empty, stripFigures(empty, plan, monday)), QString()) << "not reckoned yet";
    plan.garden = std::make_shared<const plan::ForecastPlan>();
    const auto strip = stripFigures(empty, plan, monday);
    EXPECT_TRUE(stripEmptyWords(empty, strip).startsWith(QStringLiteral("Nothing grows here yet.")));
    EXPECT_TRUE(stripReadout(strip).strong.isEmpty());
    EXPECT_GE(strip.days, 28);
}

/// The demo with its patches' stems cut down, so that bookings come to the edge of their cover.
model::Season meagre(const model::Season& season, int percent) {
    model::Edit edit("x");
    for (auto patch : season.patches) {
        if (!patch.expectedStems) continue;
        patch.expectedStems = Stems(patch.expectedStems->value * percent / 100);
        edit.put(patch);
    }
    return model::apply(season, edit)->season;
}

/// Every patch that should have eight stems ready or more is found with half of them.
model::Season halfFound(const model::Season& season, Day day, const WalkExpectations& expected) {
    model::Edit edit("x");
    auto id = season.walks.nextId();
    for (const auto& [patch, counts] : expected) {
        if (counts.likely[0].value_or(0) < 8) continue;
        model::Walk w;
        w.id = id;
        id = Id<model::Walk>(id.value + 1);
        w.date = day;
        w.patch = patch;
        w.readyNow = Stems(*counts.likely[0] / 2);
        edit.put(w);
    }
    return model::apply(season, edit)->season;
}

// After a walk that finds half of what was expected everywhere, the forecast falls by the part that each
// patch's working names, and pins recolour with it.
TEST_F(BloomStripTest, AWalkOfHalfTheExpectedRecoloursThePins) {
    int explained = 0, recoloured = 0;
    std::int64_t shortBefore = 0, shortAfter = 0;
    for (const int percent : {100, 70, 50, 35}) {
        const auto season = meagre(demo(), percent);
        const auto planBefore = plan::plan(season, {monday, {}});
        const auto expected = walkExpectations(season, monday);
        const auto walked = halfFound(season, monday, expected);
        const auto plan = plan::plan(walked, {monday, {}});
        for (const auto& [patch, counts] : expected) {
            if (counts.likely[0].value_or(0) < 8) continue;
            const auto& forecast = *plan.garden->patches.at(patch).forecast;
            EXPECT_LT(forecast.expected, planBefore.garden->patches.at(patch).forecast->expected);
            for (const auto& line : forecast.working) {
                if (line.what != "amount after the walks") continue;
                EXPECT_NEAR(forecast.expected, forecast.working.front().value * line.value / 100, 1e-6);
                ++explained;
            }
        }
        const auto before = stripFigures(season, planBefore, monday);
        const auto after = stripFigures(walked, plan, monday);
        ASSERT_EQ(before.pins.size(), after.pins.size());
        for (std::size_t i = 0; i < after.pins.size(); ++i) {
            if (!before.pins[i].cover || !after.pins[i].cover) continue;
            shortBefore += before.pins[i].cover->shortBy;
            shortAfter += after.pins[i].cover->shortBy;
            recoloured += after.pins[i].cover->standing != before.pins[i].cover->standing ? 1 : 0;
        }
    }
    EXPECT_GT(explained, 20);
    EXPECT_GT(shortAfter, shortBefore);
    EXPECT_GT(recoloured, 0);
}

TEST_F(BloomStripTest, ADesignSpansTheDaysWhenAllItsSlotsBloom) {
    auto season = emptySeason(2027);
    plan::Plan plan;
    auto garden = std::make_shared<plan::ForecastPlan>();
    // Stems on days 1 to 6, and on days 4 to 9: both on 4, 5 and 6.
    stand(season, *garden, "Cosmos", "2027-07-01", likely({5, 5, 5, 5, 5, 5}));
    stand(season, *garden, "Ammi", "2027-07-04", likely({5, 5, 5, 5, 5, 5}));
    plan.garden = garden;
    model::Edit edit("x");
    model::Design design;
    design.id = season.designs.nextId();
    design.name = "Supper jar";
    edit.put(design);
    model::Plant bought; // stands in no patch: it asks nothing of the days
    bought.id = season.plants.nextId();
    bought.name = "Rose";
    edit.put(bought);
    const std::vector<Id<model::Plant>> plants{season.plants.begin()->id,
                                               Id<model::Plant>(bought.id.value - 1), bought.id};
    for (std::int64_t n = 0; n < 3; ++n) {
        model::Slot slot;
        slot.id = Id<model::Slot>(n + 1);
        slot.design = design.id;
        slot.label = "Slot";
        slot.count = Stems(1);
        edit.put(slot);
        model::SlotPlant choice;
        choice.id = Id<model::SlotPlant>(n + 1);
        choice.slot = slot.id;
        choice.plant = plants[static_cast<std::size_t>(n)];
        edit.put(choice);
    }
    const auto applied = model::apply(season, edit);
    ASSERT_TRUE(applied.ok());
    season = applied->season;
    const auto strip = stripFigures(season, plan, monday);
    const auto held = stripDesign(season, plan, strip, design.id);
    ASSERT_EQ(held.spans.size(), 1u);
    EXPECT_EQ(strip.dayAt(held.spans[0].first), *Day::fromYmd(2027, 7, 4));
    EXPECT_EQ(strip.dayAt(held.spans[0].second), *Day::fromYmd(2027, 7, 6));
    EXPECT_EQ(stripDesignWords(season, strip, design.id, held),
              QStringLiteral("Supper jar: all slots bloom Sun 4 Jul to Tue 6 Jul"));
}

TEST_F(BloomStripTest, PinsTellTheirCover) {
    auto plan = demoPlan();
    auto cover = std::make_shared<plan::CoverPlan>();
    const auto id = demo().bookings.begin()->id;
    auto& b = cover->bookings[id];
    b = {id, plan::CoverStanding::shortOf, Stems(100), {Stems(60), Stems(72)}, {}};
    plan.cover = cover;
    const auto facts = coverFacts(plan.cover.get(), id);
    ASSERT_TRUE(facts);
    EXPECT_EQ(facts->shortBy, 28);
    EXPECT_DOUBLE_EQ(*facts->share, 0.72);
    EXPECT_FALSE(coverFacts(plan.cover.get(), Id<model::Booking>(9999)));
    EXPECT_FALSE(coverFacts(nullptr, id));
    const auto strip = stripFigures(demo(), plan, monday);
    for (std::size_t i = 0; i < strip.pins.size(); ++i) {
        EXPECT_EQ(strip.pins[i].cover.has_value(), strip.pins[i].booking == id);
        if (strip.pins[i].booking == id) {
            EXPECT_TRUE(pinReadout(strip, {i}).rest.endsWith(QStringLiteral("28 short")));
        }
    }
    using model::Standing;
    using plan::CoverStanding;

    struct Case {
        CoverStanding cover;
        Standing standing;
        const char* words;
    };

    for (const auto& c : {Case{CoverStanding::covered, Standing::booked, "covered"},
                          Case{CoverStanding::covered, Standing::enquiry, "fits"},
                          Case{CoverStanding::covered, Standing::held, "fits"},
                          Case{CoverStanding::tight, Standing::quoted, "tight"},
                          Case{CoverStanding::shortOf, Standing::booked, "5 short"},
                          Case{CoverStanding::notKnown, Standing::booked, "no forecast"},
                          Case{CoverStanding::nothing, Standing::booked, ""}})
        EXPECT_EQ(coverWords(c.standing, CoverFacts{c.cover, 0.5, 5}).toStdString(), c.words);
}

TEST_F(BloomStripTest, ZoomsAboutADayAndStaysInside) {
    const StripSpan all{0, 200};
    const auto near = zoomed(all, 200, 50, 4);
    EXPECT_DOUBLE_EQ(near.days, 50);
    EXPECT_DOUBLE_EQ((50 - near.from) / near.days, 0.25) << "the day stays where it was";
    EXPECT_EQ(zoomed(near, 200, 50, 0.25), all);
    EXPECT_EQ(zoomed(all, 200, 190, 0.5), all) << "no more than all";
    EXPECT_DOUBLE_EQ(zoomed(all, 200, 0, 1000).days, fewestDaysShown);
    EXPECT_DOUBLE_EQ(panned(near, 200, 1000).from, 150);
    EXPECT_DOUBLE_EQ(panned(near, 200, -1000).from, 0);
    EXPECT_DOUBLE_EQ(showing(near, 200, 120).from, 71);
    EXPECT_DOUBLE_EQ(showing(near, 200, 10).from, 10);
    EXPECT_EQ(showing(near, 200, 60), near);
    EXPECT_DOUBLE_EQ(within({0, 5}, 3).days, 3) << "a season shorter than the fewest days";
}

TEST_F(BloomStripTest, TheTableHasTheSameCounts) {
    StripTableModel table;
    QAbstractItemModelTester tester(&table, QAbstractItemModelTester::FailureReportingMode::Fatal);
    EXPECT_EQ(table.rowCount(), 0);
    const auto strip = demoStrip();
    table.setFigures(strip);
    ASSERT_EQ(table.columnCount(), static_cast<int>(strip.bands.size()) + 2);
    bool seen = false;
    for (int row = 0; row < table.rowCount(); ++row) {
        if (table.headerData(row, Qt::Vertical).toString() != QStringLiteral("6 Sep")) continue;
        seen = true;
        const auto today = static_cast<std::size_t>(*strip.today);
        EXPECT_EQ(table.index(row, table.columnCount() - 1).data().toString().remove(QLatin1Char(',')),
                  QString::number(strip.sums[today].likely + strip.leaf[today].likely));
        EXPECT_EQ(table.index(row, 3).data().toString().remove(QLatin1Char(',')),
                  QString::number(strip.bands[3].days[today].likely));
    }
    EXPECT_TRUE(seen);
    const auto lines = table.asText().split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    EXPECT_EQ(lines.size(), table.rowCount() + 1);
    for (const auto& line : lines)
        EXPECT_EQ(line.count(QLatin1Char('\t')), table.columnCount());
}

} // namespace withy::ui
