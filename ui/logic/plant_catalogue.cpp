// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/plant_catalogue.h"

#include "ui/logic/format.h"
#include "ui/logic/starting_seasons.h"

#include <QSet>
#include <QStringList>

#include <algorithm>
#include <map>

namespace withy::ui {

namespace {

QString folded(const std::string& name) {
    return text(name).simplified().toCaseFolded();
}

bool holdsAll(const QString& name, const QStringList& words) {
    return std::all_of(words.begin(), words.end(), [&](const QString& w) { return name.contains(w); });
}

struct Counts {
    std::map<std::int64_t, int> facts;
    std::map<std::int64_t, int> cautions;
};

const Counts& counts() {
    static const Counts counted = [] {
        Counts c;
        for (const auto& f : plantCatalogue().plantFacts)
            ++c.facts[f.plant.value];
        for (const auto& h : plantCatalogue().plantHazards)
            ++c.cautions[h.plant.value];
        return c;
    }();
    return counted;
}

int of(const std::map<std::int64_t, int>& map, std::int64_t id) {
    const auto at = map.find(id);
    return at == map.end() ? 0 : at->second;
}

} // namespace

const model::Season& plantCatalogue() {
    static const model::Season catalogue = seasonWithPlants(emptySeason(2027).theSettings());
    return catalogue;
}

std::vector<CatalogueOffer> catalogueOffers(const model::Season& season, const QString& typed,
                                            std::size_t most) {
    QSet<QString> there;
    for (const auto& p : season.plants)
        there.insert(folded(p.name));
    const QString wanted = typed.simplified().toCaseFolded();
    const QStringList words = wanted.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    std::vector<CatalogueOffer> offers;
    for (const auto& p : plantCatalogue().plants) {
        if (there.contains(folded(p.name))) continue;
        if (!holdsAll(folded(p.name) + QLatin1Char(' ') + folded(p.botanicalName), words)) continue;
        offers.push_back({p.id, text(p.name), text(p.botanicalName), of(counts().facts, p.id.value),
                          of(counts().cautions, p.id.value)});
    }
    std::stable_sort(offers.begin(), offers.end(), [&](const CatalogueOffer& a, const CatalogueOffer& b) {
        const bool first = a.name.toCaseFolded().startsWith(wanted);
        const bool second = b.name.toCaseFolded().startsWith(wanted);
        return first != second ? first : a.name.localeAwareCompare(b.name) < 0;
    });
    if (offers.size() > most) offers.resize(most);
    return offers;
}

} // namespace withy::ui
