// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/edit.h"

#include <string>
#include <vector>

namespace withy::plan {

/// What the planner noticed. ui/logic words each with its reason and what would mend it.
enum class FindingCode {
    slotWithoutPlant,    ///< subjects: design, slot
    designWithoutSlots,  ///< subjects: design
    bookingWithoutLines, ///< subjects: booking
    stemsTooShort,     ///< subjects: plant, design; numbers: missing mm, depth of a jar that would do (or -1)
    neckOverfull,      ///< subjects: design; numbers: percent of the neck
    neckLoose,         ///< subjects: design; numbers: percent of the neck
    sizesImpossible,   ///< subjects: design, field
    ribbonWithoutTail, ///< subjects: design
    ribbonShort,       ///< subjects: ribbon; numbers: missing mm
    containerShort,    ///< subjects: container; numbers: needed, on hand
    containerNotCounted, ///< subjects: container
    sundryShort,         ///< subjects: sundry; numbers: needed, on hand
    bucketsShort,        ///< numbers: needed, on hand
    noCutWindow,         ///< subjects: plant; numbers: short by (days at 20 C or hours), 0 days 1 hours
    openingLate,         ///< subjects: plant
    cutInHeat,           ///< numbers: celsius, limit
    factsMissing,        ///< subjects: plant, fact, fact ...: defaults were used
    noDrop,              ///< the event's start was taken
    noVenueTravel,       ///< travel time was guessed; numbers: minutes
    noTemperatures,      ///< neither weather nor normals for the days of cutting
    dayTooLong,          ///< numbers: minutes missing
    unpricedLines,       ///< numbers: how many
    openQuestions,       ///< numbers: how many
    holdEnds,            ///< subjects: day
    // The garden (forecast_plan.h). Days are written YYYY-MM-DD.
    walkWithoutPatch,        ///< subjects: day; numbers: the id that stands for no patch
    walkBlank,               ///< subjects: patch, day: nothing was counted
    walkNegative,            ///< subjects: patch, day: passed over
    walkOutOfSeason,         ///< subjects: patch, day: used all the same
    walkOutsideFlowering,    ///< subjects: patch, day: nothing is expected anywhere near
    walkFarAboveExpected,    ///< subjects: patch, day; numbers: counted, expected
    walkWeekTooSmall,        ///< subjects: patch, day: fewer within the week than within three days
    walkNotUsed,             ///< subjects: patch, day: the patch has no forecast to correct
    weatherMinAboveMax,      ///< subjects: first such day; numbers: days
    weatherImpossible,       ///< subjects: first such day; numbers: days no thermometer shows
    weatherMissing,          ///< subjects: first such day; numbers: days, filled from the normals
    weatherDoubled,          ///< subjects: first such day; numbers: days
    weatherLooksFahrenheit,  ///< the Celsius figures read like Fahrenheit
    noWeather,               ///< the calendar stands
    noNormals,               ///< the calendar stands; numbers: months that are there
    normalsImpossible,       ///< a month's minimum over its maximum, or no degrees Celsius
    normalsOtherHemisphere,  ///< warmest when the place's half of the earth has its winter
    patchWithoutDates,       ///< subjects: patch: no first, peak or last cut
    patchDatesOutOfOrder,    ///< subjects: patch, first, peak, last
    patchDatesOutOfSeason,   ///< subjects: patch, first, last
    patchWithoutStems,       ///< subjects: patch: dates, but no expected stems
    patchForecastImpossible, ///< subjects: patch; numbers: stems, days from first to last
    heatFactsMissing,        ///< subjects: plant, fact ...: defaults were used
    heatFactsImpossible,     ///< subjects: plant: the ceiling is not above the base
    bloomYearLeftOut,        ///< subjects: plant, first cut: no temperatures for it, or a second date
    bloomYearsTooFew,        ///< subjects: plant; numbers: usable years, fewest
    regrowthTooLate,         ///< subjects: patch, day of the hard cut
    hardCutNotUsed,          ///< subjects: patch, day: the plant does not come again, or no days are known
    // The run-up (run_up_plan.h). A step is named by its word in model::words.h.
    busyCoversDays,          ///< subjects: first day, last day: the grower has no free hour on any of them
    helperWithoutHours,      ///< subjects: helper
    dropBeforeVenueOpens,    ///< subjects: drop's place, venue; numbers: the minute it opens
    collectAfterVenueCloses, ///< subjects: drop's place, venue; numbers: the minute by which all must be out
    stepLongerThanGap,       ///< subjects: step, booking; numbers: minutes needed, longest stretch there is
    nobodyForStep,           ///< subjects: step, booking: whoever can is never there
    dropsAtOneTime,          ///< subjects: drop's place, other place; numbers: minutes one of them is out by
    workTooMuch,             ///< subjects: day; numbers: minutes
    pinInBusyHours,          ///< subjects: step, time
    pinsAtOneTime,           ///< subjects: step, time, other step
    pinOutOfOrder,           ///< subjects: step, time, the step it should follow
    pinOutsideWindow,        ///< subjects: step, time
    clocksChange,            ///< subjects: day; numbers: minutes the night is longer (shorter: negative)
    workInTheNight,          ///< subjects: drop's place, time
    coolStoreFull,           ///< subjects: day; numbers: buckets, room
};

enum class Severity { note, warning, fault };

struct Finding {
    FindingCode code{};
    Severity severity = Severity::note;
    model::Ref place; ///< where a click leads
    std::vector<std::string> subjects;
    std::vector<double> numbers;
};

/// Stable word of a code for JSON and for accepting findings: "stems too short".
std::string_view findingWord(FindingCode code);

} // namespace withy::plan
