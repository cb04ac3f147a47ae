// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/work_hours.h"

#include "ui/logic/run_up_words.h"

#include <algorithm>
#include <tuple>

namespace withy::ui {

WorkHours workHours(const model::Season& season, const plan::Plan& plan, Id<model::Booking> booking,
                    std::optional<Id<model::Design>> only) {
    const auto& own = *plan.bookings.at(booking);
    WorkHours out{own.makeUpStart, own.makeUpEnd, own.driveStart, std::nullopt};
    if (!plan.runUp || !isLaid(*plan.runUp, booking)) return out;
    using Span = std::optional<std::pair<LocalTime, LocalTime>>;
    Span made, ofDesign, drive;
    const auto widen = [](Span& span, const plan::RunUpStep& step) {
        if (!span) span = {step.from, step.to};
        span->first = std::min(span->first, step.from);
        span->second = std::max(span->second, step.to);
    };
    const auto* record = season.bookings.find(booking);
    for (const auto& step : plan.runUp->steps) {
        if (std::find(step.bookings.begin(), step.bookings.end(), booking) == step.bookings.end()) continue;
        if (step.key.step == plan::StepKind::make) {
            widen(made, step);
            const auto* line = step.key.line ? season.lines.find(*step.key.line) : nullptr;
            if (only && line && line->design == *only) widen(ofDesign, step);
        }
        // A later one fetches back what went out.
        const bool there = !record || step.from < record->eventEnd;
        if (step.key.step == plan::StepKind::drive && there && (!drive || step.from < drive->first))
            drive = {step.from, step.to};
    }
    if (ofDesign) made = ofDesign;
    if (made) std::tie(out.makeUpStart, out.makeUpEnd) = *made;
    if (drive) std::tie(out.driveStart, out.driveEnd) = *drive;
    return out;
}

} // namespace withy::ui
