// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/type.h"

#include <cmath>

/// The grid of the look: steps of 4 px at the usual size of text, growing with the text.
namespace withy::ui {

/// `steps` of the 4 px grid in pixels: grid(2) is 8, grid(6) the page's margin.
inline int grid(double steps) {
    return static_cast<int>(std::lround(steps * 4 * textPoints() / 10.5));
}

inline int pageMargin() {
    return grid(6);
}

inline int railWidth() {
    return grid(23);
}

inline int listWidth() {
    return grid(86);
}

inline int tableRow() {
    return grid(10.25);
}

inline int listRow() {
    return grid(13);
}

inline int control() {
    return grid(8);
} ///< height of a field or button

inline int controlInRow() {
    return grid(7);
}

// Widths of lines and round corners do not grow with the text.
inline constexpr double hairline = 1;
inline constexpr double iconLine = 1.7;
inline constexpr double jarLine = 2;
inline constexpr int corner = 3;
inline constexpr int focusRing = 2;

} // namespace withy::ui
