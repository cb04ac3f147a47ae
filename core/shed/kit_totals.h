// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/problem.h"
#include "core/base/result.h"
#include "core/base/working.h"

#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

/// What a booking needs from the shed against what is there. Blank is not zero: an amount that was never
/// counted leaves "short" unsaid. Amounts are thousandths of the item's unit, so that half a metre of tape
/// sums exactly. Problem fields: amount, pieces, stems, bookings, trays, needed, on_hand.
namespace withy::shed {

/// In the model's order.
enum class UseRule { perPiece, perStem, perBooking, perTray };

/// How many there are of what a rule counts. Trays may not be known before the packing is.
struct UseCounts {
    std::int64_t pieces = 0; ///< spare pieces included
    std::int64_t stems = 0;
    std::int64_t bookings = 1;
    std::optional<std::int64_t> trays;
};

/// One use of an item.
struct KitUse {
    UseRule rule = UseRule::perPiece;
    std::int64_t thousandths = 1000; ///< of the item's unit, each time
    UseCounts counts;
    std::string subject; ///< what it is for; may be empty
    Origin from{};       ///< where that can be changed
};

/// What is there of an item.
struct KitStock {
    std::optional<std::int64_t> thousandths; ///< blank: not counted
    bool wholeUnits = true;                  ///< jars and pins: the need is rounded up to a whole one
    Origin from{};                           ///< where it is counted
};

inline constexpr std::int64_t mostCounted = 100'000'000;
inline constexpr std::int64_t mostAmount = 1'000'000'000; ///< thousandths: a million units each time

struct KitTotal {
    std::int64_t needed = 0; ///< thousandths, as are the others
    int unknownUses = 0;     ///< uses whose number is blank: the true need is higher
    std::optional<std::int64_t> onHand;
    std::optional<std::int64_t> missing; ///< 0 when there is enough; blank when on hand is blank
    std::optional<std::int64_t> spare;   ///< on hand beyond the need; likewise
    Working working;                     ///< in whole units, with their fraction
};

/// Thousandths of an amount as typed (0.5 is 500), to the nearest; field "amount".
Result<std::int64_t, Problem> thousandthsOf(double amount);

/// Whole units, rounded up.
std::int64_t wholeUnits(std::int64_t thousandths);

/// One item: its uses summed, then rounded up once where it comes in whole units.
Result<KitTotal, Problem> kitTotal(const std::vector<KitUse>& uses, const KitStock& stock);

template <class Key>
struct KeyedUse {
    Key item;
    KitUse use;
};

/// All items, in the order of their keys; an item with no stock record counts as not counted.
template <class Key>
Result<std::vector<std::pair<Key, KitTotal>>, Problem> kitTotals(const std::vector<KeyedUse<Key>>& uses,
                                                                 const std::map<Key, KitStock>& stock) {
    std::map<Key, std::vector<KitUse>> items;
    for (const auto& [item, use] : uses)
        items[item].push_back(use);
    std::vector<std::pair<Key, KitTotal>> totals;
    for (const auto& [item, group] : items) {
        const auto there = stock.find(item);
        auto total = kitTotal(group, there == stock.end() ? KitStock{} : there->second);
        if (!total.ok()) return total.error();
        totals.emplace_back(item, std::move(total).value());
    }
    return totals;
}

} // namespace withy::shed
