// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/colour.h"

#include <cstdio>

namespace withy {

namespace {

int hexDigit(char c) {
    if (c >= '0' && c <= '9') return c - '0';
    if (c >= 'a' && c <= 'f') return c - 'a' + 10;
    if (c >= 'A' && c <= 'F') return c - 'A' + 10;
    return -1;
}

} // namespace

std::optional<Colour> Colour::parse(std::string_view text) {
    if (text.size() != 7 || text[0] != '#') return std::nullopt;
    std::uint8_t channel[3] = {};
    for (std::size_t i = 0; i < 3; ++i) {
        const int high = hexDigit(text[1 + 2 * i]);
        const int low = hexDigit(text[2 + 2 * i]);
        if (high < 0 || low < 0) return std::nullopt;
        channel[i] = static_cast<std::uint8_t>(high * 16 + low);
    }
    return Colour{channel[0], channel[1], channel[2]};
}

std::string Colour::hex() const {
    char text[8];
    std::snprintf(text, sizeof text, "#%02x%02x%02x", red, green, blue);
    return text;
}

} // namespace withy
