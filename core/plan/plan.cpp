// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/plan.h"

#include "core/plan/booking_plan.h"
#include "core/plan/cover_plan.h"
#include "core/plan/design_plan.h"
#include "core/plan/forecast_plan.h"
#include "core/plan/garden_supply.h"

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
    TableKind::settings, TableKind::plants,     TableKind::containers, TableKind::designs,
    TableKind::slots,    TableKind::slotPlants, TableKind::plantFacts,
};

constexpr TableKind readByForecast[] = {
    TableKind::settings,   TableKind::monthNormals, TableKind::plants,
    TableKind::plantFacts, TableKind::patches,      TableKind::walks,
    TableKind::weather,    TableKind::pastBlooms,   TableKind::tallies,
};

/// Beside the plans of designs and bookings and the forecast.
constexpr TableKind readByCover[] = {
    TableKind::settings,    TableKind::plants,     TableKind::patches,
    TableKind::slots,       TableKind::slotPlants, TableKind::stockLots,
    TableKind::agreedSwaps, TableKind::bookings,   TableKind::lines,
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

} // namespace

Plan plan(const Season& season, const PlanOptions& options) {
    PlanOptions whole = options;
    whole.stop = {};
    return *replan(season, whole, Season{}, Plan{}, whole); // of nothing, nothing can be kept
}

std::optional<Plan> replan(const Season& season, const PlanOptions& options, const Season& was,
                           const Plan& before, const PlanOptions& optionsBefore) {
    const Index index(season);
    Plan next;
    if (allSame(season, was, sharedByDesigns))
        next.designs = before.designs;
    else if (!planDesigns(index, options, next))
        return std::nullopt;
    const bool shared = options.today == optionsBefore.today && allSame(season, was, sharedByBookings);
    const Index old(was);
    PlaceDays days(season);
    for (const auto& b : season.bookings) {
        if (options.stop.stop_requested()) return std::nullopt;
        const auto kept = before.bookings.find(b.id);
        if (shared && kept != before.bookings.end() && sameBooking(index, old, b.id))
            next.bookings.emplace(b.id, kept->second);
        else
            next.bookings.emplace(b.id, std::make_shared<const BookingPlan>(
                                            bookingPlan(index, b, next.designs, days, options)));
    }
    if (options.stop.stop_requested()) return std::nullopt;
    if (before.garden && options.today == optionsBefore.today && allSame(season, was, readByForecast))
        next.garden = before.garden;
    else
        next.garden = std::make_shared<const ForecastPlan>(forecastPlan(index, season, {options.today, {}}));
    if (options.stop.stop_requested()) return std::nullopt;
    if (before.cover && next.garden == before.garden && next.designs == before.designs &&
        next.bookings == before.bookings && allSame(season, was, readByCover))
        next.cover = before.cover;
    else {
        CoverOptions cover;
        cover.today = options.today;
        next.cover = std::make_shared<const CoverPlan>(
            coverPlan(season, next, gardenSupply(season, *next.garden), cover));
    }
    return next;
}

} // namespace withy::plan
