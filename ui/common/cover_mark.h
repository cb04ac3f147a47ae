// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/models/cover_facts.h"
#include "ui/paint/jar_mark.h"

namespace withy::ui {

/// A booking's jar: how far its stems are covered; empty once it is over, or while nothing is known.
JarMark coverMark(model::Standing standing, const std::optional<CoverFacts>& cover);

/// Of several marks the one that most wants the grower has the highest.
int urgency(const JarMark& mark);

} // namespace withy::ui
