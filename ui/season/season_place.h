// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/paged_place.h"

namespace withy::ui {

/// The season as a whole: its orders, settings, usual figures, backups, tables as files.
class SeasonPlace : public PagedPlace {
    Q_OBJECT

public:
    SeasonPlace(Workbench& bench, QWidget* parent);
};

} // namespace withy::ui
