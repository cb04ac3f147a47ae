// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/shed_plan.h"
#include "ui/logic/answers/answer.h"

#include <QString>

#include <optional>
#include <vector>

/// The shed's first page as data: what runs short first, and what is free from day to day.
namespace withy::ui {

enum class ShelfGroup { containers, holders, sundries };

/// What is free of one thing through time, for a drawing. Amounts in whole units.
struct ShelfGraph {
    struct Step {
        Day from;
        double free = 0;   ///< below nought: short
        double unsure = 0; ///< of it: free only if what is late, and nobody wrote back, has come home
    };

    Day first;
    Day last;
    double owned = 0;
    bool known = false; ///< false: nobody has counted them
    std::vector<Step> steps;
};

struct ShelfRow {
    model::Ref item;
    QString name;
    QString under; ///< "46 here, 3 out, 1 broken"
    QString onHand, promised, out, dueBack;
    ShelfGraph graph;
    QString lowest;  ///< "2 short, Sat 25 Sep": a figure that opens
    QString because; ///< whose bookings make it so, and what would mend it
    Working working;
    bool asks = false;
    QString inWords;
};

/// The days the graphs show: a week before today to nine weeks after, within the season, and on to the last
/// day that a row names; all of it when the clock is not known.
struct ShelfSpan {
    Day first;
    Day last;
    std::optional<Day> today;
};

ShelfSpan shelfSpan(const model::Season& season, const plan::ShedPlan& shed);
std::vector<ShelfRow> shelfRows(const model::Season& season, const plan::ShedPlan& shed, ShelfGroup group);
/// "First to run short: Lunch bowl, 2 short on Sat 25 Sep. Dusk satin, 0.86 m missing by Fri 22 Oct."
Answer shelfAnswer(const model::Season& season, const plan::ShedPlan& shed);

/// One thing on the day of a booking on which least is left of it, in the item's measure. What is short is
/// what is needed, with the others' and the broken ones, beyond what is owned.
struct KitOnDay {
    Day day;
    std::int64_t needed = 0;
    std::int64_t owned = 0;  ///< of what is used up: what is left on the shelf
    std::int64_t others = 0; ///< out with other bookings then, or to be used by them before
    std::int64_t broken = 0;
    std::int64_t lacking = 0; ///< never below nought; none of what lies behind today
    /// Of what is owned: went out, was due back and nobody wrote it back.
    std::int64_t unwritten = 0;
};

/// Blank: nobody counted it, or the booking has none of it.
std::optional<KitOnDay> kitOnDay(const plan::ShedPlan* shed, const model::Ref& item,
                                 Id<model::Booking> booking);

/// What of the ribbon a booking is short, as the shelf cuts it day by day: others may have cut before. None
/// of what lies behind today. Blank: it is not planned; until the shelf is known, what it lacks alone.
std::optional<Millimetres> ribbonLacking(const model::Season& season, const plan::ShedPlan* shed,
                                         Id<model::Booking> booking, const plan::RibbonNeed& need);

/// One ribbon's day in words.
struct RibbonRow {
    QString name;    ///< "Moss, 15 mm"
    QString needs;   ///< "needs 11.04 m"
    QString verdict; ///< "Covered, ends used first"
    QString under;   ///< "0.46 m waste; proved: no cutting wastes less"
    bool asks = false;
    Working working;
    QString figure; ///< opens the working: "0.46 m waste"
};

/// What keeps it from being planned is told from `shed`'s findings of that day.
RibbonRow ribbonRow(const model::Season& season, const plan::RibbonCutPlan& plan,
                    const plan::ShedPlan* shed = nullptr, Day day = {});
/// "Fri 10 Sep, for Library roof supper".
QString ribbonDayWords(const model::Season& season, const plan::RibbonDay& day);
/// "Plum velvet, Dusk satin, Plum velvet ...": the order in which shades stand; empty for one shade alone.
QString shadeWords(const model::Season& season, const plan::RibbonShades& shades);

QString itemName(const model::Season& season, const model::Ref& item);
/// "Supper jars and Tea room": the first two, and how many more.
QString bookingTitles(const model::Season& season, const std::vector<Id<model::Booking>>& ids);
/// In the item's own measure.
QString amountOf(const plan::KitItem& item, std::int64_t amount);
/// Of those in the table, or of all: the first to run short, on its first day. Null when none does.
const plan::KitItem* firstShortOf(const plan::ShedPlan& shed,
                                  std::optional<model::TableKind> table = std::nullopt);
/// "14", "2.5", "0.72 m".
QString itemAmount(const model::Season& season, const plan::BuyingLine& line);

} // namespace withy::ui
