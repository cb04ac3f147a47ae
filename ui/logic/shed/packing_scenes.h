// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/shed_plan.h"
#include "ui/logic/measures.h"
#include "ui/logic/shed/scene.h"

namespace withy::ui {

/// A tray from above with its pieces, `k` pixels a millimetre, words below in a width of `room`: its number
/// and weight, and the tables its pieces are for.
Scene trayScene(const model::Season& season, const plan::PackedTray& tray, int number, double k, double room,
                const SceneLook& look);

/// The vehicle's floor from above, its front at the top, with the numbers of the load in order.
Scene floorScene(const plan::BookingPacking& packing, const model::Vehicle& vehicle, double k,
                 const SceneLook& look);

/// "1 to 4", "9, 10": the tables a tray is for; empty when nobody said.
QString tablesOfTray(const plan::PackedTray& tray);
/// "5.7 kg", "at least 5.7 kg".
QString weightWords(Grams weight, bool partlyKnown, Units units);
/// "Tray 3", "Bucket, 38 stems of Door pedestal": one entry of the load.
QString entryWords(const model::Season& season, const plan::BookingPacking& packing, std::size_t entry);
/// Number of a tray among all of the booking's, from 1.
int trayNumber(const plan::BookingPacking& packing, std::size_t drop, std::size_t tray);
/// Entries in the order they go in, those without room last.
std::vector<std::size_t> loadOrder(const plan::BookingPacking& packing);

} // namespace withy::ui
