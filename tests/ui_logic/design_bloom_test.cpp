// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui_logic/planned_demo.h"
#include "ui/logic/models/bloom_strip_model.h"
#include "ui/logic/models/design_bloom.h"
#include "ui/logic/models/strip_design.h"
#include "ui/logic/models/week_steps.h"

#include <algorithm>

namespace withy::ui {

/// What can be made of what is in bloom, week by week.
class DesignBloomTest : public tests::PlannedDemo {
protected:
    static Day monday(int month, int day) { return weekOf(*Day::fromYmd(2027, month, day)); }

    static Id<model::Design> named(const char* name) {
        for (const auto& d : season().designs)
            if (d.name == name) return d.id;
        ADD_FAILURE() << name;
        return {};
    }
};

// Tulips and daffodils flower in spring, dahlias and zinnias from summer to the frost: common practice, no
// source.
TEST_F(DesignBloomTest, EachInItsSeason) {
    const auto spring = designBlooms(season(), plan(), monday(5, 3));
    const auto autumn = designBlooms(season(), plan(), monday(9, 6));
    ASSERT_EQ(autumn.size(), season().designs.size());
    EXPECT_TRUE(autumn.at(named("Supper jar")).inWeek);
    EXPECT_FALSE(spring.at(named("Supper jar")).inWeek);
    EXPECT_TRUE(spring.at(named("Mayday tumbler")).inWeek);
    EXPECT_FALSE(autumn.at(named("Mayday tumbler")).inWeek);
    ASSERT_TRUE(autumn.at(named("Mayday tumbler")).first);
    EXPECT_LT(*autumn.at(named("Mayday tumbler")).first, *Day::fromYmd(2027, 6, 1));
}

// The strip's bracket is reckoned by itself, over the strip's own days.
TEST_F(DesignBloomTest, AgreesWithTheBracketOfTheStrip) {
    const auto week = monday(9, 6);
    const auto blooms = designBlooms(season(), plan(), week);
    const auto figures = stripFigures(season(), plan(), Day::fromYmd(2027, 9, 6));
    int bloomed = 0;
    for (const auto& [design, bloom] : blooms) {
        SCOPED_TRACE(season().designs.find(design)->name);
        const auto held = stripDesign(season(), plan(), figures, design);
        if (held.spans.empty()) continue;
        bool inSpan = false;
        for (const auto& [from, to] : held.spans)
            inSpan = inSpan || (figures.dayAt(from) <= week + 6 && week <= figures.dayAt(to));
        EXPECT_EQ(bloom.inWeek, inSpan);
        ASSERT_TRUE(bloom.first);
        // The strip begins a little before the season.
        EXPECT_EQ(*bloom.first,
                  std::max(figures.dayAt(held.spans.front().first), season().theSettings().firstDay));
        ++bloomed;
    }
    EXPECT_GT(bloomed, 10);
}

TEST_F(DesignBloomTest, WhatDoesNotGrowHereAsksForNothing) {
    auto bought = season();
    bought.patches = {};
    for (const auto& [design, bloom] : designBlooms(bought, plan(), monday(9, 6))) {
        EXPECT_TRUE(bloom.inWeek);
        EXPECT_FALSE(bloom.first);
    }
    EXPECT_TRUE(designBlooms(season(), plan::Plan(), monday(9, 6)).empty()) << "no forecast, no claim";
}

TEST_F(DesignBloomTest, InWords) {
    DesignBlooms blooms{{Id<model::Design>(1), {true, Day::fromYmd(2027, 7, 23)}},
                        {Id<model::Design>(2), {false, Day::fromYmd(2027, 5, 30)}}};
    EXPECT_EQ(designsInBloomWords(blooms).toStdString(), "1 of 2 designs can be made this week.");
    EXPECT_EQ(inBloomWords(*Day::fromYmd(2027, 9, 6)).toStdString(), "In bloom 6–12 Sep");
    EXPECT_EQ(outOfBloomWords(blooms[Id<model::Design>(2)]).toStdString(), "from 30 May");
    EXPECT_EQ(outOfBloomWords({false, {}}).toStdString(), "not this season");
}

} // namespace withy::ui
