// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/garden/garden_day.h"

#include <vector>

namespace withy::garden {

/// The best hours to cut in a window: cool ones after dawn or towards evening, the latest first,
/// as the freshest stems are those cut last. That flowers are best cut in the cool of the morning
/// or evening is advice of the trade (common practice, no source).
///
/// Dawn: starting between civil dawn and three hours after sunrise, as early as can be. Evening:
/// starting at most three hours before sunset, or earlier when the work takes longer, ending by
/// sunset or, when it is too warm until then, by civil dusk, as late as can be. (Three hours: own
/// choice.) On days that have neither, in polar day and night, the coolest hour of the day is
/// offered. Only if the whole window holds no such hour under the limit, the coolest others there
/// are: in the light, else in the dark, and over the limit only when nothing is under it.
/// Starts lie on the quarter hours of the clock, or on the first minute of the window.
enum class GoodHourWhy { dawn, evening, coolestThereIs };

enum class HourLight {
    daylight,
    twilight,   ///< light enough to cut by
    polarDay,   ///< the sun does not set
    dark,       ///< before civil dawn or after civil dusk: by lamp
    polarNight, ///< no civil twilight all day: by lamp
};

enum class GoodHoursTrouble {
    notFinite,   ///< the limit, or an hour of a day, is not a number
    badTime,     ///< not a time between 1900 and 2200
    outOfOrder,  ///< the latest before the earliest
    tooWide,     ///< a window of more than 366 days
    badWork,     ///< minutes of work not from 0 to 1440
    badDay,      ///< a day's warmth is unsound; see heatTrouble()
    dayNotGiven, ///< nothing is known of any day in the window
};

struct CutHours {
    LocalTime earliest;
    LocalTime latest;            ///< all cutting should be done by then
    std::vector<GardenDay> days; ///< in any order; days not given are not proposed
    double heatLimit = 0;        ///< C; a temperature equal to it is still good
    Minutes work;                ///< time the cutting takes
};

struct GoodHour {
    LocalTime start;
    GoodHourWhy why{};
    double celsius = 0;     ///< the warmest during the work
    bool overLimit = false; ///< only when no hour of the window is under the limit
    bool runsPast = false;  ///< the window is shorter than the work: it ends after the latest
    HourLight light{};      ///< at the start
};

/// Best first, at most `most`; at least one.
Result<std::vector<GoodHour>, GoodHoursTrouble> goodHours(const CutHours& in, std::size_t most = 6);

} // namespace withy::garden
