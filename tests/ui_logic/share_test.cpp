// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/schema.h"
#include "core/papers/text_render.h"
#include "tests/ui_logic/logic_fixture.h"
#include "tests/ui_logic/share_supper.h"
#include "ui/logic/edits/share_edits.h"
#include "ui/logic/format.h"
#include "ui/logic/models/share_rows.h"
#include "ui/logic/paper/layout.h"
#include "ui/logic/paper_shop.h"

#include <algorithm>

namespace withy::ui::tests {

namespace {

using shareout::WayKind;

ShareFound foundIn(const model::Season& season, std::vector<shareout::Way> mixed = {},
                   Id<model::Booking> booking = supper) {
    return findShare({season, nullptr, booking, supperBench, supperBench, std::move(mixed)});
}

const shareout::Way* wayIn(const ShareFound& found, WayKind kind) {
    for (const auto& way : found.ladder.ways)
        if (way.kind == kind) return &way;
    return nullptr;
}

QStringList groupsOf(const model::Season& season, const shareout::ShareOut& share) {
    QStringList all;
    for (const auto& g : shareGroups(season, share))
        all << QStringLiteral("%1 %2: %3").arg(g.pieces).arg(g.noun, g.words);
    return all;
}

/// Every field of every record; sameRows() says whether a table is one and the same in memory.
bool sameSeason(const model::Season& a, const model::Season& b) {
    bool same = true;
#define X(Type, member)                                                                                      \
    same = same && a.member.size() == b.member.size();                                                       \
    for (const auto& record : a.member) {                                                                    \
        const auto* other = b.member.find(record.id);                                                        \
        for (const auto& field : model::tableInfo(model::TableKind::member).fields)                          \
            same = same && other && field.get(&record) == field.get(other);                                  \
    }
    WITHY_RECORDS(X)
#undef X
    return same;
}

model::Edit taking(const model::Season& season, const ShareFound& found, std::vector<shareout::Way> ways) {
    return edits::takeWays(season, {supper, supperBench, found.plan.problem, std::move(ways)});
}

} // namespace

/// By hand: 72 - 64 = 8 zinnias short; 64 = 16 x 3 + 8 x 2; 64 / 3 = 21 jars and one zinnia over.
TEST(Share, TheAnswerAndTheGroupsForSixtyFourOfSeventyTwo) {
    const auto season = supperSeason();
    const auto found = foundIn(season);
    ASSERT_FALSE(found.stop);
    EXPECT_EQ(shareAnswer(season, found.ladder),
              QStringLiteral("21 jars at full count, or 24 with one zinnia less in 8 of them"));
    EXPECT_EQ(
        groupsOf(season, found.ladder.now),
        (QStringList{QStringLiteral("16 jars: 2 dahlias, 3 zinnias, 1 snapdragon, 2 fennel, 2 ninebark"),
                     QStringLiteral("8 jars: 2 dahlias, 2 zinnias, 1 snapdragon, 2 fennel, 2 ninebark")}));
    EXPECT_TRUE(
        shareWorkings(season, found.ladder.now).contains(QStringLiteral("64 zinnias = 16 × 3 + 8 × 2")));
    EXPECT_TRUE(
        shareWorkings(season, found.ladder.now).contains(QStringLiteral("58 fennel = 24 × 2 + 10 left")));
    const auto groups = shareGroups(season, found.ladder.now);
    EXPECT_TRUE(groups[1].parts[1].differs);
    EXPECT_FALSE(groups[1].parts[0].differs);
    EXPECT_TRUE(groups[1].odd);
}

/// Each by hand: 24 x 10 = 240 asked; 51 + 64 + 25 + 58 + 54 + 5 = 257 cut.
TEST(Share, EveryOfferByHandCount) {
    const auto season = supperSeason();
    const auto found = foundIn(season);
    const auto view = shareView(season, found);
    const auto noteOf = [&](WayKind kind) {
        for (const auto& c : view.choices)
            if (c.way >= 0 && found.ladder.ways[static_cast<std::size_t>(c.way)].kind == kind)
                return c.figureNote;
        return QStringLiteral("no such way");
    };
    // 240 - 8 = 232 used, 25 left.
    EXPECT_EQ(noteOf(WayKind::spread), QStringLiteral("232 stems, 25 left"));
    // 21 x 10.
    EXPECT_EQ(noteOf(WayKind::fewerPieces), QStringLiteral("210 stems, 47 left"));
    // 24 x 9.
    EXPECT_EQ(noteOf(WayKind::oneLess), QStringLiteral("216 stems, 41 left"));
    // 5 cosmos: 237.
    EXPECT_EQ(noteOf(WayKind::swap), QStringLiteral("237 stems, 20 left"));
    // Two bunches of 5: 240, of which 8 are bought, and 257 - 232 of the tally are left.
    EXPECT_EQ(noteOf(WayKind::buyIn),
              QStringLiteral("240 stems, 8 of them not from the tally; 25 of the tally left"));
    const auto* buy = wayIn(found, WayKind::buyIn);
    ASSERT_NE(buy, nullptr);
    EXPECT_EQ(buy->bunches, 2);
    EXPECT_EQ(buy->cost.minor, 900);
    EXPECT_FALSE(buy->inTime); // a week before the bench has passed
    ASSERT_NE(wayIn(found, WayKind::swap), nullptr);
    EXPECT_EQ(wayIn(found, WayKind::swap)->stems, Stems(5));
}

class ShareEdits : public LogicTest {};

TEST_F(ShareEdits, TakingEachWayAndUndoingItLeavesTheSeasonAsItWas) {
    const auto season = supperSeason();
    const auto found = foundIn(season);
    ASSERT_GE(found.ladder.ways.size(), 5U);
    const auto bench = benchOn(season, supperBench);
    const auto before = bench->season(); // as the file keeps it
    for (const auto& way : found.ladder.ways) {
        SCOPED_TRACE(static_cast<int>(way.kind));
        const auto edit = taking(bench->season(), found, {way});
        if (way.kind == WayKind::spread) { // the design lets nothing vary: nothing to write down
            EXPECT_TRUE(edit.empty());
            continue;
        }
        ASSERT_FALSE(edit.empty());
        EXPECT_FALSE(edits::inWords(edit.name()).contains(QStringLiteral("share."))) << edit.name().key;
        ASSERT_EQ(bench->apply(edit), QString());
        EXPECT_FALSE(sameSeason(before, bench->season()));
        ASSERT_EQ(bench->undo(), QString());
        EXPECT_TRUE(sameSeason(before, bench->season()));
    }
}

TEST_F(ShareEdits, WhatIsTakenIsWhatTheNextShareOutSays) {
    const auto season = supperSeason();
    const auto found = foundIn(season);
    for (const auto kind : {WayKind::fewerPieces, WayKind::oneLess, WayKind::swap, WayKind::buyIn}) {
        SCOPED_TRACE(static_cast<int>(kind));
        const auto* way = wayIn(found, kind);
        ASSERT_NE(way, nullptr);
        const auto done = model::apply(season, taking(season, found, {*way}));
        ASSERT_TRUE(done.ok());
        const auto next = foundIn(done->season);
        ASSERT_FALSE(next.stop);
        EXPECT_EQ(groupsOf(done->season, next.ladder.now), groupsOf(season, way->share));
    }
}

TEST_F(ShareEdits, BoughtStemsAreNeverOurOwn) {
    const auto season = supperSeason();
    const auto found = foundIn(season);
    const auto done = model::apply(season, taking(season, found, {*wayIn(found, WayKind::buyIn)}));
    ASSERT_TRUE(done.ok());
    ASSERT_EQ(done->season.stockLots.size(), 1U);
    const auto& lot = *done->season.stockLots.begin();
    EXPECT_FALSE(lot.homeGrown);
    EXPECT_EQ(lot.origin, model::StockOrigin::boughtIn);
    EXPECT_EQ(lot.stems, Stems(10));
    EXPECT_EQ(lot.readyFrom, supperBench);
}

TEST_F(ShareEdits, ADesignThatOthersUseIsCopiedAndNotChanged) {
    auto records = supperRecords(true);
    addJars(records, otherSupper, 10);
    const auto season = seasonOf(records);
    const auto found = foundIn(season);
    const auto done = model::apply(season, taking(season, found, {*wayIn(found, WayKind::oneLess)}));
    ASSERT_TRUE(done.ok());
    EXPECT_EQ(done->season.designs.size(), season.designs.size() + 1);
    EXPECT_EQ(done->season.slots.find(roundSlot)->count, Stems(3));
    EXPECT_EQ(done->season.lines.find(Id<model::Line>(2))->design, Id<model::Design>(1));
    EXPECT_NE(done->season.lines.find(supperLine)->design, Id<model::Design>(1));
    const auto alone =
        model::apply(supperSeason(), taking(supperSeason(), foundIn(supperSeason()),
                                            {*wayIn(foundIn(supperSeason()), WayKind::oneLess)}));
    ASSERT_TRUE(alone.ok());
    EXPECT_EQ(alone->season.designs.size(), 1U);
    EXPECT_EQ(alone->season.slots.find(roundSlot)->count, Stems(2));
}

/// 5 cosmos leave 3 short: 23 jars at full count need 69 of 64 + 5 = 69.
TEST_F(ShareEdits, AMixIsOneStepToUndo) {
    const auto season = supperSeason();
    const auto first = foundIn(season);
    const auto swap = *wayIn(first, WayKind::swap);
    const auto second = foundIn(season, {swap});
    const auto* fewer = wayIn(second, WayKind::fewerPieces);
    ASSERT_NE(fewer, nullptr);
    EXPECT_EQ(fewer->pieces, Pieces(23));
    const auto bench = benchOn(season, supperBench);
    const auto before = bench->season();
    ASSERT_EQ(bench->apply(taking(season, first, {swap, *fewer})), QString());
    const auto after = foundIn(bench->season());
    EXPECT_EQ(bench->season().lines.find(supperLine)->pieces, fewer->pieces);
    EXPECT_EQ(groupsOf(bench->season(), after.ladder.now), groupsOf(season, fewer->share));
    ASSERT_EQ(bench->undo(), QString());
    EXPECT_TRUE(sameSeason(before, bench->season()));
    EXPECT_FALSE(bench->canUndo());
}

TEST_F(ShareEdits, MadePiecesShareOutTheMinutesAndBlankStaysBlank) {
    const auto season = supperSeason();
    const auto found = foundIn(season);
    const auto lines = found.ladder.now.lines;
    const auto timed =
        model::apply(season, edits::noteMade(season, supper, lines, Minutes(150), QStringLiteral(" Wilf ")));
    ASSERT_TRUE(timed.ok());
    const auto& made = *timed->season.made.begin();
    EXPECT_EQ(made.pieces, Pieces(24));
    EXPECT_EQ(made.minutes, Minutes(150));
    EXPECT_EQ(made.byWhom, "Wilf");
    const auto blank = model::apply(season, edits::noteMade(season, supper, lines, std::nullopt, {}));
    EXPECT_FALSE(blank->season.made.begin()->minutes.has_value());
}

TEST_F(ShareEdits, AJobNoteKeepsBlanksBlankAndAnEmptyOneIsNone) {
    const auto season = supperSeason();
    EXPECT_TRUE(edits::noteJob(season, supper, {{{zinnia, std::nullopt}}, {}, {}, std::nullopt}).empty());
    const edits::JobNoteAnswers answers{
        {{zinnia, std::nullopt}, {fennel, Stems(0)}}, QStringLiteral("Fennel"), {}, Minutes(90)};
    const auto done = model::apply(season, edits::noteJob(season, supper, answers));
    ASSERT_TRUE(done.ok());
    ASSERT_EQ(done->season.jobNotePlants.size(), 1U); // the blank makes no row; the nought is one
    EXPECT_EQ(done->season.jobNotePlants.begin()->left, Stems(0));
    EXPECT_DOUBLE_EQ(*done->season.jobNotes.begin()->hoursMaking, 1.5);
    const auto read = edits::jobNoteOf(done->season, supper);
    EXPECT_EQ(read.drooped, QStringLiteral("Fennel"));
    EXPECT_EQ(read.making, Minutes(90));
}

TEST_F(ShareEdits, TellingTheClientIsAnAnsweredQuestionAndStillToTellAnOpenOne) {
    const auto season = supperSeason();
    const auto words = clientDraft(season, supper, foundIn(season).ladder.now, foundIn(season).ladder.now);
    EXPECT_TRUE(words.contains(QStringLiteral("8 of the 24 jars"))) << words.toStdString();
    const auto open = model::apply(season, edits::noteTold(season, supper, words, std::nullopt, supperBench));
    ASSERT_TRUE(open.ok());
    EXPECT_TRUE(open->season.questions.begin()->answer.empty());
    const auto told =
        model::apply(open->season, edits::noteTold(open->season, supper, words, supperBench, supperBench));
    ASSERT_TRUE(told.ok());
    ASSERT_EQ(told->season.questions.size(), 1U); // the same words are the same note
    EXPECT_EQ(told->season.questions.begin()->answer, "told Fri 10 Sep");
}

TEST(Share, NothingTalliedGoneAndDeliveredAreEachSaid) {
    const auto empty = seasonOf(supperRecords(false));
    const auto none = shareView(empty, foundIn(empty));
    EXPECT_TRUE(none.empty);
    EXPECT_TRUE(none.head.startsWith(QStringLiteral("Nothing is tallied yet."))) << none.head.toStdString();
    const auto season = supperSeason();
    EXPECT_TRUE(
        shareView(season, foundIn(season, {}, Id<model::Booking>(99))).head.contains(QStringLiteral("gone")));
    auto b = *season.bookings.find(supper);
    b.standing = model::Standing::delivered;
    const auto gone = model::apply(season, model::Edit("t").put(b));
    ASSERT_TRUE(gone.ok());
    EXPECT_TRUE(shareView(gone->season, foundIn(gone->season)).head.contains(QStringLiteral("delivered")));
}

/// 72 zinnias: nothing is short, and there is nothing to choose.
TEST(Share, AllEnoughHasNoWays) {
    auto records = supperRecords(true);
    model::Tally t;
    t.id = Id<model::Tally>(zinnia.value);
    t.round = Id<model::Round>(1);
    t.patch = Id<model::Patch>(zinnia.value);
    t.cut = Stems(72);
    records.put(t);
    const auto season = seasonOf(records);
    const auto view = shareView(season, foundIn(season));
    EXPECT_EQ(view.head, QStringLiteral("All 24 jars at full count"));
    EXPECT_TRUE(view.choices.empty());
}

TEST(MakeUpCard, AfterTheTallyItPrintsTheGroupsAndBeforeItTheDesign) {
    const auto cardOf = [](const model::Season& season) {
        const auto plan = plan::plan(season);
        return paperOf(PaperKind::makeUpCard, {season, plan, supper, {}});
    };
    const auto after = papers::renderText(cardOf(supperSeason()));
    EXPECT_NE(after.find("black is what differs"), std::string::npos) << after;
    EXPECT_NE(after.find("16 jars"), std::string::npos) << after;
    EXPECT_NE(after.find("*2* round"), std::string::npos) << after;
    EXPECT_EQ(after.find("*2* face"), std::string::npos) << after;
    std::size_t boxes = 0;
    for (auto i = after.find("[ ]"); i != std::string::npos; i = after.find("[ ]", i + 3))
        ++boxes;
    EXPECT_EQ(boxes, 24U); // a tick a piece
    const auto before = papers::renderText(cardOf(seasonOf(supperRecords(false))));
    EXPECT_NE(before.find("not tallied yet"), std::string::npos) << before;
    EXPECT_NE(before.find("24 jars"), std::string::npos) << before;
    EXPECT_TRUE(needsBooking(PaperKind::makeUpCard));
    EXPECT_EQ(paperKind("make-up"), PaperKind::makeUpCard);
}

/// The gauge is a ruler: a mark of 219 mm stands 219 mm above the foot of the paper, on either paper.
TEST(MakeUpCard, TheGaugeIsTrueToTheMillimetreFromTheFootOfThePaper) {
    papers::Document d;
    d.kind = "Card";
    d.gauge = papers::CuttingGauge{{{219, "middle 219"}, {900, "beyond"}}, "gauge"};
    for (const auto size : {paper::PaperSize::A4, paper::PaperSize::Letter}) {
        const auto layout = paper::layoutDocument(d, size);
        const double sheet = paper::sizeOf(size).height();
        int marks = 0;
        for (const auto& op : layout.pages.front().ops)
            if (const auto* line = std::get_if<paper::LineOp>(&op))
                if (line->width == paper::kThick && line->from.x() > paper::sizeOf(size).width() - 12) {
                    EXPECT_NEAR(line->from.y(), sheet - 219, 1e-9);
                    ++marks;
                }
        EXPECT_EQ(marks, 1); // what the sheet cannot hold is left to words
    }
}

} // namespace withy::ui::tests
