// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/model/sample.h"
#include "tests/support/season_text.h"
#include "ui/logic/answers/garden_answers.h"
#include "ui/logic/edits/garden_edits.h"
#include "ui/logic/edits/record_edits.h"
#include "ui/logic/format.h"
#include "ui/logic/garden_words.h"
#include "ui/logic/plant_catalogue.h"
#include "ui/logic/starting_seasons.h"

#include <gtest/gtest.h>

namespace withy::ui {

namespace {

using model::Value;

model::Season edited(const model::Season& season, const model::Edit& edit) {
    auto applied = model::apply(season, edit);
    EXPECT_TRUE(applied.ok());
    return applied.ok() ? applied->season : season;
}

const model::PlantFact* fact(const model::Season& season, std::int64_t plant, const char* field) {
    for (const auto& f : season.plantFacts) {
        if (f.plant.value == plant && f.fact == field) return &f;
    }
    return nullptr;
}

/// Three patches, written down in another order than they are walked.
model::Season threePatches() {
    auto season = model::sample::season();
    model::Edit edit("garden");
    edit.put(model::sample::plant(1, "Zinnia, coral"));
    edit.put(model::sample::plant(2, "Ammi"));
    for (int id = 1; id <= 3; ++id) {
        model::Patch p;
        p.id = Id<model::Patch>(id);
        p.plant = Id<model::Plant>(id == 3 ? 2 : 1);
        p.label = "Bed " + std::to_string(id);
        p.place = 4 - id;
        edit.put(p);
    }
    return edited(season, edit);
}

} // namespace

TEST(PlantFact, TheGrowersOwnFigureMakesItsBasisTheirsInOneStep) {
    const auto season = seasonWithPlants(emptySeason(2027).theSettings());
    const auto id = season.plants.begin()->id;
    ASSERT_NE(fact(season, id.value, "vase_life_min_days"), nullptr);
    ASSERT_NE(fact(season, id.value, "vase_life_min_days")->basis, Basis::mine);
    const auto applied = model::apply(season, edits::setField(season, {model::TableKind::plants, id.value},
                                                              "vase_life_min_days", Value(9.0)));
    ASSERT_TRUE(applied.ok());
    EXPECT_EQ(applied->season.plants.find(id)->vaseLifeMinDays, 9.0);
    EXPECT_EQ(fact(applied->season, id.value, "vase_life_min_days")->basis, Basis::mine);
    EXPECT_EQ(factBasis(applied->season, id, "vase_life_min_days").toStdString(), "yours");
    const auto back = model::apply(applied->season, applied->inverse);
    EXPECT_EQ(exchange::exportSeason(back->season), exchange::exportSeason(season));
}

TEST(PlantFact, AFigureTakenAwayTakesItsBasisWithItAndIsNotKnown) {
    const auto season = seasonWithPlants(emptySeason(2027).theSettings());
    const auto id = season.plants.begin()->id;
    const auto after =
        edited(season, edits::setField(season, {model::TableKind::plants, id.value}, "q10", Value()));
    EXPECT_FALSE(after.plants.find(id)->q10.has_value());
    EXPECT_EQ(fact(after, id.value, "q10"), nullptr);
    EXPECT_EQ(factBasis(after, id, "q10").toStdString(), "not known");
}

TEST(PlantFact, TheSameFigureAgainIsNoEdit) {
    const auto season = seasonWithPlants(emptySeason(2027).theSettings());
    const auto* plant = &*season.plants.begin();
    const auto applied =
        model::apply(season, edits::setField(season, {model::TableKind::plants, plant->id.value}, "q10",
                                             Value(*plant->q10)));
    EXPECT_TRUE(applied->done.empty());
}

TEST(PlantFact, NamesLooksAndNotesHaveNoBasis) {
    for (const char* field : {"name", "botanical_name", "focal", "colour_1", "shape", "notes"})
        EXPECT_FALSE(edits::isPlantFact(field)) << field;
    // Every fact the catalogue gives a basis for is one.
    for (const auto& f : plantCatalogue().plantFacts)
        EXPECT_TRUE(edits::isPlantFact(f.fact)) << f.fact;
}

TEST(Catalogue, OffersWhatTheSeasonHasNot) {
    const auto empty = emptySeason(2027);
    EXPECT_EQ(catalogueOffers(empty, {}, 1000).size(), plantCatalogue().plants.size());
    EXPECT_TRUE(catalogueOffers(seasonWithPlants(empty.theSettings()), {}, 1000).empty());
    const auto offers = catalogueOffers(empty, QStringLiteral("AMMI"));
    ASSERT_FALSE(offers.empty());
    EXPECT_EQ(offers.front().name.toStdString(), "Ammi");
    EXPECT_GT(offers.front().facts, 10);
    EXPECT_TRUE(catalogueOffers(empty, QStringLiteral("no such plant")).empty());
    EXPECT_LE(catalogueOffers(empty, QStringLiteral("a")).size(), 12u);
}

TEST(Catalogue, APlantComesWithItsFactsAndCautionsAsOneStep) {
    const auto empty = emptySeason(2027);
    const auto offer = catalogueOffers(empty, QStringLiteral("Ammi")).front();
    Id<model::Plant> made;
    const auto season = edited(empty, edits::addFromCatalogue(empty, offer.plant, made));
    EXPECT_EQ(season.plants.find(made)->name, "Ammi");
    EXPECT_EQ(static_cast<int>(season.plantFacts.size()), offer.facts);
    EXPECT_EQ(static_cast<int>(season.plantHazards.size()), offer.cautions);
    EXPECT_TRUE(model::check(season).empty());
    const auto again = catalogueOffers(season, QStringLiteral("Ammi majus"));
    EXPECT_TRUE(again.empty()) << "it is there already";
}

TEST(Catalogue, WhatIsNotThereMakesNothing) {
    Id<model::Plant> made;
    EXPECT_TRUE(edits::addFromCatalogue(emptySeason(2027), Id<model::Plant>(99999), made).empty());
    EXPECT_TRUE(edits::duplicatePlant(emptySeason(2027), Id<model::Plant>(1), made).empty());
    EXPECT_TRUE(edits::setField(emptySeason(2027), {model::TableKind::plants, 1}, "q10", Value(2.0)).empty());
}

TEST(Duplicate, ThePlantAgainUnderANameOfItsOwn) {
    const auto season = seasonWithPlants(emptySeason(2027).theSettings());
    const auto* first = &*season.plants.begin();
    Id<model::Plant> made;
    const auto once = edited(season, edits::duplicatePlant(season, first->id, made));
    EXPECT_EQ(once.plants.find(made)->name, first->name + " 2");
    Id<model::Plant> third;
    const auto twice = edited(once, edits::duplicatePlant(once, made, third));
    EXPECT_EQ(twice.plants.find(third)->name, first->name + " 3");
    ASSERT_NE(fact(twice, third.value, "q10"), nullptr);
    EXPECT_EQ(fact(twice, third.value, "q10")->basis, fact(season, first->id.value, "q10")->basis);
}

TEST(NewWalk, ABlankRowForEachPatchInWalkingOrderAndBlanksStayBlank) {
    const auto season = threePatches();
    const auto day = model::sample::day(2027, 9, 6);
    std::int64_t first = 0;
    const auto walked = edited(season, edits::newWalk(season, day, first));
    ASSERT_EQ(walked.walks.size(), 3u);
    std::vector<std::int64_t> patches;
    for (const auto& w : walked.walks) {
        patches.push_back(w.patch.value);
        EXPECT_FALSE(w.readyNow || w.withinThreeDays || w.withinWeek);
    }
    EXPECT_EQ(patches, (std::vector<std::int64_t>{3, 2, 1}));
    EXPECT_EQ(walked.walks.find(Id<model::Walk>(first))->patch.value, 3);
    EXPECT_TRUE(edits::newWalk(walked, day, first).empty()) << "every patch has its row";
    EXPECT_EQ(plainWords(patchesAnswer(walked)).toStdString(),
              plainWords(patchesAnswer(season)).toStdString())
        << "a blank row is no count";
}

TEST(GardenAnswers, SayWhatIsThere) {
    struct Case {
        const char* name;
        Answer answer;
        const char* words;
    };

    auto season = threePatches();
    model::Walk walk;
    walk.id = Id<model::Walk>(1);
    walk.date = model::sample::day(2027, 9, 5);
    walk.patch = Id<model::Patch>(2);
    walk.readyNow = Stems(0); // a nought is a count
    const auto walked = edited(season, model::Edit("walk").put(walk));
    const auto nothing = model::sample::season();
    const Case cases[] = {
        {"no patch", patchesAnswer(nothing), "No patch yet."},
        {"three patches", patchesAnswer(season), "3 patches of 2 plants; none has a walk yet."},
        {"one walked", patchesAnswer(walked), "3 patches of 2 plants; 2 have no walk yet."},
        {"plants", plantsAnswer(season), "2 plants, 2 of them in a patch."},
        {"walks", walksAnswer(walked), "Last walked on Sun 5 Sep: 1 of 3 patches has a count."},
        {"weather", weatherAnswer(nothing), "No weather yet."},
        {"stock", stockAnswer(nothing, std::nullopt), "Nothing stands in the store."},
    };
    for (const auto& c : cases) {
        SCOPED_TRACE(c.name);
        EXPECT_TRUE(plainWords(c.answer).startsWith(QString::fromUtf8(c.words)))
            << plainWords(c.answer).toStdString();
    }
}

TEST(GardenWords, TheLastWalkAndTheOneBefore) {
    auto season = threePatches();
    model::Edit edit("walks");
    for (int n = 1; n <= 2; ++n) {
        model::Walk w;
        w.id = Id<model::Walk>(n);
        w.date = model::sample::day(2027, 9, n == 1 ? 5 : 6);
        w.patch = Id<model::Patch>(1);
        w.readyNow = Stems(40 + n);
        edit.put(w);
    }
    season = edited(season, edit);
    EXPECT_EQ(lastWalkWords(season, Id<model::Patch>(1)).toStdString(), "42, Mon 6 Sep");
    EXPECT_EQ(lastWalkWords(season, Id<model::Patch>(2)).toStdString(), "no walk yet");
    EXPECT_EQ(walkBeforeWords(season, Id<model::Walk>(2)).toStdString(), "41, Sun 5 Sep");
    EXPECT_EQ(walkBeforeWords(season, Id<model::Walk>(1)).toStdString(), "no walk yet");
    EXPECT_EQ(walkingPlace(season, Id<model::Patch>(3)).toStdString(), "1");
    EXPECT_EQ(walkingPlace(season, Id<model::Patch>(1)).toStdString(), "3");
}

} // namespace withy::ui
