// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/edits/garden_edits.h"

#include "ui/logic/answers/garden_answers.h"
#include "ui/logic/format.h"
#include "ui/logic/plant_catalogue.h"

#include <algorithm>
#include <array>
#include <set>

namespace withy::ui::edits {

namespace {

const model::PlantFact* factOf(const Season& season, Id<model::Plant> plant, std::string_view field) {
    for (const auto& f : season.plantFacts) {
        if (f.plant == plant && f.fact == field) return &f;
    }
    return nullptr;
}

/// Copies the facts and cautions of `from` (in `source`) to the plant `to`.
void copyParts(const Season& source, Id<model::Plant> from, const Season& season, Id<model::Plant> to,
               Edit& edit) {
    auto fact = season.plantFacts.nextId();
    for (const auto& f : source.plantFacts) {
        if (f.plant != from) continue;
        auto copy = f;
        copy.id = fact;
        copy.plant = to;
        edit.put(copy);
        ++fact.value;
    }
    auto hazard = season.plantHazards.nextId();
    for (const auto& h : source.plantHazards) {
        if (h.plant != from) continue;
        auto copy = h;
        copy.id = hazard;
        copy.plant = to;
        edit.put(copy);
        ++hazard.value;
    }
}

} // namespace

bool isPlantFact(std::string_view field) {
    static constexpr std::array<std::string_view, 12> none{
        "name", "botanical_name", "focal", "spike",    "filler",   "foliage",
        "airy", "trailing",       "shape", "colour_1", "colour_2", "colour_3"};
    return field != "notes" && std::find(none.begin(), none.end(), field) == none.end();
}

void markAsMine(const Season& season, Edit& edit, const model::Plant& changed) {
    const auto* plant = season.plants.find(changed.id);
    auto next = season.plantFacts.nextId();
    for (const auto& field : model::tableInfo(model::TableKind::plants).fields) {
        const auto value = field.get(&changed);
        if (!plant || !isPlantFact(field.name) || field.get(plant) == value) continue;
        const auto* old = factOf(season, changed.id, field.name);
        if (model::isBlank(value) || value == model::Value(std::string())) {
            if (old) edit.erase(old->id);
            continue;
        }
        model::PlantFact fact;
        fact.id = old ? old->id : next;
        fact.plant = changed.id;
        fact.fact = field.name;
        fact.basis = Basis::mine;
        if (!old) ++next.value;
        edit.put(fact);
    }
}

Edit addFromCatalogue(const Season& season, Id<model::Plant> id, Id<model::Plant>& made) {
    const auto* offered = plantCatalogue().plants.find(id);
    if (!offered) return Edit("plant.from_catalogue");
    auto plant = *offered;
    made = plant.id = season.plants.nextId();
    Edit edit("plant.from_catalogue", {plant.name});
    edit.put(plant);
    copyParts(plantCatalogue(), id, season, made, edit);
    return edit;
}

Edit duplicatePlant(const Season& season, Id<model::Plant> id, Id<model::Plant>& made) {
    const auto* old = season.plants.find(id);
    if (!old) return Edit("record.copy");
    auto plant = *old;
    made = plant.id = season.plants.nextId();
    plant.name = freeName(plant.name, [&](const std::string& name) {
        return std::any_of(season.plants.begin(), season.plants.end(),
                           [&](const model::Plant& p) { return p.name == name; });
    });
    Edit edit("record.copy", {plant.name});
    edit.put(plant);
    copyParts(season, id, season, made, edit);
    return edit;
}

Edit newWalk(const Season& season, Day day, std::int64_t& first) {
    std::set<std::int64_t> there;
    for (const auto& w : season.walks) {
        if (w.date == day) there.insert(w.patch.value);
    }
    Edit edit("walk.new", {day.iso()});
    auto next = season.walks.nextId();
    first = next.value;
    for (const auto* patch : inWalkingOrder(season)) {
        if (there.contains(patch->id.value)) continue;
        model::Walk walk;
        walk.id = next;
        walk.date = day;
        walk.patch = patch->id;
        edit.put(walk);
        ++next.value;
    }
    return edit;
}

std::string freeName(const std::string& name, const std::function<bool(const std::string&)>& taken) {
    if (!taken(name)) return name;
    std::string stem = name;
    while (!stem.empty() && stem.back() >= '0' && stem.back() <= '9')
        stem.pop_back();
    if (stem.empty() || stem.back() != ' ' || stem.size() == name.size()) stem = name + " ";
    for (int n = 2;; ++n) {
        const auto candidate = stem + std::to_string(n);
        if (!taken(candidate)) return candidate;
    }
}

} // namespace withy::ui::edits
