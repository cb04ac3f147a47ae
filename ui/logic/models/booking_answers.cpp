// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/fields/field_text.h"
#include "ui/logic/format.h"
#include "ui/logic/models/booking_tables.h"
#include "ui/logic/models/booking_words.h"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>

#include <algorithm>
#include <array>

namespace withy::ui {

namespace {

using Weight = AnswerPart::Weight;

class BookingAnswersSay {
    Q_DECLARE_TR_FUNCTIONS(Booking)

public:
    static QString number(std::int64_t n) {
        static constexpr std::array<const char*, 13> words{
            QT_TR_NOOP("none"),  QT_TR_NOOP("one"),  QT_TR_NOOP("two"), QT_TR_NOOP("three"),
            QT_TR_NOOP("four"),  QT_TR_NOOP("five"), QT_TR_NOOP("six"), QT_TR_NOOP("seven"),
            QT_TR_NOOP("eight"), QT_TR_NOOP("nine"), QT_TR_NOOP("ten"), QT_TR_NOOP("eleven"),
            QT_TR_NOOP("twelve")};
        return n >= 0 && n < 13 ? tr(words[static_cast<std::size_t>(n)]) : whole(n);
    }

    static QString open(int n) {
        return tr("%1 thing(s) (is|are) still open.", nullptr, n).arg(capital(number(n)));
    }

    static QString neededBy(int n, const QString& day) {
        return tr("%1 (is|are) needed by %2.", nullptr, n).arg(capital(number(n)), day);
    }

    static QString late(int n) {
        return tr("%1 (was|were) needed before today.", nullptr, n).arg(capital(number(n)));
    }

    static QString nothingOpen(bool asked) {
        return asked ? tr("Every question is answered.") : tr("No question is open.");
    }

    static QString counts(std::int64_t need, std::int64_t withSpare, std::int64_t toCut) {
        QStringList parts{tr("%1 stem(s)", nullptr, static_cast<int>(need)).arg(whole(need))};
        if (withSpare > need) parts << tr("%1 with the spare").arg(whole(withSpare));
        if (toCut > withSpare) parts << tr("%1 to cut in whole bunches").arg(whole(toCut));
        return parts.join(QStringLiteral(", "));
    }

    /// "Two supper jars on each of 12 trestles."
    static QString perTable(std::int64_t n, const QString& pieces, const QString& tables) {
        return tr("%1 %2 on each of %3.").arg(capital(number(n)), pieces, tables);
    }

    /// "Two pedestals on the altar table."
    static QString onTable(std::int64_t n, const QString& pieces, const QString& table) {
        return tr("%1 %2 on %3.").arg(capital(number(n)), pieces, table);
    }

    static QString noPieces() { return tr("No pieces yet. Add one, and the garden will say what it needs."); }

    static QString guestsFrom(const model::Booking& b) {
        return tr("%1, guests from %2").arg(shortDay(b.eventStart.day), clock(b.eventStart));
    }

    static QString seats(std::int64_t n) { return tr("%n seat(s)", nullptr, static_cast<int>(n)); }

    /// Of the whole room: nobody has said yet at which tables they sit.
    static QString room(std::int64_t n) { return tr("room for %n seat(s)", nullptr, static_cast<int>(n)); }

    static QString gift(double share) {
        return share >= 100 ? tr("given") : tr("%1 % given").arg(QString::number(share, 'g', 4));
    }

    static QString answered(int n, int all) { return tr("%1 of %2 answered").arg(n).arg(all); }

    static QString saw(const model::SentVersion& sent) {
        return tr("the client saw the %1 of %2")
            .arg(wordText(model::wordOf(sent.kind)), shortDay(sent.date).section(QLatin1Char(' '), 1));
    }

    static QString candles() {
        return tr(
            "Flowers, leaves and ribbon burn, dry ones at once. Keep any flame well clear of them, in a "
            "holder that stands firm, and never alone. The venue's rule and the fire service's advice come "
            "first.");
    }

    static QString venueRule(const QString& rule) { return tr("The venue says: %1").arg(rule); }
};

struct OpenQuestions {
    int open = 0;
    int answered = 0;
    std::vector<Day> days; ///< of the open ones that have a day, soonest first
};

OpenQuestions questionsOf(const model::Season& season, Id<model::Booking> booking) {
    OpenQuestions q;
    for (const auto& question : season.questions) {
        if (question.booking != booking) continue;
        ++(question.answer.empty() ? q.open : q.answered);
        if (question.answer.empty() && question.neededBy) q.days.push_back(*question.neededBy);
    }
    std::sort(q.days.begin(), q.days.end());
    return q;
}

int countTo(const std::vector<Day>& days, Day last) {
    return static_cast<int>(std::upper_bound(days.begin(), days.end(), last) - days.begin());
}

/// "supper jars", where the design's name ends as its pieces are called; else "jars".
QString piecesCalled(const model::Season& season, const model::Design& design, std::int64_t n) {
    const QString one = countedPieces(season, design, 1).section(QLatin1Char(' '), 1);
    const QString many = countedPieces(season, design, n).section(QLatin1Char(' '), 1);
    const QString name = text(design.name);
    if (!name.endsWith(one, Qt::CaseInsensitive)) return many;
    return name.chopped(one.size()).toLower() + many;
}

/// The placement of the line with most pieces, as a sentence.
QString placed(const model::Season& season, Id<model::Booking> booking) {
    const model::Placement* most = nullptr;
    const model::Design* design = nullptr;
    const model::VenueTable* table = nullptr;
    std::int64_t pieces = 0;
    for (const auto& p : season.placements) {
        const auto* line = season.lines.find(p.line);
        const auto* at = season.venueTables.find(p.table);
        if (!line || !at || line->booking != booking || p.perTable * at->howMany <= pieces) continue;
        pieces = p.perTable * at->howMany;
        most = &p;
        design = season.designs.find(line->design);
        table = at;
    }
    if (!most || !design || !table) return {};
    const QString pieceWords = piecesCalled(season, *design, most->perTable);
    return table->howMany == 1
               ? BookingAnswersSay::onTable(most->perTable, pieceWords, loneTableWords(*table))
               : BookingAnswersSay::perTable(most->perTable, pieceWords, tableWords(*table));
}

/// The venue's tables that pieces are lined to; all of them while nothing is placed.
std::vector<const model::VenueTable*> tablesInUse(const model::Season& season, const model::Booking& booking,
                                                  bool& placed) {
    std::vector<const model::VenueTable*> laid, all;
    for (const auto& t : season.venueTables) {
        if (!booking.venue || t.venue != *booking.venue) continue;
        all.push_back(&t);
        const auto holds = [&](const model::Placement& p) {
            const auto* line = season.lines.find(p.line);
            return p.table == t.id && p.perTable > 0 && line && line->booking == booking.id;
        };
        if (std::any_of(season.placements.begin(), season.placements.end(), holds)) laid.push_back(&t);
    }
    placed = !laid.empty();
    return placed ? laid : all;
}

} // namespace

QString numberWord(std::int64_t n) {
    return BookingAnswersSay::number(n);
}

QString dayWords(Day day, std::optional<Day> today) {
    if (today && day >= *today && day - *today < 7)
        return QLocale(QLocale::English, QLocale::UnitedKingdom)
            .toString(QDate(day.year(), day.month(), day.dayOfMonth()), QStringLiteral("dddd"));
    return shortDay(day);
}

Answer openAnswer(const model::Season& season, Id<model::Booking> booking, std::optional<Day> today) {
    const auto q = questionsOf(season, booking);
    if (q.open == 0) return {{BookingAnswersSay::nothingOpen(q.answered > 0), Weight::plain}};
    Answer answer{{BookingAnswersSay::open(q.open) + QLatin1Char(' '), Weight::plain}};
    if (q.days.empty()) return answer;
    if (const int late = today ? countTo(q.days, *today - 1) : 0; late > 0) {
        answer.push_back({BookingAnswersSay::late(late), Weight::asks});
        return answer;
    }
    const Day soonest = q.days.front();
    const bool soon = today && soonest <= *today + 7;
    answer.push_back({BookingAnswersSay::neededBy(countTo(q.days, soonest), dayWords(soonest, today)),
                      soon ? Weight::asks : Weight::plain});
    return answer;
}

QString briefRemark(const model::Season& season, Id<model::Booking> booking) {
    QStringList parts;
    const auto q = questionsOf(season, booking);
    if (q.open + q.answered > 0) parts << BookingAnswersSay::answered(q.answered, q.open + q.answered);
    const model::SentVersion* last = nullptr;
    for (const auto& sent : season.sentVersions) {
        if (sent.booking == booking && (!last || last->date <= sent.date)) last = &sent;
    }
    if (last) parts << BookingAnswersSay::saw(*last);
    return parts.join(QStringLiteral("   ·   "));
}

QString candlesCaution(const model::Season& season, Id<model::Booking> booking) {
    const auto* b = season.bookings.find(booking);
    const auto* venue = b && b->venue ? season.venues.find(*b->venue) : nullptr;
    if (!venue || venue->flameRule.empty()) return BookingAnswersSay::candles();
    return BookingAnswersSay::candles() + QLatin1Char(' ') +
           BookingAnswersSay::venueRule(text(venue->flameRule));
}

QString stemCounts(const plan::BookingPlan& plan) {
    Stems withSpare;
    for (const auto& need : plan.needs)
        withSpare += need.need.need + need.need.spare;
    return BookingAnswersSay::counts(plan.stemsNeeded.value, withSpare.value, plan.stemsToCut.value);
}

Answer stemCountsAnswer(const model::Season& season, const plan::BookingPlan& plan) {
    return {{pieceCountWords(pieceCount(season, plan)), Weight::strong},
            {QStringLiteral(", ")},
            {stemCounts(plan), Weight::strong},
            {QStringLiteral(". ")}};
}

Answer piecesAnswer(const model::Season& season, Id<model::Booking> booking, const plan::BookingPlan* plan) {
    PieceCount count;
    for (const auto& line : season.lines) {
        if (line.booking != booking) continue;
        count.pieces += line.pieces.value;
        count.spare += line.sparePieces.value;
    }
    if (count.pieces + count.spare == 0) return {{BookingAnswersSay::noPieces(), Weight::plain}};
    Answer answer = plan ? stemCountsAnswer(season, *plan)
                         : Answer{{pieceCountWords(count), Weight::strong}, {QStringLiteral(". ")}};
    answer.push_back({placed(season, booking), Weight::plain});
    return answer;
}

QStringList bookingFacts(const model::Season& season, const model::Booking& b) {
    QStringList facts{BookingAnswersSay::guestsFrom(b)};
    const auto* venue = b.venue ? season.venues.find(*b.venue) : nullptr;
    if (venue) {
        QStringList where{text(venue->name)};
        std::int64_t covers = 0;
        bool placed = false;
        for (const auto* t : tablesInUse(season, b, placed)) {
            covers += t->covers * t->howMany;
            where << tableWords(*t);
        }
        if (where.size() > 3) where = where.mid(0, 3);
        facts << where.join(QStringLiteral(", "));
        if (covers > 0)
            facts << (placed ? BookingAnswersSay::seats(covers) : BookingAnswersSay::room(covers));
    }
    facts << (b.giftShare > 0 ? standingWords(b) + QStringLiteral(", ") + BookingAnswersSay::gift(b.giftShare)
                              : standingWords(b));
    return facts;
}

} // namespace withy::ui
