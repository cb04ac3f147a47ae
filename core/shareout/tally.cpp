// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/shareout/tally.h"

#include <map>
#include <utility>

namespace withy::shareout {

namespace {

/// All notes of one plant in one patch.
struct PatchSum {
    std::optional<std::int64_t> cut;
    std::int64_t thrownAway = 0;
    bool thrown = false;
    std::optional<Stems> most;
};

using PatchSums = std::map<std::pair<Id<model::Plant>, Id<model::Patch>>, PatchSum>;
using Trouble = std::optional<TallyFault>;

Trouble checkFigure(const TallyLine& line, const std::optional<Stems>& figure) {
    if (!figure) return std::nullopt;
    const auto value = figure->value;
    if (value < 0) return TallyFault{TallyTrouble::negative, line.patch, line.plant, value, mostCounted};
    if (value > mostCounted)
        return TallyFault{TallyTrouble::tooLarge, line.patch, line.plant, value, mostCounted};
    return std::nullopt;
}

Trouble addNote(const TallyLine& line, PatchSums& sums) {
    if (auto t = checkFigure(line, line.cut)) return t;
    if (auto t = checkFigure(line, line.thrownAway)) return t;
    auto& sum = sums[{line.plant, line.patch}];
    if (line.cut) sum.cut = sum.cut.value_or(0) + line.cut->value;
    if (line.thrownAway) sum.thrownAway += line.thrownAway->value;
    sum.thrown = sum.thrown || line.thrownAway;
    if (line.mostExpected) sum.most = line.mostExpected;
    return std::nullopt;
}

Trouble addPatch(Id<model::Plant> plant, Id<model::Patch> patch, const PatchSum& sum,
                 std::optional<std::int64_t>& all, std::vector<TallyNote>& notes) {
    if (!sum.cut) {
        if (sum.thrown) notes.push_back({TallyFinding::thrownWithoutTally, patch, plant, {}, {}});
        return std::nullopt;
    }
    if (sum.thrownAway > *sum.cut)
        return TallyFault{TallyTrouble::moreThrownAway, patch, plant, sum.thrownAway, *sum.cut};
    if (sum.most && *sum.cut > sum.most->value)
        notes.push_back({TallyFinding::abovePatch, patch, plant, Stems(*sum.cut), *sum.most});
    all = all.value_or(0) + *sum.cut - sum.thrownAway;
    if (*all > mostCounted) return TallyFault{TallyTrouble::tooLarge, patch, plant, *all, mostCounted};
    return std::nullopt;
}

} // namespace

Result<TallySum, TallyFault> sumTally(const std::vector<TallyLine>& lines) {
    PatchSums sums;
    for (const auto& line : lines) {
        if (const auto t = addNote(line, sums)) return *t;
    }
    std::map<Id<model::Plant>, std::optional<std::int64_t>> plants;
    TallySum out;
    for (const auto& [key, sum] : sums) {
        if (const auto t = addPatch(key.first, key.second, sum, plants[key.first], out.notes)) return *t;
    }
    for (const auto& [key, sum] : sums) {
        if (!sum.cut && plants.at(key.first))
            out.notes.push_back({TallyFinding::patchNotCounted, key.second, key.first, {}, {}});
    }
    for (const auto& [plant, stems] : plants)
        out.counted.push_back({plant, stems ? std::optional(Stems(*stems)) : std::nullopt});
    return out;
}

} // namespace withy::shareout
