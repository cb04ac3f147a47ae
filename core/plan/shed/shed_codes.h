// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/finding.h"

namespace withy::plan {

/// Findings of the shed; they go on where FindingCode ends. Days are written YYYY-MM-DD.
struct ShedCode {
    static constexpr FindingCode ribbonLengthNought{
        1000}; ///< subjects: ribbon: a reel or end without a length
    static constexpr FindingCode ribbonRunsOut{
        1001}; ///< subjects: ribbon, day; numbers: mm that cannot be cut
    static constexpr FindingCode kitRunsShort{
        1002}; ///< subjects: item, day; numbers: short by, bookings at once
    static constexpr FindingCode returnLate{1003}; ///< subjects: container, day due; numbers: how many
    static constexpr FindingCode trayTooSmall{
        1004}; ///< subjects: tray, design; numbers: its short side, mm wanted
    static constexpr FindingCode traysNotMeasured{1005};   ///< no tray has its sizes
    static constexpr FindingCode vehicleNotMeasured{1006}; ///< no vehicle has its load floor
    static constexpr FindingCode liftTooHeavy{1007};       ///< subjects: design; numbers: kg, limit kg
    static constexpr FindingCode loadNoRoom{
        1008}; ///< subjects: vehicle; numbers: things left standing, trips at least, larger than the floor
    static constexpr FindingCode loadOverPlate{1009}; ///< subjects: vehicle; numbers: kg over, plate kg
    static constexpr FindingCode tableSizesImpossible{1010}; ///< subjects: table, field
    static constexpr FindingCode tooManyCovers{1011};        ///< subjects: table; numbers: covers, most
    static constexpr FindingCode tablesWithoutPieces{
        1012}; ///< subjects: design, table; numbers: pieces, per table, tables
    static constexpr FindingCode pieceTooBigForTable{
        1013}; ///< subjects: design, table, container that fits; numbers: mm over
    static constexpr FindingCode pieceTightOnTable{1014}; ///< subjects: as above; numbers: mm on each side
    static constexpr FindingCode sightInTheWay{1015}; ///< subjects: design, table; numbers: mm lower would do
    static constexpr FindingCode loadTooMany{
        1016}; ///< subjects: vehicle; numbers: things, most that are laid out, trips at least
    static constexpr FindingCode ribbonNotCut{
        1017}; ///< subjects: ribbon, day, what is beyond; numbers: the most it may be
};

/// As findingWord(); empty for a code that is not the shed's.
std::string_view shedFindingWord(FindingCode code);

} // namespace withy::plan
