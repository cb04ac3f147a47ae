// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/designs/solids.h"
#include "core/plan/piece_colours.h"
#include "core/plan/piece_water.h"
#include "tests/drawings/test_designs.h"
#include "ui/logic/english_plurals.h"
#include "ui/logic/models/colour_view.h"
#include "ui/logic/models/water_view.h"

#include <cmath>
#include <numbers>

#include <gtest/gtest.h>

/// What a design shows and how its water falls, joined over a season.
namespace withy::ui {
namespace {

/// The first test design, booked: 6 jars and a wish for coral, blue and the rest open.
struct Booked {
    TestDesigns designs = testDesigns();
    model::Season& season = designs.season;
    Id<model::Design> jar = designs.all.front().design;
    Id<model::Booking> booking{1};

    Booked() {
        model::Settings s;
        s.firstDay = *Day::fromYmd(2027, 1, 1);
        s.lastDay = *Day::fromYmd(2027, 12, 31);
        season.settings.put(s);
        model::Booking b;
        b.id = booking;
        b.title = "Barn supper";
        b.eventStart = *LocalTime::parse("2027-09-11T18:00");
        b.eventEnd = *LocalTime::parse("2027-09-11T23:00");
        season.bookings.put(b);
        model::Line line;
        line.id = Id<model::Line>(1);
        line.booking = booking;
        line.design = jar;
        line.pieces = Pieces(6);
        line.sparePieces = Pieces(1);
        season.lines.put(line);
    }

    void wish(std::int64_t id, const char* name, Colour colour, std::optional<double> share) {
        season.bookingColours.put({Id<model::BookingColour>(id), booking, colour, name, share});
    }
};

const Colour coral{0xE8, 0x70, 0x5A}, blue{0x30, 0x50, 0xC0}, plum{0x83, 0x30, 0x4F};

double circle(double d) {
    return std::numbers::pi * d * d / 4;
}

// Areas by hand: circles of 95 and 55 mm and so on, the ribbon as a rectangle.
TEST(PieceColours, AreVisibleAreasTimesStems) {
    Booked b;
    const auto parts = plan::shownIn(b.season, b.booking);
    double heads = 0, ribbon = 0;
    for (const auto& part : parts) {
        const auto area = designs::shownArea(part.thing);
        ASSERT_TRUE(area) << part.thing.subject;
        (part.slot ? heads : ribbon) += *area * static_cast<double>(part.thing.count);
    }
    const double leaf = std::numbers::pi / 4 * (90 * 0.66) * (90 * 1.15);
    const double jar = 2 * leaf + 2 * circle(75) + 2 * circle(95) + 3 * circle(55) + circle(28);
    EXPECT_NEAR(heads, 6 * jar, 1e-6 * jar) << "six jars: the spare one stays in the box";
    // 15 mm wide, once across a neck of 60 mm, two tails of 70 mm.
    EXPECT_NEAR(ribbon, 6 * 15.0 * (60 + 2 * 70), 1e-6);
}

TEST(ColourView, SaysWhatIsShortAndHowToMendIt) {
    Booked b;
    b.wish(1, "coral", coral, 30);
    b.wish(2, "plum", plum, 40);
    const auto view = bookingColours(b.season, b.booking);
    ASSERT_EQ(view.bands.size(), 2U);
    EXPECT_TRUE(view.bands[0].asks);
    ASSERT_FALSE(view.sentences.isEmpty());
    EXPECT_TRUE(view.sentences[0].contains(QStringLiteral("of a wished 30 %")))
        << view.sentences[0].toStdString();
    EXPECT_TRUE(view.sentences[0].contains(QStringLiteral("coral round"))) << view.sentences[0].toStdString();
    ASSERT_TRUE(view.mend);
    // Taking the offer brings it there.
    const auto mended = model::apply(b.season, view.mend->edit);
    ASSERT_TRUE(mended.ok());
    const auto after = bookingColours(mended->season, b.booking);
    EXPECT_GE(after.bands[0].shown, 30 - 1e-9);
    EXPECT_FALSE(after.bands[0].asks);
}

TEST(ColourView, SaysWhenNothingHasTheColourAndWhenNothingIsWished) {
    Booked b;
    EXPECT_FALSE(bookingColours(b.season, b.booking).wished);
    EXPECT_FALSE(bookingColours(b.season, b.booking).empty()) << "its own colours are shown all the same";
    b.wish(1, "blue", blue, 40);
    const auto view = bookingColours(b.season, b.booking);
    ASSERT_EQ(view.bands.size(), 1U);
    EXPECT_EQ(view.bands[0].shown, 0);
    EXPECT_TRUE(view.sentences[0].contains(QStringLiteral("no plant here has this colour")));
    EXPECT_FALSE(view.mend);
    b.wish(2, "coral", coral, 80);
    EXPECT_TRUE(
        bookingColours(b.season, b.booking).sentences.last().contains(QStringLiteral("more than a hundred")));
}

TEST(ColourView, CountsWhatWasReallyCut) {
    Booked b;
    b.wish(1, "coral", coral, 50);
    const auto planned = bookingColours(b.season, b.booking);
    shareout::ShareOut share;
    shareout::LineShare line;
    line.line = Id<model::Line>(1);
    line.pieces = Pieces(6);
    for (const auto& slot : b.season.slots) {
        if (slot.design != b.jar) continue;
        shareout::SlotShare s;
        s.slot = slot.id;
        for (const auto& choice : b.season.slotPlants) {
            if (choice.slot != slot.id) continue;
            // Of the coral ones only half came in.
            const auto stems = slot.count.value * (slot.label == "coral round" ? 3 : 6);
            s.plants.push_back({choice.plant, Stems(stems), {}, {}});
        }
        line.slots.push_back(s);
    }
    share.lines.push_back(line);
    const auto real = bookingColours(b.season, b.booking, &share);
    ASSERT_EQ(real.bands.size(), 1U);
    EXPECT_TRUE(real.real);
    EXPECT_LT(real.bands[0].shown, planned.bands[0].shown);
    EXPECT_FALSE(real.mend) << "what is cut is cut";
}

/// Minute by minute, as one would with a pencil: against the curve in straight lines.
TEST(PieceWater, FallsAsAStepwiseReckoningSays) {
    Booked b;
    for (auto plant : std::vector<model::Plant>(b.season.plants.begin(), b.season.plants.end())) {
        plant.uptakeMlPerDay = 20;
        b.season.plants.put(plant);
    }
    const auto w = plan::pieceWater(b.season, b.jar, nullptr, nullptr);
    ASSERT_TRUE(w);
    EXPECT_FALSE(w->booking);
    ASSERT_EQ(w->phases.size(), 1U);
    EXPECT_EQ(w->phases[0].hours, plan::usualHours);
    // Ten stems at 20 ml a day and 20 C, at the venue's 21 C by the Q10 rule, and less evaporation than that.
    const double perHour = 10 * 20.0 / 24 * std::pow(2, 0.1);
    const double first = w->course.curve.front().millilitres;
    const auto& second = w->course.curve[1];
    const double fell = (first - second.millilitres) / second.hours;
    EXPECT_GT(fell, perHour);
    EXPECT_LT(fell, perHour * 1.1);
    EXPECT_TRUE(w->course.dryAfter) << "two hundred millilitres a day empty the jar";
    EXPECT_TRUE(w->course.endIsDry);
    EXPECT_EQ(w->course.unknownDrinkers, 0);
    EXPECT_EQ(w->stemEnds, 15);
}

TEST(PieceWater, KnowsTheTimesOfABooking) {
    Booked b;
    plan::BookingPlan plan;
    plan.booking = b.booking;
    plan.makeUpStart = *LocalTime::parse("2027-09-10T12:00");
    plan.makeUpEnd = *LocalTime::parse("2027-09-10T16:00");
    plan.driveStart = *LocalTime::parse("2027-09-11T14:00");
    plan::TimedStep drive;
    drive.kind = model::StepKind::drive;
    drive.from = plan.driveStart;
    drive.to = *LocalTime::parse("2027-09-11T15:00");
    plan.steps.push_back(drive);
    const auto time = plan::standingTime(b.season, *b.season.bookings.find(b.booking), plan);
    ASSERT_TRUE(time);
    ASSERT_EQ(time->phases.size(), 4U);
    const double hours[]{4, 22, 1, 8};
    for (std::size_t i = 0; i < 4; ++i)
        EXPECT_NEAR(time->phases[i].hours, hours[i], 1e-9) << i;
    const auto w = plan::pieceWater(b.season, b.jar, b.season.bookings.find(b.booking), &plan);
    ASSERT_TRUE(w);
    EXPECT_EQ(w->pieces, 7) << "the spare one drinks too";
    EXPECT_EQ(w->course.unknownDrinkers, 5) << "none of its plants has a figure";
    plan.driveStart = *LocalTime::parse("2027-09-12T14:00");
    plan.steps.clear();
    EXPECT_FALSE(plan::standingTime(b.season, *b.season.bookings.find(b.booking), plan)) << "out of order";
}

TEST(WaterView, SaysWhenItRunsDryAndWhatIsNotKnown) {
    installEnglishPlurals();
    Booked b;
    const auto unknown = waterView(b.season, {}, b.jar, std::nullopt);
    ASSERT_FALSE(unknown.empty());
    EXPECT_FALSE(unknown.warns);
    EXPECT_TRUE(unknown.sentences.join(QLatin1Char(' ')).contains(QStringLiteral("5 plants have no figure")))
        << unknown.sentences.join(QLatin1Char(' ')).toStdString();
    for (auto plant : std::vector<model::Plant>(b.season.plants.begin(), b.season.plants.end())) {
        plant.uptakeMlPerDay = 30;
        b.season.plants.put(plant);
    }
    const auto dry = waterView(b.season, {}, b.jar, std::nullopt);
    EXPECT_TRUE(dry.warns);
    EXPECT_TRUE(dry.head.startsWith(QStringLiteral("Check and top up"))) << dry.head.toStdString();
    EXPECT_TRUE(dry.sentences.first().contains(QStringLiteral("dry"))) << dry.sentences.first().toStdString();
    EXPECT_FALSE(dry.litres.isEmpty());
}

} // namespace
} // namespace withy::ui
