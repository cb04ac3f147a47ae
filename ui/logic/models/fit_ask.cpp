// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/fit_ask.h"

#include "ui/logic/fields/day_reading.h"
#include "ui/logic/format.h"
#include "ui/logic/models/booking_pieces.h"
#include "ui/logic/models/booking_words.h"
#include "ui/logic/models/sheet.h"

#include <QCoreApplication>
#include <QRegularExpression>

namespace withy::ui {

namespace {

constexpr std::int64_t mostTables = 10'000;
constexpr std::int64_t mostOnATable = 100;

class FitAskSay {
    Q_DECLARE_TR_FUNCTIONS(FitAsk)

public:
    static QString when() { return tr("When: "); }

    static QString noDay() { return tr("When: it is blank. Type a day, like 25 sep."); }

    static QString outside(Day day, const model::Settings& s) {
        return tr("When: %1 lies outside the season, %2 to %3.")
            .arg(longDay(day), shortDay(s.firstDay), shortDay(s.lastDay));
    }

    static QString what(const QString& why) { return tr("What: %1").arg(why); }

    static QString noThis() { return tr("no design is chosen yet. Name one, like 16 tables of supper jar."); }

    static QString tooMany() { return tr("that is more than any hall holds. Count the tables again."); }

    static QString noTables() { return tr("how many tables? Write it as 16 tables of supper jar."); }

    static QString tablesOf(const QString& name) { return tr("tables of %1").arg(name); }

    static QString each(const FitPieces& l) {
        return l.perTable == 1 ? tr("one on each")
                               : tr("%1 on each, so %2 piece(s)", nullptr, static_cast<int>(l.pieces))
                                     .arg(numberWord(l.perTable), whole(l.pieces));
    }

    static QString tables(std::int64_t n) {
        return tr("%1 table(s)", nullptr, static_cast<int>(n)).arg(whole(n));
    }

    static QString pieces(std::int64_t n, const QString& name) { return tr("%1 of %2").arg(whole(n), name); }
};

/// "this jar", "these", "this one".
bool isThis(const QString& name) {
    static const QRegularExpression said(QStringLiteral("^th(is|ese|at|ose)( [\\w]+)?$"),
                                         QRegularExpression::CaseInsensitiveOption);
    return said.match(name.trimmed()).hasMatch();
}

FitPiecesReading readDesign(const model::Season& season, const QString& typed, std::int64_t tables,
                            std::optional<Id<model::Design>> current) {
    const auto [count, name] = splitCount(typed);
    FitPieces line;
    if (isThis(name)) {
        if (!current) return {std::nullopt, FitAskSay::what(FitAskSay::noThis())};
        line.design = *current;
    } else {
        const auto asked = readPiece(season, Id<model::Booking>(), typed);
        if (!asked.ok()) return {std::nullopt, FitAskSay::what(asked.sentence)};
        line.design = *asked.design;
    }
    const std::int64_t n = count.value_or(1);
    if (tables > 0 && (n < 1 || n > mostOnATable))
        return {std::nullopt, FitAskSay::what(FitAskSay::tooMany())};
    line.tables = tables;
    line.perTable = tables > 0 ? n : 1;
    line.pieces = tables > 0 ? tables * n : std::max<std::int64_t>(1, n);
    if (line.pieces > plan::FitOptions{}.mostPieces)
        return {std::nullopt, FitAskSay::what(FitAskSay::tooMany())};
    return {line, {}};
}

} // namespace

std::vector<Day> freeSaturdays(const model::Season& season, std::optional<Day> today, std::size_t most) {
    const auto& s = season.theSettings();
    std::vector<Day> out;
    const auto isTaken = [&](Day saturday) {
        return std::any_of(season.bookings.begin(), season.bookings.end(), [&](const model::Booking& b) {
            return b.standing != model::Standing::lost && b.eventEnd.day >= saturday - 1 &&
                   b.eventStart.day <= saturday + 1;
        });
    };
    Day day = std::max(today.value_or(s.firstDay), s.firstDay);
    while (day.weekday() != 6)
        day = day + 1;
    for (; day <= s.lastDay && out.size() < most; day = day + 7)
        if (!isTaken(day)) out.push_back(day);
    return out;
}

std::optional<plan::FitAsk> askOf(const FitDraft& draft) {
    if (!draft.day || draft.lines.empty()) return std::nullopt;
    plan::FitAsk ask;
    ask.eventStart = LocalTime{*draft.day, draft.minute};
    ask.eventEnd = ask.eventStart + usualStay;
    ask.venue = draft.venue;
    for (const auto& line : draft.lines)
        ask.lines.push_back({line.design, Pieces(line.pieces)});
    return ask;
}

FitPiecesReading readFitPieces(const model::Season& season, const QString& typed,
                               std::optional<Id<model::Design>> current) {
    static const QRegularExpression tables(QStringLiteral("^(\\d*)\\s*tables?\\s+(?:of|with)\\s+(.+)$"),
                                           QRegularExpression::CaseInsensitiveOption);
    const QString words = typed.simplified();
    const auto said = tables.match(words);
    if (!said.hasMatch()) return readDesign(season, words, 0, current);
    const qlonglong count = said.captured(1).toLongLong();
    if (count < 1) return {std::nullopt, FitAskSay::what(FitAskSay::noTables())};
    if (count > mostTables) return {std::nullopt, FitAskSay::what(FitAskSay::tooMany())};
    return readDesign(season, said.captured(2), count, current);
}

FitPieces withCount(FitPieces line, std::int64_t count) {
    count = std::min(count, plan::FitOptions{}.mostPieces / std::max<std::int64_t>(1, line.perTable));
    if (line.tables > 0) line.tables = count;
    line.pieces = line.tables > 0 ? count * line.perTable : count;
    return line;
}

std::int64_t countOf(const FitPieces& line) {
    return line.tables > 0 ? line.tables : line.pieces;
}

QString fitLineName(const model::Season& season, const FitPieces& line) {
    const QString name = nameIn(season.designs, line.design);
    return line.tables > 0 ? FitAskSay::tablesOf(name) : name;
}

QString fitLineNote(const FitPieces& line) {
    return line.tables > 0 ? FitAskSay::each(line) : QString();
}

QString fitCount(const model::Season& season, const FitPieces& line, std::int64_t pieces) {
    return line.tables > 0 ? FitAskSay::tables(pieces / std::max<std::int64_t>(1, line.perTable))
                           : FitAskSay::pieces(pieces, nameIn(season.designs, line.design));
}

FitDayReading readFitDay(const model::Season& season, const QString& typed) {
    if (typed.trimmed().isEmpty()) return {std::nullopt, std::nullopt, FitAskSay::noDay()};
    const auto& s = season.theSettings();
    const auto parts = splitDayAndClock(typed);
    const auto read = readDay(parts.day, {s.firstDay, s.lastDay});
    if (!read.day) return {std::nullopt, parts.minute, FitAskSay::when() + read.sentence};
    if (*read.day < s.firstDay || *read.day > s.lastDay)
        return {std::nullopt, parts.minute, FitAskSay::outside(*read.day, s)};
    return {read.day, parts.minute, {}};
}

} // namespace withy::ui
