// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/large_seasons.h"
#include "tests/window/window_fixture.h"
#include "ui/bookings/bookings_place.h"
#include "ui/common/style.h"
#include "ui/shell/actions.h"
#include "ui/shell/strip/bloom_strip.h"

#include <QAction>
#include <QClipboard>
#include <QTableView>
#include <QWheelEvent>

namespace withy::ui {

namespace {

const Day monday = *Day::fromYmd(2027, 9, 6);

class StripTest : public WindowTest {
protected:
    void SetUp() override { QSettings().remove(QStringLiteral("view/strip")); }

    void openDemo() {
        open(demoSeason(), monday);
        window_->resize(1280, 800);
        QApplication::processEvents();
    }

    BloomStrip& strip() { return window_->view()->strip(); }

    void press(int key, Qt::KeyboardModifiers modifiers = {}) {
        QTest::keyClick(&strip(), static_cast<Qt::Key>(key), modifiers);
    }

    std::string said() { return strip().readout().toStdString(); }

    void trigger(const char* id) {
        auto* action = window_->actions().find(QString::fromLatin1(id));
        ASSERT_NE(action, nullptr) << id;
        action->trigger();
        QApplication::processEvents();
    }

    std::optional<Id<model::Booking>> chosen() {
        const auto* place = qobject_cast<BookingsPlace*>(window_->view()->current());
        return place ? place->chosen() : std::nullopt;
    }

    void wheel(QPoint turned, Qt::KeyboardModifiers modifiers) {
        const QPointF at(strip().width() / 2.0, strip().height() / 2.0);
        QWheelEvent event(at, strip().mapToGlobal(at), {}, turned, Qt::NoButton, modifiers, Qt::NoScrollPhase,
                          false);
        QApplication::sendEvent(&strip(), &event);
    }

    /// A point in the thickest place of some band, clear of the jars.
    QPointF insideABand(std::size_t& band) {
        const auto& f = strip().figures();
        const auto& g = strip().laidOut();
        for (int day = 0; day < f.days; ++day) {
            for (double y = g.plot.top() + 1; y < g.plot.bottom(); y += 1) {
                const QPointF at(g.noon(day), y);
                const auto found = bandAt(f, g, at);
                if (!found || bandAt(f, g, at + QPointF(0, 3)) != found || g.markAt(at)) continue;
                band = *found;
                return at;
            }
        }
        ADD_FAILURE() << "no band is thick enough";
        return {};
    }
};

} // namespace

TEST_F(StripTest, StandsWholeOverBookingsAndSlimElsewhere) {
    openDemo();
    ASSERT_TRUE(strip().isVisible());
    const int whole = strip().height();
    EXPECT_GE(whole, 140);
    EXPECT_FALSE(strip().laidOut().slim);
    const int fit = window_->view()->placeCount() - 1; // a matter of bookings, and seen with them
    window_->view()->showPlace(fit);
    QApplication::processEvents();
    EXPECT_EQ(strip().height(), whole);
    for (int i = 1; i < fit; ++i) {
        window_->view()->showPlace(i);
        QApplication::processEvents();
        EXPECT_TRUE(strip().laidOut().slim) << i;
        EXPECT_LE(strip().height(), 52) << i;
    }
    window_->view()->showPlace(0);
    QApplication::processEvents();
    EXPECT_EQ(strip().height(), whole);
}

TEST_F(StripTest, IsThereAtItsHeightBeforeTheGardenIsReckoned) {
    const auto file = folder_.filePath(QStringLiteral("early.withy"));
    window_ = std::make_unique<MainWindow>(monday);
    window_->resize(1280, 800);
    window_->showSeason(std::make_unique<Workbench>(store::SeasonFile::create(file, demoSeason()), monday));
    window_->show();
    const int before = strip().height();
    window_->bench().waitForPlan();
    QApplication::processEvents();
    EXPECT_EQ(strip().height(), before) << "the page below must not jump";
    EXPECT_TRUE(strip().figures().known);
}

TEST_F(StripTest, FoldsAwayAndRemembersIt) {
    openDemo();
    trigger("view.strip");
    EXPECT_FALSE(strip().isVisible());
    window_.reset();
    window_ = std::make_unique<MainWindow>(monday);
    window_->show();
    window_->showSeason(std::make_unique<Workbench>(
        store::SeasonFile::create(folder_.filePath(QStringLiteral("b.withy")), demoSeason()), monday));
    EXPECT_FALSE(strip().isVisible());
    trigger("view.strip");
    EXPECT_TRUE(strip().isVisible());
}

TEST_F(StripTest, ArrowKeysReadDaysAndBands) {
    openDemo();
    strip().setFocus();
    const auto today = said();
    EXPECT_NE(today.find("stems ready today"), std::string::npos) << today;
    press(Qt::Key_Right);
    EXPECT_EQ(said(), today) << "first where one is";
    press(Qt::Key_Right);
    EXPECT_EQ(said().substr(0, 9), "Tue 7 Sep");
    press(Qt::Key_Left, Qt::ControlModifier);
    EXPECT_EQ(said().substr(0, 10), "Tue 31 Aug");
    press(Qt::Key_Up);
    const auto& bands = strip().figures().bands;
    const auto isOf = [&](const StripBand& b) {
        return said().rfind(b.name.toStdString() + ", Tue 31 Aug", 0) == 0;
    };
    EXPECT_TRUE(std::any_of(bands.begin(), bands.end(), isOf)) << said();
    EXPECT_TRUE(strip().accessibleName().contains(strip().readout()));
    press(Qt::Key_Escape);
    EXPECT_EQ(said(), today);
}

TEST_F(StripTest, PageKeysGoFromBookingToBookingAndEnterLeadsThere) {
    openDemo();
    strip().setFocus();
    press(Qt::Key_PageDown);
    const auto& pins = strip().figures().pins;
    const auto next = std::find_if(pins.begin(), pins.end(),
                                   [&](const auto& p) { return p.day >= *strip().figures().today; });
    ASSERT_NE(next, pins.end());
    EXPECT_EQ(said().rfind(next->title.toStdString(), 0), 0u) << said();
    const auto id = next->booking;
    window_->view()->showPlace(2);
    strip().setFocus();
    press(Qt::Key_PageDown);
    press(Qt::Key_Return);
    EXPECT_EQ(chosen(), id);
}

TEST_F(StripTest, APressOnAJarLeadsToTheBookingAndOnABandToThePlant) {
    openDemo();
    const auto& g = strip().laidOut();
    const auto other = std::find_if(g.marks.begin(), g.marks.end(),
                                    [](const auto& m) { return !m.chosen && m.pins.size() == 1; });
    ASSERT_NE(other, g.marks.end());
    const auto id = strip().figures().pins[other->pins.front()].booking;
    QTest::mouseClick(&strip(), Qt::LeftButton, {}, other->jar.center().toPoint());
    EXPECT_EQ(chosen(), id);
    ASSERT_TRUE(strip().laidOut().marks.back().chosen);
    EXPECT_EQ(strip().figures().pins[strip().laidOut().marks.back().pins.front()].booking, id)
        << "the chosen one is the larger";
    std::size_t band = 0;
    const auto at = insideABand(band);
    const QString name = strip().figures().bands[band].name;
    QTest::mouseMove(&strip(), at.toPoint());
    QTest::mouseClick(&strip(), Qt::LeftButton, {}, at.toPoint());
    EXPECT_EQ(window_->view()->current()->helpPage(), QStringLiteral("garden")) << name.toStdString();
}

TEST_F(StripTest, ZoomsByWheelAndKeysPansByWheelAndDragAndHomeShowsAll) {
    openDemo();
    strip().setFocus();
    const auto all = strip().span();
    EXPECT_DOUBLE_EQ(all.days, strip().figures().days);
    wheel({0, 120}, Qt::ControlModifier);
    EXPECT_LT(strip().span().days, all.days);
    press(Qt::Key_Plus);
    press(Qt::Key_Plus);
    const auto near = strip().span();
    EXPECT_LT(near.days, all.days / 2);
    wheel({0, -120}, Qt::ShiftModifier);
    EXPECT_GT(strip().span().from, near.from);
    EXPECT_DOUBLE_EQ(strip().span().days, near.days);
    const auto before = strip().span();
    const QPoint middle = strip().rect().center();
    QTest::mousePress(&strip(), Qt::LeftButton, {}, middle);
    QMouseEvent move(QEvent::MouseMove, middle + QPoint(200, 0), strip().mapToGlobal(middle + QPoint(200, 0)),
                     Qt::NoButton, Qt::LeftButton, {});
    QApplication::sendEvent(&strip(), &move);
    QTest::mouseRelease(&strip(), Qt::LeftButton, {}, middle + QPoint(200, 0));
    EXPECT_LT(strip().span().from, before.from);
    EXPECT_NE(window_->view()->current()->helpPage(), QStringLiteral("garden")) << "a drag is no press";
    press(Qt::Key_Minus);
    press(Qt::Key_Home);
    EXPECT_EQ(strip().span(), all);
}

TEST_F(StripTest, IsReachedByTabAndRepaintsAfterAnEdit) {
    openDemo();
    window_->view()->current()->enter();
    bool reached = false;
    for (int presses = 0; presses < 400 && !reached; ++presses) {
        auto* at = QApplication::focusWidget();
        ASSERT_NE(at, nullptr);
        reached = at == &strip();
        QTest::keyClick(at, Qt::Key_Tab);
    }
    EXPECT_TRUE(reached);
    const auto sum = strip().figures().sums[static_cast<std::size_t>(*strip().figures().today)].likely;
    QTest::keyClick(&strip(), Qt::Key_Right);
    const QString read = strip().readout();
    ASSERT_FALSE(read.isEmpty());
    model::Edit more("x");
    for (auto patch : season().patches) {
        if (!patch.expectedStems) continue;
        patch.expectedStems = Stems(patch.expectedStems->value * 2);
        more.put(patch);
    }
    EXPECT_EQ(window_->bench().apply(more), QString());
    window_->bench().waitForPlan();
    QApplication::processEvents();
    EXPECT_GT(strip().figures().sums[static_cast<std::size_t>(*strip().figures().today)].likely, sum);
}

TEST_F(StripTest, ADesignAtTheBenchHoldsItsBandsOut) {
    openDemo();
    EXPECT_TRUE(strip().heldDesign().plants.empty());
    const auto design = season().designs.begin()->id;
    ASSERT_TRUE(window_->view()->goTo({model::TableKind::designs, design.value}));
    EXPECT_FALSE(strip().heldDesign().plants.empty());
    EXPECT_EQ(strip().readout().contains(QStringLiteral("all slots bloom")),
              !strip().heldDesign().spans.empty());
    ASSERT_TRUE(window_->view()->goTo({model::TableKind::bookings, season().bookings.begin()->id.value}));
    EXPECT_TRUE(strip().heldDesign().plants.empty());
}

TEST_F(StripTest, AnEmptySeasonSaysOneSentence) {
    open(emptySeason(2027), monday);
    EXPECT_EQ(said().rfind("Nothing grows here yet.", 0), 0u) << said();
    strip().setFocus();
    for (const int key : {Qt::Key_Left, Qt::Key_Up, Qt::Key_Down, Qt::Key_PageDown, Qt::Key_PageUp,
                          Qt::Key_Plus, Qt::Key_Minus, Qt::Key_Home, Qt::Key_Return})
        press(key);
    strip().grab();
    EXPECT_EQ(said().rfind("Nothing grows here yet.", 0), 0u) << said();
}

TEST_F(StripTest, ManyBookingsShareJarsThatPartWhenZoomed) {
    open(seasonWithBookings(200), monday);
    window_->resize(1280, 800);
    QApplication::processEvents();
    const auto& marks = strip().laidOut().marks;
    for (std::size_t i = 1; i < marks.size(); ++i) {
        if (marks[i].chosen) continue;
        EXPECT_GT(marks[i].x - marks[i - 1].x, strip().laidOut().dayWidth) << "jars that lie on each other";
    }
    std::size_t pins = 0;
    for (const auto& m : marks)
        pins += m.pins.size();
    EXPECT_EQ(pins, strip().figures().pins.size()) << "every booking is under some jar";
    const auto shared = std::find_if(marks.begin(), marks.end(), [&](const auto& m) {
        return strip().figures().pins[m.pins.front()].day != strip().figures().pins[m.pins.back()].day;
    });
    ASSERT_NE(shared, marks.end());
    const auto before = strip().span().days;
    QTest::mouseClick(&strip(), Qt::LeftButton, {}, shared->jar.center().toPoint());
    EXPECT_LT(strip().span().days, before);
}

TEST_F(StripTest, TheTableOpensAndCopies) {
    openDemo();
    trigger("view.strip_table");
    auto* table = find<QTableView>("strip.table.rows");
    ASSERT_TRUE(table->isVisible());
    EXPECT_FALSE(table->accessibleName().isEmpty());
    EXPECT_EQ(table->model()->columnCount(), static_cast<int>(strip().figures().bands.size()) + 2);
    click("strip.table.copy");
    const auto copied = QGuiApplication::clipboard()->text();
    EXPECT_EQ(copied.count(QLatin1Char('\n')), table->model()->rowCount() + 1);
    click("strip.table.shut");
    EXPECT_FALSE(table->isVisible());
}

TEST_F(StripTest, EveryBandsPixelsCarryItsColour) {
    // Two bands of 10 stems over 20 days: in the middle of each its own colour, above both nothing.
    std::vector<BloomBand> bands(2);
    for (auto& b : bands)
        b.thickness.assign(20, 10.0F);
    bands[0].fill = bands[0].edge = QColor(200, 30, 30);
    bands[1].fill = bands[1].edge = QColor(30, 30, 200);
    const auto image = paintBloomBands(bands, {QSize(100, 40), 5, 10, 1.5, 0.7});
    EXPECT_EQ(image.pixelColor(50, 39 - 7), bands[0].fill);
    EXPECT_EQ(image.pixelColor(50, 39 - 22), bands[1].fill);
    EXPECT_EQ(image.pixelColor(50, 39 - 31).alpha(), 0);
    // Four hundred bands thinner than a pixel still fill their whole height with their mixture.
    std::vector<BloomBand> thin(400, bands[0]);
    for (std::size_t i = 1; i < thin.size(); i += 2)
        thin[i] = bands[1];
    for (auto& b : thin)
        b.thickness.assign(20, 1.0F);
    const auto many = paintBloomBands(thin, {QSize(100, 40), 5, 10, 0.1, 0.7});
    const QColor mixture = many.pixelColor(50, 20);
    EXPECT_NEAR(mixture.red(), 115, 3);
    EXPECT_NEAR(mixture.blue(), 115, 3);
    EXPECT_EQ(mixture.alpha(), 255);
}

} // namespace withy::ui
