// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/plan/shed/shed_codes.h"
#include "ui/logic/format.h"
#include "ui/logic/measures.h"
#include "ui/logic/shed/shed_finding_wording.h"
#include "ui/logic/shed/table_scenes.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace withy::ui {

namespace {

struct TableFitSay {
    Q_DECLARE_TR_FUNCTIONS(Tables)
};

/// Tables nobody can reckon with, each with its mend.
QStringList impossibleSizes(const model::Season& season, const plan::BookingTables& tables) {
    QStringList said;
    for (const auto& finding : tables.findings)
        if (finding.code == plan::ShedCode::tableSizesImpossible) said << shedSentence(finding, season);
    return said;
}

QString tooBigFor(const QStringList& tables) {
    return TableFitSay::tr("Too big for %1.").arg(tables.join(QStringLiteral(", ")));
}

} // namespace

bool asksForRoom(const plan::PlacedTable& table) {
    return table.fit && table.fit->fit == packing::TableFit::tooBig;
}

QString fitFigure(const plan::PlacedTable& table, Units units) {
    if (!table.fit) return {};
    const double mm = std::floor(table.fit->eachSide + 1e-9);
    return mm < 0 ? QStringLiteral("−") + lengthFigure(-mm, units) : lengthFigure(mm, units);
}

QString fitWords(const plan::PlacedTable& table, Units units) {
    if (!table.fit)
        return table.onEach > 0 ? TableFitSay::tr("its sizes cannot be right, so nothing says what fits")
                                : QString();
    const double mm = std::floor(table.fit->eachSide + 1e-9);
    if (table.fit->fit == packing::TableFit::fits)
        return TableFitSay::tr("fits with %1 each side").arg(lengthWords(mm, units));
    if (table.fit->fit == packing::TableFit::tight)
        return TableFitSay::tr("tight, %1 each side").arg(lengthWords(mm, units));
    return TableFitSay::tr("too big by %1 each side").arg(lengthWords(-mm, units));
}

QString sightWords(const plan::PlacedTable& table, Units units) {
    if (!table.sight) return {};
    if (table.sight->sight == packing::Sightline::below)
        return TableFitSay::tr("%1 under the eye line").arg(lengthWords(table.sight->spare, units));
    if (table.sight->sight == packing::Sightline::above)
        return TableFitSay::tr("%1 clear above the eye line").arg(lengthWords(table.sight->spare, units));
    return TableFitSay::tr("%1 too tall to see over").arg(lengthWords(table.sight->lowerBy, units));
}

QString standingWords(const model::Season& season, const plan::PlacedTable& table) {
    QStringList words;
    for (const auto& p : table.pieces) {
        const auto* design = season.designs.find(p.design);
        QString one = TableFitSay::tr("%1 %2, %3 across, %4 high")
                          .arg(whole(p.perTable), design ? text(design->name) : QString(),
                               lengthWords(p.footprint, season), lengthWords(p.top, season));
        if (p.grown.value > 0)
            one += TableFitSay::tr(", %1 of it grown by then").arg(lengthWords(p.grown, season));
        words << one;
    }
    return words.join(QStringLiteral("; "));
}

QString largestWords(const model::Season& season, const plan::PlacedTable& table) {
    if (!table.fit) return {};
    const auto* c = table.largest ? season.containers.find(*table.largest) : nullptr;
    if (!c) return TableFitSay::tr("No container in the shed fits this table.");
    return TableFitSay::tr("The largest container in the shed that fits is the %1.").arg(text(c->name));
}

QString tableSize(const plan::PlacedTable& table, Units units) {
    if (table.top.form == packing::TableForm::round)
        return TableFitSay::tr("%1 round").arg(tableLengthWords(table.top.length, units));
    return sidesWords(table.top.length, table.top.width.value_or(Millimetres(0)), units);
}

Answer tablesAnswer(const model::Season& season, const plan::BookingTables& tables) {
    using Weight = AnswerPart::Weight;
    Answer answer;
    std::int64_t pieces = 0, stands = 0;
    QStringList over;
    std::optional<double> least;
    for (const auto& table : tables.tables) {
        const auto* record = season.venueTables.find(table.table);
        if (!record || table.onEach == 0) continue;
        const auto many = record->howMany - table.without;
        stands += many;
        pieces += table.onEach * many;
        if (asksForRoom(table))
            over << TableFitSay::tr("%1 by %2")
                        .arg(text(record->label),
                             lengthWords(-std::floor(table.fit->eachSide + 1e-9), season));
        else if (table.fit)
            least = std::min(least.value_or(1e9), table.fit->eachSide);
    }
    const QStringList impossible = impossibleSizes(season, tables);
    if (!impossible.isEmpty()) {
        if (!over.isEmpty()) answer.push_back({tooBigFor(over) + QLatin1Char(' '), Weight::asks});
        answer.push_back({impossible.join(QLatin1Char(' ')), Weight::asks});
        return answer;
    }
    if (tables.tables.empty())
        return {{TableFitSay::tr("The venue has no tables yet. Add them in the brief, with their sizes.")}};
    if (stands == 0)
        return {{TableFitSay::tr(
            "Nothing stands on a table yet. Say under Pieces which tables a piece is for.")}};
    answer.push_back({TableFitSay::tr("%n piece(s) on ", nullptr, static_cast<int>(pieces))});
    answer.push_back({TableFitSay::tr("%n table(s). ", nullptr, static_cast<int>(stands))});
    if (!over.isEmpty()) {
        answer.push_back({tooBigFor(over), Weight::asks});
        return answer;
    }
    answer.push_back({TableFitSay::tr("All fit, with %1 each side where it is narrowest.")
                          .arg(lengthWords(std::floor(least.value_or(0) + 1e-9), season)),
                      Weight::strong});
    return answer;
}

} // namespace withy::ui
