// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/model/sample.h"
#include "tests/support/season_text.h"
#include "ui/logic/edits/record_edits.h"
#include "ui/logic/fields/field_text.h"
#include "ui/logic/starting_seasons.h"

#include <gmock/gmock.h>

namespace withy::ui {

namespace {

using model::Ref;
using model::Season;
using model::TableKind;
using testing::HasSubstr;

/// A booking with a line of one design, which has a slot of one plant that also grows in a patch.
Season small() {
    auto season = model::sample::season();
    season.plants.put(model::sample::plant(1, "Zinnia, coral"));
    model::Container jar;
    jar.id = Id<model::Container>(1);
    jar.name = "Honey jar";
    jar.innerRim = Millimetres(75);
    jar.innerDepth = Millimetres(100);
    season.containers.put(jar);
    for (std::int64_t i = 1; i <= 3; ++i) {
        model::Design design;
        design.id = Id<model::Design>(i);
        design.name = "Design " + std::to_string(i);
        if (i < 3) design.container = jar.id;
        season.designs.put(design);
        model::Slot slot;
        slot.id = Id<model::Slot>(i);
        slot.design = design.id;
        slot.label = "Round";
        season.slots.put(slot);
        model::SlotPlant choice;
        choice.id = Id<model::SlotPlant>(i);
        choice.slot = slot.id;
        choice.plant = Id<model::Plant>(1);
        season.slotPlants.put(choice);
    }
    for (std::int64_t i = 1; i <= 2; ++i) {
        model::Patch patch;
        patch.id = Id<model::Patch>(i);
        patch.plant = Id<model::Plant>(1);
        patch.label = "Bed " + std::to_string(i);
        season.patches.put(patch);
    }
    season.bookings.put(model::sample::booking(1, "Supper"));
    model::Line line;
    line.id = Id<model::Line>(1);
    line.booking = Id<model::Booking>(1);
    line.design = Id<model::Design>(1);
    season.lines.put(line);
    return season;
}

void expectThereAndBack(const Season& season, const model::Edit& edit) {
    const auto applied = model::apply(season, edit);
    ASSERT_TRUE(applied.ok()) << problemWords(season, applied.error()).toStdString();
    const auto back = model::apply(applied->season, applied->inverse);
    ASSERT_TRUE(back.ok());
    EXPECT_EQ(exchange::exportSeason(back->season), exchange::exportSeason(season));
}

} // namespace

TEST(ErasePlan, SaysWhatStandsInTheWay) {
    const auto season = small();
    const auto plan = edits::planErase(season, {{TableKind::plants, 1}});
    EXPECT_FALSE(plan.free());
    EXPECT_FALSE(plan.blankingHelps());
    EXPECT_EQ(plan.sentence.toStdString(),
              "Zinnia, coral is in 2 patches and 3 designs. Take it out there first.");
    EXPECT_FALSE(model::apply(season, edits::eraseRecords(season, plan.wanted)).ok());
}

TEST(ErasePlan, OffersToLeaveBlankWhatMayBeBlank) {
    const auto season = small();
    const std::vector<Ref> jar{{TableKind::containers, 1}};
    const auto plan = edits::planErase(season, jar);
    EXPECT_TRUE(plan.blankingHelps());
    EXPECT_EQ(plan.sentence.toStdString(),
              "Honey jar is in 2 designs. Take it out there first, or leave it blank there.");
    const auto edit = edits::eraseAndBlank(season, jar);
    expectThereAndBack(season, edit);
    const auto after = model::apply(season, edit).value().season;
    EXPECT_FALSE(after.designs.find(Id<model::Design>(1))->container);
    EXPECT_TRUE(after.containers.empty());
}

TEST(ErasePlan, PartsGoWithTheWhole) {
    const auto season = small();
    const auto design = edits::planErase(season, {{TableKind::designs, 3}});
    EXPECT_TRUE(design.free());
    EXPECT_EQ(design.sentence.toStdString(), "It takes 1 slot and 1 plant of a slot with it.");
    expectThereAndBack(season, edits::eraseRecords(season, design.wanted));
    const auto used = edits::planErase(season, {{TableKind::designs, 1}});
    EXPECT_EQ(used.sentence.toStdString(), "Design 1 is in Supper. Take it out there first.");
    // Together with the booking that uses it, it may go.
    EXPECT_TRUE(edits::planErase(season, {{TableKind::designs, 1}, {TableKind::bookings, 1}}).free());
}

TEST(ErasePlan, EveryRecordOfTheDemoSeasonIsJudgedAsTheModelJudges) {
    const auto season = demoSeason();
    int freed = 0;
    int held = 0;
    for (const auto& table : model::allTables()) {
        if (table.kind == TableKind::settings) continue;
        int left = 12;
        model::forEachRecord(season, table.kind, [&](std::int64_t id, const void*) {
            if (left-- <= 0) return;
            SCOPED_TRACE(std::string(table.name) + " " + std::to_string(id));
            const auto plan = edits::planErase(season, {{table.kind, id}});
            const auto applied = model::apply(season, edits::eraseRecords(season, plan.wanted));
            EXPECT_EQ(applied.ok(), plan.free()) << plan.sentence.toStdString();
            if (plan.free()) {
                ++freed;
                expectThereAndBack(season, edits::eraseRecords(season, plan.wanted));
            } else {
                ++held;
                EXPECT_THAT(plan.sentence.toStdString(), HasSubstr("Take it out there first"));
                const auto blanked = model::apply(season, edits::eraseAndBlank(season, plan.wanted));
                EXPECT_EQ(blanked.ok(), plan.blankingHelps());
            }
        });
    }
    EXPECT_GT(freed, 50);
    EXPECT_GT(held, 20);
}

} // namespace withy::ui
