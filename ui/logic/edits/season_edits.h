// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/edits.h"

namespace withy::ui::edits {

/// Accepted warnings that are to speak again.
Edit tellAgain(const Season& season, const std::vector<std::int64_t>& acceptedFindings);

} // namespace withy::ui::edits
