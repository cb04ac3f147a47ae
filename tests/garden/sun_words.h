// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/garden/sun.h"

#include <string>

namespace withy::garden::tests {

inline std::string word(SunStatus s) {
    return s == SunStatus::normal ? "normal" : s == SunStatus::allDay ? "all_day" : "all_night";
}

inline std::string word(TwilightStatus s) {
    if (s == TwilightStatus::normal) return "normal";
    return s == TwilightStatus::brightAllNight ? "bright_all_night" : "dark_all_day";
}

} // namespace withy::garden::tests
