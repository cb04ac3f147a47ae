// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/answers/answer.h"
#include "ui/logic/models/week_steps.h"

/// What the diary's pages begin with.
namespace withy::ui {

/// "21 h 10 of work for 3 bookings. Friday is the fullest day: 8 h 15." And what does not fit, with its
/// mends.
Answer weekAnswer(const std::vector<WeekDay>& days, const model::Season& season, const plan::Plan& plan);
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

} // namespace withy::ui
