// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/garden/cut_window.h"

#include <cmath>
#include <utility>

namespace withy::garden {

namespace {

/// Collects the first fault of a row of checks.
class Checks {
public:
    void days(const std::string& field, double value) { amount(field, value, 366); }

    void hours(const std::string& field, double value) { amount(field, value, 8784); }

    void celsius(const std::string& field, double value) { between(field, value, -40, 60); }

    void between(const std::string& field, double value, double least, double most) {
        if (!std::isfinite(value)) note(CutWindowTrouble::notFinite, field);
        if (value < least || value > most) note(CutWindowTrouble::outOfRange, field);
    }

    void time(const std::string& field, LocalTime t) {
        const bool clock = t.minute >= 0 && t.minute < 1440;
        const bool date = t.day >= *Day::fromYmd(1900, 1, 1) && t.day <= *Day::fromYmd(2200, 12, 31);
        if (!clock || !date) note(CutWindowTrouble::badTime, field);
    }

    void note(CutWindowTrouble trouble, const std::string& field) {
        if (!first_) first_ = CutWindowFault{trouble, field};
    }

    [[nodiscard]] bool clean() const { return !first_; }

    [[nodiscard]] std::optional<CutWindowFault> first() const { return first_; }

private:
    void amount(const std::string& field, double value, double most) {
        if (value < 0) note(CutWindowTrouble::negative, field);
        between(field, value, 0, most);
    }

    std::optional<CutWindowFault> first_;
};

void checkPlant(const CutWindowInput& in, Checks& check) {
    check.days("vase life", in.vaseLifeDays.value);
    check.between("Q10", in.q10.value, 1, 20);
    if (in.storageLimitDays) check.days("storage limit", in.storageLimitDays->value);
    if (in.storageLimitCelsius) check.celsius("storage limit temperature", in.storageLimitCelsius->value);
    check.hours("conditioning", in.conditioningHours.value);
    if (in.conditioningCelsius) check.celsius("conditioning temperature", in.conditioningCelsius->value);
    if (in.openingHours) check.hours("opening", in.openingHours->value);
    if (in.furthestStage < in.listedStage) check.note(CutWindowTrouble::outOfOrder, "furthest stage");
}

void checkPhases(const CutWindowInput& in, Checks& check) {
    check.hours("bucket", in.bucketHours.value);
    check.celsius("bucket temperature", in.bucketCelsius.value);
    check.celsius("store temperature", in.storeCelsius.value);
    double sum = 0;
    for (const LifePhase& phase : in.afterMakeUp) {
        check.hours(phase.what, phase.hours.value);
        check.celsius(phase.what, phase.celsius.value);
        sum += phase.hours.value;
    }
    check.hours("after make-up", sum);
}

void checkTimes(const CutWindowInput& in, Checks& check) {
    check.time("make-up start", in.makeUpStart);
    check.time("drive start", in.driveStart);
    check.time("event start", in.eventStart);
    if (!check.clean()) return;
    const double drive = in.zone.hoursBetween(in.makeUpStart, in.driveStart);
    const double event = in.zone.hoursBetween(in.makeUpStart, in.eventStart);
    if (drive < 0) check.note(CutWindowTrouble::outOfOrder, "drive start");
    if (event < drive) check.note(CutWindowTrouble::outOfOrder, "event start");
    double sum = 0;
    for (const LifePhase& phase : in.afterMakeUp)
        sum += phase.hours.value;
    constexpr double minute = 1.0 / 60.0;
    if (sum + minute < event) check.note(CutWindowTrouble::tooShort, "after make-up");
}

} // namespace

std::optional<CutWindowFault> cutWindowFault(const CutWindowInput& in) {
    Checks check;
    checkPlant(in, check);
    checkPhases(in, check);
    checkTimes(in, check);
    return check.first();
}

} // namespace withy::garden
