// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/day.h"
#include "core/base/money.h"
#include "core/model/season.h"

#include <QDate>
#include <QString>

/// Figures and dates as people read them. British English; days and months in words.
namespace withy::ui {

QString text(const std::string& utf8);
std::string utf8(const QString& text);

QDate toQDate(Day day);
QString shortDay(Day day);           ///< "Fri 10 Sep"
QString longDay(Day day);            ///< "Friday 10 September 2027"
QString clock(LocalTime time);       ///< "18:30"
QString clockOf(int minutes);        ///< minutes of the day, "24:00" at most
QString whole(std::int64_t n);       ///< "1,240"
QString thousandths(std::int64_t n); ///< "1,500,000", "14.4"

/// "Two supper jars": as a sentence begins.
QString capital(QString words);

/// A size as tr() counts things.
inline int asCount(std::size_t n) {
    return static_cast<int>(n);
}

/// With the currency's sign or code: "£9.50", "JPY 1,200".
QString amount(Money money, const model::Settings& settings);

} // namespace withy::ui
