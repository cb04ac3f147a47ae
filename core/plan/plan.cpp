// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/plan.h"

#include "core/plan/booking_plan.h"
#include "core/plan/cover_plan.h"
#include "core/plan/day_heat.h"
#include "core/plan/design_plan.h"
#include "core/plan/forecast_plan.h"
#include "core/plan/garden_supply.h"
#include "core/plan/run_up_plan.h"
#include "core/plan/shed_plan.h"

#include <future>

namespace withy::plan {

namespace {

using model::Season;
using model::TableKind;

/// Tables that every booking's plan may read, whoever it belongs to.
constexpr TableKind sharedByBookings[] = {
    TableKind::settings,   TableKind::monthNormals,  TableKind::rates,          TableKind::plants,
    TableKind::plantFacts, TableKind::weather,       TableKind::containers,     TableKind::ribbons,
    TableKind::sundries,   TableKind::ribbonLengths, TableKind::ribbonMixes,    TableKind::ribbonMixParts,
    TableKind::holders,    TableKind::venues,        TableKind::busyHours,      TableKind::designs,
    TableKind::slots,      TableKind::slotPlants,    TableKind::designSundries,
};

constexpr TableKind sharedByDesigns[] = {
    TableKind::settings,   TableKind::plants,  TableKind::containers,
    TableKind::designs,    TableKind::slots,   TableKind::slotPlants,
    TableKind::plantFacts, TableKind::ribbons, TableKind::ribbonMixParts,
};

constexpr TableKind readByForecast[] = {
    TableKind::settings,   TableKind::monthNormals, TableKind::plants,
    TableKind::plantFacts, TableKind::patches,      TableKind::walks,
    TableKind::weather,    TableKind::pastBlooms,   TableKind::tallies,
    TableKind::rounds, // a tally's day is its round's
};

constexpr TableKind readByDays[] = {TableKind::settings, TableKind::monthNormals, TableKind::weather};

/// Beside the plans of designs and bookings and the forecast.
constexpr TableKind readByCover[] = {
    TableKind::settings,    TableKind::plants,     TableKind::patches,
    TableKind::slots,       TableKind::slotPlants, TableKind::stockLots,
    TableKind::agreedSwaps, TableKind::bookings,   TableKind::lines,
};

/// Beside the plans of designs, bookings and cover.
constexpr TableKind readByRunUp[] = {
    TableKind::settings,  TableKind::monthNormals, TableKind::rates,     TableKind::plants,
    TableKind::patches,   TableKind::plantFacts,   TableKind::weather,   TableKind::containers,
    TableKind::holders,   TableKind::vehicles,     TableKind::helpers,   TableKind::helperHours,
    TableKind::busyHours, TableKind::venues,       TableKind::bookings,  TableKind::lines,
    TableKind::drops,     TableKind::designs,      TableKind::stepMarks,
};

template <std::size_t N>
bool allSame(const Season& a, const Season& b, const TableKind (&kinds)[N]) {
    for (const auto kind : kinds) {
        if (!sameRows(a, b, kind)) return false;
    }
    return true;
}

/// The very same rows, by address: rows are never changed in place.
template <class Map, class Key>
bool sameChildren(const Map& a, const Map& b, Key key) {
    return Index::of(a, key) == Index::of(b, key);
}

bool sameBooking(const Index& a, const Index& b, Id<model::Booking> id) {
    return a.season.bookings.find(id) == b.season.bookings.find(id) && sameChildren(a.lines, b.lines, id) &&
           sameChildren(a.drops, b.drops, id) && sameChildren(a.payments, b.payments, id) &&
           sameChildren(a.questions, b.questions, id);
}

/// False when stopped on the way.
bool planDesigns(const Index& index, const PlanOptions& options, Plan& plan) {
    for (const auto& d : index.season.designs) {
        if (options.stop.stop_requested()) return false;
        plan.designs.emplace(d.id, std::make_shared<const DesignPlan>(designPlan(index, d)));
    }
    return true;
}

/// What an earlier plan offers to keep.
struct KeptBookings {
    const Plan& plan;
    Index index;
    bool shared; ///< all that bookings read in common is the same
};

/// False when stopped on the way.
bool planBookings(const Index& index, const PlanOptions& options, const KeptBookings& kept, Plan& plan) {
    for (const auto& b : index.season.bookings) {
        if (options.stop.stop_requested()) return false;
        const auto old = kept.plan.bookings.find(b.id);
        if (kept.shared && old != kept.plan.bookings.end() && sameBooking(index, kept.index, b.id))
            plan.bookings.emplace(b.id, old->second);
        else
            plan.bookings.emplace(b.id, std::make_shared<const BookingPlan>(
                                            bookingPlan(index, b, plan.designs, *plan.days, options)));
    }
    return true;
}

/// A whole plan that may offer its garden and cover.
struct Earlier {
    const Season& season;
    const Plan& plan;
    const PlanOptions& options;
};

std::shared_ptr<const ForecastPlan> gardenOf(const Season& season, const PlanOptions& options,
                                             const Earlier& earlier) {
    if (earlier.plan.garden && options.today == earlier.options.today &&
        allSame(season, earlier.season, readByForecast))
        return earlier.plan.garden;
    return std::make_shared<const ForecastPlan>(forecastPlan(Index(season), season, {options.today}));
}

std::optional<Plan> withRunUp(const Season& season, const PlanOptions& options, Plan next,
                              const Earlier& earlier) {
    if (earlier.plan.runUp && next.cover == earlier.plan.cover && options.today == earlier.options.today &&
        next.designs == earlier.plan.designs && next.bookings == earlier.plan.bookings &&
        allSame(season, earlier.season, readByRunUp)) {
        next.runUp = earlier.plan.runUp;
        return next;
    }
    if (options.stop.stop_requested()) return std::nullopt;
    auto made = runUpPlan(season, next, {options.today, options.stop}, earlier.plan.runUp.get());
    if (options.stop.stop_requested()) return std::nullopt; // it may be cut short
    next.runUp = std::make_shared<const RunUpPlan>(std::move(made));
    return next;
}

/// Cover and run-up, of designs and bookings as they are in `next`.
std::optional<Plan> withCover(const Season& season, const PlanOptions& options, Plan next,
                              std::shared_ptr<const ForecastPlan> garden, const Earlier& earlier) {
    next.garden = std::move(garden);
    if (earlier.plan.cover && next.garden == earlier.plan.garden && options.today == earlier.options.today &&
        next.designs == earlier.plan.designs && next.bookings == earlier.plan.bookings &&
        allSame(season, earlier.season, readByCover)) {
        next.cover = earlier.plan.cover;
        return withRunUp(season, options, std::move(next), earlier);
    }
    if (options.stop.stop_requested()) return std::nullopt;
    CoverOptions cover;
    cover.today = options.today;
    cover.stop = options.stop;
    next.cover =
        std::make_shared<const CoverPlan>(coverPlan(season, next, gardenSupply(season, *next.garden), cover));
    if (options.stop.stop_requested()) return std::nullopt; // the cover may be cut short
    return withRunUp(season, options, std::move(next), earlier);
}

/// The shed asks nothing of the garden: it is planned on the second processor meanwhile.
std::optional<Plan> withAll(const Season& season, const PlanOptions& options, Plan next,
                            std::shared_ptr<const ForecastPlan> garden, const Earlier& earlier) {
    const Plan booked = next;
    auto shed = std::async(std::launch::async, [&] {
        return replanShed(season, options, booked, earlier.season, earlier.plan, earlier.options);
    });
    auto whole = withCover(season, options, std::move(next), std::move(garden), earlier);
    auto planned = shed.get();
    if (!whole || !planned) return std::nullopt; // stopped on the way
    whole->shed = std::move(planned);
    return whole;
}

} // namespace

Plan plan(const Season& season, const PlanOptions& options) {
    PlanOptions whole = options;
    whole.stop = {};
    return *replan(season, whole, Season{}, Plan{}, whole); // of nothing, nothing can be kept
}

std::optional<Plan> replan(const Season& season, const PlanOptions& options, const Season& was,
                           const Plan& before, const PlanOptions& optionsBefore) {
    // The garden knows nothing of the bookings: it is foretold on the second processor meanwhile.
    auto garden = std::async(std::launch::async, [&] {
        return gardenOf(season, options, {was, before, optionsBefore});
    });
    auto next = replanBookings(season, options, was, before, optionsBefore);
    const auto foretold = garden.get();
    if (!next) return std::nullopt;
    return withAll(season, options, std::move(*next), foretold, {was, before, optionsBefore});
}

std::optional<Plan> replanBookings(const Season& season, const PlanOptions& options, const Season& was,
                                   const Plan& before, const PlanOptions& optionsBefore) {
    const Index index(season);
    Plan next;
    next.garden = before.garden;
    next.cover = before.cover;
    next.runUp = before.runUp;
    next.shed = before.shed;
    next.days =
        before.days && allSame(season, was, readByDays) ? before.days : std::make_shared<PlaceDays>(season);
    if (allSame(season, was, sharedByDesigns))
        next.designs = before.designs;
    else if (!planDesigns(index, options, next))
        return std::nullopt;
    const bool shared = options.today == optionsBefore.today && allSame(season, was, sharedByBookings);
    if (!planBookings(index, options, {before, Index(was), shared}, next)) return std::nullopt;
    return next;
}

std::optional<Plan> replanGarden(const Season& season, const PlanOptions& options, Plan next,
                                 const Season& was, const Plan& before, const PlanOptions& optionsBefore) {
    const Earlier earlier{was, before, optionsBefore};
    return withAll(season, options, std::move(next), gardenOf(season, options, earlier), earlier);
}

} // namespace withy::plan
