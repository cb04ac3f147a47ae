// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/fields/field_text.h"

namespace withy::ui {

/// Numbers, amounts, measures and hours of the day. Precondition: `typed` is trimmed and not empty.
FieldReading readFigure(const model::Season& season, model::TableKind kind, const model::FieldInfo& field,
                        const QString& typed);

} // namespace withy::ui
