// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/paint/palette.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace withy::ui {

namespace {

struct Pair {
    QRgb light;
    QRgb dark;
};

// In the order of Role.
constexpr std::array<Pair, 16> colours{{
    {0xFBFCFA, 0x141C19}, // paper
    {0xFFFFFF, 0x1A2420}, // sheet
    {0xF0F4F0, 0x0F1613}, // mist
    {0xE1ECE5, 0x24382F}, // wash
    {0xD5DDD6, 0x2F3C36}, // line
    {0x75897E, 0x6F857A}, // edge
    {0x17312A, 0xE7EEE8}, // ink
    {0x42584E, 0xB8C6BD}, // ink2
    {0x596E63, 0x94A69B}, // ink3
    {0x1F5A44, 0x86CBA9}, // green
    {0xFFFFFF, 0x12241C}, // onGreen
    {0xAD4A08, 0xF0A35E}, // osier
    {0xD3E6EC, 0x223F49}, // water
    {0x33718A, 0x7DB6CA}, // waterEdge
    {0xDDE4E4, 0x0B110F}, // night
    {0xEBEFEE, 0x101815}, // dusk
}};

double channel(int value) {
    const double c = value / 255.0;
    return c <= 0.03928 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}

double luminance(const QColor& c) {
    return 0.2126 * channel(c.red()) + 0.7152 * channel(c.green()) + 0.0722 * channel(c.blue());
}

} // namespace

QColor Palette::of(Role role) const {
    const auto& pair = colours[static_cast<std::size_t>(role)];
    return QColor::fromRgb(theme == Theme::light ? pair.light : pair.dark);
}

QColor Palette::bloom(Colour colour) {
    return {colour.red, colour.green, colour.blue};
}

QColor Palette::bloomEdge(const QColor& bloom) const {
    return theme == Theme::light ? mixed(bloom, QColor::fromRgb(0x17211D), 0.35)
                                 : mixed(bloom, Qt::white, 0.42);
}

QColor Palette::textOn(const QColor& under) {
    return contrast(under, Qt::white) > contrast(under, Qt::black) ? Qt::white : Qt::black;
}

QColor mixed(const QColor& from, const QColor& to, double share) {
    const auto part = [share](int a, int b) { return static_cast<int>(std::lround(a + (b - a) * share)); };
    return {part(from.red(), to.red()), part(from.green(), to.green()), part(from.blue(), to.blue())};
}

double contrast(const QColor& a, const QColor& b) {
    const auto [low, high] = std::minmax({luminance(a), luminance(b)});
    return (high + 0.05) / (low + 0.05);
}

} // namespace withy::ui
