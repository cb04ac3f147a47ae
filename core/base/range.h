// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/problem.h"

#include <charconv>
#include <cmath>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace withy {

/// Shortest text that reads back as the same number; a point whatever the locale.
inline std::string numberText(double value) {
    char text[40];
    const auto end = std::to_chars(text, text + sizeof text, value).ptr;
    return {text, end};
}

/// A problem about one plain value that belongs to no record yet; the caller may fill in table and record.
inline Problem problemAt(ProblemCode code, std::string_view field, std::string value,
                         std::vector<std::string> details = {}) {
    Problem p;
    p.code = code;
    p.field = field;
    p.value = std::move(value);
    p.details = std::move(details);
    return p;
}

/// Nothing when least <= value <= most; otherwise the problem, naming the field and the limit.
inline std::optional<Problem> outside(std::string_view field, std::int64_t value, std::int64_t least,
                                      std::int64_t most) {
    if (value < least)
        return problemAt(ProblemCode::belowLeast, field, std::to_string(value), {std::to_string(least)});
    if (value > most)
        return problemAt(ProblemCode::aboveMost, field, std::to_string(value), {std::to_string(most)});
    return std::nullopt;
}

/// As outside(), for figures with a fraction; what is no number at all is a problem too.
inline std::optional<Problem> outsideReal(std::string_view field, double value, double least, double most) {
    if (std::isnan(value)) return problemAt(ProblemCode::notANumber, field, "nan");
    if (value < least)
        return problemAt(ProblemCode::belowLeast, field, numberText(value), {numberText(least)});
    if (value > most) return problemAt(ProblemCode::aboveMost, field, numberText(value), {numberText(most)});
    return std::nullopt;
}

} // namespace withy
