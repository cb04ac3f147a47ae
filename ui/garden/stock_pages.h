// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/record_page.h"

namespace withy::ui {

/// When each plant's first stems were really cut in past years.
RecordPage* pastBloomsPage(Workbench& bench);
/// Stems already cut or bought, standing in the store.
RecordPage* stockPage(Workbench& bench);

} // namespace withy::ui
