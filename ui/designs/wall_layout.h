// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPointF>
#include <QRect>
#include <QRectF>
#include <QString>

#include <vector>

/// Where everything stands on a wall of shelves; no widget, so that it can be tested by itself.
namespace withy::ui {

/// A piece to be put up.
struct WallItem {
    int group = 0;
    QRectF boundsMm{0, 0, 1, 1}; ///< around the middle of its foot, y down
    int wordsWidth = 0;          ///< of its name and caption, the wider one
};

struct WallMeasures {
    int width = 800;   ///< of the whole wall
    int head = 90;     ///< room at the left for the rule and the group's name
    int drawing = 180; ///< height of the tallest piece of a shelf
    int words = 44;    ///< height of name and caption below the shelf
    int gap = 12;      ///< between pieces, and above a shelf
    int least = 80;    ///< width of the narrowest piece with its words
};

struct WallCell {
    QRect box;    ///< the piece and its words: what is washed when it is chosen
    QPointF foot; ///< where the middle of its foot stands
    double scale = 1;
};

/// One shelf; a group that does not fit on one goes on to a second board.
struct WallBoard {
    int group = 0;
    bool first = true; ///< carries the group's name
    int y = 0;         ///< of the shelf's line
    int top = 0;
    double scale = 1;
};

struct WallLayout {
    std::vector<WallCell> cells; ///< one each item, in their order
    std::vector<WallBoard> boards;
    int height = 0;
};

/// Items come sorted by group. One scale a group: its tallest piece as high as `drawing`, none wider than
/// the wall.
WallLayout layOut(const std::vector<WallItem>& items, const WallMeasures& measures);

} // namespace withy::ui
