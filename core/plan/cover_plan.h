// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/cover/allocation.h"
#include "core/cover/free_to_promise.h"
#include "core/cover/shortage.h"
#include "core/plan/plan.h"

#include <array>
#include <map>
#include <optional>
#include <stop_token>
#include <vector>

/// The season's stems shared out among its bookings.
namespace withy::plan {

/// What the garden is thought to give, at both levels; patches with no forecast are left out.
struct GardenSupply {
    std::vector<cover::PatchSupply> cautious;
    std::vector<cover::PatchSupply> likely;
};

/// Indexes the arrays below.
enum class Level { cautious, likely };

inline constexpr std::size_t levelCount = 2;

/// Place of a level in the arrays of levelCount.
constexpr std::size_t indexOf(Level level) {
    return static_cast<std::size_t>(level);
}

struct CoverOptions {
    /// A hold that has ended claims as an enquiry; nothing is cut before it; a mend is still possible. Stems
    /// already cut are known only as lots: a tally does not lessen the forecast.
    std::optional<Day> today;
    std::stop_token stop;             ///< asked between parts; a plan that was stopped is empty
    std::vector<cover::Offer> offers; ///< taken by the allocation itself; given by the caller, usually none
    int leadDays = 7; ///< from order to bench, for what is proposed to be bought (common practice, no source)
    std::size_t mostSwaps = 6; ///< proposed for one slot
    double nearColour = 25;    ///< CIEDE2000; beyond it a swap is not proposed (own choice)
};

enum class CoverStanding {
    covered,  ///< at the cautious level
    tight,    ///< at the likely level only
    shortOf,  ///< not even then
    notKnown, ///< what is short has no patch with a forecast, no lot and no offer
    nothing,  ///< the booking asks for no stems
};

/// Why a plant of a slot's order takes no part.
enum class LeftOutReason { tooShort, noCutWindow };

struct LeftOut {
    Id<model::Plant> plant;
    LeftOutReason reason{};
    Millimetres missing; ///< of length
    bool agreedSwap = false;
};

enum class MendKind {
    swap,        ///< plant fills `stems` of the slot; same purpose, long enough, ready, free
    buy,         ///< `bunches` of `plant`, ordered by `orderBy`
    fewerPieces, ///< the line made `pieces` smaller
};

struct Mend {
    MendKind kind{};
    Id<model::Plant> plant;
    Stems stems;                            ///< of the shortage that it mends
    std::optional<double> colourDifference; ///< from the slot's first plant, CIEDE2000; swaps only
    std::int64_t bunches = 0;
    Stems bunch;
    std::optional<Money> price; ///< of all bunches, where the plant's cost is known
    Day orderBy;
    bool orderLate = false;  ///< the day to order has passed
    Pieces pieces;           ///< fewer
    bool lengthKnown = true; ///< swaps: whether what the slot needs, and so "long enough", is known
};

/// A slot at one level.
struct SlotLevel {
    Stems covered;
    Stems shortBy;
    std::vector<cover::Piece> pieces;
    std::vector<cover::Competitor> competitors;
    std::vector<std::optional<cover::Worth>> oneMore; ///< by choice of the demand
    bool supplyKnown = true;
};

struct SlotCover {
    Id<model::Line> line;
    Id<model::Slot> slot;
    Stems needed; ///< spare included
    std::array<SlotLevel, levelCount> at;
    std::vector<cover::Choice> choices;
    std::vector<LeftOut> leftOut;
    std::vector<Mend> mends; ///< of the shortage at the season's level of promise
};

struct BookingCover {
    Id<model::Booking> booking;
    CoverStanding standing = CoverStanding::nothing;
    Stems needed;
    std::array<Stems, levelCount> covered;
    std::vector<SlotCover> slots; ///< by line and slot

    [[nodiscard]] Stems shortBy(Level level) const { return needed - covered[indexOf(level)]; }
};

struct CoverPlan {
    std::map<Id<model::Booking>, BookingCover> bookings; ///< those that count
    std::array<std::optional<cover::Allocation>, levelCount> allocations;
    std::array<std::vector<cover::PlantWeek>, levelCount> freeToPromise;
    std::optional<cover::CoverFault> fault; ///< no allocation could be made, and why
};

/// What a booking's claim is; nothing when it does not count (lost).
std::optional<cover::Claim> claimOf(const model::Booking& booking, std::optional<Day> today);

CoverPlan coverPlan(const model::Season& season, const Plan& plan, const GardenSupply& supply,
                    const CoverOptions& options = {});

} // namespace withy::plan
