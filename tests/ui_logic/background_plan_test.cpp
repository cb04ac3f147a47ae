// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/plan_json.h"
#include "tests/support/season_text.h"
#include "tests/ui_logic/logic_fixture.h"
#include "ui/logic/edits.h"

#include <atomic>
#include <new>
#include <stdexcept>
#include <thread>

namespace withy::ui {

namespace {

/// Changes a fact that every booking's plan hangs on, so that a run has everything to do again.
model::Season withHeavierWork(const model::Season& season, int n) {
    model::Plant plant = *season.plants.begin();
    plant.notes = std::to_string(n);
    return model::apply(season, model::Edit("plant.change").put(plant)).value().season;
}

model::Edit piecesOf(const Workbench& bench, std::int64_t pieces) {
    return edits::setPieces(bench.season(), bench.season().lines.begin()->id, pieces);
}

std::string freshly(const Workbench& bench) {
    return plan::planJson(bench.season(), plan::plan(bench.season(), {bench.today(), {}}));
}

std::string shown(const Workbench& bench) {
    return plan::planJson(bench.season(), bench.plan());
}

} // namespace

class BackgroundPlan : public LogicTest {};

TEST_F(BackgroundPlan, TheFirstPlanComesByItself) {
    const auto bench = benchOn(demoSeason());
    EXPECT_TRUE(bench->plan().bookings.empty());
    EXPECT_FALSE(bench->planIsCurrent());
    QObject::connect(bench.get(), &Workbench::planned, [&] {
        EXPECT_FALSE(bench->plan().bookings.empty()) << "bookings are there before who gets which stems";
    });
    ASSERT_TRUE(eventually([&] { return bench->planIsCurrent(); }));
    EXPECT_EQ(shown(*bench), freshly(*bench));
}

TEST_F(BackgroundPlan, AnEditIsToldAtOnceAndItsPlanLater) {
    const auto bench = benchOn(demoSeason());
    bench->waitForPlan();
    std::vector<std::string> heard;
    QObject::connect(bench.get(), &Workbench::changed, [&] {
        heard.emplace_back("changed");
        EXPECT_FALSE(bench->planIsCurrent());
    });
    QObject::connect(bench.get(), &Workbench::planned, [&] { heard.emplace_back("planned"); });
    const auto older = shown(*bench);
    ASSERT_EQ(bench->apply(piecesOf(*bench, 333)), QString());
    EXPECT_EQ(heard, std::vector<std::string>{"changed"});
    EXPECT_EQ(shown(*bench), older) << "the older plan stays until the new one is there";
    ASSERT_TRUE(eventually([&] { return bench->planIsCurrent(); }));
    EXPECT_EQ(heard.front(), "changed");
    EXPECT_EQ(heard.back(), "planned");
    EXPECT_LE(heard.size(), 3u) << "the bookings, then the cover";
    EXPECT_EQ(shown(*bench), freshly(*bench));
    EXPECT_NE(shown(*bench), older);
}

TEST_F(BackgroundPlan, WaitingBringsThePlanAndTellsOnce) {
    const auto bench = benchOn(demoSeason());
    int plans = 0;
    QObject::connect(bench.get(), &Workbench::planned, [&] { ++plans; });
    bench->waitForPlan();
    bench->waitForPlan();
    EXPECT_EQ(plans, 1);
    QCoreApplication::processEvents(); // the runner's own notice finds nothing new
    EXPECT_EQ(plans, 1);
}

TEST_F(BackgroundPlan, AChainOfEditsEndsInThePlanOfTheLast) {
    const auto bench = benchOn(demoSeason());
    int plans = 0;
    QObject::connect(bench.get(), &Workbench::planned, [&] { ++plans; });
    for (int n = 1; n <= 60; ++n) {
        ASSERT_EQ(bench->apply(piecesOf(*bench, n)), QString());
        if (n % 7 == 0) QCoreApplication::processEvents();
        if (n % 20 == 0) {
            ASSERT_EQ(bench->undo(), QString());
        }
    }
    ASSERT_TRUE(eventually([&] { return bench->planIsCurrent(); }));
    EXPECT_EQ(shown(*bench), freshly(*bench));
    EXPECT_LE(plans, 2 * 64);
}

TEST_F(BackgroundPlan, MidnightPlansAnew) {
    const auto bench = benchOn(demoSeason(), Day::fromYmd(2027, 3, 1));
    bench->waitForPlan();
    const auto before = shown(*bench);
    bench->setToday(Day::fromYmd(2027, 9, 30));
    EXPECT_FALSE(bench->planIsCurrent());
    bench->waitForPlan();
    EXPECT_EQ(shown(*bench), freshly(*bench));
    EXPECT_FALSE(bench->canUndo());
}

TEST_F(BackgroundPlan, ClosingInTheMiddleOfARunIsQuick) {
    const auto season = demoSeason();
    for (int n = 0; n < 20; ++n) {
        PlanRunner runner([] {});
        runner.ask(withHeavierWork(season, n), {});
        if (n % 2 == 1) std::this_thread::sleep_for(std::chrono::milliseconds(n));
    }
    const auto bench = benchOn(season);
    ASSERT_EQ(bench->apply(piecesOf(*bench, 5)), QString()); // and then the bench goes
}

TEST_F(BackgroundPlan, OfManySnapshotsOnlyTheNewestIsPlanned) {
    const auto season = demoSeason();
    std::atomic<int> told = 0;
    PlanRunner runner([&] { ++told; });
    for (int n = 0; n < 200; ++n)
        runner.ask(withHeavierWork(season, n), {});
    const auto run = runner.wait();
    EXPECT_EQ(run->turn, 200u);
    EXPECT_EQ(run->season.plants.begin()->notes, "199");
    EXPECT_LT(told, 100);
}

TEST_F(BackgroundPlan, AKeyHeldDownDoesNotKeepEveryPlanAway) {
    const auto season = demoSeason();
    PlanRunner runner([] {});
    int n = 0;
    const auto covered = [&] { return runner.finished() && runner.finished()->plan.cover; };
    // Edits that come faster than any run: without patience none would ever finish.
    for (const auto start = std::chrono::steady_clock::now();
         !covered() && std::chrono::steady_clock::now() - start < std::chrono::seconds(30);
         std::this_thread::sleep_for(std::chrono::milliseconds(1)))
        runner.ask(withHeavierWork(season, ++n), {});
    EXPECT_TRUE(covered());
}

TEST_F(BackgroundPlan, TheOldSeasonMayGoWhileItIsPlanned) {
    auto season = demoSeason();
    PlanRunner runner([] {});
    for (int n = 1; n <= 300; ++n) { // copies go on both threads while rows are put
        runner.ask(season, {});
        model::Line line = *season.lines.begin();
        line.pieces = Pieces(n);
        season.lines.put(line);
    }
    runner.ask(season, {});
    const auto run = runner.wait();
    EXPECT_EQ(plan::planJson(season, run->plan), plan::planJson(season, plan::plan(season)));
}

class BenchKeeps : public LogicTest {};

TEST_F(BenchKeeps, ReadingOnlyRefusesInASentence) {
    benchOn(demoSeason()).reset();
    Workbench bench(store::SeasonFile::open(at("a.withy"), store::SeasonFile::Mode::read));
    QStringList said;
    QObject::connect(&bench, &Workbench::refused, [&](const QString& s) { said << s; });
    EXPECT_FALSE(bench.canWrite());
    EXPECT_FALSE(bench.take(piecesOf(bench, 5)));
    ASSERT_EQ(said.size(), 1);
    EXPECT_TRUE(said.front().contains(QStringLiteral("reading only"))) << said.front().toStdString();
    bench.waitForPlan();
    EXPECT_EQ(bench.plan().bookings.size(), bench.season().bookings.size());
}

TEST_F(BenchKeeps, AFullDiskChangesNothingInMemory) {
    store::OpenOptions options;
    options.mostPages = 400;
    const auto bench = benchOn(demoSeason(), std::nullopt, options);
    ASSERT_EQ(bench->apply(piecesOf(*bench, 7)), QString());
    ASSERT_EQ(bench->apply(piecesOf(*bench, 8)), QString());
    ASSERT_EQ(bench->undo(), QString());
    const auto before = exchange::exportSeason(bench->season());
    model::Edit big("client.add");
    for (int i = 0; i < 300; ++i) {
        model::Client client;
        client.id = Id<model::Client>(9000 + i);
        client.name = "Someone";
        client.note = std::string(9000, 'x');
        big.put(client);
    }
    int changes = 0;
    QObject::connect(bench.get(), &Workbench::changed, [&] { ++changes; });
    const QString said = bench->apply(big);
    EXPECT_TRUE(said.contains(QStringLiteral("disk is full"))) << said.toStdString();
    EXPECT_EQ(exchange::exportSeason(bench->season()), before);
    EXPECT_EQ(changes, 0);
    EXPECT_TRUE(bench->canUndo());
    EXPECT_TRUE(bench->canRedo()) << "what was undone may still be done again";
    ASSERT_EQ(bench->redo(), QString());
    EXPECT_EQ(bench->season().lines.begin()->pieces.value, 8);
}

TEST(PlanRunnerFaults, AFaultIsSaidAndThePlanBeforeStays) {
    bool faulty = false;
    PlanRunner runner([] {}, {[&](const auto& season, const auto& options, const auto& was,
                                  const auto& before, const auto& optionsBefore) {
                                  if (faulty) throw std::runtime_error("out of numbers");
                                  return plan::replanBookings(season, options, was, before, optionsBefore);
                              },
                              plan::replanGarden});
    const auto season = demoSeason();
    runner.ask(season, {});
    const auto good = runner.wait();
    ASSERT_TRUE(good->fault.isEmpty());
    faulty = true; // the threads are idle
    runner.ask(withHeavierWork(season, 1), {});
    const auto bad = runner.wait();
    EXPECT_TRUE(bad->fault.contains(QStringLiteral("out of numbers"))) << bad->fault.toStdString();
    EXPECT_EQ(plan::planJson(season, bad->plan), plan::planJson(season, good->plan));
    faulty = false;
    runner.ask(withHeavierWork(season, 2), {});
    const auto again = runner.wait();
    EXPECT_TRUE(again->fault.isEmpty());
    EXPECT_EQ(plan::planJson(again->season, again->plan),
              plan::planJson(again->season, plan::plan(again->season, {})));
}

TEST(PlanRunnerFaults, AFaultOfTheGardenLeavesTheBookingsNew) {
    bool faulty = false;
    PlanRunner runner(
        [] {}, {plan::replanBookings, [&](const auto& season, const auto& options, plan::Plan next,
                                          const auto& was, const auto& before, const auto& optionsBefore) {
                    if (faulty) throw std::bad_alloc();
                    return plan::replanGarden(season, options, std::move(next), was, before, optionsBefore);
                }});
    const auto season = demoSeason();
    runner.ask(season, {});
    const auto good = runner.wait();
    faulty = true;
    const auto more =
        model::apply(season, edits::setPieces(season, season.lines.begin()->id, 333)).value().season;
    runner.ask(more, {});
    const auto bad = runner.wait();
    EXPECT_FALSE(bad->fault.isEmpty());
    EXPECT_TRUE(bad->whole);
    EXPECT_NE(bad->plan.bookings, good->plan.bookings) << "those could be planned";
    faulty = false;
    runner.ask(more, {});
    EXPECT_EQ(plan::planJson(more, runner.wait()->plan), plan::planJson(more, plan::plan(more, {})));
}

TEST_F(BackgroundPlan, AfterAFaultThePlanIsNotTakenForTheSeasons) {
    std::atomic<bool> faulty = false;
    PlanRunner::Planners planners;
    planners.bookings = [&](const auto& season, const auto& options, const auto& was, const auto& before,
                            const auto& optionsBefore) {
        if (faulty) throw std::runtime_error("out of numbers");
        return plan::replanBookings(season, options, was, before, optionsBefore);
    };
    Workbench bench(store::SeasonFile::create(at("a.withy"), demoSeason()), std::nullopt, nullptr, planners);
    bench.waitForPlan();
    ASSERT_TRUE(bench.planIsCurrent());
    QStringList said;
    QObject::connect(&bench, &Workbench::refused, [&](const QString& why) { said << why; });
    faulty = true;
    ASSERT_EQ(bench.apply(piecesOf(bench, 333)), QString());
    bench.waitForPlan();
    EXPECT_FALSE(bench.planIsCurrent());
    EXPECT_EQ(said.size(), 1);
    faulty = false;
    ASSERT_EQ(bench.apply(piecesOf(bench, 334)), QString());
    bench.waitForPlan();
    EXPECT_TRUE(bench.planIsCurrent());
    EXPECT_EQ(shown(bench), freshly(bench));
}

} // namespace withy::ui
