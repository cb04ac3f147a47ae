// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/icons.h"

#include <QFile>
#include <QImage>
#include <QSet>

#include <gtest/gtest.h>

namespace withy::ui {
namespace {

int inked(const QImage& image) {
    int count = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x)
            count += qAlpha(image.pixel(x, y)) > 0 ? 1 : 0;
    }
    return count;
}

TEST(Icons, EachDrawsSomethingOfItsOwnInTheColourAskedFor) {
    QSet<QByteArray> seen;
    for (const auto name : allIcons) {
        SCOPED_TRACE(static_cast<int>(name));
        const QImage image =
            iconPixmap(name, QColor(0x1F5A44), 48).toImage().convertToFormat(QImage::Format_ARGB32);
        EXPECT_GT(inked(image), 48) << "blank";
        EXPECT_LT(inked(image), 48 * 48 * 3 / 4) << "a blot";
        bool coloured = false;
        for (int y = 0; y < 48; ++y) {
            for (int x = 0; x < 48; ++x)
                coloured = coloured || image.pixel(x, y) == 0xFF1F5A44;
        }
        EXPECT_TRUE(coloured);
        seen.insert(QByteArray(reinterpret_cast<const char*>(image.constBits()), image.sizeInBytes()));
    }
    EXPECT_EQ(seen.size(), static_cast<int>(allIcons.size())) << "two are alike";
}

TEST(Icons, GrowWithThePixelsOfTheScreen) {
    const auto pixmap = iconPixmap(IconName::garden, Qt::black, 20, 2.5);
    EXPECT_EQ(pixmap.size(), QSize(50, 50));
    EXPECT_EQ(pixmap.devicePixelRatio(), 2.5);
    EXPECT_FALSE(icon(IconName::back, Palette{}).pixmap(QSize(24, 24)).isNull());
}

TEST(Icons, OfControlsThatCannotBeUsedArePaler) {
    const auto i = icon(IconName::back, Palette{});
    EXPECT_NE(i.pixmap(24, 24, QIcon::Normal).toImage(), i.pixmap(24, 24, QIcon::Disabled).toImage());
}

TEST(Icons, TheProgramHasOne) {
    EXPECT_EQ(applicationIcon().availableSizes().size(), 6);
    EXPECT_GT(inked(applicationIcon().pixmap(16, 16).toImage()), 100);
}

// The rule of our icons: a 24 grid, lines of 1.7, exactly one solid part.
TEST(Icons, HaveOneSolidPart) {
    for (const char* name :
         {"bookings", "designs", "garden", "shed", "diary", "season", "add", "search", "caution", "back"}) {
        SCOPED_TRACE(name);
        QFile file(QStringLiteral(":/withy/icons/%1.svg").arg(QString::fromLatin1(name)));
        ASSERT_TRUE(file.open(QIODevice::ReadOnly));
        const auto text = file.readAll();
        EXPECT_EQ(text.count("fill=\"#000000\""), 1);
        EXPECT_EQ(text.count("stroke-width=\"1.7\""), 1);
        EXPECT_EQ(text.count("viewBox=\"0 0 24 24\""), 1);
    }
}

} // namespace
} // namespace withy::ui
