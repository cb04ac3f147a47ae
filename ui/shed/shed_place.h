// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/paged_place.h"

namespace withy::ui {

/// What stands on the shelves: containers, ribbons, sundries, trays and buckets, vehicles.
class ShedPlace : public PagedPlace {
    Q_OBJECT

public:
    ShedPlace(Workbench& bench, QWidget* parent);
};

} // namespace withy::ui
