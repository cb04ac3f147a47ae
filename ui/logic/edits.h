// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/edit.h"

#include <QString>

/// What screens and commands call, in a grower's words; each builds one edit and changes nothing itself.
namespace withy::ui::edits {

using model::Edit;
using model::Season;

template <class R>
Edit put(const char* key, const R& record, std::vector<std::string> args = {}) {
    return Edit(key, std::move(args)).put(record);
}

/// A booking at noon on `day`, ready to be filled in.
Edit newBooking(const Season& season, const std::string& title, Day day, Id<model::Booking>& made);
/// With all that belongs to it: lines, drops, payments, notes.
Edit eraseBooking(const Season& season, Id<model::Booking> id);
Edit setPieces(const Season& season, Id<model::Line> line, std::int64_t pieces);
Edit eraseLine(const Season& season, Id<model::Line> line);
Edit eraseSlot(const Season& season, Id<model::Slot> slot);

/// The undo menu's words: "24 Supper jar for Library roof supper".
QString inWords(const model::EditName& name);

} // namespace withy::ui::edits
