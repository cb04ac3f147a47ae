// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/plan.h"
#include "ui/logic/edits.h"

#include <QString>

#include <optional>
#include <vector>

/// What was really cut for a booking, noted patch by patch as the bunches come in. Each figure is one edit,
/// which finds or makes the round of the day too, so that one undo takes it all back.
namespace withy::ui::edits {

/// A booking's cutting on one day.
struct Cutting {
    Id<model::Booking> booking;
    LocalTime from; ///< of the round, should it have to be made
    LocalTime to;
    std::vector<Id<model::Booking>> others; ///< that the same outing cuts for, none of them with a round yet

    [[nodiscard]] Day day() const { return from.day; }
};

/// The hours are those of the day's planned round. With none planned it begins when the day's work does
/// (settings), and its end is not known. The outing that the run-up lays out says who else it cuts for.
Cutting cuttingOn(const Season& season, const plan::Plan& plan, Id<model::Booking> booking, Day day);

/// The round on that day that serves the booking, of several the one that begins first; null when there is
/// none yet.
const model::Round* roundOn(const Season& season, Id<model::Booking> booking, Day day);

/// The two counts of a tally.
enum class TallyCount { cut, thrownAway };

/// What is noted of a patch for a booking: on all its rounds, and of that on one day. Blank: not counted.
struct Tallied {
    std::optional<std::int64_t> all;
    std::optional<std::int64_t> onDay;

    [[nodiscard]] std::int64_t otherDays() const { return all.value_or(0) - onDay.value_or(0); }
};

Tallied tallied(const Season& season, Id<model::Booking> booking, Id<model::Patch> patch, Day day,
                TallyCount count = TallyCount::cut);

/// An edit, or the sentence that says why there is none and what would mend it.
struct TallyStep {
    Edit edit;
    QString sentence;

    [[nodiscard]] bool ok() const { return sentence.isEmpty(); }
};

/// So many more, or fewer with a minus; never below nought.
TallyStep addStems(const Season& season, const Cutting& cutting, Id<model::Patch> patch, TallyCount count,
                   std::int64_t by);
/// The count of the booking's whole cutting, what was noted on other days among it. A blank takes the day's
/// count away: nobody counted, which is not nought.
TallyStep setStems(const Season& season, const Cutting& cutting, Id<model::Patch> patch, TallyCount count,
                   std::optional<Stems> stems);
/// "64" sets the count; "12+10+8" several cutters' marks at once; "+12" and "+12+10" come on top; "-3" goes
/// off; nothing typed is a blank.
TallyStep typeStems(const Season& season, const Cutting& cutting, Id<model::Patch> patch, TallyCount count,
                    const QString& typed);

/// A patch found in flower that nobody planned on: it joins the tally with a blank count.
TallyStep addFound(const Season& season, const Cutting& cutting, Id<model::Patch> patch);
/// The same for a plant that has no patch yet: one is made for it at the end of the walk.
TallyStep addFoundPlant(const Season& season, const Cutting& cutting, Id<model::Plant> plant);
/// The plant is agreed to stand in for the slot's first plant, after what was agreed before.
TallyStep letStandIn(const Season& season, Id<model::Booking> booking, Id<model::Slot> slot,
                     Id<model::Plant> plant);

/// Why the booking's tally is closed; empty while it is open.
QString tallyClosed(const Season& season, Id<model::Booking> booking);

} // namespace withy::ui::edits
