// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/cutting/shade_spread.h"
#include "core/designs/water_level.h"
#include "core/packing/circle_rows.h"
#include "core/packing/load_floor.h"
#include "core/packing/table_fit.h"
#include "core/packing/tray_fill.h"
#include "core/plan/plan.h"

/// What the shed can give to all bookings together: ribbon cut day by day, kit out and due back, how it is
/// packed, and whether it fits the tables. Lost bookings ask for nothing; settled ones have had their ribbon.
namespace withy::plan {

/// Common practice, no source: the model has no field for them.
inline constexpr Millimetres usualPadding{5};          ///< between two pieces in a tray
inline constexpr Millimetres usualClearance{10};       ///< wanted beside a piece on its table
inline constexpr std::int64_t usualTravelPercent = 60; ///< of a piece's water goes with it on the road
inline constexpr int usualDaysAway = 7;                ///< when nobody said who clears, and when

// Ribbon

struct RibbonOnShelf {
    Id<model::RibbonLength> id;
    model::RibbonPieceKind kind{};
    Millimetres length; ///< what earlier days leave of it
    std::string dyeLot;
    friend bool operator==(const RibbonOnShelf&, const RibbonOnShelf&) = default;
};

/// Pieces of one line that are cut alike.
struct RibbonPieces {
    Id<model::Line> line;
    Millimetres each;
    std::int64_t count = 0;
    friend bool operator==(const RibbonPieces&, const RibbonPieces&) = default;
};

struct RibbonBar {
    RibbonOnShelf from;
    std::vector<RibbonPieces> cuts; ///< empty: not cut into
    Millimetres left;
    bool keep = false; ///< long enough to go back into the box
};

/// One ribbon on one day.
struct RibbonCutPlan {
    Id<model::Ribbon> ribbon;
    std::vector<RibbonOnShelf> shelf; ///< as the day finds it
    std::vector<RibbonPieces> wanted;
    std::vector<RibbonBar> bars; ///< ends first, then reels; those not cut into too
    std::vector<RibbonPieces> missing;
    Millimetres needed;
    Millimetres missingLength;
    Millimetres waste;
    Millimetres fromEnds;
    Millimetres keepFrom; ///< what is left and so long goes back: the shortest piece anyone still wants of it
    bool counted = true;  ///< false: no reel or end of it was ever measured
    bool proved = false;  ///< no cutting has less missing, then less waste
    Working working;      ///< of the waste; where ribbon is missing, of the missing length
};

/// Which piece of a line gets which ribbon of its mix, in the order they stand.
struct RibbonShades {
    Id<model::Line> line;
    std::vector<Id<model::Ribbon>> ribbons; ///< in the mix's order
    cutting::ShadeSpread spread;            ///< its shades are indices into `ribbons`
};

/// All that is cut for the make-ups that begin on one day.
struct RibbonDay {
    Day day;
    std::vector<Id<model::Booking>> bookings;
    std::vector<std::shared_ptr<const RibbonCutPlan>> ribbons; ///< by id
    std::vector<RibbonShades> shades;
};

// Kit through time

/// What one booking keeps away from the shelf. Amounts are in the item's own measure.
struct KitHold {
    Id<model::Booking> booking;
    std::int64_t amount = 0;
    Day from;                  ///< first day away
    std::optional<Day> until;  ///< last day away; blank: does not come back
    bool firm = false;         ///< booked or further on
    bool untilGuessed = false; ///< nobody said when it is cleared
    bool out = false;          ///< has left, and is not home yet
    bool late = false;         ///< should be home by now, and nobody has counted it back
    std::int64_t broken = 0;   ///< of the amount; never comes back
    std::int64_t lost = 0;     ///< of the amount: counted as not come back
};

/// From a day on: so much is away, or promised away.
struct KitLevel {
    Day from;
    std::int64_t away = 0;
    std::int64_t awayFirm = 0; ///< without enquiries, holds and quotes
};

struct KitShort {
    Day day;
    std::int64_t by = 0;
    bool firm = false; ///< short by what is booked alone
    std::vector<Id<model::Booking>> bookings;
};

/// A container, kind of tray, bucket or box, or a sundry. Buckets of all kinds are one item, under the kind
/// there are most of.
struct KitItem {
    model::Ref item;
    bool inThousandths = false; ///< sundries: thousandths of their unit
    bool usedUp = false;        ///< never comes back
    std::optional<std::int64_t> owned;
    std::int64_t broken = 0;   ///< so far
    std::int64_t out = 0;      ///< today
    std::int64_t promised = 0; ///< still to go
    std::optional<std::int64_t> here;
    std::optional<Day> dueBack; ///< the next
    std::vector<KitHold> holds; ///< by first day
    std::vector<KitLevel> levels;
    std::optional<KitShort> lowest;     ///< the day with least left; `by` below nought is what is left
    std::optional<KitShort> firstShort; ///< blank: never, or nobody has counted
    std::optional<KitShort> worst;      ///< likewise
    Working working;                    ///< of what is free on the lowest day
};

/// Containers that went out and are not all home.
struct OutstandingReturn {
    Id<model::Booking> booking;
    Id<model::Container> container;
    std::optional<Id<model::Return>> record; ///< blank: nothing was noted yet
    std::int64_t out = 0;
    std::int64_t missing = 0; ///< not back and not broken
    Day due;
    bool late = false;
};

struct BuyingLine {
    model::Ref item;
    std::int64_t amount = 0; ///< in the item's measure; ribbon in millimetres
    bool inThousandths = false;
    Day neededBy;
    bool firm = false;
    std::vector<Id<model::Booking>> bookings;
    std::optional<Money> cost;
    Working working;
};

// Packing

struct PackedPiece {
    Id<model::Line> line;
    packing::Place centre; ///< millimetres from the tray's near left corner
    Millimetres diameter;
    std::optional<Id<model::VenueTable>> table;
    std::int64_t tableNumber = 0; ///< of the tables of that kind, from 1
};

struct PackedTray {
    Id<model::Holder> holder;
    Millimetres length; ///< inside
    Millimetres width;
    std::vector<PackedPiece> pieces;
    Grams weight;
    bool partlyKnown = false; ///< heavier in truth
    bool overLimit = false;
    Working working; ///< of the weight
};

enum class LoadKind {
    tray,
    bucket,    ///< stems of what is made up at the venue
    container, ///< that goes empty, its piece being made where it stands
    piece,     ///< wider than every tray: by itself, laid flat
    waterCan
};

struct LoadEntry {
    LoadKind kind{};
    std::size_t drop = 0;                ///< index into BookingPacking::drops
    std::optional<std::size_t> tray;     ///< index into that drop's trays
    std::optional<Id<model::Line>> line; ///< piece, container, bucket
    std::optional<Id<model::Holder>> holder;
    std::int64_t count = 0; ///< stems, pieces
    double litres = 0;
    Millimetres length; ///< outside
    Millimetres width;
    std::optional<Grams> mass;
    bool overLimit = false;
};

/// Water of one line's pieces: with them on the road, poured in on arrival, and at the check.
struct LineWater {
    Id<model::Line> line;
    std::int64_t pieces = 0;
    Millilitres full;
    Millilitres travel;
    Millilitres topUp; ///< one piece's, on arrival
    LocalTime placed;  ///< the course begins
    designs::WaterCourse course;
    /// Only the margin is left, or the event ends before that; blank: it lasts as long as it is to look good.
    std::optional<LocalTime> checkAt;
    std::optional<LocalTime> dryAt;
};

struct DropPacking {
    std::optional<Id<model::Drop>> drop; ///< blank: nobody named one
    LocalTime at;
    std::vector<Id<model::Line>> lines;
    std::vector<PackedTray> trays;
    double topUpLitres = 0;
    double checkLitres = 0;
};

struct BookingPacking {
    std::vector<DropPacking> drops; ///< in the order they are driven to
    std::vector<LoadEntry> entries;
    std::vector<LineWater> waters;
    double carryLitres = 0;                    ///< top-up and check together
    std::optional<LocalTime> checkAt;          ///< the earliest
    std::optional<Id<model::Vehicle>> vehicle; ///< blank: none is measured
    std::optional<packing::LoadPlan> load;     ///< its items are `entries`; likewise
    Grams mass;                                ///< of all entries, as far as known
    Grams heaviest;                            ///< lift
    Working carryWorking;
    std::vector<Finding> findings;
};

// Tables

struct TablePieces {
    Id<model::Line> line;
    Id<model::Design> design;
    std::int64_t perTable = 0;
    Millimetres footprint; ///< the wider of container and spread
    Millimetres foot;      ///< of the container
    Millimetres top;       ///< over the table, grown by the event
    Millimetres grown;     ///< of that: since it was made
};

/// Tables of one kind at the venue, with what stands on each of them.
struct PlacedTable {
    Id<model::VenueTable> table;
    packing::TableTop top;
    std::vector<TablePieces> pieces;
    std::int64_t onEach = 0;  ///< pieces
    std::int64_t without = 0; ///< of these tables, for want of pieces
    packing::FreeMiddle middle;
    std::optional<packing::TableFitAnswer> fit; ///< blank: nothing stands on it
    std::optional<packing::SightlineAnswer> sight;
    std::optional<Id<model::Container>> largest; ///< in the shed that fits; blank: none does
};

struct BookingTables {
    packing::PlaceSetting setting;
    Millimetres clearance = usualClearance;
    std::vector<PlacedTable> tables; ///< those with pieces first, by id
    std::vector<Finding> findings;
};

struct ShedFinding {
    std::optional<Id<model::Booking>> booking;
    Finding finding;
};

struct ShedPlan {
    std::vector<std::shared_ptr<const RibbonDay>> ribbon; ///< in order of time
    std::vector<KitItem> kit;                             ///< the first to run short first
    std::vector<OutstandingReturn> returns;               ///< by day due
    std::vector<BuyingLine> buying;                       ///< by day needed
    std::map<Id<model::Booking>, std::shared_ptr<const BookingPacking>> packing;
    std::map<Id<model::Booking>, std::shared_ptr<const BookingTables>> tables;
    std::vector<ShedFinding> findings;
    std::optional<Day> today;
    std::shared_ptr<packing::TrayRooms> rooms; ///< what trays hold, as far as it was asked; kept
};

/// The shed of `next`, whose designs and bookings are done, keeping the parts of before.shed whose inputs are
/// the same. Null when it was stopped.
std::shared_ptr<const ShedPlan> replanShed(const model::Season& season, const PlanOptions& options,
                                           const Plan& next, const model::Season& was, const Plan& before,
                                           const PlanOptions& optionsBefore);

/// The mark that says that a booking's ribbon was cut and what is left written back to the stock.
bool ribbonIsWrittenBack(const model::Season& season, Id<model::Booking> booking);
inline constexpr std::int64_t writtenBackNumber = 1; ///< model::StepMark::number of such a mark

} // namespace withy::plan
