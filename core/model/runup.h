// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/bookings.h"

namespace withy::model {

struct Helper {
    Id<Helper> id;
    std::string name;
    Speed speed = Speed::learning;
    std::optional<Money> rate; ///< per hour
    bool canCut = false;
    bool canCondition = true;
    bool canMake = false;
    bool canDrive = false;
    std::string note;
};

/// When a helper is there.
struct HelperHours {
    Id<HelperHours> id;
    Id<Helper> helper;
    LocalTime from;
    LocalTime to;
};

/// When the grower (or a helper) cannot work.
struct BusyHours {
    Id<BusyHours> id;
    std::optional<Id<Helper>> helper; ///< blank: the grower
    LocalTime from;
    LocalTime to;
    std::string label;
    Repeat repeats = Repeat::never;
    std::optional<Day> repeatsUntil;
};

/// One outing to cut.
struct Round {
    Id<Round> id;
    LocalTime from;
    LocalTime to;
    std::string note;
};

struct RoundBooking {
    Id<RoundBooking> id;
    Id<Round> round;
    Id<Booking> booking;
};

/// What the grower says of a step of the run-up: where it stays, whose it is, that it is done. Steps are
/// worked out anew each time and are known by what they are.
struct StepMark {
    Id<StepMark> id;
    StepKind step = StepKind::make;
    std::optional<Id<Booking>> booking; ///< blank: of all bookings together, as a round is
    std::optional<Id<Line>> line;
    std::optional<Id<Drop>> drop;
    std::optional<Day> day;          ///< of a round, or of what is done for all bookings
    std::int64_t number = 0;         ///< tells rounds of one day apart: 0 is the first
    std::optional<LocalTime> pinned; ///< begins then, whatever else moves
    bool byHelper = false;           ///< `helper` does it; without one, whoever can
    std::optional<Id<Helper>> helper;
    std::optional<LocalTime> done;
    std::optional<Minutes> minutes; ///< it really took
    std::string note;
};

/// What was really cut in one patch on a round.
struct Tally {
    Id<Tally> id;
    Id<Round> round;
    Id<Patch> patch;
    std::optional<Stems> cut;
    std::optional<Stems> thrownAway;
};

struct Made {
    Id<Made> id;
    Id<Line> line;
    Pieces pieces;
    std::optional<Minutes> minutes;
    std::string byWhom;
};

struct Return {
    Id<Return> id;
    Id<Booking> booking;
    Id<Container> container;
    std::int64_t out = 0;
    std::optional<std::int64_t> back;
    std::optional<std::int64_t> broken;
};

struct JobNote {
    Id<JobNote> id;
    Id<Booking> booking;
    std::optional<double> hoursCutting;
    std::optional<double> hoursConditioning;
    std::optional<double> hoursMaking;
    std::optional<double> hoursOnTheRoad;
    std::string drooped;
    std::string nextTime;
};

struct JobNotePlant {
    Id<JobNotePlant> id;
    Id<JobNote> note;
    Id<Plant> plant;
    std::optional<Stems> used;
    std::optional<Stems> left;
};

} // namespace withy::model
