// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/shed/shed_input.h"

namespace withy::plan {

/// Trays of every drop, water to carry and the vehicle's floor. What stands in trays is packed drop by drop,
/// the kind of tray that needs fewest first, as far as there are any.
BookingPacking bookingPacking(const ShedInput& in, const model::Booking& booking, const BookingPlan& plan);

/// The trays of one drop. Pieces wider than every tray, of a tonne and more, or more than are
/// filled at all come back in `loose`.
struct TrayLine {
    Id<model::Line> line;
    Millimetres diameter;
    std::int64_t count = 0;
    Grams weight; ///< one, with the water it travels with
    bool partlyKnown = false;
    std::string subject;
};

struct DropTrays {
    std::vector<PackedTray> trays;
    std::vector<TrayLine> loose;
};

class TrayShelf {
public:
    explicit TrayShelf(const model::Season& season, packing::TrayRooms* rooms = nullptr);

    [[nodiscard]] bool empty() const { return kinds_.empty(); }

    /// The tray with the widest short side; null when none is measured.
    [[nodiscard]] const model::Holder* widest() const;
    [[nodiscard]] bool tooWide(Millimetres diameter) const; ///< for every tray there is
    DropTrays fill(const std::vector<TrayLine>& lines);

private:
    struct Kind {
        const model::Holder* holder;
        std::optional<std::int64_t> left; ///< blank: nobody has counted them
    };

    struct Choice {
        std::size_t kind = 0;
        DropTrays fill;
    };

    [[nodiscard]] DropTrays fillFrom(std::size_t kind, const std::vector<TrayLine>& lines) const;
    [[nodiscard]] std::vector<PackedTray> filled(const model::Holder& holder,
                                                 const std::vector<TrayLine>& in) const;
    [[nodiscard]] std::optional<Choice> choose(const std::vector<TrayLine>& lines,
                                               const std::vector<bool>& tried) const;
    [[nodiscard]] bool otherTakes(std::size_t kind, const std::vector<TrayLine>& lines,
                                  const std::vector<bool>& tried) const;

    const model::Season& season_;
    packing::TrayRooms* rooms_;
    std::vector<Kind> kinds_;
};

} // namespace withy::plan
