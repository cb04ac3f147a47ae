// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/exchange/calendar_out.h"
#include "core/plan/plan.h"

#include <QDateTime>
#include <QString>

/// The season's bookings, rounds and steps as a file that any calendar takes in (RFC 5545).
namespace withy::ui {

/// Bookings that are not lost, their rounds, and the steps of the run-up that are not rounds. A thing's UID
/// comes from the season's year and place and the thing's own number, so that it is the same in every file,
/// whatever was renamed or moved meanwhile.
exchange::CalendarOut seasonCalendar(const model::Season& season, const plan::Plan& plan,
                                     const QDateTime& written);

/// Writes the file; the sentence that says why not, or an empty text.
QString writeCalendar(const model::Season& season, const plan::Plan& plan, const QDateTime& written,
                      const QString& path);

/// "Season 2027.ics".
QString calendarFileName(const model::Season& season);

} // namespace withy::ui
