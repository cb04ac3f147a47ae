// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/booking_tables.h"

#include "core/base/conversion.h"
#include "ui/logic/format.h"
#include "ui/logic/measures.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include <array>
#include <cmath>

namespace withy::ui {

namespace {

class BookingTablesSay {
    Q_DECLARE_TR_FUNCTIONS(Tables)

public:
    static QString example() { return tr("Say how many, and of how many seats: “12 trestles of 8”."); }

    static QString notACount(const QString& part) {
        return tr("“%1” does not begin with how many there are. For instance “12 trestles of 8”.").arg(part);
    }

    static QString tooMany() { return tr("That is more tables than any hall holds. Check the number."); }

    static QString table() { return tr("Table"); }

    static QString the(const QString& label) { return tr("the %1").arg(label); }

    static QString of(const QString& tables, const QString& covers) {
        return tr("%1 of %2").arg(tables, covers);
    }

    static QString across(const QString& size) { return tr("%1 across").arg(size); }

    static QString usual(const QString& which) {
        return tr("%1: a usual size, common practice, no source. Measure one and mend it here.").arg(which);
    }
};

constexpr auto words =
    QRegularExpression::UseUnicodePropertiesOption | QRegularExpression::CaseInsensitiveOption;

/// "12", "a", "twelve"; nothing when it is no count.
std::optional<std::int64_t> countOf(const QString& word) {
    static constexpr std::array<const char*, 20> names{
        "one",     "two",     "three",     "four",     "five",     "six",      "seven",
        "eight",   "nine",    "ten",       "eleven",   "twelve",   "thirteen", "fourteen",
        "fifteen", "sixteen", "seventeen", "eighteen", "nineteen", "twenty"};
    const QString lower = word.toLower();
    for (std::size_t i = 0; i < names.size(); ++i) {
        if (lower == QLatin1String(names[i])) return static_cast<std::int64_t>(i + 1);
    }
    if (lower == QLatin1String("a") || lower == QLatin1String("an") || lower == QLatin1String("the"))
        return 1;
    bool whole = false;
    const auto n = word.toLongLong(&whole);
    return whole ? std::optional(n) : std::nullopt;
}

QString singular(QString word) {
    const QString lower = word.toLower();
    if (lower.endsWith(QLatin1String("ches")) || lower.endsWith(QLatin1String("shes")))
        return word.chopped(2);
    if (lower.endsWith(QLatin1Char('s')) && !lower.endsWith(QLatin1String("ss"))) return word.chopped(1);
    return word;
}

QString plural(const QString& word) {
    const QString lower = word.toLower();
    if (lower.isEmpty() || !lower.back().isLetter() || lower.endsWith(QLatin1Char('s'))) return word;
    if (lower.endsWith(QLatin1String("ch")) || lower.endsWith(QLatin1String("sh")))
        return word + QStringLiteral("es");
    return word + QLatin1Char('s');
}

double millimetresIn(const QString& unit) {
    const QString u = unit.toLower();
    if (u == QLatin1String("m")) return 1000;
    if (u == QLatin1String("cm")) return 10;
    if (u == QLatin1String("ft") || u == QLatin1String("foot") || u == QLatin1String("'"))
        return millimetresInFoot;
    if (u == QLatin1String("in")) return millimetresInInch;
    return 1;
}

/// Takes a size out of the part: length (or diameter) and width.
struct Size {
    std::optional<Millimetres> length;
    std::optional<Millimetres> width;
};

Size takeSize(QString& part) {
    static const QRegularExpression both(
        QStringLiteral("(\\d+(?:\\.\\d+)?)\\s*(mm|cm|m|ft|foot|in|')?\\s*(?:x|×|by)\\s*(\\d+(?:\\.\\d+)?)\\s*"
                       "(mm|cm|m|ft|foot|in|')?"),
        words);
    static const QRegularExpression one(
        QStringLiteral("(\\d+(?:\\.\\d+)?)\\s*(mm|cm|m|ft|foot|in|')(?![\\w])"), words);
    const auto mm = [](const QString& number, const QString& unit) {
        return Millimetres(std::llround(number.toDouble() * millimetresIn(unit)));
    };
    Size size;
    if (const auto m = both.match(part); m.hasMatch()) {
        const QString last = m.captured(4);
        size = {mm(m.captured(1), m.captured(2).isEmpty() ? last : m.captured(2)), mm(m.captured(3), last)};
        part.remove(m.capturedStart(), m.capturedLength());
    } else if (const auto n = one.match(part); n.hasMatch()) {
        size.length = mm(n.captured(1), n.captured(2));
        part.remove(n.capturedStart(), n.capturedLength());
    }
    return size;
}

/// Takes "of 8", "for 8", "with 8 seats" out of the part.
std::int64_t takeCovers(QString& part) {
    static const QRegularExpression seats(QStringLiteral("\\b(?:of|for|with|seating|seat|at)\\s+(\\w+)(?:\\s+"
                                                         "(?:seats?|covers?|guests?|people|chairs?|each))*"),
                                          words);
    auto found = seats.globalMatch(part);
    while (found.hasNext()) {
        const auto m = found.next();
        if (const auto n = countOf(m.captured(1))) {
            part.remove(m.capturedStart(), m.capturedLength());
            return *n;
        }
    }
    return 0;
}

QString labelOf(const QString& rest) {
    static const QRegularExpression joining(QStringLiteral("\\b(?:of|at|with|each|x)\\b"), words);
    QString label = QString(rest).remove(joining).simplified();
    const auto space = label.lastIndexOf(QLatin1Char(' '));
    label = label.left(space + 1) + singular(label.mid(space + 1));
    if (label.isEmpty()) return BookingTablesSay::table();
    label[0] = label[0].toUpper();
    return label.left(200);
}

bool isRound(const QString& label) {
    static const QRegularExpression round(QStringLiteral("\\b(?:round|circular)"), words);
    return round.match(label).hasMatch();
}

TablesReading readPart(QString part) {
    const QString typed = part;
    const auto space = part.indexOf(QRegularExpression(QStringLiteral("[^\\w]")));
    const auto count = countOf(space < 0 ? part : part.left(space));
    if (!count) return {{}, BookingTablesSay::notACount(typed)};
    part = space < 0 ? QString() : part.mid(space);
    if (*count < 1 || *count > 10000)
        return {{}, *count < 1 ? BookingTablesSay::example() : BookingTablesSay::tooMany()};
    model::VenueTable table;
    table.howMany = *count;
    const Size size = takeSize(part);
    table.covers = takeCovers(part);
    if (table.covers > 1000) return {{}, BookingTablesSay::tooMany()};
    table.label = utf8(labelOf(part));
    const bool round = isRound(text(table.label)) && !size.width;
    table.shape = round ? model::TableShape::round : model::TableShape::rectangular;
    table.length = size.length.value_or(round ? usualRound : usualTrestleLength);
    if (!round) table.width = size.width.value_or(usualTrestleWidth);
    return {{table}, {}};
}

} // namespace

TablesReading readTables(const QString& typed) {
    static const QRegularExpression between(QStringLiteral("[,;+\\n]|\\band\\b"), words);
    TablesReading all;
    for (const QString& piece : typed.split(between, Qt::SkipEmptyParts)) {
        if (piece.trimmed().isEmpty()) continue;
        const auto one = readPart(piece.simplified());
        if (!one.ok()) return {{}, one.sentence};
        all.tables.insert(all.tables.end(), one.tables.begin(), one.tables.end());
    }
    if (all.tables.empty()) all.sentence = BookingTablesSay::example();
    return all;
}

namespace {

/// A name of its own ("St Anne's table") keeps its capital; a common word does not.
bool hasOwnName(const QString& label) {
    return label.size() < 2 || label.mid(1) != label.mid(1).toLower();
}

QString labelInPassing(const model::VenueTable& table) {
    QString label = text(table.label);
    if (!hasOwnName(label)) label[0] = label[0].toLower();
    return label;
}

} // namespace

QString loneTableWords(const model::VenueTable& table) {
    const QString label = labelInPassing(table);
    return hasOwnName(text(table.label)) ? label : BookingTablesSay::the(label);
}

QString tableWords(const model::VenueTable& table) {
    const QString label = labelInPassing(table);
    return whole(table.howMany) + QLatin1Char(' ') + (table.howMany == 1 ? label : plural(label));
}

QString tablesWords(const std::vector<model::VenueTable>& tables) {
    QStringList list;
    for (const auto& t : tables)
        list << (t.covers > 0 ? BookingTablesSay::of(tableWords(t), whole(t.covers)) : tableWords(t));
    return list.join(QStringLiteral(", "));
}

QString tableSizeWords(const model::VenueTable& t, Units units) {
    if (t.shape == model::TableShape::round)
        return BookingTablesSay::across(tableLengthWords(t.length, units));
    return sidesWords(t.length, t.width.value_or(Millimetres{}), units);
}

bool hasUsualSize(const model::VenueTable& t) {
    if (t.shape == model::TableShape::round) return t.length == usualRound;
    return t.length == usualTrestleLength && t.width == usualTrestleWidth;
}

QString usualSizeWords(const std::vector<const model::VenueTable*>& tables, Units units) {
    QStringList sizes;
    for (const auto* t : tables) {
        if (hasUsualSize(*t) && !sizes.contains(tableSizeWords(*t, units)))
            sizes << tableSizeWords(*t, units);
    }
    return sizes.isEmpty() ? QString() : BookingTablesSay::usual(sizes.join(QStringLiteral(", ")));
}

} // namespace withy::ui
