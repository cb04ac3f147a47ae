// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/design_words.h"
#include "ui/logic/models/water_view.h"

namespace withy::ui {

QStringList designNotes(const model::Season& season, const plan::Plan& plan, Id<model::Design> design,
                        std::optional<Day> today) {
    QStringList words;
    const auto water = waterView(season, plan, design, today);
    if (water.warns && !water.sentences.isEmpty()) words << water.sentences.front();
    if (const QString grows = growingOnWords(season, plan, design, today); !grows.isEmpty()) words << grows;
    words.removeDuplicates();
    return words;
}

} // namespace withy::ui
