// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/paper_shop.h"

namespace withy::ui {

/// "2027-09-11 Library roof supper, prep sheet": sorts by day in a folder, and holds no letter that a file
/// system of today refuses. Without an ending; at most 120 letters.
/// A paper of a week bears the week's Monday, one of a chosen day that day.
QString paperFileName(const model::Season& season, PaperKind kind, std::optional<Id<model::Booking>> booking,
                      std::optional<Day> day = std::nullopt);

/// Bookings whose guests come in the week (Monday to Sunday) of this day, lost ones left out, by time.
std::vector<Id<model::Booking>> bookingsOfWeek(const model::Season& season, Day day);

/// "Kept as 2027-09-11 Library roof supper, prep sheet.pdf."
QString keptAs(const QString& path);
QString notWritten(const QString& path, const QString& why);
QString printerRefused();
QString sentToPrinter();
QString chooseBookingFirst();
QString stillWriting();
/// When what there is to print could not be planned.
QString noPlan();
/// "4 papers are in Papers."
QString batchDone(int written, int all, const QString& folder);
/// "Laying out Library roof supper, prep sheet: 2 of 6."
QString batchProgress(int done, int all, const QString& name);

} // namespace withy::ui
