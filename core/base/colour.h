// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace withy {

/// An sRGB colour, eight bits a channel.
struct Colour {
    std::uint8_t red = 0;
    std::uint8_t green = 0;
    std::uint8_t blue = 0;

    /// Reads "#rrggbb", either case.
    static std::optional<Colour> parse(std::string_view text);
    [[nodiscard]] std::string hex() const; ///< "#rrggbb", lower case
    friend constexpr auto operator<=>(const Colour&, const Colour&) = default;
};

} // namespace withy
