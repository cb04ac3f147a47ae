// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/words.h"
#include "ui/paint/sketch.h"

#include <QRectF>
#include <QString>

#include <cstdint>
#include <optional>

class QPainter;

/// The cover mark: a small jar, filled as far as its stems are covered. Shape says it, colour only helps.
namespace withy::ui {

enum class Cover {
    covered, ///< full, lid on
    tight,   ///< half, lid on
    missing, ///< low, lid off and tilted, osier
    unknown, ///< empty, lid on: nothing walked yet
    settled  ///< empty, lid on
};

struct JarMark {
    Cover cover = Cover::unknown;
    std::optional<double> share{}; ///< really covered, 0 to 1; blank: as the cover says
    model::Standing standing = model::Standing::booked;
};

/// In the middle of `box`, as high as it allows.
void paintJar(QPainter& painter, const QRectF& box, const JarMark& mark, const Palette& palette);
/// Enquiries dotted, quotes dashed, all else whole.
Qt::PenStyle outlineOf(model::Standing standing);

/// Three slanted wraps: this is chosen.
void paintTie(QPainter& painter, const QRectF& box, const QColor& colour);

} // namespace withy::ui
