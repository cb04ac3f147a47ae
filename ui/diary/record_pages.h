// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/record_page.h"

/// The diary's pages of records.
namespace withy::ui {

RecordPage* busyPage(Workbench& bench);
/// Helpers, and when the chosen one is there.
RecordPage* helpersPage(Workbench& bench);
/// Rounds, with the bookings served and the tally of the chosen one.
RecordPage* roundsPage(Workbench& bench);
RecordPage* madePage(Workbench& bench);
RecordPage* returnsPage(Workbench& bench);
/// What to learn from each booking, and what was used and left.
RecordPage* notesPage(Workbench& bench);

} // namespace withy::ui
