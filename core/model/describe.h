// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/schema.h"

/// The tables of each subject, in file order. schema.cpp joins them.
namespace withy::model {

std::vector<TableInfo> describeSettings();
std::vector<TableInfo> describeGarden();
std::vector<TableInfo> describeShed();
std::vector<TableInfo> describeDesigns();
std::vector<TableInfo> describeBookings();
std::vector<TableInfo> describeRunup();

} // namespace withy::model
