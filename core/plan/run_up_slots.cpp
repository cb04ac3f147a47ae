// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/run_up_slots.h"

#include "core/base/working_lines.h"
#include "core/plan/cover_plan.h"
#include "core/plan/plant_facts.h"
#include "core/runup/rates.h"

#include <algorithm>
#include <cmath>

namespace withy::plan {

namespace {

constexpr int furthestBack = 14; ///< days before the make-up that are worth looking at, as for rounds
constexpr StandIn shortConditioning{2, Basis::published, "FDI: two hours in water before storage or use"};

class Wishes {
public:
    Wishes(const RunUpFacts& facts, const BookingPlan& plan, int group)
        : facts_(facts), plan_(plan), group_(group) {}

    std::vector<CutWish> run() {
        const auto* cover = coverOf();
        if (cover)
            fromCover(*cover);
        else
            for (const auto& need : plan_.needs)
                fromNeed(need, need.need.total);
        return merged();
    }

private:
    [[nodiscard]] const BookingCover* coverOf() const {
        if (!facts_.plan.cover || facts_.plan.cover->fault) return nullptr;
        const auto found = facts_.plan.cover->bookings.find(plan_.booking);
        return found == facts_.plan.cover->bookings.end() ? nullptr : &found->second;
    }

    [[nodiscard]] const PlantNeed* needOf(Id<model::Plant> plant) const {
        const auto at = std::find_if(plan_.needs.begin(), plan_.needs.end(),
                                     [&](const PlantNeed& n) { return n.plant == plant; });
        return at == plan_.needs.end() ? nullptr : &*at;
    }

    [[nodiscard]] std::optional<CutWish> wishFor(Id<model::Plant> plant) const {
        const auto* record = facts_.season.plants.find(plant);
        if (!record) return std::nullopt;
        PlantFacts known(facts_.index, *record);
        const double hours =
            known.get("conditioning_hours_min", record->conditioningHoursMin, shortConditioning).value;
        CutWish wish;
        wish.plant = plant;
        wish.group = group_;
        wish.conditioning = Minutes(std::llround(hours * 60));
        wish.earliest = plan_.makeUpStart - Minutes(std::int64_t{furthestBack} * 1440);
        wish.latest = plan_.makeUpStart - wish.conditioning;
        const auto* need = needOf(plant);
        wish.stemsPerBucket = facts_.stemsPerBucket(need ? need->longestCut : std::nullopt);
        if (!need || !need->window) return wish;
        if (!need->window->window.times) return std::nullopt; // no time will do, and the booking says so
        wish.earliest = std::max(wish.earliest, need->window->window.times->earliest);
        wish.latest = need->window->window.times->latest;
        return wish;
    }

    void fromNeed(const PlantNeed& need, Stems stems) {
        auto wish = wishFor(need.plant);
        if (!wish || stems.value <= 0) return;
        wish->stems = stems;
        wish->atTheSoonest = wish->earliest;
        wishes_.push_back(*wish);
    }

    void fromCover(const BookingCover& cover) {
        for (const auto& slot : cover.slots) {
            const auto& at = slot.at[indexOf(Level::likely)];
            for (const auto& piece : at.pieces)
                if (piece.source == cover::Source::patch) fromPiece(slot, piece);
            if (at.shortBy.value > 0) shortOf(slot, at);
        }
        for (const auto& need : plan_.needs)
            lastBunch(need);
    }

    /// A plant the booking itself does not ask for has the days of its choice as a window.
    std::optional<CutWish> wishFor(const cover::Choice& choice) const {
        auto wish = wishFor(choice.plant);
        if (!wish || needOf(choice.plant)) return wish;
        wish->earliest = std::max(wish->earliest, LocalTime{choice.from, 0});
        wish->latest = std::min(wish->latest, LocalTime{choice.to, 1439});
        return wish;
    }

    CutWish* add(const cover::Choice& choice, std::optional<Id<model::Patch>> patch, Stems stems) {
        auto wish = wishFor(choice);
        if (!wish) return nullptr;
        wish->atTheSoonest = wish->earliest;
        wish->patch = patch;
        wish->stems = stems;
        wishes_.push_back(*wish);
        return &wishes_.back();
    }

    void fromPiece(const SlotCover& slot, const cover::Piece& piece) {
        if (piece.choice >= slot.choices.size()) return;
        auto* wish = add(slot.choices[piece.choice], Id<model::Patch>(piece.from), piece.stems);
        if (!wish) return;
        wish->atTheSoonest = std::max(wish->earliest, LocalTime{piece.ready - 1, 720});
        narrow(*wish, {piece.ready, 0}, {piece.ready + facts_.holdDays(*wish->patch), 1439});
        if (wish->latest < wish->earliest) narrow(*wish, {piece.cut, 0}, {piece.cut, 1439});
    }

    /// Looked for where most of the slot is cut, else wherever its first plant stands.
    void shortOf(const SlotCover& slot, const SlotLevel& at) {
        cover::Piece most;
        for (const auto& piece : at.pieces)
            if (piece.source == cover::Source::patch && most.stems < piece.stems) most = piece;
        if (most.stems.value > 0) {
            most.stems = at.shortBy;
            fromPiece(slot, most);
        } else if (!slot.choices.empty()) {
            add(slot.choices.front(), std::nullopt, at.shortBy);
        }
    }

    /// Where the two have nothing in common the window stands.
    static void narrow(CutWish& wish, LocalTime from, LocalTime to) {
        const LocalTime earliest = std::max(wish.earliest, from);
        const LocalTime latest = std::min(wish.latest, to);
        if (latest < earliest) return;
        wish.earliest = earliest;
        wish.latest = latest;
    }

    /// Stems that fill the last bunch are cut where most of their plant are.
    void lastBunch(const PlantNeed& need) {
        const Stems extra = need.need.total - need.need.need - need.need.spare;
        if (extra.value <= 0) return;
        CutWish* most = nullptr;
        for (auto& wish : wishes_)
            if (wish.plant == need.plant && (!most || most->stems < wish.stems)) most = &wish;
        if (most) most->stems += extra;
    }

    /// Of one plant in one patch the fewest windows that hold all.
    std::vector<CutWish> merged() {
        std::stable_sort(wishes_.begin(), wishes_.end(), [](const CutWish& a, const CutWish& b) {
            return std::tie(a.plant, a.patch, a.latest) < std::tie(b.plant, b.patch, b.latest);
        });
        std::vector<CutWish> out;
        for (const auto& wish : wishes_) {
            auto* last = out.empty() ? nullptr : &out.back();
            if (!last || last->plant != wish.plant || last->patch != wish.patch ||
                last->latest < wish.earliest) {
                out.push_back(wish);
                continue;
            }
            last->earliest = std::max(last->earliest, wish.earliest);
            last->atTheSoonest = std::max(last->atTheSoonest, wish.atTheSoonest);
            last->stems += wish.stems;
        }
        return out;
    }

    const RunUpFacts& facts_;
    const BookingPlan& plan_;
    int group_;
    std::vector<CutWish> wishes_;
};

} // namespace

std::vector<CutWish> cutWishes(const RunUpFacts& facts, const BookingPlan& plan, int group) {
    return Wishes(facts, plan, group).run();
}

CutMinutes cutMinutes(const RunUpFacts& facts, Id<model::Plant> id, Stems stems) {
    const auto& plant = *facts.season.plants.find(id);
    const auto count = static_cast<double>(stems.value);
    CutMinutes out;
    out.working = {lineOf(Step::given, "stems", count, Unit::stems, Basis::computed, {}, plant.name)};
    double minutes = 0;
    if (plant.cuttingStemsPerHour) {
        const auto rate =
            PlantFacts(facts.index, plant).known("cutting_stems_per_hour", *plant.cuttingStemsPerHour);
        minutes = count * 60 / rate.value;
        out.working.push_back(lineOf(Step::times, "minutes an hour", 60, Unit::minutes));
        out.working.push_back(from(rate.from, lineOf(Step::over, "stems an hour", rate.value, Unit::stems,
                                                     rate.basis, rate.source, plant.name)));
    } else {
        const auto rate = runup::rateOf(facts.season, model::RateKind::cutHundredStems);
        minutes = count * rate.minutes / 100;
        out.working.push_back(runup::rateLine(rate, "minutes for 100"));
        out.working.push_back(lineOf(Step::over, "stems", 100, Unit::stems));
    }
    out.minutes = Minutes(static_cast<std::int64_t>(std::ceil(minutes - 1e-9)));
    return out;
}

} // namespace withy::plan
