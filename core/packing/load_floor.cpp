// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packing/load_floor.h"

#include "core/base/range.h"
#include "core/base/working_lines.h"

#include <algorithm>
#include <numeric>
#include <tuple>

namespace withy::packing {

namespace {

constexpr std::int64_t longestFloor = 20'000;
constexpr std::int64_t heaviestLoad = 50'000'000;
constexpr int shuffles = 200;

/// How far back the load reaches, from the left wall to the right.
class Skyline {
public:
    explicit Skyline(const LoadFloor& floor) : floor_(floor), steps_{{0, 0}} {}

    /// The place furthest forward for an item so long and wide; nothing when there is none.
    [[nodiscard]] std::optional<LoadedItem> place(std::int64_t length, std::int64_t width) const {
        std::optional<LoadedItem> best;
        for (std::size_t i = 0; i < steps_.size(); ++i) {
            const std::int64_t rightOf = steps_[i].y, leftOf = endOf(i) - width;
            for (const auto y : {rightOf, leftOf}) {
                if (y < 0 || y + width > floor_.width.value) continue;
                const auto x = reachOver(y, width);
                if (x + length > floor_.length.value) continue;
                if (best && std::tuple(x + length, y) >= std::tuple(best->x.value + length, best->y.value))
                    continue;
                best = LoadedItem{
                    0, Millimetres(x), Millimetres(y), Millimetres(length), Millimetres(width), false};
            }
        }
        return best;
    }

    void put(const LoadedItem& item) {
        const auto from = item.y.value, to = from + item.width.value,
                   reach = item.x.value + item.length.value;
        std::vector<Step> steps;
        for (std::size_t i = 0; i < steps_.size(); ++i) {
            if (steps_[i].y < from) steps.push_back(steps_[i]);
        }
        steps.push_back({from, reach});
        if (to < floor_.width.value) {
            std::int64_t behind = 0;
            for (const auto& step : steps_) {
                if (step.y <= to) behind = step.reach;
            }
            steps.push_back({to, behind});
        }
        for (const auto& step : steps_) {
            if (step.y > to) steps.push_back(step);
        }
        steps_ = std::move(steps);
    }

private:
    struct Step {
        std::int64_t y;
        std::int64_t reach;
    };

    [[nodiscard]] std::int64_t endOf(std::size_t i) const {
        return i + 1 < steps_.size() ? steps_[i + 1].y : floor_.width.value;
    }

    [[nodiscard]] std::int64_t reachOver(std::int64_t y, std::int64_t width) const {
        std::int64_t reach = 0;
        for (std::size_t i = 0; i < steps_.size(); ++i) {
            if (steps_[i].y < y + width && endOf(i) > y) reach = std::max(reach, steps_[i].reach);
        }
        return reach;
    }

    const LoadFloor& floor_;
    std::vector<Step> steps_;
};

enum class Turning { free, aheadLong, aheadShort };

struct Attempt {
    std::vector<LoadedItem> loaded;
    std::vector<std::size_t> notLoaded;
    std::int64_t area = 0;
    std::int64_t reach = 0;

    [[nodiscard]] bool betterThan(const Attempt& other) const {
        return std::tuple(loaded.size(), area, -reach) >
               std::tuple(other.loaded.size(), other.area, -other.reach);
    }
};

/// The ways an item may stand under this rule, the first preferred.
std::vector<bool> turns(const LoadItem& item, Turning turning) {
    if (!item.mayTurn || item.length == item.width) return {false};
    const bool longIsAhead = item.length > item.width;
    if (turning == Turning::aheadLong) return {!longIsAhead, longIsAhead};
    return {longIsAhead, !longIsAhead};
}

std::optional<LoadedItem> bestPlace(const Skyline& skyline, const LoadItem& item, Turning turning) {
    std::optional<LoadedItem> best;
    for (const bool turned : turns(item, turning)) {
        auto place = skyline.place((turned ? item.width : item.length).value,
                                   (turned ? item.length : item.width).value);
        if (!place) continue;
        place->turned = turned;
        if (turning != Turning::free) return place;
        if (!best || place->x + place->length < best->x + best->length) best = place;
    }
    return best;
}

Attempt load(const LoadFloor& floor, const std::vector<LoadItem>& items,
             const std::vector<std::size_t>& order, Turning turning) {
    Skyline skyline(floor);
    Attempt attempt;
    for (const auto i : order) {
        auto place = bestPlace(skyline, items[i], turning);
        if (!place) {
            attempt.notLoaded.push_back(i);
            continue;
        }
        place->item = i;
        skyline.put(*place);
        attempt.area += place->length.value * place->width.value;
        attempt.reach = std::max(attempt.reach, (place->x + place->length).value);
        attempt.loaded.push_back(*place);
    }
    return attempt;
}

/// Last drop first; within a drop by `key`, largest first.
template <class Key>
std::vector<std::size_t> sorted(const std::vector<LoadItem>& items, Key key) {
    std::vector<std::size_t> order(items.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](auto a, auto b) {
        return std::tuple(items[a].drop, key(items[a])) > std::tuple(items[b].drop, key(items[b]));
    });
    return order;
}

/// Two items of one drop change places, here and there.
void shuffle(const std::vector<LoadItem>& items, std::vector<std::size_t>& order, std::uint32_t& noise) {
    for (std::size_t i = order.size(); i-- > 1;) {
        noise = noise * 1664525U + 1013904223U;
        const std::size_t j = (noise >> 8) % (i + 1);
        if (items[order[i]].drop == items[order[j]].drop) std::swap(order[i], order[j]);
    }
}

Attempt bestLoad(const LoadFloor& floor, const std::vector<LoadItem>& items) {
    const auto shorter = [](const LoadItem& i) { return std::min(i.length, i.width).value; };
    const auto longer = [](const LoadItem& i) { return std::max(i.length, i.width).value; };
    auto order = sorted(items, [](const LoadItem& i) { return i.length.value * i.width.value; });
    Attempt best;
    best.reach = longestFloor + 1;
    const auto offer = [&](const std::vector<std::size_t>& by) {
        for (const auto turning : {Turning::free, Turning::aheadLong, Turning::aheadShort}) {
            if (auto attempt = load(floor, items, by, turning); attempt.betterThan(best))
                best = std::move(attempt);
        }
    };
    offer(order);
    offer(sorted(items, longer));
    offer(sorted(items, shorter));
    std::uint32_t noise = 1;
    for (int n = 0; n < shuffles && best.loaded.size() < items.size(); ++n) {
        shuffle(items, order, noise);
        offer(order);
    }
    return best;
}

std::optional<Problem> checkLoad(const LoadFloor& floor, const std::vector<LoadItem>& items) {
    if (auto p = outside("floor_length", floor.length.value, 1, longestFloor)) return p;
    if (auto p = outside("floor_width", floor.width.value, 1, longestFloor)) return p;
    if (floor.plateLoad) {
        if (auto p = outside("plate_load", floor.plateLoad->value, 1, heaviestLoad)) return p;
    }
    if (auto p = outside("items", static_cast<std::int64_t>(items.size()), 0,
                         static_cast<std::int64_t>(mostLoadItems)))
        return p;
    for (const auto& item : items) {
        if (auto p = outside("item_length", item.length.value, 1, longestFloor)) return p;
        if (auto p = outside("item_width", item.width.value, 1, longestFloor)) return p;
        if (auto p = outside("drop", item.drop, 1, mostDrops)) return p;
        if (!item.mass) continue;
        if (auto p = outside("item_mass", item.mass->value, 0, heaviestLoad)) return p;
    }
    return std::nullopt;
}

void weighLoad(const LoadFloor& floor, const std::vector<LoadItem>& items, LoadPlan& plan) {
    for (const auto& loaded : plan.loaded) {
        const auto& item = items[loaded.item];
        plan.massNotKnown += item.mass ? 0 : 1;
        plan.mass += item.mass.value_or(Grams{});
        plan.working.push_back(
            item.mass
                ? lineOf(Step::plus, "mass", item.mass->value, Unit::grams, Basis::computed, {}, item.subject)
                : lineOf(Step::plus, "mass not known", 0, Unit::grams, Basis::notKnown, {}, item.subject));
    }
    plan.working.push_back(lineOf(Step::result, "load", plan.mass.value, Unit::grams));
    if (!floor.plateLoad) return;
    plan.overPlate = std::max(plan.mass - *floor.plateLoad, Grams{});
    plan.working.push_back(
        lineOf(Step::given, "load on the plate", floor.plateLoad->value, Unit::grams, Basis::mine));
}

} // namespace

Result<LoadPlan, Problem> loadVehicle(const LoadFloor& floor, const std::vector<LoadItem>& items) {
    if (const auto p = checkLoad(floor, items)) return *p;
    auto attempt = bestLoad(floor, items);
    LoadPlan plan;
    plan.loaded = std::move(attempt.loaded);
    plan.notLoaded = std::move(attempt.notLoaded);
    if (plan.loaded.empty()) {
        plan.notLoaded.resize(items.size());
        std::iota(plan.notLoaded.begin(), plan.notLoaded.end(), std::size_t{0});
    }
    weighLoad(floor, items, plan);
    return plan;
}

} // namespace withy::packing
