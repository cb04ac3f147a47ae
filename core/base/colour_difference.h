// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/colour.h"

namespace withy {

/// CIE 1976 L*a*b*, D65.
struct Lab {
    double l = 0;
    double a = 0;
    double b = 0;
};

/// From sRGB (IEC 61966-2-1) with its own white.
Lab labOf(Colour colour);

/// CIEDE2000 with unit weights, by G. Sharma, W. Wu, E. N. Dalal, "The CIEDE2000 color-difference formula:
/// implementation notes, supplementary test data, and mathematical observations", Color Research and
/// Application 30 (2005) 21-30. Nought is the same, 100 is black against white.
double colourDifference(const Lab& x, const Lab& y);
double colourDifference(Colour x, Colour y);

} // namespace withy
