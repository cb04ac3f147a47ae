// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/season.h"

#include <QString>

#include <vector>

/// Wished colours as one says them: "plum 30, coral 30, apricot 15, bronze 25".
namespace withy::ui {

struct ColoursReading {
    std::vector<model::BookingColour> colours; ///< without id and booking
    QString sentence;                          ///< why they could not be read; empty when they could

    [[nodiscard]] bool ok() const { return sentence.isEmpty(); }
};

/// Each a name and a share, in either order. A name means the bloom of a plant that bears it ("coral":
/// Zinnia, coral), else what readColour makes of it; "#rrggbb" itself too.
ColoursReading readColours(const model::Season& season, const QString& typed);

/// "30 % plum, 30 % coral": what the bar shows, for those who cannot see it.
QString coloursWords(const std::vector<const model::BookingColour*>& colours);
/// What to say while the shares do not make up a whole; empty when they do, or none is said.
QString sharesWords(const std::vector<const model::BookingColour*>& colours);
std::vector<const model::BookingColour*> coloursOf(const model::Season& season, Id<model::Booking> booking);

} // namespace withy::ui
