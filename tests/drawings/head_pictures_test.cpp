// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/drawings/other_pixels.h"
#include "tests/drawings/test_designs.h"
#include "ui/logic/starting_seasons.h"
#include "ui/paint/head_pictures.h"
#include "ui/paint/piece_index.h"
#include "ui/paint/piece_painter.h"
#include "ui/paint/piece_pictures.h"
#include "ui/paint/piece_plan.h"

#include <QEventLoop>
#include <QImage>
#include <QPainter>
#include <QTimer>

#include <set>

#include <gtest/gtest.h>

/// Kept pictures of heads and pieces: the same drawing as the paths, made anew when it must be and only then,
/// and bounded. That they match the kept drawings is in golden_test.cpp.
namespace withy::ui {
namespace {

constexpr QDeadlineTimer::ForeverConstant forever = QDeadlineTimer::Forever;
const QDeadlineTimer noTime(0);

struct Table {
    int side;
    QImage image;

    explicit Table(int pixels) : side(pixels), image(pixels, pixels, QImage::Format_RGB32) {
        image.fill(Palette().of(Role::paper));
    }
};

QImage ofPaths(const PieceParts& parts, int side) {
    Table table(side);
    QPainter painter(&table.image);
    painter.translate(side / 2.0, side - 8);
    paint(painter, joined(parts, Theme::light));
    return table.image;
}

/// `whole` when every head was drawn as it should be.
QImage ofPictures(HeadPictures& heads, const PieceParts& parts, int side, bool& whole,
                  QDeadlineTimer until = forever) {
    Table table(side);
    QPainter painter(&table.image);
    painter.translate(side / 2.0, side - 8);
    whole = heads.paint(painter, parts, Theme::light, until);
    return table.image;
}

class HeadPicturesOfAPiece : public testing::Test {
protected:
    TestDesigns designs = testDesigns();
    PieceDrawing piece = drawing("hand-tied");
    HeadPictures heads;
    bool whole = false;

    PieceDrawing drawing(const std::string& name) const {
        for (const auto& d : designs.all) {
            if (d.name == name) return pieceDrawing(designs.season, d.design);
        }
        ADD_FAILURE() << name;
        return {};
    }

    QImage shown(const PieceDrawing& of, double k = 1, QDeadlineTimer until = forever) {
        return ofPictures(heads, pieceParts(of, k, {}), 420, whole, until);
    }

    static QImage asPaths(const PieceDrawing& of, double k = 1) {
        return ofPaths(pieceParts(of, k, {}), 420);
    }
};

TEST_F(HeadPicturesOfAPiece, IsTheSameAsOfPathsAtEverySize) {
    for (const double k : {0.37, 0.61, 1.0, 1.07, 1.31}) {
        SCOPED_TRACE(k);
        EXPECT_LE(shareOfOtherPixels(shown(piece, k), asPaths(piece, k)), mostOther);
        EXPECT_TRUE(whole);
    }
}

TEST_F(HeadPicturesOfAPiece, IsDrawnAnewFromTheSamePicturesWhenHeadsOnlyMove) {
    shown(piece);
    const auto made = heads.count();
    ASSERT_GT(made, 5);
    auto moved = piece;
    moved.tall += 23;
    moved.spread += 31;
    const auto now = shown(moved, 1, noTime);
    EXPECT_TRUE(whole) << "without a new picture";
    EXPECT_EQ(heads.count(), made);
    EXPECT_LE(shareOfOtherPixels(now, asPaths(moved)), mostOther);
    EXPECT_GT(shareOfOtherPixels(now, asPaths(piece)), mostOther) << "and it is another drawing";
}

TEST_F(HeadPicturesOfAPiece, IsRightAfterAChangeOfColourFormOrSize) {
    shown(piece);
    auto other = piece;
    other.slots[1].bloom = QColor(0x5566A8);
    other.slots[1].head *= 1.4;
    other.slots[2].form = HeadForm::cup;
    EXPECT_LE(shareOfOtherPixels(shown(other), asPaths(other)), mostOther);
    EXPECT_GT(shareOfOtherPixels(asPaths(other), asPaths(piece)), mostOther) << "there is something to see";
    EXPECT_LE(shareOfOtherPixels(shown(piece), asPaths(piece)), mostOther) << "and back";
}

TEST_F(HeadPicturesOfAPiece, AnotherThemeHasItsOwnEdges) {
    piece.slots[0].bloom = QColor(0x2A1018); // dark: a lighter edge on a dark page
    shown(piece);
    const auto made = heads.count();
    Table table(420);
    QPainter painter(&table.image);
    EXPECT_TRUE(heads.paint(painter, pieceParts(piece, 1, Palette{Theme::dark}), Theme::dark));
    EXPECT_GT(heads.count(), made);
}

TEST_F(HeadPicturesOfAPiece, StayWithinTheirMemory) {
    constexpr qsizetype most = 400 * 1024;
    HeadPictures few(most);
    for (const auto& d : designs.all) {
        SCOPED_TRACE(d.name);
        const auto parts = pieceParts(pieceDrawing(designs.season, d.design), 0.8, {});
        const auto now = ofPictures(few, parts, 420, whole);
        EXPECT_TRUE(whole);
        EXPECT_LE(few.bytes(), most);
        EXPECT_LE(shareOfOtherPixels(now, ofPaths(parts, 420)), mostOther) << "dropped ones are made again";
    }
    EXPECT_GT(few.bytes(), most / 2) << "it was full";
}

TEST_F(HeadPicturesOfAPiece, ComesInSlicesWhenThereIsNoTime) {
    const auto first = shown(piece, 1, noTime);
    EXPECT_FALSE(whole);
    EXPECT_EQ(heads.count(), 0) << "nothing was made";
    auto bare = piece;
    bare.slots.clear();
    const auto paths = asPaths(piece);
    EXPECT_LT(shareOfOtherPixels(first, paths), shareOfOtherPixels(shown(bare), paths))
        << "plain heads say more than none";
    const auto now = shown(piece);
    EXPECT_TRUE(whole);
    EXPECT_LE(shareOfOtherPixels(now, paths), mostOther);
    // A little larger: from the pictures there are, and nearer to the truth than plain ones.
    const auto larger = shown(piece, 1.2, noTime);
    EXPECT_FALSE(whole);
    HeadPictures none;
    bool all = true;
    const auto plain = ofPictures(none, pieceParts(piece, 1.2, {}), 420, all, noTime);
    EXPECT_FALSE(all);
    EXPECT_LT(shareOfOtherPixels(larger, asPaths(piece, 1.2)),
              shareOfOtherPixels(plain, asPaths(piece, 1.2)) / 2);
}

/// Where the ink's middle lies.
QPointF middleOf(const QImage& image) {
    double x = 0, y = 0, all = 0;
    for (int j = 0; j < image.height(); ++j) {
        for (int i = 0; i < image.width(); ++i) {
            const double ink = 255 - qGreen(image.pixel(i, j));
            x += ink * (i + 0.5);
            y += ink * (j + 0.5);
            all += ink;
        }
    }
    return {x / all, y / all};
}

PieceParts oneHead(HeadForm form, double tilt, QPointF at) {
    PieceParts parts;
    parts.heads.push_back({{form, 31.7, QColor(0x83304F), {}, tilt, 5}, at});
    return parts;
}

TEST(HeadPicturesPlaced, StandBetweenPixelsWhereTheyShould) {
    HeadPictures heads;
    const auto laidAt = [&heads](HeadForm form, double tilt, QPointF at) {
        QImage image(260, 260, QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        EXPECT_TRUE(heads.paint(painter, oneHead(form, tilt, at), Theme::light));
        painter.end();
        return middleOf(image);
    };
    for (const auto form : {HeadForm::cup, HeadForm::leaf, HeadForm::spike, HeadForm::trail}) {
        for (const double tilt : {-33.0, 0.0, 17.0}) {
            SCOPED_TRACE(std::to_string(static_cast<int>(form)) + " tilted " + std::to_string(tilt));
            const QPointF first(130, 150);
            const QPointF laid = laidAt(form, tilt, first);
            // To a part of a pixel it is where the paths are; how thick its lines are weighs a little too.
            QImage drawn(260, 260, QImage::Format_RGB32);
            drawn.fill(Qt::white);
            QPainter painter(&drawn);
            paint(painter, joined(oneHead(form, tilt, first), Theme::light));
            painter.end();
            EXPECT_NEAR(laid.x(), middleOf(drawn).x(), 0.3);
            EXPECT_NEAR(laid.y(), middleOf(drawn).y(), 0.3);
            // Set to whole pixels, it would be off by 0.33 and more.
            for (const QPointF by : {QPointF(0.25, 0.5), QPointF(0.61, -0.07), QPointF(7.5, 3.33)}) {
                const QPointF moved = laidAt(form, tilt, first + by) - laid;
                EXPECT_NEAR(moved.x(), by.x(), 0.3);
                EXPECT_NEAR(moved.y(), by.y(), 0.3);
            }
        }
    }
}

TEST(HeadExtent, IsThatOfThePaths) {
    for (const auto form : allHeadForms) {
        for (const double tilt : {-70.0, -20.0, 0.0, 33.0}) {
            for (const double turned : {0.0, -78.0}) {
                SCOPED_TRACE(std::to_string(static_cast<int>(form)) + " at " + std::to_string(tilt));
                const Head head{form, 100, Qt::red, {}, tilt, 9};
                auto sketch = headSketch(head);
                transform(sketch, QTransform().rotate(turned));
                const QRectF drawn = boundsOf(sketch), extent = headExtent(head, turned);
                EXPECT_NEAR(extent.left(), drawn.left(), 1);
                EXPECT_NEAR(extent.right(), drawn.right(), 1);
                EXPECT_NEAR(extent.top(), drawn.top(), 1);
                EXPECT_NEAR(extent.bottom(), drawn.bottom(), 1);
            }
        }
    }
}

TEST(PieceIndex, DrawsEveryDesignAsTheSeasonDoes) {
    const auto season = demoSeason();
    const PieceIndex index(season);
    for (const auto& d : season.designs)
        EXPECT_EQ(pieceDrawing(index, d.id), pieceDrawing(season, d.id)) << d.name;
    EXPECT_EQ(pieceDrawing(index, Id<model::Design>(4711)), pieceDrawing(season, Id<model::Design>(4711)));
}

/// Until nothing is being drawn.
void settle(PiecePictures& pictures) {
    QEventLoop loop;
    QTimer look;
    QObject::connect(&look, &QTimer::timeout, &loop, [&] {
        if (!pictures.busy()) loop.quit();
    });
    look.start(5);
    loop.exec();
}

TEST(PiecePictures, ForgetThoseNotAskedForLongest) {
    const auto season = demoSeason();
    const auto piece = pieceDrawing(season, Id<model::Design>(1));
    PiecePictures pictures(nullptr, 1);
    constexpr qint64 many = PiecePictures::alwaysKept + 20;
    for (qint64 key = 1; key <= many; ++key)
        pictures.picture(key, {piece, 0.2, 1, Theme::light, false});
    settle(pictures);
    std::set<qint64> kept;
    for (qint64 key = many; key >= 1; --key) {
        if (!pictures.picture(key, {piece, 0.2, 1, Theme::light, false}).image.isNull()) kept.insert(key);
    }
    EXPECT_EQ(kept.size(), static_cast<std::size_t>(PiecePictures::alwaysKept));
    EXPECT_FALSE(kept.contains(1));
    EXPECT_TRUE(kept.contains(many));
    settle(pictures);
}

TEST(PiecePictures, OfAnotherScaleServeUntilTheNewOneIsThere) {
    const auto season = demoSeason();
    const auto piece = pieceDrawing(season, Id<model::Design>(1));
    PiecePictures pictures;
    pictures.ahead(1, {piece, 0.4, 1, Theme::light, false});
    settle(pictures);
    const auto old = pictures.picture(1, {piece, 0.8, 1, Theme::light, false});
    ASSERT_FALSE(old.image.isNull()) << "it was drawn ahead";
    EXPECT_EQ(old.scale, 0.4);
    settle(pictures);
    const auto fresh = pictures.picture(1, {piece, 0.8, 1, Theme::light, false});
    EXPECT_EQ(fresh.scale, 0.8);
    // Stretched, the foot stays where it is and the top comes to the same height.
    EXPECT_NEAR(old.foot.y() * 2, fresh.foot.y(), 8);
    EXPECT_GT(fresh.image.height(), old.image.height() * 1.8);
}

TEST(PiecePictures, FromAboveStandAroundTheirMiddle) {
    const auto season = demoSeason();
    const auto piece = pieceDrawing(season, Id<model::Design>(1));
    PiecePictures pictures;
    const PiecePictures::Wanted wanted{piece, 0.5, 1, Theme::light, false, true};
    pictures.picture(1, wanted);
    settle(pictures);
    const auto drawn = pictures.picture(1, wanted);
    EXPECT_NEAR(drawn.image.width(), acrossFromAbove(piece) * 0.5 + 6, 1);
    EXPECT_NEAR(drawn.foot.x(), drawn.image.width() / 2.0, 1);
    EXPECT_NEAR(drawn.foot.y(), drawn.image.height() / 2.0, 1);
}

} // namespace
} // namespace withy::ui
