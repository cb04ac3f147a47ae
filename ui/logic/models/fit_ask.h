// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/fit_plan.h"

#include <QString>

#include <optional>
#include <vector>

/// What is asked on the telephone, as it is typed.
namespace withy::ui {

struct FitPieces {
    Id<model::Design> design;
    std::int64_t pieces = 1;
    std::int64_t tables = 0;   ///< nought: counted by the piece
    std::int64_t perTable = 1; ///< pieces on each

    friend bool operator==(const FitPieces&, const FitPieces&) = default;
};

struct FitDraft {
    std::optional<Day> day;
    int minute = 12 * 60; ///< of the guests
    std::optional<Id<model::Venue>> venue;
    QString title;
    std::vector<FitPieces> lines;
};

/// Four hours of guests, as a new booking has them.
inline constexpr Minutes usualStay{4 * 60};

/// Blank while the day or the pieces are.
std::optional<plan::FitAsk> askOf(const FitDraft& draft);

/// The next Saturdays on which no booking that stands has its guests, nor on the day before or after; for a
/// caller who has not said when. No more than `most`, none beyond the season.
std::vector<Day> freeSaturdays(const model::Season& season, std::optional<Day> today, std::size_t most);

/// "16 tables of supper jar", "16 tables of 2 supper jar", "24 supper jar", "pedestal"; "this jar" and "this
/// one" are `current`, where there is one.
struct FitPiecesReading {
    std::optional<FitPieces> pieces;
    QString sentence; ///< why it could not be read
};

FitPiecesReading readFitPieces(const model::Season& season, const QString& typed,
                               std::optional<Id<model::Design>> current = std::nullopt);

/// So many tables, or pieces, of it.
FitPieces withCount(FitPieces line, std::int64_t count);
std::int64_t countOf(const FitPieces& line);
/// "tables of Supper jar" and "two on each, so 32 pieces"; "Door pedestal" and nothing.
QString fitLineName(const model::Season& season, const FitPieces& line);
QString fitLineNote(const FitPieces& line);
/// "16 tables", "3 of Door pedestal".
QString fitCount(const model::Season& season, const FitPieces& line, std::int64_t pieces);

/// What the day field says of what was typed: a sentence, or empty when it could be read.
struct FitDayReading {
    std::optional<Day> day;
    std::optional<int> minute;
    QString sentence;
};

/// A day, with or without the hour of the guests.
FitDayReading readFitDay(const model::Season& season, const QString& typed);

} // namespace withy::ui
