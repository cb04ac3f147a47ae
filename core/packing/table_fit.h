// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/problem.h"
#include "core/base/quantity.h"
#include "core/base/result.h"
#include "core/base/working.h"

#include <optional>
#include <string>
#include <vector>

/// Pieces among the place settings of a table, and under or over the eyes of those who sit there.
/// Problem fields: table_length, table_width, covers, covers_at_ends, setting_width, setting_depth,
/// clearance, footprint, pieces, top, underside, eye_line, eye_band.
namespace withy::packing {

enum class TableForm { round, rectangular };

struct TableTop {
    TableForm form = TableForm::rectangular;
    Millimetres length;               ///< a round table's diameter
    std::optional<Millimetres> width; ///< rectangular only
    std::int64_t covers = 0;          ///< all together; 0: no settings, the whole top is free
    std::int64_t coversAtEnds = 0;    ///< of these, at the two short ends
};

/// Room one cover takes. The defaults are common practice, no source.
struct PlaceSetting {
    Millimetres width{600}; ///< of the table's edge
    Millimetres depth{260}; ///< from the edge to the far side of plate and glasses
};

/// What the settings leave. A rectangle: the strip between the long sides' settings, shorter by the depth at
/// each end that has covers. A round table: the circle that is left when the depth is taken off all round.
struct FreeMiddle {
    Millimetres length; ///< round: diameter
    Millimetres width;
    std::int64_t mostCovers = 0; ///< that the edge has room for; straight settings on a round table are
                                 ///< chords: pi / asin(width / diameter)
    bool tooManyCovers = false;
    Working working; ///< of the width
};

/// Settings deeper than the table leave a middle below nought: stated as it is.
Result<FreeMiddle, Problem> freeMiddle(const TableTop& table, const PlaceSetting& setting);

enum class TableFit { fits, tight, tooBig };

struct PiecesOnTable {
    Millimetres footprint;  ///< the wider of container and spread
    std::int64_t count = 1; ///< in a row along the middle; on a round table in a ring, from seven one in it
    Millimetres clearance;  ///< wanted on each side of every piece
};

struct TableFitAnswer {
    TableFit fit = TableFit::fits;
    double eachSide = 0; ///< millimetres between piece and settings, and half of what is between two pieces,
                         ///< at the narrowest; below nought: so much over
    FreeMiddle middle;
    Working working; ///< of eachSide
};

/// fits: eachSide is the clearance or more; tight: less, but not below nought; tooBig: below nought.
Result<TableFitAnswer, Problem> fitOnTable(const TableTop& table, const PlaceSetting& setting,
                                           const PiecesOnTable& pieces);

/// The largest of these footprints that fits (with its clearance), the first of equals; nothing when none
/// does. Index into `footprints`.
Result<std::optional<std::size_t>, Problem> largestThatFits(const TableTop& table,
                                                            const PlaceSetting& setting,
                                                            const PiecesOnTable& pieces,
                                                            const std::vector<Millimetres>& footprints);

enum class Sightline { below, inTheWay, above };

/// Heights over the table's top. Eyes of those seated lie within half the band of the eye line; both defaults
/// are common practice, no source: tables and sitters differ.
struct SightlineAsked {
    Millimetres top;
    std::optional<Millimetres> underside; ///< of flowers held up on a stand; blank: they start at the table
    Millimetres eyeLine{400};
    Millimetres eyeBand{0};
};

struct SightlineAnswer {
    Sightline sight = Sightline::below;
    Millimetres spare;   ///< below: from the top up to the band; above: from the band to the underside
    Millimetres lowerBy; ///< in the way: so much lower would do ...
    std::optional<Millimetres> raiseBy; ///< ... or so much higher, on a stand
    Working working;
};

Result<SightlineAnswer, Problem> sightline(const SightlineAsked& asked);

} // namespace withy::packing
