// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/season.h"

#include <QString>

#include <vector>

/// The plants that come with the program (:/withy/plants), to be taken into a season one by one.
namespace withy::ui {

struct CatalogueOffer {
    Id<model::Plant> plant; ///< in the catalogue, not in the season
    QString name;
    QString botanicalName;
    int facts = 0;
    int cautions = 0;
};

/// The catalogue as a season of its own: plants, their facts and cautions. Read once, when first asked for.
const model::Season& plantCatalogue();

/// Plants of the catalogue that the season has not (by name, whatever the case), in order of name; those
/// in whose names every word of `typed` occurs, the ones that begin with it first.
std::vector<CatalogueOffer> catalogueOffers(const model::Season& season, const QString& typed,
                                            std::size_t most = 12);

} // namespace withy::ui
