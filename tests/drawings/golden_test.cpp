// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/drawings/other_pixels.h"
#include "tests/drawings/test_designs.h"
#include "ui/paint/head_pictures.h"
#include "ui/paint/piece_painter.h"

#include <QDir>
#include <QImage>
#include <QPainter>

#include <gtest/gtest.h>

/// Drawings against kept pictures, in light, dark and on paper, at one and two pixels a pixel. Run with
/// WITHY_MAKE_DRAWINGS=1 to keep new ones after a wanted change, and look at them before they are kept. No
/// letters are drawn, so fonts do not matter.
namespace withy::ui {
namespace {

constexpr int side = 112;

struct Look {
    const char* name;
    Theme theme;
    bool paper;
};

constexpr Look looks[]{
    {"light", Theme::light, false}, {"dark", Theme::dark, false}, {"paper", Theme::light, true}};

QImage picture(const PieceDrawing& piece, const Look& look, int ratio) {
    QImage image(side * ratio, side * ratio, QImage::Format_RGB32);
    image.setDevicePixelRatio(ratio);
    PiecePaintOptions options;
    options.palette = Palette{look.theme};
    options.lineOnly = look.paper;
    options.line = look.paper ? QColor(Qt::black) : QColor();
    options.ground = true;
    image.fill(look.paper ? QColor(Qt::white) : options.palette.of(Role::paper));
    QPainter painter(&image);
    paintPiece(painter, piece, QRectF(2, 2, side - 4, side - 4), options);
    return image;
}

/// The same piece at the same place, as screens show it: its heads from kept pictures.
QImage pictureWithKeptHeads(const PieceDrawing& piece, const Look& look, int ratio, HeadPictures& heads) {
    QImage image(side * ratio, side * ratio, QImage::Format_RGB32);
    image.setDevicePixelRatio(ratio);
    const Palette palette{look.theme};
    image.fill(palette.of(Role::paper));
    QPainter painter(&image);
    const QRectF mm = pieceBoundsMm(piece), where(2, 2, side - 4, side - 4);
    const double k = fittingScale(mm, where.size());
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(palette.of(Role::ink), 1.6)); // the ground, as paintPiece() draws it
    const double ground = where.bottom() - 3 + 0.8;
    painter.drawLine(QPointF(where.left(), ground), QPointF(where.right(), ground));
    painter.translate(where.center().x() - mm.center().x() * k, where.bottom() - 3 - mm.bottom() * k);
    EXPECT_TRUE(heads.paint(painter, pieceParts(piece, k, palette), look.theme));
    return image;
}

QString fileOf(const std::string& name, const Look& look, int ratio) {
    return QStringLiteral("%1/drawings/%2-%3-%4x.png")
        .arg(QStringLiteral(WITHY_TEST_DATA), QString::fromStdString(name), QLatin1String(look.name))
        .arg(ratio);
}

/// Without an alpha channel, which says nothing here.
void keep(const QImage& image, const QString& file) {
    QDir().mkpath(QFileInfo(file).path());
    ASSERT_TRUE(image.convertToFormat(QImage::Format_RGB888).save(file, "PNG", 0)) << file.toStdString();
}

TEST(GoldenDrawings, OfEveryKindAreAsKept) {
    const bool make = qEnvironmentVariableIsSet("WITHY_MAKE_DRAWINGS");
    const auto designs = testDesigns();
    ASSERT_GE(designs.all.size(), 10U);
    HeadPictures heads;
    for (const auto& d : designs.all) {
        const auto piece = pieceDrawing(designs.season, d.design);
        for (const auto& look : looks) {
            for (const int ratio : {1, 2}) {
                const QString file = fileOf(d.name, look, ratio);
                SCOPED_TRACE(file.toStdString());
                const auto now = picture(piece, look, ratio);
                if (make) {
                    keep(now, file);
                    continue;
                }
                const QImage kept(file);
                ASSERT_FALSE(kept.isNull()) << "no picture kept";
                const auto wanted = kept.convertToFormat(QImage::Format_RGB32);
                EXPECT_LE(shareOfOtherPixels(now, wanted), mostOther);
                if (look.paper) continue; // papers are paths
                EXPECT_LE(shareOfOtherPixels(pictureWithKeptHeads(piece, look, ratio, heads), wanted),
                          mostOther)
                    << "with kept heads";
            }
        }
    }
    EXPECT_FALSE(make)
        << "Pictures were made anew and nothing was compared. Look at them, then run this without "
           "WITHY_MAKE_DRAWINGS.";
}

// The tolerance must not swallow what matters: a few millimetres, a stem, a colour.
TEST(GoldenDrawings, TellASmallChangeApart) {
    const auto designs = testDesigns();
    const auto piece = pieceDrawing(designs.season, designs.all.front().design);
    const QImage kept =
        QImage(fileOf(designs.all.front().name, looks[0], 1)).convertToFormat(QImage::Format_RGB32);
    ASSERT_FALSE(kept.isNull());
    auto other = piece;
    other.vessel->width += 12;
    EXPECT_GT(shareOfOtherPixels(picture(other, looks[0], 1), kept), mostOther) << "a wider jar";
    other = piece;
    other.tall -= 20;
    EXPECT_GT(shareOfOtherPixels(picture(other, looks[0], 1), kept), mostOther) << "a lower tier";
    other = piece;
    other.slots[3].count -= 1;
    EXPECT_GT(shareOfOtherPixels(picture(other, looks[0], 1), kept), mostOther) << "a stem less";
    other = piece;
    other.slots[2].bloom = QColor(0x5566A8);
    EXPECT_GT(shareOfOtherPixels(picture(other, looks[0], 1), kept), mostOther) << "another colour";
}

} // namespace
} // namespace withy::ui
