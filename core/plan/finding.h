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
