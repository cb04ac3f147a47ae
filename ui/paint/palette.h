// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/colour.h"

#include <QColor>

/// Colours by meaning, the only place where a colour is a number. Ink acts, osier asks, plants speak.
namespace withy::ui {

enum class Theme { light, dark };

enum class Role {
    paper,   ///< the page
    sheet,   ///< fields, buttons, drawn tables
    mist,    ///< rail, menu, an opened working
    wash,    ///< the chosen row
    line,    ///< hairlines between rows; never the only cue
    edge,    ///< borders of controls, axes
    ink,     ///< text
    ink2,    ///< second line
    ink3,    ///< caption
    green,   ///< what is pressed or has been chosen
    onGreen, ///< a label on green
    osier,   ///< today, and what needs the grower
    water,   ///< water and nothing else
    waterEdge,
    night,
    dusk,
};

/// A theme's colours. Contrast of every text pair is at least 4.5 (checked in a test).
struct Palette {
    Theme theme = Theme::light;

    [[nodiscard]] QColor of(Role role) const;
    /// A plant's stored bloom colour as a QColor.
    [[nodiscard]] static QColor bloom(Colour colour);
    /// The 1 px edge around a bloom colour: white shows on paper, plum on black.
    [[nodiscard]] QColor bloomEdge(const QColor& bloom) const;
    /// Black or white, whichever reads better on `under`.
    [[nodiscard]] static QColor textOn(const QColor& under);
};

/// `share` (0 to 1) of the way from one colour to the other, channel by channel in sRGB.
QColor mixed(const QColor& from, const QColor& to, double share);

/// WCAG 2 contrast ratio of two opaque colours, 1 to 21.
double contrast(const QColor& a, const QColor& b);

} // namespace withy::ui
