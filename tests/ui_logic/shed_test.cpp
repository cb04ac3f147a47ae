// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/papers/text_render.h"
#include "core/plan/shed/ribbon_days.h"
#include "core/plan/shed/shed_codes.h"
#include "tests/ui_logic/logic_fixture.h"
#include "ui/logic/answers/shed_answers.h"
#include "ui/logic/edits/shed_edits.h"
#include "ui/logic/models/finding_list.h"
#include "ui/logic/paper_shop.h"
#include "ui/logic/shed/packing_words.h"
#include "ui/logic/shed/return_words.h"
#include "ui/logic/shed/ribbon_scene.h"
#include "ui/logic/shed/shelf_rows.h"
#include "ui/logic/shed/table_scenes.h"
#include "ui/logic/wording.h"

#include <gmock/gmock.h>

namespace withy::ui {

namespace {

using testing::HasSubstr;

constexpr Id<model::Booking> shedSupper{1}, juneWedding{2};

struct DemoShed {
    model::Season season = demoSeason();
    plan::PlanOptions options{Day::fromYmd(2027, 6, 1), {}};
    plan::Plan plan = plan::plan(season, options);

    void take(const model::Edit& edit) {
        const auto applied = model::apply(season, edit);
        ASSERT_TRUE(applied.ok());
        season = applied.value().season;
        plan = plan::plan(season, options);
    }

    [[nodiscard]] std::string paper(PaperKind kind, Id<model::Booking> booking = shedSupper) const {
        return papers::renderText(paperOf(kind, {season, plan, booking, {}}));
    }
};

std::int64_t ribbonOf(const model::Season& season) {
    std::int64_t mm = 0;
    for (const auto& l : season.ribbonLengths)
        mm += l.length.value;
    return mm;
}

} // namespace

/// What is written back is what was there less what was cut and what is waste, in one edit that undoes whole.
TEST(ShedEdits, RibbonIsWrittenBackAsOneEdit) {
    DemoShed demo;
    const auto day = demo.plan.shed->ribbon.front();
    std::int64_t cut = 0, waste = 0;
    for (const auto& plan : day->ribbons) {
        cut += plan->needed.value - plan->missingLength.value;
        waste += plan->waste.value;
    }
    ASSERT_GT(cut, 0);
    const auto before = demo.season;
    const auto edit = edits::writeRibbonBack(demo.season, *day, LocalTime{day->day, 600});
    ASSERT_TRUE(edit);
    const auto applied = model::apply(demo.season, *edit);
    ASSERT_TRUE(applied.ok());
    const auto& after = applied.value().season;
    EXPECT_EQ(ribbonOf(after), ribbonOf(before) - cut - waste);
    const auto planned = plan::plan(after, demo.options);
    EXPECT_NE(planned.shed->ribbon.front()->day, day->day) << "the day is done";
    // What the next day finds is what it would have found.
    ASSERT_GT(demo.plan.shed->ribbon.size(), 1u);
    EXPECT_EQ(planned.shed->ribbon.front()->ribbons.front()->shelf,
              demo.plan.shed->ribbon[1]->ribbons.front()->shelf);
    const auto undone = model::apply(after, applied.value().inverse);
    ASSERT_TRUE(undone.ok());
    EXPECT_EQ(ribbonOf(undone.value().season), ribbonOf(before));
    EXPECT_EQ(plan::plan(undone.value().season, demo.options).shed->ribbon.front()->day, day->day);
}

TEST(ShedEdits, JarsAreCountedHomeAndTheShelfFollows) {
    DemoShed demo;
    const Id<model::Container> jar(1);
    demo.options.today = Day::fromYmd(2027, 9, 15);
    demo.take(edits::noteReturn(demo.season, shedSupper, jar, {24, 20, 1}));
    for (const auto& item : demo.plan.shed->kit) {
        if (item.item != model::Ref{model::TableKind::containers, 1}) continue;
        EXPECT_EQ(item.broken, 1);
        EXPECT_GE(item.out, 3); // three of the shedSupper's have not come
    }
    const auto facts = returnFacts(demo.season, *demo.plan.bookings.at(shedSupper), demo.options.today);
    const auto found =
        std::find_if(facts.begin(), facts.end(), [&](const auto& f) { return f.container == jar; });
    ASSERT_NE(found, facts.end());
    EXPECT_EQ(found->said.toStdString(), "20 home, 1 broken, 3 not come back");
    EXPECT_FALSE(found->home);
    demo.take(edits::noteReturn(demo.season, shedSupper, jar, {24, 23, 1}));
    EXPECT_EQ(demo.season.returns.size(), demoSeason().returns.size() + 1) << "one record, counted twice";
}

/// More home than went out is refused with its mend, and nothing changes.
TEST(ShedEdits, MoreHomeThanWentOutIsRefused) {
    DemoShed demo;
    const auto edit = edits::noteReturn(demo.season, shedSupper, Id<model::Container>(1), {24, 30, 1});
    EXPECT_FALSE(model::apply(demo.season, edit).ok());
}

TEST(ShelfRows, WhatRunsShortComesFirst) {
    DemoShed demo;
    const auto rows = shelfRows(demo.season, *demo.plan.shed, ShelfGroup::containers);
    ASSERT_FALSE(rows.empty());
    EXPECT_EQ(rows.front().name.toStdString(), "Lunch bowl");
    EXPECT_EQ(rows.front().lowest.toStdString(), "2 short, Sat 25 Sep");
    EXPECT_TRUE(rows.front().asks);
    EXPECT_THAT(plainWords(shelfAnswer(demo.season, *demo.plan.shed)).toStdString(),
                HasSubstr("Lunch bowl, 2 short"));
    for (std::size_t i = 1; i < rows.size(); ++i)
        EXPECT_FALSE(rows[i].asks && !rows[i - 1].asks) << rows[i].name.toStdString();
}

TEST(ShelfRows, AnEmptyShedSaysWhatToDo) {
    const auto season = emptySeason(2027);
    const auto plan = plan::plan(season);
    EXPECT_THAT(plainWords(shelfAnswer(season, *plan.shed)).toStdString(), HasSubstr("Count"));
    EXPECT_TRUE(shelfRows(season, *plan.shed, ShelfGroup::containers).empty());
    EXPECT_THAT(plainWords(packingAnswer(season, nullptr)).toStdString(), HasSubstr("Add pieces"));
}

/// Nothing is promised before the bookings were asked, nor of what nobody has counted.
TEST(ShedAnswers, SayOnlyWhatIsKnown) {
    auto season = emptySeason(2027);
    model::Container jar;
    jar.name = "Honey jar";
    jar.innerRim = Millimetres(60);
    jar.innerDepth = Millimetres(120);
    for (const auto owned : {std::optional<std::int64_t>(30), std::optional<std::int64_t>()}) {
        jar.id = season.containers.nextId();
        jar.name += 's';
        jar.owned = owned;
        season = model::apply(season, model::Edit("x").put(jar)).value().season;
    }
    const auto words = [&](const plan::Plan& plan) {
        return plainWords(containersAnswer(season, plan)).toStdString();
    };
    const auto planned = plan::plan(season);
    EXPECT_EQ(words(plan::Plan{}), "2 kinds of container. 1 never counted.");
    EXPECT_EQ(words(planned),
              "2 kinds of container; of what is counted, enough for every booking. 1 never counted.");
    season = model::apply(season, model::Edit("x").erase(jar.id)).value().season;
    EXPECT_EQ(words(plan::Plan{}), "1 kind of container.");
    EXPECT_EQ(words(planned), "1 kind of container, enough for every booking.");
    const auto demo = demoSeason();
    EXPECT_THAT(plainWords(ribbonsAnswer(demo, plan::Plan{})).toStdString(),
                testing::Not(HasSubstr("runs short")));
}

/// Every finding of the shed has its sentence, and the sentence names the mend: none is empty, none shows a
/// place that was never filled.
TEST(ShedFindings, EachHasItsSentence) {
    using plan::ShedCode;
    const auto first = static_cast<int>(ShedCode::ribbonLengthNought);
    const auto last = static_cast<int>(ShedCode::ribbonNotCut);
    for (int code = first; code <= last; ++code) {
        plan::Finding f;
        f.code = static_cast<plan::FindingCode>(code);
        f.subjects = {"Moss", "2027-09-10", "Tea tin"};
        f.numbers = {3, 2, 12};
        SCOPED_TRACE(std::string(plan::findingWord(f.code)));
        EXPECT_FALSE(plan::findingWord(f.code).empty());
        const QString words = sentence(f, model::UnitSystem::metric);
        EXPECT_GT(words.size(), 20);
        EXPECT_FALSE(words.contains(QLatin1Char('%')) && !words.contains(QStringLiteral(" %")))
            << words.toStdString();
        EXPECT_TRUE(words.endsWith(QLatin1Char('.'))) << words.toStdString();
    }
}

TEST(ShedFindings, AreListedWithTheirBooking) {
    DemoShed demo;
    auto tray = *demo.season.venueTables.find(Id<model::VenueTable>(1));
    tray.width = Millimetres(690);
    demo.take(model::Edit("t").put(tray));
    int found = 0;
    for (const auto& f : findingsOf(demo.season, demo.plan, shedSupper))
        found += f.finding.code == plan::ShedCode::pieceTooBigForTable ? 1 : 0;
    EXPECT_EQ(found, 1); // 690 less twice 260 leaves 170, and the jar spreads over 230
    EXPECT_THAT(plainWords(tablesAnswer(demo.season, *demo.plan.shed->tables.at(shedSupper))).toStdString(),
                HasSubstr("Too big for Trestle by 30 mm"));
}

// Sizes nobody can reckon with are no fit: it says so, and what to do.
TEST(TableAnswer, SaysThatSizesAreImpossible) {
    DemoShed demo;
    EXPECT_THAT(plainWords(tablesAnswer(demo.season, *demo.plan.shed->tables.at(shedSupper))).toStdString(),
                HasSubstr("All fit"));
    auto wrong = *demo.season.venueTables.find(Id<model::VenueTable>(1));
    wrong.length = Millimetres(0);
    demo.season.venueTables.put(wrong);
    demo.plan = plan::plan(demo.season, demo.options);
    const auto& tables = *demo.plan.shed->tables.at(shedSupper);
    const auto answer = plainWords(tablesAnswer(demo.season, tables)).toStdString();
    EXPECT_THAT(answer, testing::Not(HasSubstr("All fit")));
    EXPECT_THAT(answer, HasSubstr(wrong.label));
    EXPECT_THAT(answer, HasSubstr("cannot be right"));
    EXPECT_THAT(answer, HasSubstr("Measure it again"));
}

TEST(ShedPapers, SayWhatTheVanAndTheVenueNeed) {
    const DemoShed demo;
    const auto& packed = *demo.plan.shed->packing.at(juneWedding);
    const auto packing = demo.paper(PaperKind::packingSheet, juneWedding);
    EXPECT_THAT(packing, HasSubstr("Packing sheet"));
    EXPECT_THAT(packing, HasSubstr("Tray 1"));
    EXPECT_THAT(packing, HasSubstr("drop 2"));
    EXPECT_THAT(packing, HasSubstr("law of the road"));
    EXPECT_THAT(packing, HasSubstr("local rules on lifting"));
    EXPECT_THAT(packing, HasSubstr(QString::number(packed.carryLitres, 'f', 1).toStdString() + " litres"));
    const auto tables = demo.paper(PaperKind::tablePlan);
    EXPECT_THAT(tables, HasSubstr("Decoration, not food."));
    EXPECT_THAT(tables, HasSubstr("Trestle"));
    EXPECT_THAT(tables, HasSubstr("mm each side"));
    const auto ribbon = demo.paper(PaperKind::ribbonPlan);
    EXPECT_THAT(ribbon, HasSubstr("458 mm"));
    EXPECT_THAT(ribbon, testing::AnyOf(HasSubstr("wastes less"), HasSubstr("nothing wasted"),
                                       HasSubstr("gives more")));
    const auto kit = demo.paper(PaperKind::kitList);
    EXPECT_THAT(kit, HasSubstr("Honey jar"));
    const auto buying =
        papers::renderText(paperOf(PaperKind::buyingList, {demo.season, demo.plan, std::nullopt, {}}));
    EXPECT_THAT(buying, HasSubstr("Lunch bowl"));
    EXPECT_THAT(buying, HasSubstr("Sat 25 Sep"));
}

/// Papers of bookings with nothing to pack, place or cut say so; none is blank.
TEST(ShedPapers, StandForEveryBooking) {
    const DemoShed demo;
    for (const auto& [id, booked] : demo.plan.bookings)
        for (const auto kind :
             {PaperKind::packingSheet, PaperKind::tablePlan, PaperKind::ribbonPlan, PaperKind::kitList}) {
            SCOPED_TRACE(demo.season.bookings.find(id)->title);
            EXPECT_GT(demo.paper(kind, id).size(), 300u);
        }
}

/// What the cutting leaves of each reel and end is told before it is written, for the first day that is still
/// to be written back and for no other.
TEST(RibbonBack, TellsWhatItWillWrite) {
    DemoShed demo;
    const auto day = demo.plan.shed->ribbon.front();
    const auto back = ribbonBack(demo.season, demo.plan.shed.get(), day->bookings.front());
    EXPECT_EQ(back.state, RibbonBack::State::offered);
    EXPECT_EQ(back.day, day->day);
    int cutInto = 0;
    for (const auto& plan : day->ribbons)
        for (const auto& bar : plan->bars)
            if (!bar.cuts.empty()) {
                ++cutInto;
                EXPECT_TRUE(back.lines.join(QLatin1Char(' ')).contains(leftWords(bar, demo.season)));
            }
    ASSERT_GT(cutInto, 0);
    ASSERT_GT(demo.plan.shed->ribbon.size(), 1u);
    const auto later = demo.plan.shed->ribbon[1]->bookings.front();
    EXPECT_EQ(ribbonBack(demo.season, demo.plan.shed.get(), later).state, RibbonBack::State::waits);
    demo.take(*edits::writeRibbonBack(demo.season, *day, LocalTime{day->day, 600}));
    EXPECT_EQ(ribbonBack(demo.season, demo.plan.shed.get(), day->bookings.front()).state,
              RibbonBack::State::done);
    EXPECT_EQ(ribbonBack(demo.season, demo.plan.shed.get(), later).state, RibbonBack::State::offered);
    EXPECT_EQ(ribbonBack(demo.season, nullptr, later).state, RibbonBack::State::none);
}

/// A ribbon that is not planned says why, on its page, on its papers and in the shelf's answer.
TEST(ShelfRows, ARibbonThatIsNotPlannedSaysWhy) {
    DemoShed demo;
    const auto& days = demo.plan.shed->ribbon;
    const auto found1 = std::find_if(days.begin(), days.end(), [&](const auto& d) {
        return !plan::ribbonIsOver(demo.season, *d,
                                   demo.plan.shed->today); // of what is over nothing is asked
    });
    ASSERT_NE(found1, days.end());
    const auto day = *found1;
    auto line = *demo.season.lines.find(day->ribbons.front()->wanted.front().line);
    line.pieces = Pieces(100'000);
    line.sparePieces = Pieces(100'000);
    const auto booking = line.booking;
    demo.take(model::Edit("t").put(line));
    bool found = false;
    for (const auto& one : demo.plan.shed->ribbon)
        for (const auto& plan : one->ribbons) {
            if (!plan::ribbonIsNotCut(*plan)) continue;
            found = true;
            const auto row = ribbonRow(demo.season, *plan, demo.plan.shed.get(), one->day);
            EXPECT_TRUE(row.asks);
            EXPECT_THAT(row.under.toStdString(), HasSubstr("Part the make-up over several days"));
        }
    ASSERT_TRUE(found);
    EXPECT_THAT(plainWords(shelfAnswer(demo.season, *demo.plan.shed)).toStdString(),
                HasSubstr("is not planned"));
    EXPECT_THAT(demo.paper(PaperKind::ribbonPlan, booking), HasSubstr("Not planned"));
    EXPECT_THAT(demo.paper(PaperKind::kitList, booking), HasSubstr("not planned"));
}

/// The model has no plan of the hall, and the drawing does not pretend to be one.
TEST(TablePlan, SaysThatItIsASketch) {
    DemoShed demo;
    EXPECT_THAT(demo.paper(PaperKind::tablePlan), HasSubstr("A sketch"));
    auto table = *demo.season.venueTables.find(Id<model::VenueTable>(1));
    table.howMany = 75;
    demo.take(model::Edit("t").put(table));
    EXPECT_THAT(hallNote(demo.season, *demo.plan.shed->tables.at(shedSupper)).toStdString(),
                HasSubstr("60 of 75 are drawn"));
}

/// More than the floor is laid out with: said as that, on the page and on the sheet, not as want of room.
TEST(PackingWords, TooManyThingsAreNotCalledWantOfRoom) {
    DemoShed demo;
    std::int64_t id = 0;
    model::Edit edit("t");
    for (auto holder : demo.season.holders)
        if (holder.kind == model::HolderKind::tray) {
            holder.innerLength = Millimetres(50);
            edit.put(holder);
            ++id;
        }
    ASSERT_GT(id, 0);
    for (const auto& line : demo.season.lines)
        if (line.booking == shedSupper) {
            auto many = line;
            many.pieces = Pieces(900);
            edit.put(many);
            break;
        }
    demo.take(edit);
    const auto& packed = *demo.plan.shed->packing.at(shedSupper);
    ASSERT_TRUE(tooManyToLay(packed));
    const auto answer = plainWords(packingAnswer(demo.season, &packed)).toStdString();
    EXPECT_THAT(answer, HasSubstr("too many to be laid out at once"));
    EXPECT_THAT(answer, testing::Not(HasSubstr("no room")));
    const auto sheet = demo.paper(PaperKind::packingSheet);
    EXPECT_THAT(sheet, HasSubstr("too many to be laid out at once"));
    EXPECT_THAT(sheet, testing::Not(HasSubstr("no room")));
    EXPECT_THAT(sheet, testing::Not(HasSubstr("No vehicle")));
    EXPECT_EQ(loadLines(demo.season, packed).size(), mostLoadLines + 1);
}

} // namespace withy::ui
