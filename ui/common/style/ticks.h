// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStyle>

class QPainter;

/// Boxes to tick and round ones to choose from, in forms and in rows alike: a sheet with a line at its edge
/// that stands out by 3 : 1 in either theme, and the mark in green.
namespace withy::ui {

/// The side of a box; it grows with the text.
int tickSide();

void paintTickBox(QPainter& painter, const QRect& box, QStyle::State state);
void paintRadio(QPainter& painter, const QRect& box, QStyle::State state);

} // namespace withy::ui
