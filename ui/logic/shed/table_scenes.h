// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/shed_plan.h"
#include "ui/logic/answers/answer.h"
#include "ui/logic/measures.h"
#include "ui/logic/shed/scene.h"

#include <optional>
#include <vector>

/// The tables of a booking's venue from above, one of them near to, and from its end. The hall itself is not
/// in the model: tables stand in rows.
namespace withy::ui {

/// One table in the hall: which kind, and which of them.
struct HallTable {
    std::size_t kind = 0;    ///< index into BookingTables::tables
    std::int64_t number = 1; ///< of its kind
    QRectF box;              ///< in the scene, with its chairs
    QString inWords;         ///< "Trestle 3, two pieces, 5 mm each side"
};

struct Hall {
    Scene scene;
    std::vector<HallTable> tables;
    double mmPerPx = 1;
};

/// Drawn to one scale in a width; `chosen` is tied. At most 60 tables of a kind are drawn.
Hall hallScene(const model::Season& season, const plan::BookingTables& tables, double width,
               std::optional<std::size_t> chosen, const SceneLook& look);

/// That the drawing is no plan of the hall, and what of it is not drawn.
QString hallNote(const model::Season& season, const plan::BookingTables& tables);

/// A table of this kind near to, with plates, pieces and the room beside them.
Scene nearScene(const model::Season& season, const plan::BookingTables& tables, std::size_t kind,
                double width, const SceneLook& look);
/// From the end of the table: the tallest piece, the eye line and what is clear between.
Scene endScene(const model::Season& season, const plan::PlacedTable& table, double width, double height,
               const SceneLook& look);

/// "24 jars stand on 12 tables. Eleven fit ...".
Answer tablesAnswer(const model::Season& season, const plan::BookingTables& tables);
/// "fits with 15 mm each side", "tight, 5 mm each side", "6 mm too big"; empty when nothing stands there.
QString fitWords(const plan::PlacedTable& table, Units units);
/// "15", "−6": the figure beside a table.
QString fitFigure(const plan::PlacedTable& table, Units units);
/// "118 mm under the eye line"; "30 mm too tall to see over"; empty when nobody sits there.
QString sightWords(const plan::PlacedTable& table, Units units);
/// "2 Hedge tumbler, 220 mm across".
QString standingWords(const model::Season& season, const plan::PlacedTable& table);
/// "The largest container here that fits is the Tea tin, 90 mm."
QString largestWords(const model::Season& season, const plan::PlacedTable& table);
/// "1830 × 760 mm", "1520 mm round".
QString tableSize(const plan::PlacedTable& table, Units units);
bool asksForRoom(const plan::PlacedTable& table);

} // namespace withy::ui
