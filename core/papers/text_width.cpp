// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/papers/text_width.h"

#include <algorithm>
#include <array>
#include <utility>

namespace withy::papers {
namespace {

using Range = std::pair<char32_t, char32_t>;

constexpr std::array<Range, 16> kNoWidth = {{{0x0300, 0x036F},
                                             {0x0483, 0x0489},
                                             {0x0591, 0x05BD},
                                             {0x0610, 0x061A},
                                             {0x064B, 0x065F},
                                             {0x06D6, 0x06DC},
                                             {0x0E31, 0x0E31},
                                             {0x0E34, 0x0E3A},
                                             {0x0E47, 0x0E4E},
                                             {0x1AB0, 0x1AFF},
                                             {0x1DC0, 0x1DFF},
                                             {0x200B, 0x200F},
                                             {0x20D0, 0x20FF},
                                             {0xFE00, 0xFE0F},
                                             {0xFE20, 0xFE2F},
                                             {0x1F3FB, 0x1F3FF}}};

constexpr std::array<Range, 11> kTwoWide = {{{0x1100, 0x115F},
                                             {0x2E80, 0x303E},
                                             {0x3041, 0xA4CF},
                                             {0xAC00, 0xD7A3},
                                             {0xF900, 0xFAFF},
                                             {0xFE30, 0xFE4F},
                                             {0xFF00, 0xFF60},
                                             {0xFFE0, 0xFFE6},
                                             {0x1F300, 0x1F64F},
                                             {0x1F680, 0x1F9FF},
                                             {0x20000, 0x3FFFD}}};

template <std::size_t N>
bool inside(const std::array<Range, N>& ranges, char32_t c) {
    return std::any_of(ranges.begin(), ranges.end(), [c](Range r) { return c >= r.first && c <= r.second; });
}

int widthOf(char32_t c) {
    if (inside(kNoWidth, c)) return 0;
    return inside(kTwoWide, c) ? 2 : 1;
}

struct Letter {
    char32_t code;
    std::size_t bytes;
    bool good;
};

unsigned byteAt(std::string_view s, std::size_t i) {
    return static_cast<unsigned char>(s[i]);
}

/// Length and first bits of a UTF-8 sequence by its lead byte; length 0 when it cannot lead.
std::pair<std::size_t, char32_t> lead(unsigned b) {
    if (b < 0x80) return {1, b};
    if (b >= 0xC2 && b < 0xE0) return {2, b & 0x1Fu};
    if (b >= 0xE0 && b < 0xF0) return {3, b & 0x0Fu};
    if (b >= 0xF0 && b < 0xF5) return {4, b & 0x07u};
    return {0, 0};
}

Letter letterAt(std::string_view s, std::size_t at) {
    auto [length, code] = lead(byteAt(s, at));
    if (length == 0 || at + length > s.size()) return {0xFFFD, 1, false};
    for (std::size_t i = 1; i < length; ++i) {
        if ((byteAt(s, at + i) & 0xC0u) != 0x80u) return {0xFFFD, 1, false};
        code = (code << 6) | (byteAt(s, at + i) & 0x3Fu);
    }
    const bool tooLong = (length == 3 && code < 0x800) || (length == 4 && code < 0x10000);
    if (tooLong || code > 0x10FFFF || (code >= 0xD800 && code <= 0xDFFF)) return {0xFFFD, 1, false};
    return {code, length, true};
}

/// Breaks one line without line ends.
void wrapLine(const std::string& line, int width, std::vector<std::string>& out) {
    std::string current;
    int used = 0;
    std::size_t blank = std::string::npos; // where the last blank of `current` stands
    for (std::size_t i = 0; i < line.size();) {
        const Letter letter = letterAt(line, i);
        const int w = widthOf(letter.code);
        if (used + w > width && !current.empty()) {
            std::string rest;
            if (letter.code != U' ' && blank != std::string::npos) {
                rest = current.substr(blank + 1);
                current.resize(blank);
            }
            out.push_back(current);
            current = rest;
            used = displayWidth(current);
            blank = std::string::npos;
            if (letter.code == U' ') {
                i += letter.bytes;
                continue;
            }
        }
        if (letter.code == U' ' && !current.empty()) blank = current.size();
        current.append(line, i, letter.bytes);
        used += w;
        i += letter.bytes;
    }
    out.push_back(current);
}

} // namespace

int displayWidth(std::string_view utf8) {
    int width = 0;
    for (std::size_t i = 0; i < utf8.size();) {
        const Letter letter = letterAt(utf8, i);
        width += widthOf(letter.code);
        i += letter.bytes;
    }
    return width;
}

std::string oneLine(std::string_view utf8) {
    std::string out;
    for (std::size_t i = 0; i < utf8.size();) {
        const Letter letter = letterAt(utf8, i);
        if (!letter.good)
            out += "\xEF\xBF\xBD";
        else if (letter.code < 0x20 || (letter.code >= 0x7F && letter.code < 0xA0))
            out += ' ';
        else
            out.append(utf8, i, letter.bytes);
        i += letter.bytes;
    }
    return out;
}

std::vector<std::string> wrap(std::string_view utf8, int width) {
    std::vector<std::string> out;
    std::size_t from = 0;
    while (from <= utf8.size()) {
        const std::size_t end = std::min(utf8.find('\n', from), utf8.size());
        wrapLine(oneLine(utf8.substr(from, end - from)), std::max(1, width), out);
        from = end + 1;
    }
    for (std::string& line : out)
        while (!line.empty() && line.back() == ' ')
            line.pop_back();
    return out;
}

std::string padRight(std::string_view utf8, int width) {
    return std::string(utf8) + std::string(std::max(0, width - displayWidth(utf8)), ' ');
}

std::string padLeft(std::string_view utf8, int width) {
    return std::string(std::max(0, width - displayWidth(utf8)), ' ') + std::string(utf8);
}

std::string apart(std::string_view left, std::string_view right, int width, char fill) {
    const int room = width - displayWidth(left) - displayWidth(right);
    return std::string(left) + std::string(std::max(right.empty() ? 0 : 1, room), fill) + std::string(right);
}

} // namespace withy::papers
