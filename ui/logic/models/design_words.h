// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/plan/plan.h"
#include "ui/logic/edits/design_edits.h"
#include "ui/logic/measures.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

/// What the designs' pages say: groups, captions, figures with their working.
namespace withy::ui {

/// The shelves of the wall.
enum class DesignGroup { tables, hand, large };

DesignGroup groupOf(model::PieceKind kind);
QString groupWords(DesignGroup group); ///< "For tables"

/// Stems of one piece, from the slots as they stand.
std::int64_t stemsOf(const model::Season& season, Id<model::Design> design);
/// "10 stems, £9.50"; without a price only the stems.
QString stemsAndPrice(const model::Season& season, const model::Design& design);
/// What a piece without a container is: "hand-tied", "garland"; "no container yet" of one for a table.
QString containerlessWords(model::PieceKind kind);
/// "honey jar, 1 lb; moss ribbon": what it stands in, or what it is.
QString standsInWords(const model::Season& season, const model::Design& design);
/// "Used by 3 bookings this season." or "No booking uses it yet."
QString usedWords(const model::Season& season, Id<model::Design> design);
/// "× 24 for Library roof supper = 240"
QString useWords(const edits::DesignUse& use, std::int64_t stems);
/// Why it cannot simply go, and the ways out; empty when nothing uses it.
QString stillUsedWords(const model::Season& season, Id<model::Design> design);

/// "ninebark, dark leaf, or 2 more"; "no plant yet".
QString slotPlantsWords(const model::Season& season, Id<model::Slot> slot);
/// For screen readers: "Slot 4, Round: 3 stems, Zinnia, coral, or 2 more"
QString slotWords(const model::Season& season, const model::Slot& slot, int number);
QString purposeWords(model::Purpose purpose);
QString tierWords(model::Tier tier);
/// "35 to 55 cm"; empty when neither is known.
QString stemLengthWords(const model::Plant& plant, Units units);

/// What was typed for a plant is no plant's name, or the start of several.
QString noPlantWords(const QString& typed, int alike);
/// Said after it went: "Supper jar is taken out. Undo puts it back."
QString takenOutWords(const QString& name);
/// Said after a booking got it: "One Supper jar is in Library roof supper now."
QString usedInWords(const QString& design, const QString& booking);

/// One figure of the column at the right.
struct DesignFigure {
    QString label;  ///< "Cut length"
    QString figure; ///< "279 mm"
    QString note;   ///< "tall tier. Middle 219, low 169"
    QString means;  ///< for screen readers
    Working working;
    std::optional<model::Ref> leadsTo;
    QString leadWords;
};

DesignFigure stemsFigure(const model::Season& season, Id<model::Design> design);
/// Those the plan knows; empty while it knows none.
std::vector<DesignFigure> designFigures(const model::Season& season, const plan::Plan& plan,
                                        Id<model::Design> design);

/// What hangs on the booking it is next made for: water that runs dry, stems that grow on. The rest is among
/// the findings.
QStringList designNotes(const model::Season& season, const plan::Plan& plan, Id<model::Design> design,
                        std::optional<Day> today);

} // namespace withy::ui
