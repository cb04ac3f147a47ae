// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/models/bloom_strip_model.h"

#include <set>

namespace withy::ui {

/// A design held against the season: which bands are its own, and when all its slots bloom.
struct StripDesign {
    std::set<Id<model::Plant>> plants;
    /// Days from StripFigures::first, both ends included: on each of them every slot that grows here has a
    /// plant with a likely stem. A slot whose plants stand in no patch (bought in, dried) asks for nothing.
    std::vector<std::pair<int, int>> spans;

    friend bool operator==(const StripDesign&, const StripDesign&) = default;
};

StripDesign stripDesign(const model::Season& season, const plan::Plan& plan, const StripFigures& figures,
                        Id<model::Design> design);

/// "Supper jar: all slots bloom Mon 5 Jul to Fri 20 Aug"; what to know where they never do.
QString stripDesignWords(const model::Season& season, const StripFigures& figures, Id<model::Design> design,
                         const StripDesign& held);

} // namespace withy::ui
