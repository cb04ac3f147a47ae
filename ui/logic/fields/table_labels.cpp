// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/fields/field_text.h"
#include "ui/logic/format.h"
#include "ui/logic/wording.h"

#include <QCoreApplication>
#include <QHash>

namespace withy::ui {

namespace {

using model::TableKind;

struct Names {
    const char* one;
    const char* many;
};

const Names& namesOf(TableKind kind) {
    static const std::array<Names, model::tableCount> names{{
        {QT_TRANSLATE_NOOP("Table", "settings"), QT_TRANSLATE_NOOP("Table", "settings")},
        {QT_TRANSLATE_NOOP("Table", "usual month"), QT_TRANSLATE_NOOP("Table", "usual months")},
        {QT_TRANSLATE_NOOP("Table", "working time"), QT_TRANSLATE_NOOP("Table", "working times")},
        {QT_TRANSLATE_NOOP("Table", "warning left so"), QT_TRANSLATE_NOOP("Table", "warnings left so")},
        {QT_TRANSLATE_NOOP("Table", "plant"), QT_TRANSLATE_NOOP("Table", "plants")},
        {QT_TRANSLATE_NOOP("Table", "plant fact"), QT_TRANSLATE_NOOP("Table", "plant facts")},
        {QT_TRANSLATE_NOOP("Table", "caution"), QT_TRANSLATE_NOOP("Table", "cautions")},
        {QT_TRANSLATE_NOOP("Table", "patch"), QT_TRANSLATE_NOOP("Table", "patches")},
        {QT_TRANSLATE_NOOP("Table", "count of a walk"), QT_TRANSLATE_NOOP("Table", "counts of walks")},
        {QT_TRANSLATE_NOOP("Table", "day's weather"), QT_TRANSLATE_NOOP("Table", "days' weather")},
        {QT_TRANSLATE_NOOP("Table", "past first cut"), QT_TRANSLATE_NOOP("Table", "past first cuts")},
        {QT_TRANSLATE_NOOP("Table", "lot in the store"), QT_TRANSLATE_NOOP("Table", "lots in the store")},
        {QT_TRANSLATE_NOOP("Table", "container"), QT_TRANSLATE_NOOP("Table", "containers")},
        {QT_TRANSLATE_NOOP("Table", "ribbon"), QT_TRANSLATE_NOOP("Table", "ribbons")},
        {QT_TRANSLATE_NOOP("Table", "reel or end"), QT_TRANSLATE_NOOP("Table", "reels and ends")},
        {QT_TRANSLATE_NOOP("Table", "ribbon mix"), QT_TRANSLATE_NOOP("Table", "ribbon mixes")},
        {QT_TRANSLATE_NOOP("Table", "ribbon of a mix"), QT_TRANSLATE_NOOP("Table", "ribbons of mixes")},
        {QT_TRANSLATE_NOOP("Table", "sundry"), QT_TRANSLATE_NOOP("Table", "sundries")},
        {QT_TRANSLATE_NOOP("Table", "tray, box or bucket"),
         QT_TRANSLATE_NOOP("Table", "trays, boxes and buckets")},
        {QT_TRANSLATE_NOOP("Table", "vehicle"), QT_TRANSLATE_NOOP("Table", "vehicles")},
        {QT_TRANSLATE_NOOP("Table", "design"), QT_TRANSLATE_NOOP("Table", "designs")},
        {QT_TRANSLATE_NOOP("Table", "slot"), QT_TRANSLATE_NOOP("Table", "slots")},
        {QT_TRANSLATE_NOOP("Table", "plant of a slot"), QT_TRANSLATE_NOOP("Table", "plants of slots")},
        {QT_TRANSLATE_NOOP("Table", "sundry of a design"), QT_TRANSLATE_NOOP("Table", "sundries of designs")},
        {QT_TRANSLATE_NOOP("Table", "client"), QT_TRANSLATE_NOOP("Table", "clients")},
        {QT_TRANSLATE_NOOP("Table", "venue"), QT_TRANSLATE_NOOP("Table", "venues")},
        {QT_TRANSLATE_NOOP("Table", "table"), QT_TRANSLATE_NOOP("Table", "tables")},
        {QT_TRANSLATE_NOOP("Table", "booking"), QT_TRANSLATE_NOOP("Table", "bookings")},
        {QT_TRANSLATE_NOOP("Table", "wished colour"), QT_TRANSLATE_NOOP("Table", "wished colours")},
        {QT_TRANSLATE_NOOP("Table", "agreed swap"), QT_TRANSLATE_NOOP("Table", "agreed swaps")},
        {QT_TRANSLATE_NOOP("Table", "open question"), QT_TRANSLATE_NOOP("Table", "questions")},
        {QT_TRANSLATE_NOOP("Table", "drop"), QT_TRANSLATE_NOOP("Table", "drops")},
        {QT_TRANSLATE_NOOP("Table", "line"), QT_TRANSLATE_NOOP("Table", "lines")},
        {QT_TRANSLATE_NOOP("Table", "place on a table"), QT_TRANSLATE_NOOP("Table", "places on tables")},
        {QT_TRANSLATE_NOOP("Table", "payment"), QT_TRANSLATE_NOOP("Table", "payments")},
        {QT_TRANSLATE_NOOP("Table", "paper sent"), QT_TRANSLATE_NOOP("Table", "papers sent")},
        {QT_TRANSLATE_NOOP("Table", "helper"), QT_TRANSLATE_NOOP("Table", "helpers")},
        {QT_TRANSLATE_NOOP("Table", "helper's time"), QT_TRANSLATE_NOOP("Table", "helpers' times")},
        {QT_TRANSLATE_NOOP("Table", "busy hours"), QT_TRANSLATE_NOOP("Table", "busy hours")},
        {QT_TRANSLATE_NOOP("Table", "round"), QT_TRANSLATE_NOOP("Table", "rounds")},
        {QT_TRANSLATE_NOOP("Table", "booking of a round"), QT_TRANSLATE_NOOP("Table", "bookings of rounds")},
        {QT_TRANSLATE_NOOP("Table", "tally"), QT_TRANSLATE_NOOP("Table", "tallies")},
        {QT_TRANSLATE_NOOP("Table", "making time"), QT_TRANSLATE_NOOP("Table", "making times")},
        {QT_TRANSLATE_NOOP("Table", "return"), QT_TRANSLATE_NOOP("Table", "returns")},
        {QT_TRANSLATE_NOOP("Table", "note after the day"), QT_TRANSLATE_NOOP("Table", "notes after the day")},
        {QT_TRANSLATE_NOOP("Table", "plant of a note"), QT_TRANSLATE_NOOP("Table", "plants of notes")},
        {QT_TRANSLATE_NOOP("Table", "mark on a step"), QT_TRANSLATE_NOOP("Table", "marks on steps")},
    }};
    return names.at(static_cast<std::size_t>(kind));
}

} // namespace

QString tableLabel(TableKind kind, int n) {
    if (kind == TableKind::none) return {};
    const Names& names = namesOf(kind);
    return QCoreApplication::translate("Table", n == 1 ? names.one : names.many);
}

QString wordText(std::string_view word) {
    // The model's words are British English already; a translation may differ.
    const std::string s(word == "never" ? "once" : word); // what never comes again is there once
    return QCoreApplication::translate("Word", s.c_str());
}

} // namespace withy::ui
