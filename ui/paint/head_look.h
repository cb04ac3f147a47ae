// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/paint/bloom_heads.h"

/// What heads have in common: two of one look are the same drawing but for size, tilt, place and a turn of
/// their rings that is too small to be seen.
namespace withy::ui {

struct HeadLook {
    HeadForm form = HeadForm::daisy;
    QColor bloom;
    QColor eye; ///< invalid: the form's own
    QColor edge;
    int turn = 0;      ///< of its rings, to the nearest of steps from -headTurns to headTurns
    bool left = false; ///< the side a trail hangs to; false for all other forms
    friend bool operator==(const HeadLook&, const HeadLook&) = default;
};

/// So many steps either way, each 0.03 radians: the rim of a head of 40 px is within a third of a pixel.
inline constexpr int headTurns = 4;

HeadLook lookOf(const Head& head, Theme theme);

/// Upright at `diameter`, its foot or middle at the origin.
Sketch uprightHead(const HeadLook& look, double diameter);

/// How far it is turned as a whole: a trail hangs, whatever its stem does.
double turnedBy(const Head& head);

/// Around a head as headSketch() draws it, turned by so many degrees more: to a hundredth of its diameter.
QRectF headExtent(const Head& head, double turned = 0);

} // namespace withy::ui
