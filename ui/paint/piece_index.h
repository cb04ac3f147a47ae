// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/piece_drawing.h"

#include <map>

namespace withy::ui {

/// Which slots and plants each design of a season has, found in one go: for drawing many of them. Points into
/// the season, which outlives it unchanged.
class PieceIndex {
public:
    /// Slots with stems in making order, and beside each its best plant, null when it has none.
    struct Filled {
        std::vector<const model::Slot*> slots;
        std::vector<const model::Plant*> plants;
    };

    explicit PieceIndex(const model::Season& season);

    [[nodiscard]] const model::Season& season() const { return season_; }

    [[nodiscard]] const Filled& of(Id<model::Design> design) const;

private:
    const model::Season& season_;
    std::map<Id<model::Design>, Filled> filled_;
    Filled none_;
};

/// As pieceDrawing() of the season.
PieceDrawing pieceDrawing(const PieceIndex& index, Id<model::Design> design);

} // namespace withy::ui
