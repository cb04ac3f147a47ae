// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/edit.h"
#include "core/plan/plan.h"

#include <QString>

#include <optional>
#include <vector>

/// The rows of a booking's pieces, worded.
namespace withy::ui {

/// A figure, what it means for whoever hears it, and how it came about.
struct PieceFigure {
    QString figure;
    QString means;
    Working working;
    QStringList lines = {}; ///< a line each, where a unit alone does not say it (money); else empty
};

struct PieceRow {
    Id<model::Line> line;
    Id<model::Design> design;
    QString name;
    QString stands; ///< "Honey jar, 1 lb, moss ribbon"
    std::int64_t pieces = 0;
    std::int64_t spare = 0;
    PieceFigure stems;  ///< of one piece
    PieceFigure making; ///< of all of them, spare included
    QString where;      ///< "12 trestles, 2 each", "Library, foyer"; what to do when nothing says it
    bool placed = false;
    QString worth;  ///< "£228.00"
    QString priced; ///< "24 × £9.50", "no price yet"
};

/// `plan` may be null or older than the season: figures it does not know are left out.
PieceRow pieceRow(const model::Season& season, const plan::Plan& plan, const model::Line& line);
/// "3 h 29": the making of all pieces, spare ones included.
PieceFigure makingTotal(const model::Season& season, const plan::BookingPlan& plan);
/// "£337.00" at list price; empty when it is too large to add up.
PieceFigure worthTotal(const model::Season& season, const plan::BookingPlan& plan);
/// "No spare pieces.", "2 spare pieces."
QString spareWords(std::int64_t spare);

/// "2 on each of 12 trestles": the one press that puts the pieces on the tables.
struct PlacementOffer {
    Id<model::VenueTable> table;
    std::int64_t perTable = 1;
    QString words;
};

/// "24 supper jar on trestles", read.
struct PieceAsked {
    std::int64_t count = 1;
    std::optional<Id<model::Design>> design;
    std::optional<PlacementOffer> placement = std::nullopt;
    QString sentence = {}; ///< why there is no design

    [[nodiscard]] bool ok() const { return design && sentence.isEmpty(); }
};

/// The count may be left out. A part of the name is enough while only one design has it. "on" and the name
/// of tables of the booking's venue puts the pieces on them, when they go evenly.
PieceAsked readPiece(const model::Season& season, Id<model::Booking> booking, const QString& typed);
/// The count in front of what was typed, and the rest.
std::pair<std::optional<std::int64_t>, QString> splitCount(const QString& typed);

/// For each row of tables among which the pieces go evenly.
std::vector<PlacementOffer> placementOffers(const model::Season& season, const model::Line& line);
/// The tables of the booking's venue.
std::vector<const model::VenueTable*> tablesOf(const model::Season& season, Id<model::Booking> booking);

} // namespace withy::ui
