// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/cover_plan.h"

#include "core/plan/cover_mends.h"

#include <algorithm>
#include <array>
#include <future>
#include <memory>

namespace withy::plan {

namespace {

using cover::Claim;

/// One booking that counts, with what it asks for.
struct Asking {
    const model::Booking* booking;
    std::unique_ptr<BookingWindows> windows;
    std::vector<SlotDemand> slots;
};

std::vector<cover::LotSupply> lotsOf(const model::Season& season) {
    std::vector<cover::LotSupply> lots;
    for (const auto& lot : season.stockLots)
        lots.push_back({lot.id, lot.plant, lot.stems, lot.readyFrom, lot.useBy, lot.homeGrown});
    return lots;
}

using SlotKey = std::tuple<Id<model::Booking>, Id<model::Line>, Id<model::Slot>>;

SlotKey keyOf(const cover::Demand& d) {
    return {d.booking, d.line, d.slot};
}

class Planner {
public:
    Planner(const model::Season& season, const Plan& plan, const CoverOptions& options)
        : index_(season)
        , plan_(plan)
        , options_(options)
        , days_(plan.days ? plan.days : std::make_shared<PlaceDays>(season)) {}

    CoverPlan make(const GardenSupply& supply) {
        ask();
        CoverPlan cover;
        if (options_.stop.stop_requested()) return {};
        // The levels know nothing of each other: one beside the other on the second processor.
        auto cautious = std::async(std::launch::async, [&] { return solve(supply, Level::cautious); });
        Solution likely = solve(supply, Level::likely);
        std::array<Solution, levelCount> solved{cautious.get(), std::move(likely)};
        for (std::size_t level = 0; level < levelCount; ++level) {
            if (!solved[level].allocation.ok()) {
                cover.fault = solved[level].allocation.error();
                return cover;
            }
        }
        for (std::size_t level = 0; level < levelCount; ++level) {
            cover.allocations[level] = std::move(solved[level].allocation).value();
            cover.freeToPromise[level] = std::move(solved[level].free);
        }
        if (options_.stop.stop_requested()) return {};
        for (auto& asking : asking_)
            begin(cover, asking);
        for (const Level level : {Level::cautious, Level::likely})
            fill(cover, level, solved[indexOf(level)].shortages);
        for (auto& asking : asking_) {
            if (options_.stop.stop_requested()) return {};
            finish(cover, asking);
        }
        return cover;
    }

private:
    struct Solution {
        Result<cover::Allocation, cover::CoverFault> allocation;
        std::vector<cover::PlantWeek> free;
        std::vector<cover::Shortage> shortages;
    };

    [[nodiscard]] Solution solve(const GardenSupply& supply, Level level) const {
        Solution s{cover::allocate(problemAt(supply, level)), {}, {}};
        if (!s.allocation.ok()) return s;
        s.free = cover::freeToPromise(*s.allocation);
        s.shortages = cover::shortages(*s.allocation);
        return s;
    }

    /// What every booking asks for; the later half of them on the second processor.
    void ask() {
        const auto swaps = agreedSwaps(index_.season);
        std::vector<const model::Booking*> bookings;
        for (const auto& booking : index_.season.bookings)
            bookings.push_back(&booking);
        const auto half = bookings.begin() + static_cast<std::ptrdiff_t>(bookings.size() / 2);
        const auto askFor = [&](auto from, auto to) {
            std::vector<Asking> asked;
            for (auto at = from; at != to; ++at)
                if (auto asking = askingOf(**at, swaps)) asked.push_back(std::move(*asking));
            return asked;
        };
        auto later = std::async(std::launch::async, [&] { return askFor(half, bookings.end()); });
        asking_ = askFor(bookings.begin(), half);
        for (auto& asking : later.get())
            asking_.push_back(std::move(asking));
    }

    template <class Swaps>
    [[nodiscard]] std::optional<Asking> askingOf(const model::Booking& booking, const Swaps& swaps) const {
        const auto claim = claimOf(booking, options_.today);
        const auto plan = plan_.bookings.find(booking.id);
        if (!claim || plan == plan_.bookings.end()) return std::nullopt;
        Asking asking{&booking, std::make_unique<BookingWindows>(index_, booking, *plan->second, *days_), {}};
        asking.slots = slotDemands(index_, booking, *plan->second, *claim, Index::of(swaps, booking.id),
                                   *asking.windows);
        if (options_.today && *options_.today <= plan->second->makeUpStart.day)
            for (auto& slot : asking.slots)
                leavePast(slot.demand, *options_.today);
        return asking;
    }

    /// What is to be cut is cut today or later; where no such day is left, stems in store alone will do.
    static void leavePast(cover::Demand& demand, Day today) {
        for (auto& choice : demand.choices) {
            choice.from = std::max(choice.from, today);
            if (choice.best && *choice.best < choice.from) choice.best.reset();
            if (choice.from <= choice.to) continue;
            choice.from = choice.to = demand.bench;
            choice.best.reset();
            choice.storeOnly = true;
        }
    }

    [[nodiscard]] cover::CoverProblem problemAt(const GardenSupply& supply, Level level) const {
        cover::CoverProblem problem;
        problem.patches = level == Level::cautious ? supply.cautious : supply.likely;
        problem.lots = lotsOf(index_.season);
        problem.offers = options_.offers;
        for (const auto& asking : asking_) {
            for (const auto& slot : asking.slots)
                problem.demands.push_back(slot.demand);
        }
        return problem;
    }

    void begin(CoverPlan& cover, const Asking& asking) {
        BookingCover b;
        b.booking = asking.booking->id;
        for (const auto& slot : asking.slots) {
            SlotCover s;
            s.line = slot.demand.line;
            s.slot = slot.demand.slot;
            s.needed = slot.demand.stems;
            s.choices = slot.demand.choices;
            s.leftOut = slot.leftOut;
            for (auto& level : s.at)
                level.covered = s.needed;
            b.needed += s.needed;
            b.slots.push_back(std::move(s));
        }
        auto& kept = cover.bookings[b.booking] = std::move(b);
        for (auto& slot : kept.slots)
            slotAt_[{kept.booking, slot.line, slot.slot}] = &slot;
    }

    void fill(CoverPlan& cover, Level level, std::vector<cover::Shortage>& shortages) {
        const auto& allocation = *cover.allocations[indexOf(level)];
        std::vector<SlotLevel*> byDemand;
        for (const auto& demand : allocation.problem.demands)
            byDemand.push_back(&slotAt_.at(keyOf(demand))->at[indexOf(level)]);
        for (const auto& piece : allocation.pieces)
            byDemand[piece.demand]->pieces.push_back(piece);
        for (auto& shortage : shortages) {
            auto& slot = *byDemand[shortage.demand];
            slot.shortBy = shortage.stems;
            slot.covered -= shortage.stems;
            slot.competitors = std::move(shortage.competitors);
            slot.oneMore = std::move(shortage.oneMore);
            slot.supplyKnown = shortage.supplyKnown;
        }
    }

    void finish(CoverPlan& cover, Asking& asking) {
        auto& b = cover.bookings.at(asking.booking->id);
        const Level promise = index_.season.theSettings().promiseLevel == model::ForecastLevel::likely
                                  ? Level::likely
                                  : Level::cautious;
        if (!free_) free_.emplace(*cover.allocations[indexOf(promise)]);
        bool known = true;
        for (std::size_t i = 0; i < b.slots.size(); ++i) {
            auto& slot = b.slots[i];
            for (std::size_t level = 0; level < levelCount; ++level)
                b.covered[level] += slot.at[level].covered;
            const auto& likely = slot.at[indexOf(Level::likely)];
            known = known && (likely.shortBy.value == 0 || likely.supplyKnown);
            const Stems shortBy = slot.at[indexOf(promise)].shortBy;
            if (shortBy.value > 0)
                slot.mends = mendsFor(index_, asking.slots[i], shortBy, *free_, *asking.windows, options_);
        }
        b.standing = standingOf(b, known);
    }

    static CoverStanding standingOf(const BookingCover& b, bool known) {
        if (b.needed.value == 0) return CoverStanding::nothing;
        if (b.shortBy(Level::cautious).value == 0) return CoverStanding::covered;
        if (b.shortBy(Level::likely).value == 0) return CoverStanding::tight;
        return known ? CoverStanding::shortOf : CoverStanding::notKnown;
    }

    Index index_;
    const Plan& plan_;
    const CoverOptions& options_;
    std::shared_ptr<PlaceDays> days_;
    std::vector<Asking> asking_;
    std::map<SlotKey, SlotCover*> slotAt_;
    std::optional<cover::FreeStock> free_;
};

} // namespace

std::optional<Claim> claimOf(const model::Booking& booking, std::optional<Day> today) {
    switch (booking.standing) {
    case model::Standing::booked:
    case model::Standing::made:
    case model::Standing::delivered:
    case model::Standing::settled:
        return Claim::firm;
    case model::Standing::held:
        if (today && booking.heldUntil && *booking.heldUntil < *today) return Claim::enquiry;
        return Claim::held;
    case model::Standing::quoted:
        return Claim::quoted;
    case model::Standing::enquiry:
        return Claim::enquiry;
    case model::Standing::lost:
        return std::nullopt;
    }
    return std::nullopt;
}

CoverPlan coverPlan(const model::Season& season, const Plan& plan, const GardenSupply& supply,
                    const CoverOptions& options) {
    return Planner(season, plan, options).make(supply);
}

} // namespace withy::plan
