// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/shed_plan.h"

#include <QStringList>

#include <optional>
#include <vector>

namespace withy::ui {

class Workbench;

/// A booking's containers of one kind that went out, or will have.
struct ReturnFacts {
    Id<model::Container> container;
    QString name; ///< "24 Honey jar went out"
    std::int64_t out = 0;
    std::optional<std::int64_t> back;
    std::optional<std::int64_t> broken;
    bool home = false; ///< nothing is left to be counted
    bool asks = false; ///< should be home by now
    QString said;      ///< "22 home, 2 broken"; "not counted yet"
};

/// Of the containers that come home at all, once they have gone out: from the make-up's day on, or where
/// something was noted already.
std::vector<ReturnFacts> returnFacts(const model::Season& season, const plan::BookingPlan& plan,
                                     std::optional<Day> today);

/// The ribbon that a booking's day leaves, to be written back to the stock.
struct RibbonBack {
    enum class State {
        none,    ///< no ribbon is cut for it
        waits,   ///< an earlier day's is written back first
        offered, ///< can be written back now
        done     ///< it was
    };
    State state = State::none;
    QString words;     ///< what is the case
    QStringList lines; ///< what will be written, one ribbon a line; when it is offered
    Day day;           ///< the cutting's; when it is offered
};

RibbonBack ribbonBack(const model::Season& season, const plan::ShedPlan* shed, Id<model::Booking> booking);

/// Writes back what the cutting of `day` leaves, as one edit. Only the earliest day that is still to be
/// written back, and only as it was seen: nothing happens a second time. True in `written` when it was done;
/// the sentence that says why not, or an empty text.
QString writeRibbonBack(Workbench& bench, Day day, bool& written);
/// What is said when it is done.
QString ribbonIsBackWords();

} // namespace withy::ui
