// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/fields/field_text.h"

#include <QCoreApplication>
#include <QHash>

namespace withy::ui {

namespace {

/// Questions where a blank is worth filling; they are also what the consultation asks.
const QHash<QString, const char*>& prompts() {
    static const QHash<QString, const char*> all{
#define P(key, words) {QStringLiteral(key), QT_TRANSLATE_NOOP("Prompt", words)}
        P("booking.client", "Who is it for?"),
        P("booking.venue", "Where is it?"),
        P("booking.look_good_until", "Until the guests go"),
        P("booking.make_from", "Worked back from the first drop"),
        P("booking.held_until", "Until which day?"),
        P("booking.wishes", "How do they say it?"),
        P("booking.must_have", "What may not be missing?"),
        P("booking.must_not", "What may not be there?"),
        P("booking.allergies", "Anyone who sneezes or itches?"),
        P("booking.scent", "More, less, none at the table?"),
        P("booking.animals", "Cats, dogs, ponies?"),
        P("booking.candles", "Any flame near the flowers?"),
        P("booking.budget", "How much do they have in mind?"),
        P("venue.door", "Which door?"),
        P("venue.key_holder", "Who has the key?"),
        P("venue.travel", "How long is the drive?"),
        P("venue.in_from", "From when may we in?"),
        P("venue.out_by", "By when must we be out?"),
        P("venue.water", "Where is the tap?"),
        P("venue.stairs", "How many steps?"),
        P("venue.parking", "Where does the van stand?"),
        P("venue.fixing_rule", "What may be tied, pinned, taped?"),
        P("venue.flame_rule", "What do they say about flames?"),
        P("venue.who_moves", "Who moves things between rooms?"),
        P("drop.received_by", "Who takes them in?"),
        P("drop.cleared_at", "When are they cleared?"),
        P("drop.cleared_by", "Who clears?"),
        P("question.answer", "Still open"),
        P("line.unit_price", "The design's own price"),
        P("design.container", "Tied, not standing in anything"),
        P("container.inner_body", "As the rim"),
        P("container.inner_base", "As the rim"),
        P("container.measured_volume", "Worked out from its sizes"),
        P("container.owned", "Not counted yet"),
        P("sundry.on_hand", "Not counted yet"),
        P("patch.way_there", "How do you get there?"),
        P("busy_hours.helper", "You"),
        P("job_note.drooped", "What did not hold?"),
        P("job_note.next_time", "What would you do otherwise?"),
#undef P
    };
    return all;
}

} // namespace

QString fieldPrompt(model::TableKind kind, const model::FieldInfo& field) {
    const auto& table = model::tableInfo(kind).name;
    const QString key = QString::fromLatin1(table.data(), static_cast<qsizetype>(table.size())) +
                        QLatin1Char('.') +
                        QString::fromLatin1(field.name.data(), static_cast<qsizetype>(field.name.size()));
    const auto found = prompts().find(key);
    return found == prompts().end() ? QString() : QCoreApplication::translate("Prompt", found.value());
}

} // namespace withy::ui
