// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/record_page.h"

namespace withy::ui {

RecordPage* sundriesPage(Workbench& bench);
/// Trays carry pieces; gridded boxes and buckets carry stems.
RecordPage* holdersPage(Workbench& bench);
RecordPage* vehiclesPage(Workbench& bench);

} // namespace withy::ui
