// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/runup/pin_faults.h"

#include "core/runup/ready_project.h"

#include <algorithm>
#include <set>

namespace withy::runup {

namespace {

class PinCheck {
public:
    PinCheck(const Project& project, const std::vector<Place>& places)
        : p_(project), places_(places), calendar_(project.resources) {}

    std::vector<PinFault> faults() {
        for (std::size_t t = 0; t < p_.tasks.size(); ++t) {
            if (!p_.tasks[t].pin) continue;
            const int task = static_cast<int>(t);
            window(task);
            hours(task);
        }
        twice();
        for (const auto& f : p_.follows) {
            if (!p_.tasks[f.before].pin || !p_.tasks[f.after].pin) continue;
            if (places_[f.after].start < places_[f.before].end + f.lag)
                faults_.push_back({PinTrouble::outOfOrder, f.after, f.before});
        }
        return faults_;
    }

private:
    [[nodiscard]] const Mode& mode(int t) const { return p_.tasks[t].modes[p_.tasks[t].pin->mode]; }

    void window(int t) {
        const auto& task = p_.tasks[t];
        if (places_[t].start < task.release || places_[t].end > task.deadline)
            faults_.push_back({PinTrouble::outsideWindow, t});
    }

    void hours(int t) {
        if (places_[t].start == places_[t].end) return;
        const bool split = p_.tasks[t].splittable;
        const auto place = calendar_.earliest(mode(t), split, places_[t].start);
        if (place && place->start == places_[t].start && place->end == places_[t].end) return;
        PinFault fault{PinTrouble::notInHours, t};
        for (std::size_t k = calendar_.stretchAt(places_[t].start); k < calendar_.stretches(); ++k) {
            if (calendar_.begin(k) >= places_[t].end) break;
            for (const auto& need : mode(t).needs)
                if (fault.resource < 0 && calendar_.there(k, need.resource) < need.units)
                    fault.resource = need.resource;
        }
        faults_.push_back(fault);
    }

    [[nodiscard]] bool uses(int t, int resource, const LoadProfile& load, std::size_t k) const {
        if (!p_.tasks[t].pin || places_[t].start >= load.end(k) || places_[t].end <= load.begin(k))
            return false;
        if (p_.tasks[t].splittable && !load.onCalendar(k, mode(t))) return false;
        const auto& needs = mode(t).needs;
        return std::any_of(needs.begin(), needs.end(), [&](const Need& n) { return n.resource == resource; });
    }

    void twice() {
        LoadProfile load = calendar_;
        for (std::size_t t = 0; t < p_.tasks.size(); ++t)
            if (p_.tasks[t].pin) load.take(mode(static_cast<int>(t)), p_.tasks[t].splittable, places_[t]);
        std::set<std::pair<int, int>> told;
        for (std::size_t k = 0; k < load.stretches(); ++k) {
            for (int r = 0; r < static_cast<int>(p_.resources.size()); ++r) {
                if (load.free(k, r) >= 0) continue;
                std::vector<int> pins;
                for (int t = 0; t < static_cast<int>(p_.tasks.size()); ++t)
                    if (uses(t, r, load, k)) pins.push_back(t);
                if (pins.size() < 2 || !told.insert({pins.back(), pins.front()}).second) continue;
                faults_.push_back({PinTrouble::takenTwice, pins.back(), pins.front(), r});
            }
        }
    }

    const Project& p_;
    const std::vector<Place>& places_;
    LoadProfile calendar_;
    std::vector<PinFault> faults_;
};

} // namespace

std::vector<PinFault> pinFaults(const Project& project, const std::vector<Place>& places) {
    return PinCheck(project, places).faults();
}

} // namespace withy::runup
