// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/day.h"
#include "core/model/bookings.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// Who gets which stems: what there is, and who wants it.
namespace withy::cover {

/// How firm a booking's claim is; the first is served first.
enum class Claim { firm, held, quoted, enquiry };

inline constexpr std::size_t claimCount = 4;

/// Stems of one patch at one level of certainty, as they become ready.
struct PatchSupply {
    Id<model::Patch> patch;
    Id<model::Plant> plant;
    Day first;
    std::vector<std::int64_t> ready; ///< on `first`, the day after, ...
    int holdDays = 0;                ///< a ready stem may wait so many days on the plant
};

/// Stems already cut or paid for.
struct LotSupply {
    Id<model::StockLot> lot;
    Id<model::Plant> plant;
    Stems stems;
    Day readyFrom;
    std::optional<Day> useBy; ///< the last day they may go on the bench
    bool homeGrown = false;
};

/// Stems that can be bought, in whole bunches. The allocation counts them by the stem; how many bunches that
/// takes is rounded up afterwards.
struct Offer {
    std::int64_t id = 0;
    Id<model::Plant> plant;
    Stems bunch{1};
    std::int64_t bunches = 0;
    Money pricePerStem;
    Day readyFrom;
    std::optional<Day> useBy;
    Day orderBy;
};

/// A plant that would fill a slot in a booking, and the days on which it may be cut for it.
struct Choice {
    Id<model::Plant> plant;
    Day from;
    Day to;
    std::optional<Stems> wanted; ///< its wished part of the slot; more of it counts as a lower place
    bool agreedSwap = false;
    bool storeOnly = false; ///< no day of cutting will do; stems in store will
    std::optional<Day> best =
        std::nullopt; ///< the day that suits best, when a round is planned; blank: the last
};

/// One slot of one line of a booking.
struct Demand {
    Id<model::Booking> booking;
    Id<model::Line> line;
    Id<model::Slot> slot;
    Stems stems; ///< spare included
    Claim claim = Claim::enquiry;
    Day event;
    Day bench;                   ///< the day it is made up: stems in store must be fit then
    std::vector<Choice> choices; ///< best first, agreed swaps last
};

struct CoverProblem {
    std::vector<PatchSupply> patches;
    std::vector<LotSupply> lots;
    std::vector<Offer> offers;
    std::vector<Demand> demands;
};

enum class CoverTrouble {
    negative,   ///< fewer than no stems, a price below nought
    outOfRange, ///< more stems than any garden grows, a season longer than two years, a price beyond reason
    outOfOrder, ///< a choice whose days end before they begin
    repeated,   ///< the same patch, lot, offer or slot of a line twice
    tooLarge,   ///< so many demands and prices that their weights would not fit 64 bits
};

struct CoverFault {
    CoverTrouble trouble{};
    std::string field; ///< "patch", "lot", "offer", "demand", "choice"
    std::int64_t id = 0;
};

inline constexpr std::int64_t mostStemsCovered = 2'000'000'000;
inline constexpr std::int64_t mostPricePerStem = 1'000'000; ///< minor units
inline constexpr int mostDaysApart = 800;

/// Nothing when the problem, put inOrder(), is sound.
std::optional<CoverFault> coverFault(const CoverProblem& problem);

/// The same problem in the one order that its own keys give: patches, lots and offers by id, demands in the
/// order they are served (claim, event, booking, line, slot). What is solved does not depend on how it was
/// listed.
CoverProblem inOrder(CoverProblem problem);

} // namespace withy::cover
