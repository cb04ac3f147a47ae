// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/finding.h"

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
    }
    return "";
}

} // namespace withy::plan
