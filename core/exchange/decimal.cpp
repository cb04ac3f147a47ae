// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/decimal.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace withy::exchange {

namespace {

std::size_t digitsFrom(std::string_view text, std::size_t at) {
    std::size_t end = at;
    while (end < text.size() && isDigit(text[end]))
        ++end;
    return end - at;
}

std::string without(std::string text, std::string_view what) {
    for (auto at = text.find(what); at != std::string::npos; at = text.find(what, at))
        text.erase(at, what.size());
    return text;
}

/// Between groups of digits people write spaces (plain, no-break, narrow no-break) and apostrophes.
std::string withoutGaps(std::string_view text) {
    std::string out(text);
    for (const std::string_view gap : {" ", "\u00A0", "\u202F", "'", "\u2019"})
        out = without(std::move(out), gap);
    return out;
}

std::string commaToPoint(std::string text) {
    std::replace(text.begin(), text.end(), ',', '.');
    return text;
}

/// "1,234" and "12,345" but not "1234,5": could be thousands.
bool looksLikeThousands(std::string_view text, std::size_t comma) {
    const std::size_t before = comma - (text.starts_with('-') ? 1 : 0);
    return before >= 1 && before <= 3 && text.size() - comma == 4;
}

} // namespace

std::string decimalText(double x) {
    if (!std::isfinite(x)) return {};
    std::array<char, 400> room{}; // the smallest double has 324 places and at most 17 digits
    const auto [end, error] =
        std::to_chars(room.data(), room.data() + room.size(), x, std::chars_format::fixed);
    return error == std::errc{} ? std::string(room.data(), end) : std::string{};
}

bool isPlainDecimal(std::string_view text) {
    if (text.starts_with('-')) text.remove_prefix(1);
    const std::size_t whole = digitsFrom(text, 0);
    if (whole == 0 || whole == text.size()) return whole > 0;
    const std::size_t fraction = digitsFrom(text, whole + 1);
    return text[whole] == '.' && fraction > 0 && whole + 1 + fraction == text.size();
}

std::vector<std::string> plainForms(std::string_view typed) {
    if (typed.size() > 40) return {};
    const std::string text = withoutGaps(typed);
    const auto commas = std::count(text.begin(), text.end(), ',');
    const auto points = std::count(text.begin(), text.end(), '.');
    std::vector<std::string> forms;
    if (commas == 0) {
        forms = {points > 1 ? without(text, ".") : text};
    } else if (points == 0 && commas == 1) {
        forms = {commaToPoint(text)};
        if (looksLikeThousands(text, text.find(','))) forms.push_back(without(text, ","));
    } else if (points <= 1 && (points == 0 || text.find('.') > text.rfind(','))) {
        forms = {without(text, ",")};
    } else if (commas == 1 && text.find(',') > text.rfind('.')) {
        forms = {commaToPoint(without(text, "."))};
    }
    std::erase_if(forms, [](const std::string& form) { return !isPlainDecimal(form); });
    return forms;
}

} // namespace withy::exchange
