// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/large_seasons.h"
#include "ui/bookings/booking_list.h"
#include "ui/bookings/brief_tab.h"
#include "ui/logic/edits.h"
#include "ui/logic/fonts.h"
#include "ui/logic/season_opening.h"
#include "ui/logic/starting_seasons.h"
#include "ui/logic/translations.h"
#include "ui/shell/main_window.h"
#include "ui/shell/season_view.h"
#include "ui/shell/start.h"
#include "ui/shell/strip/bloom_strip.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QFile>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QProcess>
#include <QStandardPaths>
#include <QTemporaryDir>

#include <benchmark/benchmark.h>

#include <algorithm>
#include <atomic>
#include <chrono>
#include <cstdlib>
#include <stop_token>
#include <thread>
#include <vector>

/// What the window costs: from the start to a window one can use, and from an edit to its new picture.
/// Run by hand on a quiet machine; docs/performance.md keeps the figures.
namespace {

using namespace withy;
using namespace withy::ui;

const Day today = *Day::fromYmd(2027, 9, 6);

/// A file that the children open, made once.
QString seasonPath(int bookings) {
    static QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("%1.withy").arg(bookings));
    if (!QFile::exists(path))
        store::SeasonFile::create(path, bookings ? seasonWithBookings(bookings) : demoSeason()).close();
    return path;
}

/// Time of a whole process that shows a window, has painted it and ends.
void start(benchmark::State& state, const QStringList& what) {
    for (auto _ : state) {
        QElapsedTimer timer;
        timer.start();
        QProcess child;
        child.start(QCoreApplication::applicationFilePath(), what);
        child.waitForFinished();
        state.SetIterationTime(static_cast<double>(timer.nsecsElapsed()) * 1e-9);
        if (child.exitCode() != 0) state.SkipWithError("the child failed");
    }
}

void startBare(benchmark::State& state) {
    start(state, {QStringLiteral("--child")});
}

void startDemo(benchmark::State& state) {
    start(state, {QStringLiteral("--child"), seasonPath(0)});
}

void startDemoToItsBrief(benchmark::State& state) {
    start(state, {QStringLiteral("--child"), seasonPath(0), QStringLiteral("brief")});
}

void startTwoHundred(benchmark::State& state) {
    start(state, {QStringLiteral("--child"), seasonPath(200)});
}

/// A window on a file of its own, with all its pages made.
struct OpenWindow {
    explicit OpenWindow(const model::Season& season) : window(today) {
        auto file = store::SeasonFile::create(folder.filePath(QStringLiteral("a.withy")), season);
        window.resize(1280, 800);
        window.show();
        window.showSeason(std::make_unique<Workbench>(std::move(file), today));
        window.bench().setPatience(SeasonDoor::aMoment);
        window.view()->makeAll();
        window.bench().waitForPlan();
    }

    QTemporaryDir folder;
    MainWindow window;
};

/// A key typed into the finder of the garden's 2,000 plants, until the table is painted anew.
void keyToFilteredPlants(benchmark::State& state) {
    OpenWindow open(seasonOfPlants(2000));
    auto& window = open.window;
    window.view()->goTo({model::TableKind::plants, 1});
    QApplication::processEvents();
    auto* find = window.findChild<QLineEdit*>(QStringLiteral("garden.plants.find"));
    if (!find) return state.SkipWithError("no finder");
    const QString typed = QStringLiteral("zinnia");
    qsizetype length = 0;
    for (auto _ : state) {
        length = length % typed.size() + 1;
        find->setText(typed.left(length));
        window.repaint();
    }
}

double nth(std::vector<double> values, double share) {
    std::sort(values.begin(), values.end());
    return values[static_cast<std::size_t>(share * static_cast<double>(values.size() - 1))];
}

/// How long a key would wait for its turn: another thread sends the window a word every millisecond, one at a
/// time, and notes when each is heard.
class Waits {
public:
    Waits()
        : sender_([this](const std::stop_token& stop) {
            while (!stop.stop_requested()) {
                std::this_thread::sleep_for(std::chrono::milliseconds(1));
                if (!underWay_.exchange(true)) send();
            }
        }) {}

    /// In milliseconds, so far.
    [[nodiscard]] const std::vector<double>& all() const { return waits_; }

private:
    using Clock = std::chrono::steady_clock;

    void send() {
        QMetaObject::invokeMethod(
            &hears_,
            [this, sent = Clock::now()] {
                waits_.push_back(std::chrono::duration<double, std::milli>(Clock::now() - sent).count());
                underWay_ = false;
            },
            Qt::QueuedConnection);
    }

    QObject hears_;
    std::atomic<bool> underWay_ = false;
    std::vector<double> waits_; ///< written and read on the window's thread
    std::jthread sender_;
};

/// One number changed with 200 bookings: until the plan is there and the window painted anew, the edits
/// coming without a pause; and how long a key waited meanwhile.
void editToRepaint(benchmark::State& state) {
    OpenWindow open(seasonWithBookings(200));
    auto& window = open.window;
    window.view()->goTo({model::TableKind::bookings, 1});
    QApplication::processEvents();
    window.bench().waitForPlan();
    const Waits waits;
    std::vector<double> times;
    std::int64_t pieces = 10;
    const auto line = window.bench().season().lines.begin()->id;
    for (auto _ : state) {
        QElapsedTimer timer;
        timer.start();
        window.bench().apply(edits::setPieces(window.bench().season(), line, ++pieces));
        while (!window.bench().bookingsAreCurrent())
            QApplication::processEvents(QEventLoop::WaitForMoreEvents);
        QApplication::processEvents(); // paints what changed
        const double seconds = static_cast<double>(timer.nsecsElapsed()) * 1e-9;
        times.push_back(seconds * 1e3);
        state.SetIterationTime(seconds);
    }
    state.counters["p95_ms"] = nth(times, 0.95);
    const auto over =
        std::count_if(waits.all().begin(), waits.all().end(), [](double ms) { return ms > 16; });
    state.counters["key_p95_ms"] = nth(waits.all(), 0.95);
    state.counters["key_longest_ms"] = nth(waits.all(), 1);
    state.counters["keys"] = static_cast<double>(waits.all().size());
    state.counters["keys_over_16_ms"] = static_cast<double>(over);
}

/// The demo season with its patches again and again, each with a plant of its own.
model::Season seasonOfPatches(std::size_t count) {
    const auto demo = demoSeason();
    model::Edit edit("patches");
    auto plantId = demo.plants.nextId();
    auto patchId = demo.patches.nextId();
    for (auto patch = demo.patches.begin(); edit.puts().size() / 2 + demo.patches.size() < count; ++patch) {
        if (patch == demo.patches.end()) patch = demo.patches.begin();
        auto plant = *demo.plants.find(patch->plant);
        plant.id = plantId;
        plant.name += " " + std::to_string(plantId.value);
        auto copy = *patch;
        copy.id = patchId;
        copy.plant = plantId;
        copy.place = patchId.value;
        edit.put(plant).put(copy);
        plantId.value += 1;
        patchId.value += 1;
    }
    return model::apply(demo, edit).value().season;
}

/// The bloom strip drawn anew after a key that zooms, with 400 patches of as many plants.
void stripOfFourHundred(benchmark::State& state) {
    OpenWindow open(seasonOfPatches(400));
    auto& window = open.window;
    QApplication::processEvents();
    auto& strip = window.view()->strip();
    state.counters["bands"] = static_cast<double>(strip.figures().bands.size());
    bool in = true;
    for (auto _ : state) {
        QKeyEvent key(QEvent::KeyPress, in ? Qt::Key_Plus : Qt::Key_Minus, Qt::NoModifier);
        QApplication::sendEvent(&strip, &key);
        strip.repaint();
        in = !in;
    }
}

/// Sees the first picture of what it watches.
class Seen : public QObject {
public:
    explicit Seen(QWidget& watched) { watched.installEventFilter(this); }

    [[nodiscard]] bool seen() const { return seen_; }

protected:
    bool eventFilter(QObject*, QEvent* event) override {
        seen_ = seen_ || event->type() == QEvent::Paint;
        return false;
    }

private:
    bool seen_ = false;
};

/// Ends, once `part` is painted, without taking anything apart: that is not part of the start.
[[noreturn]] void paintAndEnd(QWidget& part) {
    const Seen seen(part);
    while (!seen.seen())
        QApplication::processEvents();
    std::_Exit(0);
}

int child(int argc, char** argv) {
    QApplication qt(argc, argv);
    QStandardPaths::setTestModeEnabled(true);
    if (argc < 3) {
        QMainWindow window;
        auto* words = new QLabel(QStringLiteral("bare"));
        window.setCentralWidget(words);
        window.resize(1280, 800);
        window.show();
        paintAndEnd(*words);
    }
    installTranslations(qt, QLocale::c());
    const auto opened = openWindow(today, QString::fromLocal8Bit(argv[2]));
    auto& window = *opened;
    window.resize(1280, 800);
    if (!window.view()) return 1;
    auto& list = *window.findChild<BookingList*>(); // one can choose a booking: the window is of use
    window.show();
    if (argc < 4) paintAndEnd(list);
    while (!window.findChild<BriefTab*>()) // made after the first picture
        QApplication::processEvents();
    paintAndEnd(*window.findChild<BriefTab*>());
}

} // namespace

BENCHMARK(startBare)->Unit(benchmark::kMillisecond)->UseManualTime();
BENCHMARK(startDemo)->Unit(benchmark::kMillisecond)->UseManualTime();
BENCHMARK(startDemoToItsBrief)->Unit(benchmark::kMillisecond)->UseManualTime();
BENCHMARK(startTwoHundred)->Unit(benchmark::kMillisecond)->UseManualTime();
BENCHMARK(keyToFilteredPlants)->Unit(benchmark::kMillisecond);
BENCHMARK(stripOfFourHundred)->Unit(benchmark::kMillisecond);
BENCHMARK(editToRepaint)->Unit(benchmark::kMillisecond)->UseManualTime()->Iterations(200);

int main(int argc, char** argv) {
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    if (argc > 1 && std::string_view(argv[1]) == "--child") return child(argc, argv);
    QApplication qt(argc, argv);
    QStandardPaths::setTestModeEnabled(true);
    loadFonts();
    installTranslations(qt, QLocale::c());
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
