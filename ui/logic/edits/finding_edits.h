// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/models/finding_list.h"

namespace withy::ui::edits {

/// Keeps quiet about this finding until its facts change. `day` is the day it was accepted.
model::Edit acceptFinding(const model::Season& season, const ListedFinding& listed, Day day);
/// Asks about it again.
model::Edit askAgain(const model::Season& season, const ListedFinding& listed);

} // namespace withy::ui::edits
