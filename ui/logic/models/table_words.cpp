// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/table_words.h"

#include "ui/logic/format.h"
#include "ui/logic/measures.h"
#include "ui/logic/models/colour_view.h"

#include <QCoreApplication>

namespace withy::ui {

namespace {

struct TableWordsSay {
    Q_DECLARE_TR_FUNCTIONS(TableWords)
};

} // namespace

packing::TableTop tableTopOf(const model::VenueTable& t) {
    packing::TableTop top;
    top.form =
        t.shape == model::TableShape::round ? packing::TableForm::round : packing::TableForm::rectangular;
    top.length = t.length;
    top.width = t.width;
    top.covers = t.covers;
    return top;
}

NextTable nextTableOf(const model::Season& season, Id<model::Design> design, std::optional<Day> today) {
    const auto booking = nextBookingOf(season, design, today);
    for (const auto& placement : season.placements) {
        const auto* line = season.lines.find(placement.line);
        const auto* table = season.venueTables.find(placement.table);
        if (booking && line && table && line->design == design && line->booking == *booking)
            return {table, placement.perTable};
    }
    return {};
}

QString onTableWords(const model::VenueTable& t, std::int64_t pieces, Units units) {
    const QString size = t.shape == model::TableShape::round || !t.width
                             ? TableWordsSay::tr("%1 across").arg(tableLengthWords(t.length, units))
                             : sidesWords(t.length, *t.width, units);
    return TableWordsSay::tr("On %1, %2, %3, %4")
        .arg(text(t.label), size, TableWordsSay::tr("%n setting(s)", nullptr, static_cast<int>(t.covers)),
             TableWordsSay::tr("%n piece(s)", nullptr, static_cast<int>(pieces)));
}

QString offTableWords(double spread, double foot, Units units) {
    return TableWordsSay::tr("From above: spread %1, foot %2. No table carries it yet.")
        .arg(lengthWords(spread, units), lengthWords(foot, units));
}

} // namespace withy::ui
