// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "ui/logic/models/cover_facts.h"
#endif

#include <QString>

#include <cstdint>
#include <optional>
#include <vector>

/// The figures of the bloom strip: what stands ready on every day of the season, plant by plant, and the
/// bookings on their days. Facts only; strip_words.h puts them into words.
namespace withy::ui {

/// Stems standing ready on one day: sums of the patches' own quantiles (garden::DayForecast::standing).
struct StripLevels {
    std::int64_t cautious = 0;
    std::int64_t likely = 0;
    std::int64_t hopeful = 0;

    friend bool operator==(const StripLevels&, const StripLevels&) = default;
};

/// One plant, all its patches together.
struct StripBand {
    Id<model::Plant> plant;
    QString name; ///< "Dahlia, plum"
    QString kind; ///< "Dahlia": as long as no other band has it too, else the whole name
    std::optional<Colour> colour;
    std::vector<StripLevels> days; ///< from StripFigures::first
    int peak = 0;                  ///< the first day of its most likely stems

    friend bool operator==(const StripBand&, const StripBand&) = default;
};

struct StripPin {
    Id<model::Booking> booking;
    int day = 0; ///< of its event, from StripFigures::first
    QString title;
    model::Standing standing = model::Standing::booked;
    std::optional<CoverFacts> cover;

    friend bool operator==(const StripPin&, const StripPin&) = default;
};

struct StripFigures {
    Day first;
    int days = 0;
    std::optional<int> today; ///< from `first`; blank: outside, or not known
    bool known = false;       ///< false: the garden has not been reckoned yet
    std::vector<StripBand>
        bands; ///< in order of peak, the earliest at the baseline; none without a likely stem
    std::vector<StripLevels> sums; ///< over the bands' patches, by day
    std::vector<StripLevels> leaf; ///< over those of foliage, which stands for months and would hide the
                                   ///< rest: counted, and no band of it unless nothing else grows
    std::vector<StripPin> pins;    ///< by day; lost bookings are left out

    [[nodiscard]] Day dayAt(int index) const { return first + index; }

    /// The most likely stems on one day.
    [[nodiscard]] std::int64_t most() const;

    friend bool operator==(const StripFigures&, const StripFigures&) = default;
};

StripFigures stripFigures(const model::Season& season, const plan::Plan& plan, std::optional<Day> today);

} // namespace withy::ui
