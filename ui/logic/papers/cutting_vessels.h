// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/season.h"

#include <QString>

#include <array>
#include <optional>
#include <vector>

/// Which bucket or box each row of a cutting list goes into.
namespace withy::ui {

/// Deals out numbered buckets and lettered boxes as a list is walked. Stems of one length class share buckets
/// while a whole row fits into the open one; the commonest bucket sets the measure, as in the kit. What is
/// for worn pieces goes into a gridded box, where there is one. No room stated: no vessel is named.
/// The order of filling is our own choice (common practice, no source).
class CuttingVessels {
public:
    explicit CuttingVessels(const model::Season& season);

    /// The vessels one row goes into; none when no room is known.
    struct Vessels {
        std::vector<QString> names; ///< "2", "3"; boxes "A"
        bool boxes = false;
        std::int64_t cells = 0; ///< of boxes
    };

    Vessels deal(std::int64_t stems, std::optional<Millimetres> length, bool personal);
    /// The same in words: "bucket 1", "buckets 2, 3", "box A, 2 cells of 15".
    QString next(std::int64_t stems, std::optional<Millimetres> length, bool personal);

private:
    Vessels buckets(std::int64_t stems, std::optional<Millimetres> length);
    Vessels cells(std::int64_t stems);

    struct Open {
        int number = 0; ///< of the bucket begun; nought: none
        std::int64_t room = 0;
    };

    const model::Holder* bucket_ = nullptr;
    const model::Holder* box_ = nullptr;
    std::array<Open, 3> open_{}; ///< by length class
    int buckets_ = 0;
    std::int64_t cells_ = 0; ///< taken so far
};

} // namespace withy::ui
