// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/plan.h"

#include <QString>

/// Small facts of the shed in words.
namespace withy::ui {

/// A computed volume with its working, or why there is none.
struct VolumeWords {
    QString figure; ///< "482 ml"; empty when the sizes make no shape
    Working working;
    QString note; ///< "you measured 470 ml, which is used"; what is wrong with the sizes
};

VolumeWords containerVolume(const model::Season& season, Id<model::Container> container);
/// "470 ml, measured", "482 ml"; empty when the sizes make no shape.
QString volumeWords(const model::Season& season, Id<model::Container> container);
/// "24": the most one booking needs; empty when none does.
QString mostNeededWords(const plan::Plan& plan, Id<model::Container> container);

/// "24", "14.4 m", "3 rolls": an amount in thousandths, as kit is reckoned, in the sundry's own unit. Pieces
/// need none; null: a sundry that is gone.
QString sundryAmount(const model::Sundry* sundry, std::int64_t amount);

/// "11.50 m in 3 pieces"; "none".
QString ribbonOnHand(const model::Season& season, Id<model::Ribbon> ribbon);
/// "100 %", or what the shares come to and that they should come to 100.
QString mixShares(const model::Season& season, Id<model::RibbonMix> mix);

} // namespace withy::ui
