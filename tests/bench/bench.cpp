// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/plan.h"
#include "tests/support/large_seasons.h"
#include "ui/logic/edits.h"
#include "ui/logic/fonts.h"
#include "ui/logic/paper/pdf.h"
#include "ui/logic/paper_shop.h"
#include "ui/logic/starting_seasons.h"
#include "ui/logic/workbench.h"

#include <QBuffer>
#include <QGuiApplication>
#include <QTemporaryDir>

#include <benchmark/benchmark.h>

namespace withy {

namespace {

const model::Season& demo() {
    static const model::Season season = ui::demoSeason();
    return season;
}

void planDemo(benchmark::State& state) {
    for (auto _ : state)
        benchmark::DoNotOptimize(plan::plan(demo()));
}

void openAndPlanDemo(benchmark::State& state) {
    const QTemporaryDir folder;
    const auto path = folder.filePath(QStringLiteral("demo.withy"));
    store::SeasonFile::create(path, demo()).close();
    for (auto _ : state) {
        const auto file = store::SeasonFile::open(path, store::SeasonFile::Mode::write);
        benchmark::DoNotOptimize(plan::plan(file.season()));
    }
}

/// From the edit to the new plan, the file included: what a grower waits for.
void editToPlan(benchmark::State& state, const model::Season& season) {
    const QTemporaryDir folder;
    ui::Workbench bench(store::SeasonFile::create(folder.filePath(QStringLiteral("a.withy")), season));
    const auto line = season.lines.begin()->id;
    std::int64_t pieces = 1;
    bench.waitForPlan();
    for (auto _ : state) {
        bench.apply(ui::edits::setPieces(bench.season(), line, pieces = pieces % 50 + 1));
        bench.waitForPlan();
    }
}

/// From the edit until the window may go on: the file, without the plan.
void editAlone(benchmark::State& state, const model::Season& season) {
    const QTemporaryDir folder;
    ui::Workbench bench(store::SeasonFile::create(folder.filePath(QStringLiteral("a.withy")), season));
    const auto line = season.lines.begin()->id;
    std::int64_t pieces = 1;
    for (auto _ : state)
        bench.apply(ui::edits::setPieces(bench.season(), line, pieces = pieces % 50 + 1));
}

void planAfterAPlantChanges(benchmark::State& state) {
    model::Plant plant = *demo().plants.begin();
    plant.notes += " ";
    const auto after = model::apply(demo(), model::Edit("x").put(plant)).value().season;
    const auto before = plan::plan(demo());
    for (auto _ : state)
        benchmark::DoNotOptimize(plan::replan(after, {}, demo(), before, {}));
}

void prepSheetToPdf(benchmark::State& state) {
    const auto plan = plan::plan(demo());
    for (auto _ : state) {
        QByteArray bytes;
        QBuffer buffer(&bytes);
        buffer.open(QIODevice::WriteOnly);
        const auto sheet =
            ui::paperOf(ui::PaperKind::prepSheet, {demo(), plan, demo().bookings.begin()->id, {}});
        paper::writePdf(buffer, sheet, paper::PaperSize::A4);
        benchmark::DoNotOptimize(bytes);
    }
}

} // namespace

} // namespace withy

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QGuiApplication qt(argc, argv);
    withy::ui::loadFonts();
    const auto many = withy::ui::seasonWithBookings(210);
    using benchmark::kMillisecond;
    using benchmark::RegisterBenchmark;
    RegisterBenchmark("plan the demo", withy::planDemo)->Unit(kMillisecond);
    RegisterBenchmark("open and plan the demo", withy::openAndPlanDemo)->Unit(kMillisecond);
    RegisterBenchmark("edit to plan, demo", [](auto& s) {
        withy::editToPlan(s, withy::demo());
    })->Unit(kMillisecond);
    RegisterBenchmark("edit to plan, 210 bookings", [&](auto& s) {
        withy::editToPlan(s, many);
    })->Unit(kMillisecond);
    RegisterBenchmark("edit alone, 210 bookings", [&](auto& s) {
        withy::editAlone(s, many);
    })->Unit(kMillisecond);
    RegisterBenchmark("plan after a plant changes", withy::planAfterAPlantChanges)->Unit(kMillisecond);
    RegisterBenchmark("prep sheet to PDF", withy::prepSheetToPdf)->Unit(kMillisecond);
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
