// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/garden/cut_window.h"

#include "core/garden/cut_timeline.h"

#include <algorithm>
#include <cmath>

namespace withy::garden {

namespace {

constexpr double slackHours = 1e-9; ///< for sums that should be equal
constexpr double yearHours = 366 * 24.0;

Sourced conditioningCelsius(const CutWindowInput& in) {
    return in.conditioningCelsius.value_or(in.storeCelsius);
}

CutTimeline timelineOf(const CutWindowInput& in) {
    CutTimeline t;
    t.q10 = in.q10.value;
    t.bucket = {in.bucketHours.value, in.bucketCelsius.value};
    t.conditioning = {in.conditioningHours.value, conditioningCelsius(in).value};
    t.storeCelsius = in.storeCelsius.value;
    for (const LifePhase& phase : in.afterMakeUp)
        t.afterMakeUp.push_back({phase.hours.value, phase.celsius.value});
    return t;
}

/// Hours of one plant in one booking, worked out once.
struct Figures {
    CutTimeline line;
    double lifeHours = 0;   ///< vase life, at 20 C
    double afterAged = 0;   ///< aged hours from make-up to the end
    double agedToDrive = 0; ///< aged hours from make-up
    double agedToEvent = 0;
    double leastAhead = 0;    ///< hours before the make-up
    double storageHours = -1; ///< most in the store; negative when there is no limit
};

std::optional<OpeningHabit> habitOf(const CutWindowInput& in) {
    if (!in.openingHours) return std::nullopt;
    return OpeningHabit{in.listedStage, in.openingHours->value, in.furthestStage};
}

double storageHours(const CutWindowInput& in) {
    if (!in.storageLimitDays) return -1;
    const double at = in.storageLimitCelsius.value_or(in.storeCelsius).value;
    const double faster = std::pow(in.q10.value, (in.storeCelsius.value - at) / 10);
    return in.storageLimitDays->value * 24 / std::max(1.0, faster);
}

Figures figuresOf(const CutWindowInput& in) {
    Figures f;
    f.line = timelineOf(in);
    f.lifeHours = in.vaseLifeDays.value * 24;
    f.afterAged = agedHours(f.line, f.line.afterMakeUp);
    f.agedToDrive = agedAfter(f.line, in.zone.hoursBetween(in.makeUpStart, in.driveStart));
    f.agedToEvent = agedAfter(f.line, in.zone.hoursBetween(in.makeUpStart, in.eventStart));
    f.leastAhead = in.conditioningHours.value;
    f.storageHours = storageHours(in);
    return f;
}

double agedBefore(const Figures& f, double ahead) {
    return agedHours(f.line, phasesBefore(f.line, ahead));
}

double lifeLeftDays(const Figures& f, double ahead) {
    return (f.lifeHours - f.afterAged - agedBefore(f, ahead)) / 24;
}

std::optional<StageAdvice> stageFor(const CutWindowInput& in, const Figures& f, double ahead) {
    const auto habit = habitOf(in);
    if (!habit) return std::nullopt;
    const double before = agedBefore(f, ahead);
    return adviseStage(*habit, before + f.agedToDrive, before + f.agedToEvent);
}

struct Limit {
    double ahead = 0; ///< hours before the make-up
    WindowLimit by{};
};

/// The longest a stem may be cut ahead.
Limit mostAhead(const Figures& f) {
    Limit most{yearHours, WindowLimit::oneYear};
    const double byLife = hoursAheadFor(f.line, f.lifeHours - f.afterAged);
    if (byLife < most.ahead) most = {byLife, WindowLimit::keepingLife};
    const double outside = std::max(f.line.bucket.hours, f.line.conditioning.hours);
    if (f.storageHours >= 0 && outside + f.storageHours < most.ahead)
        most = {outside + f.storageHours, WindowLimit::storageLimit};
    return most;
}

/// The least a stem must be cut ahead.
Limit leastAhead(const CutWindowInput& in, const Figures& f) {
    const Limit conditioning{f.leastAhead, WindowLimit::conditioning};
    const auto habit = habitOf(in);
    if (!habit) return conditioning;
    const double byOpening = hoursAheadFor(f.line, hoursToOpen(*habit, habit->furthest) - f.agedToEvent);
    if (byOpening <= conditioning.ahead + slackHours) return conditioning;
    return {byOpening, WindowLimit::opening};
}

LocalTime hoursBefore(const CutWindowInput& in, double hours, bool roundUp) {
    const double seconds = static_cast<double>(in.zone.instantNear(in.makeUpStart).seconds) - hours * 3600;
    // A thousandth of a second either way is rounding in the sums, not time.
    const double minutes = roundUp ? std::ceil((seconds - 1e-3) / 60) : std::floor((seconds + 1e-3) / 60);
    return in.zone.local(Instant{static_cast<std::int64_t>(minutes) * 60});
}

// ---- the working ----

class Lines {
public:
    explicit Lines(const CutWindowInput& in) : in_(in) {}

    void given(const std::string& what, const Sourced& value, Unit unit, Step step = Step::given) {
        lines_.push_back({what, value.value, unit, step, value.basis, value.source, in_.plant, value.from});
    }

    void computed(const std::string& what, double value, Unit unit, Step step) {
        lines_.push_back({what, value, unit, step, Basis::computed, "", in_.plant, {}});
    }

    void time(const std::string& what, LocalTime t, Step step) {
        computed(what, static_cast<double>(t.minutesSinceEpoch()), Unit::time, step);
    }

    /// Hours, temperature and what the two use of the life.
    void phase(const std::string& what, const Sourced& hours, const Sourced& celsius) {
        given(what, hours, Unit::hours);
        given("temperature", celsius, Unit::celsius);
        const double rate = std::pow(in_.q10.value, (celsius.value - lifeCelsius) / 10);
        computed("life used", hours.value / 24 * rate, Unit::days, Step::minus);
    }

    Working take() { return std::move(lines_); }

private:
    const CutWindowInput& in_;
    Working lines_;
};

void writeLife(Lines& lines, const CutWindowInput& in, const Figures& f) {
    lines.given("vase life at 20 C", in.vaseLifeDays, Unit::days);
    lines.given("Q10", in.q10, Unit::none);
    for (const LifePhase& phase : in.afterMakeUp)
        lines.phase(phase.what, phase.hours, phase.celsius);
    lines.given("conditioning in all", in.conditioningHours, Unit::hours);
    const std::vector<Phase> before = phasesBefore(f.line, f.leastAhead);
    Sourced hours = in.bucketHours;
    hours.value = before[0].hours;
    lines.phase("bucket", hours, in.bucketCelsius);
    hours = in.conditioningHours;
    hours.value = before[1].hours;
    lines.phase("conditioning", hours, conditioningCelsius(in));
    lines.computed("life left after conditioning", lifeLeftDays(f, f.leastAhead), Unit::days, Step::result);
}

void writeStore(Lines& lines, const CutWindowInput& in, const Figures& f, const Limit& most) {
    lines.given("store temperature", in.storeCelsius, Unit::celsius);
    const double rate = std::pow(in.q10.value, (in.storeCelsius.value - lifeCelsius) / 10);
    lines.computed("life used per day in the store", rate, Unit::days, Step::over);
    if (in.storageLimitDays) {
        lines.given("storage limit", *in.storageLimitDays, Unit::days);
        if (in.storageLimitCelsius)
            lines.given("storage limit temperature", *in.storageLimitCelsius, Unit::celsius);
        lines.computed("storage limit in this store", f.storageHours, Unit::hours, Step::result);
    }
    lines.computed("most ahead of make-up", most.ahead, Unit::hours, Step::result);
}

void writeOpening(Lines& lines, const CutWindowInput& in, const Figures& f) {
    const auto habit = habitOf(in);
    if (!habit) return;
    lines.given("opening at 20 C, from the listed stage", *in.openingHours, Unit::hours);
    lines.computed("opening at 20 C, from the furthest stage", hoursToOpen(*habit, habit->furthest),
                   Unit::hours, Step::given);
    lines.computed("opening from make-up to drive", f.agedToDrive, Unit::hours, Step::given);
    lines.computed("opening from make-up to event", f.agedToEvent, Unit::hours, Step::given);
}

void writeTimes(Lines& lines, const CutWindowInput& in, const Limit& least, const CutTimes& times) {
    lines.time("make-up start", in.makeUpStart, Step::given);
    lines.computed("least ahead of make-up", least.ahead, Unit::hours, Step::minus);
    lines.time("latest", times.latest, Step::result);
    lines.time("earliest", times.earliest, Step::result);
}

// ---- the answer ----

CutTimes timesOf(const CutWindowInput& in, const Figures& f, const Limit& least, const Limit& most) {
    CutTimes times;
    times.latest = hoursBefore(in, least.ahead, false);
    times.latestBy = least.by;
    times.earliest = std::min(hoursBefore(in, most.ahead, true), times.latest);
    times.earliestBy = most.by;
    times.lifeLeftAtEarliest = std::max(0.0, lifeLeftDays(f, most.ahead));
    times.lifeLeftAtLatest = std::max(0.0, lifeLeftDays(f, least.ahead));
    times.stageAtEarliest = stageFor(in, f, most.ahead);
    times.stageAtLatest = stageFor(in, f, least.ahead);
    return times;
}

std::optional<NoCut> impossible(const Figures& f, const Limit& least, const Limit& most) {
    const double left = lifeLeftDays(f, f.leastAhead);
    if (left < -slackHours / 24) return NoCut{NoCutReason::lifeTooShort, -left};
    if (least.ahead <= most.ahead + slackHours) return std::nullopt;
    const bool stored = most.by == WindowLimit::storageLimit;
    return NoCut{stored ? NoCutReason::storageLimit : NoCutReason::openingTooLong, least.ahead - most.ahead};
}

} // namespace

Result<CutWindow, CutWindowFault> cutWindow(const CutWindowInput& in) {
    if (const auto fault = cutWindowFault(in)) return *fault;
    const Figures f = figuresOf(in);
    const Limit least = leastAhead(in, f);
    const Limit most = mostAhead(f);
    Lines lines(in);
    writeLife(lines, in, f);
    writeStore(lines, in, f, most);
    writeOpening(lines, in, f);
    CutWindow window;
    window.impossible = impossible(f, least, most);
    if (!window.impossible) {
        window.times = timesOf(in, f, least, most);
        writeTimes(lines, in, least, *window.times);
    }
    window.working = lines.take();
    return window;
}

Result<CutOutcome, CutWindowFault> cutOutcome(const CutWindowInput& in, LocalTime cut) {
    if (const auto fault = cutWindowFault(in)) return *fault;
    if (cut.minute < 0 || cut.minute >= 1440 || cut.day < *Day::fromYmd(1899, 1, 1) ||
        cut.day > *Day::fromYmd(2200, 12, 31))
        return CutWindowFault{CutWindowTrouble::badTime, "cut"};
    const Figures f = figuresOf(in);
    CutOutcome outcome;
    outcome.hoursAhead = in.zone.hoursBetween(cut, in.makeUpStart);
    const double ahead = std::max(0.0, outcome.hoursAhead);
    outcome.lifeLeftDays = lifeLeftDays(f, ahead);
    outcome.storeHours = phasesBefore(f.line, ahead)[2].hours;
    outcome.stage = stageFor(in, f, ahead);
    return outcome;
}

} // namespace withy::garden
