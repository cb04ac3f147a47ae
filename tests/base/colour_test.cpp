// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/colour.h"

#include <gtest/gtest.h>

namespace withy {
namespace {

TEST(Colour, ReadsTheNamedColoursOfCss) {
    // W3C CSS Color Module Level 4, section 6.1, named colours.
    EXPECT_EQ(Colour::parse("#ff7f50"), (Colour{255, 127, 80}));  // coral
    EXPECT_EQ(Colour::parse("#6495ED"), (Colour{100, 149, 237})); // cornflowerblue
    EXPECT_EQ(Colour::parse("#000080"), (Colour{0, 0, 128}));     // navy
    EXPECT_EQ(Colour::parse("#FFFACD"), (Colour{255, 250, 205})); // lemonchiffon
}

TEST(Colour, WritesLowerCaseAndReadsItBack) {
    EXPECT_EQ((Colour{100, 149, 237}).hex(), "#6495ed");
    for (int v = 0; v < 256; ++v) {
        const auto c = static_cast<std::uint8_t>(v);
        const Colour grey{c, static_cast<std::uint8_t>(255 - v), c};
        ASSERT_EQ(Colour::parse(grey.hex()), grey);
    }
}

TEST(Colour, WhatIsNoColourIsRefused) {
    for (const char* text : {"", "#", "ff7f50", "#ff7f5", "#ff7f500", "#fff", "#gg0000", "#ff 750", "coral",
                             "#-12345", "#ff7f5\xc3"}) {
        SCOPED_TRACE(text);
        EXPECT_FALSE(Colour::parse(text).has_value());
    }
}

} // namespace
} // namespace withy
