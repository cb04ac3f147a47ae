// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRectF>
#include <QSizeF>

namespace withy::paper {

enum class PaperSize { A4, Letter };

/// All lengths are millimetres of paper. Letter is 8.5 by 11 inches of 25.4 mm (ANSI/ASME Y14.1), A4 is
/// 210 by 297 mm (ISO 216).
inline QSizeF sizeOf(PaperSize paper) {
    return paper == PaperSize::A4 ? QSizeF(210, 297) : QSizeF(215.9, 279.4);
}

inline constexpr double kMargin = 13;

} // namespace withy::paper
