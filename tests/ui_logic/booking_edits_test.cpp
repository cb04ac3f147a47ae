// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/season_text.h"
#include "tests/ui_logic/logic_fixture.h"
#include "ui/logic/edits/booking_edits.h"
#include "ui/logic/edits/share_edits.h"
#include "ui/logic/format.h"
#include "ui/logic/models/booking_tables.h"

#include <algorithm>
#include <set>

namespace withy::ui {

namespace {

template <class Table, class Owner>
int countOf(const Table& rows, Owner id) {
    return static_cast<int>(
        std::count_if(rows.begin(), rows.end(), [&](const auto& r) { return r.booking == id; }));
}

model::Season after(const model::Season& season, const model::Edit& edit) {
    const auto applied = model::apply(season, edit);
    EXPECT_TRUE(applied.ok());
    return applied.ok() ? applied->season : season;
}

constexpr Id<model::Booking> supper{1};

} // namespace

TEST(BookingEdits, TheCopyHasAllThatIsAgreedAndNothingThatWasDone) {
    const auto was = demoSeason();
    edits::BookingCopy copy;
    const auto now = after(was, edits::duplicateBooking(was, supper, copy));
    const auto& from = *was.bookings.find(supper);
    const auto& to = *now.bookings.find(copy.made);
    EXPECT_EQ(to.title, from.title);
    EXPECT_EQ(to.standing, model::Standing::enquiry);
    EXPECT_FALSE(to.heldUntil);
    EXPECT_EQ(to.client, from.client);
    EXPECT_EQ(to.venue, from.venue);
    EXPECT_EQ(to.wishes, from.wishes);
    for (const auto& [had, has] :
         {std::pair{countOf(was.lines, supper), countOf(now.lines, copy.made)},
          std::pair{countOf(was.drops, supper), countOf(now.drops, copy.made)},
          std::pair{countOf(was.bookingColours, supper), countOf(now.bookingColours, copy.made)},
          std::pair{countOf(was.agreedSwaps, supper), countOf(now.agreedSwaps, copy.made)},
          std::pair{countOf(was.questions, supper), countOf(now.questions, copy.made)}}) {
        EXPECT_GT(had, 0);
        EXPECT_EQ(has, had);
    }
    EXPECT_EQ(countOf(now.payments, copy.made), 0);
    EXPECT_EQ(countOf(now.sentVersions, copy.made), 0);
    EXPECT_EQ(countOf(now.returns, copy.made), 0);
    EXPECT_EQ(countOf(now.roundBookings, copy.made), 0);
    EXPECT_EQ(countOf(now.jobNotes, copy.made), 0);
    EXPECT_EQ(now.made.size(), was.made.size());
    EXPECT_GT(now.placements.size(), was.placements.size());
}

TEST(BookingEdits, CopiedPiecesGoToTheCopysOwnDrops) {
    const auto was = demoSeason();
    edits::BookingCopy copy;
    const auto now = after(was, edits::duplicateBooking(was, supper, copy));
    int seen = 0;
    for (const auto& line : now.lines) {
        if (line.booking != copy.made || !line.drop) continue;
        ++seen;
        EXPECT_EQ(now.drops.find(*line.drop)->booking, copy.made);
    }
    EXPECT_GT(seen, 0);
}

TEST(BookingEdits, TheCopyKeepsItsWeekdayAndStaysInTheSeason) {
    auto was = demoSeason();
    // A September supper in a season to the end of October; a June wedding in one beyond the next June.
    for (const auto& [days, booking] : {std::pair{245, supper}, {500, Id<model::Booking>(2)}}) {
        SCOPED_TRACE(days);
        auto s = was.theSettings();
        s.lastDay = s.firstDay + days;
        const auto season = after(was, model::Edit("settings.change").put(s));
        edits::BookingCopy copy;
        const auto now = after(season, edits::duplicateBooking(season, booking, copy));
        const auto& from = *season.bookings.find(booking);
        const auto& to = *now.bookings.find(copy.made);
        EXPECT_EQ(to.eventStart.day.weekday(), from.eventStart.day.weekday());
        EXPECT_LE(to.eventStart.day, s.lastDay);
        EXPECT_EQ(to.eventEnd - to.eventStart, from.eventEnd - from.eventStart);
        EXPECT_EQ(copy.moved(), days == 245);
        const QString words = edits::copyWords(now, copy);
        EXPECT_EQ(words.contains(QStringLiteral("outside the season")), copy.moved());
        if (!copy.moved()) {
            EXPECT_EQ(to.eventStart.day - from.eventStart.day, 364);
        }
    }
}

TEST(BookingEdits, UndoingACopyLeavesNothingOfIt) {
    const auto was = demoSeason();
    edits::BookingCopy copy;
    const auto applied = model::apply(was, edits::duplicateBooking(was, supper, copy));
    ASSERT_TRUE(applied.ok());
    const auto back = model::apply(applied->season, applied->inverse);
    ASSERT_TRUE(back.ok());
    EXPECT_EQ(exchange::exportSeason(back->season), exchange::exportSeason(was));
}

TEST(BookingEdits, ErasingTheCopyLeavesNothingEither) {
    const auto was = demoSeason();
    edits::BookingCopy copy;
    auto now = after(was, edits::duplicateBooking(was, supper, copy));
    now = after(now, edits::eraseBooking(now, copy.made));
    EXPECT_EQ(exchange::exportSeason(now), exchange::exportSeason(was));
}

TEST(BookingEdits, HeldGetsADayUntilWhen) {
    const auto season = demoSeason();
    const auto today = *Day::fromYmd(2027, 8, 2);
    const auto now = after(season, edits::setStanding(season, supper, model::Standing::held, today));
    EXPECT_EQ(now.bookings.find(supper)->heldUntil, today + 7);
    const auto close = *Day::fromYmd(2027, 9, 9); // the event is on the 11th
    const auto soon = after(season, edits::setStanding(season, supper, model::Standing::held, close));
    EXPECT_EQ(soon.bookings.find(supper)->heldUntil, *Day::fromYmd(2027, 9, 11));
}

TEST(BookingEdits, AHoldThatIsOverIsNotTakenUpAgain) {
    const auto season = demoSeason();
    const auto march = *Day::fromYmd(2027, 3, 1);
    const auto held = [&](const model::Season& s, Day today) {
        return after(s, edits::setStanding(s, supper, model::Standing::held, today));
    };
    auto now = held(season, march); // to 8 March
    now = after(now, edits::setStanding(now, supper, model::Standing::booked, march + 3));
    EXPECT_EQ(held(now, march + 7).bookings.find(supper)->heldUntil, march + 7) << "its last day still holds";
    const auto may = *Day::fromYmd(2027, 5, 3);
    EXPECT_EQ(held(now, may).bookings.find(supper)->heldUntil, may + 7);
}

TEST(BookingEdits, WhatWasAnsweredLastTimeIsAskedAgain) {
    auto was = demoSeason();
    std::set<std::string> asked;
    for (auto q : was.questions) {
        if (q.booking != supper) continue;
        asked.insert(q.text);
        q.answer = "Ruth, on the day";
        was = after(was, model::Edit("x").put(q));
    }
    ASSERT_FALSE(asked.empty());
    // About one cutting, and no other booking's.
    was = after(was, edits::noteTold(was, supper, QStringLiteral("8 of the 24 jars have one zinnia less."),
                                     Day::fromYmd(2027, 9, 10), *Day::fromYmd(2027, 9, 10)));
    model::Question cut;
    cut.id = was.questions.nextId();
    cut.booking = supper;
    cut.text = "Cut 8 zinnia more, which nobody is promised.";
    was = after(was, model::Edit("x").put(cut));
    EXPECT_TRUE(edits::isOfOneCutting(cut));
    cut.text = "Cut the cake before or after the speeches?";
    EXPECT_FALSE(edits::isOfOneCutting(cut));
    edits::BookingCopy copy;
    const auto now = after(was, edits::duplicateBooking(was, supper, copy));
    std::set<std::string> askedAgain;
    for (const auto& q : now.questions) {
        if (q.booking != copy.made) continue;
        askedAgain.insert(q.text);
        EXPECT_EQ(q.answer, "") << q.text;
    }
    EXPECT_EQ(askedAgain, asked);
    for (const auto& q : was.questions)
        EXPECT_EQ(now.questions.find(q.id)->answer, q.answer);
}

TEST(BookingEdits, OnATableTwiceIsOnePlacement) {
    const auto season = demoSeason();
    const auto line = season.lines.begin()->id;
    const auto table = season.venueTables.begin()->id;
    auto now = after(season, edits::setPlacement(season, line, table, 3));
    EXPECT_EQ(now.placements.size(), season.placements.size()) << "it stood there already";
    now = after(now, edits::setPlacement(now, line, table, 0));
    EXPECT_EQ(now.placements.size(), season.placements.size() - 1);
    EXPECT_TRUE(edits::setPlacement(now, line, table, 0).empty());
}

TEST(BookingEdits, TablesGoIntoTheVenueAsOneStep) {
    const auto season = demoSeason();
    const auto venue = season.venues.begin()->id;
    const auto tables = readTables(QStringLiteral("12 trestles of 8, 2 rounds of 10")).tables;
    const auto edit = edits::addTables(season, venue, tables);
    const auto now = after(season, edit);
    EXPECT_EQ(now.venueTables.size(), season.venueTables.size() + 2);
    EXPECT_EQ(edits::inWords(edit.name()).toStdString(),
              "12 trestles of 8, 2 rounds of 10 at " + season.venues.begin()->name);
}

TEST(BookingEdits, EveryStepHasWordsForUndo) {
    const auto s = demoSeason();
    const auto line = s.lines.begin()->id;
    Id<model::Line> made;
    edits::BookingCopy copy;
    for (const auto& edit :
         {edits::duplicateBooking(s, supper, copy), edits::renameBooking(s, supper, "x"),
          edits::setStanding(s, supper, model::Standing::lost, std::nullopt),
          edits::addPieces(s, supper, s.designs.begin()->id, 2, made), edits::setSparePieces(s, line, 2),
          edits::setLineDrop(s, line, std::nullopt),
          edits::setPlacement(s, line, s.venueTables.begin()->id, 4),
          edits::addTables(s, s.venues.begin()->id, readTables(QStringLiteral("2 rounds")).tables),
          edits::addColours(s, supper, {{}})}) {
        const QString words = edits::inWords(edit.name());
        EXPECT_NE(words, text(edit.name().key)) << edit.name().key;
        EXPECT_FALSE(words.contains(QLatin1Char('%'))) << words.toStdString();
    }
}

} // namespace withy::ui
