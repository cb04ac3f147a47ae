// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui_logic/logic_fixture.h"
#include "tests/ui_logic/ninety_stock.h"
#include "ui/logic/edits/cover_edits.h"
#include "ui/logic/format.h"
#include "ui/logic/models/cover_facts.h"
#include "ui/logic/models/cover_rows.h"
#include "ui/logic/models/free_weeks.h"
#include "ui/logic/models/stem_sources.h"
#include "ui/logic/papers/papers.h"

#include <algorithm>

namespace withy::ui::tests {

namespace {

/// A season with its plan, and one booking's cover in it.
struct Ground {
    explicit Ground(model::Season s)
        : season(std::move(s)), plan(plan::plan(season, {model::sample::day(2027, 8, 1), {}})) {}

    [[nodiscard]] CoverView view(Id<model::Booking> id) const {
        times.emplace(plan, id);
        return {season, *plan.bookings.at(id), *plan.cover, plan.cover->bookings.at(id),
                *times, plan.garden.get()};
    }

    [[nodiscard]] QString answer(Id<model::Booking> id) const { return plainWords(coverAnswer(view(id))); }

    [[nodiscard]] const plan::SlotCover& slot(Id<model::Booking> id) const {
        return plan.cover->bookings.at(id).slots.at(0);
    }

    [[nodiscard]] const plan::Mend* mend(Id<model::Booking> id, plan::MendKind kind) const {
        for (const auto& m : slot(id).mends)
            if (m.kind == kind) return &m;
        return nullptr;
    }

    [[nodiscard]] Ground taking(Id<model::Booking> id, plan::MendKind kind, model::Edit& inverse) const {
        const auto edit = edits::takeMend(season, *plan.bookings.at(id), slot(id), *mend(id, kind));
        auto done = model::apply(season, edit);
        EXPECT_TRUE(done.ok());
        inverse = done->inverse;
        said = edits::inWords(edit.name());
        return Ground(done->season);
    }

    model::Season season;
    plan::Plan plan;
    mutable std::optional<CutTimes> times; ///< of the last view
    mutable QString said;                  ///< the undo menu's words for what was taken
};

/// The one row that is no head.
const SheetRow& onlyRow(const Sheet& sheet) {
    return *std::find_if(sheet.rows.begin(), sheet.rows.end(),
                         [](const SheetRow& r) { return r.look == RowLook::body; });
}

QString oneLine(const papers::Text& text) {
    QString all;
    for (const auto& run : text)
        all += QString::fromStdString(run.text);
    return all;
}

} // namespace

/// Issue 4, "must show" 4, counted by hand: 30 x 3 = 90 of each supper, 90 in all.
TEST(Cover, TheEnquiryIsToldItIsNinetyShortByWhomAndHowToMendIt) {
    const Ground ground(ninetyInStore());
    EXPECT_EQ(ground.answer(bookedSupper), QStringLiteral("30 pieces, 90 stems. All are covered."));
    EXPECT_EQ(ground.answer(askedSupper),
              QStringLiteral("30 pieces, 90 stems. None are covered, 90 zinnias are short, and one swap "
                             "would mend it."));
    const auto sheet = coverSheet(ground.view(askedSupper));
    const auto& row = onlyRow(sheet);
    EXPECT_EQ(row.cells[3].words, QStringLiteral("90 short"));
    EXPECT_EQ(row.cells[3].jar->state, SheetState::missing);
    EXPECT_EQ(row.cells[2].reach->need, 90);
    EXPECT_EQ(row.cells[2].reach->likely, 0);
    ASSERT_TRUE(row.below);
    EXPECT_TRUE(row.below->notes.contains(QStringLiteral("Supper 1 (Sat 11 Sep) has 90 zinnia.")))
        << row.below->notes.join(QLatin1Char('|')).toStdString();
    ASSERT_EQ(row.below->ways.size(), 2u);
    EXPECT_TRUE(plainWords(row.below->ways[0].words)
                    .startsWith(QStringLiteral("Swap in 90 Zinnia, salmon, long enough, free,")));
    EXPECT_TRUE(row.below->ways[0].main);
    // 9 bunches of 10 at 30 pence a stem: 27 pounds.
    EXPECT_TRUE(
        plainWords(row.below->ways[1].words).startsWith(QStringLiteral("Buy 9 bunches of 10 zinnia, ")))
        << plainWords(row.below->ways[1].words).toStdString();
    const auto covered = coverSheet(ground.view(bookedSupper));
    ASSERT_EQ(onlyRow(covered).cells[1].sources.size(), 1u);
    EXPECT_EQ(onlyRow(covered).cells[1].sources[0].origin, StemOrigin::ownStore);
    EXPECT_FALSE(onlyRow(covered).below);
}

TEST(Cover, TakingTheSwapMendsItAndUndoPutsItBack) {
    const Ground before(ninetyInStore());
    model::Edit inverse("");
    const auto after = before.taking(askedSupper, plan::MendKind::swap, inverse);
    EXPECT_EQ(before.said, QStringLiteral("90 Zinnia, salmon stand in for Zinnia, coral"));
    ASSERT_EQ(after.season.agreedSwaps.size(), 1u);
    EXPECT_EQ(after.season.agreedSwaps.begin()->booking, askedSupper);
    EXPECT_EQ(after.season.agreedSwaps.begin()->plant, coral);
    EXPECT_EQ(after.season.agreedSwaps.begin()->standIn, salmon);
    EXPECT_EQ(after.answer(askedSupper),
              QStringLiteral("30 pieces, 90 stems. All are covered, 90 by other plants."));
    const auto sources = sourcesOf(after.season, CutTimes(after.plan, askedSupper), after.slot(askedSupper));
    ASSERT_FALSE(sources.empty());
    EXPECT_EQ(sources[0].plant, salmon);
    EXPECT_EQ(sources[0].origin, StemOrigin::patch);
    EXPECT_EQ(sources[0].place, QStringLiteral("Bed 2"));
    // The same swap a second time changes nothing.
    EXPECT_TRUE(edits::takeMend(after.season, *before.plan.bookings.at(askedSupper), before.slot(askedSupper),
                                *before.mend(askedSupper, plan::MendKind::swap))
                    .empty());
    EXPECT_EQ(Ground(applied(after.season, inverse)).answer(askedSupper), before.answer(askedSupper));
}

TEST(Cover, APurchaseIsALotThatIsNeverOurOwn) {
    const Ground before(ninetyInStore());
    model::Edit inverse("");
    const auto after = before.taking(askedSupper, plan::MendKind::buy, inverse);
    EXPECT_EQ(before.said, QStringLiteral("90 zinnia bought in for Supper 2"));
    ASSERT_EQ(after.season.stockLots.size(), 2u);
    const auto& lot = *after.season.stockLots.find(Id<model::StockLot>(2));
    EXPECT_EQ(lot.origin, model::StockOrigin::boughtIn);
    EXPECT_FALSE(lot.homeGrown);
    EXPECT_EQ(lot.stems.value, 90);
    EXPECT_EQ(lot.unitCost->minor, 30);
    std::int64_t bought = 0;
    for (const auto id : {bookedSupper, askedSupper})
        bought +=
            boughtIn(sourcesOf(after.season, CutTimes(after.plan, id), after.plan.cover->bookings.at(id)));
    EXPECT_EQ(bought, 90); // whichever of the two suppers has them
    EXPECT_EQ(Ground(applied(after.season, inverse)).answer(askedSupper), before.answer(askedSupper));
}

TEST(Cover, FewerPiecesChangeTheLine) {
    const Ground before(ninetyInStore(120)); // 30 left for the enquiry, 60 short: twenty jars
    model::Edit inverse("");
    const auto after = before.taking(askedSupper, plan::MendKind::fewerPieces, inverse);
    EXPECT_EQ(before.said, QStringLiteral("20 fewer of Supper jar"));
    EXPECT_EQ(after.season.lines.find(Id<model::Line>(2))->pieces.value, 10);
    EXPECT_EQ(after.answer(askedSupper), QStringLiteral("10 pieces, 30 stems. All are covered."));
}

TEST(Cover, AFaultSaysWhoseFiguresAreToMend) {
    const auto season = ninetyInStore();
    const auto words =
        coverFaultSentence(season, {cover::CoverTrouble::outOfRange, "demand", bookedSupper.value});
    EXPECT_TRUE(words.contains(text(season.bookings.find(bookedSupper)->title))) << words.toStdString();
    EXPECT_TRUE(coverFaultSentence(season, {cover::CoverTrouble::tooLarge, "demand", 0})
                    .contains(QStringLiteral("number of pieces")));
    EXPECT_TRUE(coverFaultSentence(season, {cover::CoverTrouble::negative, "lot", 7})
                    .contains(QStringLiteral("the store")));
}

TEST(Cover, AMendOfABookingThatIsGoneIsNoEdit) {
    const Ground ground(ninetyInStore());
    const auto gone = applied(ground.season, edits::eraseBooking(ground.season, askedSupper));
    ASSERT_FALSE(ground.slot(askedSupper).mends.empty());
    for (const auto& mend : ground.slot(askedSupper).mends)
        EXPECT_TRUE(
            edits::takeMend(gone, *ground.plan.bookings.at(askedSupper), ground.slot(askedSupper), mend)
                .empty());
}

TEST(Cover, FreeToPromiseSaysWhatIsLeft) {
    const Ground ground(ninetyInStore(120));
    FreeWeeksModel model;
    model.show(ground.season, ground.plan.cover.get(), FreeWeeksModel::Figure::promised);
    // Lots stand in the week they are ready from: 120 there, 90 promised, 30 asked for, none free.
    int row = -1;
    for (int r = 0; r < model.rowCount(); ++r)
        if (model.headerData(r, Qt::Vertical).toString() == QStringLiteral("Zinnia, coral")) row = r;
    ASSERT_GE(row, 0);
    const int column = model.columnOf(model::sample::day(2027, 9, 1));
    EXPECT_EQ(model.data(model.index(row, column)).toString(), QStringLiteral("90"));
    EXPECT_TRUE(model.sentence(model.index(row, column))
                    .contains(QStringLiteral("120 in store, 90 promised, 30 asked for, 0 free")))
        << model.sentence(model.index(row, column)).toStdString();
    EXPECT_TRUE(
        model.tsv().contains(QStringLiteral("Zinnia, coral\t2027-08-30\tcautious\t0\t120\t90\t30\t0")))
        << model.tsv().toStdString();
    model.show(ground.season, nullptr, FreeWeeksModel::Figure::free);
    EXPECT_EQ(model.rowCount(), 0);
    EXPECT_EQ(plainWords(model.answer()), nothingFreeWords());
}

TEST(Cover, ThePaperSaysFromWhereAndWhatIsShort) {
    const Ground ground(ninetyInStore(120));
    const auto blocks = stemsBesideRounds(ground.season, CutTimes(ground.plan, askedSupper),
                                          &ground.plan.cover->bookings.at(askedSupper), {});
    QStringList lines;
    for (const auto& block : blocks)
        lines << oneLine(std::get<papers::Paragraph>(block.content).text);
    EXPECT_EQ(lines, (QStringList{
                         QStringLiteral("From the store: our own, left over, in the store: 30 Zinnia, coral"),
                         QStringLiteral("Short: 60 Zinnia, coral")}));
    EXPECT_TRUE(stemOrigins(ground.season, CutTimes(ground.plan, askedSupper), nullptr).empty());
}

} // namespace withy::ui::tests
