// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/paged_place.h"

namespace withy::ui {

/// The week of all bookings; busy hours, helpers, and what was written down as it went.
class DiaryPlace : public PagedPlace {
    Q_OBJECT

public:
    DiaryPlace(Workbench& bench, QWidget* parent);
};

} // namespace withy::ui
