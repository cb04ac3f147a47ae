// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/what_moved.h"

#include "ui/logic/format.h"
#include "ui/logic/measures.h"
#include "ui/logic/models/booking_words.h"
#include "ui/logic/models/week_steps.h"

#include <QCoreApplication>

#include <cmath>
#include <map>

namespace withy::ui {

namespace {

class WhatMovedSay {
    Q_DECLARE_TR_FUNCTIONS(Moved)

public:
    static QString moreOrLess(const QString& what, bool more) {
        return more ? tr("%1 more").arg(what) : tr("%1 less").arg(what);
    }

    static QString stems(std::int64_t n) {
        return tr("%1 stem(s)", nullptr, static_cast<int>(n)).arg(whole(n));
    }

    static QString ribbon(Millimetres length, Units units) {
        return tr("%1 of ribbon").arg(reelWords(length, units, 1));
    }

    static QString making(Minutes minutes) { return tr("%1 of making").arg(workWords(minutes)); }

    static QString fromTo(std::int64_t from, const QString& to) {
        return tr("%1 to %2").arg(whole(from), to);
    }

    static QString added(const QString& what) { return tr("%1 added").arg(what); }

    static QString takenOut(const QString& what) { return tr("%1 taken out").arg(what); }

    static QString sentence(const QString& head, const QString& rest) {
        if (rest.isEmpty()) return tr("%1.").arg(head);
        return head.isEmpty() ? tr("%1.").arg(rest) : tr("%1: %2.").arg(head, rest);
    }

    static QString newlyToMend(int n) { return tr("%n more to mend", nullptr, n); }

    static QString mended(int n) { return tr("%n mended", nullptr, n); }
};

/// Pieces of each design, spare ones included.
std::map<Id<model::Design>, std::int64_t> piecesOf(const plan::BookingPlan& plan) {
    std::map<Id<model::Design>, std::int64_t> pieces;
    for (const auto& line : plan.lines)
        pieces[line.design] += line.pieces.value;
    return pieces;
}

/// What changed among the pieces themselves: "24 to 30 jars".
QStringList movedPieces(const BookingThen& before, const BookingThen& after) {
    QStringList heads;
    const auto was = piecesOf(before.plan);
    const auto now = piecesOf(after.plan);
    for (const auto& [id, n] : now) {
        const auto old = was.find(id);
        const auto* design = after.season.designs.find(id);
        if (!design || (old != was.end() && old->second == n)) continue;
        const QString words = countedPieces(after.season, *design, n);
        heads << (old == was.end() ? WhatMovedSay::added(words) : WhatMovedSay::fromTo(old->second, words));
    }
    for (const auto& [id, n] : was) {
        const auto* design = before.season.designs.find(id);
        if (design && !now.contains(id))
            heads << WhatMovedSay::takenOut(countedPieces(before.season, *design, n));
    }
    return heads;
}

Millimetres ribbonOf(const plan::BookingPlan& plan) {
    Millimetres sum;
    for (const auto& r : plan.kit.ribbons)
        sum += r.needed;
    return sum;
}

std::int64_t makingOf(const plan::BookingPlan& plan) {
    std::int64_t sum = 0;
    for (const auto& s : plan.steps) {
        if (s.kind == plan::StepKind::make) sum += s.minutes.value;
    }
    return sum;
}

using Containers = std::map<Id<model::Container>, std::int64_t>;

Containers containersOf(const plan::BookingPlan& plan) {
    Containers all;
    for (const auto& c : plan.kit.containers)
        all[c.container] = shed::wholeUnits(c.total.needed);
    return all;
}

void movedContainers(const BookingThen& before, const BookingThen& after, QStringList& parts) {
    auto moved = containersOf(after.plan);
    for (const auto& [id, n] : containersOf(before.plan))
        moved[id] -= n;
    for (const auto& [id, by] : moved) {
        const auto* vessel = after.season.containers.find(id);
        if (!vessel) vessel = before.season.containers.find(id);
        if (vessel && by != 0)
            parts << WhatMovedSay::moreOrLess(countedVessels(*vessel, std::abs(by)), by > 0);
    }
}

/// The price, or what is asked of it.
std::optional<Money> askedOf(const plan::BookingPlan& plan) {
    return plan.money ? std::optional(plan.money->income.total) : std::nullopt;
}

void movedMoney(const BookingThen& before, const BookingThen& after, QStringList& parts) {
    const auto was = askedOf(before.plan);
    const auto now = askedOf(after.plan);
    if (!was || !now || *was == *now) return;
    const Money by = *now - *was;
    parts << WhatMovedSay::moreOrLess(amount(Money{std::abs(by.minor)}, after.season.theSettings()),
                                      by.minor > 0);
}

} // namespace

QString whatMoved(const BookingThen& before, const BookingThen& after) {
    QStringList parts;
    if (const auto by = after.plan.stemsToCut.value - before.plan.stemsToCut.value; by != 0)
        parts << WhatMovedSay::moreOrLess(WhatMovedSay::stems(std::abs(by)), by > 0);
    movedContainers(before, after, parts);
    if (const auto by = ribbonOf(after.plan) - ribbonOf(before.plan); by.value != 0)
        parts << WhatMovedSay::moreOrLess(WhatMovedSay::ribbon(Millimetres(std::abs(by.value)), after.season),
                                          by.value > 0);
    if (const auto by = makingOf(after.plan) - makingOf(before.plan); by != 0)
        parts << WhatMovedSay::moreOrLess(WhatMovedSay::making(Minutes(std::abs(by))), by > 0);
    movedMoney(before, after, parts);
    if (const int by = after.toMend && before.toMend ? *after.toMend - *before.toMend : 0; by != 0)
        parts << (by > 0 ? WhatMovedSay::newlyToMend(by) : WhatMovedSay::mended(-by));
    const QStringList heads = movedPieces(before, after);
    if (heads.isEmpty() && parts.isEmpty()) return {};
    return WhatMovedSay::sentence(heads.join(QStringLiteral(", ")), parts.join(QStringLiteral(", ")));
}

} // namespace withy::ui
