// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/record_page.h"

namespace withy::ui {

/// How long each kind of work takes here, and where the figure comes from.
RecordPage* ratesPage(Workbench& bench);

} // namespace withy::ui
