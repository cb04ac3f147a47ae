// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/problem.h"
#include "core/plan/cover_plan.h"

#include <optional>
#include <vector>

/// "Can I take it?": a trial booking planned beside the season's own, which keep what they have.
namespace withy::plan {

enum class Fit { yes, tight, no };

struct FitLine {
    Id<model::Design> design;
    Pieces pieces;
};

struct FitAsk {
    LocalTime eventStart;
    LocalTime eventEnd;
    std::optional<Id<model::Venue>> venue;
    std::vector<FitLine> lines;
};

struct FitOptions {
    std::optional<Day> today; ///< nearest dates are not before it
    bool most = true;         ///< work out the most that fits
    bool dates = true;        ///< work out the nearest dates that fit, when the asked one does not
    int furthest = 28;        ///< days either way
    std::size_t wantedDates = 3;
    std::int64_t mostPieces = 1000; ///< nothing larger is tried
};

inline constexpr int fitReach = 4;

/// A plant's stems for the trial.
struct FitStems {
    Id<model::Line> line; ///< 1 is the first line of the ask, and so on
    Id<model::Slot> slot;
    Stems needed;
    std::array<Stems, levelCount> covered;
    std::array<Stems, levelCount> there; ///< what could be had, were so many times as much asked: fitReach
    std::vector<cover::Competitor> competitors; ///< of what is short at the cautious level
    std::vector<LeftOut> leftOut;
    bool supplyKnown = true;
};

enum class FitKitKind { container, bucket, coolSpace };

struct FitKit {
    FitKitKind kind{};
    std::optional<Id<model::Container>> container;
    std::int64_t needed = 0;           ///< by the trial
    std::int64_t promised = 0;         ///< to firm and held bookings at the same time
    std::int64_t asked = 0;            ///< by quoted and enquiring ones
    std::optional<std::int64_t> owned; ///< blank: not counted
    std::vector<Id<model::Booking>> others;
    Fit fit = Fit::yes;
};

struct FitHours {
    Minutes work;          ///< cutting, stripping, bench and making, of the trial
    Minutes free;          ///< beside busy hours and the work of firm and held bookings
    Minutes freeBesideAll; ///< beside the quoted and enquiring ones too
    LocalTime from;
    LocalTime to;
    std::vector<Id<model::Booking>> others;
    Fit fit = Fit::yes;
};

/// The largest number of pieces of one line, the others as asked.
struct FitMost {
    Pieces sure;   ///< with the answer yes
    Pieces likely; ///< with yes or tight
};

struct FitDate {
    LocalTime eventStart;
    Fit fit = Fit::yes;
};

struct FitAnswer {
    Fit fit = Fit::yes; ///< the worst of the three
    Fit stems = Fit::yes;
    Fit kit = Fit::yes; ///< of what is counted: a limit that nobody told stops nothing
    Fit hours = Fit::yes;
    std::vector<FitStems> slots;
    std::vector<FitKit> kits;
    FitHours work;
    std::vector<FitMost> most;               ///< by line of the ask
    std::vector<FitDate> dates;              ///< nearest first; the earlier of two as near
    std::vector<Id<model::Booking>> leaning; ///< that hold stems the trial could have used
    std::shared_ptr<const BookingPlan> plan; ///< of the trial
};

/// Problem fields: "lines" (none, or no such design), "pieces", "event_end", "cover" (there is no allocation
/// to hold it against).
Result<FitAnswer, Problem> fitCheck(const model::Season& season, const Plan& plan, const CoverPlan& cover,
                                    const FitAsk& ask, const FitOptions& options = {});

} // namespace withy::plan
