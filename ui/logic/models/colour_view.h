// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/colour.h"
#include "core/model/edit.h"
#include "core/plan/piece_colours.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

/// Wished colours against those shown, worded.
namespace withy::ui {

struct ColourBand {
    Colour colour;
    QString name;
    std::optional<double> wished; ///< percent; blank: nothing was wished
    double shown = 0;             ///< percent
    bool asks = false;            ///< so much less shown than wished that it is worth saying
    QString means;                ///< "apricot: 7 % shown of a wished 15 %"
    Working working;              ///< of what is shown
};

/// The one press that mends a colour which is short.
struct ColourMendOffer {
    QString words; ///< "One more apricot snapdragon in each Supper jar"
    model::Edit edit{"slot.count"};
};

struct ColourView {
    QString title;                 ///< "Colours for Library roof supper"; for whom the wishes are
    std::vector<ColourBand> bands; ///< in the order wished, or the most shown first
    double other = 0;              ///< percent in none of the wished colours
    QStringList sentences;         ///< what is short and why, what is not counted
    std::optional<ColourMendOffer> mend;
    QString means; ///< the drawing in words
    model::UnitSystem units = model::UnitSystem::metric; ///< of the workings
    bool wished = false;
    bool real = false; ///< counted stems, not the design

    [[nodiscard]] bool empty() const { return bands.empty(); }
};

/// A wish is short, worth saying, when so many points of a hundred are missing (own choice).
inline constexpr double shortByPoints = 3;

/// All pieces of a booking; `real` is its share-out once something is tallied.
ColourView bookingColours(const model::Season& season, Id<model::Booking> booking,
                          const shareout::ShareOut* real = nullptr);
/// What stands on one such table.
ColourView tableColours(const model::Season& season, Id<model::VenueTable> table, Id<model::Booking> booking);
/// One piece of the design, against the wishes of the booking it is next made for; without wishes its own
/// colours.
ColourView designColours(const model::Season& season, Id<model::Design> design, std::optional<Day> today);

/// The booking a design is next made for: the first after `today` that is not over with; else none.
std::optional<Id<model::Booking>> nextBookingOf(const model::Season& season, Id<model::Design> design,
                                                std::optional<Day> today);

} // namespace withy::ui
