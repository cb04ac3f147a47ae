// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/working_lines.h"
#include "core/model/origin.h"
#include "core/plan/heat_working.h"
#include "core/plan/size_faults.h"
#include "tests/model/sample.h"
#include "tests/ui_logic/planned_demo.h"
#include "tests/ui_logic/supper_jars.h"
#include "ui/logic/edits/finding_edits.h"
#include "ui/logic/models/booking_pieces.h"
#include "ui/logic/models/cut_times.h"
#include "ui/logic/models/finding_list.h"
#include "ui/logic/models/kit_rows.h"
#include "ui/logic/models/money_rows.h"
#include "ui/logic/models/stem_rows.h"
#include "ui/logic/models/week_working.h"
#include "ui/logic/shed/kit_working.h"
#include "ui/logic/wording.h"

#include <gmock/gmock.h>

#include <set>

/// Figures that open: each working comes to its figure, and its lines lead to what they rest on.
namespace withy::ui::tests {

namespace {

using model::TableKind;
using testing::HasSubstr;

/// What the lines before the last come to, taken in order; a result is where they stood.
double comesTo(const Working& working) {
    double sum = 0;
    for (const auto& line : working) {
        if (line.unit == Unit::time) continue;
        if (line.step == Step::given || line.step == Step::plus) sum += line.value;
        if (line.step == Step::minus) sum -= line.value;
    }
    return sum;
}

model::Season put(const model::Season& season, const model::Edit& edit) {
    auto applied = model::apply(season, edit);
    EXPECT_TRUE(applied.ok());
    return applied.ok() ? applied->season : season;
}

/// Six jars, and two suppers on one Saturday of ten and four.
model::Season twoSuppers() {
    model::Edit edit("suppers");
    putSupperJar(edit);
    putSupper(edit, 1, "Library supper", 9, 10);
    putSupper(edit, 2, "Barn lunch", 9, 4);
    return put(model::sample::season(), edit);
}

plan::Plan planned(const model::Season& season) {
    plan::PlanOptions options;
    options.today = Day::fromYmd(2027, 9, 1);
    return plan::plan(season, options);
}

class Workings : public PlannedDemo {};

} // namespace

// By hand: 10 for the supper and 4 out with the lunch, of 6 owned, are 8 short; the lunch lacks the same 8.
TEST(KitWorking, NamesWhoHasTheJarsAndComesToWhatIsShort) {
    const auto season = twoSuppers();
    const auto plan = planned(season);
    const Id<model::Booking> supper(1);
    const auto sheet = kitSheet(season, *plan.bookings.at(supper), plan.shed.get());
    const auto row = std::find_if(sheet.rows.begin(), sheet.rows.end(),
                                  [](const auto& r) { return r.name == QStringLiteral("Honey jar"); });
    ASSERT_NE(row, sheet.rows.end());
    ASSERT_EQ(row->cells.size(), 4u);
    const auto& others = row->cells[2].figure;
    const auto& lacking = row->cells[3].figure;
    ASSERT_TRUE(others);
    ASSERT_TRUE(lacking);
    EXPECT_EQ(others->words.toStdString(), "4");
    EXPECT_EQ(lacking->words.toStdString(), "8");
    EXPECT_EQ(row->cells[3].tone, SheetCell::Tone::asks);
    EXPECT_EQ(comesTo(lacking->working), 8);
    EXPECT_EQ(lacking->working.back().what, "short");
    EXPECT_EQ(lacking->working.back().value, 8);
    EXPECT_EQ(lacking->leadsTo, (model::Ref{TableKind::containers, 1}));
    const auto lunch = std::find_if(others->working.begin(), others->working.end(),
                                    [](const auto& l) { return l.subject == "Barn lunch"; });
    ASSERT_NE(lunch, others->working.end());
    EXPECT_EQ(lunch->value, 4);
    EXPECT_EQ(model::placeOf(lunch->from), (model::Ref{TableKind::bookings, 2}));
}

TEST_F(Workings, OfTheKitComeToTheirFiguresInEveryBooking) {
    int shorts = 0;
    for (const auto& item : plan().shed->kit) {
        if (!item.owned) continue;
        for (const auto& hold : item.holds) {
            const auto on = kitOnDay(plan().shed.get(), item.item, hold.booking);
            ASSERT_TRUE(on);
            const double scale = item.inThousandths ? 1000 : 1;
            const auto shortage = kitShortWorking(season(), *plan().shed, item.item, hold.booking, *on);
            const double lacks =
                static_cast<double>(on->needed + on->others + on->broken - on->owned) / scale;
            EXPECT_NEAR(comesTo(shortage), lacks, 1e-9);
            EXPECT_NEAR(shortage.back().value, std::abs(lacks), 1e-9);
            const auto others = kitOthersWorking(season(), *plan().shed, item.item, hold.booking, *on);
            EXPECT_NEAR(comesTo(others), static_cast<double>(on->others + on->broken) / scale, 1e-9);
            shorts += lacks > 0 ? 1 : 0;
        }
    }
    EXPECT_GT(shorts, 0);
}

TEST_F(Workings, OfThePiecesTotalAddUpTheMakingAndTheList) {
    const auto making = makingTotal(season(), ofSupper());
    double minutes = 0;
    for (const auto& step : ofSupper().steps)
        if (step.kind == plan::StepKind::make) minutes += static_cast<double>(step.minutes.value);
    ASSERT_GT(minutes, 0);
    EXPECT_EQ(comesTo(making.working), minutes);
    EXPECT_EQ(making.working.back().value, minutes);
    EXPECT_EQ(model::placeOf(making.working.front().from)->table, TableKind::designs);
    const auto worth = worthTotal(season(), ofSupper());
    EXPECT_EQ(worth.working.back().value, static_cast<double>(ofSupper().money->list.total.minor));
    EXPECT_EQ(worth.lines.size(), static_cast<qsizetype>(worth.working.size()));
}

TEST_F(Workings, OfTheMoneyLeadToPiecesDesignsAndPayments) {
    const auto sheet = sumSheet(season(), ofSupper());
    std::set<TableKind> places;
    for (const auto& row : sheet.rows)
        for (const auto& line : row.cells[0].figure->working) {
            const auto place = model::placeOf(line.from);
            if (place) places.insert(place->table);
            EXPECT_TRUE(place || line.what != "price a piece") << line.subject;
        }
    EXPECT_TRUE(places.count(TableKind::lines));
    EXPECT_TRUE(places.count(TableKind::designs));
    EXPECT_FALSE(places.count(TableKind::bookings)) << "what is typed on the page needs no way there";
}

TEST_F(Workings, OfARoundCountItsStemsAndItsWarmth) {
    const auto sheet = roundSheet(season(), plan(), ofSupper());
    ASSERT_FALSE(sheet.rows.empty());
    const CutTimes times(plan(), theSupper);
    int warm = 0;
    for (std::size_t i = 0; i < sheet.rows.size(); ++i) {
        const auto& stems = sheet.rows[i].cells[1].figure;
        ASSERT_TRUE(stems);
        EXPECT_EQ(comesTo(stems->working), stems->working.back().value);
        EXPECT_EQ(whole(static_cast<std::int64_t>(stems->working.back().value)), stems->words);
        const auto& warmest = sheet.rows[i].cells[3].figure;
        if (!warmest) continue;
        ++warm;
        const auto& day = plan().days->on(times.all()[i].from.day).garden.heat;
        EXPECT_EQ(warmest->working[0].value, day.minimum);
        EXPECT_EQ(warmest->working[1].value, day.maximum);
        EXPECT_LE(warmest->working.back().value, day.maximum + 1e-9);
        EXPECT_GE(warmest->working.back().value, day.minimum - 1e-9);
        const auto limit = std::find_if(warmest->working.begin(), warmest->working.end(),
                                        [](const auto& l) { return l.what == "heat limit"; });
        ASSERT_NE(limit, warmest->working.end());
        EXPECT_EQ(limit->value, season().theSettings().heatLimitCelsius);
        EXPECT_EQ(model::placeOf(limit->from), (model::Ref{TableKind::settings, 1}));
    }
    EXPECT_GT(warm, 0);
}

// By hand: 50 and 32 minutes on Monday are 82, told as 80; 20 on Tuesday; 100 in the week. Hours that are
// taken are no work.
TEST(WeekWorking, AddsTheDaysAsTheyAreTold) {
    const auto step = [](std::int64_t minutes, const char* whose, std::int64_t id) {
        WeekStep s;
        s.minutes = Minutes(minutes);
        s.bookingName = QString::fromUtf8(whose);
        s.booking = Id<model::Booking>(id);
        return s;
    };
    std::vector<WeekDay> days(2);
    days[0].day = *Day::fromYmd(2027, 9, 6);
    days[1].day = days[0].day + 1;
    WeekStep school;
    school.words = QStringLiteral("School run");
    days[0].steps = {step(30, "Supper", 1), school, step(32, "Lunch", 2), step(20, "Supper", 1)};
    days[0].work = toldWork(Minutes(82));
    days[1].steps = {step(20, "Lunch", 2)};
    days[1].work = Minutes(20);
    const auto f = weekFigure(days);
    EXPECT_EQ(f.words.toStdString(), "1 h 40");
    QStringList said = grouped(lines(f.working, model::UnitSystem::metric), f.working);
    EXPECT_EQ(
        said.join(QLatin1Char('|')).toStdString(),
        "50 min, work, Supper + 32 min, work, Lunch = 80 min, work of the day, to five minutes, Mon 6 Sep|"
        "20 min, work, Lunch = 20 min, work of the day, to five minutes, Tue 7 Sep|"
        "80 min, work of the day, Mon 6 Sep + 20 min, work of the day, Tue 7 Sep = 100 min, work of the "
        "week");
    EXPECT_EQ(model::placeOf(f.working[0].from), (model::Ref{TableKind::bookings, 1}));
    EXPECT_TRUE(weekFigure({}).words.isEmpty());
}

TEST(WorkingLeads, StandOnceAPlaceBesideTheirLine) {
    const auto settings = model::originInSettings();
    const Working working{lineOf(Step::given, "stems", 70, Unit::stems),
                          from(settings, lineOf(Step::given, "spare share", 10, Unit::percent, Basis::mine)),
                          from(settings, lineOf(Step::given, "confidence", 95, Unit::percent, Basis::mine)),
                          lineOf(Step::result, "total", 77, Unit::stems),
                          from(model::originOf(TableKind::rates, 0),
                               lineOf(Step::times, "minutes each", 2, Unit::minutes, Basis::commonPractice))};
    const auto all = groups(lines(working, model::UnitSystem::metric), working);
    ASSERT_EQ(all.size(), 2u);
    ASSERT_EQ(all[0].leads.size(), 1u) << "two settings, one place";
    EXPECT_EQ(all[0].leads[0].place, (model::Ref{TableKind::settings, 1}));
    EXPECT_EQ(all[0].leads[0].words.toStdString(), "Settings");
    EXPECT_THAT(all[0].leads[0].spoken.toStdString(), HasSubstr("10 %, spare share"));
    ASSERT_EQ(all[1].leads.size(), 1u);
    EXPECT_EQ(all[1].leads[0].words.toStdString(), "Times of work");
    EXPECT_FALSE(model::placeOf(Origin{}));
    EXPECT_FALSE(model::placeOf(Origin{1000, 1}));
}

// A lift over the rim is said with the design, with each booking that uses it and once in the season;
// accepted, it is quiet until a size changes.
TEST(SizeFindings, StandAmongAllOthers) {
    auto season = demoSeason();
    auto jar = *season.designs.find(Id<model::Design>(1));
    ASSERT_TRUE(jar.container);
    const auto depth = season.containers.find(*jar.container)->innerDepth;
    jar.lift = depth + Millimetres(35);
    season.designs.put(jar);
    auto plan = planned(season);
    const auto lifted = [](const std::vector<ListedFinding>& list) {
        std::vector<ListedFinding> out;
        for (const auto& l : list)
            if (plan::sizeFaultOf(l.finding.code) == plan::SizeFault::liftOverRim) out.push_back(l);
        return out;
    };
    const auto here = lifted(findingsOfDesign(season, plan, jar.id));
    ASSERT_EQ(here.size(), 1u);
    EXPECT_EQ(here[0].finding.place, (model::Ref{TableKind::designs, 1}));
    EXPECT_EQ(lifted(findingsOf(season, plan, Id<model::Booking>(1))).size(), 1u);
    EXPECT_EQ(lifted(findingsOfSeason(season, plan)).size(), 1u);
    const auto words = sentence(here[0].finding, model::UnitSystem::metric).toStdString();
    EXPECT_THAT(words, HasSubstr(jar.name));
    EXPECT_THAT(words, HasSubstr("hang over the rim"));
    EXPECT_EQ(plan::findingWord(here[0].finding.code), "lift over rim");
    for (const auto& f : plan.designs.at(jar.id)->findings)
        EXPECT_FALSE(f.code == plan::FindingCode::sizesImpossible && f.subjects.back() == "lift")
            << "the size itself says it better";

    season = put(season, edits::acceptFinding(season, here[0], *Day::fromYmd(2027, 9, 1)));
    EXPECT_TRUE(lifted(findingsOfDesign(season, plan, jar.id)).at(0).accepted);
    EXPECT_TRUE(lifted(findingsOf(season, plan, Id<model::Booking>(1))).at(0).accepted);
    jar.lift = depth + Millimetres(40);
    season.designs.put(jar);
    plan = planned(season);
    EXPECT_FALSE(lifted(findingsOfDesign(season, plan, jar.id)).at(0).accepted);
}

TEST(SizeFindings, OfAJarAreToldOnceHoweverManyDesignsStandInIt) {
    auto season = demoSeason();
    const auto first = *season.designs.find(Id<model::Design>(1));
    auto jar = *season.containers.find(*first.container);
    jar.outerHeight = jar.innerDepth - Millimetres(8);
    season.containers.put(jar);
    auto copy = first;
    copy.id = season.designs.nextId();
    copy.name = "The same again";
    season.designs.put(copy);
    const auto plan = planned(season);
    int told = 0;
    for (const auto& l : findingsOfSeason(season, plan)) {
        if (plan::sizeFaultOf(l.finding.code) != plan::SizeFault::deeperThanHigh) continue;
        ++told;
        EXPECT_EQ(l.finding.place, (model::Ref{TableKind::containers, jar.id.value}));
        EXPECT_THAT(sentence(l.finding, model::UnitSystem::metric).toStdString(), HasSubstr(jar.name));
        EXPECT_FALSE(l.booking) << "it is the jar's, in any booking";
    }
    EXPECT_EQ(told, 1);
}

/// Every fault has its word and its sentence.
TEST(SizeFindings, EachHasItsWordAndSentence) {
    model::Design design;
    design.name = "Supper jar";
    for (int i = 0; i <= static_cast<int>(plan::SizeFault::tailOverGround); ++i) {
        plan::SizeFinding size;
        size.fault = static_cast<plan::SizeFault>(i);
        size.place = {TableKind::designs, 1};
        size.subject = "Moss";
        size.first = 140;
        size.second = 105;
        const auto f = plan::findingOf(size, design);
        SCOPED_TRACE(std::string(plan::findingWord(f.code)));
        EXPECT_FALSE(plan::findingWord(f.code).empty());
        EXPECT_EQ(plan::sizeFaultOf(f.code), size.fault);
        const auto words = sentence(f, model::UnitSystem::metric);
        EXPECT_TRUE(words.startsWith(QStringLiteral("Supper jar, Moss"))) << words.toStdString();
        EXPECT_TRUE(words.endsWith(QLatin1Char('.')));
    }
    EXPECT_FALSE(plan::sizeFaultOf(plan::FindingCode::neckLoose));
}

} // namespace withy::ui::tests
