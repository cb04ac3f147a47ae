// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/designs/bench_handle.h"
#include "ui/designs/design_editor.h"
#include "ui/designs/design_view.h"
#include "ui/designs/wall_page.h"
#include "ui/logic/edits/design_edits.h"
#include "ui/logic/fonts.h"
#include "ui/logic/starting_seasons.h"
#include "ui/logic/translations.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QImage>
#include <QListView>
#include <QPainter>
#include <QScrollBar>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>

#include <benchmark/benchmark.h>

#include <algorithm>
#include <vector>

/// What drawings cost: one piece, a pull at the bench, a wall of 300 designs scrolled through. Run by hand on
/// a quiet machine; docs/performance.md keeps the figures.
namespace {

using namespace withy;
using namespace withy::ui;

const Day today = *Day::fromYmd(2027, 9, 6);

double nth(std::vector<double> values, double share) {
    std::sort(values.begin(), values.end());
    return values[static_cast<std::size_t>(share * static_cast<double>(values.size() - 1))];
}

void tell(benchmark::State& state, const std::vector<double>& ms) {
    state.counters["p50_ms"] = nth(ms, 0.5);
    state.counters["p99_ms"] = nth(ms, 0.99);
    state.counters["most_ms"] = nth(ms, 1);
    state.counters["over_16_ms"] =
        static_cast<double>(std::count_if(ms.begin(), ms.end(), [](double t) { return t > 16; }));
}

double since(const QElapsedTimer& timer) {
    return static_cast<double>(timer.nsecsElapsed()) * 1e-6;
}

/// Every design of the demo, as large as the bench draws it.
void paintEachDesign(benchmark::State& state) {
    const auto season = demoSeason();
    QImage image(640, 560, QImage::Format_ARGB32_Premultiplied);
    std::vector<double> ms;
    for (auto _ : state) {
        for (const auto& d : season.designs) {
            QElapsedTimer timer;
            timer.start();
            QPainter painter(&image);
            paintPiece(painter, pieceDrawing(season, d.id), QRectF(0, 0, 640, 560), {});
            painter.end();
            ms.push_back(since(timer));
        }
    }
    tell(state, ms);
}

struct Bench {
    explicit Bench(const model::Season& season)
        : bench(store::SeasonFile::create(folder.filePath(QStringLiteral("a.withy")), season), today) {
        bench.waitForPlan();
    }

    QTemporaryDir folder;
    Workbench bench;
};

/// The largest tied piece of the demo pulled a millimetre by a key, until it is painted anew.
void pullToRepaint(benchmark::State& state) {
    Bench b(demoSeason());
    DesignEditor editor(b.bench);
    editor.resize(1188, 640);
    editor.show();
    Id<model::Design> most{1};
    for (const auto& d : b.bench.season().designs) {
        if (stemsOf(b.bench.season(), d.id) > stemsOf(b.bench.season(), most)) most = d.id;
    }
    editor.showDesign(most);
    QApplication::processEvents();
    auto* view = editor.findChild<DesignView*>();
    auto* knob = editor.findChild<BenchKnob*>(QStringLiteral("designs.knob.spread"));
    std::vector<double> ms;
    for (auto _ : state) {
        QElapsedTimer timer;
        timer.start();
        QTest::keyPress(knob, ms.size() % 2 ? Qt::Key_Up : Qt::Key_Down);
        view->repaint();
        ms.push_back(since(timer));
    }
    state.counters["stems"] = static_cast<double>(stemsOf(b.bench.season(), most));
    tell(state, ms);
}

/// One number of a design changed, until the bench's drawing is painted anew.
void editToDrawing(benchmark::State& state) {
    Bench b(demoSeason());
    DesignEditor editor(b.bench);
    editor.resize(1188, 640);
    editor.show();
    editor.showDesign(Id<model::Design>(1));
    QApplication::processEvents();
    auto* view = editor.findChild<DesignView*>();
    std::vector<double> ms;
    std::int64_t mm = 150;
    for (auto _ : state) {
        const auto edit = edits::setField(b.bench.season(), {model::TableKind::designs, 1}, "height_tall",
                                          model::Value(++mm));
        QElapsedTimer timer;
        timer.start();
        b.bench.apply(edit);
        const double applied = since(timer);
        view->repaint();
        ms.push_back(since(timer));
        state.counters["apply_ms"] = applied;
        b.bench.waitForPlan();
        QApplication::processEvents();
    }
    tell(state, ms);
}

model::Season seasonOfDesigns(std::size_t count) {
    auto season = demoSeason();
    const auto first = season.designs.size();
    for (std::size_t i = 0; season.designs.size() < count; ++i) {
        Id<model::Design> made;
        auto from = season.designs.begin();
        std::advance(from, static_cast<std::ptrdiff_t>(i % first));
        season = model::apply(season, edits::duplicateDesign(season, from->id, made)).value().season;
    }
    return season;
}

/// A wall of 300 designs from top to bottom, forty pixels a frame, cold (pictures still to be drawn) and
/// warm.
void wallOfThreeHundred(benchmark::State& state) {
    Bench b(seasonOfDesigns(300));
    WallPage page(b.bench);
    page.resize(1188, 640);
    page.show();
    QApplication::processEvents();
    auto* wall = page.findChild<QListView*>(QStringLiteral("designs.wall"));
    auto* bar = wall->verticalScrollBar();
    std::vector<double> ms;
    for (auto _ : state) {
        for (int y = 0; y <= bar->maximum(); y += 40) {
            QElapsedTimer timer;
            timer.start();
            bar->setValue(y);
            QApplication::processEvents();
            wall->viewport()->repaint();
            ms.push_back(since(timer));
        }
        QTest::qWait(50);
    }
    tell(state, ms);
    state.counters["height_px"] = bar->maximum();
}

} // namespace

BENCHMARK(paintEachDesign)->Unit(benchmark::kMillisecond)->Iterations(5);
BENCHMARK(pullToRepaint)->Unit(benchmark::kMillisecond)->Iterations(100);
BENCHMARK(editToDrawing)->Unit(benchmark::kMillisecond)->Iterations(40);
BENCHMARK(wallOfThreeHundred)->Unit(benchmark::kMillisecond)->Iterations(3);

int main(int argc, char** argv) {
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication qt(argc, argv);
    QStandardPaths::setTestModeEnabled(true);
    loadFonts();
    installTranslations(qt, QLocale::c());
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
