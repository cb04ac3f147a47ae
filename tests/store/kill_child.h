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
/// commit() has returned. Does not come back by itself. Rests so long after each; without a rest the
/// file is locked for most of the time, as no hand at a window would keep it.
int editUntilKilled(const QString& path, unsigned long restMs);
/// Begins a file beside `path`, says its name and waits to be killed.
int holdPart(const QString& path);

} // namespace withy::test
