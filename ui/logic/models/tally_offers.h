// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/models/tally_rows.h"

/// Where a plant that nobody planned on could go.
namespace withy::ui {

/// Slots of the booking's designs that want what the plant is (focal, filler ...), are not too long for it,
/// and name it neither themselves nor by an agreed swap.
std::vector<StandInOffer> standInOffers(const model::Season& season, const plan::Plan& plan,
                                        Id<model::Booking> booking, Id<model::Plant> plant);
/// "In no slot of this booking yet; it could stand in for small blue in Supper jar." What it fills already
/// when it is in one.
QString standInWords(const model::Season& season, Id<model::Booking> booking, Id<model::Plant> plant,
                     const std::vector<StandInOffer>& offers);

} // namespace withy::ui
