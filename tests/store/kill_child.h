// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/edit.h"

#include <QString>

namespace withy::test {

/// Edit number `k` of a fixed endless series; the settings' terms hold the number of the last one.
model::Edit editNumber(const model::Season& season, int k);
/// The number of the last edit that `season` holds.
int lastEdit(const model::Season& season);
/// Opens the file and commits edit after edit, reporting the number of each on standard output once
/// commit() has returned. Does not come back by itself.
int editUntilKilled(const QString& path);

} // namespace withy::test
