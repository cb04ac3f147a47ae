// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/designs/colour_balance.h"

#include "core/base/colour_difference.h"
#include "core/base/range.h"
#include "core/base/working_lines.h"
#include "core/designs/solids.h"

#include <algorithm>
#include <cmath>

namespace withy::designs {

namespace {

constexpr std::int64_t mostShown = 10'000'000;
constexpr double largestShown = 100'000;

std::optional<Problem> checkBalance(const std::vector<ShownThing>& things,
                                    const std::vector<ColourWish>& wishes, double reach) {
    for (const auto& thing : things) {
        if (auto p = outside("count", thing.count, 0, mostShown)) return p;
        if (auto p = outsideReal("across", thing.across.value_or(0), 0, largestShown)) return p;
        if (auto p = outsideReal("along", thing.along.value_or(0), 0, largestShown)) return p;
    }
    double sum = 0;
    for (const auto& wish : wishes) {
        if (auto p = outsideReal("wish_share", wish.share.value_or(0), 0, 100)) return p;
        sum += wish.share.value_or(0);
    }
    if (sum > 100 + 1e-9) return problemAt(ProblemCode::sharesNotOne, "wish_share", numberText(sum), {"100"});
    return outsideReal("reach", reach, 0, 200);
}

std::vector<double> wishedShares(const std::vector<ColourWish>& wishes) {
    double named = 0, blank = 0;
    for (const auto& wish : wishes) {
        named += wish.share.value_or(0);
        blank += wish.share ? 0 : 1;
    }
    std::vector<double> shares;
    for (const auto& wish : wishes)
        shares.push_back(wish.share.value_or((100 - named) / std::max(blank, 1.0)));
    return shares;
}

/// The wish a colour goes to; the first of equals.
std::optional<std::size_t> nearest(Colour colour, const std::vector<ColourWish>& wishes, double reach) {
    std::optional<std::size_t> best;
    double least = reach;
    for (std::size_t w = 0; w < wishes.size(); ++w) {
        const double difference = colourDifference(colour, wishes[w].colour);
        if (difference > least || (best && difference == least)) continue;
        least = difference;
        best = w;
    }
    return best;
}

/// How a thing's colours fall to one wish: parts of its area.
struct Part {
    std::size_t thing;
    std::size_t wish;
    double each; ///< square millimetres of one
};

/// One more adds `each` to the wish and the thing's whole area to all: solved for the wished share.
std::optional<ColourMend> mendOf(const std::vector<ShownThing>& things, const std::vector<Part>& parts,
                                 std::size_t w, const WishShown& wish, double all, double commonSize) {
    const double wanted = wish.wished / 100;
    std::optional<ColourMend> best;
    double count = 0, size = 0;
    for (const auto& part : parts) {
        if (part.wish != w) continue;
        const double whole = *shownArea(things[part.thing]);
        count += static_cast<double>(things[part.thing].count);
        size += static_cast<double>(things[part.thing].count) * part.each;
        const double gain = part.each - wanted * whole;
        if (gain <= 0) continue;
        const auto add = static_cast<std::int64_t>(std::ceil((wanted * all - wish.area) / gain - 1e-9));
        if (!best || add < best->add) best = ColourMend{part.thing, add, false};
    }
    if (best) best->smallHeads = count > 0 && size / count < commonSize / 2;
    return best;
}

} // namespace

std::optional<double> shownArea(const ShownThing& thing) {
    if (!thing.across || (thing.shape != Shown::head && !thing.along)) return std::nullopt;
    switch (thing.shape) {
    case Shown::head:
        return circleArea(*thing.across);
    case Shown::leaf:
        return circleArea(1) * *thing.across * *thing.along;
    case Shown::grass:
        return *thing.across * *thing.along / 2;
    case Shown::ribbon:
        return *thing.across * *thing.along;
    }
    return std::nullopt;
}

Result<ColourBalance, Problem> colourBalance(const std::vector<ShownThing>& things,
                                             const std::vector<ColourWish>& wishes, double reach) {
    if (const auto p = checkBalance(things, wishes, reach)) return *p;
    ColourBalance balance;
    balance.wishes.resize(wishes.size());
    std::vector<Part> parts;
    double all = 0, count = 0;
    for (std::size_t t = 0; t < things.size(); ++t) {
        const auto area = shownArea(things[t]);
        if (!area || things[t].colours.empty()) {
            ++balance.notKnown;
            continue;
        }
        const auto n = static_cast<double>(things[t].count);
        all += n * *area;
        count += n;
        for (const auto colour : things[t].colours) {
            const double each = *area / static_cast<double>(things[t].colours.size());
            const auto wish = nearest(colour, wishes, reach);
            (wish ? balance.wishes[*wish].area : balance.otherArea) += n * each;
            if (!wish) continue;
            if (!parts.empty() && parts.back().thing == t && parts.back().wish == *wish)
                parts.back().each += each;
            else
                parts.push_back({t, *wish, each});
            balance.wishes[*wish].working.push_back(lineOf(Step::plus, "area in square millimetres", n * each,
                                                           Unit::none, Basis::computed, {},
                                                           things[t].subject));
        }
    }
    const auto percent = [&](double area) { return all > 0 ? 100 * area / all : 0.0; };
    balance.otherShare = percent(balance.otherArea);
    const auto wished = wishedShares(wishes);
    for (std::size_t w = 0; w < wishes.size(); ++w) {
        auto& wish = balance.wishes[w];
        wish.wished = wished[w];
        wish.share = percent(wish.area);
        wish.working.push_back(lineOf(Step::over, "all that is seen in square millimetres", all, Unit::none));
        wish.working.push_back(lineOf(Step::result, "share shown", wish.share, Unit::percent));
        if (wish.share < wish.wished - 1e-9 && count > 0)
            wish.mend = mendOf(things, parts, w, wish, all, all / count);
    }
    return balance;
}

} // namespace withy::designs
