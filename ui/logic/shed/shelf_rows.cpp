// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/shed/shelf_rows.h"

#include "core/plan/shed/kit_through_time.h"
#include "core/plan/shed/ribbon_days.h"
#include "core/plan/shed/shed_codes.h"
#include "ui/logic/edits/shed_edits.h"
#include "ui/logic/format.h"
#include "ui/logic/measures.h"
#include "ui/logic/shed/shed_finding_wording.h"
#include "ui/logic/shed_words.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <set>

namespace withy::ui {

namespace {

using model::TableKind;

struct ShelfRowsSay {
    Q_DECLARE_TR_FUNCTIONS(Shelf)
};

ShelfGroup groupOf(const model::Ref& item) {
    if (item.table == TableKind::containers) return ShelfGroup::containers;
    return item.table == TableKind::sundries ? ShelfGroup::sundries : ShelfGroup::holders;
}

double scaled(const plan::KitItem& item, std::int64_t amount) {
    return item.inThousandths ? static_cast<double>(amount) / 1000 : static_cast<double>(amount);
}

/// Late, and written back by nobody.
std::int64_t unwritten(const plan::KitItem& item) {
    std::int64_t late = 0;
    for (const auto& hold : item.holds)
        if (hold.late) late += hold.amount - hold.broken - hold.lost;
    return std::min(late, item.out);
}

ShelfGraph graphOf(const plan::KitItem& item, const ShelfSpan& span) {
    ShelfGraph graph{span.first, span.last, scaled(item, item.owned.value_or(0)), item.owned.has_value(), {}};
    const auto step = [&](Day day) {
        const double free = graph.owned - scaled(item, plan::awayOn(item, day));
        const double late = span.today && *span.today < day ? scaled(item, unwritten(item)) : 0;
        graph.steps.push_back({day, free, std::clamp(late, 0.0, std::max(0.0, free))});
    };
    step(span.first);
    for (const auto& level : item.levels)
        if (span.first < level.from && level.from <= span.last) step(level.from);
    return graph;
}

void sayLowest(const model::Season& season, const plan::KitItem& item, ShelfRow& row) {
    if (!item.owned) {
        row.lowest = ShelfRowsSay::tr("not counted yet");
        row.because = ShelfRowsSay::tr("Count what is on the shelf.");
        return;
    }
    const auto& at = item.firstShort ? item.firstShort : item.lowest;
    if (!at) {
        row.lowest = ShelfRowsSay::tr("%1, none promised").arg(amountOf(item, *item.owned));
        return;
    }
    const QString day = shortDay(at->day);
    const QString who = bookingTitles(season, at->bookings);
    if (item.firstShort) {
        row.asks = true;
        row.lowest = ShelfRowsSay::tr("%1 short, %2").arg(amountOf(item, at->by), day);
        row.because =
            at->firm ? ShelfRowsSay::tr("for %1").arg(who) : ShelfRowsSay::tr("if all is taken: %1").arg(who);
        return;
    }
    row.lowest = ShelfRowsSay::tr("%1 left, %2").arg(amountOf(item, -at->by), day);
    if (!who.isEmpty()) row.because = who;
}

QString underOf(const plan::KitItem& item) {
    if (item.usedUp || !item.owned) return {};
    QStringList words{ShelfRowsSay::tr("%1 here").arg(whole(item.here.value_or(0)))};
    if (item.out > 0) words << ShelfRowsSay::tr("%1 out").arg(whole(item.out));
    if (item.broken > 0) words << ShelfRowsSay::tr("%1 broken").arg(whole(item.broken));
    return words.join(QStringLiteral(", "));
}

ShelfRow rowOf(const model::Season& season, const plan::KitItem& item, const ShelfSpan& span) {
    ShelfRow row;
    row.item = item.item;
    row.name = itemName(season, item.item);
    row.under = underOf(item);
    row.onHand = item.owned ? amountOf(item, item.here.value_or(*item.owned)) : QStringLiteral("–");
    row.promised = item.promised > 0 ? amountOf(item, item.promised) : QStringLiteral("–");
    row.out = item.out > 0 ? amountOf(item, item.out) : QStringLiteral("–");
    row.dueBack = item.dueBack ? shortDay(*item.dueBack) : QStringLiteral("–");
    row.graph = graphOf(item, span);
    row.working = item.working;
    sayLowest(season, item, row);
    if (const auto late = unwritten(item); late > 0)
        row.because +=
            (row.because.isEmpty() ? QString() : QStringLiteral(". ")) +
            ShelfRowsSay::tr("%n went out and nobody wrote (it|them) back: home again? Say so under "
                             "Returns.",
                             nullptr, static_cast<int>(late));
    row.inWords = ShelfRowsSay::tr("%1: %2 on hand, %3 promised, %4 out; %5. %6")
                      .arg(row.name, row.onHand, row.promised, row.out, row.lowest, row.because);
    return row;
}

/// The finding that says why a ribbon is not planned on that day.
QString notCutWords(const model::Season& season, const plan::ShedPlan* shed, Id<model::Ribbon> ribbon,
                    Day day) {
    for (std::size_t i = 0; shed && i < shed->findings.size(); ++i) {
        const auto& f = shed->findings[i].finding;
        if (f.code == plan::ShedCode::ribbonNotCut && f.place.id == ribbon.value && f.subjects.size() > 1 &&
            f.subjects[1] == day.iso())
            return shedSentence(f, season);
    }
    return {};
}

} // namespace

QString bookingTitles(const model::Season& season, const std::vector<Id<model::Booking>>& ids) {
    QStringList words;
    std::set<std::int64_t> seen;
    for (const auto id : ids) {
        const auto* b = season.bookings.find(id);
        if (b && seen.insert(id.value).second) words << text(b->title);
    }
    if (words.size() <= 2) return words.join(ShelfRowsSay::tr(" and "));
    const int more = asCount(static_cast<std::size_t>(words.size())) - 2;
    return ShelfRowsSay::tr("%1, %2 and %n more", nullptr, more).arg(words[0], words[1]);
}

QString amountOf(const plan::KitItem& item, std::int64_t amount) {
    return item.inThousandths ? thousandths(amount) : whole(amount);
}

const plan::KitItem* firstShortOf(const plan::ShedPlan& shed, std::optional<model::TableKind> table) {
    const plan::KitItem* first = nullptr;
    for (const auto& item : shed.kit) {
        if (table && item.item.table != *table) continue;
        if (item.firstShort && (!first || item.firstShort->day < first->firstShort->day)) first = &item;
    }
    return first;
}

QString itemName(const model::Season& season, const model::Ref& item) {
    const auto name = [&](const auto* record) { return record ? text(record->name) : QString(); };
    switch (item.table) {
    case TableKind::containers:
        return name(season.containers.find(Id<model::Container>(item.id)));
    case TableKind::sundries:
        return name(season.sundries.find(Id<model::Sundry>(item.id)));
    case TableKind::ribbons:
        return name(season.ribbons.find(Id<model::Ribbon>(item.id)));
    default:
        break;
    }
    const auto* holder = season.holders.find(Id<model::Holder>(item.id));
    return holder && holder->kind == model::HolderKind::bucket ? ShelfRowsSay::tr("Clean buckets")
                                                               : name(holder);
}

ShelfSpan shelfSpan(const model::Season& season, const plan::ShedPlan& shed) {
    const auto& s = season.theSettings();
    if (!shed.today) return {s.firstDay, s.lastDay, std::nullopt};
    constexpr int air = 3; // so that the last day named is seen to be one
    ShelfSpan span{std::max(s.firstDay, *shed.today - 7),
                   std::max(*shed.today + 1, std::min(s.lastDay, *shed.today + 63)), shed.today};
    for (const auto& item : shed.kit) {
        const auto& named = item.firstShort ? item.firstShort : item.lowest;
        if (named) span.last = std::max(span.last, named->day + air);
    }
    return span;
}

std::optional<KitOnDay> kitOnDay(const plan::ShedPlan* shed, const model::Ref& ref,
                                 Id<model::Booking> booking) {
    const auto isIt = [&](const plan::KitItem& item) { return item.item == ref; };
    const auto none = [] { return std::optional<KitOnDay>(); };
    if (!shed) return none();
    const auto item = std::find_if(shed->kit.begin(), shed->kit.end(), isIt);
    if (item == shed->kit.end() || !item->owned) return none();
    const auto own = std::find_if(item->holds.begin(), item->holds.end(),
                                  [&](const plan::KitHold& h) { return h.booking == booking; });
    if (own == item->holds.end()) return none();
    const bool over = own->late || (shed->today && own->until && *own->until < *shed->today);
    Day day = shed->today ? std::max(own->from, *shed->today) : own->from;
    const Day last = own->until.value_or(day);
    if (over) day = own->from;
    for (const auto& hold : item->holds)
        if (!over && day < hold.from && hold.from <= last &&
            plan::awayOn(*item, hold.from) > plan::awayOn(*item, day))
            day = hold.from;
    const bool taken = shed->today && own->from <= *shed->today; // its share has left the shelf already
    const std::int64_t used = item->usedUp ? item->out - (taken ? own->amount : 0) : 0;
    KitOnDay on;
    on.day = day;
    on.needed = own->amount;
    on.owned = *item->owned - std::max<std::int64_t>(0, used);
    on.broken = item->usedUp ? 0 : item->broken;
    on.unwritten = item->usedUp ? 0 : unwritten(*item);
    on.others = std::max<std::int64_t>(0, plan::awayOn(*item, day) - own->amount - on.broken - used);
    if (!over) on.lacking = std::max<std::int64_t>(0, on.needed + on.others + on.broken - on.owned);
    return on;
}

std::optional<Millimetres> ribbonLacking(const model::Season& season, const plan::ShedPlan* shed,
                                         Id<model::Booking> booking, const plan::RibbonNeed& need) {
    if (!shed) return need.missing;
    const auto* day = edits::ribbonDayOf(shed, booking);
    if (!day || plan::ribbonIsOver(season, *day, shed->today)) return Millimetres(0);
    for (const auto& cut : day->ribbons)
        if (cut->ribbon == need.ribbon)
            return plan::ribbonIsNotCut(*cut) ? std::nullopt : std::optional(cut->missingLength);
    return Millimetres(0);
}

std::vector<ShelfRow> shelfRows(const model::Season& season, const plan::ShedPlan& shed, ShelfGroup group) {
    std::vector<ShelfRow> rows;
    const auto span = shelfSpan(season, shed);
    for (const auto& item : shed.kit)
        if (groupOf(item.item) == group && !itemName(season, item.item).isEmpty())
            rows.push_back(rowOf(season, item, span));
    return rows;
}

Answer shelfAnswer(const model::Season& season, const plan::ShedPlan& shed) {
    using Weight = AnswerPart::Weight;
    const auto* first = firstShortOf(shed);
    const bool counted = std::any_of(shed.kit.begin(), shed.kit.end(),
                                     [](const auto& item) { return item.owned.has_value(); });
    if (!counted) return {{ShelfRowsSay::tr("Nothing is counted yet. Count what is on the shelf.")}};
    Answer answer;
    if (first) {
        answer = {{ShelfRowsSay::tr("First to run short: ")},
                  {ShelfRowsSay::tr("%1, %2 short on %3.")
                       .arg(itemName(season, first->item), amountOf(*first, first->firstShort->by),
                            shortDay(first->firstShort->day)),
                   Weight::asks}};
    } else {
        answer = {{ShelfRowsSay::tr("Nothing on the shelves runs short.")}};
    }
    for (const auto& day : shed.ribbon) {
        if (plan::ribbonIsOver(season, *day, shed.today)) continue;
        for (const auto& plan : day->ribbons) {
            if (plan::ribbonIsNotCut(*plan)) {
                answer.push_back(
                    {ShelfRowsSay::tr(" %1 is not planned on %2.")
                         .arg(itemName(season, {TableKind::ribbons, plan->ribbon.value}), shortDay(day->day)),
                     Weight::asks});
                return answer;
            }
            if (!plan->counted || plan->missingLength.value == 0) continue;
            answer.push_back({ShelfRowsSay::tr(" %1, %2 missing by %3.")
                                  .arg(itemName(season, {TableKind::ribbons, plan->ribbon.value}),
                                       reelWords(plan->missingLength, season), shortDay(day->day)),
                              Weight::asks});
            return answer;
        }
    }
    if (!shed.ribbon.empty()) answer.push_back({ShelfRowsSay::tr(" Ribbon reaches for all that is booked.")});
    return answer;
}

QString ribbonDayWords(const model::Season& season, const plan::RibbonDay& day) {
    return ShelfRowsSay::tr("%1, for %2").arg(shortDay(day.day), bookingTitles(season, day.bookings));
}

RibbonRow ribbonRow(const model::Season& season, const plan::RibbonCutPlan& plan, const plan::ShedPlan* shed,
                    Day day) {
    RibbonRow row;
    row.name = itemName(season, {TableKind::ribbons, plan.ribbon.value});
    row.needs = ShelfRowsSay::tr("needs %1").arg(reelWords(plan.needed, season));
    row.working = plan.working;
    if (!plan.counted) {
        row.verdict = ShelfRowsSay::tr("Nobody has measured it yet");
        row.under = ShelfRowsSay::tr("Measure its reels and ends.");
        return row;
    }
    if (plan::ribbonIsNotCut(plan)) {
        row.asks = true;
        row.verdict = ShelfRowsSay::tr("Not planned: too much is asked of it");
        row.under = notCutWords(season, shed, plan.ribbon, day);
        return row;
    }
    const QString proof =
        plan.proved ? ShelfRowsSay::tr("no other cutting wastes less")
                    : ShelfRowsSay::tr("at most %1 could be saved").arg(reelWords(plan.waste, season));
    if (plan.missingLength.value > 0) {
        row.asks = true;
        row.figure = ShelfRowsSay::tr("%1 missing").arg(reelWords(plan.missingLength, season));
        std::int64_t pieces = 0;
        for (const auto& p : plan.missing)
            pieces += p.count;
        row.verdict = ShelfRowsSay::tr("%n piece(s) cannot be cut", nullptr, static_cast<int>(pieces));
        row.under = plan.proved ? ShelfRowsSay::tr("no other cutting gives more") : QString();
        return row;
    }
    const bool wastes = plan.waste.value > 0;
    row.figure = wastes ? ShelfRowsSay::tr("%1 waste").arg(reelWords(plan.waste, season))
                        : ShelfRowsSay::tr("nothing wasted");
    row.verdict = plan.fromEnds == plan.needed ? ShelfRowsSay::tr("Covered from ends")
                  : plan.fromEnds.value > 0    ? ShelfRowsSay::tr("Covered, ends used first")
                                               : ShelfRowsSay::tr("Covered");
    if (wastes) row.under = proof;
    return row;
}

QString shadeWords(const model::Season& season, const plan::RibbonShades& shades) {
    if (shades.ribbons.size() < 2) return {};
    QStringList counts;
    for (std::size_t i = 0; i < shades.ribbons.size(); ++i)
        counts << ShelfRowsSay::tr("%1 %2").arg(
            whole(shades.spread.counts[i]), itemName(season, {TableKind::ribbons, shades.ribbons[i].value}));
    const QString spread = shades.spread.alike == 0 ? ShelfRowsSay::tr("never two alike side by side")
                                                    : ShelfRowsSay::tr("%n neighbour(s) alike", nullptr,
                                                                       static_cast<int>(shades.spread.alike));
    return counts.join(QStringLiteral(", ")) + QStringLiteral("; ") + spread;
}

QString itemAmount(const model::Season& season, const plan::BuyingLine& line) {
    if (line.item.table == TableKind::ribbons) return reelWords(Millimetres(line.amount), season);
    return line.inThousandths
               ? sundryAmount(season.sundries.find(Id<model::Sundry>(line.item.id)), line.amount)
               : whole(line.amount);
}

} // namespace withy::ui
