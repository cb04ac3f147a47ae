// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/season.h"

#include <QString>

/// Small facts of the garden in words.
namespace withy::ui {

/// "3": the third on the walk. Patches that share a place on the walk share its number.
QString walkingPlace(const model::Season& season, Id<model::Patch> patch);
/// "46, Sun 5 Sep"; "no walk yet".
QString lastWalkWords(const model::Season& season, Id<model::Patch> patch);
/// The same for the walk before this one.
QString walkBeforeWords(const model::Season& season, Id<model::Walk> walk);

/// Where a plant's fact comes from: "published: AHMAD12"; "yours" for a figure without a record of its
/// basis; "not known" for a blank one.
QString factBasis(const model::Season& season, Id<model::Plant> plant, std::string_view field);
/// What differs between sources, what the figure was measured on; mostly empty.
QString factRemark(const model::Season& season, Id<model::Plant> plant, std::string_view field);

/// "Poison for people. Bulb and leaf ..." with its basis.
QString cautionWords(const model::PlantHazard& hazard);
/// "Zinnia, coral. Walked 5 Sep: 46 ready."
QString plantAndWalk(const QString& plant, const QString& lastWalk);
/// Of a list that shows only the first.
QString moreMovedLess(int patches);
QString weatherReadIn(int days);
QString weatherUnreadable(const QString& file, const QString& why);
QString weatherTooLarge(const QString& file);

/// "48 facts, 2 cautions": what an offer of the catalogue brings along.
QString offerWords(int facts, int cautions);

} // namespace withy::ui
