// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/papers/paper_cautions.h"

#include "ui/logic/format.h"
#include "ui/logic/measures.h"

#include <QCoreApplication>

namespace withy::ui {

namespace {

struct PaperCautionsSay {
    Q_DECLARE_TR_FUNCTIONS(PaperCautions)
};

const QString betweenNames = QStringLiteral("; ");

void keep(QStringList& names, const QString& name) {
    if (!names.contains(name)) names << name;
}

} // namespace

PlantCautions plantCautions(const model::Season& season, const std::vector<Id<model::Plant>>& plants) {
    return plantCautions(season, plan::Index(season), plants);
}

PlantCautions plantCautions(const model::Season& season, const plan::Index& index,
                            const std::vector<Id<model::Plant>>& plants) {
    using enum model::HazardKind;
    PlantCautions out;
    for (const auto id : plants) {
        const auto* plant = season.plants.find(id);
        if (!plant) continue;
        const QString name = text(plant->name);
        for (const auto* h : plan::Index::of(index.hazards, id)) {
            if (h->kind == sap || h->kind == skin || h->kind == thorns) keep(out.gloves, name);
            if (h->kind == sap || h->kind == skin) keep(out.sap, name);
            if (h->kind == poison || h->kind == food) keep(out.eaten, name);
            if (h->kind == pets) keep(out.pets, name);
            if (h->kind == pollen || h->kind == scent) keep(out.air, name);
        }
    }
    return out;
}

std::vector<Id<model::Plant>> plantsOf(const plan::BookingPlan& plan) {
    std::vector<Id<model::Plant>> out;
    for (const auto& need : plan.needs)
        out.push_back(need.plant);
    return out;
}

void addGloves(const PlantCautions& plants, papers::Cautions& cautions) {
    if (plants.gloves.isEmpty()) return;
    cautions.items.push_back(
        {utf8(PaperCautionsSay::tr("Gloves and sleeves")),
         utf8(PaperCautionsSay::tr("for %1. Wash hands after.").arg(plants.gloves.join(betweenNames)))});
}

void addEaten(const PlantCautions& plants, papers::Cautions& cautions) {
    QStringList names = plants.eaten;
    for (const auto& name : plants.pets)
        keep(names, name);
    if (names.isEmpty()) return;
    cautions.items.push_back(
        {utf8(PaperCautionsSay::tr("Harmful if eaten")),
         utf8(PaperCautionsSay::tr(
                  "%1. Keep from food, children and animals; if swallowed, medical help or a vet at once.")
                  .arg(names.join(betweenNames)))});
}

void addAir(const PlantCautions& plants, papers::Cautions& cautions) {
    if (plants.air.isEmpty()) return;
    cautions.items.push_back(
        {utf8(PaperCautionsSay::tr("Pollen or scent")),
         utf8(PaperCautionsSay::tr("%1. Hold them away from the face, let air in; a tight chest is for a "
                                   "doctor. Ask before they go near food or into a sickroom.")
                  .arg(plants.air.join(betweenNames)))});
}

void addPlants(const PlantCautions& plants, papers::Cautions& cautions) {
    addGloves(plants, cautions);
    addEaten(plants, cautions);
    addAir(plants, cautions);
}

void addLifting(const model::Season& season, papers::Cautions& cautions) {
    cautions.items.push_back(
        {utf8(PaperCautionsSay::tr("Lifting")),
         utf8(PaperCautionsSay::tr("over %1: two people, or two goes. %2; bend the knees, never twist.")
                  .arg(weightWords(season.theSettings().liftingLimitKg, season, -1),
                       Units(season).imperial()
                           ? PaperCautionsSay::tr("A US gallon of water is over 8 pounds")
                           : PaperCautionsSay::tr("A litre of water is a kilo")))});
}

void addDriving(papers::Cautions& cautions) {
    cautions.items.push_back({utf8(PaperCautionsSay::tr("The load:")),
                              utf8(PaperCautionsSay::tr(
                                  "low, tied and wedged, nothing loose behind the seats. The vehicle's plate "
                                  "and the rules of the road decide how much."))});
}

} // namespace withy::ui
