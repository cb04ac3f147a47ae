// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/run_up_plan.h"
#include "core/plan/shed/shed_codes.h"
#include "core/plan/shed_plan.h"
#include "tests/ui_logic/logic_fixture.h"
#include "ui/logic/edits/booking_edits.h"
#include "ui/logic/english_plurals.h"
#include "ui/logic/format.h"
#include "ui/logic/models/booking_colours.h"
#include "ui/logic/models/booking_pieces.h"
#include "ui/logic/models/booking_words.h"
#include "ui/logic/models/finding_list.h"

namespace withy::ui {

namespace {

class BookingWords : public testing::Test {
protected:
    void SetUp() override { installEnglishPlurals(); }

    model::Season season = demoSeason();
    const Id<model::Booking> supper{1};

    [[nodiscard]] std::string openWords(std::optional<Day> today) const {
        return plainWords(openAnswer(season, supper, today)).toStdString();
    }

    [[nodiscard]] model::Booking booked() const {
        auto b = *season.bookings.find(supper);
        b.standing = model::Standing::booked;
        return b;
    }

    [[nodiscard]] plan::BookingPlan withoutFindings() const {
        auto own = *plan::plan(season).bookings.at(supper);
        own.findings.clear();
        return own;
    }

    void put(const model::Edit& edit) {
        const auto applied = model::apply(season, edit);
        ASSERT_TRUE(applied.ok());
        season = applied->season;
    }

    void answerAll() {
        model::Edit edit("x");
        for (auto q : season.questions) {
            q.answer = "yes";
            edit.put(q);
        }
        put(edit);
    }

    void ask(const char* text, const char* day) {
        model::Question q;
        q.id = season.questions.nextId();
        q.booking = supper;
        q.text = text;
        if (day) q.neededBy = Day::parse(day);
        put(model::Edit("x").put(q));
    }
};

} // namespace

TEST_F(BookingWords, TheAnswerCountsWhatIsOpenAndSaysWhatIsSoonest) {
    answerAll();
    EXPECT_EQ(openWords(std::nullopt), "Every question is answered.");
    ask("a", "2027-09-08"); // a Wednesday
    ask("b", "2027-09-08");
    ask("c", "2027-09-10");
    ask("d", nullptr);
    const auto monday = Day::parse("2027-09-06");
    EXPECT_EQ(openWords(monday), "Four things are still open. Two are needed by Wednesday.");
    EXPECT_EQ(openWords(Day::parse("2027-08-02")),
              "Four things are still open. Two are needed by Wed 8 Sep.");
    EXPECT_EQ(openWords(Day::parse("2027-09-09")),
              "Four things are still open. Two were needed before today.");
    EXPECT_EQ(openAnswer(season, supper, monday).back().weight, AnswerPart::Weight::asks);
}

TEST_F(BookingWords, OneThingIsOpen) {
    answerAll();
    ask("a", "2027-09-08");
    EXPECT_EQ(openWords(Day::parse("2027-09-06")), "One thing is still open. One is needed by Wednesday.");
}

TEST_F(BookingWords, PiecesAreCountedByTheirNoun) {
    const std::pair<const char*, const char*> cases[] = {
        {"Supper jar", "24 jars"}, {"Nave bowls", "24 table pieces"}, {"Gilded vase, low", "24 vases"}};
    for (const auto& [name, words] : cases) {
        SCOPED_TRACE(name);
        model::Design d;
        d.name = name;
        EXPECT_EQ(countedPieces(season, d, 24).toStdString(), words);
    }
    model::Design sheaf;
    sheaf.name = "Penn";
    sheaf.kind = model::PieceKind::sheaf;
    EXPECT_EQ(countedPieces(season, sheaf, 1).toStdString(), "1 sheaf");
    EXPECT_EQ(countedPieces(season, sheaf, 2).toStdString(), "2 sheaves");
}

TEST_F(BookingWords, StateSaysWhatIsKnown) {
    auto b = *season.bookings.find(supper);
    const auto today = Day::parse("2027-09-06");
    const auto state = [&] { return bookingState(season, b, plan::Plan{}, today); };
    EXPECT_EQ(state().words, QString()) << "booked, and no plan yet: nothing is known";
    b.standing = model::Standing::held;
    b.heldUntil = Day::parse("2027-09-10");
    EXPECT_EQ(state().words.toStdString(), "held to 10 Sep");
    EXPECT_TRUE(state().asks);
    b.heldUntil = Day::parse("2027-09-30");
    EXPECT_FALSE(state().asks);
    b.standing = model::Standing::enquiry;
    EXPECT_EQ(state().words.toStdString(), "enquiry");
}

TEST_F(BookingWords, FindingsAreToMendUntilTheyAreAccepted) {
    const auto b = booked();
    plan::Plan plan;
    auto own = withoutFindings();
    const auto state = [&] {
        plan.bookings[supper] = std::make_shared<plan::BookingPlan>(own);
        return bookingState(season, b, plan, std::nullopt);
    };
    EXPECT_EQ(state().words.toStdString(), "ready");
    plan::Finding f;
    f.code = plan::FindingCode::ribbonShort;
    f.severity = plan::Severity::warning;
    f.subjects = {"Moss"};
    f.numbers = {1200};
    own.findings.push_back(f);
    EXPECT_EQ(state().words.toStdString(), "ribbon short");
    f.code = plan::FindingCode::dayTooLong;
    own.findings.push_back(f);
    EXPECT_EQ(state().words.toStdString(), "2 to mend");
    EXPECT_TRUE(state().asks);
}

/// The list, the tabs and the moved line count what the season's shed and run-up say of a booking, and leave
/// to the run-up whether a day is too long.
TEST_F(BookingWords, WhatIsWrongIsTheSameInTheListAndOnThePage) {
    const auto b = booked();
    plan::Plan plan;
    auto own = withoutFindings();
    plan::Finding tooLong;
    tooLong.code = plan::FindingCode::dayTooLong;
    tooLong.severity = plan::Severity::warning;
    tooLong.numbers = {180};
    own.findings.push_back(tooLong);
    plan.bookings[supper] = std::make_shared<plan::BookingPlan>(own);
    const auto words = [&] { return bookingState(season, b, plan, std::nullopt).words.toStdString(); };
    EXPECT_EQ(words(), "day too long");
    plan.runUp = std::make_shared<plan::RunUpPlan>(); // a helper makes it fit
    EXPECT_EQ(words(), "ready");
    EXPECT_EQ(toMend(season, plan, supper), 0);
    EXPECT_TRUE(findingsOf(season, plan, supper).empty());

    auto shed = std::make_shared<plan::ShedPlan>();
    plan::Finding jars;
    jars.code = plan::ShedCode::kitRunsShort;
    jars.severity = plan::Severity::warning;
    jars.place = {model::TableKind::containers, 1};
    jars.subjects = {"Honey jar", "2027-09-10"};
    jars.numbers = {4, 2};
    shed->findings.push_back({supper, jars}); // another booking has them out
    plan.shed = shed;
    EXPECT_EQ(words(), "kit short");
    EXPECT_EQ(toMend(season, plan, supper), 1);
    EXPECT_EQ(findingsOf(season, plan, supper).size(), 1U);

    auto runUp = std::make_shared<plan::RunUpPlan>();
    plan::Finding tooMuch;
    tooMuch.code = plan::FindingCode::workTooMuch;
    tooMuch.severity = plan::Severity::fault;
    tooMuch.place = {model::TableKind::bookings, supper.value};
    tooMuch.subjects = {"2027-09-10"};
    tooMuch.numbers = {180};
    runUp->findings.push_back(tooMuch);
    plan.runUp = runUp;
    EXPECT_EQ(words(), "2 to mend");
    EXPECT_EQ(toMend(season, plan, supper), 2);
}

// A deposit of 40 kept by a booking that came to 30: 10 go back; a lost one owes nothing.
TEST_F(BookingWords, WhatIsOwedIsSaidInOneWay) {
    const auto& settings = season.theSettings();
    using model::Standing;
    const auto words = [&](Standing standing, std::int64_t owed, std::int64_t over) {
        return owedWords(settings, standing, Money{owed}, Money{over}).toStdString();
    };
    EXPECT_EQ(words(Standing::booked, 4000, 0), "£40.00");
    EXPECT_EQ(words(Standing::booked, 0, 1000), "£10.00 to pay back");
    EXPECT_EQ(words(Standing::booked, 0, 0), "£0.00");
    EXPECT_EQ(words(Standing::lost, 4000, 0), "–");
}

TEST_F(BookingWords, PiecesAreReadWithTheirCount) {
    struct Case {
        const char* typed;
        std::int64_t count;
        const char* design; ///< null: refused
    };

    for (const auto& c : {Case{"24 supper jar", 24, "Supper jar"}, Case{"Supper jar", 1, "Supper jar"},
                          Case{"24 x supper jar", 24, "Supper jar"}, Case{"24x supper jar", 24, "Supper jar"},
                          Case{"  3   SUPPER  jar ", 3, "Supper jar"}, Case{"no such thing", 1, nullptr},
                          Case{"24", 24, nullptr}, Case{"999999999 supper jar", 1, nullptr}}) {
        SCOPED_TRACE(c.typed);
        const auto asked = readPiece(season, supper, QString::fromUtf8(c.typed));
        EXPECT_EQ(asked.design.has_value(), c.design != nullptr) << asked.sentence.toStdString();
        EXPECT_EQ(asked.sentence.isEmpty(), c.design != nullptr);
        if (!c.design || !asked.design) continue;
        EXPECT_EQ(asked.count, c.count);
        EXPECT_EQ(season.designs.find(*asked.design)->name, c.design);
    }
}

TEST_F(BookingWords, PiecesAreReadWithTheirTables) {
    const auto onto = readPiece(season, supper, QStringLiteral("24 supper jar on trestles"));
    ASSERT_TRUE(onto.ok()) << onto.sentence.toStdString();
    ASSERT_TRUE(onto.placement.has_value());
    EXPECT_EQ(onto.placement->perTable, 2) << "24 on 12";
    EXPECT_FALSE(readPiece(season, supper, QStringLiteral("25 supper jar on trestles")).ok());
    EXPECT_FALSE(readPiece(season, supper, QStringLiteral("24 supper jar on clouds")).ok());
}

TEST_F(BookingWords, EvenPlacementsAreOffered) {
    const auto line = *season.lines.find(Id<model::Line>(1)); // 24 jars, 12 trestles
    const auto offers = placementOffers(season, line);
    ASSERT_FALSE(offers.empty());
    EXPECT_EQ(offers.front().perTable, 2);
    EXPECT_EQ(offers.front().words.toStdString(), "2 on each of 12 trestles");
}

// CSS Color 4, named colours: teal is #008080, plum is #dda0dd. Here a plant named for its plum wins.
TEST_F(BookingWords, ColoursAreReadInOneLine) {
    model::Plant dahlia;
    dahlia.id = season.plants.nextId();
    dahlia.name = "Dahlia, maroonish";
    dahlia.colour1 = Colour::parse("#87345a");
    put(model::Edit("x").put(dahlia));
    const auto reading = readColours(season, QStringLiteral("maroonish 30, teal 25 %, 15 #f3b884"));
    ASSERT_TRUE(reading.ok()) << reading.sentence.toStdString();
    ASSERT_EQ(reading.colours.size(), 3u);
    EXPECT_EQ(reading.colours[0].colour.hex(), "#87345a");
    EXPECT_EQ(reading.colours[0].share, 30);
    EXPECT_EQ(reading.colours[1].colour.hex(), "#008080");
    EXPECT_EQ(reading.colours[1].share, 25);
    EXPECT_EQ(reading.colours[2].colour.hex(), "#f3b884");
    EXPECT_EQ(reading.colours[2].share, 15);
    EXPECT_FALSE(readColours(season, QStringLiteral("nosuchcolour 30")).ok());
    EXPECT_FALSE(readColours(season, QString()).ok());
}

TEST_F(BookingWords, SharesThatAreNoWholeAreSaid) {
    model::BookingColour a;
    a.share = 70;
    model::BookingColour b;
    b.share = 40;
    EXPECT_TRUE(sharesWords({&a, &b}).contains(QStringLiteral("110 %")));
    b.share = 30;
    EXPECT_EQ(sharesWords({&a, &b}), QString());
    b.share.reset();
    EXPECT_EQ(sharesWords({&a, &b}), QString()) << "the rest is the other's";
}

TEST_F(BookingWords, CandlesCautionDefersToTheVenue) {
    const QString words = candlesCaution(season, supper);
    EXPECT_TRUE(words.contains(QStringLiteral("fire service")));
    EXPECT_TRUE(words.contains(QStringLiteral("The venue says")));
}

} // namespace withy::ui
