// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/working.h"
#include "core/base/zone.h"
#include "core/garden/opening.h"
#include "core/garden/sourced.h"

#include <optional>
#include <string>
#include <vector>

namespace withy::garden {

/// When one plant of one booking may be cut.
///
/// Latest: the start of the make-up less the conditioning hours; earlier still when even a flower
/// cut at the furthest stage would not be open as the event starts.
/// Earliest: life is counted in days at 20 C, used at Q10^((T - 20) / 10) (ageing.h). Bucket,
/// conditioning, every phase after the make-up and the store use life; what is left at the end of
/// the last phase must not be negative. The phases reach to the last hour at which the flowers must
/// look good, so the days asked for are among them. The store is also capped by the handbook's
/// storage limit, shortened in proportion to the ageing rate in a store warmer than the handbook's,
/// never lengthened in a colder one (own choice, cautious).
/// Conditioning begins in the patch-side bucket. Life is counted from the cut, at whatever stage;
/// opening time scales with temperature as ageing does.
struct LifePhase {
    std::string what; ///< key for the working: "bench", "cool rest", "van", "venue"
    Sourced hours;
    Sourced celsius;
};

struct CutWindowInput {
    std::string plant;    ///< name, for the working
    Sourced vaseLifeDays; ///< the least, at 20 C
    Sourced q10;
    std::optional<Sourced> storageLimitDays;
    std::optional<Sourced> storageLimitCelsius; ///< the limit holds here; the store's when not known
    Sourced conditioningHours;                  ///< the least
    std::optional<Sourced> conditioningCelsius; ///< the store's when not known
    std::optional<Sourced> openingHours;        ///< from the listed stage to open, at 20 C
    CutStage listedStage = CutStage::open;
    CutStage furthestStage = CutStage::open; ///< not tighter than listed
    Sourced bucketHours;                     ///< beside the patch, before the store
    Sourced bucketCelsius;
    Sourced storeCelsius;
    std::vector<LifePhase> afterMakeUp; ///< one after the other from the start of the make-up
    LocalTime makeUpStart;
    LocalTime driveStart;
    LocalTime eventStart;
    Zone zone = Zone::utc(); ///< hours over a change of the clocks are counted as they pass
};

enum class CutWindowTrouble {
    notFinite,  ///< not a number, or without bounds
    negative,   ///< less than nothing
    outOfRange, ///< days over 366, hours over 8784, Q10 not from 1 to 20, temperature not from -40 to 60
    badTime,    ///< not a time between 1900 and 2200
    outOfOrder, ///< make-up, drive, event not in this order; furthest stage tighter than listed
    tooShort,   ///< the phases end before the event starts
};

struct CutWindowFault {
    CutWindowTrouble trouble{};
    std::string field; ///< "vase life", "make-up start", or a phase's `what`
};

/// Nothing when the input is sound.
std::optional<CutWindowFault> cutWindowFault(const CutWindowInput& in);

enum class WindowLimit {
    conditioning, ///< latest: it needs this long before the make-up
    opening,      ///< latest: it needs this long to open
    keepingLife,  ///< earliest: cut before, it is spent at the end
    storageLimit, ///< earliest: the handbook keeps it no longer
    oneYear,      ///< earliest: nothing else limits it within a year
};

struct CutTimes {
    LocalTime earliest; ///< rounded up to the minute
    LocalTime latest;   ///< rounded down; where no whole minute is left, both are this
    WindowLimit earliestBy = WindowLimit::keepingLife;
    WindowLimit latestBy = WindowLimit::conditioning;
    double lifeLeftAtEarliest = 0; ///< days at 20 C, at the end, when cut at the limit before rounding
    double lifeLeftAtLatest = 0;
    std::optional<StageAdvice> stageAtEarliest; ///< nothing when the opening hours are not known
    std::optional<StageAdvice> stageAtLatest;
};

enum class NoCutReason {
    lifeTooShort,  ///< short by: days at 20 C
    storageLimit,  ///< it would have to be stored longer than it keeps, to open. Short by: hours
    openingTooLong ///< its life is spent before it opens. Short by: hours
};

struct NoCut {
    NoCutReason reason = NoCutReason::lifeTooShort;
    double shortBy = 0;
};

/// Exactly one of `times` and `impossible` is there.
struct CutWindow {
    std::optional<CutTimes> times;
    std::optional<NoCut> impossible;
    Working working;
};

Result<CutWindow, CutWindowFault> cutWindow(const CutWindowInput& in);

/// What becomes of a stem cut at `cut`, inside its window or not. So far only the checks ask: that a window
/// begins and ends where life and rest are just enough.
struct CutOutcome {
    double lifeLeftDays = 0; ///< at 20 C, at the end; negative when it is spent before
    double hoursAhead = 0;   ///< real hours before the make-up; negative when cut after it began
    double storeHours = 0;   ///< of these, in the store
    std::optional<StageAdvice> stage;
};

Result<CutOutcome, CutWindowFault> cutOutcome(const CutWindowInput& in, LocalTime cut);

} // namespace withy::garden
