// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>

/// The stretch of days the strip shows, in days from its first.
namespace withy::ui {

struct StripSpan {
    double from = 0;
    double days = 1;

    friend bool operator==(const StripSpan&, const StripSpan&) = default;
};

inline constexpr double fewestDaysShown = 10;

/// Inside the whole, and no shorter than can be read.
inline StripSpan within(StripSpan span, int whole) {
    const double all = std::max(1, whole);
    span.days = std::clamp(span.days, std::min(fewestDaysShown, all), all);
    span.from = std::clamp(span.from, 0.0, all - span.days);
    return span;
}

/// `factor` above 1 shows fewer days; the day at `about` stays where it is.
inline StripSpan zoomed(const StripSpan& span, int whole, double about, double factor) {
    const double days = within({0, span.days / factor}, whole).days;
    const double share = span.days > 0 ? (about - span.from) / span.days : 0.5;
    return within({about - share * days, days}, whole);
}

inline StripSpan panned(const StripSpan& span, int whole, double by) {
    return within({span.from + by, span.days}, whole);
}

/// Moved by as little as brings the day into view.
inline StripSpan showing(const StripSpan& span, int whole, int day) {
    if (day < span.from) return within({static_cast<double>(day), span.days}, whole);
    if (day + 1 > span.from + span.days) return within({day + 1 - span.days, span.days}, whole);
    return span;
}

} // namespace withy::ui
