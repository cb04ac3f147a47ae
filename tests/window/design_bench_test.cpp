// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/size_faults.h"
#include "tests/window/place_fixture.h"
#include "ui/common/figure.h"
#include "ui/common/finding_rows.h"
#include "ui/designs/bench_handle.h"
#include "ui/designs/design_view.h"
#include "ui/designs/designs_place.h"
#include "ui/designs/trial_picture.h"
#include "ui/logic/models/water_view.h"
#include "ui/paint/piece_layout.h"

#include <QImage>
#include <QPushButton>

namespace withy::ui {

/// The bench's drawing: pulled by its knobs, with its water, its colours and the picture of a trial.
class DesignBench : public PlaceTest {
protected:
    const Id<model::Design> supperJar{1};

    void openBench() {
        openPlace<DesignsPlace>(demoSeason());
        static_cast<DesignsPlace*>(place_.get())->open(supperJar);
        QApplication::processEvents();
    }

    const model::Design& jar() { return *held().designs.find(supperJar); }

    BenchKnob* knob(const char* name) { return in<BenchKnob>(name); }

    void pull(BenchKnob* knob, QPoint by) {
        const QPoint middle = knob->rect().center();
        QTest::mousePress(knob, Qt::LeftButton, {}, middle);
        for (int i = 1; i <= 4; ++i) {
            // The knob moves along, so each step is taken where it is now.
            const QPointF to = knob->mapFromParent(knob->pos() + middle) + QPointF(by) / 4;
            QMouseEvent move(QEvent::MouseMove, to, knob->mapToGlobal(to), Qt::NoButton, Qt::LeftButton, {});
            QApplication::sendEvent(knob, &move);
        }
        QTest::mouseRelease(knob, Qt::LeftButton, {}, knob->rect().center());
        QApplication::processEvents();
    }
};

TEST_F(DesignBench, ATierPulledUpIsHigherAndOneUndoPutsItBack) {
    openBench();
    const auto before = jar();
    auto* tall = knob("designs.knob.tall");
    pull(tall, {0, -40});
    EXPECT_GT(jar().heightTall, before.heightTall);
    EXPECT_EQ(jar().heightMiddle, before.heightMiddle);
    EXPECT_TRUE(bench_->undo().isEmpty());
    EXPECT_EQ(jar().heightTall, before.heightTall) << "one gesture, one step";
    EXPECT_FALSE(bench_->canUndo());
}

TEST_F(DesignBench, TheSpreadIsPulledOnBothSidesAtOnceAndTheLiftOffTheBase) {
    openBench();
    const auto before = jar();
    auto* view = in<DesignView>("designs.drawing");
    const double was = view->length(BenchHandle::spread);
    pull(knob("designs.knob.spread"), {20, 0});
    ASSERT_TRUE(jar().spread);
    EXPECT_GT(static_cast<double>(jar().spread->value), was);
    pull(knob("designs.knob.lift"), {0, -16});
    EXPECT_GT(jar().lift, before.lift);
    EXPECT_NEAR(view->length(BenchHandle::lift), static_cast<double>(jar().lift.value), 0.01);
}

TEST_F(DesignBench, KeysMoveAKnobAndLettingGoKeepsIt) {
    openBench();
    const auto before = jar().heightLow.value;
    auto* low = knob("designs.knob.low");
    low->setFocus(Qt::TabFocusReason);
    ASSERT_TRUE(low->hasFocus());
    QTest::keyPress(low, Qt::Key_Up);
    QTest::keyPress(low, Qt::Key_Up); // held: it repeats
    QTest::keyPress(low, Qt::Key_PageUp);
    EXPECT_EQ(jar().heightLow.value, before) << "shown, not kept yet";
    EXPECT_NEAR(in<DesignView>("designs.drawing")->length(BenchHandle::low), static_cast<double>(before + 12),
                0.01);
    QTest::keyRelease(low, Qt::Key_PageUp);
    EXPECT_EQ(jar().heightLow.value, before + 12);
    EXPECT_TRUE(low->accessibleName().contains(QString::number(before + 12)))
        << low->accessibleName().toStdString();
    EXPECT_TRUE(bench_->undo().isEmpty());
    EXPECT_EQ(jar().heightLow.value, before);
}

TEST_F(DesignBench, EscapeLetsAPulledLengthGoBack) {
    openBench();
    const auto before = jar().heightMiddle;
    auto* middle = knob("designs.knob.middle");
    middle->setFocus();
    QTest::keyPress(middle, Qt::Key_PageUp);
    QTest::keyClick(middle, Qt::Key_Escape);
    EXPECT_EQ(jar().heightMiddle, before);
    EXPECT_TRUE(in<QWidget>("designs.editor")->isVisible()) << "the first Escape is the knob's";
    EXPECT_FALSE(bench_->canUndo());
}

TEST_F(DesignBench, SaysHowItsWaterFallsAndWhichColoursItShows) {
    openBench();
    EXPECT_FALSE(in<QLabel>("designs.waterHead")->text().isEmpty());
    EXPECT_FALSE(in<QWidget>("designs.waterCurve")->accessibleDescription().isEmpty());
    EXPECT_FALSE(in<QWidget>("designs.colourBars")->accessibleDescription().isEmpty());
    auto* figure = in<FigureButton>("designs.colour.0");
    EXPECT_FALSE(figure->facts().working.empty()) << "its working is one press away";
    QTest::mouseClick(figure, Qt::LeftButton);
    EXPECT_TRUE(figure->isChecked());
}

// How long it stands the plan says, which comes after the edit: the line must not be one edit behind.
TEST_F(DesignBench, TheLineOfStemsGrownOnFollowsThePlan) {
    openBench();
    for (const auto& p : held().plants) {
        auto grows = p;
        grows.growsOnMmPerDay = 12;
        EXPECT_TRUE(bench_->apply(model::Edit("grows").put(grows)).isEmpty());
    }
    bench_->waitForPlan();
    QApplication::processEvents();
    auto* view = in<DesignView>("designs.drawing");
    const double before = view->grownTop();
    ASSERT_GT(before, 0);
    for (const auto& b : held().bookings) {
        auto longer = b;
        longer.eventEnd.day = longer.eventEnd.day + 1;
        EXPECT_TRUE(bench_->apply(model::Edit("longer").put(longer)).isEmpty());
    }
    bench_->waitForPlan();
    QApplication::processEvents();
    const auto stood = nextStanding(held(), bench_->plan(), supperJar, bench_->today());
    double top = 0;
    for (const auto& stem : placeStems(grownPiece(held(), supperJar, stood)))
        top = std::max(top, stem.top());
    EXPECT_NEAR(view->grownTop(), top, 1e-6);
    EXPECT_GT(view->grownTop(), before) << "it stands longer";
}

TEST_F(DesignBench, ComesWholeAfterSomeFramesAndStaysSoWhenPulled) {
    openBench();
    auto* view = in<DesignView>("designs.drawing");
    for (int frame = 0; frame < 200 && !view->isWhole(); ++frame)
        view->repaint();
    EXPECT_TRUE(view->isWhole());
    auto* low = knob("designs.knob.low");
    QTest::keyPress(low, Qt::Key_PageUp);
    view->repaint();
    EXPECT_TRUE(view->isWhole()) << "a pull needs no new picture";
    QTest::keyRelease(low, Qt::Key_PageUp);
}

TEST_F(DesignBench, KeepsThePictureOfATrialByItsName) {
    openBench();
    auto* picture = bare_->findChild<TrialPicture*>();
    ASSERT_NE(picture, nullptr);
    auto* words = in<QLabel>("designs.picture.words");
    EXPECT_TRUE(words->text().startsWith(QStringLiteral("No picture yet")));
    const QString file = folder_.filePath(QStringLiteral("trial.png"));
    QImage image(40, 30, QImage::Format_RGB32);
    image.fill(Qt::darkGreen);
    ASSERT_TRUE(image.save(file));
    picture->choose(file);
    EXPECT_EQ(jar().picture, "trial.png") << "beside the season its name is enough";
    EXPECT_FALSE(in<QLabel>("designs.picture")->pixmap().isNull());
    ASSERT_TRUE(QFile::remove(file));
    static_cast<DesignsPlace*>(place_.get())->open(Id<model::Design>(2));
    static_cast<DesignsPlace*>(place_.get())->open(supperJar);
    EXPECT_TRUE(words->text().contains(QStringLiteral("trial.png is not there any more")))
        << words->text().toStdString();
    const QString text = folder_.filePath(QStringLiteral("notes.png"));
    QFile notes(text);
    ASSERT_TRUE(notes.open(QIODevice::WriteOnly));
    notes.write("no picture");
    notes.close();
    picture->choose(text);
    EXPECT_TRUE(refused_.contains(QStringLiteral("cannot be read as a picture"))) << refused_.toStdString();
    EXPECT_EQ(jar().picture, "trial.png");
}

TEST_F(DesignBench, ShowsItFromAboveOnItsTable) {
    openBench();
    auto* above = in<QWidget>("designs.fromAbove");
    EXPECT_FALSE(above->isVisible());
    EXPECT_TRUE(above->accessibleDescription().contains(QStringLiteral("mm")))
        << above->accessibleDescription().toStdString();
}

// A lift over the rim: said beside the drawing, left so, quiet, and asked again when the lift is another.
TEST_F(DesignBench, AFindingIsAcceptedAtTheBench) {
    auto season = demoSeason();
    auto design = *season.designs.find(supperJar);
    const auto depth = season.containers.find(*design.container)->innerDepth;
    design.lift = depth + Millimetres(35);
    season.designs.put(design);
    openPlace<DesignsPlace>(season);
    static_cast<DesignsPlace*>(place_.get())->open(supperJar);
    QApplication::processEvents();
    auto* rows = in<FindingRows>("designs.findings");
    const auto lift = [&] {
        for (std::size_t i = 0; i < rows->findings().size(); ++i)
            if (plan::sizeFaultOf(rows->findings()[i].finding.code) == plan::SizeFault::liftOverRim)
                return static_cast<int>(i);
        return -1;
    };
    ASSERT_GE(lift(), 0);
    const auto accept = QStringLiteral("designs.findings.%1.accept").arg(lift()).toUtf8();
    EXPECT_FALSE(
        in<QPushButton>(QStringLiteral("designs.findings.%1.lead").arg(lift()).toUtf8())->isVisible())
        << "it is mended here";
    QTest::mouseClick(in<QPushButton>(accept), Qt::LeftButton);
    bench_->waitForPlan();
    QApplication::processEvents();
    ASSERT_GE(lift(), 0);
    EXPECT_TRUE(rows->findings()[static_cast<std::size_t>(lift())].accepted);
    EXPECT_TRUE(in<QPushButton>("designs.findings.accepted")->isVisible());
    design = jar();
    design.lift = depth + Millimetres(40);
    ASSERT_EQ(bench_->apply(model::Edit("t").put(design)), QString());
    bench_->waitForPlan();
    QApplication::processEvents();
    EXPECT_FALSE(rows->findings()[static_cast<std::size_t>(lift())].accepted);
}

} // namespace withy::ui
