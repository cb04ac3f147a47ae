// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/runup.h"
#include "core/model/settings.h"

#include <variant>

/// Every record of the model, once: (Type, member of Season). The order is the order of the tables in
/// files and exports (referred-to tables first) and must only grow at its end of a schema version.
#define WITHY_RECORDS(X)                                                                                     \
    X(Settings, settings)                                                                                    \
    X(MonthNormal, monthNormals)                                                                             \
    X(Rate, rates)                                                                                           \
    X(AcceptedFinding, acceptedFindings)                                                                     \
    X(Plant, plants)                                                                                         \
    X(PlantFact, plantFacts)                                                                                 \
    X(PlantHazard, plantHazards)                                                                             \
    X(Patch, patches)                                                                                        \
    X(Walk, walks)                                                                                           \
    X(Weather, weather)                                                                                      \
    X(PastBloom, pastBlooms)                                                                                 \
    X(StockLot, stockLots)                                                                                   \
    X(Container, containers)                                                                                 \
    X(Ribbon, ribbons)                                                                                       \
    X(RibbonLength, ribbonLengths)                                                                           \
    X(RibbonMix, ribbonMixes)                                                                                \
    X(RibbonMixPart, ribbonMixParts)                                                                         \
    X(Sundry, sundries)                                                                                      \
    X(Holder, holders)                                                                                       \
    X(Vehicle, vehicles)                                                                                     \
    X(Design, designs)                                                                                       \
    X(Slot, slots)                                                                                           \
    X(SlotPlant, slotPlants)                                                                                 \
    X(DesignSundry, designSundries)                                                                          \
    X(Client, clients)                                                                                       \
    X(Venue, venues)                                                                                         \
    X(VenueTable, venueTables)                                                                               \
    X(Booking, bookings)                                                                                     \
    X(BookingColour, bookingColours)                                                                         \
    X(AgreedSwap, agreedSwaps)                                                                               \
    X(Question, questions)                                                                                   \
    X(Drop, drops)                                                                                           \
    X(Line, lines)                                                                                           \
    X(Placement, placements)                                                                                 \
    X(Payment, payments)                                                                                     \
    X(SentVersion, sentVersions)                                                                             \
    X(Helper, helpers)                                                                                       \
    X(HelperHours, helperHours)                                                                              \
    X(BusyHours, busyHours)                                                                                  \
    X(Round, rounds)                                                                                         \
    X(RoundBooking, roundBookings)                                                                           \
    X(Tally, tallies)                                                                                        \
    X(Made, made)                                                                                            \
    X(Return, returns)                                                                                       \
    X(JobNote, jobNotes)                                                                                     \
    X(JobNotePlant, jobNotePlants)                                                                           \
    X(StepMark, stepMarks)

namespace withy::model {

/// Names a table; numbered as the alternatives of Record.
enum class TableKind {
#define X(Type, member) member,
    WITHY_RECORDS(X)
#undef X
        none, ///< not a table
};

namespace detail {
struct End {};
} // namespace detail

/// Any one record, whole.
using Record = std::variant<
#define X(Type, member) Type,
    WITHY_RECORDS(X)
#undef X
        detail::End>;

inline constexpr std::size_t tableCount = static_cast<std::size_t>(TableKind::none);

/// Table of a record type, at compile time.
template <class R>
inline constexpr TableKind kindOf = TableKind::none;
#define X(Type, member)                                                                                      \
    template <>                                                                                              \
    inline constexpr TableKind kindOf<Type> = TableKind::member;
WITHY_RECORDS(X)
#undef X

/// Table of a record held in a Record.
inline TableKind kindOfRecord(const Record& r) {
    return static_cast<TableKind>(r.index());
}

} // namespace withy::model
