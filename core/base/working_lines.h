// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/working.h"

#include <type_traits>
#include <utility>

namespace withy {

/// One line of a working, so that a computation can write one per statement. Whole numbers are held
/// exactly up to 9e15.
template <class Number>

requires std::is_arithmetic_v<Number> WorkingLine lineOf(Step step, std::string what, Number value, Unit unit,
                                                         Basis basis = Basis::computed,
                                                         std::string source = {}, std::string subject = {}) {
    WorkingLine line;
    line.what = std::move(what);
    line.value = static_cast<double>(value);
    line.unit = unit;
    line.step = step;
    line.basis = basis;
    line.source = std::move(source);
    line.subject = std::move(subject);
    return line;
}

/// The same line, saying where it can be changed.
inline WorkingLine from(Origin origin, WorkingLine line) {
    line.from = origin;
    return line;
}

inline void append(Working& to, const Working& from) {
    to.insert(to.end(), from.begin(), from.end());
}

} // namespace withy
