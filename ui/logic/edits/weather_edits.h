// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/weather_csv.h"
#include "ui/logic/edits.h"

/// Weather read from a station's file or the clipboard, as one step.
namespace withy::ui::edits {

struct WeatherImport {
    Edit edit;
    int added = 0;
    int changed = 0; ///< days of that kind that were there with other figures
    int same = 0;
};

/// Days that are there already get the new figures; none is there twice. Empty when nothing would change.
WeatherImport importWeather(const Season& season, const std::vector<exchange::ReadDay>& days,
                            model::WeatherKind kind);

} // namespace withy::ui::edits
