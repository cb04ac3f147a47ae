// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/bookings/money_totals.h"
#include "core/bookings/stem_needs.h"
#include "core/designs/build_up.h"
#include "core/designs/water_fill.h"
#include "core/garden/cut_window.h"
#include "core/garden/garden_day.h"
#include "core/garden/good_hours.h"
#include "core/model/season.h"
#include "core/plan/finding.h"
#include "core/runup/busy_spans.h"
#include "core/shed/holder_totals.h"
#include "core/shed/kit_totals.h"
#include "core/shed/ribbon_length.h"

#include <map>
#include <memory>
#include <optional>
#include <stop_token>
#include <vector>

/// The plan joins the computations over a whole season: deterministic, complete, without writes.
namespace withy::plan {

struct PlanOptions {
    std::optional<Day> today; ///< for holds and questions; blank: nothing is late
    /// Asked between parts by replanBookings(), replanGarden() and replanShed(), so that a newer edit need
    /// not wait for an older plan.
    std::stop_token stop;
};

/// One slot of a design, as it is filled without competition: its best plant first.
struct SlotPlan {
    Id<model::Slot> slot;
    std::vector<std::pair<Id<model::Plant>, double>> fill; ///< plants with their share, summing to 1
    std::optional<designs::CutLength> cutLength;
};

/// What a design comes to, whoever books it.
struct DesignPlan {
    Id<model::Design> design;
    Stems stemsPerPiece;
    std::vector<SlotPlan> slots;
    std::optional<designs::WaterFill> water;
    std::optional<designs::NeckFilling> neck;
    std::optional<designs::PieceWeight> weight;
    std::optional<shed::RibbonPiece> ribbon; ///< for one piece; blank: no ribbon
    Figure minutes;                          ///< to make one
    std::vector<Finding> findings;
};

/// One use of a plant within a booking.
struct SlotUse {
    Id<model::Line> line;
    Id<model::Slot> slot;
    Stems perPiece;
    Pieces pieces; ///< spare pieces included
    Stems stems;
    std::optional<Millimetres> cutLength;
};

struct PlantWindow {
    garden::CutWindow window;
    std::vector<std::string> missingFacts; ///< Plant fields for which a default stood in
};

/// A plant's stems for a booking: need, spare once, whole bunches, and when they may be cut.
struct PlantNeed {
    Id<model::Plant> plant;
    bookings::StemNeed need;
    std::vector<SlotUse> uses;
    std::optional<Millimetres> longestCut;
    std::optional<PlantWindow> window; ///< blank: times of the booking make none
    int round = -1;                    ///< index into BookingPlan::rounds, -1 when in none
};

/// One outing to cut.
struct CutRound {
    LocalTime start;
    LocalTime end;
    Minutes work;
    std::optional<garden::GoodHour> hour; ///< blank: nothing known of the day's warmth
    std::vector<std::size_t> needs;       ///< indices into BookingPlan::needs
    Stems stems;
    Working working; ///< of the minutes
};

struct LinePlan {
    Id<model::Line> line;
    Id<model::Design> design;
    Pieces pieces; ///< spare pieces included
    Stems stems;   ///< before any spare stems
};

/// A ribbon's lengths for a booking.
struct RibbonNeed {
    Id<model::Ribbon> ribbon;

    struct Cut {
        Id<model::Line> line;
        Millimetres each;
        Pieces pieces;
    };

    std::vector<Cut> cuts;
    Millimetres needed;
    std::optional<Millimetres> onHand;
    std::optional<Millimetres> missing;
    Working working;
};

struct ContainerNeed {
    Id<model::Container> container;
    shed::KitTotal total;
};

struct SundryNeed {
    Id<model::Sundry> sundry;
    shed::KitTotal total;
};

struct KitPlan {
    std::vector<ContainerNeed> containers;
    std::vector<SundryNeed> sundries;
    std::vector<RibbonNeed> ribbons;
    std::optional<shed::Buckets> buckets;
    std::optional<std::int64_t> bucketsOwned;
    shed::WaterTotal water;
};

using model::StepKind;

/// One timed step towards the last table.
struct TimedStep {
    StepKind kind{};
    LocalTime from;
    LocalTime to;
    Minutes minutes; ///< of work; nought when it needs nobody
    std::optional<Id<model::Line>> line;
    std::optional<Id<model::Drop>> drop;
    std::vector<std::pair<Id<model::Plant>, Stems>> stems; ///< cut
    std::int64_t count = 0;                                ///< pieces, jars, trays
    double litres = 0;
    Working working;
};

struct BookingPlan {
    Id<model::Booking> booking;
    std::vector<LinePlan> lines;
    std::vector<PlantNeed> needs; ///< by plant id
    Stems stemsNeeded;            ///< before spare
    Stems stemsToCut;             ///< with spare and bunches
    std::vector<CutRound> rounds;
    KitPlan kit;
    std::optional<bookings::BookingMoney> money;
    std::vector<TimedStep> steps;      ///< in order of time
    std::vector<runup::BusySpan> busy; ///< on the days of the steps
    LocalTime makeUpStart;
    LocalTime makeUpEnd;
    LocalTime driveStart;
    std::vector<Finding> findings;
};

class PlaceDays;     ///< core/plan/day_heat.h
struct ForecastPlan; ///< core/plan/forecast_plan.h
struct CoverPlan;    ///< core/plan/cover_plan.h
struct RunUpPlan;    ///< core/plan/run_up_plan.h
struct ShedPlan;     ///< core/plan/shed_plan.h

struct Plan {
    std::map<Id<model::Design>, std::shared_ptr<const DesignPlan>> designs;
    std::map<Id<model::Booking>, std::shared_ptr<const BookingPlan>> bookings;
    std::shared_ptr<PlaceDays>
        days; ///< worked out as they are asked for; kept while place and weather are the same
    std::shared_ptr<const ForecastPlan> garden; ///< what will be in flower; null only before the first plan
    std::shared_ptr<const CoverPlan> cover;     ///< who gets which stems; null only before the first plan
    std::shared_ptr<const RunUpPlan> runUp;     ///< all bookings' work laid into time
    std::shared_ptr<const ShedPlan> shed;       ///< ribbon, kit through time, packing
};

/// Always whole: it does not look at the stop.
Plan plan(const model::Season& season, const PlanOptions& options = {});

/// As plan(), keeping the parts of `before` (the plan of `was`) whose inputs did not change. The result
/// is the same as plan()'s, always; nothing when it was stopped.
std::optional<Plan> replan(const model::Season& season, const PlanOptions& options, const model::Season& was,
                           const Plan& before, const PlanOptions& optionsBefore);

// The same in two parts, for who shows the first while the second goes on.

/// Designs and bookings anew; garden and cover are still those of `before`.
std::optional<Plan> replanBookings(const model::Season& season, const PlanOptions& options,
                                   const model::Season& was, const Plan& before,
                                   const PlanOptions& optionsBefore);
/// Garden and cover of `next`, which has the designs and bookings of `season`. `before` is any earlier whole
/// plan, that of `was`.
std::optional<Plan> replanGarden(const model::Season& season, const PlanOptions& options, Plan next,
                                 const model::Season& was, const Plan& before,
                                 const PlanOptions& optionsBefore);

} // namespace withy::plan
