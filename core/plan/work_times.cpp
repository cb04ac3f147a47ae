// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/work_times.h"

#include "core/base/working_lines.h"
#include "core/plan/piece_water.h"
#include "core/runup/rates.h"

#include <algorithm>
#include <cmath>

namespace withy::plan {

namespace {

using model::RateKind;
using Designs = std::map<Id<model::Design>, std::shared_ptr<const DesignPlan>>;

constexpr Minutes usualTravel{30};        ///< when the venue does not say (common practice, no source)
constexpr Minutes checkingWater{10};      ///< all of them (common practice, no source)
constexpr std::int64_t piecesPerTray = 8; ///< until packing says better (common practice, no source)

Minutes perPieces(const Index& index, RateKind work, std::int64_t count) {
    return roundedUp(runup::rateOf(index.season, work).minutes * static_cast<double>(count));
}

std::int64_t piecesOn(const BookingPlan& plan, const Index& index, const model::Drop* drop, bool only) {
    std::int64_t pieces = 0;
    for (const auto& line : plan.lines) {
        const auto& record = *index.season.lines.find(line.line);
        const bool here = only || (record.drop ? drop && *record.drop == drop->id : drop == nullptr);
        if (here) pieces += record.pieces.value;
    }
    return pieces;
}

TimedStep counted(const Index& index, StepKind kind, RateKind work, std::int64_t count) {
    TimedStep step;
    step.kind = kind;
    step.count = count;
    const auto rate = runup::rateOf(index.season, work);
    step.minutes = perPieces(index, work, count);
    step.working = {lineOf(Step::given, "count", static_cast<double>(count), Unit::count, Basis::computed),
                    runup::rateLine(rate, "minutes each"),
                    lineOf(Step::result, "minutes", static_cast<double>(step.minutes.value), Unit::minutes)};
    return step;
}

Drive driveTo(const Index& index, const BookingPlan& plan, const model::Drop* drop, LocalTime at,
              Minutes travel, bool only) {
    Drive d;
    d.drop = drop;
    d.arrive = at;
    d.leave = at - travel;
    const TimedStep placing =
        counted(index, StepKind::place, RateKind::placePiece, piecesOn(plan, index, drop, only));
    d.placing = placing.minutes;
    d.placingWorking = placing.working;
    if (drop) d.place = drop->place;
    return d;
}

/// Puts a step so that it ends by `end`, in free hours; returns its start.
LocalTime placeBefore(WorkTimes& times, BookingPlan& plan, TimedStep step, LocalTime end) {
    step.to = end;
    step.from = times.calendar.startFor(end, step.minutes);
    const LocalTime start = step.from;
    if (start < end) times.calendar.occupy({start, end});
    plan.steps.push_back(std::move(step));
    return start;
}

TimedStep makeStep(const model::Line& line, const DesignPlan& design) {
    TimedStep step;
    step.kind = StepKind::make;
    step.line = line.id;
    step.count = line.pieces.value + line.sparePieces.value;
    step.minutes = roundedUp(design.minutes.value * static_cast<double>(step.count));
    step.working = {lineOf(Step::given, "pieces", static_cast<double>(step.count), Unit::pieces)};
    append(step.working, design.minutes.working);
    step.working.push_back(
        lineOf(Step::result, "minutes", static_cast<double>(step.minutes.value), Unit::minutes));
    return step;
}

std::int64_t traysFor(std::int64_t pieces) {
    return (pieces + piecesPerTray - 1) / piecesPerTray;
}

/// Load, pack and check water, back to back before leaving; working hours do not bind a wedding morning.
LocalTime planDeparture(const Index& index, WorkTimes& times, BookingPlan& plan, std::int64_t pieces) {
    LocalTime end = times.drives.front().leave;
    auto put = [&](TimedStep step) {
        step.to = end;
        end = end - step.minutes;
        step.from = end;
        plan.steps.push_back(std::move(step));
    };
    put(counted(index, StepKind::load, RateKind::loadTray, traysFor(pieces)));
    put(counted(index, StepKind::pack, RateKind::packPiece, pieces));
    TimedStep water;
    water.kind = StepKind::checkWater;
    water.count = pieces;
    water.minutes = checkingWater;
    water.working = {lineOf(Step::result, "minutes", checkingWater.value, Unit::minutes,
                            Basis::commonPractice, "no source")};
    put(water);
    return end;
}

void planDrives(const WorkTimes& times, BookingPlan& plan) {
    for (const auto& d : times.drives) {
        TimedStep drive;
        drive.kind = StepKind::drive;
        drive.from = d.leave;
        drive.to = d.arrive;
        drive.minutes = d.arrive - d.leave;
        if (d.drop) drive.drop = d.drop->id;
        drive.working = {lineOf(Step::result, "travel", drive.minutes.value, Unit::minutes,
                                times.travelGuessed ? Basis::commonPractice : Basis::mine,
                                times.travelGuessed ? "no source" : "")};
        plan.steps.push_back(drive);
        TimedStep place = drive;
        place.kind = StepKind::place;
        place.working = d.placingWorking;
        place.from = d.arrive;
        place.to = d.arrive + d.placing;
        place.minutes = d.placing;
        plan.steps.push_back(place);
    }
}

} // namespace

int rankInMaking(const model::Design& d) {
    using model::PieceKind;
    if (d.kind == PieceKind::buttonhole || d.kind == PieceKind::corsage || d.kind == PieceKind::crown)
        return 2;
    return d.container ? 0 : 1;
}

Minutes roundedUp(double minutes) {
    return Minutes(static_cast<std::int64_t>(std::ceil(minutes - 1e-9)));
}

WorkTimes workTimes(const Index& index, const model::Booking& booking, const BookingPlan& plan) {
    const auto& s = index.season.theSettings();
    const auto& drops = Index::of(index.drops, booking.id);
    const model::Venue* venue = booking.venue ? index.season.venues.find(*booking.venue) : nullptr;
    WorkTimes t{{},
                venue && venue->travel ? *venue->travel : usualTravel,
                !(venue && venue->travel),
                looksGoodTo(booking),
                {static_cast<int>(s.workFrom), static_cast<int>(s.workTo), {}},
                {}};
    for (const auto* drop : drops)
        t.drives.push_back(driveTo(index, plan, drop, drop->time, t.travel, drops.size() == 1));
    if (drops.empty())
        t.drives.push_back(driveTo(index, plan, nullptr, booking.eventStart - beforeGuests, t.travel, true));
    for (const auto* line : Index::of(index.lines, booking.id))
        t.makeOrder.push_back(line);
    std::stable_sort(t.makeOrder.begin(), t.makeOrder.end(), [&](const auto* a, const auto* b) {
        return rankInMaking(*index.season.designs.find(a->design)) <
               rankInMaking(*index.season.designs.find(b->design));
    });
    for (const auto& b : plan.busy)
        t.calendar.occupy(b.span);
    return t;
}

void planMakeUp(const Index& index, const model::Booking& booking, const Designs& designs, WorkTimes& times,
                BookingPlan& plan) {
    std::int64_t pieces = 0;
    for (const auto& line : plan.lines)
        pieces += line.pieces.value;
    plan.driveStart = times.drives.front().leave;
    const LocalTime departure = planDeparture(index, times, plan, pieces);
    planDrives(times, plan);

    // The make-up ends with the working day before the drive, so that the night rests it cool.
    LocalTime end = LocalTime{plan.driveStart.day - 1, 0} + Minutes(index.season.theSettings().workTo);
    end = std::min(end, departure);
    if (booking.makeFrom) {
        Minutes work;
        for (const auto* line : times.makeOrder)
            work += makeStep(*line, *designs.at(line->design)).minutes;
        end = std::min(times.calendar.endFor(*booking.makeFrom, work), departure);
    }
    plan.makeUpEnd = end;
    TimedStep rest;
    rest.kind = StepKind::restCool;
    rest.from = end;
    rest.to = departure;
    rest.count = pieces;
    plan.steps.push_back(rest);
    for (auto line = times.makeOrder.rbegin(); line != times.makeOrder.rend(); ++line)
        end = placeBefore(times, plan, makeStep(**line, *designs.at((*line)->design)), end);
    plan.makeUpStart = end;
}

} // namespace withy::plan
