// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/garden/bloom_fit.h"
#include "core/garden/bloom_record.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace withy::garden {

namespace {

/// Day by warmth, in days after `anchor`; nothing when the days do not reach back to the start.
std::optional<double> thermalDay(const BloomMember& model, const BloomOutlook& outlook, Day anchor) {
    const Day start = anchor + model.startDay;
    const auto known = static_cast<std::size_t>(std::max(0, outlook.known));
    const HeatThresholds thresholds{model.base, std::nullopt};
    if (start < outlook.from || outlook.from + static_cast<int>(outlook.days.size()) <= start) return {};
    double heat = 0;
    int day = model.startDay;
    for (auto i = static_cast<std::size_t>(start - outlook.from); i < outlook.days.size(); ++i, ++day) {
        const auto& d = outlook.days[i];
        if (heatUnitsTrouble(d.minimum, d.maximum)) return {};
        const double today =
            expectedHeatUnits(d.minimum, d.maximum, i < known ? 0 : outlook.spread, thresholds);
        if (heat + today >= model.heatSum && today > 0) return day + (model.heatSum - heat) / today - 0.5;
        heat += today;
    }
    return day + (model.heatSum - heat) / std::max(0.1, model.rate) - 0.5;
}

std::optional<double> thermalDay(const BloomModel& model, const BloomOutlook& outlook, Day anchor) {
    double sum = 0;
    for (const auto& member : model.members) {
        const auto day = thermalDay(member, outlook, anchor);
        if (!day) return {};
        sum += member.weight * *day;
    }
    return sum;
}

/// Half of the range, the wider the farther off the mean date is and the less of the weather is known.
double halfRange(const BloomModel& model, const BloomOutlook& outlook, Day anchor, Day foretold) {
    const Day ahead = outlook.from + outlook.known; // first day that is not known
    if (model.halfRangeAhead.empty() || ahead > foretold) return model.halfRange;
    const double lead = (anchor + static_cast<int>(std::lround(model.meanDay))) - ahead;
    std::size_t i = 1;
    while (i + 1 < std::size(bloomLeads) && bloomLeads[i] < lead)
        ++i;
    const double part = (lead - bloomLeads[i - 1]) / (bloomLeads[i] - bloomLeads[i - 1]);
    const double nearer = model.halfRangeAhead[i - 1];
    return nearer + std::clamp(part, 0.0, 1.0) * (model.halfRangeAhead[i] - nearer);
}

} // namespace

Day anchorFor(const BloomModel& model, Day near) {
    const BloomAnchor anchor{model.anchorMonth, model.anchorDay};
    const int back = static_cast<int>(std::lround(model.meanDay)) - 183; // so that `near` is in the middle
    return anchorUpTo(anchor, near - back);
}

BloomForecast predictBloom(const BloomModel& model, const BloomOutlook& outlook, Day near) {
    const Day anchor = anchorFor(model, near);
    BloomForecast f;
    f.exactDay = model.meanDay;
    double half = std::max(model.halfRange, 0.0);
    if (model.warmthShare > 0) {
        if (const auto day = thermalDay(model, outlook, anchor)) {
            f.byWarmth = true;
            f.exactDay += model.warmthShare * (*day - model.meanDay);
            half = halfRange(model, outlook, anchor, anchor + static_cast<int>(std::lround(f.exactDay)));
        }
    }
    // Whole days: the ends are rounded, which lets in half a day more on either side.
    const double inner = std::max(0.0, half - 0.5);
    f.day = anchor + static_cast<int>(std::lround(f.exactDay));
    f.hopeful = anchor + static_cast<int>(std::lround(f.exactDay - inner));
    f.cautious = anchor + static_cast<int>(std::lround(f.exactDay + inner));
    return f;
}

} // namespace withy::garden
