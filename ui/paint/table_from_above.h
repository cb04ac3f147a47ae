// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packing/table_fit.h"
#include "ui/paint/piece_plan.h"

#include <optional>

/// A table from above with its place settings, its free middle and the pieces on it. Millimetres from the
/// table's middle, y down; the table's length lies across. One painter for screen, papers and gallery.
namespace withy::ui {

/// A plate with its cutlery.
struct CoverPlace {
    QPointF plate;      ///< its middle
    double degrees = 0; ///< the way the guest looks, clockwise from up
};

/// Evenly along the sides and ends (round: round the edge), the first side taking an odd one. More covers
/// than the edge has room for overlap, as they would on the table.
std::vector<CoverPlace> coverPlaces(const packing::TableTop& table, const packing::PlaceSetting& setting);

/// The strip (or circle) the settings leave, where it lies; nothing when they leave nothing or the table's
/// sizes make none.
std::optional<QRectF> freeMiddleOf(const packing::TableTop& table, const packing::PlaceSetting& setting);

/// Where `count` pieces of one footprint stand, as packing::fitOnTable() counts them: in a row sharing the
/// middle's length evenly; on a round table in a ring as far out as they go, from seven one inside it.
std::vector<QPointF> piecePlaces(const packing::TableTop& table, const packing::PlaceSetting& setting,
                                 std::int64_t count, double footprint);

struct TablePlanLook {
    Palette palette;
    bool settings = true;  ///< plates and cutlery
    bool middle = true;    ///< the free middle, on mist between dashed lines
    bool chairs = false;   ///< outside the edge
    bool lineOnly = false; ///< paper
    QColor edge{};         ///< of the table's edge; invalid: ink
    double edgeWidth = 1.7;
};

/// The table without pieces, its middle at the origin, `scale` pixels a millimetre.
Sketch tableFromAbove(const packing::TableTop& table, const packing::PlaceSetting& setting, double scale,
                      const TablePlanLook& look);

/// A piece in its place.
struct PlannedPiece {
    const PieceDrawing* piece = nullptr;
    QPointF at; ///< mm from the table's middle
    FromAboveLook look;
};

Sketch tableWithPieces(const packing::TableTop& table, const packing::PlaceSetting& setting,
                       const std::vector<PlannedPiece>& pieces, double scale, const TablePlanLook& look);

/// Of the table alone, around its middle; with chairs if there are any.
QRectF tableBoundsMm(const packing::TableTop& table, bool chairs);

} // namespace withy::ui
