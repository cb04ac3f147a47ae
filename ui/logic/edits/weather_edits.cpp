// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/edits/weather_edits.h"

#include <map>
#include <vector>

namespace withy::ui::edits {

WeatherImport importWeather(const Season& season, const std::vector<exchange::ReadDay>& days,
                            model::WeatherKind kind) {
    std::map<Day, const model::Weather*> there;
    for (const auto& w : season.weather)
        if (w.kind == kind) there[w.date] = &w;
    WeatherImport out;
    std::vector<model::Weather> rows;
    auto next = season.weather.nextId();
    for (const auto& day : days) {
        const auto found = there.find(day.day);
        model::Weather w;
        w.date = day.day;
        w.minCelsius = day.minimum;
        w.maxCelsius = day.maximum;
        w.kind = kind;
        if (found == there.end()) {
            w.id = next;
            ++next.value;
            ++out.added;
        } else if (found->second->minCelsius == w.minCelsius && found->second->maxCelsius == w.maxCelsius) {
            ++out.same;
            continue;
        } else {
            w.id = found->second->id;
            ++out.changed;
        }
        rows.push_back(w);
    }
    out.edit = Edit("weather.import", {std::to_string(rows.size())});
    for (const auto& row : rows)
        out.edit.put(row);
    return out;
}

} // namespace withy::ui::edits
