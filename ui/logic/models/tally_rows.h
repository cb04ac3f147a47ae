// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/plan.h"
#include "ui/logic/answers/answer.h"
#include "ui/logic/edits/tally_edits.h"
#include "ui/logic/format.h"

#include <optional>
#include <vector>

/// The tally of a booking's cutting as rows, worded: what the page shows without knowing what it means.
namespace withy::ui {

/// A slot that a plant nobody planned on could fill.
struct StandInOffer {
    Id<model::Slot> slot;
    QString words; ///< "small blue in Supper jar"
};

struct TallyRow {
    Id<model::Patch> patch;
    Id<model::Plant> plant;
    QString mark;  ///< the patch's number on the walk
    QString name;  ///< "Zinnia, coral"
    QString place; ///< "Tunnel side, Fri 10 Sep 06:10"
    QString stage; ///< "just opening · 80 with the spare"
    std::optional<Colour> colour;
    bool planned = false;
    std::int64_t need = 0;
    std::int64_t spare = 0;
    std::optional<std::int64_t> cut;        ///< over all rounds of the booking; blank: not counted
    std::optional<std::int64_t> thrownAway; ///< of those
    std::int64_t bunch = 0;                 ///< stems of a bunch; nought: not bunched
    QString against;                        ///< "of 72, 8 short"
    bool asks = false;                      ///< short, and counted
    QString thrownWords;                    ///< "3 thrown away"; empty when none
    QString remark;                         ///< what is odd, and taken all the same
    std::vector<StandInOffer> offers;       ///< of a plant in no slot

    friend bool operator==(const TallyRow& a, const TallyRow& b) { return a.patch == b.patch; }

    /// What can be used.
    [[nodiscard]] std::int64_t net() const { return cut.value_or(0) - thrownAway.value_or(0); }
};

/// Planned patches and those with a tally, in walking order.
std::vector<TallyRow> tallyRows(const model::Season& season, const plan::Plan& plan,
                                Id<model::Booking> booking, Day day);

/// "3 of 8 counted, 140 stems in. 8 zinnia are short."
Answer tallyAnswer(const model::Season& season, const std::vector<TallyRow>& rows);
/// "Friday 10 September 2027 · Library roof supper · 24 jars and 2 more".
QString tallyHead(const model::Season& season, Id<model::Booking> booking, Day day);

/// A patch, or a plant without one, that could join the tally.
struct FoundChoice {
    std::optional<Id<model::Patch>> patch;
    Id<model::Plant> plant;
    QString words; ///< "Cosmos, pale · Wall bed · 40 likely ready"
    bool inFlower = false;
};

/// Patches that are not in the tally, those in flower that day first; then plants without a patch.
std::vector<FoundChoice> foundChoices(const model::Season& season, const plan::Plan& plan,
                                      const std::vector<TallyRow>& rows, Day day);

} // namespace withy::ui
