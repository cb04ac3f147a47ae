// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/design_words.h"
#include "ui/logic/models/size_words.h"
#include "ui/logic/models/water_view.h"
#include "ui/logic/wording.h"

#include <algorithm>

namespace withy::ui {

namespace {

/// The plan's "cannot be right" is said better by the sizes themselves.
bool saidBySizes(const plan::Finding& f, const std::vector<plan::SizeFinding>& sizes) {
    if (f.code != plan::FindingCode::sizesImpossible) return false;
    return std::any_of(sizes.begin(), sizes.end(),
                       [&](const auto& s) { return !f.subjects.empty() && f.subjects.back() == s.field; });
}

} // namespace

QStringList designFindings(const model::Season& season, const plan::Plan& plan, Id<model::Design> design,
                           std::optional<Day> today) {
    QStringList words;
    const auto sizes = plan::sizeFindings(season, design);
    const auto found = plan.designs.find(design);
    if (found != plan.designs.end() && found->second) {
        for (const auto& f : found->second->findings) {
            if (!saidBySizes(f, sizes)) words << sentence(f, season);
        }
    }
    for (const auto& s : sizes)
        words << sizeWords(s, season);
    const auto water = waterView(season, plan, design, today);
    if (water.warns && !water.sentences.isEmpty()) words << water.sentences.front();
    if (const QString grows = growingOnWords(season, plan, design, today); !grows.isEmpty()) words << grows;
    words.removeDuplicates();
    return words;
}

} // namespace withy::ui
