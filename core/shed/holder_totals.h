// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/problem.h"
#include "core/base/quantity.h"
#include "core/base/result.h"
#include "core/base/working.h"

#include <array>
#include <optional>
#include <string>
#include <vector>

/// Buckets, water and gridded boxes in the sum; blank is not zero. Which bucket or box holds what comes with
/// the packing. Problem fields: stem_length, stems, stems_per_bucket, pieces, water, stems_per_cell, cells.
namespace withy::shed {

/// Stems under 40 cm, 40 to 60 cm, and longer: the model's classes (common practice, no source).
enum class LengthClass { shortStems, middleStems, longStems };

inline constexpr Millimetres middleFrom{400};
inline constexpr Millimetres middleTo{600};

LengthClass lengthClass(Millimetres stem);

/// One figure for each length class, in order.
template <class T>
using ByLength = std::array<T, 3>;

struct Buckets {
    ByLength<std::optional<std::int64_t>> byClass; ///< blank: stems of this length, but no room stated
    std::int64_t total = 0;                        ///< of the classes that are known
    bool partlyKnown = false;
    Working working;
};

/// Each length class in buckets of its own, rounded up. A class with no stems needs none, room or not.
Result<Buckets, Problem> bucketsFor(const ByLength<Stems>& stems,
                                    const ByLength<std::optional<Stems>>& perBucket);

/// Water for so many pieces alike.
struct WaterUse {
    std::string subject;
    std::int64_t pieces = 0;
    std::optional<Millilitres> each; ///< blank: volume not known
    Origin from{};                   ///< where it can be changed
};

struct WaterTotal {
    Millilitres total; ///< of the uses that are known
    double litres = 0;
    int unknownUses = 0; ///< the true total is higher
    Working working;
};

Result<WaterTotal, Problem> waterTotal(const std::vector<WaterUse>& uses);

/// Stems of one plant; plants do not share a cell.
struct CellUse {
    std::string subject;
    Stems stems;
};

struct GriddedBoxes {
    std::int64_t cells = 0;
    std::int64_t boxes = 0;
    std::int64_t cellsFree = 0; ///< in the last box
    Working working;
};

Result<GriddedBoxes, Problem> griddedBoxes(const std::vector<CellUse>& uses, std::int64_t stemsPerCell,
                                           std::int64_t cellsPerBox);

} // namespace withy::shed
