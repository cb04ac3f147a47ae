// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/fields/figure_reading.h"

#include "core/base/money.h"
#include "core/exchange/decimal.h"
#include "ui/logic/fields/day_reading.h"
#include "ui/logic/fields/units.h"
#include "ui/logic/format.h"
#include "ui/logic/wording.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include <cmath>

namespace withy::ui {

namespace {

using model::FieldInfo;
using model::FieldKind;
using model::Season;
using model::TableKind;
using model::Value;

constexpr double mostExact = 9007199254740991.0; // 2^53 - 1

/// FigureReading and unit: "1,234.5 cm" gives "1,234.5" and "cm".
struct Split {
    QString figure;
    QString unit;
};

std::optional<Split> split(QString typed) {
    static const QRegularExpression pattern(QStringLiteral(
        "^([+-]?(?:\\d(?:[\\d.,\\s\\x{00A0}\\x{202F}]|['’](?=\\d{3}))*|[.,]\\d+))\\s*([^\\d\\s].*)?$"));
    typed.replace(QChar(0x2212), QLatin1Char('-'));
    const auto match = pattern.match(typed.trimmed());
    if (!match.hasMatch()) return std::nullopt;
    QString figure = match.captured(1).trimmed();
    if (figure.startsWith(QLatin1Char('+'))) figure.remove(0, 1);
    if (figure.startsWith(QLatin1Char('.')) || figure.startsWith(QLatin1Char(',')))
        figure.prepend(QLatin1Char('0'));
    if (figure.endsWith(QLatin1Char('.')) || figure.endsWith(QLatin1Char(','))) figure.chop(1);
    return Split{figure, match.captured(2).trimmed()};
}

class FigureReading {
    Q_DECLARE_TR_FUNCTIONS(Field)

public:
    FigureReading(const Season& season, TableKind kind, const FieldInfo& field)
        : season_(season), kind_(kind), field_(field) {}

    [[nodiscard]] FieldReading read(const QString& typed) const {
        if (field_.unit == "minute of the day") return readMinute(typed);
        if (field_.kind == FieldKind::money) return readMoney(typed);
        if (const auto time = hoursAndMinutes(typed)) return judged(*time, typed, true);
        if (const auto sum = sumOf(typed)) return judged(*sum, typed, true);
        const auto parts = split(typed);
        if (!parts) return notANumber(typed);
        return readMeasure(typed, *parts);
    }

private:
    static FieldReading no(const QString& sentence) { return {std::nullopt, sentence}; }

    [[nodiscard]] QString example() const {
        const double like = std::min(std::max(5.0, field_.least), field_.most);
        return shown(like);
    }

    [[nodiscard]] QString shown(double stored) const {
        return fieldText(season_, kind_, field_, valueFrom(stored));
    }

    [[nodiscard]] Value valueFrom(double stored) const {
        if (field_.kind == FieldKind::real) return Value(stored);
        return Value(static_cast<std::int64_t>(std::llround(stored)));
    }

    [[nodiscard]] FieldReading notANumber(const QString& typed) const {
        return no(tr("“%1” is not a number. Write it as %2.").arg(typed.left(40), example()));
    }

    [[nodiscard]] FieldReading readMinute(const QString& typed) const {
        const auto minute = readClock(typed);
        if (!minute)
            return no(tr("“%1” is not a time of day. Write it as 18:30, or 6.30pm.").arg(typed.left(40)));
        return {Value(std::int64_t{*minute}), {}};
    }

    /// "1 h 30", "1:30": in the field's own unit of time.
    [[nodiscard]] std::optional<double> hoursAndMinutes(const QString& typed) const {
        if (field_.unit != "minutes" && field_.unit != "hours") return std::nullopt;
        static const QRegularExpression pattern(
            QStringLiteral(
                "^(\\d{1,4})\\s*(?:h|hr|hrs|hour|hours|:)\\s*(\\d{1,2})\\s*(?:m|min|mins|minutes)?$"),
            QRegularExpression::CaseInsensitiveOption);
        const auto match = pattern.match(typed);
        if (!match.hasMatch() || match.captured(2).toInt() > 59) return std::nullopt;
        const int minutes = match.captured(1).toInt() * 60 + match.captured(2).toInt();
        return field_.unit == "minutes" ? minutes : minutes / 60.0;
    }

    /// Counts may be added up as they are counted: "4+30+6".
    [[nodiscard]] std::optional<double> sumOf(const QString& typed) const {
        static const QRegularExpression pattern(QStringLiteral("^\\d{1,9}(\\s*\\+\\s*\\d{1,9})+$"));
        if (field_.kind != FieldKind::whole || !pattern.match(typed).hasMatch()) return std::nullopt;
        double sum = 0;
        for (const auto& part : typed.split(QLatin1Char('+')))
            sum += part.trimmed().toDouble();
        return sum;
    }

    [[nodiscard]] FieldReading readMeasure(const QString& typed, const Split& parts) const {
        const Measure own = measureOf(kind_, field_, season_.theSettings().units);
        const bool fahrenheit =
            isFahrenheit(field_.unit, parts.unit) ||
            (own.nought != 0 && (parts.unit.isEmpty() || parts.unit == QStringLiteral("°")));
        const auto worth = parts.unit.isEmpty() ? std::optional(own.worth)
                           : fahrenheit         ? std::optional(1.0)
                                                : worthOf(field_.unit, parts.unit);
        if (!worth) return unknownUnit(parts.unit);
        const QString whole = parts.figure;
        std::vector<double> meant;
        const auto forms = exchange::isPlainDecimal(utf8(whole)) ? std::vector<std::string>{utf8(whole)}
                                                                 : exchange::plainForms(utf8(whole));
        for (const auto& form : forms) {
            const double x = text(form).toDouble();
            meant.push_back(fahrenheit ? (x - 32) * 5 / 9 : x * *worth);
        }
        if (meant.empty()) return notANumber(typed);
        const bool counts = field_.kind == FieldKind::whole && *worth == 1;
        // Of a count "1,000" can only be a thousand: plainForms gives the fraction first.
        if (counts && meant.size() == 2) meant.erase(meant.begin());
        if (meant.size() > 1) return whichOf(typed, forms);
        if (isLoneComma(whole, forms) && !counts) return meantAs(whole, forms.front());
        const bool converted = fahrenheit || *worth != 1;
        const double stored = converted ? std::round(meant.front() * 1e4) / 1e4 : meant.front();
        return judged(stored, typed, converted);
    }

    /// "1,5": a comma where a point belongs is asked about, never guessed.
    static bool isLoneComma(const QString& typed, const std::vector<std::string>& forms) {
        return forms.size() == 1 && typed.count(QLatin1Char(',')) == 1 && !typed.contains(QLatin1Char('.')) &&
               forms.front().find('.') != std::string::npos;
    }

    static FieldReading meantAs(const QString& typed, const std::string& form) {
        return no(tr("Is “%1” meant as %2? Write it with a point.").arg(typed.left(40), text(form)));
    }

    static FieldReading whichOf(const QString& typed, const std::vector<std::string>& forms) {
        return no(tr("“%1” could be %2 or %3. Write it without the comma.")
                      .arg(typed.left(40), text(forms.back()), text(forms.front())));
    }

    [[nodiscard]] FieldReading unknownUnit(const QString& unit) const {
        return no(tr("“%1” is no unit of this figure. Write it as %2.").arg(unit.left(20), example()));
    }

    [[nodiscard]] FieldReading judged(double stored, const QString& typed, bool mayRound) const {
        if (field_.kind == FieldKind::whole && !mayRound && std::floor(stored) != stored)
            return no(tr("“%1” is not a whole number. Leave the fraction out.").arg(typed.left(40)));
        if (field_.kind == FieldKind::whole) stored = std::round(stored);
        if (stored < field_.least || stored < -mostExact)
            return limit(ProblemCode::belowLeast, stored, field_.least);
        if (stored > field_.most || stored > mostExact)
            return limit(ProblemCode::aboveMost, stored, field_.most);
        return {valueFrom(stored), {}};
    }

    [[nodiscard]] FieldReading limit(ProblemCode code, double stored, double bound) const {
        Problem p;
        p.code = code;
        const bool huge = std::abs(stored) > mostExact;
        p.value = huge ? utf8(tr("It")) : utf8(shown(stored));
        p.details = {utf8(shown(std::max(-mostExact, std::min(bound, mostExact))))};
        return no(sentence(p));
    }

    [[nodiscard]] QString withoutSign(const QString& typed) const {
        const QString code = text(season_.theSettings().currency);
        QString bare = typed;
        bare.replace(QChar(0x2212), QLatin1Char('-'));
        bare.remove(code, Qt::CaseInsensitive);
        const QString sign = code == QLatin1String("GBP")   ? QStringLiteral("£")
                             : code == QLatin1String("EUR") ? QStringLiteral("€")
                                                            : QString();
        if (!sign.isEmpty()) bare.remove(sign);
        if (code.endsWith(QLatin1String("D"))) bare.remove(QLatin1Char('$'));
        return bare.trimmed();
    }

    [[nodiscard]] FieldReading readMoney(const QString& typed) const {
        const int digits = minorDigits(season_.theSettings().currency).value_or(2);
        const QString bare = withoutSign(typed);
        const auto parts = split(bare);
        if (!parts || !parts->unit.isEmpty())
            return no(tr("“%1” is not an amount of %2. Write it as %3.")
                          .arg(typed.left(40), text(season_.theSettings().currency), shown(950)));
        const std::string figure = utf8(parts->figure);
        const auto forms = exchange::isPlainDecimal(figure) ? std::vector<std::string>{figure}
                                                            : exchange::plainForms(figure);
        std::vector<std::string> readable;
        for (const auto& form : forms) {
            if (parseAmount(form, digits)) readable.push_back(form);
        }
        if (readable.empty())
            return no(tr("“%1” is no amount. Write it as %2.").arg(typed.left(40), shown(950)));
        if (readable.size() > 1) return whichOf(typed, readable);
        if (isLoneComma(parts->figure, readable)) return meantAs(parts->figure, readable.front());
        const auto minor = static_cast<double>(parseAmount(readable.front(), digits)->minor);
        return judged(minor, typed, true);
    }

    const Season& season_;
    TableKind kind_;
    const FieldInfo& field_;
};

} // namespace

FieldReading readFigure(const Season& season, TableKind kind, const FieldInfo& field, const QString& typed) {
    return FigureReading(season, kind, field).read(typed);
}

} // namespace withy::ui
