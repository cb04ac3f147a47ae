// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/fields/field_text.h"
#include "ui/logic/format.h"

#include <QCoreApplication>

namespace withy::ui {

namespace {

using model::Season;
using model::TableKind;

class RecordWordsSay {
    Q_DECLARE_TR_FUNCTIONS(Record)

public:
    explicit RecordWordsSay(const Season& season) : season_(season) {}

    [[nodiscard]] QString line(const model::Line& l) const {
        return tr("%1 %2 for %3")
            .arg(whole(l.pieces.value), name(TableKind::designs, l.design.value),
                 name(TableKind::bookings, l.booking.value));
    }

    [[nodiscard]] QString slotPlant(const model::SlotPlant& p) const {
        return tr("%1 in %2")
            .arg(name(TableKind::plants, p.plant.value), name(TableKind::slots, p.slot.value));
    }

    [[nodiscard]] QString name(TableKind kind, std::int64_t id) const {
        return recordWords(season_, kind, id);
    }

    /// The field's own text: "Sat 11 Sep 2027".
    [[nodiscard]] QString shown(TableKind kind, std::int64_t id, const char* field) const {
        return textOf(season_, {kind, id}, field);
    }

private:
    const Season& season_;
};

/// The two fields that make a record of a table without names known.
struct Pair {
    TableKind kind;
    const char* first;
    const char* second; ///< may be null
};

const Pair* pairFor(TableKind kind) {
    static const Pair pairs[] = {
        {TableKind::monthNormals, "month", nullptr},
        {TableKind::rates, "work", nullptr},
        {TableKind::acceptedFindings, "finding", nullptr},
        {TableKind::walks, "patch", "date"},
        {TableKind::weather, "date", "kind"},
        {TableKind::pastBlooms, "plant", "first_cut"},
        {TableKind::stockLots, "plant", "ready_from"},
        {TableKind::ribbonLengths, "ribbon", "length"},
        {TableKind::ribbonMixParts, "ribbon", "mix"},
        {TableKind::designSundries, "sundry", "design"},
        {TableKind::agreedSwaps, "plant", "stand_in"},
        {TableKind::placements, "table", "line"},
        {TableKind::payments, "kind", "date"},
        {TableKind::sentVersions, "kind", "date"},
        {TableKind::helperHours, "helper", "from"},
        {TableKind::rounds, "from", nullptr},
        {TableKind::roundBookings, "booking", "round"},
        {TableKind::tallies, "patch", "round"},
        {TableKind::made, "line", nullptr},
        {TableKind::returns, "container", "booking"},
        {TableKind::jobNotes, "booking", nullptr},
        {TableKind::jobNotePlants, "plant", nullptr},
        {TableKind::plantFacts, "fact", "plant"},
        {TableKind::stepMarks, "step", "booking"},
    };
    for (const auto& pair : pairs) {
        if (pair.kind == kind) return &pair;
    }
    return nullptr;
}

QString fallback(TableKind kind, std::int64_t id) {
    return tableLabel(kind, 1) + QLatin1Char(' ') + QString::number(id);
}

} // namespace

QString recordWords(const Season& season, TableKind kind, std::int64_t id) {
    const RecordWordsSay say(season);
    if (kind == TableKind::lines) {
        const auto* line = season.lines.find(Id<model::Line>(id));
        return line ? say.line(*line) : fallback(kind, id);
    }
    if (kind == TableKind::slotPlants) {
        const auto* choice = season.slotPlants.find(Id<model::SlotPlant>(id));
        return choice ? say.slotPlant(*choice) : fallback(kind, id);
    }
    if (const auto* pair = pairFor(kind)) {
        const QString first = say.shown(kind, id, pair->first);
        if (first.isEmpty()) return fallback(kind, id);
        const QString second = pair->second ? say.shown(kind, id, pair->second) : QString();
        return second.isEmpty() ? first : first + QStringLiteral(", ") + second;
    }
    const auto& info = model::tableInfo(kind);
    const QString name = info.nameField.empty() ? QString() : say.shown(kind, id, info.nameField.data());
    if (name.trimmed().isEmpty() && kind == TableKind::bookingColours) return say.shown(kind, id, "colour");
    return name.trimmed().isEmpty() ? fallback(kind, id) : name;
}

} // namespace withy::ui
