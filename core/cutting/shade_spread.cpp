// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cutting/shade_spread.h"

#include "core/base/range.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <optional>

namespace withy::cutting {

namespace {

std::vector<std::int64_t> sharedOut(std::int64_t pieces, const std::vector<double>& shares) {
    const double all = std::accumulate(shares.begin(), shares.end(), 0.0);
    std::vector<std::int64_t> counts;
    std::vector<double> remainder;
    for (const double share : shares) {
        const double exact = static_cast<double>(pieces) * share / all;
        counts.push_back(static_cast<std::int64_t>(std::floor(exact + 1e-9)));
        remainder.push_back(exact - static_cast<double>(counts.back()));
    }
    std::vector<std::size_t> order(shares.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(),
                     [&](auto a, auto b) { return remainder[a] > remainder[b] + 1e-9; });
    auto left = pieces - std::accumulate(counts.begin(), counts.end(), std::int64_t{0});
    for (std::size_t i = 0; left > 0; ++i, --left)
        ++counts[order[i]];
    return counts;
}

/// Fewest alike neighbours in a row of what is left, the piece before it being of shade `before`.
std::int64_t fewestAlike(const std::vector<std::int64_t>& left, std::int64_t all,
                         std::optional<std::size_t> before) {
    std::int64_t fewest = 0;
    for (std::size_t i = 0; i < left.size(); ++i) {
        const auto others = all - left[i];
        fewest = std::max(fewest, left[i] - others - (before == i ? 0 : 1));
    }
    return fewest;
}

class Row {
public:
    Row(std::vector<std::int64_t> counts, std::int64_t pieces, bool notTwoAlike)
        : counts_(std::move(counts))
        , left_(counts_)
        , pieces_(pieces)
        , notTwoAlike_(notTwoAlike)
        , shades_(std::count_if(counts_.begin(), counts_.end(), [](auto n) { return n > 0; })) {}

    ShadeSpread run() {
        ShadeSpread spread{counts_, {}, 0};
        for (std::int64_t place = 1; place <= pieces_; ++place) {
            const auto shade = next(place);
            if (before_ == shade) ++spread.alike;
            --left_[shade];
            before_ = shade;
            spread.shadeOf.push_back(shade);
        }
        return spread;
    }

private:
    std::size_t next(std::int64_t place) {
        const auto least = fewestAlike(left_, pieces_ - place + 1, before_);
        std::optional<std::size_t> best;
        for (std::size_t i = 0; i < left_.size(); ++i) {
            if (left_[i] == 0 || (notTwoAlike_ && !allows(i, place, least))) continue;
            if (!best || sooner(i, *best, place)) best = i;
        }
        return *best; // a shade that keeps to the fewest alike always exists
    }

    bool allows(std::size_t shade, std::int64_t place, std::int64_t least) {
        --left_[shade];
        const auto rest = fewestAlike(left_, pieces_ - place, shade);
        ++left_[shade];
        return rest + (before_ == shade ? 1 : 0) <= least;
    }

    /// Due: its even share is ahead of what it has by 1 / (2 m - 2); among the due, the earliest deadline.
    [[nodiscard]] bool sooner(std::size_t a, std::size_t b, std::int64_t place) const {
        const bool dueA = ahead(a, place) >= slack() - 1e-9, dueB = ahead(b, place) >= slack() - 1e-9;
        if (dueA != dueB) return dueA;
        if (!dueA) return ahead(a, place) > ahead(b, place) + 1e-9;
        return deadline(a, place) < deadline(b, place) - 1e-9;
    }

    [[nodiscard]] double slack() const {
        return shades_ > 1 ? 1 / (2 * static_cast<double>(shades_) - 2) : 0;
    }

    [[nodiscard]] double rate(std::size_t i) const {
        return static_cast<double>(counts_[i]) / static_cast<double>(pieces_);
    }

    [[nodiscard]] double ahead(std::size_t i, std::int64_t place) const {
        return rate(i) * static_cast<double>(place) - static_cast<double>(counts_[i] - left_[i]);
    }

    [[nodiscard]] double deadline(std::size_t i, std::int64_t place) const {
        return (1 - slack() - ahead(i, place)) / rate(i);
    }

    std::vector<std::int64_t> counts_;
    std::vector<std::int64_t> left_;
    std::int64_t pieces_;
    bool notTwoAlike_;
    std::int64_t shades_;
    std::optional<std::size_t> before_;
};

} // namespace

Result<ShadeSpread, Problem> spreadShades(std::int64_t pieces, const std::vector<double>& shares,
                                          bool notTwoAlike) {
    if (const auto p = outside("pieces", pieces, 0, mostInRow)) return *p;
    if (const auto p = outside("shades", static_cast<std::int64_t>(shares.size()), 1,
                               static_cast<std::int64_t>(mostShades)))
        return *p;
    double all = 0;
    for (const double share : shares) {
        if (const auto p = outsideReal("share", share, 0, 1e6)) return *p;
        all += share;
    }
    if (all <= 0) return problemAt(ProblemCode::belowLeast, "share", numberText(all), {"0"});
    return Row(sharedOut(pieces, shares), pieces, notTwoAlike).run();
}

} // namespace withy::cutting
