// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/bookings.h"
#include "ui/logic/measures.h"

#include <QString>

#include <vector>

/// Tables as one says them: "12 trestles of 8, 2 rounds of 10 at 1800 mm".
namespace withy::ui {

/// Sizes taken when none is said. Common practice, no source: a six-foot trestle and a five-foot round.
inline constexpr Millimetres usualTrestleLength{1830};
inline constexpr Millimetres usualTrestleWidth{760};
inline constexpr Millimetres usualRound{1500};

struct TablesReading {
    std::vector<model::VenueTable> tables; ///< without id and venue
    QString sentence;                      ///< why it could not be read; empty when it could

    [[nodiscard]] bool ok() const { return sentence.isEmpty(); }
};

/// Parts by comma, semicolon, plus, "and" or a line break; each a count, what they are, and "of" how many
/// sit at one; a size when it is said: "1830 x 760", "1.8 m", "6 ft".
TablesReading readTables(const QString& typed);

/// "12 trestles of 8, 2 rounds"
QString tablesWords(const std::vector<model::VenueTable>& tables);
/// "12 trestles", "1 top table"
QString tableWords(const model::VenueTable& table);
/// A table that stands alone: "the top table", "St Anne's table".
QString loneTableWords(const model::VenueTable& table);
/// "1830 x 760 mm", "1500 mm across"
QString tableSizeWords(const model::VenueTable& table, Units units);
/// The table has the size taken for want of a better.
bool hasUsualSize(const model::VenueTable& table);
/// What to say while some table of the venue has a size nobody measured; empty when none has.
QString usualSizeWords(const std::vector<const model::VenueTable*>& tables, Units units);

} // namespace withy::ui
