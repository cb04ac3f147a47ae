// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/designs/water_fill.h"
#include "core/plan/convert.h"
#include "tests/drawings/test_designs.h"
#include "ui/paint/bunch.h"
#include "ui/paint/piece_layout.h"
#include "ui/paint/piece_painter.h"
#include "ui/paint/piece_plan.h"
#include "ui/paint/ribbon_sketch.h"
#include "ui/paint/table_from_above.h"

#include <QImage>
#include <QPainter>

#include <algorithm>
#include <cmath>
#include <map>

#include <gtest/gtest.h>

/// Every length in a drawing is the model's length: measured in what is drawn, against millimetres times
/// scale, to the pixel.
namespace withy::ui {
namespace {

constexpr double k = 1.7; ///< pixels a millimetre: no round number
constexpr double pixel = 1;

double mm(Millimetres length) {
    return static_cast<double>(length.value);
}

class Lengths : public testing::Test {
protected:
    TestDesigns designs = testDesigns();

    template <class Check>
    void eachDesign(Check check) {
        int checked = 0;
        for (const auto& d : designs.all) {
            SCOPED_TRACE(d.name);
            const auto& design = *designs.season.designs.find(d.design);
            checked += check(design, pieceDrawing(designs.season, d.design)) ? 1 : 0;
        }
        EXPECT_GE(checked, 2) << "the test has something to measure";
    }

    const model::Container* containerOf(const model::Design& d) const {
        return d.container ? designs.season.containers.find(*d.container) : nullptr;
    }
};

bool inTiers(const model::Design& d) {
    return d.kind != model::PieceKind::crown && d.kind != model::PieceKind::wreath &&
           d.kind != model::PieceKind::garland;
}

TEST_F(Lengths, ContainersHaveTheirHeightWidthAndRim) {
    eachDesign([&](const model::Design& d, const PieceDrawing& piece) {
        const auto* c = containerOf(d);
        if (!c) return false;
        const auto sketch = vesselSketch(*piece.vessel, k, PieceColours::of({}));
        EXPECT_NEAR(-sketch.rimY, (piece.vessel->stand + mm(*c->outerHeight)) * k, 0.01);
        QRectF body; // the largest closed outline in front is the container's own
        for (const auto& mark : sketch.front) {
            const auto box = mark.path.boundingRect();
            if (mark.path.elementCount() > 4 && box.height() > body.height()) body = box;
        }
        EXPECT_NEAR(body.height(), mm(*c->outerHeight) * k, pixel);
        EXPECT_NEAR(body.width(), mm(*c->outerDiameter) * k, pixel);
        const double wall = (mm(*c->outerDiameter) - mm(c->innerBody.value_or(c->innerRim))) / 2.0;
        EXPECT_NEAR(sketch.insideHalf * 2, mm(c->innerRim) * k, pixel);
        EXPECT_NEAR(piece.vessel->rim, mm(c->innerRim) + 2 * wall, 0.01);
        return true;
    });
}

TEST_F(Lengths, AnEmptyJarIsAsHighInPixelsAsInMillimetres) {
    auto piece = pieceDrawing(designs.season, designs.all.front().design);
    piece.slots.clear();
    piece.ribbon.reset();
    const Palette palette;
    QImage image(300, 300, QImage::Format_RGB32);
    image.fill(palette.of(Role::paper));
    QPainter painter(&image);
    PiecePaintOptions options;
    options.scale = 2;
    paintPiece(painter, piece, QRectF(0, 0, 300, 300), options);
    painter.end();
    QRect ink;
    for (int y = 0; y < 300; ++y) {
        for (int x = 0; x < 300; ++x) {
            if (lightness(image.pixelColor(x, y)) < 140) ink |= QRect(x, y, 1, 1);
        }
    }
    // The outline's middle is the edge: half of 1.6 px below, half of the lip's 2.4 above.
    EXPECT_NEAR(ink.height(), 112 * 2 + 0.8 + 1.2, pixel);
    EXPECT_NEAR(ink.width(), 76 * 2 + 1.6, pixel);
}

TEST_F(Lengths, WaterStandsWhereThePlanSaysItDoes) {
    const auto edge = Palette{}.of(Role::waterEdge);
    eachDesign([&](const model::Design& d, const PieceDrawing& piece) {
        const auto* c = containerOf(d);
        if (!c || !piece.vessel->glass()) return false;
        const auto fill = designs::waterFill(
            {plan::shapeOf(*c), c->measuredVolume, plan::tenThousandths(d.waterShare), 0, {}});
        EXPECT_TRUE(fill.ok());
        const auto sketch = vesselSketch(*piece.vessel, k, PieceColours::of({}));
        const auto line = std::find_if(sketch.front.begin(), sketch.front.end(),
                                       [&](const Mark& m) { return m.line == edge; });
        if (line == sketch.front.end()) {
            ADD_FAILURE() << "no water line";
            return false;
        }
        const double bottom = mm(*c->outerHeight) - mm(c->innerDepth);
        EXPECT_NEAR(-line->path.boundingRect().center().y(), (bottom + fill->level) * k, pixel);
        return true;
    });
}

TEST_F(Lengths, StemEndsAreLiftedOffTheBase) {
    eachDesign([&](const model::Design& d, const PieceDrawing& piece) {
        const auto* c = containerOf(d);
        if (!c) return false;
        const auto neck = standingNeck(piece, vesselSketch(*piece.vessel, k, PieceColours::of({})), k);
        const double bottom = piece.vessel->stand + mm(*c->outerHeight) - mm(c->innerDepth);
        for (const auto& stem : placeStems(piece))
            EXPECT_NEAR(-stemOf(piece, stem, neck, k).foot.y(), (bottom + mm(d.lift)) * k, 0.01);
        return true;
    });
}

TEST_F(Lengths, BoundStemsEndBelowTheTie) {
    eachDesign([&](const model::Design& d, const PieceDrawing& piece) {
        if (d.container || !d.stemsBelowTie) return false;
        const auto neck = tiedNeck(piece, k);
        for (const auto& stem : placeStems(piece))
            EXPECT_NEAR(stemOf(piece, stem, neck, k).foot.y(), mm(*d.stemsBelowTie) * k, 0.01);
        return true;
    });
}

// A spray longer than its tier is high stands on the rim and looks over it; the others are exact.
TEST_F(Lengths, TheHighestHeadOfATierStandsAtItsHeight) {
    eachDesign([&](const model::Design& d, const PieceDrawing& piece) {
        if (!inTiers(d)) return false;
        std::map<model::Tier, double> top;
        std::map<model::Tier, bool> standsOnRim;
        for (const auto& stem : placeStems(piece)) {
            auto& highest = top.try_emplace(stem.slot->tier, stem.top()).first->second;
            highest = std::max(highest, stem.top());
            standsOnRim[stem.slot->tier] |= growsFromFoot(stem.slot->form) && stem.height <= 5.001;
        }
        const std::map<model::Tier, Millimetres> wanted{{model::Tier::low, d.heightLow},
                                                        {model::Tier::middle, d.heightMiddle},
                                                        {model::Tier::tall, d.heightTall}};
        for (const auto& [tier, height] : top) {
            if (!standsOnRim[tier]) {
                EXPECT_NEAR(height * k, mm(wanted.at(tier)) * k, 0.01);
            }
            EXPECT_GE(height * k, mm(wanted.at(tier)) * k - 0.01);
        }
        return true;
    });
}

TEST_F(Lengths, TheOutermostHeadsTouchTheSpread) {
    eachDesign([&](const model::Design& d, const PieceDrawing& piece) {
        if (d.kind == model::PieceKind::garland) return false;
        const auto stems = inTiers(d) ? placeStems(piece) : placeRing(piece).heads;
        double right = 0, left = 0;
        for (const auto& stem : stems) {
            right = std::max(right, stem.reach(1));
            left = std::max(left, stem.reach(-1));
        }
        const double half = mm(*d.spread) / 2.0 * k;
        EXPECT_NEAR(std::max(right, left) * k, half, pixel);
        if (inTiers(d)) {
            EXPECT_NEAR(std::min(right, left) * k, half, pixel);
        }
        return true;
    });
}

TEST_F(Lengths, HeadsAndStemsKeepTheirDiameters) {
    eachDesign([&](const model::Design& d, const PieceDrawing& piece) {
        if (!inTiers(d)) return false;
        for (const auto& stem : placeStems(piece)) {
            const bool trimmed = stem.slot->form == HeadForm::leaf || stem.slot->form == HeadForm::trail ||
                                 stem.slot->form == HeadForm::grass;
            if (!trimmed) {
                EXPECT_EQ(stem.head, stem.slot->head);
            }
        }
        for (const auto& slot : designs.season.slots) {
            if (slot.design != d.id) continue;
            for (const auto& choice : designs.season.slotPlants) {
                if (choice.slot != slot.id) continue;
                const auto& plant = *designs.season.plants.find(choice.plant);
                EXPECT_TRUE(std::any_of(piece.slots.begin(), piece.slots.end(), [&](const SlotDrawing& s) {
                    return s.head == *plant.headDiameterMm && s.stem == *plant.stemDiameterMm;
                })) << plant.name;
            }
        }
        return true;
    });
}

TEST_F(Lengths, RibbonsHaveTheirWidthTailsAndLoops) {
    eachDesign([&](const model::Design& d, const PieceDrawing& piece) {
        if (!piece.ribbon || d.finish != model::RibbonFinish::bow) return false;
        const auto sketch = ribbonSketch(*piece.ribbon, 20, k, 1e6);
        QRectF all = boundsOf(sketch);
        EXPECT_NEAR(all.bottom(), mm(d.tail) * k, pixel + piece.ribbon->width * k * 0.05);
        EXPECT_NEAR(all.right(), std::max(mm(d.loop), 20 / k) * k, pixel + piece.ribbon->width * k * 0.4);
        return true;
    });
}

TEST_F(Lengths, AboveTheOutermostHeadTouchesTheSpreadToo) {
    eachDesign([&](const model::Design& d, const PieceDrawing& piece) {
        if (!inTiers(d) || piece.slots.size() < 2) return false;
        double far = 0;
        for (const auto& h : headsFromAbove(piece)) {
            const bool spray = h.turn != 0;
            const double out = spray ? h.diameter * headReach(h.slot->form == HeadForm::trail ? HeadForm::leaf
                                                                                              : h.slot->form)
                                     : h.diameter / 2;
            far = std::max(far, std::hypot(h.at.x(), h.at.y()) + out);
        }
        EXPECT_NEAR(far * k, mm(*d.spread) / 2.0 * k, pixel);
        return true;
    });
}

// Grown on is drawn: a tulip 12 mm taller stands 12 mm higher.
TEST_F(Lengths, StemsThatGrowOnStandHigher) {
    const auto id = designs.all.front().design;
    for (const auto& p : designs.season.plants) {
        if (p.name != "apricot spike") continue;
        auto grows = p;
        grows.growsOnMmPerDay = 12;
        grows.q10 = 2;
        designs.season.plants.put(grows);
        break;
    }
    const auto before = placeStems(pieceDrawing(designs.season, id));
    const auto after = placeStems(grownPiece(designs.season, id, {{24, 20}, {12, 10}}));
    ASSERT_EQ(before.size(), after.size());
    for (std::size_t i = 0; i < before.size(); ++i) {
        // A day at 20 C and half a day at half the rate.
        const double grown = before[i].slot->form == HeadForm::spike ? 12 + 3 : 0;
        EXPECT_NEAR(after[i].top() - before[i].top(), grown, 1e-6);
    }
}

} // namespace

/// The middle and the places are those that fitOnTable() counts with.
TEST(TableFromAbove, PiecesStandWhereTheFitSaysTheyDo) {
    packing::TableTop trestle;
    trestle.length = Millimetres(2440);
    trestle.width = Millimetres(760);
    trestle.covers = 8;
    const packing::PlaceSetting setting;
    packing::TableTop round;
    round.form = packing::TableForm::round;
    round.length = Millimetres(1830);
    round.covers = 10;

    struct Row {
        packing::TableTop table;
        std::int64_t count;
    };

    const Row rows[]{{trestle, 1}, {trestle, 2}, {trestle, 5}, {round, 1}, {round, 3}, {round, 8}};
    for (const auto& row : rows) {
        SCOPED_TRACE(row.count);
        const double footprint = 210;
        const auto fit =
            packing::fitOnTable(row.table, setting, {Millimetres(210), row.count, Millimetres(0)});
        ASSERT_TRUE(fit.ok());
        const auto places = piecePlaces(row.table, setting, row.count, footprint);
        ASSERT_EQ(places.size(), static_cast<std::size_t>(row.count));
        const auto middle = *freeMiddleOf(row.table, setting);
        double least = 1e9;
        for (std::size_t i = 0; i < places.size(); ++i) {
            const QPointF p = places[i] - middle.center();
            const double toEdge = row.table.form == packing::TableForm::round
                                      ? middle.width() / 2 - std::hypot(p.x(), p.y())
                                      : middle.height() / 2 - std::abs(p.y());
            least = std::min(least, toEdge - footprint / 2);
            for (std::size_t j = i + 1; j < places.size(); ++j) {
                const QPointF q = places[i] - places[j];
                least = std::min(least, (std::hypot(q.x(), q.y()) - footprint) / 2);
            }
        }
        EXPECT_NEAR(least, fit->eachSide, 0.01) << "the narrowest gap drawn is the gap counted";
    }
}

TEST(TableFromAbove, EveryCoverHasItsPlateOnTheTable) {
    packing::TableTop table;
    table.length = Millimetres(2000);
    table.width = Millimetres(800);
    for (const std::int64_t covers : {0, 1, 5, 8}) {
        table.covers = covers;
        table.coversAtEnds = covers > 4 ? 2 : 0;
        const auto places = coverPlaces(table, {});
        EXPECT_EQ(places.size(), static_cast<std::size_t>(covers));
        for (const auto& place : places)
            EXPECT_TRUE(tableBoundsMm(table, false).contains(place.plate));
    }
}

} // namespace withy::ui
