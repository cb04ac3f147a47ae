// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/garden/cut_timeline.h"

#include <algorithm>
#include <cmath>

namespace withy::garden {

namespace {

double rate(const CutTimeline& t, double celsius) {
    return std::pow(t.q10, (celsius - lifeCelsius) / 10);
}

double conditioningOutsideBucket(const CutTimeline& t) {
    return std::max(0.0, t.conditioning.hours - t.bucket.hours);
}

} // namespace

std::vector<Phase> phasesBefore(const CutTimeline& t, double hours) {
    const double bucket = std::min(hours, t.bucket.hours);
    const double conditioning = std::min(hours - bucket, conditioningOutsideBucket(t));
    return {{bucket, t.bucket.celsius},
            {conditioning, t.conditioning.celsius},
            {hours - bucket - conditioning, t.storeCelsius}};
}

double agedHours(const CutTimeline& t, const std::vector<Phase>& phases) {
    double aged = 0;
    for (const Phase& phase : phases)
        aged += phase.hours * rate(t, phase.celsius);
    return aged;
}

double agedAfter(const CutTimeline& t, double hours) {
    double aged = 0;
    double left = hours;
    for (const Phase& phase : t.afterMakeUp) {
        const double spent = std::min(left, phase.hours);
        aged += spent * rate(t, phase.celsius);
        left -= spent;
    }
    return aged;
}

double hoursAheadFor(const CutTimeline& t, double aged) {
    double left = std::max(0.0, aged);
    double hours = 0;
    for (const Phase& phase : {t.bucket, Phase{conditioningOutsideBucket(t), t.conditioning.celsius}}) {
        const double speed = rate(t, phase.celsius);
        const double spent = std::min(phase.hours, left / speed);
        hours += spent;
        left = std::max(0.0, left - spent * speed);
        if (spent < phase.hours) return hours;
    }
    return hours + left / rate(t, t.storeCelsius);
}

} // namespace withy::garden
