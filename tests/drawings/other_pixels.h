// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>

#include <algorithm>
#include <cstdlib>

namespace withy::ui {

/// Anti-aliasing differs a little from one version of Qt and one processor to the next: a pixel counts as
/// other when a channel is over 40 of 255 away, and six in a thousand may be.
inline constexpr int farChannel = 40;
inline constexpr double mostOther = 0.006;

inline double shareOfOtherPixels(const QImage& a, const QImage& b) {
    if (a.size() != b.size()) return 1;
    int other = 0;
    for (int y = 0; y < a.height(); ++y) {
        for (int x = 0; x < a.width(); ++x) {
            const QRgb p = a.pixel(x, y), q = b.pixel(x, y);
            const int far = std::max({std::abs(qRed(p) - qRed(q)), std::abs(qGreen(p) - qGreen(q)),
                                      std::abs(qBlue(p) - qBlue(q))});
            other += far > farChannel ? 1 : 0;
        }
    }
    return other / static_cast<double>(a.width() * a.height());
}

} // namespace withy::ui
