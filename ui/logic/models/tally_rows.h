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
    QString place; ///< "Tunnel side, 06:10"; cut before its day: "Tunnel side, early: planned for Fri 10 Sep"
    QString stage; ///< "just opening · 80 with the spare"
    std::optional<Colour> colour;
    bool planned = false;
    std::int64_t need = 0; ///< due by the day
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

/// What a booking's cutting is to bring in after a day.
struct TallyLater {
    std::int64_t stems = 0; ///< needed, without the spare
    Day last;               ///< of the rounds
};

/// Patches of which stems are due on the day or were before it, and those with a tally, in walking order. On
/// a day before all rounds, every planned patch.
std::vector<TallyRow> tallyRows(const model::Season& season, const plan::Plan& plan,
                                Id<model::Booking> booking, Day day);

/// Nothing when all is due by then, or nothing is yet.
std::optional<TallyLater> tallyLater(const model::Season& season, const plan::Plan& plan,
                                     Id<model::Booking> booking, Day day);
/// "3 of 8 counted, 140 stems in. Short by 8 zinnias. 120 more are due by Fri 10 Sep."
Answer tallyAnswer(const model::Season& season, const std::vector<TallyRow>& rows,
                   const std::optional<TallyLater>& later = std::nullopt);
/// "Friday 10 September 2027 · Library roof supper · 24 jars and 2 more".
QString tallyHead(const model::Season& season, Id<model::Booking> booking, Day day);

/// A patch, or a plant without one, that could join the tally.
struct FoundChoice {
    std::optional<Id<model::Patch>> patch;
    Id<model::Plant> plant;
    QString words; ///< "Cosmos, pale · Wall bed · 40 likely ready"
    bool inFlower = false;
};

/// Patches that are not in the tally, those in flower that day first, with the day they are planned for; then
/// plants without a patch.
std::vector<FoundChoice> foundChoices(const model::Season& season, const plan::Plan& plan,
                                      Id<model::Booking> booking, const std::vector<TallyRow>& rows, Day day);

} // namespace withy::ui
