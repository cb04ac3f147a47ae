// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/colour.h"
#include "ui/logic/models/share_sums.h"
#include "ui/logic/models/share_words.h"

#include <optional>
#include <vector>

/// A share-out as data for the page and the make-up card: the ways out as choices, the pieces in groups.
namespace withy::ui {

/// One way to go on, with what it does to every piece.
struct ShareChoice {
    int way = -1;   ///< index into Ladder::ways; -1: as the tally is shared out with what the design allows
    QString head;   ///< "24 jars, 8 of them with nine stems"
    QString effect; ///< "Nothing stands in. 16 jars keep ten."
    QString figure; ///< "all 12 tables", "3 jars fewer"
    QString figureNote;   ///< "232 stems, 20 left"
    QString kept;         ///< what taking it writes down: "Keeps 21 jars in the booking."
    bool tooLate = false; ///< the day to order has passed
    bool whole = false;   ///< nothing is short any more
};

/// Stems of one plant in one slot of each piece of a group.
struct SharePart {
    Id<model::Slot> slot;
    Id<model::Plant> plant;
    QString slotName;          ///< "Round"
    QString name;              ///< "zinnia"
    std::optional<Colour> dot; ///< the plant's; blank: none is known
    std::int64_t stems = 0;    ///< nought where other groups have some
    bool varies = false;       ///< the groups of the line are not alike in it
    bool differs = false;      ///< from the first group
};

/// Equal pieces.
struct ShareGroup {
    Id<model::Line> line;
    std::int64_t pieces = 0;
    QString noun;                 ///< "jars"
    std::vector<SharePart> parts; ///< slots in making order; the same for all groups of a line
    bool odd = false;             ///< not the line's first group
    QString words;                ///< "2 dahlia, 3 zinnia, 1 snapdragon"
    QString means;                ///< for screen readers
};

struct ShareView {
    QString small;                    ///< "In came 64 zinnia of 72. So:"
    QString head;                     ///< the answer; or why there is none
    bool empty = false;               ///< there is no share-out: only `head` is to be shown
    std::vector<ShareChoice> choices; ///< empty when nothing is short
    QStringList notes;
};

/// `goals`: what the rows of the tally ask for.
ShareView shareView(const model::Season& season, const ShareFound& found, const StemsByPlant& goals = {});
/// The share-out a choice leads to. Precondition: it is one of found's.
const shareout::ShareOut& shareOf(const ShareFound& found, int way);

std::vector<ShareGroup> shareGroups(const model::Season& season, const shareout::ShareOut& share);
/// Of one line.
std::vector<ShareGroup> shareGroups(const model::Season& season, const shareout::LineShare& line);

/// "Make these 24"
QString makeThese(const shareout::ShareOut& share);

} // namespace withy::ui
