// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/jar_mark.h"

#include <QImage>
#include <QPainter>

#include <gtest/gtest.h>

namespace withy::ui {
namespace {

QImage painted(const JarMark& mark, Theme theme = Theme::light, int size = 40) {
    const Palette palette{theme};
    QImage image(size, size, QImage::Format_RGB32);
    image.fill(palette.of(Role::paper));
    QPainter painter(&image);
    paintJar(painter, QRectF(0, 0, size, size), mark, palette);
    return image;
}

/// Without its colours: what is left for those who do not see them.
QImage grey(const QImage& image) {
    return image.convertToFormat(QImage::Format_Grayscale8);
}

// WCAG 2.2, 1.4.1: colour is not the only means of telling.
TEST(JarMark, StatesDifferInShape) {
    const Cover covers[]{Cover::covered, Cover::tight, Cover::missing, Cover::settled};
    for (const auto a : covers) {
        for (const auto b : covers) {
            if (a != b) {
                EXPECT_NE(grey(painted({a})), grey(painted({b})));
            }
        }
    }
}

TEST(JarMark, StandingShowsInTheOutline) {
    EXPECT_EQ(outlineOf(model::Standing::enquiry), Qt::DotLine);
    EXPECT_EQ(outlineOf(model::Standing::quoted), Qt::DashLine);
    EXPECT_EQ(outlineOf(model::Standing::booked), Qt::SolidLine);
    JarMark mark{Cover::settled};
    const auto booked = painted(mark);
    mark.standing = model::Standing::enquiry;
    const auto enquiry = painted(mark);
    mark.standing = model::Standing::quoted;
    EXPECT_NE(booked, enquiry);
    EXPECT_NE(enquiry, painted(mark));
}

TEST(JarMark, FillsByTheShareCovered) {
    auto inkedRows = [](double share) {
        JarMark mark{Cover::tight, share};
        const auto image = painted(mark);
        int rows = 0;
        for (int y = 0; y < image.height(); ++y)
            rows += image.pixel(20, y) == Palette{}.of(Role::ink).rgb() ? 1 : 0;
        return rows;
    };
    EXPECT_LT(inkedRows(0.2), inkedRows(0.5));
    EXPECT_LT(inkedRows(0.5), inkedRows(0.9));
    EXPECT_EQ(inkedRows(1), inkedRows(7)) << "no more than full";
}

TEST(JarMark, OnlyWhatIsShortAsks) {
    const auto osier = Palette{}.of(Role::osier).rgb();
    for (const auto cover : {Cover::covered, Cover::tight, Cover::missing, Cover::settled}) {
        const auto image = painted({cover});
        bool asks = false;
        for (int y = 0; y < 40; ++y) {
            for (int x = 0; x < 40; ++x)
                asks = asks || image.pixel(x, y) == osier;
        }
        EXPECT_EQ(asks, cover == Cover::missing);
    }
}

TEST(JarMark, StaysInItsBox) {
    for (const int size : {12, 16, 24, 60}) {
        for (const auto cover : {Cover::covered, Cover::missing}) {
            const Palette palette;
            QImage image(size * 3, size * 3, QImage::Format_RGB32);
            image.fill(palette.of(Role::paper));
            QPainter painter(&image);
            paintJar(painter, QRectF(size, size, size, size), {cover}, palette);
            painter.end();
            const QRect box(size - 1, size - 1, size + 2, size + 2);
            for (int y = 0; y < image.height(); ++y) {
                for (int x = 0; x < image.width(); ++x) {
                    if (box.contains(x, y)) continue;
                    ASSERT_EQ(image.pixelColor(x, y), palette.of(Role::paper))
                        << size << " at " << x << "," << y;
                }
            }
        }
    }
}

} // namespace
} // namespace withy::ui
