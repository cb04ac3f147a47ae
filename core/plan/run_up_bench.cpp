// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/working_lines.h"
#include "core/plan/run_up_draft.h"
#include "core/plan/work_times.h"
#include "core/runup/rates.h"

#include <algorithm>

namespace withy::plan {

namespace {

using model::RateKind;

constexpr int benchDays = 7; ///< before the drive; the bench is not begun earlier (own choice)

/// One booking's bench, from the first jar washed to the last piece made.
class BenchDraft {
public:
    BenchDraft(const RunUpFacts& facts, const BookingPlan& plan, RunUpDraft& out)
        : facts_(facts)
        , plan_(plan)
        , booking_(*facts.season.bookings.find(plan.booking))
        , out_(out)
        , group_(static_cast<int>(out.groups.size()) - 1) {}

    std::map<Id<model::Line>, std::size_t> draft() {
        count();
        const auto wash = put(StepKind::washContainers, RateKind::washContainer, containers_);
        const auto ribbon = put(StepKind::cutRibbon, RateKind::cutRibbon, ribboned_ + boundRibboned_);
        const auto fill = put(StepKind::fillWater, RateKind::fillWater, containers_);
        const auto tie = put(StepKind::tieRibbon, RateKind::tieRibbon, ribboned_);
        const auto sort = put(StepKind::sort, RateKind::sortPiece, pieces_, Skill::condition);
        if (fill) out_.steps[*fill].legs.front().litres = plan_.kit.water.litres;
        link(wash, fill);
        link(ribbon, tie);
        link(fill, tie);
        for (const auto& before : {fill ? std::nullopt : wash, ribbon, fill, tie, sort})
            if (before) beforeMaking_.push_back(*before);
        makeAll();
        out_.afterDrinking.back() = sort ? std::vector<std::size_t>{*sort} : firstMakes_;
        return std::move(made_);
    }

private:
    [[nodiscard]] const model::Design& designOf(const LinePlan& line) const {
        return *facts_.season.designs.find(line.design);
    }

    [[nodiscard]] bool hasRibbon(const LinePlan& line) const {
        return facts_.plan.designs.at(line.design)->ribbon.has_value();
    }

    void count() {
        for (const auto& line : plan_.lines) {
            const bool stands = designOf(line).container.has_value();
            pieces_ += line.pieces.value;
            if (stands) containers_ += line.pieces.value;
            if (hasRibbon(line)) (stands ? ribboned_ : boundRibboned_) += line.pieces.value;
        }
    }

    std::optional<std::size_t> put(StepKind kind, RateKind work, std::int64_t count,
                                   Skill skill = Skill::bench) {
        auto draft = countedDraft(facts_, kind, work, count, plan_.booking);
        if (!draft) return std::nullopt;
        draft->skill = skill;
        draft->release = {plan_.driveStart.day - benchDays, 0};
        draft->group = group_;
        return out_.add(std::move(*draft));
    }

    void link(std::optional<std::size_t> before, std::optional<std::size_t> after) {
        if (before && after) out_.follow(*before, *after);
    }

    void makeAll() {
        std::vector<const LinePlan*> order;
        for (const auto& line : plan_.lines)
            if (line.pieces.value > 0) order.push_back(&line);
        std::stable_sort(order.begin(), order.end(), [&](const auto* a, const auto* b) {
            return rankInMaking(designOf(*a)) < rankInMaking(designOf(*b));
        });
        std::vector<std::size_t> before, same;
        int rank = -1;
        for (const auto* line : order) {
            if (rankInMaking(designOf(*line)) != rank) {
                rank = rankInMaking(designOf(*line));
                if (!same.empty()) before = std::exchange(same, {});
            }
            const auto made = make(*line);
            out_.followAll(before, made);
            if (before.empty()) firstMakes_.push_back(made);
            same.push_back(made);
        }
    }

    std::size_t make(const LinePlan& line) {
        Draft draft;
        RunUpStep step;
        step.key = {StepKind::make, plan_.booking, line.line, {}, {}, 0};
        step.bookings = {plan_.booking};
        step.count = line.pieces.value;
        setMinutes(line, step);
        draft.minutes = step.minutes;
        draft.legs = {std::move(step)};
        draft.offsets = {Minutes(0)};
        draft.skill = Skill::make;
        draft.group = group_;
        setMakingHours(draft);
        const auto at = out_.add(std::move(draft));
        out_.followAll(beforeMaking_, at);
        made_[line.line] = at;
        tieBound(line, at);
        return at;
    }

    void setMinutes(const LinePlan& line, RunUpStep& step) const {
        const auto& each = facts_.plan.designs.at(line.design)->minutes;
        step.minutes = roundedUp(each.value * static_cast<double>(step.count));
        step.working = {lineOf(Step::given, "pieces", step.count, Unit::pieces)};
        append(step.working, each.working);
        step.working.push_back(lineOf(Step::result, "minutes", step.minutes.value, Unit::minutes));
    }

    /// The night before the drive rests what is made, unless the grower begins on the day itself.
    void setMakingHours(Draft& draft) const {
        const LocalTime eve =
            LocalTime{plan_.driveStart.day - 1, 0} + Minutes(facts_.season.theSettings().workTo);
        if (booking_.makeFrom) {
            draft.release = *booking_.makeFrom;
            draft.releaseMoves = false;
            if (*booking_.makeFrom < eve) draft.deadline = eve;
        } else {
            draft.release = {plan_.driveStart.day - benchDays, 0};
            draft.deadline = std::min(eve, plan_.driveStart);
        }
    }

    /// A bound piece gets its ribbon when it is made.
    void tieBound(const LinePlan& line, std::size_t made) {
        if (designOf(line).container || !hasRibbon(line)) return;
        auto tie =
            countedDraft(facts_, StepKind::tieRibbon, RateKind::tieRibbon, line.pieces.value, plan_.booking);
        if (!tie) return;
        tie->legs.front().key.line = line.line;
        tie->release = out_.steps[made].release;
        tie->releaseMoves = out_.steps[made].releaseMoves;
        tie->deadline = out_.steps[made].deadline;
        tie->group = group_;
        const auto at = out_.add(std::move(*tie));
        out_.follow(made, at);
        made_[line.line] = at;
    }

    const RunUpFacts& facts_;
    const BookingPlan& plan_;
    const model::Booking& booking_;
    RunUpDraft& out_;
    int group_;
    std::int64_t pieces_ = 0, containers_ = 0, ribboned_ = 0, boundRibboned_ = 0;
    std::vector<std::size_t> beforeMaking_, firstMakes_;
    std::map<Id<model::Line>, std::size_t> made_; ///< by line: the last step that readies it
};

} // namespace

StillToDo stillToDo(const model::Booking& booking) {
    using model::Standing;
    switch (booking.standing) {
    case Standing::enquiry:
    case Standing::held:
    case Standing::quoted:
    case Standing::booked:
        return StillToDo::all;
    case Standing::made:
        return StillToDo::fromRest;
    case Standing::delivered:
        return StillToDo::collectOnly;
    case Standing::settled:
    case Standing::lost:
        break;
    }
    return StillToDo::nothing;
}

std::optional<Draft> countedDraft(const RunUpFacts& facts, StepKind kind, RateKind work, std::int64_t count,
                                  Id<model::Booking> booking) {
    const auto rate = runup::rateOf(facts.season, work);
    Draft draft;
    draft.minutes = roundedUp(rate.minutes * static_cast<double>(count));
    if (draft.minutes.value <= 0) return std::nullopt;
    RunUpStep step;
    step.key = {kind, booking, {}, {}, {}, 0};
    step.bookings = {booking};
    step.count = count;
    step.minutes = draft.minutes;
    step.working = {lineOf(Step::given, "count", count, Unit::count),
                    lineOf(Step::times, "minutes each", rate.minutes, Unit::minutes, rate.basis, rate.source),
                    lineOf(Step::result, "minutes", step.minutes.value, Unit::minutes)};
    draft.legs = {std::move(step)};
    draft.offsets = {Minutes(0)};
    return draft;
}

bool draftBooking(const RunUpFacts& facts, const BookingPlan& plan, RunUpDraft& out) {
    const auto* booking = facts.season.bookings.find(plan.booking);
    const auto toDo = booking ? stillToDo(*booking) : StillToDo::nothing;
    std::int64_t pieces = 0;
    for (const auto& line : plan.lines)
        pieces += line.pieces.value;
    if (toDo == StillToDo::nothing || pieces == 0) return false;
    const auto before = out.steps.size();
    out.groups.push_back(plan.booking);
    out.pieces.push_back(pieces);
    out.afterDrinking.emplace_back();
    std::map<Id<model::Line>, std::size_t> made;
    if (toDo == StillToDo::all) made = BenchDraft(facts, plan, out).draft();
    draftTrips(facts, plan, made, out);
    if (out.steps.size() > before) return true;
    out.groups.pop_back();
    out.pieces.pop_back();
    out.afterDrinking.pop_back();
    return false;
}

} // namespace withy::plan
