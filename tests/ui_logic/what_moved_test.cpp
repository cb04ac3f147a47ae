// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui_logic/logic_fixture.h"
#include "ui/logic/edits/booking_edits.h"
#include "ui/logic/edits/design_edits.h"
#include "ui/logic/edits/record_edits.h"
#include "ui/logic/english_plurals.h"
#include "ui/logic/models/what_moved.h"

namespace withy::ui {

namespace {

/// A jar of ten stems (three and seven) at nine pounds fifty, ordered by the two dozen.
class WhatMoved : public testing::Test {
protected:
    void SetUp() override {
        installEnglishPlurals();
        model::Season s = emptySeason(2027);
        auto settings = s.theSettings();
        settings.sparePercent = 0;
        s = after(s, model::Edit("x").put(settings));
        model::Plant zinnia;
        zinnia.id = s.plants.nextId();
        zinnia.name = "Zinnia";
        zinnia.bunch = Stems(1);
        s = after(s, model::Edit("x").put(zinnia));
        std::int64_t jar = 0;
        s = after(s, edits::addRecord(s, model::TableKind::containers,
                                      {{"name", std::string("Honey jar")},
                                       {"inner_rim", std::int64_t{60}},
                                       {"inner_depth", std::int64_t{120}}},
                                      jar));
        s = after(s, edits::newDesignOf(s, "Supper jar", model::PieceKind::table, Id<model::Container>(jar),
                                        design_));
        Id<model::Slot> slot;
        s = after(s, edits::addSlotWith(s, design_, zinnia.id, slot));
        s = after(s, edits::setSlotCount(s, slot, 10));
        s = after(s,
                  edits::setField(s, {model::TableKind::designs, design_.value}, "price", std::int64_t{950}));
        Id<model::Booking> booking;
        s = after(s, edits::newBooking(s, "Supper", s.theSettings().firstDay + 100, booking));
        s = after(s, edits::addPieces(s, booking, design_, 24, line_));
        booking_ = booking;
        season_ = s;
    }

    static model::Season after(const model::Season& season, const model::Edit& edit) {
        const auto applied = model::apply(season, edit);
        EXPECT_TRUE(applied.ok());
        return applied.ok() ? applied->season : season;
    }

    std::string moved(const model::Edit& edit) {
        const auto next = after(season_, edit);
        const auto was = plan::plan(season_);
        const auto now = plan::plan(next);
        return whatMoved({season_, *was.bookings.at(booking_), toMendBefore_},
                         {next, *now.bookings.at(booking_), toMendAfter_})
            .toStdString();
    }

    std::optional<int> toMendBefore_, toMendAfter_;

    model::Season season_;
    Id<model::Booking> booking_;
    Id<model::Design> design_;
    Id<model::Line> line_;
};

} // namespace

// By hand: 6 jars more are 6 x 10 = 60 stems, 6 containers, 6 x 9.50 = 57.00; making is 6 x the minutes of a
// table piece as the plan gives them.
TEST_F(WhatMoved, SixJarsMore) {
    const auto words = moved(edits::setPieces(season_, line_, 30));
    EXPECT_EQ(words.find("24 to 30 jars: 60 stems more, 6 jars more"), 0u) << words;
    EXPECT_NE(words.find("£57.00 more"), std::string::npos) << words;
    EXPECT_NE(words.find("of making more"), std::string::npos) << words;
}

TEST_F(WhatMoved, AndBackAgain) {
    const auto words = moved(edits::setPieces(season_, line_, 23));
    EXPECT_EQ(words.find("24 to 23 jars: 10 stems less, 1 jar less"), 0u) << words;
    EXPECT_NE(words.find("£9.50 less"), std::string::npos) << words;
}

TEST_F(WhatMoved, ANewKindOfPieceIsAdded) {
    Id<model::Design> posy;
    season_ =
        after(season_, edits::newDesignOf(season_, "Posy", model::PieceKind::handTied, std::nullopt, posy));
    Id<model::Line> made;
    const auto words = moved(edits::addPieces(season_, booking_, posy, 2, made));
    EXPECT_EQ(words.find("2 hand-tied posies added"), 0u) << words;
}

TEST_F(WhatMoved, TakenOut) {
    const auto words = moved(edits::eraseLine(season_, line_));
    EXPECT_EQ(words.find("24 jars taken out: 240 stems less, 24 jars less"), 0u) << words;
}

TEST_F(WhatMoved, WhatIsToMendIsComparedWhenBothAreKnown) {
    const auto edit = edits::renameBooking(season_, booking_, "Another name");
    toMendBefore_ = 1;
    EXPECT_EQ(moved(edit), "") << "the shed and the run-up have not said yet";
    toMendAfter_ = 3;
    EXPECT_EQ(moved(edit), "2 more to mend.");
    toMendAfter_ = 0;
    EXPECT_EQ(moved(edit), "1 mended.");
    toMendAfter_ = 1;
    EXPECT_EQ(moved(edit), "");
}

TEST_F(WhatMoved, NothingIsSaidWhenNothingCountedMoved) {
    EXPECT_EQ(moved(edits::renameBooking(season_, booking_, "Another name")), "");
}

TEST_F(WhatMoved, AStemMoreInEachJarSpeaksOfStems) {
    const auto slot = season_.slots.begin()->id;
    const auto words = moved(edits::setSlotCount(season_, slot, 11));
    EXPECT_EQ(words.find("24 stems more"), 0u) << words;
}

} // namespace withy::ui
