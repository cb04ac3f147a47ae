// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/plant_facts.h"

#include "core/model/origin.h"

namespace withy::plan {

garden::Sourced PlantFacts::known(const char* name, double value) const {
    const auto from = model::originOf(model::TableKind::plants, plant_.id.value);
    for (const auto* fact : Index::of(index_.facts, plant_.id)) {
        if (fact->fact == name) return {value, fact->basis, fact->source, from};
    }
    return {value, Basis::mine, "", from};
}

std::optional<garden::Sourced> PlantFacts::maybe(const char* name, const std::optional<double>& value) const {
    return value ? std::optional(known(name, *value)) : std::nullopt;
}

garden::Sourced PlantFacts::get(const char* name, const std::optional<double>& value,
                                const StandIn& standIn) {
    if (value) return known(name, *value);
    missing_.emplace_back(name);
    return {standIn.value, standIn.basis, standIn.source,
            model::originOf(model::TableKind::plants, plant_.id.value)};
}

bool serves(const model::Plant& plant, model::Purpose purpose) {
    switch (purpose) {
    case model::Purpose::focal:
        return plant.focal;
    case model::Purpose::spike:
        return plant.spike;
    case model::Purpose::filler:
        return plant.filler;
    case model::Purpose::foliage:
        return plant.foliage;
    case model::Purpose::airy:
        return plant.airy;
    case model::Purpose::trailing:
        return plant.trailing;
    }
    return false;
}

} // namespace withy::plan
