// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/runup/load_profile.h"

#include <algorithm>

namespace withy::runup {

namespace {

int unitsAt(const Resource& r, Time t) {
    int units = r.units;
    for (const auto& c : r.changes) {
        if (c.at > t) break;
        units = c.units;
    }
    return units;
}

} // namespace

LoadProfile::LoadProfile(const std::vector<Resource>& resources) : resources_(resources.size()) {
    at_.push_back(always);
    for (const auto& r : resources)
        for (const auto& c : r.changes)
            at_.push_back(c.at);
    std::sort(at_.begin(), at_.end());
    at_.erase(std::unique(at_.begin(), at_.end()), at_.end());
    for (std::size_t k = 0; k < at_.size(); ++k) {
        calendar_.push_back(k);
        for (const auto& r : resources)
            there_.push_back(unitsAt(r, at_[k]));
    }
    free_ = there_;
}

void LoadProfile::reset(const LoadProfile& other) {
    resources_ = other.resources_;
    at_.assign(other.at_.begin(), other.at_.end());
    calendar_.assign(other.calendar_.begin(), other.calendar_.end());
    free_.assign(other.free_.begin(), other.free_.end());
    if (there_.size() != other.there_.size() || there_ != other.there_) there_ = other.there_;
}

std::size_t LoadProfile::stretchAt(Time t) const {
    return static_cast<std::size_t>(std::upper_bound(at_.begin(), at_.end(), t) - at_.begin()) - 1;
}

bool LoadProfile::fits(std::size_t k, const Mode& mode) const {
    const int* row = free_.data() + k * resources_;
    for (const auto& need : mode.needs)
        if (row[need.resource] < need.units) return false;
    return true;
}

bool LoadProfile::onCalendar(std::size_t k, const Mode& mode) const {
    const int* row = there_.data() + calendar_[k] * resources_;
    for (const auto& need : mode.needs)
        if (row[need.resource] < need.units) return false;
    return true;
}

std::optional<Place> LoadProfile::earliest(const Mode& mode, bool splittable, Time from) const {
    if (mode.duration == 0) return Place{from, from};
    Time now = from;
    Time left = mode.duration;
    std::optional<Time> start;
    for (std::size_t k = stretchAt(from); k < at_.size(); ++k) {
        const Time to = end(k);
        if (fits(k, mode)) {
            if (!start) start = now;
            left -= to - now;
            if (left <= 0) return Place{*start, to + left};
        } else if (start && !(splittable && !onCalendar(k, mode))) {
            start.reset();
            left = mode.duration;
        }
        now = to;
    }
    return std::nullopt;
}

Time LoadProfile::endOnCalendar(const Mode& mode, bool splittable, Time start) const {
    if (!splittable || mode.duration == 0) return start + mode.duration;
    Time now = start;
    Time left = mode.duration;
    for (std::size_t k = stretchAt(start); k < at_.size(); ++k) {
        if (onCalendar(k, mode)) {
            left -= end(k) - now;
            if (left <= 0) return end(k) + left;
        }
        now = end(k);
    }
    return start + mode.duration;
}

std::size_t LoadProfile::splitAt(Time t) {
    const std::size_t k = stretchAt(t);
    if (at_[k] == t) return k;
    const auto place = static_cast<std::ptrdiff_t>(k + 1);
    at_.insert(at_.begin() + place, t);
    calendar_.insert(calendar_.begin() + place, calendar_[k]);
    const auto row = static_cast<std::ptrdiff_t>((k + 1) * resources_);
    free_.insert(free_.begin() + row, resources_, 0);
    std::copy_n(free_.begin() + row - static_cast<std::ptrdiff_t>(resources_), resources_,
                free_.begin() + row);
    return k + 1;
}

void LoadProfile::take(const Mode& mode, bool splittable, Place place, bool force) {
    if (place.start == place.end || mode.needs.empty()) return;
    const std::size_t first = splitAt(place.start);
    const std::size_t last = splitAt(place.end);
    for (std::size_t k = first; k < last; ++k) {
        if (splittable && !onCalendar(k, mode)) continue;
        int* row = free_.data() + k * resources_;
        for (const auto& need : mode.needs) {
            row[need.resource] -= need.units;
            if (force) row[need.resource] = std::max(0, row[need.resource]);
        }
    }
}

} // namespace withy::runup
