// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/papers/document.h"
#include "core/plan/index.h"
#include "core/plan/plan.h"

#include <QStringList>

/// What is said on paper where work, or flowers, can hurt someone. Local rules and those who know better come
/// first; nothing here says that a thing is safe.
namespace withy::ui {

/// Plants by what they may do, by name, each once.
struct PlantCautions {
    QStringList gloves; ///< sap, skin, thorns
    QStringList sap;    ///< sap and skin alone
    QStringList eaten;  ///< poison, food
    QStringList pets;
    QStringList air; ///< pollen, scent
};

PlantCautions plantCautions(const model::Season& season, const std::vector<Id<model::Plant>>& plants);
/// The same for who asks often.
PlantCautions plantCautions(const model::Season& season, const plan::Index& index,
                            const std::vector<Id<model::Plant>>& plants);
/// The booking's plants, as its stems are counted.
std::vector<Id<model::Plant>> plantsOf(const plan::BookingPlan& plan);

/// "Gloves and sleeves: for Euphorbia; ...", where there are such plants.
void addGloves(const PlantCautions& plants, papers::Cautions& cautions);
void addEaten(const PlantCautions& plants, papers::Cautions& cautions);
void addAir(const PlantCautions& plants, papers::Cautions& cautions);
/// All three, on every paper that flowers are worked by.
void addPlants(const PlantCautions& plants, papers::Cautions& cautions);
/// Loads and lifting, for who carries: the limit is the season's own.
void addLifting(const model::Season& season, papers::Cautions& cautions);
void addDriving(papers::Cautions& cautions);

} // namespace withy::ui
