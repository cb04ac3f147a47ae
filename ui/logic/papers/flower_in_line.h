// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/garden.h"
#include "core/papers/document.h"

namespace withy::ui {

/// A plant's flower in black line, as large as a square of `side` millimetres of paper holds.
papers::Drawing flowerInLine(const model::Plant& plant, double side);

} // namespace withy::ui
