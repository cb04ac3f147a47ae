// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/answers/answer.h"
#include "ui/logic/models/week_steps.h"

/// What the diary's pages begin with.
namespace withy::ui {

/// "21 h 10 of work for 3 bookings. Friday is the fullest day: 8 h 15." And what does not fit, with its
/// mends.
Answer weekAnswer(const std::vector<WeekDay>& days, const model::Season& season, const plan::Plan& plan);
/// "Too much for the hours there are: Friday 8 h 20 and Wednesday 6 h 02."; empty when all fits.
QString tooMuchWords(const std::vector<WeekDay>& days, const model::Season& season, const plan::Plan& plan);
/// "Today, 2 of 9 steps done. Next: Strip and stand deep at 09:15, then Wash 24 at 10:00."; empty on a day
/// without work.
QString todayWords(const model::Season& season, const plan::Plan& plan, Day today);
Answer weekPapersAnswer();
Answer busyAnswer(const model::Season& season);
Answer helpersAnswer(const model::Season& season);
Answer roundsAnswer(const model::Season& season);
Answer madeAnswer(const model::Season& season);
/// "40 of 64 are back; 24 are still out."
Answer returnsAnswer(const model::Season& season);
Answer notesAnswer(const model::Season& season);

// Columns of the diary's tables that are told, not typed.

/// "Mondays 09:00 to 15:00, 1 Mar to 25 Oct".
QString busyWhenWords(const model::Season& season, Id<model::BusyHours> id);
/// The titles of the bookings a round cuts for.
QString roundForWords(const model::Season& season, Id<model::Round> round);
/// Stems cut on it; empty while nothing is tallied.
QString roundStemsWords(const model::Season& season, Id<model::Round> round);
/// The booking, and the day of its event.
QString madeForWords(const model::Season& season, Id<model::Made> id);
/// Pieces that were to be made, the spare ones too.
QString madeAskedWords(const model::Season& season, Id<model::Made> id);

} // namespace withy::ui
