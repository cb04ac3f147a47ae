// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/size_faults.h"
#include "tests/drawings/test_designs.h"
#include "ui/logic/models/size_words.h"
#include "ui/paint/piece_painter.h"
#include "ui/paint/vessel_sketch.h"

#include <QImage>
#include <QPainter>

#include <functional>

#include <gtest/gtest.h>

/// Sizes that contradict each other: named with the field and the mend, drawn as they are, never a crash.
namespace withy::ui {
namespace {

using plan::SizeFault;

struct FaultRow {
    const char* name;
    std::function<void(model::Container&, model::Design&)> how;
    SizeFault fault;
    const char* field;
    const char* says; ///< part of the sentence
};

const FaultRow rows[]{
    {"deeper than high", [](auto& c, auto&) { c.innerDepth = Millimetres(130); }, SizeFault::deeperThanHigh,
     "inner_depth", "130 mm deep inside, but only 112 mm high"},
    {"wider inside than out", [](auto& c, auto&) { c.innerBody = Millimetres(90); },
     SizeFault::widerInsideThanOut, "inner_body", "90 mm across inside, but only 76 mm outside"},
    {"neck taller than the jar", [](auto& c, auto&) { c.neckHeight = Millimetres(200); },
     SizeFault::neckTallerThanJar, "neck_height", "a neck of 200 mm on a jar of 112 mm"},
    {"ribbon wider than the neck", [](auto& c, auto&) { c.neckHeight = Millimetres(10); },
     SizeFault::ribbonWiderThanNeck, "ribbon_mix", "15 mm wide on a neck of 10 mm"},
    {"lift over the rim", [](auto&, auto& d) { d.lift = Millimetres(140); }, SizeFault::liftOverRim, "lift",
     "lifted by 140 mm, but it is only 105 mm deep"},
    {"stem ends over the water", [](auto&, auto& d) { d.lift = Millimetres(95); }, SizeFault::endsOverWater,
     "water_share", "dry from the start"},
    {"spread under the jar", [](auto&, auto& d) { d.spread = Millimetres(70); },
     SizeFault::headsNarrowerThanJar, "spread", "wider than the heads' spread of 70 mm"},
    {"a head over the spread", [](auto&, auto& d) { d.spread = Millimetres(70); },
     SizeFault::headWiderThanSpread, "spread", "one head is 95 mm across"},
    {"tiers out of order", [](auto&, auto& d) { d.heightLow = Millimetres(150); }, SizeFault::tiersOutOfOrder,
     "height_low", "at 150 mm, the next one at 110 mm"},
    {"tails on the table", [](auto&, auto& d) { d.tail = Millimetres(300); }, SizeFault::tailOverGround,
     "tail", "104 mm are free"},
};

int inkedPixels(const PieceDrawing& piece) {
    QImage image(140, 160, QImage::Format_RGB32);
    image.fill(Palette{}.of(Role::paper));
    QPainter painter(&image);
    paintPiece(painter, piece, QRectF(0, 0, 140, 160), {});
    painter.end();
    int inked = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x)
            inked += image.pixel(x, y) != Palette{}.of(Role::paper).rgb() ? 1 : 0;
    }
    return inked;
}

TEST(SizeFaults, AreNamedWithFieldAndMendAndDrawnAsTheyAre) {
    const auto designs = testDesigns();
    const auto id = designs.all.front().design;
    ASSERT_TRUE(plan::sizeFindings(designs.season, id).empty()) << "the design as it is has none";
    for (const auto& row : rows) {
        SCOPED_TRACE(row.name);
        auto season = designs.season;
        auto d = *season.designs.find(id);
        auto c = *season.containers.find(*d.container);
        row.how(c, d);
        season.designs.put(d);
        season.containers.put(c);
        const auto found = plan::sizeFindings(season, id);
        const auto at =
            std::find_if(found.begin(), found.end(), [&](const auto& f) { return f.fault == row.fault; });
        if (at == found.end()) {
            ADD_FAILURE() << "not found";
            continue;
        }
        EXPECT_STREQ(at->field, row.field);
        EXPECT_TRUE(sizeWords(*at, model::UnitSystem::metric).contains(QString::fromUtf8(row.says)))
            << sizeWords(*at, model::UnitSystem::metric).toStdString();
        EXPECT_GT(inkedPixels(pieceDrawing(season, id)), 400);
    }
}

// What contradicts is seen: the inside reaches below the table, the feet hang over the rim, the ribbon over
// the neck. Nothing is quietly made to fit.
TEST(SizeFaults, AreNotClampedInTheDrawing) {
    const auto designs = testDesigns();
    const auto id = designs.all.front().design;
    const auto drawn = [&](const std::function<void(model::Container&, model::Design&)>& how) {
        auto season = designs.season;
        auto d = *season.designs.find(id);
        auto c = *season.containers.find(*d.container);
        how(c, d);
        season.designs.put(d);
        season.containers.put(c);
        return pieceDrawing(season, id);
    };
    EXPECT_EQ(drawn([](auto& c, auto&) { c.innerDepth = Millimetres(130); }).vessel->floor, 112 - 130);
    EXPECT_EQ(drawn([](auto& c, auto&) { c.innerBody = Millimetres(90); }).vessel->wall, (76 - 90) / 2.0);
    EXPECT_EQ(drawn([](auto&, auto& d) { d.lift = Millimetres(140); }).lift, 140);
    EXPECT_EQ(drawn([](auto&, auto& d) { d.wraps = 40; }).ribbon->wraps, 40);
    EXPECT_EQ(drawn([](auto&, auto& d) { d.tail = Millimetres(1800); }).ribbon->tail, 1800);
    const auto narrow = drawn([](auto& c, auto&) { c.innerRim = Millimetres(12); });
    const auto vessel = vesselSketch(*narrow.vessel, 1, PieceColours::of({}));
    EXPECT_NEAR(vessel.insideHalf, 6, 0.01);
}

} // namespace
} // namespace withy::ui
