// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/shareout/ladder.h"
#include "ui/logic/edits.h"

#include <QString>

#include <optional>
#include <vector>

/// Cutting day: taking a way out of a short tally, what was made, what the client was told, the job note.
/// Each is one edit.
namespace withy::ui::edits {

struct ShareTaking {
    Id<model::Booking> booking;
    Day bench;                       ///< of the make-up
    shareout::ShareProblem before;   ///< as the season has it
    std::vector<shareout::Way> ways; ///< in turn, each from where the last one ended
};

/// All the ways as one edit. Fewer pieces change the line, the spare ones first. What changes a slot (one
/// stem less, a plant more, nothing standing in) changes the design when this booking alone uses it, else a
/// copy of it that the line then takes. What is bought becomes a lot, bought in, ready on the bench day.
/// Stems still to be cut stay as an open question in the brief, needed by the bench day: they count once they
/// are tallied. Empty when nothing is to be written down.
Edit takeWays(const Season& season, const ShareTaking& taking);

/// Pieces of every line as made, with the minutes for all of them (shared out by pieces) where they were
/// noted, and by whom.
Edit noteMade(const Season& season, Id<model::Booking> booking, const std::vector<shareout::LineShare>& lines,
              std::optional<Minutes> minutes, const QString& byWhom);

/// What the client was told, and when, among the answered questions of the booking. Without a day it stays
/// open: still to be told.
Edit noteTold(const Season& season, Id<model::Booking> booking, const QString& words, std::optional<Day> told,
              Day neededBy);

/// Whether one of the edits above put this question among those of its booking: it is about one cutting, and
/// no other booking's.
bool isOfOneCutting(const model::Question& question);

/// The three questions of a job note; blank answers stay blank.
struct JobNoteAnswers {
    std::vector<std::pair<Id<model::Plant>, std::optional<Stems>>> left;
    QString drooped;
    QString nextTime;
    std::optional<Minutes> making;
};

/// The booking's job note; an empty form makes none. What the note knows besides stays.
Edit noteJob(const Season& season, Id<model::Booking> booking, const JobNoteAnswers& answers);
/// What the note says now; blank where there is none.
JobNoteAnswers jobNoteOf(const Season& season, Id<model::Booking> booking);

} // namespace withy::ui::edits
