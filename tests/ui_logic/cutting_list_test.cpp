// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/papers/text_render.h"
#include "core/plan/day_heat.h"
#include "tests/model/sample.h"
#include "ui/logic/edits/tally_edits.h"
#include "ui/logic/models/cutting_goals.h"
#include "ui/logic/paper_shop.h"
#include "ui/logic/papers/cutting_hours.h"
#include "ui/logic/papers/cutting_vessels.h"
#include "ui/logic/starting_seasons.h"

#include <gmock/gmock.h>

#include <numeric>
#include <set>

namespace withy::ui {

namespace {

using testing::HasSubstr;

constexpr Id<model::Booking> supperOfList{1};

plan::Plan planFor(const model::Season& season) {
    plan::PlanOptions options;
    options.today = model::sample::day(2027, 9, 6);
    return plan::plan(season, options);
}

papers::Document listOf(const model::Season& season, const plan::Plan& plan,
                        Id<model::Booking> booking = supperOfList) {
    const QDateTime printed(QDate(2027, 9, 9), QTime(19, 40));
    return paperOf(PaperKind::cuttingList, {season, plan, booking, printed});
}

template <class B>
std::vector<B> blocksOf(const papers::Document& d) {
    std::vector<B> out;
    for (const auto& block : d.body)
        if (const auto* b = std::get_if<B>(&block.content)) out.push_back(*b);
    return out;
}

} // namespace

TEST(CuttingList, EveryGoalHasItsRowItsBoxesAndItsPatch) {
    const auto season = demoSeason();
    const auto plan = planFor(season);
    const auto d = listOf(season, plan);
    const auto goals = cuttingGoals(season, plan, supperOfList);
    const auto rows = blocksOf<papers::TallyRow>(d);
    ASSERT_FALSE(rows.empty());
    ASSERT_LE(rows.size(), goals.size()) << "what is cut on one round in one patch is one row";
    std::set<std::string> listedPlants, wantedPlants;
    for (const auto& goal : goals)
        wantedPlants.insert(season.plants.find(goal.plant)->name);
    std::int64_t listed = 0;
    std::int64_t wanted = 0;
    for (const auto& row : rows) {
        SCOPED_TRACE(row.title);
        const int boxes = std::accumulate(row.boxes.begin(), row.boxes.end(), 0);
        EXPECT_EQ(std::to_string(boxes), row.count) << "one box a ten, the last the rest";
        EXPECT_EQ(row.boxes.size(), static_cast<std::size_t>((boxes + 9) / 10));
        EXPECT_FALSE(row.bucket.empty());
        EXPECT_EQ(row.writeLabel, "cut");
        EXPECT_TRUE(row.unit == "stems" || row.unit == "or all") << row.unit;
        EXPECT_THAT(papers::words(row.detail), testing::AnyOf(HasSubstr("cut"), HasSubstr("pull")));
        listed += boxes;
        listedPlants.insert(row.title);
    }
    EXPECT_EQ(listedPlants, wantedPlants);
    for (const auto& goal : goals)
        wanted += goal.goal();
    EXPECT_EQ(listed, wanted);
    EXPECT_FALSE(blocksOf<papers::HourStrip>(d).empty());
    EXPECT_FALSE(blocksOf<papers::PatchHead>(d).empty());
    EXPECT_FALSE(blocksOf<papers::Cautions>(d).empty());
    const auto words = papers::renderText(d);
    EXPECT_THAT(words, HasSubstr("Library roof supper"));
    EXPECT_THAT(words, HasSubstr("Tunnel side"));
    EXPECT_EQ(paperKind("cutting"), PaperKind::cuttingList);
    EXPECT_TRUE(needsBooking(PaperKind::cuttingList));
}

TEST(CuttingList, GlovesStandAtThePlantThatNeedsThem) {
    const auto season = demoSeason();
    const auto plan = planFor(season);
    std::set<std::string> harmful;
    for (const auto& h : season.plantHazards)
        if (h.kind == model::HazardKind::sap || h.kind == model::HazardKind::skin ||
            h.kind == model::HazardKind::thorns)
            harmful.insert(season.plants.find(h.plant)->name);
    int gloves = 0;
    for (const auto& booking : season.bookings)
        for (const auto& row : blocksOf<papers::TallyRow>(listOf(season, plan, booking.id))) {
            const bool said = papers::words(row.detail).find("gloves") != std::string::npos;
            EXPECT_EQ(said, harmful.contains(row.title)) << row.title;
            gloves += said ? 1 : 0;
        }
    EXPECT_GT(gloves, 0);
}

TEST(CuttingList, ARoundForTwoBookingsTellsThemApartByLetters) {
    auto season = demoSeason();
    // Two more jars for somebody else at the very same time.
    auto other = *season.bookings.find(supperOfList);
    other.id = season.bookings.nextId();
    other.title = "Christening";
    model::Line jars;
    for (const auto& line : season.lines)
        if (line.booking == supperOfList && line.pieces.value > 2) jars = line;
    jars.id = season.lines.nextId();
    jars.booking = other.id;
    jars.pieces = Pieces(2);
    jars.drop.reset();
    season = model::apply(season, model::Edit("t").put(other).put(jars))->season;
    const auto plan = planFor(season);
    std::optional<Day> day;
    for (const auto& goal : cuttingGoals(season, plan, other.id))
        for (const auto& own : cuttingGoals(season, plan, supperOfList))
            if (own.day == goal.day) day = goal.day;
    ASSERT_TRUE(day) << "the two are cut for on one day";
    const auto cutting = edits::cuttingOn(season, plan, supperOfList, *day);
    const Id<model::Patch> patch = cuttingGoals(season, plan, supperOfList).front().patch;
    const auto step = edits::addStems(season, cutting, patch, edits::TallyCount::cut, 1);
    season = model::apply(season, step.edit)->season;
    model::RoundBooking serving;
    serving.id = season.roundBookings.nextId();
    serving.round = edits::roundOn(season, supperOfList, *day)->id;
    serving.booking = other.id;
    season = model::apply(season, model::Edit("t").put(serving))->season;
    std::set<std::string> marks;
    for (const auto& row : blocksOf<papers::TallyRow>(listOf(season, plan)))
        marks.insert(row.mark);
    marks.erase("");
    EXPECT_EQ(marks, (std::set<std::string>{"C", "L"}));
}

TEST(CuttingList, ABookingWithoutPiecesSaysSo) {
    auto season = emptySeason(2027);
    season = model::apply(season, model::Edit("t").put(model::sample::booking(1, "Nothing yet")))->season;
    const auto words = papers::renderText(listOf(season, planFor(season)));
    EXPECT_THAT(words, HasSubstr("Nothing to cut is known of yet"));
}

// A day of 9 to 25 C: under 22 in the morning, over it later. Where the line lies is the curve's own affair
// (core/garden/heat.h, checked there); here only that the strip tells it.
TEST(CuttingHours, HatchesWhatIsTooWarm) {
    plan::PlaceDay day;
    day.basis = plan::HeatBasis::forecast;
    day.garden.heat.minimum = 9;
    day.garden.heat.maximum = 25;
    day.garden.heat.sunrise = 6.44;
    day.garden.heat.sunset = 19.4;
    const auto dawn = cuttingHours(day, 22, 6 * 60 + 35, model::UnitSystem::metric);
    ASSERT_EQ(dawn.cells.size(), 7U);
    EXPECT_EQ(dawn.cells.front().hour, "06");
    EXPECT_FALSE(dawn.cells.front().closed);
    EXPECT_TRUE(dawn.cells.back().closed);
    EXPECT_EQ(dawn.closedNote, "too warm to cut from here");
    EXPECT_EQ(dawn.openNote, "sun up 06:26");
    EXPECT_NEAR(dawn.noteAt, 0.44, 1e-9);
    const auto evening = cuttingHours(day, 22, 18 * 60, model::UnitSystem::metric);
    EXPECT_TRUE(evening.cells.front().closed);
    EXPECT_THAT(evening.closedNote, HasSubstr("too warm until"));
    EXPECT_EQ(evening.openNote, "sun down 19:24");
    EXPECT_FALSE(tooWarmFrom(day, 22, 395).isEmpty());
    EXPECT_TRUE(tooWarmFrom(day, 30, 395).isEmpty());
    day.basis.reset();
    for (const auto& cell : cuttingHours(day, 22, std::nullopt, model::UnitSystem::metric).cells)
        EXPECT_TRUE(cell.value.empty() && !cell.closed) << "nothing known, nothing said";
}

TEST(CuttingVesselsTest, BucketsAreSharedWhileARowFits) {
    model::Season season = emptySeason(2027);
    model::Holder bucket;
    bucket.id = Id<model::Holder>(1);
    bucket.name = "Bucket";
    bucket.kind = model::HolderKind::bucket;
    bucket.owned = 10;
    bucket.shortStems = Stems(80);
    bucket.middleStems = Stems(50);
    model::Holder box = bucket;
    box.id = Id<model::Holder>(2);
    box.kind = model::HolderKind::griddedBox;
    box.cells = 4;
    box.stemsPerCell = Stems(6);
    season = model::apply(season, model::Edit("t").put(bucket).put(box))->season;
    CuttingVessels vessels(season);
    const Millimetres shortStem(300);
    const Millimetres middle(450);
    EXPECT_EQ(vessels.next(53, shortStem, false), QStringLiteral("bucket 1"));
    EXPECT_EQ(vessels.next(80, middle, false), QStringLiteral("buckets 2, 3"));
    EXPECT_EQ(vessels.next(27, shortStem, false), QStringLiteral("bucket 1")) << "53 + 27 = 80, by hand";
    EXPECT_EQ(vessels.next(1, shortStem, false), QStringLiteral("bucket 4"));
    EXPECT_EQ(vessels.next(20, middle, false), QStringLiteral("bucket 3")) << "100 - 80 = 20, by hand";
    EXPECT_EQ(vessels.next(13, middle, true), QStringLiteral("box A, 3 cells of 6"));
    EXPECT_EQ(vessels.next(7, middle, true), QStringLiteral("boxes A to B, 2 cells of 6"));
    EXPECT_EQ(vessels.next(9, Millimetres(900), false), QString()) << "no room stated for long stems";
    EXPECT_EQ(CuttingVessels(emptySeason(2027)).next(9, middle, true), QString());
}

} // namespace withy::ui
