// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/cover/allocation.h"

#include <map>
#include <optional>
#include <vector>

/// Why a slot is short: who has the stems, and what one more would do.
namespace withy::cover {

/// What one more stem of a choice's plant would be worth to the season: fresh to cut on the one day that
/// suits best, or in the lot that does. It is the change of the objectives when the season is solved
/// anew with that stem (the right-hand derivative of the optimum), found by shortest paths over costs reduced
/// by the solver's potentials. One demand at most gains a stem by it.
struct Worth {
    std::optional<std::size_t> goesTo; ///< the demand that would be short by one less; may be another's
    std::int64_t saved = 0;            ///< minor units not spent on offers
    std::int64_t places = 0;           ///< places won in the slots' orders
    std::int64_t days = 0;             ///< keeping time saved (Objectives::keeping)
};

/// Another booking that has stems this slot could have used.
struct Competitor {
    Id<model::Booking> booking;
    Id<model::Plant> plant;
    Stems stems;
};

struct Shortage {
    std::size_t demand = 0;
    Stems stems;              ///< short by
    bool supplyKnown = false; ///< false: none of its plants has a patch with a forecast, a lot or an offer
    std::vector<Competitor> competitors;       ///< most stems first, then by booking and plant
    std::vector<std::optional<Worth>> oneMore; ///< by choice; nothing where one more would change nothing
};

/// Every short demand, in the order served.
std::vector<Shortage> shortages(const Allocation& allocation);

/// Who has stems that these choices could have used, in the season as it is shared out. The demand need not
/// be one of the allocation's own.
class Holders {
public:
    /// The allocation must outlive it.
    explicit Holders(const Allocation& allocation);

    /// Most stems first, then by booking and plant.
    [[nodiscard]] std::vector<Competitor> competitorsOf(const Demand& demand) const;

private:
    [[nodiscard]] bool couldServe(const Piece& piece, const Choice& choice, Day bench) const;

    const Allocation& allocation_;
    std::map<Id<model::Plant>, std::vector<const Piece*>> byPlant_;
    std::map<std::int64_t, int> holdDays_; ///< by patch
};

/// False when none of the demand's plants has a patch with a forecast, a lot or an offer.
bool supplyKnown(const Allocation& allocation, const Demand& demand);

/// What nobody takes.
class FreeStock {
public:
    /// The allocation must outlive it.
    explicit FreeStock(const Allocation& allocation);

    /// Stems of the plant that could be cut on one of the days from..to, or stand in store on the bench day.
    [[nodiscard]] Stems of(Id<model::Plant> plant, Day from, Day to, Day bench) const;

private:
    const Allocation& allocation_;
    std::vector<std::vector<std::int64_t>> left_; ///< by patch and day of readiness
    std::vector<std::int64_t> leftInLot_;
};

} // namespace withy::cover
