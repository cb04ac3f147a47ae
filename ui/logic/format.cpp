// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/format.h"

#include <QDate>
#include <QLocale>

#include <algorithm>

namespace withy::ui {

namespace {

const QLocale& british() {
    static const QLocale locale(QLocale::English, QLocale::UnitedKingdom);
    return locale;
}

QString grouped(QString digits) {
    for (auto i = digits.size() - 3; i > 0; i -= 3)
        digits.insert(i, QLatin1Char(','));
    return digits;
}

} // namespace

QDate toQDate(Day day) {
    return QDate(day.year(), day.month(), day.dayOfMonth());
}

QString text(const std::string& utf8) {
    return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
}

std::string utf8(const QString& text) {
    return text.toStdString();
}

QString shortDay(Day day) {
    // Qt's British "Sept" is four letters; three keep columns even.
    return british().toString(toQDate(day), QStringLiteral("ddd d ")) +
           british().toString(toQDate(day), QStringLiteral("MMMM")).left(3);
}

QString longDay(Day day) {
    return british().toString(toQDate(day), QStringLiteral("dddd d MMMM yyyy"));
}

QString clock(LocalTime time) {
    return clockOf(time.minute);
}

QString clockOf(int minutes) {
    const int m = std::clamp(minutes, 0, 1440);
    return QStringLiteral("%1:%2").arg(m / 60, 2, 10, QLatin1Char('0')).arg(m % 60, 2, 10, QLatin1Char('0'));
}

QString whole(std::int64_t n) {
    const QString digits = grouped(QString::number(n < 0 ? -n : n));
    return n < 0 ? QLatin1Char('-') + digits : digits;
}

QString thousandths(std::int64_t n) {
    const auto rest = std::abs(n % 1000);
    QString words = (n < 0 && n > -1000 ? QStringLiteral("-") : QString()) + whole(n / 1000);
    if (rest == 0) return words;
    words += british().decimalPoint() + QString::number(rest).rightJustified(3, QLatin1Char('0'));
    while (words.endsWith(QLatin1Char('0')))
        words.chop(1);
    return words;
}

QString capital(QString words) {
    if (!words.isEmpty()) words[0] = words[0].toUpper();
    return words;
}

QString amount(Money money, const model::Settings& settings) {
    const int digits = minorDigits(settings.currency).value_or(2);
    QString plain = text(plainAmount(Money{money.minor < 0 ? -money.minor : money.minor}, digits));
    const auto point = plain.indexOf(QLatin1Char('.'));
    const QString fraction = point < 0 ? QString() : plain.mid(point);
    plain = grouped(point < 0 ? plain : plain.left(point)) + fraction;
    const QString sign = money.minor < 0 ? QStringLiteral("-") : QString();
    if (settings.currency == "GBP") return sign + QStringLiteral("£") + plain;
    if (settings.currency == "EUR") return sign + QStringLiteral("€") + plain;
    return sign + text(settings.currency) + QLatin1Char(' ') + plain;
}

} // namespace withy::ui
