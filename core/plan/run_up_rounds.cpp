// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/working_lines.h"
#include "core/plan/run_up_slots.h"
#include "core/runup/rates.h"
#include "core/runup/time_spans.h"

#include <algorithm>
#include <cmath>

namespace withy::plan {

namespace {

using runup::TimeSpan;

/// Cut stems are stripped and stood in water within so long after the good hours (common practice, no
/// source).
constexpr Minutes strippedWithin{120};

class RoundDrafts {
public:
    RoundDrafts(RunUpFacts& facts, const std::vector<std::vector<TimeSpan>>& taken, RunUpDraft& out)
        : facts_(facts), taken_(taken), out_(out) {}

    void draft() {
        gather();
        if (wishes_.empty()) return;
        const auto free = workable();
        for (std::size_t i = 0; i < slots_.size(); ++i)
            widen(i, free);
        const auto outings = runup::fewestOutings(slots_, free);
        for (const auto& outing : outings.outings)
            draftRound(outing);
    }

private:
    void gather() {
        for (std::size_t g = 0; g < out_.groups.size(); ++g) {
            const auto& booking = *facts_.season.bookings.find(out_.groups[g]);
            if (stillToDo(booking) != StillToDo::all) continue;
            const auto& plan = *facts_.plan.bookings.at(out_.groups[g]);
            for (auto& wish : cutWishes(facts_, plan, static_cast<int>(g)))
                wishes_.push_back(std::move(wish));
        }
        std::erase_if(wishes_, [](const CutWish& w) { return w.latest < w.earliest; });
        for (const auto& wish : wishes_) {
            runup::CutSlot slot;
            slot.earliest = wish.earliest;
            slot.latest = wish.latest;
            slot.stems = wish.stems;
            slot.minutes = cutMinutes(facts_, wish.plant, wish.stems).minutes;
            slots_.push_back(slot);
        }
    }

    /// Stems that are ready too late for any good hour are cut half a day sooner, a touch tighter.
    void widen(std::size_t i, const std::vector<TimeSpan>& free) {
        auto& slot = slots_[i];
        const auto begins = [&](LocalTime earliest) {
            return std::any_of(free.begin(), free.end(), [&](const TimeSpan& s) {
                return std::max(s.from, earliest) < s.to &&
                       std::max(s.from, earliest) <= slot.latest - slot.minutes;
            });
        };
        if (begins(slot.earliest) || !begins(wishes_[i].atTheSoonest)) return;
        slot.earliest = wishes_[i].earliest = wishes_[i].atTheSoonest;
    }

    /// Good hours in which somebody who cuts is there.
    std::vector<TimeSpan> workable() {
        Day first = slots_.front().earliest.day, last = slots_.front().latest.day;
        for (const auto& slot : slots_) {
            first = std::min(first, slot.earliest.day - 1);
            last = std::max(last, slot.latest.day);
        }
        for (Day day = first; day <= last; day = day + 1)
            good_.insert(good_.end(), facts_.goodHours(day).begin(), facts_.goodHours(day).end());
        std::vector<TimeSpan> free;
        for (std::size_t w = 0; w < facts_.hands.workers().size(); ++w) {
            if (!facts_.hands.can(w, Skill::cut)) continue;
            auto hours = facts_.hands.hours(w, first, last);
            // Flowers are cut at dawn whatever the grower's working hours are.
            if (w == 0) hours.there = {{LocalTime{first, 0}, LocalTime{last + 1, 0}}};
            std::vector<TimeSpan> holes = taken_[w];
            for (const auto& busy : hours.busy)
                holes.push_back(busy.span);
            const auto here = runup::without(hours.there, std::move(holes));
            free.insert(free.end(), here.begin(), here.end());
        }
        return runup::inBoth(good_, std::move(free));
    }

    /// When the outing may be: while the hours it begins in are good and all its windows are open.
    [[nodiscard]] TimeSpan windowOf(const runup::Outing& outing, const RunUpRound& round) const {
        for (const auto& good : good_) {
            if (!outing.inGoodHours || outing.start < good.from || good.to <= outing.start) continue;
            return {std::min(outing.start, std::max(good.from, round.earliest)),
                    std::max(outing.end, std::min(good.to, round.latest))};
        }
        return {outing.start, std::max(outing.end, round.latest)};
    }

    void draftRound(const runup::Outing& outing) {
        RunUpRound round = roundOf(outing);
        const auto window = windowOf(outing, round);
        const StepKey key{StepKind::cut, {}, {}, {}, outing.start.day, facts_.nextRound(outing.start.day)};
        const auto cut = out_.add(cutDraft(key, round, window));
        const auto strip = stripDraft(key, round, window);
        const auto stripped = strip ? out_.add(*strip) : cut;
        if (strip) out_.follow(cut, stripped);
        out_.rounds.push_back({std::move(round), cut});
        letDrink(outing, key, cut, stripped);
    }

    [[nodiscard]] RunUpRound roundOf(const runup::Outing& outing) {
        RunUpRound round;
        round.from = outing.start;
        round.to = outing.end;
        round.minutes = outing.minutes;
        round.stems = outing.stems;
        round.inGoodHours = outing.inGoodHours && outing.past.value == 0;
        round.earliest = wishes_[outing.slots.front()].earliest;
        round.latest = wishes_[outing.slots.front()].latest;
        for (const auto i : outing.slots) {
            round.earliest = std::max(round.earliest, wishes_[i].earliest);
            round.latest = std::min(round.latest, wishes_[i].latest);
            addBooking(round.bookings, out_.groups[static_cast<std::size_t>(wishes_[i].group)]);
            addPatch(round, i);
        }
        std::sort(round.bookings.begin(), round.bookings.end());
        std::stable_sort(round.patches.begin(), round.patches.end(),
                         [&](const auto& a, const auto& b) { return walkingPlace(a) < walkingPlace(b); });
        return round;
    }

    static void addBooking(std::vector<Id<model::Booking>>& to, Id<model::Booking> booking) {
        if (std::find(to.begin(), to.end(), booking) == to.end()) to.push_back(booking);
    }

    void addPatch(RunUpRound& round, std::size_t i) const {
        const auto& wish = wishes_[i];
        auto at = std::find_if(round.patches.begin(), round.patches.end(), [&](const RoundPatch& p) {
            return p.patch == wish.patch && p.plant == wish.plant;
        });
        if (at == round.patches.end()) {
            RoundPatch patch;
            patch.patch = wish.patch;
            patch.plant = wish.plant;
            at = round.patches.insert(at, std::move(patch));
        }
        at->stems += wish.stems;
        at->minutes += slots_[i].minutes;
        addBooking(at->bookings, out_.groups[static_cast<std::size_t>(wish.group)]);
        if (wish.stemsPerBucket > 0)
            at->buckets = (at->stems.value + wish.stemsPerBucket - 1) / wish.stemsPerBucket;
    }

    /// The way the grower walks; what has no patch comes last.
    [[nodiscard]] std::tuple<bool, std::int64_t, std::int64_t> walkingPlace(const RoundPatch& p) const {
        const auto* patch = p.patch ? facts_.season.patches.find(*p.patch) : nullptr;
        if (!patch) return {true, 0, p.plant.value};
        return {false, patch->place, patch->id.value};
    }

    [[nodiscard]] int groupOf(const RunUpRound& round) const {
        const auto at = std::find_if(out_.groups.begin(), out_.groups.end(), [&](Id<model::Booking> b) {
            return std::find(round.bookings.begin(), round.bookings.end(), b) != round.bookings.end();
        });
        return static_cast<int>(at - out_.groups.begin());
    }

    [[nodiscard]] Draft cutDraft(const StepKey& key, const RunUpRound& round, const TimeSpan& window) const {
        RunUpStep step;
        step.key = key;
        step.bookings = round.bookings;
        step.minutes = round.minutes;
        step.count = round.stems.value;
        for (const auto& patch : round.patches) {
            addStems(step, patch);
            append(step.working, cutMinutes(facts_, patch.plant, patch.stems).working);
        }
        step.working.push_back(lineOf(Step::result, "minutes", step.minutes.value, Unit::minutes));
        Draft draft = draftOf(std::move(step), groupOf(round));
        draft.skill = Skill::cut;
        draft.splittable = false;
        // At dawn the sooner the cooler, but not before the day's work unless it must be.
        if (window.from.minute < 720)
            draft.hurry = std::max(window.from, LocalTime{window.from.day, 0} +
                                                    Minutes(facts_.season.theSettings().workFrom));
        draft.release = window.from;
        draft.deadline = window.to;
        return draft;
    }

    static void addStems(RunUpStep& step, const RoundPatch& patch) {
        for (auto& [plant, stems] : step.stems) {
            if (plant != patch.plant) continue;
            stems += patch.stems;
            return;
        }
        step.stems.emplace_back(patch.plant, patch.stems);
    }

    [[nodiscard]] static Draft draftOf(RunUpStep step, int group) {
        Draft draft;
        draft.minutes = step.minutes;
        draft.legs = {std::move(step)};
        draft.offsets = {Minutes(0)};
        draft.workHours = draft.releaseMoves = draft.waitsForToday = false;
        draft.group = group;
        return draft;
    }

    [[nodiscard]] std::optional<Draft> stripDraft(StepKey key, const RunUpRound& round,
                                                  const TimeSpan& window) const {
        const auto rate = runup::rateOf(facts_.season, model::RateKind::stripHundredStems);
        const double exact = rate.minutes * static_cast<double>(round.stems.value) / 100;
        RunUpStep step;
        key.step = StepKind::strip;
        step.key = key;
        step.bookings = round.bookings;
        step.count = round.stems.value;
        step.minutes = Minutes(static_cast<std::int64_t>(std::ceil(exact - 1e-9)));
        if (step.minutes.value <= 0) return std::nullopt;
        step.working = {lineOf(Step::given, "stems", step.count, Unit::stems),
                        runup::rateLine(rate, "minutes for 100"),
                        lineOf(Step::over, "stems", 100, Unit::stems),
                        lineOf(Step::result, "minutes", step.minutes.value, Unit::minutes)};
        const Minutes work = step.minutes;
        Draft draft = draftOf(std::move(step), groupOf(round));
        draft.skill = Skill::condition;
        draft.hurry = window.from;
        draft.release = window.from;
        draft.deadline = window.to + work + strippedWithin;
        return draft;
    }

    /// Conditioning begins in the patch-side bucket, as for the cut window.
    void letDrink(const runup::Outing& outing, StepKey key, std::size_t cut, std::size_t stripped) {
        std::map<int, std::pair<Minutes, Stems>> drinks;
        for (const auto i : outing.slots) {
            auto& [longest, stems] = drinks[wishes_[i].group];
            longest = std::max(longest, wishes_[i].conditioning);
            stems += wishes_[i].stems;
        }
        for (const auto& [group, drink] : drinks) {
            const auto& [longest, stems] = drink;
            const auto& after = out_.afterDrinking[static_cast<std::size_t>(group)];
            for (const auto a : after) {
                out_.follow(cut, a, longest);
                out_.follow(stripped, a);
            }
            RunUpStep step;
            step.key = key;
            step.key.step = StepKind::drink;
            step.key.booking = out_.groups[static_cast<std::size_t>(group)];
            step.bookings = {*step.key.booking};
            step.count = stems.value;
            out_.threads.push_back({std::move(step), {stripped}, after});
        }
    }

    RunUpFacts& facts_;
    const std::vector<std::vector<TimeSpan>>& taken_;
    RunUpDraft& out_;
    std::vector<CutWish> wishes_;
    std::vector<runup::CutSlot> slots_;
    std::vector<TimeSpan> good_;
};

} // namespace

void draftRounds(RunUpFacts& facts, const std::vector<std::vector<TimeSpan>>& taken, RunUpDraft& out) {
    RoundDrafts(facts, taken, out).draft();
}

} // namespace withy::plan
