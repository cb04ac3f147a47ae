// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/garden_words.h"

#include "core/model/schema.h"
#include "ui/logic/answers/garden_answers.h"
#include "ui/logic/edits/garden_edits.h"
#include "ui/logic/format.h"
#include "ui/logic/wording.h"

#include <QCoreApplication>

namespace withy::ui {

namespace {

struct GardenWordsSay {
    Q_DECLARE_TR_FUNCTIONS(Garden)
};

const model::PlantFact* factOf(const model::Season& season, Id<model::Plant> plant, std::string_view field) {
    for (const auto& f : season.plantFacts) {
        if (f.plant == plant && f.fact == field) return &f;
    }
    return nullptr;
}

/// The newest walk of a patch with a count, before `before`; of one day the last written.
const model::Walk* lastWalk(const model::Season& season, Id<model::Patch> patch, std::optional<Day> before) {
    const model::Walk* last = nullptr;
    for (const auto& w : season.walks) {
        if (w.patch != patch || !w.readyNow || (before && w.date >= *before)) continue;
        if (!last || w.date >= last->date) last = &w;
    }
    return last;
}

QString walkWords(const model::Walk* walk) {
    return walk ? GardenWordsSay::tr("%1, %2").arg(whole(walk->readyNow->value), shortDay(walk->date))
                : GardenWordsSay::tr("no walk yet");
}

QString kindWords(model::HazardKind kind) {
    switch (kind) {
    case model::HazardKind::sap:
        return GardenWordsSay::tr("Sap");
    case model::HazardKind::skin:
        return GardenWordsSay::tr("Skin");
    case model::HazardKind::poison:
        return GardenWordsSay::tr("Poison");
    case model::HazardKind::pets:
        return GardenWordsSay::tr("Pets");
    case model::HazardKind::pollen:
        return GardenWordsSay::tr("Pollen");
    case model::HazardKind::thorns:
        return GardenWordsSay::tr("Thorns");
    case model::HazardKind::scent:
        return GardenWordsSay::tr("Scent");
    case model::HazardKind::food:
        return GardenWordsSay::tr("Food");
    }
    return {};
}

} // namespace

QString walkingPlace(const model::Season& season, Id<model::Patch> patch) {
    int number = 0;
    std::optional<std::int64_t> place;
    for (const auto* p : inWalkingOrder(season)) {
        if (!place || p->place != *place) ++number;
        place = p->place;
        if (p->id == patch) return QString::number(number);
    }
    return {};
}

QString lastWalkWords(const model::Season& season, Id<model::Patch> patch) {
    return walkWords(lastWalk(season, patch, std::nullopt));
}

QString walkBeforeWords(const model::Season& season, Id<model::Walk> id) {
    const auto* walk = season.walks.find(id);
    return walk ? walkWords(lastWalk(season, walk->patch, walk->date)) : QString();
}

QString factBasis(const model::Season& season, Id<model::Plant> id, std::string_view name) {
    const auto* plant = season.plants.find(id);
    const auto* field = model::tableInfo(model::TableKind::plants).field(name);
    if (!plant || !field || !edits::isPlantFact(name)) return {};
    const auto value = field->get(plant);
    if (model::isBlank(value) || value == model::Value(std::string())) return GardenWordsSay::tr("not known");
    const auto* fact = factOf(season, id, name);
    if (!fact || fact->basis == Basis::mine) return GardenWordsSay::tr("yours");
    if (fact->source.empty()) return basisWords(fact->basis);
    return GardenWordsSay::tr("%1: %2").arg(basisWords(fact->basis), text(fact->source));
}

QString factRemark(const model::Season& season, Id<model::Plant> plant, std::string_view field) {
    const auto* fact = factOf(season, plant, field);
    return fact ? text(fact->remark) : QString();
}

QString cautionWords(const model::PlantHazard& hazard) {
    return GardenWordsSay::tr("%1. %2").arg(kindWords(hazard.kind), text(hazard.text));
}

QString offerWords(int facts, int cautions) {
    if (cautions == 0) return GardenWordsSay::tr("%n fact(s)", nullptr, facts);
    return GardenWordsSay::tr("%n fact(s), ", nullptr, facts) +
           GardenWordsSay::tr("%n caution(s)", nullptr, cautions);
}

QString plantAndWalk(const QString& plant, const QString& lastWalk) {
    return GardenWordsSay::tr("%1. %2.").arg(plant, lastWalk);
}

QString moreMovedLess(int patches) {
    return GardenWordsSay::tr("%n more moved less.", nullptr, patches);
}

QString weatherReadIn(int days) {
    return GardenWordsSay::tr("%n day(s) of weather read in.", nullptr, days);
}

QString weatherUnreadable(const QString& file, const QString& why) {
    return GardenWordsSay::tr("%1 cannot be read: %2. Choose another file.").arg(file, why);
}

QString weatherTooLarge(const QString& file) {
    return GardenWordsSay::tr("%1 is too large for days of weather. Choose another file.").arg(file);
}

} // namespace withy::ui
