// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/run_up_plan.h"
#include "ui/logic/measures.h"

#include <QString>

#include <optional>
#include <vector>

/// The run-up as days with a lane for each pair of hands, ready to be drawn.
namespace withy::ui {

enum class BoardLook {
    step,   ///< needs hands
    round,  ///< cutting
    thread, ///< drinking, resting: needs nobody
    busy,
    fixed, ///< the guests: cannot move
};

/// A stretch of a lane. A step laid down and taken up again has several, of which the first bears its words.
struct BoardBox {
    BoardLook look = BoardLook::step;
    LocalTime from; ///< cut off at the day's ends; to five minutes
    LocalTime to;
    QString name;                    ///< "Make 24"; empty for a later stretch
    QString detail;                  ///< "72 min with Wilf"
    QString letter;                  ///< of its booking, where several are shown
    QString spoken;                  ///< all of it in a sentence, with the exact times
    std::optional<std::size_t> step; ///< index into RunUpPlan::steps
    bool mine = true;                ///< serves the booking that is shown
    bool kept = false;
    bool done = false;
    bool outside = false; ///< has no place, or begins before it may
};

struct BoardLane {
    plan::Worker worker;
    bool nobody = false; ///< what nobody can do
    QString name;        ///< "You", "Wilf"
    QString hours;       ///< "13:00 to 17:00"; the hours of work for the grower
    std::vector<runup::TimeSpan> there;
    std::vector<BoardBox> boxes; ///< busy hours first, then threads, then steps by time
};

struct BoardDay {
    Day day;
    QString title; ///< "Friday 10 September"
    QString brief; ///< "Fri 10 Sep"
    QString rest;  ///< "the day before the event, up to 24 °C"
    QString over;  ///< "1 h 20 too much"; empty: it fits
    bool isToday = false;
    std::vector<double> heat;   ///< at each quarter hour from 0:00; empty: not known
    std::optional<double> dawn; ///< hours of the clock; blank: light or dark all day
    std::optional<double> sunrise;
    std::optional<double> sunset;
    std::optional<double> dusk;
    bool darkAllDay = false;
    Minutes work; ///< of all hands
    Minutes room; ///< hours there, busy ones left out
    std::vector<BoardLane> lanes;
};

struct Board {
    int firstHour = 6;
    int lastHour = 20;
    double heatLimit = 0;
    model::UnitSystem units = model::UnitSystem::metric; ///< in which temperatures are said
    std::vector<BoardDay> days;
    std::vector<std::pair<QString, QString>> key; ///< letter and booking, where several are shown
};

/// The days of one booking's work, with what else the same hands do then.
Board bookingBoard(const model::Season& season, const plan::Plan& plan, Id<model::Booking> booking,
                   std::optional<Day> today);
/// Seven days from Monday, all bookings.
Board weekBoard(const model::Season& season, const plan::Plan& plan, Day monday, std::optional<Day> today);

/// To the nearest five minutes.
LocalTime toFive(LocalTime t);
/// "Cut 133", "Ribbon": a step in a word or two.
QString shortStep(const plan::RunUpStep& step);
/// "up to 24 °C", of a day whose heat is known.
QString warmestWords(const BoardDay& day, Units units);

} // namespace withy::ui
