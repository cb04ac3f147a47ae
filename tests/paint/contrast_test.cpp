// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/palette.h"

#include <gtest/gtest.h>

namespace withy::ui {
namespace {

// W3C, Web Content Accessibility Guidelines 2.2, "contrast ratio" (black on white is 21:1) and the often
// worked example of #777777 on white, 4.48:1, just under the 4.5 of success criterion 1.4.3.
TEST(Contrast, AgreesWithWorkedValues) {
    EXPECT_NEAR(contrast(Qt::black, Qt::white), 21, 1e-9);
    EXPECT_NEAR(contrast(Qt::white, Qt::white), 1, 1e-9);
    EXPECT_NEAR(contrast(QColor(0x777777), Qt::white), 4.48, 0.005);
    EXPECT_NEAR(contrast(Qt::white, QColor(0x777777)), 4.48, 0.005) << "either way round";
}

struct Pair {
    Role text;
    Role under;
};

constexpr Pair textPairs[]{
    {Role::ink, Role::paper},       {Role::ink, Role::sheet},   {Role::ink, Role::mist},
    {Role::ink, Role::wash},        {Role::ink2, Role::paper},  {Role::ink2, Role::sheet},
    {Role::ink2, Role::mist},       {Role::ink2, Role::wash},   {Role::ink3, Role::paper},
    {Role::ink3, Role::sheet},      {Role::ink3, Role::mist},   {Role::ink3, Role::wash},
    {Role::green, Role::paper},     {Role::green, Role::sheet}, {Role::green, Role::mist},
    {Role::green, Role::wash},      {Role::osier, Role::paper}, {Role::osier, Role::sheet},
    {Role::osier, Role::mist},      {Role::osier, Role::wash},  {Role::onGreen, Role::green},
    {Role::waterEdge, Role::paper}, {Role::ink2, Role::night},  {Role::ink, Role::dusk},
    {Role::ink, Role::water},
};

// WCAG 2.2, 1.4.3: text 4.5:1.
TEST(Contrast, OfEveryTextPairIsEnough) {
    for (const Theme theme : {Theme::light, Theme::dark}) {
        for (const auto& [text, under] : textPairs) {
            const Palette palette{theme};
            EXPECT_GE(contrast(palette.of(text), palette.of(under)), 4.5)
                << (theme == Theme::light ? "light " : "dark ") << palette.of(text).name().toStdString()
                << " on " << palette.of(under).name().toStdString();
        }
    }
}

// WCAG 2.2, 1.4.11: borders of controls 3:1.
TEST(Contrast, OfControlsBordersIsEnough) {
    for (const Theme theme : {Theme::light, Theme::dark}) {
        for (const Role under : {Role::paper, Role::sheet, Role::mist, Role::wash})
            EXPECT_GE(contrast(Palette{theme}.of(Role::edge), Palette{theme}.of(under)), 3.0);
    }
}

TEST(Contrast, TextOnABloomReads) {
    for (int red = 0; red < 256; red += 51) {
        for (int green = 0; green < 256; green += 51) {
            for (int blue = 0; blue < 256; blue += 51) {
                const QColor bloom(red, green, blue);
                EXPECT_GE(contrast(Palette::textOn(bloom), bloom), 4.5) << bloom.name().toStdString();
            }
        }
    }
}

// White must show on paper and plum on black: the edge is what shows.
TEST(Contrast, TheEdgeOfABloomShowsOnThePage) {
    EXPECT_GT(contrast(Palette{Theme::light}.bloomEdge(Qt::white), Palette{Theme::light}.of(Role::paper)),
              1.5);
    const Palette dark{Theme::dark};
    EXPECT_GT(contrast(dark.bloomEdge(QColor(0x5B2A45)), dark.of(Role::paper)), 1.5);
}

} // namespace
} // namespace withy::ui
