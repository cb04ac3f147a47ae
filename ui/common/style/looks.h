// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/palette.h"

#include <QStyle>

#include <optional>

class QPainter;
class QWidget;

/// What the parts of the window look like, by the word a page gives them in the property "look". The style
/// asks here for sizes and colours; nothing in this folder knows a page.
namespace withy::ui {

enum class Look {
    plain,
    main,    ///< the one button a page is about
    link,    ///< words that are pressed
    segment, ///< one of a row of buttons of which one is down
    step,    ///< more and less, and the number between them
    tally,   ///< counted on a cutting day
    tab,
    button, ///< a tool button like any other button
    quiet,  ///< only an icon until the pointer is on it
    figure, ///< a computed number, which opens its working
    field,  ///< a field that is plain text until one goes to it
    cell,   ///< a field in a row of a table
    title,
    list,  ///< its rows show the focus, not a frame around them
    popup, ///< what drops down from a field
    mist,
    working,
    rule,
    upright,
    hair,
};

Look lookOf(const QWidget* widget);

/// A field of several lines.
bool isText(const QWidget* widget);

/// True inside a table or list.
bool isInCell(const QWidget* widget);

/// From the outer edge of a control to what stands in it, and the least that is given to that; pixels.
struct Box {
    int side = 0;
    int above = 0;
    int below = 0;
    int leastHeight = 0;
    int leastWidth = 0;

    [[nodiscard]] QSize around(QSize contents) const;
    [[nodiscard]] QRect inside(const QRect& outer) const;
};

Box buttonBox(const QWidget* widget);
Box fieldBox(const QWidget* widget);

/// Room at the right of a field for the arrow that opens it.
int arrowWidth();

/// How a control shows itself in one state.
struct Dress {
    enum class Edges { all, below, aboveAndBelow };

    Role ink = Role::ink;
    std::optional<Role> fill = {};
    std::optional<Role> edge = {};
    Edges edges = Edges::all;
    Qt::PenStyle line = Qt::SolidLine;
    int width = 1; ///< of the edge
    bool round = true;
    bool underlined = false;
};

Dress buttonDress(const QWidget* widget, QStyle::State state);
Dress fieldDress(const QWidget* widget, QStyle::State state);

/// Bold for what is pressed, strong for figures, plain for the rest.
int buttonWeight(const QWidget* widget, bool down);

void paintDress(QPainter& painter, const QRect& outer, const Dress& dress);
void paintFocus(QPainter& painter, const QRect& outer);

/// The cross that empties a field.
void paintCross(QPainter& painter, const QRect& room);

/// The small arrow of what opens downward.
void paintArrow(QPainter& painter, const QRect& room, Role ink, bool up = false);

} // namespace withy::ui
