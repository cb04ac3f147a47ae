// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/booking_groups.h"

#include "ui/logic/format.h"
#include "ui/logic/models/booking_words.h"
#include "ui/logic/models/week_steps.h"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>

#include <algorithm>
#include <iterator>

namespace withy::ui {

namespace {

class BookingGroupsSay {
    Q_DECLARE_TR_FUNCTIONS(BookingList)

public:
    static QString thisWeek() { return tr("This week"); }

    static QString nextWeek() { return tr("Next week"); }

    static QString goneBy() { return tr("Gone by"); }
};

constexpr int weeksNamed = 5; ///< this week, the next, and three by their days; months after that

QString monthWords(Day day, int usualYear) {
    const QLocale british(QLocale::English, QLocale::UnitedKingdom);
    return british.toString(toQDate(day),
                            day.year() == usualYear ? QStringLiteral("MMMM") : QStringLiteral("MMMM yyyy"));
}

constexpr const char* sortWords[]{"date", "name", "standing", "owed"};

using Wanted = std::vector<const model::Booking*>;

/// Starts a new group whenever the head changes.
void add(std::vector<BookingGroup>& groups, const BookingGroup& like, Id<model::Booking> id) {
    if (groups.empty() || groups.back().head != like.head || groups.back().range != like.range)
        groups.push_back(like);
    groups.back().bookings.push_back(id);
}

BookingGroup groupOf(const model::Booking& b, std::optional<Day> today, int usualYear) {
    const Day day = b.eventStart.day;
    const Day first = day - (day.dayOfMonth() - 1);
    const Day next = first + 31;
    const std::pair month{first, next - next.dayOfMonth()};
    if (!today) return {monthWords(day, usualYear), {}, {}, false, month};
    const int week = (weekOf(day) - weekOf(*today)) / 7;
    const Day monday = weekOf(day);
    const std::pair itsWeek{monday, monday + 6};
    if (week < 0) return {BookingGroupsSay::goneBy(), {}, {}, true, {}};
    if (week == 0) return {BookingGroupsSay::thisWeek(), weekSpanWords(monday), {}, false, itsWeek};
    if (week == 1) return {BookingGroupsSay::nextWeek(), weekSpanWords(monday), {}, false, itsWeek};
    if (week < weeksNamed) return {weekSpanWords(monday), {}, {}, false, itsWeek};
    const Day named = weekOf(*today) + 7 * weeksNamed; // the weeks before it have heads of their own
    return {monthWords(day, usualYear), {}, {}, false, std::pair{std::max(month.first, named), month.second}};
}

std::vector<BookingGroup> byDate(Wanted wanted, std::optional<Day> today, int usualYear) {
    std::stable_sort(wanted.begin(), wanted.end(),
                     [](const auto* a, const auto* b) { return a->eventStart < b->eventStart; });
    std::vector<BookingGroup> groups;
    BookingGroup goneBy;
    for (const auto* b : wanted) {
        const auto like = groupOf(*b, today, usualYear);
        if (like.goneBy) {
            if (goneBy.bookings.empty()) goneBy = like;
            goneBy.bookings.insert(goneBy.bookings.begin(), b->id); // the latest first
        } else {
            add(groups, like, b->id);
        }
    }
    if (!goneBy.bookings.empty()) groups.push_back(goneBy);
    return groups;
}

std::vector<BookingGroup> byName(Wanted wanted) {
    std::stable_sort(wanted.begin(), wanted.end(), [](const auto* a, const auto* b) {
        return QString::localeAwareCompare(foldedForFinding(text(a->title)),
                                           foldedForFinding(text(b->title))) < 0;
    });
    std::vector<BookingGroup> groups;
    for (const auto* b : wanted)
        add(groups, {}, b->id);
    return groups;
}

std::vector<BookingGroup> byStanding(Wanted wanted) {
    std::stable_sort(wanted.begin(), wanted.end(), [](const auto* a, const auto* b) {
        return std::pair(a->standing, a->eventStart) < std::pair(b->standing, b->eventStart);
    });
    std::vector<BookingGroup> groups;
    for (const auto* b : wanted) {
        add(groups, {capital(standingWords(b->standing)), {}, {}, false, {}}, b->id);
    }
    return groups;
}

/// What is to be paid back comes after what is paid; a lost booking owes nothing and comes last.
std::pair<bool, std::int64_t> owedBy(const plan::Plan& plan, const model::Booking& booking) {
    const bool taken = booking.standing != model::Standing::lost;
    const auto found = plan.bookings.find(booking.id);
    if (found == plan.bookings.end() || !found->second->money) return {taken, 0};
    const auto& owed = found->second->money->owed;
    return {taken, owed.owed.minor - owed.overpaid.minor};
}

std::vector<BookingGroup> byOwed(Wanted wanted, const plan::Plan& plan) {
    std::stable_sort(wanted.begin(), wanted.end(),
                     [&](const auto* a, const auto* b) { return owedBy(plan, *a) > owedBy(plan, *b); });
    std::vector<BookingGroup> groups;
    for (const auto* b : wanted)
        add(groups, {}, b->id);
    return groups;
}

} // namespace

QString sortWord(BookingSort sort) {
    return QString::fromLatin1(sortWords[static_cast<std::size_t>(sort)]);
}

std::optional<BookingSort> sortOf(const QString& word) {
    for (std::size_t i = 0; i < std::size(sortWords); ++i)
        if (word == QLatin1String(sortWords[i])) return static_cast<BookingSort>(i);
    return std::nullopt;
}

QString weekSpanWords(Day monday) {
    const Day sunday = monday + 6;
    const QString first = shortDay(monday).section(QLatin1Char(' '), 1);
    const QString last = shortDay(sunday).section(QLatin1Char(' '), 1);
    return (monday.month() == sunday.month() ? QString::number(monday.dayOfMonth()) : first) +
           QStringLiteral("–") + last;
}

std::vector<BookingGroup> bookingGroups(const model::Season& season, const plan::Plan& plan,
                                        std::optional<Day> today, const BookingChoice& choice,
                                        const std::function<bool(const model::Booking&)>& found) {
    Wanted wanted;
    for (const auto& b : season.bookings) {
        if (choice.standing && b.standing != *choice.standing) continue;
        if (choice.kind && b.kind != *choice.kind) continue;
        if (found(b)) wanted.push_back(&b);
    }
    switch (choice.sort) {
    case BookingSort::name:
        return byName(std::move(wanted));
    case BookingSort::standing:
        return byStanding(std::move(wanted));
    case BookingSort::owed:
        return byOwed(std::move(wanted), plan);
    case BookingSort::date:
        break;
    }
    const int usualYear = today ? today->year() : season.theSettings().firstDay.year();
    return byDate(std::move(wanted), today, usualYear);
}

QString foldedForFinding(const QString& words) {
    QString plain;
    for (const QChar c : words.normalized(QString::NormalizationForm_KD)) {
        if (c.category() != QChar::Mark_NonSpacing) plain += c;
    }
    return plain.toCaseFolded();
}

QString findText(const model::Season& season, const model::Booking& b) {
    QStringList words{text(b.title),
                      bookingKindWords(b.kind),
                      standingWords(b),
                      longDay(b.eventStart.day),
                      shortDay(b.eventStart.day),
                      text(b.eventStart.day.iso())};
    if (const auto* client = b.client ? season.clients.find(*b.client) : nullptr) words << text(client->name);
    if (const auto* venue = b.venue ? season.venues.find(*b.venue) : nullptr) words << text(venue->name);
    return foldedForFinding(words.join(QLatin1Char('\n')));
}

} // namespace withy::ui
