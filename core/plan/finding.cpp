// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/finding.h"

#include "core/plan/shed/shed_codes.h"
#include "core/plan/size_faults.h"

namespace withy::plan {

std::string_view findingWord(FindingCode code) {
    switch (code) {
    case FindingCode::slotWithoutPlant:
        return "slot without plant";
    case FindingCode::designWithoutSlots:
        return "design without slots";
    case FindingCode::bookingWithoutLines:
        return "booking without pieces";
    case FindingCode::stemsTooShort:
        return "stems too short";
    case FindingCode::neckOverfull:
        return "neck overfull";
    case FindingCode::neckLoose:
        return "neck loose";
    case FindingCode::sizesImpossible:
        return "sizes impossible";
    case FindingCode::ribbonWithoutTail:
        return "ribbon without tail";
    case FindingCode::ribbonShort:
        return "ribbon short";
    case FindingCode::containerShort:
        return "container short";
    case FindingCode::containerNotCounted:
        return "container not counted";
    case FindingCode::sundryShort:
        return "sundry short";
    case FindingCode::bucketsShort:
        return "buckets short";
    case FindingCode::noCutWindow:
        return "no cut window";
    case FindingCode::openingLate:
        return "opens too late";
    case FindingCode::cutInHeat:
        return "cut in heat";
    case FindingCode::factsMissing:
        return "facts missing";
    case FindingCode::noDrop:
        return "no drop";
    case FindingCode::noVenueTravel:
        return "travel not known";
    case FindingCode::noTemperatures:
        return "temperatures not known";
    case FindingCode::dayTooLong:
        return "day too long";
    case FindingCode::unpricedLines:
        return "pieces without price";
    case FindingCode::openQuestions:
        return "open questions";
    case FindingCode::holdEnds:
        return "hold ends";
    case FindingCode::walkWithoutPatch:
        return "walk without patch";
    case FindingCode::walkBlank:
        return "walk blank";
    case FindingCode::walkNegative:
        return "walk below nought";
    case FindingCode::walkOutOfSeason:
        return "walk out of season";
    case FindingCode::walkOutsideFlowering:
        return "walk outside flowering";
    case FindingCode::walkFarAboveExpected:
        return "walk far above expected";
    case FindingCode::walkWeekTooSmall:
        return "walk week too small";
    case FindingCode::walkNotUsed:
        return "walk not used";
    case FindingCode::weatherMinAboveMax:
        return "weather minimum above maximum";
    case FindingCode::weatherImpossible:
        return "weather impossible";
    case FindingCode::weatherMissing:
        return "weather missing";
    case FindingCode::weatherDoubled:
        return "weather doubled";
    case FindingCode::weatherLooksFahrenheit:
        return "weather looks Fahrenheit";
    case FindingCode::noWeather:
        return "no weather";
    case FindingCode::noNormals:
        return "no normals";
    case FindingCode::normalsImpossible:
        return "normals impossible";
    case FindingCode::normalsOtherHemisphere:
        return "normals of the other hemisphere";
    case FindingCode::patchWithoutDates:
        return "patch without dates";
    case FindingCode::patchDatesOutOfOrder:
        return "patch dates out of order";
    case FindingCode::patchDatesOutOfSeason:
        return "patch dates out of season";
    case FindingCode::patchWithoutStems:
        return "patch without stems";
    case FindingCode::patchForecastImpossible:
        return "patch forecast impossible";
    case FindingCode::heatFactsMissing:
        return "heat facts missing";
    case FindingCode::heatFactsImpossible:
        return "heat facts impossible";
    case FindingCode::bloomYearLeftOut:
        return "bloom year left out";
    case FindingCode::bloomYearsTooFew:
        return "bloom years too few";
    case FindingCode::regrowthTooLate:
        return "regrowth too late";
    case FindingCode::hardCutNotUsed:
        return "hard cut not used";
    case FindingCode::busyCoversDays:
        return "busy hours cover everything";
    case FindingCode::helperWithoutHours:
        return "helper without hours";
    case FindingCode::dropBeforeVenueOpens:
        return "drop before venue opens";
    case FindingCode::collectAfterVenueCloses:
        return "collected after venue closes";
    case FindingCode::stepLongerThanGap:
        return "step longer than any gap";
    case FindingCode::nobodyForStep:
        return "nobody for step";
    case FindingCode::dropsAtOneTime:
        return "drops at one time";
    case FindingCode::workTooMuch:
        return "work too much";
    case FindingCode::pinInBusyHours:
        return "pin in busy hours";
    case FindingCode::pinsAtOneTime:
        return "pins at one time";
    case FindingCode::pinOutOfOrder:
        return "pin out of order";
    case FindingCode::pinOutsideWindow:
        return "pin outside window";
    case FindingCode::clocksChange:
        return "clocks change";
    case FindingCode::workInTheNight:
        return "work in the night";
    case FindingCode::coolStoreFull:
        return "cool store full";
    }
    const auto word = shedFindingWord(code);
    return word.empty() ? sizeFindingWord(code) : word;
}

} // namespace withy::plan
