// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/edits.h"
#include "ui/logic/models/fit_ask.h"

/// What was asked on the telephone, kept.
namespace withy::ui::edits {

/// An enquiry with its pieces, as asked. Precondition: askOf(draft) is there.
Edit enquiryOf(const Season& season, const FitDraft& draft, Id<model::Booking>& made);
/// The same, held until `until`.
Edit holdOf(const Season& season, const FitDraft& draft, Day until, Id<model::Booking>& made);
/// A week from today, never after the day itself; a week before it where no day is today.
Day usualHold(const FitDraft& draft, std::optional<Day> today);

} // namespace withy::ui::edits
