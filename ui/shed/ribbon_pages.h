// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/record_page.h"

namespace withy::ui {

/// The ribbons, and the chosen one's reels and ends.
RecordPage* ribbonsPage(Workbench& bench);
/// Ribbons shared out over the pieces of a line.
RecordPage* ribbonMixesPage(Workbench& bench);

} // namespace withy::ui
