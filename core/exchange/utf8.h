// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

/// Text as bytes of UTF-8 (RFC 3629), without a locale.
namespace withy::exchange {

struct CodePoint {
    char32_t value = 0;
    std::size_t bytes = 0; ///< 0: no valid character begins here
};

/// The character that begins at byte `at`; overlong forms, surrogates and values past U+10FFFF are
/// not valid (RFC 3629, section 4). Precondition: at < text.size().
CodePoint codePointAt(std::string_view text, std::size_t at);

bool isUtf8(std::string_view text);

void appendUtf8(std::string& out, char32_t c);

/// Without the spaces and tabs around it.
std::string_view trimmed(std::string_view text);

/// For comparing names without regard to case: the simple case folding of Unicode (CaseFolding.txt,
/// status C) for the letters of Latin-1, Latin Extended-A, Romanian, modern Greek and Cyrillic; all else
/// stays as it is.
std::string folded(std::string_view text);

/// At most `most` bytes, cut between characters and marked with an ellipsis when cut.
std::string clipped(std::string_view text, std::size_t most = 200);

} // namespace withy::exchange
