// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui_logic/logic_fixture.h"
#include "tests/ui_logic/ninety_stock.h"
#include "ui/logic/edits/fit_edits.h"
#include "ui/logic/fit_runner.h"
#include "ui/logic/models/fit_words.h"

#include <algorithm>
#include <atomic>

namespace withy::ui::tests {

namespace {

constexpr std::optional<Id<model::Design>> noDesign;

/// One supper booked, so many coral zinnias in the store.
model::Season oneSupper(std::int64_t stems) {
    const auto both = ninetyInStore(stems);
    return applied(both, edits::eraseBooking(both, askedSupper));
}

FitDraft draftOf(std::int64_t jars) {
    FitDraft draft;
    draft.day = model::sample::day(2027, 9, 11);
    draft.minute = 18 * 60 + 30;
    draft.lines = {{jar, jars, 0, 1}};
    return draft;
}

plan::FitAnswer answerTo(const model::Season& season, const FitDraft& draft) {
    const auto plan = plan::plan(season);
    auto answer = plan::fitCheck(season, plan, *plan.cover, *askOf(draft));
    EXPECT_TRUE(answer.ok());
    return std::move(answer).value();
}

} // namespace

TEST(FitAsk, ReadsWhatIsSaidOnTheTelephone) {
    const auto season = oneSupper(150);

    const struct {
        const char* typed;
        std::int64_t pieces, tables, each; ///< 0 pieces: refused
    } rows[] = {
        {"16 tables of supper jar", 16, 16, 1},
        {"16 tables of 2 supper jar", 32, 16, 2},
        {"1 table of supper jar", 1, 1, 1},
        {"24 supper jar", 24, 0, 1},
        {"supper jar", 1, 0, 1},
        {"16 TABLES WITH 2 Supper jar", 32, 16, 2},
        {"tables of supper jar", 0, 0, 0},
        {"0 tables of supper jar", 0, 0, 0},
        {"99999999999999999999 tables of supper jar", 0, 0, 0},
        {"16 tables of 2000 supper jar", 0, 0, 0},
        {"16 tables of this jar", 0, 0, 0},
        {"12 chandeliers", 0, 0, 0},
        {"", 0, 0, 0},
    };

    for (const auto& row : rows) {
        SCOPED_TRACE(row.typed);
        const auto read = readFitPieces(season, QString::fromUtf8(row.typed), noDesign);
        EXPECT_EQ(read.pieces.has_value(), row.pieces > 0);
        EXPECT_EQ(read.sentence.startsWith(QStringLiteral("What: ")), row.pieces == 0)
            << read.sentence.toStdString();
        if (read.pieces) {
            EXPECT_EQ(*read.pieces, (FitPieces{jar, row.pieces, row.tables, row.each}));
        }
    }
    const auto these = readFitPieces(season, QStringLiteral("16 tables of this jar"), jar);
    ASSERT_TRUE(these.pieces);
    EXPECT_EQ(these.pieces->design, jar);
    EXPECT_EQ(these.pieces->tables, 16);
}

TEST(FitAsk, ADayIsReadOrRefusedByItsField) {
    const auto season = oneSupper(150);
    const auto read = readFitDay(season, QStringLiteral("25 sep 12:30"));
    ASSERT_TRUE(read.day);
    EXPECT_EQ(*read.day, model::sample::day(2027, 9, 25));
    EXPECT_EQ(read.minute, 12 * 60 + 30);
    for (const char* typed : {"", "soon", "31 sep", "2031-09-25"}) {
        SCOPED_TRACE(typed);
        const auto no = readFitDay(season, QString::fromUtf8(typed));
        EXPECT_FALSE(no.day);
        EXPECT_TRUE(no.sentence.startsWith(QStringLiteral("When: "))) << no.sentence.toStdString();
    }
}

/// 150 in store, 90 of them promised, three a jar: twenty jars, counted by hand. The shed has 70 jars.
/// 11 September 2027 is a Saturday (ISO 8601: 2027-W36-6); the supper is on it.
TEST(FitAsk, SaturdaysWithSomethingPromisedBesideThemAreNotOffered) {
    auto season = oneSupper(150);
    const auto on = [](int month, int day) { return model::sample::day(2027, month, day); };
    EXPECT_EQ(freeSaturdays(season, on(9, 6), 2), (std::vector{on(9, 18), on(9, 25)}));
    auto supper = *season.bookings.begin();
    supper.eventStart.day = on(9, 19); // the Sunday after
    supper.eventEnd.day = on(9, 19);
    season.bookings.put(supper);
    EXPECT_EQ(freeSaturdays(season, on(9, 6), 2), (std::vector{on(9, 11), on(9, 25)}));
    supper.standing = model::Standing::lost;
    season.bookings.put(supper);
    EXPECT_EQ(freeSaturdays(season, on(9, 11), 2), (std::vector{on(9, 11), on(9, 18)}));
    for (const auto day : freeSaturdays(season, {}, 100)) {
        EXPECT_EQ(day.weekday(), 6);
        EXPECT_LE(day, season.theSettings().lastDay);
    }
}

TEST(FitWords, SayYesNoAndTheMostThatFits) {
    const auto season = oneSupper(150);
    const auto yes = draftOf(20);
    const auto fits = answerTo(season, yes);
    EXPECT_EQ(fits.stems, plan::Fit::yes);
    EXPECT_TRUE(fitMost({season, yes, fits}).at(0).contains(QStringLiteral("20")))
        << fitMost({season, yes, fits}).at(0).toStdString();
    const auto one = draftOf(1);
    EXPECT_EQ(plainWords(fitAnswer({season, one, answerTo(season, one)})),
              QStringLiteral("Yes. 1 of Supper jar fits."));
    const auto no = draftOf(30);
    const auto lacks = answerTo(season, no);
    EXPECT_EQ(lacks.stems, plan::Fit::no);
    EXPECT_EQ(plainWords(fitAnswer({season, no, lacks})),
              QStringLiteral("20 of Supper jar, yes. All 30, no."));
    EXPECT_EQ(fitReason({season, no, lacks}),
              QStringLiteral("What stops it: stems. 90 needed; 60 cautious, 60 likely. 30 zinnias are short. "
                             "Supper 1 (Sat 11 Sep) has 90 zinnias."));
    const auto sheet = fitSheet({season, no, lacks});
    EXPECT_EQ(sheet.rows[0].cells[0].words, QStringLiteral("no"));
    EXPECT_EQ(sheet.rows[0].cells[1].reach->likely, 60);
    ASSERT_EQ(lacks.leaning.size(), 1u);
    EXPECT_TRUE(fitLeaning({season, no, lacks}).contains(QStringLiteral("Supper 1")));
}

TEST(FitWords, FaultsAreNamedByTheirField) {
    const auto season = oneSupper(150);
    const auto plan = plan::plan(season);
    auto ask = *askOf(draftOf(20));
    ask.lines[0].pieces = Pieces(0);
    const auto none = plan::fitCheck(season, plan, *plan.cover, ask);
    ASSERT_FALSE(none.ok());
    EXPECT_TRUE(fitFault(none.error()).startsWith(QStringLiteral("What: ")));
    ask = *askOf(draftOf(20));
    ask.eventEnd = ask.eventStart - Minutes(10);
    const auto early = plan::fitCheck(season, plan, *plan.cover, ask);
    ASSERT_FALSE(early.ok());
    EXPECT_TRUE(fitFault(early.error()).startsWith(QStringLiteral("Guests from: ")));
    plan::CoverPlan broken;
    const auto dark = plan::fitCheck(season, plan, broken, *askOf(draftOf(20)));
    ASSERT_FALSE(dark.ok());
    EXPECT_FALSE(fitFault(dark.error()).isEmpty());
}

TEST(FitEdits, WhatWasAskedIsKeptAsAskedAndUndoneInOneStep) {
    const auto season = oneSupper(150);
    auto draft = draftOf(20);
    draft.lines[0] = {jar, 20, 10, 2};
    Id<model::Booking> made;
    const auto enquiry = edits::enquiryOf(season, draft, made);
    const auto done = model::apply(season, enquiry);
    ASSERT_TRUE(done.ok());
    const auto& b = *done->season.bookings.find(made);
    EXPECT_EQ(b.title, "Enquiry for Sat 11 Sep");
    EXPECT_EQ(b.standing, model::Standing::enquiry);
    EXPECT_EQ(b.eventStart, model::sample::at(2027, 9, 11, 18, 30));
    const auto line = std::find_if(done->season.lines.begin(), done->season.lines.end(),
                                   [&](const auto& l) { return l.booking == made; });
    ASSERT_NE(line, done->season.lines.end());
    EXPECT_EQ(line->pieces.value, 20);
    EXPECT_EQ(line->note, "2 on each of 10 tables");
    EXPECT_EQ(applied(done->season, done->inverse).bookings.find(made), nullptr);
    draft.title = QStringLiteral("Harvest lunch");
    const auto today = model::sample::day(2027, 9, 6);
    EXPECT_EQ(edits::usualHold(draft, today), model::sample::day(2027, 9, 11)); // a week, but not beyond it
    const auto hold = edits::holdOf(season, draft, edits::usualHold(draft, today), made);
    EXPECT_EQ(edits::inWords(hold.name()), QStringLiteral("Harvest lunch held to Sat 11 Sep"));
    const auto held = model::apply(season, hold);
    ASSERT_TRUE(held.ok());
    EXPECT_EQ(held->season.bookings.find(made)->standing, model::Standing::held);
}

TEST(FitRunner, TheNewestQuestionIsAnswered) {
    const auto season = oneSupper(150);
    const auto plan = plan::plan(season);
    std::atomic<int> told = 0;
    FitRunner runner([&told] { ++told; });
    EXPECT_EQ(runner.finished(), nullptr);
    EXPECT_EQ(runner.wait(), nullptr);
    for (const std::int64_t jars : {5, 10, 20, 30})
        runner.ask({season, plan, *askOf(draftOf(jars)), {}});
    const auto run = runner.wait();
    ASSERT_TRUE(run);
    EXPECT_EQ(run->turn, runner.asked());
    EXPECT_EQ(run->question->ask.lines.at(0).pieces.value, 30);
    ASSERT_TRUE(run->answer.ok());
    EXPECT_EQ(run->answer->stems, plan::Fit::no);
}

} // namespace withy::ui::tests
