// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cover/free_to_promise.h"

#include <map>

namespace withy::cover {

IsoWeek isoWeek(Day day) {
    const Day thursday = mondayOf(day) + 3;
    return {thursday.year(), (thursday.dayOfYear() - 1) / 7 + 1};
}

Day mondayOf(Day day) {
    return day - (day.weekday() - 1);
}

std::vector<PlantWeek> freeToPromise(const Allocation& allocation) {
    std::map<std::pair<Id<model::Plant>, Day>, PlantWeek> weeks;
    const auto weekOf = [&](Id<model::Plant> plant, Day day) -> PlantWeek& {
        const Day monday = mondayOf(day);
        auto& week = weeks[{plant, monday}];
        week.plant = plant;
        week.monday = monday;
        return week;
    };
    for (const auto& patch : allocation.problem.patches) {
        for (std::size_t i = 0; i < patch.ready.size(); ++i) {
            if (patch.ready[i] > 0)
                weekOf(patch.plant, patch.first + static_cast<int>(i)).expected += Stems(patch.ready[i]);
        }
    }
    for (const auto& lot : allocation.problem.lots) {
        if (lot.stems.value > 0) weekOf(lot.plant, lot.readyFrom).inStore += lot.stems;
    }
    for (const auto& piece : allocation.pieces) {
        if (piece.source == Source::offer) continue;
        auto& week = weekOf(piece.plant, piece.ready);
        const Claim claim = allocation.problem.demands[piece.demand].claim;
        (claim <= Claim::held ? week.promised : week.asked) += piece.stems;
    }
    std::vector<PlantWeek> all;
    for (auto& [key, week] : weeks) {
        week.free = week.expected + week.inStore - week.promised - week.asked;
        all.push_back(week);
    }
    return all;
}

} // namespace withy::cover
