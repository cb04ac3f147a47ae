// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/shed/shed_codes.h"

#include <iterator>

namespace withy::plan {

std::string_view shedFindingWord(FindingCode code) {
    static constexpr std::string_view words[] = {
        "ribbon length nought",  "ribbon runs out",         "kit runs short",         "return late",
        "tray too small",        "trays not measured",      "vehicle not measured",   "lift too heavy",
        "load without room",     "load over the plate",     "table sizes impossible", "too many covers",
        "tables without pieces", "piece too big for table", "piece tight on table",   "sight in the way",
        "too many for the load", "ribbon not cut",
    };
    const auto place = static_cast<int>(code) - static_cast<int>(ShedCode::ribbonLengthNought);
    return place >= 0 && place < static_cast<int>(std::size(words)) ? words[place] : std::string_view();
}

} // namespace withy::plan
