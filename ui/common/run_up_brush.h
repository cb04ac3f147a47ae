// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/run_up_paint.h"
#include "ui/paint/type.h"

#include <QPainter>
#include <QPainterPath>

namespace withy::ui {

/// What all that paints a run-up shares.
class BoardBrush {
public:
    BoardBrush(QPainter& p, const Board& board, const RunUpLayout& layout, BoardStyle style,
               const Palette& palette)
        : p_(p), board_(board), layout_(layout), week_(style == BoardStyle::week), palette_(palette) {}

protected:
    [[nodiscard]] QColor of(Role role) const { return palette_.of(role); }

    /// Elided where there is no room.
    void words(const QRectF& at, const QString& said, TypeRole role, const QColor& ink,
               Qt::Alignment align = Qt::AlignLeft | Qt::AlignVCenter);
    void hatch(const QPainterPath& clip, const QColor& ink, double step);
    static QPainterPath pathOf(const QRectF& rect);

    QPainter& p_;
    const Board& board_;
    const RunUpLayout& layout_;
    bool week_;
    const Palette& palette_;
};

/// Days, hours, light, warmth and lanes, before anything stands on them.
void paintRunUpGround(QPainter& painter, const Board& board, const RunUpLayout& layout, BoardStyle style,
                      const Palette& palette);

} // namespace withy::ui
