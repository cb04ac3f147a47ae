// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/garden/sourced.h"
#include "core/plan/index.h"

#include <optional>
#include <string>
#include <vector>

namespace withy::plan {

/// A figure that stands in for a fact nobody has written down.
struct StandIn {
    double value;
    Basis basis;
    const char* source;
};

/// Reads a plant's facts together with where each comes from (PlantFact); a fact without such a record
/// is the grower's own. `name` is the Plant field's name in files.
class PlantFacts {
public:
    PlantFacts(const Index& index, const model::Plant& plant) : index_(index), plant_(plant) {}

    /// The fact, or the stand-in; the latter is noted in missing().
    garden::Sourced get(const char* name, const std::optional<double>& value, const StandIn& standIn);
    [[nodiscard]] std::optional<garden::Sourced> maybe(const char* name,
                                                       const std::optional<double>& value) const;
    [[nodiscard]] garden::Sourced known(const char* name, double value) const;

    /// Names of the facts that were not there, in the order asked for.
    [[nodiscard]] const std::vector<std::string>& missing() const { return missing_; }

private:
    const Index& index_;
    const model::Plant& plant_;
    std::vector<std::string> missing_;
};

/// Whether the plant can do what a slot is for.
bool serves(const model::Plant& plant, model::Purpose purpose);

} // namespace withy::plan
