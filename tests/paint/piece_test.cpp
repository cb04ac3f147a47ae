// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/starting_seasons.h"
#include "ui/paint/piece_painter.h"
#include "ui/paint/piece_pictures.h"

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QEventLoop>
#include <QImage>
#include <QPainter>
#include <QSet>

#include <algorithm>
#include <cmath>
#include <functional>

#include <gtest/gtest.h>

namespace withy::ui {
namespace {

using model::PieceKind;

constexpr PieceKind everyKind[]{
    PieceKind::table,    PieceKind::handTied, PieceKind::buttonhole, PieceKind::corsage, PieceKind::crown,
    PieceKind::pedestal, PieceKind::sheaf,    PieceKind::spray,      PieceKind::garland, PieceKind::wreath,
    PieceKind::pewEnd,   PieceKind::budVase,  PieceKind::basket};

QImage painted(const PieceDrawing& piece, QSize size = {300, 260}, PiecePaintOptions options = {}) {
    QImage image(size, QImage::Format_RGB32);
    image.fill(options.palette.of(Role::paper));
    QPainter painter(&image);
    paintPiece(painter, piece, QRectF(QPointF(), QSizeF(size)), options);
    return image;
}

int notPaper(const QImage& image, const Palette& palette = {}) {
    int count = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x)
            count += image.pixel(x, y) != palette.of(Role::paper).rgb() ? 1 : 0;
    }
    return count;
}

/// A season with one design of `kind` and the slots asked for.
struct Bench {
    model::Season season;

    explicit Bench(PieceKind kind = PieceKind::table) {
        model::Design d;
        d.id = Id<model::Design>(1);
        d.kind = kind;
        season.designs.put(d);
    }

    void slot(model::BloomShape shape, std::int64_t count, model::Tier tier = model::Tier::middle,
              std::optional<double> head = std::nullopt) {
        model::Plant p;
        p.id = season.plants.nextId();
        p.shape = shape;
        p.headDiameterMm = head;
        season.plants.put(p);
        model::Slot s;
        s.id = season.slots.nextId();
        s.design = Id<model::Design>(1);
        s.count = Stems(count);
        s.tier = tier;
        s.position = s.id.value;
        season.slots.put(s);
        model::SlotPlant choice;
        choice.id = season.slotPlants.nextId();
        choice.slot = s.id;
        choice.plant = p.id;
        season.slotPlants.put(choice);
    }

    void change(const std::function<void(model::Design&)>& how) {
        model::Design d = *season.designs.find(Id<model::Design>(1));
        how(d);
        season.designs.put(d);
    }

    void container(const std::function<void(model::Container&)>& how) {
        model::Container c;
        c.id = Id<model::Container>(1);
        c.innerRim = Millimetres(60);
        c.innerDepth = Millimetres(110);
        how(c);
        season.containers.put(c);
        change([](auto& d) { d.container = Id<model::Container>(1); });
    }

    [[nodiscard]] PieceDrawing drawing() const { return pieceDrawing(season, Id<model::Design>(1)); }
};

TEST(Piece, OfEveryKindPaintsSomethingEvenWithoutSlots) {
    for (const auto kind : everyKind) {
        SCOPED_TRACE(model::Words<PieceKind>::list[static_cast<std::size_t>(kind)]);
        Bench bench(kind);
        bench.change([](auto& d) { d.finish = model::RibbonFinish::bow; });
        EXPECT_GT(notPaper(painted(bench.drawing())), 40);
        bench.slot(model::BloomShape::daisy, 5);
        bench.slot(model::BloomShape::leaf, 3, model::Tier::low);
        EXPECT_GT(notPaper(painted(bench.drawing())), 400);
    }
}

TEST(Piece, OfEveryBloomShapePaintsAHeadOfItsOwn) {
    QSet<QByteArray> seen;
    for (int shape = 0; shape <= static_cast<int>(model::BloomShape::berry); ++shape) {
        SCOPED_TRACE(shape);
        Bench bench;
        bench.slot(static_cast<model::BloomShape>(shape), 1);
        const auto image = painted(bench.drawing());
        EXPECT_GT(notPaper(image), notPaper(painted(Bench().drawing())) / 20);
        seen.insert(QByteArray(reinterpret_cast<const char*>(image.constBits()), image.sizeInBytes()));
    }
    EXPECT_EQ(seen.size(), 11);
}

TEST(Piece, EveryHeadPaintsSomethingAndIsAboutItsDiameterAcross) {
    for (const auto form : allHeadForms) {
        SCOPED_TRACE(static_cast<int>(form));
        const auto sketch = headSketch({form, 100, QColor(0xE8705A), {}, 0, 3});
        const QRectF box = boundsOf(sketch);
        EXPECT_GT(box.width(), 55);
        EXPECT_LT(box.width(), 125);
        EXPECT_NEAR(-box.top() / 100, headReach(form), 0.25);
        EXPECT_TRUE(headSketch({form, 0, Qt::red, {}, 0, 3}).empty());
    }
}

TEST(Piece, IsTheSameEachTime) {
    const auto season = demoSeason();
    for (const auto& d : season.designs) {
        const auto piece = pieceDrawing(season, d.id);
        EXPECT_EQ(painted(piece, {120, 120}), painted(pieceDrawing(season, d.id), {120, 120})) << d.name;
    }
}

/// All of it within pieceSizeMm at the scale, give or take the width of a line.
void expectInside(const PieceDrawing& piece, double scale) {
    const QSizeF mm = pieceSizeMm(piece);
    const QSizeF px = mm * scale + QSizeF(6, 6);
    ASSERT_LT(px.width() * px.height(), 4e6);
    const Palette palette;
    QImage image((px + QSizeF(80, 80)).toSize(), QImage::Format_RGB32);
    image.fill(palette.of(Role::paper));
    QPainter painter(&image);
    const QRectF where(QPointF(40, 40), px);
    PiecePaintOptions options;
    options.scale = scale;
    paintPiece(painter, piece, where, options);
    painter.end();
    const QRect box = where.toAlignedRect();
    int outside = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            if (!box.contains(x, y) && image.pixel(x, y) != palette.of(Role::paper).rgb()) ++outside;
        }
    }
    EXPECT_EQ(outside, 0);
}

TEST(Piece, StaysInsideItsSize) {
    const auto season = demoSeason();
    for (const auto& d : season.designs) {
        SCOPED_TRACE(d.name);
        const auto piece = pieceDrawing(season, d.id);
        expectInside(piece, 0.25);
        if (d.id.value % 5 == 0) expectInside(piece, 1.1);
    }
}

// The quick measure must hold what is drawn, and not much more.
TEST(Piece, IsMeasuredAsItIsDrawn) {
    const auto season = demoSeason();
    for (const auto& d : season.designs) {
        SCOPED_TRACE(d.name);
        const auto piece = pieceDrawing(season, d.id);
        const QRectF drawn = boundsOf(pieceSketch(piece, 1, {}));
        const QRectF measured = pieceBoundsMm(piece);
        EXPECT_TRUE(measured.adjusted(-1, -1, 1, 1).contains(drawn));
        EXPECT_LT(measured.width(), drawn.width() * 1.12);
        EXPECT_LT(measured.height(), drawn.height() * 1.12);
    }
}

TEST(Piece, HeadsAreMeasuredAsTheyAreDrawn) {
    for (const auto form : allHeadForms) {
        for (const double tilt : {-70.0, -20.0, 0.0, 33.0, 80.0}) {
            SCOPED_TRACE(std::to_string(static_cast<int>(form)) + " at " + std::to_string(tilt));
            const QRectF drawn = boundsOf(headSketch({form, 100, Qt::red, {}, tilt, 5}));
            const QRectF measured = headBounds(form, 100, tilt);
            EXPECT_TRUE(measured.adjusted(-1, -1, 1, 1).contains(drawn));
            EXPECT_LT(measured.width(), drawn.width() * 1.12);
            EXPECT_LT(measured.height(), drawn.height() * 1.12);
        }
    }
}

TEST(Piece, StandsAsHighAsItsContainerAndTallestTier) {
    Bench bench;
    bench.container([](auto& c) {
        c.outerHeight = Millimetres(120);
        c.outerDiameter = Millimetres(76);
    });
    EXPECT_NEAR(pieceSizeMm(bench.drawing()).height(), 120, 2) << "the jar alone";
    EXPECT_NEAR(pieceSizeMm(bench.drawing()).width(), 76, 4);
    bench.slot(model::BloomShape::globe, 1, model::Tier::tall, 40);
    const double height = pieceSizeMm(bench.drawing()).height();
    EXPECT_NEAR(height, 120 + 170 + 20, 12) << "the head's middle stands 170 above the rim";
}

TEST(Piece, SpreadsNoWiderThanTheDesignSays) {
    for (const std::int64_t stems : {3, 9, 30}) {
        Bench bench;
        bench.change([](auto& d) { d.spread = Millimetres(300); });
        bench.slot(model::BloomShape::globe, stems, model::Tier::low, 60);
        EXPECT_LE(pieceSizeMm(bench.drawing()).width(), 300 * 1.1) << stems;
        EXPECT_GE(pieceSizeMm(bench.drawing()).width(), 300 * 0.6) << stems;
    }
}

TEST(Piece, MoreStemsShowAsMore) {
    int before = 0;
    for (const int n : {0, 1, 3, 8}) {
        Bench bench;
        if (n) bench.slot(model::BloomShape::daisy, n);
        PiecePaintOptions options;
        options.scale = 0.7;
        const int now = notPaper(painted(bench.drawing(), {300, 260}, options));
        EXPECT_GT(now, before);
        before = now;
    }
}

TEST(Piece, InLineOnlyHasNoPlantsColour) {
    Bench bench;
    bench.slot(model::BloomShape::daisy, 5);
    PiecePaintOptions options;
    options.lineOnly = true;
    const auto image = painted(bench.drawing(), {200, 200}, options);
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x)
            ASSERT_LT(image.pixelColor(x, y).hsvSaturationF(), 0.2F);
    }
    EXPECT_GT(notPaper(image), 200);
}

// "On dark, the drawing keeps its colours, the outlines turn to ink."
TEST(Piece, KeepsItsColoursOnDark) {
    Bench bench;
    bench.slot(model::BloomShape::daisy, 5);
    auto light = pieceSketch(bench.drawing(), 1, Palette{Theme::light});
    auto dark = pieceSketch(bench.drawing(), 1, Palette{Theme::dark});
    ASSERT_EQ(light.size(), dark.size());
    const auto bloom = QColor::fromRgb(0xD8CFAE);
    const auto has = [](const Sketch& s, const QColor& c) {
        return std::any_of(s.begin(), s.end(), [&](const Mark& m) { return m.fill == c; });
    };
    EXPECT_TRUE(has(light, bloom));
    EXPECT_TRUE(has(dark, bloom));
    const auto outlined = [](const Sketch& s, const QColor& c) {
        return std::any_of(s.begin(), s.end(), [&](const Mark& m) { return m.line == c; });
    };
    EXPECT_TRUE(outlined(dark, Palette{Theme::dark}.of(Role::ink)));
    EXPECT_TRUE(outlined(light, Palette{Theme::light}.of(Role::ink)));
}

struct Absurd {
    const char* name;
    std::function<void(Bench&)> how;
};

TEST(Piece, AbsurdSizesNeitherCrashNorHang) {
    const Absurd rows[]{
        {"zero depth", [](Bench& b) { b.container([](auto& c) { c.innerDepth = Millimetres(0); }); }},
        {"zero rim", [](Bench& b) { b.container([](auto& c) { c.innerRim = Millimetres(0); }); }},
        {"negative sizes",
         [](Bench& b) {
             b.container([](auto& c) {
                 c.innerDepth = Millimetres(-5);
                 c.outerHeight = Millimetres(-70);
             });
         }},
        {"five metres", [](Bench& b) { b.container([](auto& c) { c.innerDepth = Millimetres(5000); }); }},
        {"a kilometre",
         [](Bench& b) { b.container([](auto& c) { c.innerDepth = Millimetres(1'000'000); }); }},
        {"outer less than inner",
         [](Bench& b) { b.container([](auto& c) { c.outerDiameter = Millimetres(1); }); }},
        {"trough without length",
         [](Bench& b) { b.container([](auto& c) { c.profile = model::ProfileKind::trough; }); }},
        {"rounded to a point",
         [](Bench& b) {
             b.container([](auto& c) {
                 c.profile = model::ProfileKind::rounded;
                 c.innerBase = Millimetres(0);
             });
         }},
        {"lift above the rim", [](Bench& b) { b.change([](auto& d) { d.lift = Millimetres(900); }); }},
        {"no spread", [](Bench& b) { b.change([](auto& d) { d.spread = Millimetres(0); }); }},
        {"no heights",
         [](Bench& b) { b.change([](auto& d) { d.heightLow = d.heightMiddle = d.heightTall = {}; }); }},
        {"water beyond the rim", [](Bench& b) { b.change([](auto& d) { d.waterShare = 900; }); }},
        {"forty wraps",
         [](Bench& b) {
             b.change([](auto& d) {
                 d.wraps = 40;
                 d.finish = model::RibbonFinish::bow;
                 d.loop = Millimetres(100'000);
             });
         }},
        {"1000 stems", [](Bench& b) { b.slot(model::BloomShape::umbel, 1000); }},
        {"a million stems in 300 slots",
         [](Bench& b) {
             for (int i = 0; i < 300; ++i)
                 b.slot(model::BloomShape::globe, 3334);
         }},
        {"a head of a metre", [](Bench& b) { b.slot(model::BloomShape::globe, 2, model::Tier::low, 1000); }},
        {"a head of nothing", [](Bench& b) { b.slot(model::BloomShape::globe, 2, model::Tier::low, 0); }},
        {"minus three stems", [](Bench& b) { b.slot(model::BloomShape::globe, -3); }},
    };
    for (const auto& row : rows) {
        for (const auto kind : everyKind) {
            SCOPED_TRACE(std::string(row.name) + ", " +
                         std::string(model::Words<PieceKind>::list[static_cast<std::size_t>(kind)]));
            Bench bench(kind);
            bench.slot(model::BloomShape::daisy, 2);
            row.how(bench);
            const auto piece = bench.drawing();
            QElapsedTimer timer;
            timer.start();
            const QSizeF size = pieceSizeMm(piece);
            EXPECT_TRUE(std::isfinite(size.width()) && std::isfinite(size.height()));
            EXPECT_GT(size.width() * size.height(), 0);
            EXPECT_GT(notPaper(painted(piece, {120, 100})), 10);
            EXPECT_LT(timer.elapsed(), 5000);
        }
    }
}

TEST(Piece, SaysHowManyStemsAreNotDrawn) {
    Bench bench;
    bench.slot(model::BloomShape::daisy, 1000);
    bench.slot(model::BloomShape::leaf, 2);
    const auto piece = bench.drawing();
    int drawn = 0;
    for (const auto& s : piece.slots)
        drawn += s.count;
    EXPECT_LE(drawn, mostStemsDrawn + 2);
    EXPECT_EQ(drawn + piece.left, 1002);
    EXPECT_GE(piece.slots[1].count, 1) << "none is left out whole";
}

TEST(Piece, WithoutASeasonIsAJar) {
    EXPECT_GT(notPaper(painted(pieceDrawing({}, Id<model::Design>(7)))), 40);
}

TEST(PiecePictures, ComeLaterAndAreKept) {
    const auto season = demoSeason();
    PiecePictures pictures;
    PiecePictures::Wanted wanted{pieceDrawing(season, Id<model::Design>(1)), 0.5, 1, Theme::light, false};
    QEventLoop loop;
    QObject::connect(&pictures, &PiecePictures::ready, &loop, &QEventLoop::quit);
    EXPECT_TRUE(pictures.picture(1, wanted).image.isNull());
    loop.exec();
    const auto first = pictures.picture(1, wanted);
    EXPECT_GT(first.image.width(), 50);
    EXPECT_GT(first.foot.y(), 100);
    wanted.lineOnly = true;
    EXPECT_EQ(pictures.picture(1, wanted).image, first.image) << "the old one until the new one is there";
    loop.exec();
    EXPECT_NE(pictures.picture(1, wanted).image, first.image);
    pictures.keepOnly({});
    EXPECT_TRUE(pictures.picture(1, wanted).image.isNull());
    loop.exec();
}

} // namespace
} // namespace withy::ui
