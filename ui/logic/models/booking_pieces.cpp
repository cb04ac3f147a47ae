// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/booking_pieces.h"

#include "core/base/working_lines.h"
#include "core/model/origin.h"
#include "ui/logic/format.h"
#include "ui/logic/models/booking_groups.h"
#include "ui/logic/models/booking_tables.h"
#include "ui/logic/models/design_words.h"
#include "ui/logic/models/week_steps.h"
#include "ui/logic/wording.h"

#include <QCoreApplication>

namespace withy::ui {

namespace {

class BookingPiecesSay {
    Q_DECLARE_TR_FUNCTIONS(Pieces)

public:
    static QString stemsOf(const QString& design) { return tr("stems in one %1").arg(design); }

    static QString makingOf(const QString& design) { return tr("of making, %1").arg(design); }

    static QString perTable(const QString& tables, std::int64_t n) {
        return tr("%1, %2 each").arg(tables, QString::number(n));
    }

    static QString noPlace() { return tr("Where does it stand?"); }

    static QString times(std::int64_t n, const QString& price) { return tr("%1 × %2").arg(whole(n), price); }

    static QString noPrice() { return tr("no price yet"); }

    static QString makingOfAll() { return tr("of making in all"); }

    static QString atListPrice() { return tr("at list price"); }

    static QString noDesigns() { return tr("There are no designs yet. Draw the first one at Designs."); }

    static QString unknown(const QString& typed) {
        return tr("No design is called “%1”. Choose one of the list, or draw it at Designs first.")
            .arg(typed);
    }

    static QString several(const QString& typed, const QStringList& names) {
        return tr("“%1” could be %2. Type more of the name.").arg(typed, names.join(tr(" or ")));
    }

    static QString tooMany() { return tr("Up to 100,000 pieces. Check the number."); }

    static QString offer(std::int64_t n, const QString& tables) {
        return tr("%1 on each of %2").arg(n).arg(tables);
    }

    static QString uneven(std::int64_t n, const QString& tables) {
        return tr("%n piece(s) (does|do) not go evenly on %1. Add (it|them), then say how many stand on "
                  "each.",
                  nullptr, static_cast<int>(n))
            .arg(tables);
    }

    static QString one(const QString& table) { return tr("On %1").arg(table); }

    static QString several(std::int64_t n, const QString& table) { return tr("%1 on %2").arg(n).arg(table); }

    static QString spare(std::int64_t n) {
        return n == 0 ? tr("No spare pieces.") : tr("%n spare piece(s).", nullptr, static_cast<int>(n));
    }
};

const plan::DesignPlan* planOf(const plan::Plan& plan, Id<model::Design> id) {
    const auto found = plan.designs.find(id);
    return found == plan.designs.end() ? nullptr : found->second.get();
}

PieceFigure stemsFigure(const model::Season& season, const model::Design& design) {
    PieceFigure f;
    std::int64_t sum = 0;
    for (const auto& slot : season.slots) {
        if (slot.design != design.id) continue;
        sum += slot.count.value;
        f.working.push_back(from(model::originOf(model::TableKind::designs, design.id.value),
                                 lineOf(f.working.empty() ? Step::given : Step::plus, "stems a piece",
                                        slot.count.value, Unit::stems, Basis::mine, {}, slot.label)));
    }
    f.working.push_back(lineOf(Step::result, "stems a piece", static_cast<double>(sum), Unit::stems,
                               Basis::computed, {}, design.name));
    f.figure = whole(sum);
    f.means = BookingPiecesSay::stemsOf(text(design.name));
    return f;
}

PieceFigure makingFigure(const plan::DesignPlan& plan, const model::Line& line, const model::Design& design) {
    PieceFigure f;
    const auto pieces = line.pieces.value + line.sparePieces.value;
    const double minutes = plan.minutes.value * static_cast<double>(pieces);
    for (auto step : plan.minutes.working) {
        if (step.step == Step::result) step.step = Step::given;
        f.working.push_back(step);
    }
    f.working.push_back(from(model::originOf(model::TableKind::lines, line.id.value),
                             lineOf(Step::times, "pieces", pieces, Unit::pieces, Basis::mine)));
    f.working.push_back(lineOf(Step::result, "making", minutes, Unit::minutes, Basis::computed));
    f.figure = workWords(Minutes(static_cast<std::int64_t>(minutes + 0.5)));
    f.means = BookingPiecesSay::makingOf(text(design.name));
    return f;
}

QString whereOf(const model::Season& season, const model::Line& line) {
    QStringList parts;
    for (const auto& p : season.placements) {
        const auto* table = season.venueTables.find(p.table);
        if (p.line != line.id || !table || p.perTable < 1) continue;
        if (table->howMany > 1)
            parts << BookingPiecesSay::perTable(tableWords(*table), p.perTable);
        else
            parts << (p.perTable == 1 ? tableWords(*table)
                                      : BookingPiecesSay::several(p.perTable, loneTableWords(*table)));
    }
    if (!parts.isEmpty()) return parts.join(QStringLiteral("; "));
    if (!line.note.empty()) return text(line.note);
    const auto* drop = line.drop ? season.drops.find(*line.drop) : nullptr;
    return drop ? text(drop->place) : QString();
}

QString standsIn(const model::Season& season, const model::Design& design) {
    QStringList parts;
    const auto* vessel = design.container ? season.containers.find(*design.container) : nullptr;
    parts << (vessel ? text(vessel->name) : containerlessWords(design.kind));
    const auto* mix = design.ribbonMix ? season.ribbonMixes.find(*design.ribbonMix) : nullptr;
    if (mix && design.finish != model::RibbonFinish::none) parts << text(mix->name);
    return parts.join(QStringLiteral(", "));
}

void price(const model::Season& season, const model::Line& line, const model::Design& design, PieceRow& row) {
    const auto each = line.unitPrice ? line.unitPrice : design.price;
    if (!each) {
        row.priced = BookingPiecesSay::noPrice();
        return;
    }
    row.worth = amount(*each * line.pieces.value, season.theSettings());
    row.priced = BookingPiecesSay::times(line.pieces.value, amount(*each, season.theSettings()));
}

} // namespace

PieceRow pieceRow(const model::Season& season, const plan::Plan& plan, const model::Line& line) {
    PieceRow row;
    row.line = line.id;
    row.design = line.design;
    row.pieces = line.pieces.value;
    row.spare = line.sparePieces.value;
    const auto* design = season.designs.find(line.design);
    if (!design) return row;
    row.name = text(design->name);
    row.stands = standsIn(season, *design);
    row.stems = stemsFigure(season, *design);
    if (const auto* p = planOf(plan, line.design)) row.making = makingFigure(*p, line, *design);
    row.where = whereOf(season, line);
    row.placed = !row.where.isEmpty();
    if (!row.placed) row.where = BookingPiecesSay::noPlace();
    price(season, line, *design, row);
    return row;
}

PieceFigure makingTotal(const model::Season& season, const plan::BookingPlan& plan) {
    PieceFigure f;
    Minutes all;
    for (const auto& s : plan.steps) {
        if (s.kind != plan::StepKind::make || s.minutes.value == 0) continue;
        all += s.minutes;
        const auto* line = s.line ? season.lines.find(*s.line) : nullptr;
        const auto* design = line ? season.designs.find(line->design) : nullptr;
        auto one = lineOf(f.working.empty() ? Step::given : Step::plus, "making", s.minutes.value,
                          Unit::minutes, Basis::computed, {}, design ? design->name : std::string());
        if (design) one.from = model::originOf(model::TableKind::designs, design->id.value);
        f.working.push_back(std::move(one));
    }
    f.working.push_back(lineOf(Step::result, "making in all", all.value, Unit::minutes));
    f.figure = workWords(all);
    f.means = BookingPiecesSay::makingOfAll();
    return f;
}

PieceFigure worthTotal(const model::Season& season, const plan::BookingPlan& plan) {
    PieceFigure f;
    if (!plan.money) return f;
    f.figure = amount(plan.money->list.total, season.theSettings());
    f.means = BookingPiecesSay::atListPrice();
    f.working = plan.money->list.working;
    f.lines = lines(f.working, season.theSettings());
    return f;
}

QString spareWords(std::int64_t spare) {
    return BookingPiecesSay::spare(spare);
}

std::pair<std::optional<std::int64_t>, QString> splitCount(const QString& typed) {
    const QString plain = typed.simplified();
    qsizetype digits = 0;
    while (digits < plain.size() && plain[digits].isDigit())
        ++digits;
    if (digits == 0 || digits > 9) return {std::nullopt, plain};
    // "3 hoops" is a count and a name; "3rd hoop" is a name.
    QString rest = plain.mid(digits);
    if (!rest.isEmpty() && rest[0].isLetter() && !rest.startsWith(QLatin1Char('x')))
        return {std::nullopt, plain};
    if (rest.startsWith(QLatin1String("x ")) || rest.startsWith(QLatin1String(" x ")) ||
        rest.startsWith(QLatin1String(" × ")))
        rest = rest.mid(rest.indexOf(QLatin1Char(' '), 1));
    return {plain.left(digits).toLongLong(), rest.simplified()};
}

namespace {

PieceAsked readDesign(const model::Season& season, std::int64_t count, const QString& name) {
    PieceAsked asked;
    asked.count = count;
    const QString wanted = foldedForFinding(name);
    QStringList partly;
    for (const auto& d : season.designs) {
        const QString has = foldedForFinding(text(d.name));
        if (has == wanted) {
            asked.design = d.id;
            return asked;
        }
        if (wanted.isEmpty() || !has.contains(wanted)) continue;
        partly << text(d.name);
        asked.design = d.id;
    }
    if (partly.size() == 1) return asked;
    asked.design.reset();
    asked.sentence = partly.isEmpty() ? BookingPiecesSay::unknown(name)
                                      : BookingPiecesSay::several(name, partly.mid(0, 3));
    return asked;
}

/// The tables whose name is said, in the singular or the plural.
const model::VenueTable* tableSaid(const model::Season& season, Id<model::Booking> booking,
                                   const QString& said) {
    const QString wanted = foldedForFinding(said);
    for (const auto* t : ui::tablesOf(season, booking)) {
        const QString label = foldedForFinding(text(t->label));
        const QString several = foldedForFinding(tableWords(*t)).section(QLatin1Char(' '), 1);
        if (wanted == label || wanted == several) return t;
    }
    return nullptr;
}

} // namespace

PieceAsked readPiece(const model::Season& season, Id<model::Booking> booking, const QString& typed) {
    if (season.designs.empty()) return {1, {}, {}, BookingPiecesSay::noDesigns()};
    const auto [count, name] = splitCount(typed);
    if (count.value_or(1) > 100000) return {1, {}, {}, BookingPiecesSay::tooMany()};
    auto asked = readDesign(season, count.value_or(1), name);
    static const QString on = QStringLiteral(" on ");
    const auto at = name.lastIndexOf(on);
    if (asked.ok() || at < 0) return asked;
    const auto* table = tableSaid(season, booking, name.mid(at + on.size()));
    if (!table) return asked;
    asked = readDesign(season, count.value_or(1), name.left(at));
    if (!asked.ok()) return asked;
    if (asked.count % table->howMany != 0 || asked.count < table->howMany) {
        asked.sentence = BookingPiecesSay::uneven(asked.count, tableWords(*table));
        return asked;
    }
    asked.placement = PlacementOffer{table->id, asked.count / table->howMany, {}};
    return asked;
}

std::vector<const model::VenueTable*> tablesOf(const model::Season& season, Id<model::Booking> booking) {
    std::vector<const model::VenueTable*> tables;
    const auto* b = season.bookings.find(booking);
    if (!b || !b->venue) return tables;
    for (const auto& t : season.venueTables) {
        if (t.venue == *b->venue) tables.push_back(&t);
    }
    return tables;
}

namespace {

QString offerWords(const model::VenueTable& table, std::int64_t each) {
    if (table.howMany > 1) return BookingPiecesSay::offer(each, tableWords(table));
    return each == 1 ? BookingPiecesSay::one(loneTableWords(table))
                     : BookingPiecesSay::several(each, loneTableWords(table));
}

} // namespace

std::vector<PlacementOffer> placementOffers(const model::Season& season, const model::Line& line) {
    std::vector<PlacementOffer> offers;
    for (const auto* t : tablesOf(season, line.booking)) {
        if (t->howMany < 1 || line.pieces.value < t->howMany || line.pieces.value % t->howMany != 0) continue;
        const auto each = line.pieces.value / t->howMany;
        if (each > 6) continue;
        offers.push_back({t->id, each, offerWords(*t, each)});
    }
    return offers;
}

} // namespace withy::ui
