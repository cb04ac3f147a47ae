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
};

Measure measureOf(model::TableKind kind, const model::FieldInfo& field, model::UnitSystem system);

/// What one `typed` unit is worth in the field's stored unit; nothing for a unit of something else.
/// 1 in = 25.4 mm, 1 ft = 304.8 mm, 1 yd = 914.4 mm, 1 mile = 1.609344 km and 1 lb = 0.45359237 kg are
/// exact (international yard and pound agreement of 1959); 1 oz is a sixteenth of a pound.
std::optional<double> worthOf(std::string_view storedUnit, const QString& typed);

/// Degrees Fahrenheit were typed for a field in degrees Celsius.
bool isFahrenheit(std::string_view storedUnit, const QString& typed);

} // namespace withy::ui
