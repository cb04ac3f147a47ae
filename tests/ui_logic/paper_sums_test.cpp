// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/papers/text_render.h"
#include "core/plan/run_up_plan.h"
#include "core/plan/shed_plan.h"
#include "core/review/orders.h"
#include "tests/ui_logic/laid_run_up.h"
#include "ui/logic/format.h"
#include "ui/logic/models/booking_words.h"
#include "ui/logic/models/kit_rows.h"
#include "ui/logic/models/water_view.h"
#include "ui/logic/paper_shop.h"
#include "ui/logic/papers/drop_answers.h"
#include "ui/logic/shed/packing_words.h"
#include "ui/logic/shed/return_words.h"
#include "ui/logic/shed/shelf_rows.h"
#include "ui/logic/shed_words.h"
#include "ui/logic/work_hours.h"

#include <gmock/gmock.h>

/// What one paper says, every other paper and the pages say too.
namespace withy::ui::tests {

namespace {

using model::HazardKind;
using testing::HasSubstr;
using testing::Not;

} // namespace

class PaperSums : public ChangedDemo {
protected:
    void replan() { plan = demoPlan(season); }

    [[nodiscard]] const plan::BookingPlan& ofSupper() const { return *plan.bookings.at(roofSupper); }

    [[nodiscard]] std::string paper(PaperKind kind) const {
        return papers::renderText(paperOf(kind, {season, plan, roofSupper, {}}));
    }

    /// One plant of the supper's jar that may do this, and no other plant anything.
    std::string onlyHazard(HazardKind kind) {
        season.plantHazards = {};
        const auto plant = ofSupper().needs.front().plant;
        season.plantHazards.put({Id<model::PlantHazard>(1), plant, kind, "x", {}, {}});
        return season.plants.find(plant)->name;
    }

    /// The supper's jars with two besides for what breaks.
    void addSpare() {
        auto line = *season.lines.find(Id<model::Line>(1));
        line.sparePieces = Pieces(2);
        season.lines.put(line);
        replan();
    }
};

TEST_F(PaperSums, EveryHazardIsUnderTheSameHeadOnEveryPaper) {
    const std::pair<HazardKind, const char*> heads[] = {
        {HazardKind::sap, "Gloves and sleeves"},    {HazardKind::skin, "Gloves and sleeves"},
        {HazardKind::thorns, "Gloves and sleeves"}, {HazardKind::poison, "Harmful if eaten"},
        {HazardKind::food, "Harmful if eaten"},     {HazardKind::pets, "Harmful if eaten"},
        {HazardKind::pollen, "Pollen or scent"},    {HazardKind::scent, "Pollen or scent"}};
    for (const auto& [kind, head] : heads) {
        const auto name = onlyHazard(kind);
        for (const auto paperKind : {PaperKind::prepSheet, PaperKind::makeUpCard, PaperKind::cuttingList}) {
            SCOPED_TRACE(std::string(model::wordOf(kind)) + ", " + utf8(paperTitle(paperKind)));
            const auto words = paper(paperKind);
            EXPECT_THAT(words, HasSubstr(head));
            for (const char* other : {"Gloves and sleeves", "Harmful if eaten", "Pollen or scent"}) {
                if (std::string(other) == head) continue;
                EXPECT_THAT(words, Not(HasSubstr(other)));
            }
            EXPECT_THAT(words, HasSubstr(name));
            EXPECT_EQ(words.find("a vet at once") != std::string::npos,
                      std::string(head) == "Harmful if eaten");
            EXPECT_THAT(words, Not(HasSubstr("edible")));
        }
    }
}

TEST_F(PaperSums, ADriverIsToldOfGlovesForWhatTheyAreFor) {
    const auto care = [&] {
        const auto answers = dropAnswers(season, ofSupper(), *season.bookings.find(roofSupper), nullptr);
        return papers::words(answers.back().words);
    };
    onlyHazard(HazardKind::thorns);
    EXPECT_THAT(care(), HasSubstr("; gloves"));
    EXPECT_THAT(care(), Not(HasSubstr("sap")));
    onlyHazard(HazardKind::sap);
    EXPECT_THAT(care(), HasSubstr("; gloves for sap"));
    onlyHazard(HazardKind::pollen);
    EXPECT_THAT(care(), Not(HasSubstr("gloves")));
}

/// Another booking moves the work to the day before: all papers follow.
TEST_F(PaperSums, EveryPaperHasTheHoursOfTheRunUp) {
    plan = withRunUp(season, std::move(plan));
    auto runUp = std::make_shared<plan::RunUpPlan>(*plan.runUp);
    for (auto& step : runUp->steps) {
        if (step.bookings != std::vector{roofSupper}) continue;
        const bool make = step.key.step == plan::StepKind::make;
        if (!make && step.key.step != plan::StepKind::drive) continue;
        const Minutes by(make ? 1440 : 60);
        step.from = step.from - by;
        step.to = step.to - by;
    }
    plan.runUp = runUp;
    const auto own = ofSupper();
    const auto hours = workHours(season, plan, roofSupper);
    EXPECT_EQ(hours.makeUpStart.day, own.makeUpStart.day - 1);
    EXPECT_EQ(hours.driveStart, own.driveStart - Minutes(60));
    const auto order = [&](PaperKind kind) { return paperOf(kind, {season, plan, roofSupper, {}}); };
    const auto day = utf8(shortDay(hours.makeUpStart.day));
    EXPECT_EQ(order(PaperKind::prepSheet).key, day);
    EXPECT_EQ(order(PaperKind::kitList).key, day);
    EXPECT_THAT(paper(PaperKind::kitList), Not(HasSubstr(utf8(shortDay(own.makeUpStart.day)))));
    EXPECT_EQ(order(PaperKind::packingSheet).keyNote, "leave by " + utf8(planBy(hours.driveStart)));
    // A card has the hours of its own design.
    const auto card = order(PaperKind::makeUpCard);
    const auto jar = season.lines.find(Id<model::Line>(1))->design;
    const auto ofJar = workHours(season, plan, roofSupper, jar);
    EXPECT_EQ(card.name, season.designs.find(jar)->name);
    EXPECT_EQ(card.key, day);
    EXPECT_EQ(card.keyNote, utf8(planHours(ofJar.makeUpStart, ofJar.makeUpEnd)));
    EXPECT_GE(ofJar.makeUpStart, hours.makeUpStart);
    EXPECT_LE(ofJar.makeUpEnd, hours.makeUpEnd);
    // Without a run-up, and of what is delivered, the booking's own plan speaks.
    plan.runUp.reset();
    EXPECT_EQ(workHours(season, plan, roofSupper).makeUpStart, own.makeUpStart);
}

TEST_F(PaperSums, RibbonIsShortOnPaperByWhatTheShelfReallyLeaves) {
    ASSERT_TRUE(plan.shed);
    auto booked = std::make_shared<plan::BookingPlan>(ofSupper());
    ASSERT_FALSE(booked->kit.ribbons.empty());
    auto& need = booked->kit.ribbons.front();
    need.onHand = need.needed + Millimetres(3000); // enough for this booking alone
    need.missing = Millimetres(0);
    plan.bookings[roofSupper] = booked;
    auto shed = std::make_shared<plan::ShedPlan>(*plan.shed);
    bool cut = false;
    for (auto& day : shed->ribbon) {
        if (std::find(day->bookings.begin(), day->bookings.end(), roofSupper) == day->bookings.end())
            continue;
        auto changed = std::make_shared<plan::RibbonDay>(*day);
        for (auto& ribbon : changed->ribbons) {
            if (ribbon->ribbon != need.ribbon) continue;
            auto lacks = std::make_shared<plan::RibbonCutPlan>(*ribbon);
            lacks->counted = true;
            lacks->missingLength = Millimetres(5000);
            ribbon = lacks;
            cut = true;
        }
        day = changed;
    }
    ASSERT_TRUE(cut);
    plan.shed = shed;
    EXPECT_EQ(ribbonLacking(season, shed.get(), roofSupper, need), Millimetres(5000));
    EXPECT_EQ(ribbonLacking(season, nullptr, roofSupper, need), Millimetres(0));
    EXPECT_THAT(paper(PaperKind::prepSheet), HasSubstr("5.00 m missing: "));
    EXPECT_THAT(paper(PaperKind::prepSheet), HasSubstr("Bookings cut before it"));
    EXPECT_THAT(paper(PaperKind::kitList), HasSubstr("5.00 m"));
    bool onPage = false;
    for (const auto& row : kitSheet(season, ofSupper(), shed.get()).rows)
        for (const auto& cell : row.cells)
            onPage = onPage || (row.key.startsWith(QStringLiteral("ribbon")) && cell.figure &&
                                cell.figure->words == QStringLiteral("5.00 m"));
    EXPECT_TRUE(onPage);
}

/// 46 honey jars are owned and 24 needed, and 28 went out that nobody wrote back: 18 are there for certain.
TEST_F(PaperSums, WhatNobodyWroteBackIsNotCalledOnTheShelf) {
    plan::PlanOptions options;
    options.today = model::sample::day(2027, 9, 6);
    const auto now = plan::plan(season, options);
    const auto words = plainWords(kitAnswer(season, *now.bookings.at(roofSupper), now.shed.get()));
    EXPECT_TRUE(words.startsWith(QStringLiteral("Enough, if what nobody wrote back is home: 28 Honey jar")))
        << words.toStdString();
}

TEST_F(PaperSums, WhatIsSignedForIsWhatIsAskedAfter) {
    addSpare();
    const auto home = comingHome(season, *season.bookings.find(roofSupper));
    const auto facts = returnFacts(season, ofSupper(), ofSupper().makeUpStart.day);
    ASSERT_FALSE(home.empty());
    ASSERT_EQ(home.size(), facts.size());
    std::int64_t out = 0;
    for (const auto& each : home) {
        const auto asked = std::find_if(facts.begin(), facts.end(),
                                        [&](const auto& f) { return f.container == each.container; });
        ASSERT_NE(asked, facts.end());
        EXPECT_EQ(each.out, asked->out) << asked->name.toStdString();
        out = std::max(out, each.out);
    }
    EXPECT_EQ(out, 26); // resources/demo/line.csv: 24 jars, and the two spare
    EXPECT_THAT(paper(PaperKind::handOver), HasSubstr("spare, for what breaks"));
}

TEST_F(PaperSums, SparePiecesAreSaidWhereverPiecesAreCounted) {
    const auto said = [&] { return plainWords(piecesAnswer(season, roofSupper, &ofSupper())).toStdString(); };
    const auto inList = [&] {
        std::vector<const model::Line*> lines;
        for (const auto& line : season.lines)
            if (line.booking == roofSupper) lines.push_back(&line);
        return piecesWords(season, lines).toStdString();
    };
    EXPECT_THAT(said(), HasSubstr("26 pieces, "));
    EXPECT_EQ(inList(), "24 jars and 2 more");
    addSpare();
    EXPECT_THAT(said(), HasSubstr("26 pieces and 2 spare, "));
    EXPECT_EQ(inList(), "24 jars and 2 more, 2 spare");
    EXPECT_THAT(paper(PaperKind::packingSheet), HasSubstr("26 pieces and 2 spare"));
    EXPECT_THAT(paper(PaperKind::kitList), HasSubstr("24 Supper jar and 2 spare"));
    EXPECT_THAT(paper(PaperKind::bookingSummary), HasSubstr("24 Supper jar and 2 spare"));
    EXPECT_THAT(paper(PaperKind::makeUpCard), HasSubstr("24 jars and 2 spare"));
    const auto orders = review::seasonOrders(season, plan);
    for (const auto& row : orders.rows)
        if (row.booking == roofSupper) {
            EXPECT_EQ(row.pieces, Pieces(26));
            EXPECT_EQ(row.spare, Pieces(2));
        }
    EXPECT_THAT(papers::renderText(paperOf(PaperKind::seasonOrders, {season, plan, std::nullopt, {}})),
                HasSubstr("26 + 2"));
}

TEST_F(PaperSums, ASundryIsToldInItsUnitTheSameEverywhere) {
    model::Sundry sundry;
    const auto told = [&](const char* unit, std::int64_t amount) {
        sundry.unit = unit;
        return sundryAmount(&sundry, amount).replace(QChar::Nbsp, QLatin1Char('_')).toStdString();
    };
    EXPECT_EQ(told("piece", 24000), "24");
    EXPECT_EQ(told("metre", 14400), "14.4_m");
    EXPECT_EQ(told("roll", 2500), "2.5_roll");
    EXPECT_EQ(told("piece", 1500000000), "1,500,000");
    EXPECT_EQ(told("m", 20), "0.02_m");
    EXPECT_EQ(told("metre", -1500), "-1.5_m");
    EXPECT_EQ(sundryAmount(nullptr, 3000).toStdString(), "3");
    ASSERT_FALSE(ofSupper().kit.sundries.empty());
    for (const auto& need : ofSupper().kit.sundries) {
        const auto amount = sundryAmount(season.sundries.find(need.sundry), need.total.needed);
        for (const auto kind : {PaperKind::prepSheet, PaperKind::kitList})
            EXPECT_THAT(paper(kind), HasSubstr(utf8(amount)));
        bool onPage = false;
        for (const auto& row : kitSheet(season, ofSupper(), plan.shed.get()).rows)
            for (const auto& cell : row.cells)
                onPage = onPage || (cell.figure && cell.figure->words.startsWith(amount));
        EXPECT_TRUE(onPage) << amount.toStdString();
    }
    EXPECT_THAT(paper(PaperKind::kitList), Not(HasSubstr("piece")));
    EXPECT_THAT(paper(PaperKind::prepSheet), Not(HasSubstr(" metre ")));
}

/// A check that falls on the end of the event is done before leaving; a dry foot has its day.
TEST_F(PaperSums, WaterIsCheckedBeforeTheyLeave) {
    const auto& booking = *season.bookings.find(roofSupper);
    const auto at = booking.eventEnd - Minutes(95);
    EXPECT_EQ(checkWhen(booking, at), QStringLiteral("at %1 on %2").arg(planBy(at), shortDay(at.day)));
    EXPECT_EQ(checkWhen(booking, at, at.day), QStringLiteral("at %1").arg(planBy(at)));
    const auto end = QStringLiteral("before you leave, by %1 on %2")
                         .arg(planBy(booking.eventEnd), shortDay(booking.eventEnd.day));
    EXPECT_EQ(checkWhen(booking, booking.eventEnd), end);
    ASSERT_TRUE(plan.shed);
    auto shed = std::make_shared<plan::ShedPlan>(*plan.shed);
    auto packed = std::make_shared<plan::BookingPacking>(*shed->packing.at(roofSupper));
    ASSERT_FALSE(packed->waters.empty());
    for (auto& water : packed->waters) {
        water.checkAt = booking.eventEnd;
        water.dryAt = booking.eventEnd + Minutes(600);
    }
    packed->checkAt = booking.eventEnd;
    shed->packing[roofSupper] = packed;
    plan.shed = shed;
    const auto lines = waterLines(season, *packed).front();
    EXPECT_THAT(lines.toStdString(), HasSubstr("check and top up " + utf8(end)));
    EXPECT_THAT(lines.toStdString(),
                HasSubstr("the stem ends are dry at " + utf8(planBy(booking.eventEnd + Minutes(600))) +
                          " on " + utf8(shortDay((booking.eventEnd + Minutes(600)).day))));
    EXPECT_THAT(paper(PaperKind::packingSheet), HasSubstr("before you leave, by "));
    EXPECT_THAT(paper(PaperKind::packingSheet), Not(HasSubstr("check at")));
    EXPECT_THAT(paper(PaperKind::tablePlan), HasSubstr("check and top up " + utf8(end)));
}

TEST_F(PaperSums, WaterStandsToTheHourItIsReckonedTo) {
    auto booking = *season.bookings.find(roofSupper);
    booking.lookGoodUntil = booking.eventEnd + Minutes(1440);
    season.bookings.put(booking);
    const auto jar = season.lines.find(Id<model::Line>(1))->design;
    const auto words =
        waterView(season, plan, jar, Day::fromYmd(2027, 9, 6)).sentences.join(QLatin1Char(' '));
    EXPECT_TRUE(
        words.contains(QStringLiteral("from the make-up to %1, %2, for Library roof supper.")
                           .arg(shortDay(booking.lookGoodUntil->day), planBy(*booking.lookGoodUntil))))
        << words.toStdString();
}

} // namespace withy::ui::tests
