// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/models/share_search.h"

#include <QString>
#include <QStringList>

/// What is said of a share-out: the answer, why there is none, and how each plant was used up.
namespace withy::ui {

/// A refusal or a fault, with what would mend it.
QString shareStopWords(const model::Season& season, const plan::ShareStop& stop);
/// "Nothing is tallied yet. ..."
QString nothingTalliedWords();

/// What has no figure yet, though the pieces are short of it.
QString stillToCountWords(const model::Season& season, const std::vector<Id<model::Plant>>& plants);

/// "21 jars at full count, or 24 with one zinnia less in 8 of them": the answer in one sentence, without a
/// stop.
QString shareAnswer(const model::Season& season, const shareout::Ladder& ladder);
/// What the tally and the share-out remark: blanks, slips, plants in no slot, other bookings of the rounds.
/// What stands in the store without being wanted is no remark, nor a plant that nobody means to cut.
QStringList shareNotes(const model::Season& season, const ShareFound& found);

/// "64 = 16 × 3 + 8 × 2": one line for each plant that was counted and used or left.
QStringList shareWorkings(const model::Season& season, const shareout::ShareOut& share);
/// "24 jars", "24 jars and 2 pedestals": the pieces of a share-out.
QString sharedPieces(const model::Season& season, const shareout::ShareOut& share);
/// "24 jars" of one line.
QString sharedPieces(const model::Season& season, Id<model::Line> line, std::int64_t pieces);
/// The noun alone: "jars".
QString pieceNoun(const model::Season& season, Id<model::Line> line, std::int64_t pieces);

/// Pieces of a line that have less than is asked of them.
Pieces thinner(const shareout::LineShare& line);
/// Stems asked for over all slots and pieces, and given.
bool isShort(const shareout::LineShare& line);

/// "5 cosmos standing in": a way already chosen, in passing.
QString mixedWords(const model::Season& season, const shareout::Way& way);
/// "Chosen already: ...". What is offered below comes on top.
QString chosenAlready(const QStringList& ways);

/// A plain sentence for the client about what will be different, to copy into a letter.
QString clientDraft(const model::Season& season, Id<model::Booking> booking, const shareout::ShareOut& before,
                    const shareout::ShareOut& after);

} // namespace withy::ui
