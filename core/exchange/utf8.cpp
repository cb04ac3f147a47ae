// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/utf8.h"

namespace withy::exchange {

namespace {

unsigned byteAt(std::string_view text, std::size_t at) {
    return static_cast<unsigned char>(text[at]);
}

struct Lead {
    std::size_t bytes = 0; ///< 0: no character begins with this byte
    char32_t least = 0;    ///< smallest character that needs so many bytes
};

Lead leadOf(unsigned byte) {
    if (byte < 0x80) return {1, 0};
    if (byte >= 0xC2 && byte < 0xE0) return {2, 0x80};
    if (byte >= 0xE0 && byte < 0xF0) return {3, 0x800};
    if (byte >= 0xF0 && byte < 0xF5) return {4, 0x10000};
    return {};
}

bool within(char32_t c, char32_t first, char32_t last) {
    return c >= first && c <= last;
}

/// Past Latin-1 the Latin capitals stand right before their small letters, from even or odd numbers on.
bool capitalOfPair(char32_t c) {
    const bool even = c % 2 == 0;
    if (within(c, 0x100, 0x12F) || within(c, 0x132, 0x137) || within(c, 0x14A, 0x177) ||
        within(c, 0x200, 0x21F))
        return even;
    return (within(c, 0x139, 0x148) || within(c, 0x179, 0x17E)) && !even;
}

char32_t foldedGreek(char32_t c) {
    if (within(c, 0x388, 0x38A)) return c + 37;
    if (within(c, 0x391, 0x3AB) && c != 0x3A2) return c + 32;
    if (c == 0x386) return 0x3AC;
    if (c == 0x38C) return 0x3CC;
    if (within(c, 0x38E, 0x38F)) return c + 63;
    return c == 0x3C2 ? 0x3C3 : c; // the sigma at a word's end
}

char32_t foldedPoint(char32_t c) {
    if (within(c, 'A', 'Z') || (within(c, 0xC0, 0xDE) && c != 0xD7)) return c + 32;
    if (c < 0x100) return c;
    if (capitalOfPair(c)) return c + 1;
    if (c == 0x178) return 0xFF;
    if (within(c, 0x386, 0x3C2)) return foldedGreek(c);
    if (within(c, 0x400, 0x40F)) return c + 80;
    return within(c, 0x410, 0x42F) ? c + 32 : c;
}

} // namespace

CodePoint codePointAt(std::string_view text, std::size_t at) {
    const unsigned first = byteAt(text, at);
    const Lead lead = leadOf(first);
    if (lead.bytes == 0 || at + lead.bytes > text.size()) return {};
    if (lead.bytes == 1) return {first, 1};
    char32_t value = first & (0xFFU >> (lead.bytes + 1));
    for (std::size_t i = 1; i < lead.bytes; ++i) {
        const unsigned next = byteAt(text, at + i);
        if ((next & 0xC0U) != 0x80U) return {};
        value = (value << 6U) | (next & 0x3FU);
    }
    if (value < lead.least || value > 0x10FFFF || within(value, 0xD800, 0xDFFF)) return {};
    return {value, lead.bytes};
}

bool isUtf8(std::string_view text) {
    for (std::size_t at = 0; at < text.size();) {
        const CodePoint c = codePointAt(text, at);
        if (c.bytes == 0) return false;
        at += c.bytes;
    }
    return true;
}

void appendUtf8(std::string& out, char32_t c) {
    const auto tail = [&](unsigned shift) {
        out += static_cast<char>(0x80U | (static_cast<unsigned>(c) >> shift & 0x3FU));
    };
    if (c < 0x80) {
        out += static_cast<char>(c);
    } else if (c < 0x800) {
        out += static_cast<char>(0xC0U | c >> 6U);
        tail(0);
    } else if (c < 0x10000) {
        out += static_cast<char>(0xE0U | c >> 12U);
        tail(6);
        tail(0);
    } else {
        out += static_cast<char>(0xF0U | c >> 18U);
        tail(12);
        tail(6);
        tail(0);
    }
}

std::string_view trimmed(std::string_view text) {
    constexpr std::string_view space = " \t";
    const auto first = text.find_first_not_of(space);
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(space) - first + 1);
}

std::string folded(std::string_view text) {
    std::string out;
    out.reserve(text.size());
    for (std::size_t at = 0; at < text.size();) {
        const CodePoint c = codePointAt(text, at);
        if (c.bytes == 0) {
            out += text[at++];
            continue;
        }
        appendUtf8(out, foldedPoint(c.value));
        at += c.bytes;
    }
    return out;
}

std::string clipped(std::string_view text, std::size_t most) {
    if (text.size() <= most) return std::string(text);
    while (most > 0 && (byteAt(text, most) & 0xC0U) == 0x80U)
        --most;
    return std::string(text.substr(0, most)) + "\u2026";
}

} // namespace withy::exchange
