// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/season.h"
#include "core/papers/document.h"

#include <QString>

namespace withy::ui {

/// A design from the side in black line, with a rule of its own millimetres and a number at every slot.
struct MakeUpDrawing {
    papers::Drawing drawing;
    QString scale; ///< "1 : 2.5"
};

/// The largest usual scale that fits `width` by `height` millimetres of paper.
MakeUpDrawing makeUpDrawing(const model::Season& season, Id<model::Design> design, double width,
                            double height);

} // namespace withy::ui
