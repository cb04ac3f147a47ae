// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui_logic/logic_fixture.h"
#include "ui/logic/answers/diary_answers.h"
#include "ui/logic/answers/shed_answers.h"
#include "ui/logic/edits/booking_edits.h"
#include "ui/logic/english_plurals.h"
#include "ui/logic/models/booking_pieces.h"
#include "ui/logic/models/booking_tables.h"
#include "ui/logic/models/booking_words.h"
#include "ui/logic/models/design_words.h"
#include "ui/logic/wording.h"

namespace withy::ui {

namespace {

/// Verbs follow the number, and a table that stands alone is not counted.
class SingularWords : public testing::Test {
protected:
    void SetUp() override { installEnglishPlurals(); }

    template <class Record>
    void put(Record record) {
        season = model::apply(season, model::Edit("x").put(std::move(record))).value().season;
    }

    static std::string said(plan::FindingCode code, double number) {
        plan::Finding f;
        f.code = code;
        f.numbers = {number};
        return sentence(f, model::UnitSystem::metric).toStdString();
    }

    model::Season season = demoSeason();
    const Id<model::Booking> supper{1};
};

} // namespace

TEST_F(SingularWords, FindingsCountOneAndMany) {
    using enum plan::FindingCode;
    EXPECT_EQ(said(dayTooLong, 1).find("There is 1 minute too few"), 0U) << said(dayTooLong, 1);
    EXPECT_EQ(said(dayTooLong, 50).find("There are 50 minutes too few"), 0U) << said(dayTooLong, 50);
    EXPECT_EQ(said(unpricedLines, 1).find("1 kind of piece has no price"), 0U) << said(unpricedLines, 1);
    EXPECT_EQ(said(unpricedLines, 2).find("2 kinds of piece have no price"), 0U) << said(unpricedLines, 2);
}

TEST_F(SingularWords, OneJarIsBack) {
    model::Season s = season;
    model::Return one;
    one.id = s.returns.nextId();
    one.booking = supper;
    one.container = s.containers.begin()->id;
    one.out = 1;
    one.back = 1;
    s.returns = {};
    s.returns.put(one);
    EXPECT_EQ(plainWords(returnsAnswer(s)).toStdString(), "1 of 1 is back.");
    one.out = one.back.emplace(3);
    s.returns.put(one);
    EXPECT_EQ(plainWords(returnsAnswer(s)).toStdString(), "3 of 3 are back.");
}

TEST_F(SingularWords, OneMixDoesNotAddUp) {
    auto part = *season.ribbonMixParts.begin();
    part.share = 1;
    season.ribbonMixParts.put(part);
    const auto words = plainWords(mixesAnswer(season)).toStdString();
    EXPECT_NE(words.find("1 does not add up to 100 percent"), std::string::npos) << words;
}

TEST_F(SingularWords, APieceThatGoesOnNoTable) {
    const auto one = readPiece(season, supper, QStringLiteral("1 supper jar on trestles"));
    EXPECT_EQ(one.sentence.toStdString().find("1 piece does not go evenly on 12 trestles. Add it,"), 0U)
        << one.sentence.toStdString();
    const auto many = readPiece(season, supper, QStringLiteral("25 supper jar on trestles"));
    EXPECT_EQ(many.sentence.toStdString().find("25 pieces do not go evenly on 12 trestles. Add them,"), 0U)
        << many.sentence.toStdString();
}

TEST_F(SingularWords, ATableThatStandsAloneIsNotCounted) {
    const auto* booking = season.bookings.find(supper);
    model::VenueTable altar;
    altar.id = season.venueTables.nextId();
    altar.venue = *booking->venue;
    altar.label = "Altar table";
    altar.howMany = 1;
    altar.length = Millimetres(1800);
    altar.width = Millimetres(700);
    put(altar);
    EXPECT_EQ(loneTableWords(altar).toStdString(), "the altar table");
    auto named = altar;
    named.label = "St Anne's table";
    EXPECT_EQ(loneTableWords(named).toStdString(), "St Anne's table");
    auto line = *season.lines.find(Id<model::Line>(1));
    line.pieces = Pieces(2);
    put(line);
    const auto offers = placementOffers(season, line);
    ASSERT_FALSE(offers.empty());
    EXPECT_EQ(offers.back().words.toStdString(), "2 on the altar table");
    model::Season placed = season;
    placed.placements = {};
    placed = model::apply(placed, edits::setPlacement(placed, line.id, altar.id, 2)).value().season;
    const auto words = plainWords(piecesAnswer(placed, supper, nullptr)).toStdString();
    EXPECT_NE(words.find(" on the altar table."), std::string::npos) << words;
    EXPECT_EQ(words.find("each of"), std::string::npos) << words;
    EXPECT_EQ(pieceRow(placed, {}, line).where.toStdString(), "2 on the altar table");
}

TEST_F(SingularWords, WhatStandsInNothingSaysWhatItIs) {
    EXPECT_EQ(containerlessWords(model::PieceKind::garland).toStdString(), "garland");
    EXPECT_EQ(containerlessWords(model::PieceKind::handTied).toStdString(), "hand-tied");
    EXPECT_EQ(containerlessWords(model::PieceKind::table).toStdString(), "no container yet");
}

} // namespace withy::ui
