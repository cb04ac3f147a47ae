// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/schema.h"

#include <QString>

#include <optional>

/// Which unit a field is shown in, and what the units people type are worth.
namespace withy::ui {

/// How figures of one field are shown.
struct Measure {
    QString unit;      ///< "mm", "days"; empty: the bare figure
    QString one;       ///< for exactly one: "day"; the same as `unit` for symbols
    double worth = 1;  ///< stored units in one shown
    int decimals = -1; ///< at most so many; -1: as many as it takes
    double nought = 0; ///< what is shown for nought: 32 °F
};

Measure measureOf(model::TableKind kind, const model::FieldInfo& field, model::UnitSystem system);

/// What one `typed` unit is worth in the field's stored unit; nothing for a unit of something else.
/// Exact, see core/base/conversion.h. A pint or an ounce of water without a "US" is refused: there are
/// others.
std::optional<double> worthOf(std::string_view storedUnit, const QString& typed);

/// Degrees Fahrenheit were typed for a field in degrees Celsius.
bool isFahrenheit(std::string_view storedUnit, const QString& typed);

} // namespace withy::ui
