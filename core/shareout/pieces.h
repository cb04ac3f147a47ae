// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/shareout/share_out.h"

namespace withy::shareout {

/// One line's stems, `given` by slot and choice, dealt out to its pieces and put together again as groups and
/// as slots. Facts alone: what shareOut() promises of them is kept here.
LineShare piecesOf(const LineAsk& line, const std::vector<std::vector<std::int64_t>>& given);

} // namespace withy::shareout
