// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/papers/document.h"

#include <string>
#include <vector>

namespace withy::papers {

/// The lines of a table in `width` columns: entries aligned by display width, long ones broken inside their
/// column, a rule under the head and above a total.
std::vector<std::string> tableLines(const Table& table, int width);

} // namespace withy::papers
