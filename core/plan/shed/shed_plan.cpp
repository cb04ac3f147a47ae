// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/shed_plan.h"

#include "core/plan/shed/kit_through_time.h"
#include "core/plan/shed/packing_plan.h"
#include "core/plan/shed/ribbon_days.h"
#include "core/plan/shed/table_plan.h"

#include <algorithm>

namespace withy::plan {

namespace {

using model::Season;
using model::TableKind;

/// Beside the plans of designs and bookings. What a booking's packing and tables are made from:
constexpr TableKind readByBookings[] = {
    TableKind::settings,   TableKind::plants,      TableKind::plantFacts, TableKind::containers,
    TableKind::designs,    TableKind::slots,       TableKind::holders,    TableKind::vehicles,
    TableKind::placements, TableKind::venueTables,
};
/// ... and the rest of the shed too:
constexpr TableKind readByShed[] = {
    TableKind::ribbons,  TableKind::ribbonLengths, TableKind::ribbonMixes, TableKind::ribbonMixParts,
    TableKind::sundries, TableKind::returns,       TableKind::stepMarks,   TableKind::bookings,
    TableKind::lines,    TableKind::drops,
};

template <std::size_t N>
bool allTheSame(const Season& a, const Season& b, const TableKind (&kinds)[N]) {
    return std::all_of(std::begin(kinds), std::end(kinds),
                       [&](TableKind kind) { return sameRows(a, b, kind); });
}

/// The last plan, where its booking parts may be kept.
struct KeptShed {
    const Plan& plan;
    bool sameForBookings;
};

void planBookingParts(const ShedInput& in, const KeptShed& kept, ShedPlan& out) {
    for (const auto& [id, booked] : in.plan.bookings) {
        const auto* booking = in.season().bookings.find(id);
        if (!booking || booking->standing == model::Standing::lost) continue;
        if (in.stop.stop_requested()) return;
        const auto was = kept.plan.bookings.find(id);
        // The very same booking plan was made from the very same booking, lines and drops.
        const bool same = kept.sameForBookings && in.before && was != kept.plan.bookings.end() &&
                          was->second == booked && in.before->packing.contains(id);
        out.packing[id] = same
                              ? in.before->packing.at(id)
                              : std::make_shared<const BookingPacking>(bookingPacking(in, *booking, *booked));
        out.tables[id] = same ? in.before->tables.at(id)
                              : std::make_shared<const BookingTables>(bookingTables(in, *booking, *booked));
    }
}

bool somethingTravels(const ShedPlan& shed) {
    return std::any_of(shed.packing.begin(), shed.packing.end(),
                       [](const auto& p) { return !p.second->entries.empty(); });
}

/// Said once, not for every booking.
void findUnmeasured(const Season& season, ShedPlan& out) {
    if (!somethingTravels(out)) return;
    const auto say = [&](FindingCode code) {
        out.findings.push_back({std::nullopt, findingOf(code, Severity::note, {TableKind::settings, 1}, {})});
    };
    if (std::none_of(season.holders.begin(), season.holders.end(), [](const model::Holder& h) {
            return h.kind == model::HolderKind::tray && h.innerLength && h.innerWidth;
        }))
        say(ShedCode::traysNotMeasured);
    if (std::none_of(season.vehicles.begin(), season.vehicles.end(),
                     [](const model::Vehicle& v) { return v.floorLength && v.floorWidth; }))
        say(ShedCode::vehicleNotMeasured);
}

void addFindings(const ShedInput& in, ShedPlan& out) {
    const auto add = [&](std::vector<ShedFinding> found) {
        for (auto& f : found)
            out.findings.push_back(std::move(f));
    };
    add(ribbonFindings(in, out.ribbon));
    add(kitFindings(in, out.kit, out.returns));
    findUnmeasured(in.season(), out);
    for (const auto& [id, packing] : out.packing)
        for (const auto& f : packing->findings)
            out.findings.push_back({id, f});
    for (const auto& [id, tables] : out.tables)
        for (const auto& f : tables->findings)
            out.findings.push_back({id, f});
}

} // namespace

std::shared_ptr<const ShedPlan> replanShed(const Season& season, const PlanOptions& options, const Plan& next,
                                           const Season& was, const Plan& before,
                                           const PlanOptions& optionsBefore) {
    const bool sameDesigns = next.designs == before.designs;
    const bool sameForBookings = sameDesigns && allTheSame(season, was, readByBookings);
    if (before.shed && sameForBookings && options.today == optionsBefore.today &&
        next.bookings == before.bookings && allTheSame(season, was, readByShed))
        return before.shed;
    const Index index(season);
    ShedPlan out;
    out.rooms = before.shed ? before.shed->rooms : std::make_shared<packing::TrayRooms>();
    const ShedInput in{index, next, options.today, before.shed.get(), options.stop, out.rooms.get()};
    out.today = options.today;
    out.ribbon = ribbonDays(in);
    planBookingParts(in, {before, sameForBookings}, out);
    if (options.stop.stop_requested()) return nullptr;
    out.kit = kitThroughTime(in, out.packing);
    out.returns = outstandingReturns(in);
    out.buying = buyingList(in, out.kit, out.ribbon);
    addFindings(in, out);
    return std::make_shared<const ShedPlan>(std::move(out));
}

} // namespace withy::plan
