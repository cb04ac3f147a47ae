// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/season.h"

#include <QString>

namespace withy::ui {

/// "Plants, 159".
QString tableWithCount(const model::Season& season, model::TableKind kind);
/// "plant.csv"
QString tableFileName(model::TableKind kind);

} // namespace withy::ui
