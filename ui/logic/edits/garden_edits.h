// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/schema.h"
#include "ui/logic/edits.h"

#include <functional>

/// What the garden's pages change.
namespace withy::ui::edits {

/// Whether a plant's field is a fact with a basis of its own (its name, looks and notes are not).
bool isPlantFact(std::string_view field);

/// Adds to an edit that makes the season's plant into `changed`: the grower's own figure needs no source,
/// so the basis of each fact that differs becomes "mine"; a figure taken away takes its basis with it.
void markAsMine(const Season& season, Edit& edit, const model::Plant& changed);

/// A plant of the catalogue with its facts and cautions, as one step. Nothing when there is no such plant.
Edit addFromCatalogue(const Season& season, Id<model::Plant> inCatalogue, Id<model::Plant>& made);
/// The same plant again under a name of its own ("Zinnia 2"), facts and cautions included.
Edit duplicatePlant(const Season& season, Id<model::Plant> plant, Id<model::Plant>& made);

/// A blank row for every patch that has none on that day, in walking order. Empty when all have.
Edit newWalk(const Season& season, Day day, std::int64_t& first);

/// The name, or the first with a number that is not taken: "Zinnia 2".
std::string freeName(const std::string& name, const std::function<bool(const std::string&)>& taken);

} // namespace withy::ui::edits
