// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/edits.h"

#include <QString>

#include <array>
#include <optional>
#include <string_view>

/// A walk keyed in: one edit for each figure, so that undo takes one back.
namespace withy::ui::edits {

/// The three counts of a walk, as they are written.
enum class WalkCount { readyNow, withinThreeDays, withinWeek };

inline constexpr std::array allWalkCounts{WalkCount::readyNow, WalkCount::withinThreeDays,
                                          WalkCount::withinWeek};

/// "ready_now" ...
std::string_view fieldOf(WalkCount count);
std::optional<Stems> countOf(const model::Walk& walk, WalkCount count);

/// The walk of a patch on a day, of several the last written; null when there is none.
const model::Walk* walkOf(const Season& season, Id<model::Patch> patch, Day day);

/// Writes one count of the day's walk, making the walk where there is none yet; a blank takes the count
/// away, and the walk too when nothing else stands in it. Empty when there is no such patch.
Edit setWalkCount(const Season& season, Day day, Id<model::Patch> patch, WalkCount count,
                  std::optional<Stems> stems);
Edit setWalkRemark(const Season& season, Day day, Id<model::Patch> patch, const QString& remark);

/// What was typed into a count.
struct CountReading {
    std::optional<Stems> stems; ///< blank: nothing was typed
    QString sentence;           ///< why it cannot be taken; empty when it can

    [[nodiscard]] bool ok() const { return sentence.isEmpty(); }
};

/// "40"; "4+30+6" is added up; "=" takes `last`. A blank stays blank.
CountReading readCount(const Season& season, WalkCount count, const QString& typed,
                       std::optional<Stems> last = std::nullopt);

} // namespace withy::ui::edits
