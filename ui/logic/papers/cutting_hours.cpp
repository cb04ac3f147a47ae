// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/papers/cutting_hours.h"

#include "ui/logic/format.h"
#include "ui/logic/measures.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace withy::ui {

namespace {

constexpr int hoursShown = 7;
constexpr int lastFirstHour = 24 - hoursShown;

struct CuttingHoursSay {
    Q_DECLARE_TR_FUNCTIONS(CuttingList)
};

/// The round's hour, with the sunrise before it or two hours of the falling warmth.
int firstHour(const plan::PlaceDay& day, std::optional<int> from) {
    const auto& sunrise = day.garden.heat.sunrise;
    const int dawn = sunrise ? static_cast<int>(std::floor(*sunrise)) : 6;
    int first = dawn;
    if (from)
        first = *from >= 12 * 60 ? *from / 60 - 2 : std::min(*from / 60, std::max(dawn, *from / 60 - 2));
    return std::clamp(first, 0, lastFirstHour);
}

std::optional<double> warmth(const plan::PlaceDay& day, double hour) {
    if (!day.basis) return std::nullopt;
    const auto t = garden::temperatureAt(day.garden.heat, std::clamp(hour, 0.0, 24.0));
    return t.ok() ? std::optional(*t) : std::nullopt;
}

QString clockAt(double hour) {
    return clockOf(static_cast<int>(std::clamp<long>(std::lround(hour * 60), 0, 1440)));
}

void noteSun(const plan::PlaceDay& day, int first, papers::HourStrip& strip) {
    const auto within = [&](const std::optional<double>& hour) {
        return hour && *hour >= first && *hour < first + hoursShown;
    };
    const auto& heat = day.garden.heat;
    if (within(heat.sunrise)) {
        strip.openNote = utf8(CuttingHoursSay::tr("sun up %1").arg(clockAt(*heat.sunrise)));
        strip.noteAt = *heat.sunrise - first;
    } else if (within(heat.sunset)) {
        strip.openNote = utf8(CuttingHoursSay::tr("sun down %1").arg(clockAt(*heat.sunset)));
        strip.noteAt = *heat.sunset - first;
    }
}

/// What the hatched hours say: from when, or until when, it is too warm.
void noteWarmth(int first, papers::HourStrip& strip) {
    const auto closed = [](const auto& cell) { return cell.closed; };
    const auto& cells = strip.cells;
    if (std::none_of(cells.begin(), cells.end(), closed)) return;
    if (std::all_of(cells.begin(), cells.end(), closed))
        strip.closedNote = utf8(CuttingHoursSay::tr("too warm all these hours: cut the coolest first"));
    else if (!cells.front().closed)
        strip.closedNote = utf8(CuttingHoursSay::tr("too warm to cut from here"));
    else {
        const auto open = std::find_if_not(cells.begin(), cells.end(), closed);
        const int hour = first + static_cast<int>(open - cells.begin());
        strip.closedNote = utf8(CuttingHoursSay::tr("too warm until %1").arg(clockOf(hour * 60)));
    }
}

} // namespace

papers::HourStrip cuttingHours(const plan::PlaceDay& day, double limit, std::optional<int> from,
                               Units units) {
    papers::HourStrip strip;
    const int first = firstHour(day, from);
    for (int hour = first; hour < first + hoursShown; ++hour) {
        const auto now = warmth(day, hour);
        const auto next = warmth(day, hour + 1);
        const bool closed = now && next && std::max(*now, *next) > limit;
        const QString value = now ? temperatureWords(*now, units, 0) : QString();
        strip.cells.push_back(
            {utf8(QStringLiteral("%1").arg(hour, 2, 10, QLatin1Char('0'))), utf8(value), closed});
    }
    noteSun(day, first, strip);
    noteWarmth(first, strip);
    return strip;
}

QString tooWarmFrom(const plan::PlaceDay& day, double limit, std::optional<int> from) {
    if (!day.basis) return {};
    const auto over = garden::firstHourAbove(day.garden.heat, limit, from.value_or(0) / 60.0);
    return over.ok() && *over ? clockAt(**over) : QString();
}

} // namespace withy::ui
