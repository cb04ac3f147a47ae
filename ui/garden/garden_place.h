// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/paged_place.h"

namespace withy::ui {

/// What grows and what stands ready: patches, plants and their facts, walks, weather, past blooms, stock.
class GardenPlace : public PagedPlace {
    Q_OBJECT

public:
    GardenPlace(Workbench& bench, QWidget* parent);
};

} // namespace withy::ui
