// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/palette.h"

#include <QRectF>
#include <QString>

class QPainter;

namespace withy::ui {

/// The number of a patch in a circle, as on the walk and on paper. In the middle of `box`.
void paintPatchMark(QPainter& painter, const QRectF& box, const QString& number, const Palette& palette);
/// A square in its place: stems that stand in the store. Those bought in are drawn empty and crossed, so that
/// they are never taken for our own.
void paintStoreMark(QPainter& painter, const QRectF& box, bool bought, const Palette& palette);

} // namespace withy::ui
