// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/large_seasons.h"
#include "tests/window/page_walk.h"
#include "ui/logic/fonts.h"
#include "ui/logic/models/cutting_goals.h"
#include "ui/logic/models/tally_rows.h"
#include "ui/logic/starting_seasons.h"
#include "ui/logic/translations.h"
#include "ui/shell/actions.h"

#include <QDir>
#include <QPixmap>
#include <QStandardPaths>
#include <QTemporaryDir>

#include <cstdio>

/// withy_shots FOLDER [SEASON [THEME [WIDTHxHEIGHT [TEXT_PERCENT]]]]: a picture of every page.
/// SEASON: demo, empty or overfull; THEME: light or dark.
namespace {

using namespace withy;
using namespace withy::ui;

model::Season seasonOf(const QString& word) {
    if (word == QStringLiteral("empty")) {
        auto s = emptySeason(2027).theSettings();
        s.placeName = "Wren Bank";
        return seasonWithPlants(s);
    }
    return word == QStringLiteral("overfull") ? seasonWithBookings(200) : demoSeason();
}

/// As if typed down the list: what is needed with its spare, but eight zinnias too few.
void tallyAllButEightZinnias(Workbench& bench) {
    const Id<model::Booking> supper(1);
    const Day day = cuttingDay(bench.season(), bench.plan(), supper, bench.today());
    for (const auto& row : tallyRows(bench.season(), bench.plan(), supper, day)) {
        const bool few = row.name.startsWith(QStringLiteral("Zinnia"));
        const auto stems = few ? row.need - 8 : row.need + row.spare;
        QTest::keyClicks(QApplication::focusWidget(), QString::number(stems));
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
    }
    bench.waitForPlan();
    QTest::qWait(500); // the share-out comes on a thread of its own
}

QString fileName(const QString& page) {
    QString name;
    for (const QChar c : page.toLower())
        name += c.isLetterOrNumber() ? c : QLatin1Char('-');
    while (name.contains(QStringLiteral("--")))
        name.replace(QStringLiteral("--"), QStringLiteral("-"));
    return name;
}

} // namespace

int main(int argc, char** argv) {
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication qt(argc, argv);
    QStandardPaths::setTestModeEnabled(true);
    QApplication::setApplicationName(QStringLiteral("withy-shots"));
    loadFonts();
    installTranslations(qt, QLocale::c());
    const auto words = QApplication::arguments();
    if (words.size() < 2) {
        std::fputs("withy_shots FOLDER [demo|empty|overfull [light|dark [WIDTHxHEIGHT [TEXT_PERCENT]]]]\n",
                   stderr);
        return 2;
    }
    const QString season = words.value(2, QStringLiteral("demo"));
    const bool dark = words.value(3) == QStringLiteral("dark");
    const auto size = words.value(4, QStringLiteral("1280x800")).split(QLatin1Char('x'));
    const int percent = words.value(5, QStringLiteral("100")).toInt();
    const QDir out(words[1]);
    QDir().mkpath(out.path());
    QTemporaryDir folder;
    MainWindow window(Day::fromYmd(2027, 9, 6));
    window.viewSettings().setTheme(dark ? ThemeChoice::dark : ThemeChoice::light);
    window.viewSettings().setTextPercent(percent);
    window.resize(size[0].toInt(), size.value(1).toInt());
    window.show();
    const auto keep = [&](const QString& page) {
        for (int i = 0; i < 15; ++i) { // pictures of pieces are drawn beside
            QApplication::processEvents();
            QTest::qWait(20);
        }
        window.grab().save(out.filePath(fileName(page) + QStringLiteral(".png")));
    };
    keep(QStringLiteral("first run"));
    auto file = store::SeasonFile::create(folder.filePath(QStringLiteral("shots.withy")), seasonOf(season));
    window.showSeason(std::make_unique<Workbench>(std::move(file), Day::fromYmd(2027, 9, 6)));
    window.bench().waitForPlan();
    window.view()->goTo({model::TableKind::bookings, 1});
    eachPage(window, [&](const QString& page, QWidget*) { keep(page); });
    if (season != QStringLiteral("empty")) {
        window.view()->goTo({model::TableKind::designs, 1});
        keep(QStringLiteral("designs / bench"));
        window.bench().setToday(Day::fromYmd(2027, 9, 10)); // by then all of the supper's stems are due
        window.bench().waitForPlan();
        window.view()->goTo({model::TableKind::bookings, 1});
        window.actions().find(QStringLiteral("booking.cutting"))->trigger();
        keep(QStringLiteral("bookings / cutting day"));
        tallyAllButEightZinnias(window.bench());
        keep(QStringLiteral("bookings / cutting day tallied"));
    }
    return 0;
}
