// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cutting/exact_sums.h"

#include <algorithm>

namespace withy::cutting {

void ExactSums::take(const Part& part, std::size_t row) {
    const auto room = static_cast<std::int64_t>(best_.size()) - 1;
    reach_ = std::min(room, reach_ + part.length);
    std::uint8_t* taken = taken_.data() + row * best_.size();
    for (std::int64_t s = reach_; s >= part.length; --s) {
        const std::int64_t with = best_[s - part.length] + part.worth;
        if (with <= best_[s] || with < 0) continue; // below nought: from a sum not reached
        best_[s] = with;
        taken[s] = 1;
    }
    cells_ += std::max<std::int64_t>(reach_ - part.length + 1, 0);
}

void ExactSums::fill(const std::vector<std::int64_t>& lengths, const Counts& most, const Counts& worth,
                     std::int64_t room) {
    kinds_ = lengths.size();
    parts_.clear();
    for (std::size_t k = 0; k < kinds_; ++k) {
        if (worth[k] <= 0) continue;
        std::int64_t left = std::min(most[k], room / lengths[k]);
        for (std::int64_t copies = 1; left > 0; copies *= 2) {
            const auto n = std::min(copies, left);
            parts_.push_back({k, n, n * lengths[k], n * worth[k]});
            left -= n;
        }
    }
    best_.assign(static_cast<std::size_t>(room) + 1, unreached);
    best_[0] = 0;
    taken_.assign(parts_.size() * best_.size(), 0);
    reach_ = 0;
    cells_ = static_cast<std::int64_t>(best_.size());
    for (std::size_t row = 0; row < parts_.size(); ++row)
        take(parts_[row], row);
}

Counts ExactSums::countsAt(std::int64_t sum) const {
    Counts counts(kinds_, 0);
    for (std::size_t row = parts_.size(); row-- > 0;) {
        if (taken_[row * best_.size() + static_cast<std::size_t>(sum)] == 0) continue;
        counts[parts_[row].kind] += parts_[row].copies;
        sum -= parts_[row].length;
    }
    return counts;
}

std::int64_t ExactSums::cellsFor(const Counts& most, std::int64_t room) {
    std::int64_t parts = 0;
    for (const auto n : most) {
        for (std::int64_t left = n; left > 0; left /= 2)
            ++parts;
    }
    return parts * (room + 1);
}

} // namespace withy::cutting
