// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/packing/tray_fill.h"

namespace withy::packing {

/// Trays with rows of mixed pieces, `counts` of each; rows run along the length, or across it.
std::vector<FilledTray> mixedRows(const TrayTask& task, const std::vector<std::int64_t>& counts, RowsRun run);

/// Whether one more piece of `weight` may go into a tray that weighs `held` and is not empty.
bool mayCarry(const TrayTask& task, Grams held, const TrayPiece& piece);

} // namespace withy::packing
