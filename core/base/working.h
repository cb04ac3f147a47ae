// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/basis.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace withy {

/// Unit of a figure in a working. `none` for plain ratios.
enum class Unit {
    none,
    stems,
    pieces,
    millimetres,
    millilitres,
    grams,
    minutes,
    hours,
    days,
    celsius,
    percent, ///< 10 means 10 %
    minorMoney,
    count, ///< things that are neither stems nor pieces: jars, reels, buckets
    time,  ///< minutes since 1970-01-01T00:00 on the place's wall clock
};

/// How a line of a working joins on to the lines above it.
enum class Step {
    given, ///< an input
    plus,
    minus,
    times,
    over,
    result, ///< what the lines above come to
};

/// The record a line rests on. The base knows no tables: they count here as model::TableKind counts them
/// (core/model/origin.h).
struct Origin {
    int table = -1; ///< below nought: none that could be gone to
    std::int64_t id = 0;
    friend bool operator==(const Origin&, const Origin&) = default;
};

/// One line of a working: what the figure is, its value and unit, and where it comes from.
/// `what` is a stable key in words ("pieces", "spare rule"); ui/logic puts it into a sentence.
struct WorkingLine {
    std::string what;
    double value = 0;
    Unit unit = Unit::none;
    Step step = Step::given;
    Basis basis = Basis::computed;
    std::string source;  ///< published source or the grower's remark; may be empty
    std::string subject; ///< name of the record the figure belongs to ("Zinnia, coral"); may be empty
    Origin from;         ///< where it can be changed
};

/// The lines that lead to a figure; the last one is the figure itself.
using Working = std::vector<WorkingLine>;

/// A computed figure that can be opened.
struct Figure {
    double value = 0;
    Unit unit = Unit::none;
    Working working;
};

} // namespace withy
