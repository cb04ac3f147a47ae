// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/text_label.h"
#include "ui/logic/models/sheet.h"

/// What the two sources of SheetTable share.
namespace withy::ui {

inline constexpr int linesARow =
    5; // the row, what is folded below it, its working, the ways out, its hairline

/// At the right of a column of figures, as a figure that opens has beside it; pixels.
inline constexpr int besideFigure = 2;

inline const SheetCell& cellAt(const SheetRow& row, int column) {
    static const SheetCell none;
    return static_cast<std::size_t>(column) < row.cells.size() ? row.cells[static_cast<std::size_t>(column)]
                                                               : none;
}

inline Ink inkOf(SheetCell::Tone tone) {
    switch (tone) {
    case SheetCell::Tone::second:
        return Ink::second;
    case SheetCell::Tone::asks:
        return Ink::osier;
    case SheetCell::Tone::text:
    case SheetCell::Tone::strong:
        break;
    }
    return Ink::text;
}

inline TypeRole typeOf(SheetCell::Tone tone) {
    return tone == SheetCell::Tone::strong || tone == SheetCell::Tone::asks ? TypeRole::strong
                                                                            : TypeRole::text;
}

inline bool isHead(RowLook look) {
    return look == RowLook::head || look == RowLook::dayHead;
}

} // namespace withy::ui
