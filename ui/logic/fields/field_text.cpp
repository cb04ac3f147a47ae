// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/fields/field_text.h"

#include "core/exchange/decimal.h"
#include "ui/logic/fields/colour_reading.h"
#include "ui/logic/fields/units.h"
#include "ui/logic/format.h"
#include "ui/logic/measures.h"

#include <QCoreApplication>
#include <QLocale>

#include <cmath>

namespace withy::ui {

using model::FieldInfo;
using model::FieldKind;
using model::Season;
using model::TableKind;
using model::Value;

namespace {

QString withYear(Day day) {
    return shortDay(day) + QLatin1Char(' ') + QString::number(day.year());
}

QString dayText(const std::string& iso) {
    const auto day = Day::parse(iso);
    return day ? withYear(*day) : text(iso);
}

QString timeText(const std::string& iso) {
    const auto time = LocalTime::parse(iso);
    return time ? withYear(time->day) + QStringLiteral(", ") + clock(*time) : text(iso);
}

/// `x` with at most so many decimals, without noughts at the end.
QString rounded(double x, int decimals) {
    const double scale = std::pow(10.0, decimals);
    return text(exchange::decimalText(std::round(x * scale) / scale));
}

QString figureText(const Season& season, TableKind kind, const FieldInfo& field, double stored) {
    const Measure m = measureOf(kind, field, season.theSettings().units);
    const double x = m.worth == 1 ? stored : stored / m.worth + m.nought;
    const bool counts = field.kind == FieldKind::whole && m.worth == 1; // then a comma cannot be a point
    const QString figure = counts           ? whole(std::llround(x))
                           : m.decimals < 0 ? text(exchange::decimalText(x))
                                            : rounded(x, m.decimals);
    if (m.unit.isEmpty()) return figure;
    return figure + QLatin1Char(' ') + (x == 1 ? m.one : m.unit);
}

QString numberText(const Season& season, TableKind kind, const FieldInfo& field, std::int64_t n) {
    switch (field.kind) {
    case FieldKind::yesNo:
        return n != 0 ? wordText("yes") : wordText("no");
    case FieldKind::money:
        return amount(Money{n}, season.theSettings());
    case FieldKind::reference:
        return n == 0 ? QString() : recordWords(season, field.refersTo, n);
    default:
        if (isMonth(kind, field)) return monthName(static_cast<int>(n));
        if (field.unit == "minute of the day") return clockOf(static_cast<int>(n));
        return figureText(season, kind, field, static_cast<double>(n));
    }
}

/// A plant's fact is kept by the name of the plant's field.
bool namesAPlantField(TableKind kind, const FieldInfo& field) {
    return kind == TableKind::plantFacts && field.name == "fact";
}

QString stringText(TableKind kind, const FieldInfo& field, const std::string& s) {
    switch (field.kind) {
    case FieldKind::day:
        return dayText(s);
    case FieldKind::localTime:
        return timeText(s);
    case FieldKind::word:
        return wordText(s);
    default:
        break;
    }
    if (namesAPlantField(kind, field)) {
        const auto* fact = model::tableInfo(TableKind::plants).field(s);
        if (fact) return fieldLabel(TableKind::plants, *fact);
    }
    return text(s);
}

} // namespace

QString fieldText(const Season& season, TableKind kind, const FieldInfo& field, const Value& value) {
    if (const auto* s = std::get_if<std::string>(&value)) return stringText(kind, field, *s);
    if (const auto* real = std::get_if<double>(&value)) return figureText(season, kind, field, *real);
    if (const auto* n = std::get_if<std::int64_t>(&value)) return numberText(season, kind, field, *n);
    return {};
}

QString shownText(const Season& season, TableKind kind, const FieldInfo& field, const Value& value) {
    const QString words = fieldText(season, kind, field, value);
    if (field.kind == FieldKind::colour) return colourName(words);
    const auto* real = std::get_if<double>(&value);
    if (!real || field.unit != "C") return words;
    return temperatureWords(*real, season, 1); // as its neighbours
}

Value valueOf(const Season& season, model::Ref ref, std::string_view name) {
    if (ref.table == TableKind::none) return {};
    const auto* field = model::tableInfo(ref.table).field(name);
    const auto record = model::findRecord(season, ref.table, ref.id);
    return field && record ? field->get(model::recordPointer(*record)) : Value{};
}

QString textOf(const Season& season, model::Ref ref, std::string_view name) {
    if (ref.table == TableKind::none) return {};
    const auto* field = model::tableInfo(ref.table).field(name);
    return field ? fieldText(season, ref.table, *field, valueOf(season, ref, name)) : QString();
}

bool isFigure(const FieldInfo& field) {
    switch (field.kind) {
    case FieldKind::whole:
    case FieldKind::real:
    case FieldKind::money:
        return true;
    default:
        return false;
    }
}

bool isMonth(TableKind kind, const FieldInfo& field) {
    return kind == TableKind::monthNormals && field.name == "month";
}

QString monthName(int month) {
    if (month < 1 || month > 12) return QString::number(month);
    return QLocale(QLocale::English, QLocale::UnitedKingdom).standaloneMonthName(month);
}

bool isLongText(const FieldInfo& field) {
    return field.kind == FieldKind::text && field.longest >= 1000;
}

} // namespace withy::ui
