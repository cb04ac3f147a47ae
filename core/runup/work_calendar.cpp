// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/runup/work_calendar.h"

#include "core/runup/time_spans.h"

#include <algorithm>
#include <cassert>

namespace withy::runup {

namespace {

constexpr int furthestDays = 60;

} // namespace

WorkCalendar::WorkCalendar(int workFrom, int workTo, std::vector<TimeSpan> busy)
    : workFrom_(workFrom), workTo_(workTo), busy_(joined(std::move(busy))) {
    assert(0 <= workFrom && workFrom < workTo && workTo <= 1440);
}

void WorkCalendar::occupy(TimeSpan span) {
    busy_.push_back(span);
    busy_ = joined(std::move(busy_));
}

std::vector<TimeSpan> WorkCalendar::freeOn(Day day) const {
    LocalTime at{day, workFrom_};
    const LocalTime end = LocalTime{day, 0} + Minutes(workTo_);
    std::vector<TimeSpan> free;
    for (const auto& b : busy_) {
        if (b.to <= at) continue;
        if (end <= b.from) break;
        if (at < b.from) free.push_back({at, b.from});
        at = b.to;
    }
    if (at < end) free.push_back({at, end});
    return free;
}

LocalTime WorkCalendar::startFor(LocalTime end, Minutes work) const {
    if (work.value <= 0) return end;
    Minutes left = work;
    for (int back = 0; back <= furthestDays; ++back) {
        auto free = freeOn(end.day - back);
        for (auto span = free.rbegin(); span != free.rend(); ++span) {
            const LocalTime to = std::min(span->to, end);
            if (to <= span->from) continue;
            const Minutes here = to - span->from;
            if (left <= here) return to - left;
            left -= here;
        }
    }
    return LocalTime{end.day - furthestDays, workFrom_};
}

LocalTime WorkCalendar::endFor(LocalTime start, Minutes work) const {
    if (work.value <= 0) return start;
    Minutes left = work;
    for (int ahead = 0; ahead <= furthestDays; ++ahead) {
        for (const auto& span : freeOn(start.day + ahead)) {
            const LocalTime from = std::max(span.from, start);
            if (span.to <= from) continue;
            const Minutes here = span.to - from;
            if (left <= here) return from + left;
            left -= here;
        }
    }
    return LocalTime{start.day + furthestDays, workTo_ == 1440 ? 1439 : workTo_};
}

} // namespace withy::runup
