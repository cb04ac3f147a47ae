// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/problem.h"
#include "core/base/quantity.h"
#include "core/base/result.h"
#include "core/base/working.h"
#include "core/packing/circle_rows.h"

#include <array>
#include <map>
#include <mutex>
#include <optional>
#include <string>

/// Pieces into trays of one kind. Problem fields: tray_length, tray_width, tare, padding, piece_diameter,
/// piece_weight, pieces, lifting_limit, trays_owned.
namespace withy::packing {

struct Tray {
    Millimetres length; ///< inside
    Millimetres width;
    std::optional<Grams> tare;
    std::optional<std::int64_t> owned; ///< blank: not counted
};

struct TrayPiece {
    Millimetres diameter; ///< the wider of container and spread
    std::int64_t count = 1;
    std::optional<Grams> weight; ///< one, with the water it travels with
    std::string subject;
};

/// Rows worked out before, for who fills many trays of a few kinds. Several threads may ask.
class TrayRooms {
public:
    CircleRows rows(Millimetres length, Millimetres width, Millimetres diameter);

private:
    std::mutex mutex_;
    std::map<std::array<std::int64_t, 3>, CircleRows> known_;
};

struct TrayTask {
    Tray tray;
    Millimetres padding; ///< between two pieces; half of it at the sides
    std::vector<TrayPiece> pieces;
    std::optional<Grams> liftingLimit;
    bool keepToLimit = true;    ///< put fewer into a tray rather than pass the limit
    TrayRooms* rooms = nullptr; ///< null: worked out anew
};

inline constexpr std::int64_t longestSide = 10'000;
inline constexpr std::int64_t mostTrayPieces = 20'000;
inline constexpr std::int64_t heaviestPiece = 1'000'000;

struct PlacedPiece {
    std::size_t piece = 0; ///< index into TrayTask::pieces
    Place centre;          ///< millimetres from the tray's near left corner
};

struct FilledTray {
    std::vector<PlacedPiece> pieces;
    RowsStand stand = RowsStand::square; ///< of a tray with pieces of one size
    bool mixed = false;                  ///< pieces of several sizes, in rows
    Grams weight;                        ///< of what is known
    bool partlyKnown = false;            ///< the tare or a piece's weight is blank: heavier in truth
    bool overLimit = false;
    Working working; ///< of the weight
};

struct TrayFillPlan {
    std::vector<FilledTray> trays;
    std::optional<std::int64_t> traysMissing; ///< blank when the trays were not counted
    std::int64_t overLimit = 0;               ///< trays
};

/// Trays of one size each, as full as circleRows() has them, pieces in the order given; the trays that are
/// not full share their pieces in rows, widest first, each row as deep as its widest piece (first fit
/// falling), where that takes fewer. Rows throughout where that takes fewer still. A piece too heavy for the
/// limit by itself has a tray to itself, over the limit. A piece wider than the tray is a problem:
/// piece_diameter, moreThan, with the side it must not exceed.
Result<TrayFillPlan, Problem> fillTrays(const TrayTask& task);

} // namespace withy::packing
