// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/papers/document.h"

#include <string>
#include <vector>

/// Invented papers that use every kind of block.
namespace withy::samples {

papers::Document prepSheet();
papers::Document cuttingList();
papers::Document seasonOrders(int bookings);

/// So many drops; every second one with nothing known of it.
papers::Document runSheet(int drops);
/// So many things on each of seven days.
papers::Document weekBoard(int itemsADay);
papers::Document bucketLabels(int count);

/// Every string that should be readable on the printed paper, tally box sizes left out.
std::vector<std::string> wordsOn(const papers::Document& document);

} // namespace withy::samples
