// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/text_check.h"

#include <cstdint>

namespace withy::model {

namespace {

struct Lead {
    std::size_t length;
    std::uint32_t bits;
    std::uint32_t least; ///< smallest code point that needs this length
};

std::optional<Lead> leadOf(unsigned char c) {
    if (c < 0x80) return Lead{1, c, 0};
    if (c >= 0xC2 && c < 0xE0) return Lead{2, c & 0x1Fu, 0x80};
    if (c >= 0xE0 && c < 0xF0) return Lead{3, c & 0x0Fu, 0x800};
    if (c >= 0xF0 && c < 0xF5) return Lead{4, c & 0x07u, 0x10000};
    return std::nullopt;
}

bool allowed(std::uint32_t c) {
    if (c < 0x20) return c == '\n' || c == '\r' || c == '\t';
    if (c == 0x7F || (c >= 0xD800 && c < 0xE000)) return false;
    return c <= 0x10FFFF;
}

} // namespace

std::optional<std::size_t> charactersIn(std::string_view text) {
    std::size_t count = 0;
    for (std::size_t i = 0; i < text.size(); ++count) {
        const auto lead = leadOf(static_cast<unsigned char>(text[i]));
        if (!lead || i + lead->length > text.size()) return std::nullopt;
        std::uint32_t c = lead->bits;
        for (std::size_t k = 1; k < lead->length; ++k) {
            const auto next = static_cast<unsigned char>(text[i + k]);
            if ((next & 0xC0u) != 0x80u) return std::nullopt;
            c = c << 6 | (next & 0x3Fu);
        }
        if (c < lead->least || !allowed(c)) return std::nullopt;
        i += lead->length;
    }
    return count;
}

} // namespace withy::model
