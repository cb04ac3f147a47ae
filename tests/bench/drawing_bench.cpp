// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/designs/bench_handle.h"
#include "ui/designs/design_editor.h"
#include "ui/designs/design_view.h"
#include "ui/designs/wall_page.h"
#include "ui/logic/edits/design_edits.h"
#include "ui/logic/fonts.h"
#include "ui/logic/starting_seasons.h"
#include "ui/logic/translations.h"
#include "ui/paint/head_pictures.h"

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
#include <ctime>
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

/// By the clock, and how long this thread was at work: on a machine that does other things too, the clock
/// also measures those.
class Frames {
public:
    void begin() {
        clock_.start();
        worked_ = worked();
    }

    void end() {
        ms_.push_back(static_cast<double>(clock_.nsecsElapsed()) * 1e-6);
        thread_.push_back(worked() - worked_);
    }

    [[nodiscard]] std::size_t size() const { return ms_.size(); }

    [[nodiscard]] double p50() const { return nth(ms_, 0.5); }

    void tell(benchmark::State& state) const {
        state.counters["p50_ms"] = nth(ms_, 0.5);
        state.counters["p95_ms"] = nth(ms_, 0.95);
        state.counters["most_ms"] = nth(ms_, 1);
        state.counters["over_16_ms"] =
            static_cast<double>(std::count_if(ms_.begin(), ms_.end(), [](double t) { return t > 16; }));
        state.counters["frames"] = static_cast<double>(ms_.size());
        state.counters["thread_p50_ms"] = nth(thread_, 0.5);
        state.counters["thread_p95_ms"] = nth(thread_, 0.95);
        state.counters["thread_most_ms"] = nth(thread_, 1);
    }

private:
    static double worked() {
        timespec t{};
        clock_gettime(CLOCK_THREAD_CPUTIME_ID, &t);
        return static_cast<double>(t.tv_sec) * 1e3 + static_cast<double>(t.tv_nsec) * 1e-6;
    }

    QElapsedTimer clock_;
    double worked_ = 0;
    std::vector<double> ms_, thread_;
};

/// Every design of the demo as paths, as large as the bench draws it: what papers cost, and a picture that is
/// drawn beside the window's thread cost before heads were kept.
void eachDesignAsPaths(benchmark::State& state) {
    const auto season = demoSeason();
    QImage image(640, 560, QImage::Format_ARGB32_Premultiplied);
    Frames frames;
    for (auto _ : state) {
        for (const auto& d : season.designs) {
            frames.begin();
            QPainter painter(&image);
            paintPiece(painter, pieceDrawing(season, d.id), QRectF(0, 0, 640, 560), {});
            painter.end();
            frames.end();
        }
    }
    frames.tell(state);
}

struct Bench {
    explicit Bench(const model::Season& season)
        : bench(store::SeasonFile::create(folder.filePath(QStringLiteral("a.withy")), season), today) {
        bench.waitForPlan();
    }

    QTemporaryDir folder;
    Workbench bench;
};

/// The bench with one design after the other on it.
struct ShownBench : Bench {
    ShownBench() : Bench(demoSeason()), editor(bench) {
        editor.resize(1188, 640);
        editor.show();
        view = editor.findChild<DesignView*>();
        QApplication::processEvents();
    }

    /// Until its heads are all there.
    void show(Id<model::Design> design) {
        editor.showDesign(design);
        do {
            QApplication::processEvents();
            view->repaint();
        } while (!view->isWhole());
    }

    DesignEditor editor;
    DesignView* view = nullptr;
};

/// Each design of the demo painted anew at the bench, its heads kept.
void eachDesignAgain(benchmark::State& state) {
    ShownBench b;
    Frames frames;
    for (auto _ : state) {
        for (const auto& d : b.bench.season().designs) {
            b.show(d.id);
            b.view->forgetDrawn();
            frames.begin();
            b.view->repaint();
            frames.end();
            if (!b.view->isWhole()) state.SkipWithError("heads were not kept");
        }
    }
    frames.tell(state);
}

/// Each design of the demo seen for the first time: every frame until all its heads are there.
void eachDesignFirst(benchmark::State& state) {
    Frames frames;
    std::vector<double> until;
    for (auto _ : state) {
        HeadPictures::ofProgram().clear();
        ShownBench b;
        for (const auto& d : b.bench.season().designs) {
            b.editor.showDesign(d.id);
            QElapsedTimer all;
            all.start();
            do {
                frames.begin();
                b.view->repaint();
                frames.end();
            } while (!b.view->isWhole());
            until.push_back(static_cast<double>(all.nsecsElapsed()) * 1e-6);
            QApplication::processEvents();
        }
    }
    frames.tell(state);
    state.counters["whole_after_p50_ms"] = nth(until, 0.5);
    state.counters["whole_after_most_ms"] = nth(until, 1);
}

/// A knob of the piece with most stems pulled a millimetre by a key, until it is painted anew.
void pullToRepaint(benchmark::State& state, const char* which) {
    ShownBench b;
    Id<model::Design> most{1};
    for (const auto& d : b.bench.season().designs) {
        if (stemsOf(b.bench.season(), d.id) > stemsOf(b.bench.season(), most)) most = d.id;
    }
    b.show(most);
    auto* knob = b.editor.findChild<BenchKnob*>(QLatin1String(which));
    Frames frames;
    for (auto _ : state) {
        frames.begin();
        QTest::keyPress(knob, frames.size() % 2 ? Qt::Key_PageUp : Qt::Key_Down);
        b.view->repaint();
        frames.end();
    }
    state.counters["stems"] = static_cast<double>(stemsOf(b.bench.season(), most));
    frames.tell(state);
}

/// One number of a design changed, until the bench's drawing is painted anew; the plan is being made
/// meanwhile.
void editToDrawing(benchmark::State& state) {
    ShownBench b;
    b.show(Id<model::Design>(1));
    Frames applied, frames;
    std::int64_t mm = 150;
    double notWhole = 0;
    for (auto _ : state) {
        const auto edit = edits::setField(b.bench.season(), {model::TableKind::designs, 1}, "height_tall",
                                          model::Value(++mm));
        frames.begin();
        applied.begin();
        b.bench.apply(edit);
        applied.end();
        b.view->repaint();
        frames.end();
        notWhole += b.view->isWhole() ? 0 : 1;
        b.bench.waitForPlan();
        QApplication::processEvents();
    }
    frames.tell(state);
    state.counters["finished_later"] = notWhole;
    state.counters["apply_p50_ms"] = applied.p50();
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
    QTest::qWait(300);
    auto* wall = page.findChild<QListView*>(QStringLiteral("designs.wall"));
    auto* bar = wall->verticalScrollBar();
    Frames frames;
    for (auto _ : state) {
        for (int y = 0; y <= bar->maximum(); y += 40) {
            frames.begin();
            bar->setValue(y);
            QApplication::processEvents();
            wall->viewport()->repaint();
            frames.end();
        }
        QTest::qWait(50);
    }
    frames.tell(state);
    state.counters["height_px"] = bar->maximum();
}

/// That wall shown for the first time, and again after an edit to a design it shows: every turn of the event
/// loop until all is measured and drawn.
void wallComesUp(benchmark::State& state) {
    Bench b(seasonOfDesigns(300));
    WallPage page(b.bench);
    page.resize(1188, 640);
    Frames frames;
    std::int64_t mm = 150;
    for (auto _ : state) {
        const auto turnFor = [&frames](int ms) {
            QElapsedTimer all;
            for (all.start(); all.elapsed() < ms;) {
                frames.begin();
                QApplication::processEvents();
                frames.end();
            }
        };
        page.show();
        turnFor(400);
        b.bench.apply(edits::setField(b.bench.season(), {model::TableKind::designs, 1}, "height_tall",
                                      model::Value(++mm)));
        turnFor(400);
        b.bench.waitForPlan();
        page.hide();
    }
    frames.tell(state);
}

} // namespace

BENCHMARK(eachDesignAsPaths)->Unit(benchmark::kMillisecond)->Iterations(3);
BENCHMARK(eachDesignAgain)->Unit(benchmark::kMillisecond)->Iterations(5);
BENCHMARK(eachDesignFirst)->Unit(benchmark::kMillisecond)->Iterations(1);
BENCHMARK_CAPTURE(pullToRepaint, spread, "designs.knob.spread")
    ->Unit(benchmark::kMillisecond)
    ->Iterations(100);
BENCHMARK_CAPTURE(pullToRepaint, tall, "designs.knob.tall")->Unit(benchmark::kMillisecond)->Iterations(100);
BENCHMARK(editToDrawing)->Unit(benchmark::kMillisecond)->Iterations(40);
BENCHMARK(wallOfThreeHundred)->Unit(benchmark::kMillisecond)->Iterations(3);
BENCHMARK(wallComesUp)->Unit(benchmark::kMillisecond)->Iterations(3);

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
