// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/cover/ninety_season.h"

/// Two suppers of thirty jars, three stems a jar, want the same ninety coral zinnias, which stand in the
/// store, so that both levels have exactly ninety. Salmon ones grow beside, more than enough.
namespace withy::ui::tests {

using plan::tests::addSupper;
using plan::tests::applied;
using plan::tests::askedSupper;
using plan::tests::bookedSupper;
using plan::tests::coral;
using plan::tests::jar;
using plan::tests::salmon;

inline model::StockLot coralLot(std::int64_t stems) {
    model::StockLot lot;
    lot.id = Id<model::StockLot>(1);
    lot.plant = coral;
    lot.stems = Stems(stems);
    lot.readyFrom = model::sample::day(2027, 9, 1);
    lot.homeGrown = true;
    return lot;
}

inline model::Season ninetyInStore(std::int64_t coralStems = 90) {
    auto e = plan::tests::ninetyRecords(1);
    e.put(plan::tests::bedOf(2, salmon, 600)).put(coralLot(coralStems));
    addSupper(e, bookedSupper, model::Standing::booked, 30);
    addSupper(e, askedSupper, model::Standing::enquiry, 30);
    auto season = applied({}, e);
    return applied(season, model::Edit("t").erase(Id<model::Patch>(1))); // no coral bed: counted, not guessed
}

} // namespace withy::ui::tests
