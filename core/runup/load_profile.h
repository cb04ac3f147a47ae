// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/runup/project.h"

#include <cstddef>
#include <vector>

namespace withy::runup {

struct Place {
    Time start = 0;
    Time end = 0;
};

/// What is there and what is still free of every resource, stretch by stretch through all of time.
class LoadProfile {
public:
    LoadProfile() = default;
    explicit LoadProfile(const std::vector<Resource>& resources);

    /// The earliest place for `mode` from `from` on that other work leaves free. Nothing: there is none.
    /// A splittable task pauses where the calendar alone has too little for it. No place of an earlier
    /// start ends later, so the earliest start is also the earliest end.
    [[nodiscard]] std::optional<Place> earliest(const Mode& mode, bool splittable, Time from) const;

    /// Takes what the task uses in its place. `force`: more than there is may be taken, down to nought
    /// free (what is pinned by hand).
    void take(const Mode& mode, bool splittable, Place place, bool force = false);

    /// The end of a task put at `start` as far as the calendars go, whatever other work is there; a task
    /// that the calendars do not allow there is taken as if they did.
    [[nodiscard]] Time endOnCalendar(const Mode& mode, bool splittable, Time start) const;

    /// Copies `other` without giving up memory.
    void reset(const LoadProfile& other);

    [[nodiscard]] std::size_t resources() const { return resources_; }

    [[nodiscard]] std::size_t stretches() const { return at_.size(); }

    [[nodiscard]] Time begin(std::size_t k) const { return at_[k]; }

    [[nodiscard]] Time end(std::size_t k) const { return k + 1 < at_.size() ? at_[k + 1] : never; }

    [[nodiscard]] int free(std::size_t k, int r) const { return free_[k * resources_ + r]; }

    [[nodiscard]] int there(std::size_t k, int r) const { return there_[calendar_[k] * resources_ + r]; }

    [[nodiscard]] std::size_t stretchAt(Time t) const;

    /// Whether the calendars alone have what `mode` needs in stretch k.
    [[nodiscard]] bool onCalendar(std::size_t k, const Mode& mode) const;

private:
    [[nodiscard]] bool fits(std::size_t k, const Mode& mode) const;
    std::size_t splitAt(Time t);

    std::size_t resources_ = 0;
    std::vector<Time> at_; ///< begin of each stretch; the first is `always`
    std::vector<std::size_t> calendar_;
    std::vector<int> free_;  ///< by stretch and resource
    std::vector<int> there_; ///< by calendar stretch and resource
};

} // namespace withy::runup
