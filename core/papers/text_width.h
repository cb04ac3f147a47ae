// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

/// Columns on a screen or a printer of one-width letters.
namespace withy::papers {

/// How many columns the words take: combining marks none, East Asian wide letters and most emoji two
/// (after Unicode Standard Annex 11, the main ranges only). Bytes that are not UTF-8 count as one each.
int displayWidth(std::string_view utf8);

/// One line of plain words: line ends, tabs and other control characters become blanks, broken UTF-8
/// becomes U+FFFD.
std::string oneLine(std::string_view utf8);

/// Breaks at blanks, and inside a word only when it is longer than a line. Line breaks in the words are
/// kept. Never returns an empty list; `width` below 1 counts as 1.
std::vector<std::string> wrap(std::string_view utf8, int width);

std::string padRight(std::string_view utf8, int width);
std::string padLeft(std::string_view utf8, int width);

/// Left words, then blanks, then right words, exactly `width` columns when both fit.
std::string apart(std::string_view left, std::string_view right, int width, char fill = ' ');

} // namespace withy::papers
