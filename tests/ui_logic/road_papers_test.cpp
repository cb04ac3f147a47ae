// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/papers/text_render.h"
#include "tests/ui_logic/laid_run_up.h"
#include "ui/logic/format.h"
#include "ui/logic/models/cutting_goals.h"
#include "ui/logic/paper/layout.h"
#include "ui/logic/papers/drop_answers.h"
#include "ui/logic/papers/papers.h"

#include <gmock/gmock.h>

#include <set>

namespace withy::ui::tests {

namespace {

using testing::HasSubstr;
using testing::Not;

} // namespace

class RoadPapers : public testing::Test {
protected:
    model::Season season = demoSeason();
    plan::Plan plan = withRunUp(season, demoPlan(season));

    [[nodiscard]] papers::Document paper(PaperKind kind, std::optional<Day> day = std::nullopt,
                                         Id<model::Booking> booking = roofSupper) const {
        const QDateTime printed(QDate(2027, 9, 9), QTime(19, 40));
        return paperOf(kind, {season, plan, booking, printed, std::nullopt, day});
    }

    template <class B>
    static std::vector<B> blocksOf(const std::vector<papers::Block>& body) {
        std::vector<B> out;
        for (const auto& block : body)
            if (const auto* b = std::get_if<B>(&block.content)) out.push_back(*b);
        return out;
    }

    static std::vector<papers::TimedTask> prepTasks(const papers::Document& d) {
        return blocksOf<papers::TimedTask>(std::get<papers::Columns>(d.body.front().content).left);
    }
};

namespace {

std::string answerOf(const papers::DropCard& card, const std::string& label) {
    for (const auto& answer : card.answers)
        if (answer.label == label) return papers::words(answer.words);
    return "no such answer";
}

} // namespace

TEST_F(RoadPapers, EveryDropAnswersInTheSameOrder) {
    const auto cards = blocksOf<papers::DropCard>(paper(PaperKind::runSheet).body);
    ASSERT_EQ(cards.size(), 2U);
    for (const auto& card : cards) {
        std::vector<std::string> labels;
        for (const auto& answer : card.answers)
            if (answer.label != "flame") labels.push_back(answer.label);
        EXPECT_EQ(labels, (std::vector<std::string>{"door", "key", "park", "water", "fix", "receives",
                                                    "clears", "back", "care"}));
    }
    // resources/demo: the first drop is at the library, of which no venue is known; the second at the hall.
    EXPECT_EQ(cards[0].name, "Library, foyer");
    EXPECT_EQ(answerOf(cards[0], "door"), "foyer");
    for (const char* blank : {"key", "park", "water", "fix"})
        EXPECT_EQ(answerOf(cards[0], blank), "") << blank << ": a box to write in";
    EXPECT_EQ(answerOf(cards[0], "receives"), "Miss Dunn, at the desk");
    EXPECT_EQ(cards[1].name, "Village Hall, kitchen door");
    EXPECT_EQ(answerOf(cards[1], "door"), "Kitchen door, yard side");
    EXPECT_THAT(answerOf(cards[1], "key"), HasSubstr("01632 960103"));
    EXPECT_THAT(answerOf(cards[1], "flame"), HasSubstr("No naked flame"));
    EXPECT_THAT(answerOf(cards[1], "clears"), HasSubstr("Sun 12 Sep, 10:00"));
    EXPECT_THAT(answerOf(cards[1], "care"), HasSubstr("decoration, not food"));
}

TEST_F(RoadPapers, EveryPieceIsCarriedIntoOneDrop) {
    std::multiset<std::string> carried, wanted;
    for (const auto& card : blocksOf<papers::DropCard>(paper(PaperKind::runSheet).body))
        for (const auto& item : card.items)
            if (papers::words(item.words).find("spare, for") == std::string::npos) carried.insert(item.count);
    for (const auto& line : season.lines)
        if (line.booking == roofSupper) wanted.insert(std::to_string(line.pieces.value));
    EXPECT_EQ(carried, wanted);
}

TEST_F(RoadPapers, EachStepHasItsTimeAndTheLatestThatStillHolds) {
    const auto d = paper(PaperKind::runSheet);
    const auto heads = blocksOf<papers::TimeHead>(d.body);
    ASSERT_EQ(heads.size(), 1U);
    EXPECT_EQ(heads[0].latest, "latest");
    const auto tasks = blocksOf<papers::TimedTask>(d.body);
    ASSERT_GE(tasks.size(), 3U);
    for (const auto& task : tasks) {
        SCOPED_TRACE(task.title);
        // The run-up here was laid with half an hour in hand throughout.
        const auto minutes = [](const std::string& clock) {
            return std::stoi(clock.substr(0, 2)) * 60 + std::stoi(clock.substr(3));
        };
        EXPECT_EQ(minutes(task.latest) - minutes(task.time), 30);
        EXPECT_EQ(minutes(task.time) % 5, 0);
    }
    EXPECT_THAT(papers::renderText(d), HasSubstr("30 min in hand"));
    EXPECT_THAT(papers::renderText(d), HasSubstr("driver: Wilf"));
    EXPECT_THAT(papers::renderText(d), HasSubstr("[________________]"));
}

TEST_F(RoadPapers, WithoutALaidRunUpNoLatestIsClaimed) {
    plan.runUp.reset();
    const auto d = paper(PaperKind::runSheet);
    for (const auto& task : blocksOf<papers::TimedTask>(d.body))
        EXPECT_EQ(task.latest, "") << task.title;
    EXPECT_THAT(papers::renderText(d), Not(HasSubstr("in hand")));
    EXPECT_EQ(blocksOf<papers::DropCard>(d.body).size(), 2U);
}

TEST_F(RoadPapers, ADropOfAnotherVenueTakesThatVenuesAnswers) {
    const auto& wedding =
        *season.bookings.find(Id<model::Booking>(2)); // at the barn, with a drop at the church
    const auto* church = season.drops.find(Id<model::Drop>(3));
    const auto* barn = season.drops.find(Id<model::Drop>(4));
    EXPECT_EQ(venueOfDrop(season, wedding, church)->name, "St Oswin's, Lower Sedge");
    EXPECT_EQ(venueOfDrop(season, wedding, barn)->name, "Tithe barn, Sedge Cross");
    const auto& supper = *season.bookings.find(roofSupper);
    EXPECT_EQ(venueOfDrop(season, supper, season.drops.find(Id<model::Drop>(1))), nullptr);
    EXPECT_EQ(venueOfDrop(season, supper, nullptr)->name, "Marrowby Village Hall");
}

TEST_F(RoadPapers, TheHandOverSaysWhatIsLeftAndWhatComesHome) {
    const auto d = paper(PaperKind::handOver);
    const auto words = papers::renderText(d);
    EXPECT_THAT(words, HasSubstr("Decoration, not food."));
    EXPECT_THAT(words, HasSubstr("The water is not for drinking."));
    EXPECT_THAT(words, HasSubstr("No naked flame"));
    const auto tables = blocksOf<papers::Table>(d.body);
    ASSERT_EQ(tables.size(), 1U);
    std::int64_t left = 0, wanted = 0;
    for (const auto& row : blocksOf<papers::CountRow>(d.body))
        left += std::stoll(row.count);
    for (const auto& line : season.lines)
        if (line.booking == roofSupper) wanted += line.pieces.value;
    EXPECT_EQ(left, wanted);
    EXPECT_EQ(papers::words(tables[0].rows[0].cells[0]), "Honey jar, 1 lb");
    EXPECT_EQ(papers::words(tables[0].rows[0].cells[5]), "£1.20 each"); // resources/demo/container.csv
    for (const char* claim : {"law", "liab", "legal", "insur", "safe", "edible"})
        EXPECT_THAT(words, Not(HasSubstr(claim)));
}

TEST_F(RoadPapers, AHelperSeesTheirOwnStepsAndWhoIsWithThem) {
    const auto d = paper(PaperKind::helperSheet, model::sample::day(2027, 9, 10));
    std::set<std::string> names{d.name};
    for (const auto& sheet : d.sheets)
        names.insert(sheet.name);
    // resources/demo/helper_hours.csv: Wilf and Nan are there in that week, Tess is not.
    EXPECT_EQ(names, (std::set<std::string>{"Wilf", "Nan Orrin"}));
    EXPECT_EQ(d.name, "Wilf");
    const auto tasks = blocksOf<papers::TimedTask>(d.body);
    std::size_t his = 0;
    for (const auto& step : plan.runUp->steps)
        for (const auto& worker : step.who)
            his += worker.helper == wilf && step.from.day >= model::sample::day(2027, 9, 6) &&
                           step.from.day <= model::sample::day(2027, 9, 12)
                       ? 1
                       : 0;
    EXPECT_EQ(tasks.size(), his);
    int together = 0;
    for (const auto& task : tasks)
        together += task.who == "with the grower" ? 1 : 0;
    EXPECT_GT(together, 0);
    const auto words = papers::renderText(d);
    EXPECT_THAT(words, HasSubstr("over 10 kg: two people")); // the demo's lifting limit
    EXPECT_THAT(words, HasSubstr("ladders."));               // agreed with him
    EXPECT_THAT(words, HasSubstr("Whom to ask"));
    EXPECT_THAT(words, HasSubstr("rules of the road decide"));
}

TEST_F(RoadPapers, AWeekWithoutHelpersSaysHowToHaveOne) {
    const auto words = papers::renderText(paper(PaperKind::helperSheet, model::sample::day(2027, 3, 15)));
    EXPECT_THAT(words, HasSubstr("No helper is here this week"));
}

TEST_F(RoadPapers, LabelsAddUpToTheStemsOfTheCuttingList) {
    const auto d = paper(PaperKind::bucketLabels);
    std::int64_t labelled = 0, wanted = 0;
    std::set<std::string> numbers, plants;
    for (const auto& label : d.labels) {
        labelled += std::stoll(label.count);
        numbers.insert(label.number);
        EXPECT_EQ(label.day, "Sat 11");
        EXPECT_EQ(label.round.rfind("round ", 0), 0U) << label.round;
        plants.insert(label.variety.empty() ? label.plant : label.plant + ", " + label.variety);
    }
    EXPECT_EQ(numbers.size(), d.labels.size());
    std::set<std::string> wantedPlants;
    for (const auto& goal : cuttingGoals(season, plan, roofSupper)) {
        wanted += goal.goal();
        wantedPlants.insert(season.plants.find(goal.plant)->name);
    }
    EXPECT_EQ(labelled, wanted);
    EXPECT_EQ(plants, wantedPlants);
    // The buckets are those that the cutting list names.
    const auto list = papers::renderText(paper(PaperKind::cuttingList));
    for (const auto& label : d.labels)
        if (label.band != papers::BucketLabel::Band::apart && !label.vessel.empty()) {
            EXPECT_THAT(list, testing::ContainsRegex("bucket.*" + label.vessel)) << label.plant;
        }
}

TEST_F(RoadPapers, LabelsWarnWhereThePlantDoes) {
    std::set<std::string> hurts;
    for (const auto& h : season.plantHazards)
        hurts.insert(season.plants.find(h.plant)->name);
    int warned = 0;
    for (const auto& label : paper(PaperKind::bucketLabels).labels) {
        const auto name = label.variety.empty() ? label.plant : label.plant + ", " + label.variety;
        EXPECT_EQ(label.caution, hurts.contains(name)) << name;
        EXPECT_EQ(label.caution, !label.cautionWords.empty());
        warned += label.caution ? 1 : 0;
    }
    EXPECT_GT(warned, 0);
}

TEST_F(RoadPapers, TheBoardHasSevenDaysWithTheirEventsAndBusyHours) {
    const auto d = paper(PaperKind::weekBoard, model::sample::day(2027, 9, 10));
    EXPECT_TRUE(d.landscape);
    const auto boards = blocksOf<papers::Lanes>(d.body);
    ASSERT_EQ(boards.size(), 1U);
    ASSERT_EQ(boards[0].lanes.size(), 7U);
    using Kind = papers::BoardItem::Kind;
    const auto titles = [&](std::size_t day, Kind kind) {
        std::vector<std::string> out;
        for (const auto& item : blocksOf<papers::BoardItem>(boards[0].lanes[day]))
            if (item.kind == kind) out.push_back(item.title);
        return out;
    };
    EXPECT_EQ(titles(5, Kind::fixed), std::vector<std::string>{"Library roof supper"});
    EXPECT_THAT(titles(4, Kind::busy), testing::Contains("Dentist")); // resources/demo/busy_hours.csv
    std::size_t rounds = 0, cuts = 0;
    for (std::size_t i = 0; i < 7; ++i)
        rounds += titles(i, Kind::round).size();
    for (const auto& step : plan.runUp->steps)
        cuts += step.key.step == plan::StepKind::cut && step.from.day >= model::sample::day(2027, 9, 6) &&
                        step.from.day <= model::sample::day(2027, 9, 12)
                    ? 1
                    : 0;
    EXPECT_EQ(rounds, cuts);
    EXPECT_GT(rounds, 0U);
    const auto heads = blocksOf<papers::BoardHead>(boards[0].lanes[0]);
    ASSERT_EQ(heads.size(), 1U);
    EXPECT_EQ(heads[0].title, "Mon 6 Sep");
}

TEST_F(RoadPapers, ThePrepSheetNamesWhoseStepItIsAndStopsWhereTheRoadBegins) {
    const auto tasks = prepTasks(paper(PaperKind::prepSheet));
    bool made = false;
    for (const auto& task : tasks) {
        if (task.title.rfind("Make up", 0) == 0) {
            EXPECT_EQ(task.who, "You, Wilf") << task.title;
            made = true;
        }
        EXPECT_EQ(task.title.find("Place at"), std::string::npos) << task.title;
    }
    EXPECT_TRUE(made);
}

TEST_F(RoadPapers, TheCuttingListCanBeHadByDay) {
    // A round for each plant in its patch, on one of four days.
    auto runUp = std::make_shared<plan::RunUpPlan>(*plan.runUp);
    runUp->rounds.clear();
    std::int64_t wanted = 0;
    for (const auto& goal : cuttingGoals(season, plan, roofSupper)) {
        plan::RunUpRound round;
        round.from = {model::sample::day(2027, 9, 6) + static_cast<int>(runUp->rounds.size() % 4), 17 * 60};
        round.to = round.from + Minutes(30);
        round.bookings = {roofSupper};
        round.patches.push_back(
            {goal.patch, goal.plant, Stems(goal.goal()), Minutes(5), std::nullopt, {roofSupper}});
        runUp->rounds.push_back(std::move(round));
        wanted += goal.goal();
    }
    plan.runUp = runUp;
    const auto days = daysOf(PaperKind::cuttingList, {season, plan, roofSupper});
    ASSERT_EQ(days.size(), 4U);
    std::int64_t listed = 0;
    for (const auto& day : days) {
        const auto d = paper(PaperKind::cuttingList, day.day);
        std::int64_t ofDay = 0;
        for (const auto& row : blocksOf<papers::TallyRow>(d.body))
            ofDay += std::stoll(row.count);
        EXPECT_THAT(day.words.toStdString(), HasSubstr(", " + std::to_string(ofDay) + " stem"));
        EXPECT_EQ(d.key, utf8(day.words.section(QLatin1Char(','), 0, 0)));
        listed += ofDay;
    }
    EXPECT_EQ(listed, wanted);
    EXPECT_TRUE(daysOf(PaperKind::runSheet, {season, plan, roofSupper}).empty());
}

TEST_F(RoadPapers, TwoRoundsOfOneDayAreTwoOutings) {
    const Day day = model::sample::day(2027, 9, 9);
    auto runUp = std::make_shared<plan::RunUpPlan>(*plan.runUp);
    runUp->rounds.clear();
    plan::RunUpRound dawn, dusk;
    dawn.from = {day, 6 * 60 + 30};
    dawn.to = {day, 7 * 60 + 30};
    dusk.from = {day, 18 * 60};
    dusk.to = {day, 19 * 60};
    dawn.bookings = dusk.bookings = {roofSupper};
    bool odd = false;
    for (const auto& goal : cuttingGoals(season, plan, roofSupper))
        ((odd = !odd) ? dawn : dusk)
            .patches.push_back(
                {goal.patch, goal.plant, Stems(goal.goal()), Minutes(5), std::nullopt, {roofSupper}});
    ASSERT_FALSE(dusk.patches.empty());
    runUp->rounds = {dawn, dusk};
    plan.runUp = runUp;
    const auto d = paper(PaperKind::cuttingList, day);
    const auto heads = blocksOf<papers::SectionHead>(d.body);
    ASSERT_EQ(heads.size(), 2U);
    EXPECT_THAT(papers::words(heads[0].note), HasSubstr("06:30 to 07:30"));
    EXPECT_THAT(papers::words(heads[1].note), HasSubstr("18:00 to 19:00"));
}

/// The demo's papers fit their sheets: one page where one is meant, and no word cut short.
TEST_F(RoadPapers, OnePageWhereOneIsMeantAndNothingCutShort) {
    for (const auto size : {paper::PaperSize::A4, paper::PaperSize::Letter})
        for (const auto kind : {PaperKind::runSheet, PaperKind::handOver, PaperKind::helperSheet,
                                PaperKind::weekBoard, PaperKind::bucketLabels}) {
            SCOPED_TRACE(paperTitle(kind).toStdString() +
                         (size == paper::PaperSize::A4 ? ", A4" : ", Letter"));
            // A sheaf for one gate; the supper's two drops, one with nothing known of it, take two sheets.
            const Id<model::Booking> booking(kind == PaperKind::runSheet ? 24 : 1);
            const auto document = paper(kind, model::sample::day(2027, 9, 10), booking);
            const auto layout = paper::layoutDocument(document, size);
            if (kind == PaperKind::runSheet || kind == PaperKind::handOver) {
                EXPECT_EQ(layout.pages.size(), 1U);
            }
            for (const auto& page : layout.pages)
                for (const auto& op : page.ops)
                    if (const auto* words = std::get_if<paper::TextOp>(&op)) {
                        EXPECT_FALSE(words->line.text().contains(QChar(0x2026)))
                            << words->line.text().toStdString();
                    }
        }
}

TEST(RoadPapersOfNothing, ABookingWithoutPiecesPrintsAllTheSame) {
    auto season = emptySeason(2027);
    season = model::apply(season, model::Edit("t").put(model::sample::booking(1, "Nothing yet")))->season;
    const auto plan = demoPlan(season);
    for (const auto kind : {PaperKind::runSheet, PaperKind::handOver, PaperKind::bucketLabels,
                            PaperKind::helperSheet, PaperKind::weekBoard}) {
        SCOPED_TRACE(paperTitle(kind).toStdString());
        const auto d = paperOf(kind, {season, plan, Id<model::Booking>(1)});
        EXPECT_GT(papers::renderText(d).size(), 100U);
        EXPECT_FALSE(paper::layoutDocument(d, paper::PaperSize::A4).pages.empty());
    }
}

} // namespace withy::ui::tests
