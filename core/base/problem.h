// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace withy {

/// What is wrong with an edit or an import. ui/logic words each with its mend.
enum class ProblemCode {
    required,         ///< the field may not be blank
    notANumber,       ///< text where a number belongs
    notWhole,         ///< a fraction where a whole number belongs
    belowLeast,       ///< detail: the least allowed
    aboveMost,        ///< detail: the most allowed
    tooLong,          ///< detail: the most characters
    notADate,         ///< wanted YYYY-MM-DD, and a day that exists
    notATime,         ///< wanted YYYY-MM-DDTHH:MM
    notAWord,         ///< not one of the allowed words; detail: the words
    notAColour,       ///< wanted #rrggbb
    notYesNo,         ///< wanted yes or no
    notText,          ///< control characters, or not UTF-8
    unknownRecord,    ///< refers to a record that is not there; detail: its table
    ambiguousName,    ///< several records bear this name; detail: the table
    inUse,            ///< erased while others refer to it; detail: who
    duplicate,        ///< the same thing twice; detail: the other record
    endBeforeStart,   ///< detail: the start
    outOfOrder,       ///< first, peak, last not in this order; detail: the other field and value
    outsideSeason,    ///< detail: first and last day of the season
    skippedHour,      ///< the clocks go forward over this time
    repeatedHour,     ///< the clocks go back: this time happens twice
    badZone,          ///< not a time-zone rule
    badCurrency,      ///< not an ISO 4217 code
    lessThan,         ///< must not be less than another field; detail: that field and its value
    moreThan,         ///< must not be more than another field; detail: that field and its value
    holdWithoutEnd,   ///< held, but no day until when
    containerMissing, ///< stands in a container, but none is named
    sharesNotOne,     ///< shares of one group exceed 100 %; detail: their sum in percent
    noSettings,       ///< a season without its settings
    unknownColumn,    ///< CSV: no such column; detail: the columns there are
    missingColumn,    ///< CSV: a needed column is not there
    repeatedColumn,   ///< CSV: the same column twice
    raggedRow,        ///< CSV: more or fewer fields than the header; detail: wanted and found
    badQuote,         ///< CSV: a quote in the wrong place or not closed
    wrongSeparator,   ///< CSV: semicolons or tabs where commas belong
    emptyFile,        ///< CSV: not even a header
    badId,            ///< not a positive whole number
};

/// One complaint: record, field, value, and what the code needs for the mend.
struct Problem {
    ProblemCode code{};
    std::string table; ///< the record's table by name ("booking"); empty when it is about a whole file
    std::int64_t record = 0;
    std::string field; ///< the field's name ("event_start")
    std::string value; ///< what was given, as typed
    std::vector<std::string> details;
    int line = 0;   ///< CSV: 1 is the header; 0 when there is no line
    int column = 0; ///< CSV: 1 is the first; 0 when there is no column
};

using Problems = std::vector<Problem>;

} // namespace withy
