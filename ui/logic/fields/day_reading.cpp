// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/fields/day_reading.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <QStringList>

#include <array>

namespace withy::ui {

namespace {

class DayReadingSay {
    Q_DECLARE_TR_FUNCTIONS(Field)

public:
    static QString notADay(const QString& typed) {
        return tr("“%1” is not a day. Write it as 11 Sep 2027, or 11/9.").arg(typed.left(40));
    }

    static QString noSuchDay(const QString& typed) {
        return tr("There is no %1. The day comes first, then the month.").arg(typed.left(40));
    }
};

/// 1 to 12 for a month's name or at least its first three letters; 0 otherwise.
int monthNamed(const QString& word) {
    static const std::array<const char*, 12> names{"january",   "february", "march",    "april",
                                                   "may",       "june",     "july",     "august",
                                                   "september", "october",  "november", "december"};
    const QString w = word.toLower();
    if (w.size() < 3) return 0;
    for (std::size_t i = 0; i < names.size(); ++i) {
        if (QString::fromLatin1(names[i]).startsWith(w)) return static_cast<int>(i) + 1;
    }
    return w == QLatin1String("sept") ? 9 : 0;
}

bool isWeekday(const QString& word) {
    static const std::array<const char*, 7> names{"monday", "tuesday",  "wednesday", "thursday",
                                                  "friday", "saturday", "sunday"};
    const QString w = word.toLower();
    if (w.size() < 2) return false;
    return std::any_of(names.begin(), names.end(),
                       [&](const char* name) { return QString::fromLatin1(name).startsWith(w); }) ||
           w == QLatin1String("tues") || w == QLatin1String("weds") || w == QLatin1String("thur") ||
           w == QLatin1String("thurs");
}

/// 11th, 1st: the number alone.
QString withoutOrdinal(const QString& word) {
    static const QRegularExpression ordinal(QStringLiteral("^(\\d{1,2})(st|nd|rd|th)$"),
                                            QRegularExpression::CaseInsensitiveOption);
    const auto match = ordinal.match(word);
    return match.hasMatch() ? match.captured(1) : word;
}

struct Parts {
    int year = 0; ///< 0: not given
    int month = 0;
    int day = 0;
};

std::optional<int> number(const QString& word, int mostDigits) {
    static const QRegularExpression digits(QStringLiteral("^\\d+$"));
    if (!digits.match(word).hasMatch() || word.size() > mostDigits) return std::nullopt;
    return word.toInt();
}

std::optional<int> yearIn(const QString& word) {
    if (word.size() != 2 && word.size() != 4) return std::nullopt;
    const auto n = number(word, 4);
    if (!n) return std::nullopt;
    return word.size() == 2 ? 2000 + *n : *n;
}

/// The words of a date without weekday and ordinals; "of" and "the" do not count.
QStringList wordsOf(const QString& typed) {
    static const QRegularExpression gaps(QStringLiteral("[\\s,/.\\-]+"));
    QStringList words;
    for (const auto& word : typed.split(gaps, Qt::SkipEmptyParts)) {
        if (isWeekday(word) || word.toLower() == QLatin1String("of") ||
            word.toLower() == QLatin1String("the"))
            continue;
        words << withoutOrdinal(word);
    }
    return words;
}

std::optional<Parts> partsOf(const QString& typed) {
    QStringList words = wordsOf(typed);
    if (words.size() < 2 || words.size() > 3) return std::nullopt;
    Parts p;
    const auto first = number(words[0], 4);
    if (first && words[0].size() == 4 && words.size() == 3) { // year first: ISO 8601
        const auto month = number(words[1], 2);
        p = {*first, month ? *month : monthNamed(words[1]), number(words[2], 2).value_or(0)};
        return p.month && p.day ? std::optional(p) : std::nullopt;
    }
    if (monthNamed(words[0])) words.swapItemsAt(0, 1); // "sep 11"
    const auto day = number(words[0], 2);
    const auto month = number(words[1], 2);
    if (!day) return std::nullopt;
    p.day = *day;
    p.month = month ? *month : monthNamed(words[1]);
    if (!month && !p.month) return std::nullopt;
    if (words.size() == 2) return p;
    const auto year = yearIn(words[2]);
    if (!year) return std::nullopt;
    p.year = *year;
    return p;
}

std::optional<Day> dayWithoutYear(const Parts& p, const YearRange& range) {
    for (int year = range.first.year(); year <= range.last.year(); ++year) {
        const auto day = Day::fromYmd(year, p.month, p.day);
        if (day && *day >= range.first && *day <= range.last) return day;
    }
    return Day::fromYmd(range.first.year(), p.month, p.day);
}

} // namespace

DayReading readDay(const QString& typed, const YearRange& range) {
    const auto parts = partsOf(typed.trimmed());
    if (!parts) return {std::nullopt, DayReadingSay::notADay(typed.trimmed())};
    const auto day =
        parts->year ? Day::fromYmd(parts->year, parts->month, parts->day) : dayWithoutYear(*parts, range);
    if (!day || day->year() < 1900 || day->year() > 2200)
        return {std::nullopt, DayReadingSay::noSuchDay(typed.trimmed())};
    return {day, {}};
}

std::optional<int> readClock(const QString& typed) {
    static const QRegularExpression pattern(
        QStringLiteral("^(\\d{1,2})(?:[:.h]?(\\d{2}))?\\s*(am|pm|a\\.m\\.|p\\.m\\.|h)?$"),
        QRegularExpression::CaseInsensitiveOption);
    const QString text = typed.trimmed().toLower();
    if (text == QLatin1String("noon") || text == QLatin1String("midday")) return 720;
    if (text == QLatin1String("midnight")) return 1440;
    const auto match = pattern.match(text);
    if (!match.hasMatch()) return std::nullopt;
    int hour = match.captured(1).toInt();
    const int minute = match.captured(2).toInt();
    const QString half = match.captured(3).left(1);
    if (half == QLatin1String("a") || half == QLatin1String("p")) {
        if (hour < 1 || hour > 12) return std::nullopt;
        hour = hour % 12 + (half == QLatin1String("p") ? 12 : 0);
    }
    const int all = hour * 60 + minute;
    if (minute > 59 || all > 1440) return std::nullopt;
    return all;
}

DayAndClock splitDayAndClock(const QString& typed) {
    // A clock stands at the end after a space, comma or T, or alone: 18:30, 6.30pm, 6 pm, noon.
    static const QRegularExpression clockAtEnd(
        QStringLiteral(
            "(?:^|[\\s,]|(?<=\\d)T)(?:at\\s+)?(\\d{1,2}[:.]\\d{2}\\s*(?:am|pm)?|\\d{1,2}\\s*(?:am|pm)|noon|"
            "midday|midnight)$"),
        QRegularExpression::CaseInsensitiveOption);
    const QString text = typed.trimmed();
    const auto match = clockAtEnd.match(text);
    if (!match.hasMatch()) return {text, std::nullopt};
    const auto minute = readClock(match.captured(1));
    if (!minute) return {text, std::nullopt};
    QString day = text.left(match.capturedStart()).trimmed();
    while (day.endsWith(QLatin1Char(',')))
        day.chop(1);
    if (day.endsWith(QStringLiteral(" at"))) day.chop(3);
    return {day.trimmed(), minute};
}

} // namespace withy::ui
