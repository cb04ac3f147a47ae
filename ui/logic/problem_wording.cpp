// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/format.h"
#include "ui/logic/wording.h"

#include <QCoreApplication>

namespace withy::ui {

namespace {

class ProblemWordingSay {
    Q_DECLARE_TR_FUNCTIONS(Problem)

public:
    explicit ProblemWordingSay(const Problem& p) : p_(p) {}

    [[nodiscard]] QString complaint() const {
        switch (p_.code) {
        case ProblemCode::required:
            return tr("it is blank. Fill it in.");
        case ProblemCode::notANumber:
            return tr("“%1” is not a number. Write digits, with a point for fractions.").arg(value());
        case ProblemCode::notWhole:
            return tr("“%1” is not a whole number. Leave the fraction out.").arg(value());
        case ProblemCode::belowLeast:
            return tr("%1 is too small. The least is %2.").arg(value(), limit());
        case ProblemCode::aboveMost:
            return tr("%1 is too much. The most is %2.").arg(value(), limit());
        case ProblemCode::tooLong:
            return tr("it is %1 characters long. Keep it to %2.").arg(detail(1), detail(0));
        case ProblemCode::notADate:
            return tr("“%1” is not a day. Write it as 2027-09-11.").arg(value());
        case ProblemCode::notATime:
            return tr("“%1” is not a time. Write it as 2027-09-11T18:30.").arg(value());
        case ProblemCode::notAWord:
            return tr("“%1” is not one of: %2.").arg(value(), all());
        case ProblemCode::notAColour:
            return tr("“%1” is not a colour. Write it as #ad4a08.").arg(value());
        case ProblemCode::notYesNo:
            return tr("“%1” is neither yes nor no.").arg(value());
        case ProblemCode::notText:
            return tr("it holds characters that are no text. Save the file as UTF-8 and try again.");
        case ProblemCode::unknownRecord:
            return tr("there is no %1 “%2”. Add it first, or choose another.")
                .arg(fieldWords(first()), value());
        case ProblemCode::ambiguousName:
            return tr("several records are called “%1”. Give the number instead.").arg(value());
        default:
            return rest();
        }
    }

private:
    [[nodiscard]] QString rest() const {
        switch (p_.code) {
        case ProblemCode::inUse:
            return tr("“%1” is still used by %2. Take it out there first.").arg(value(), users());
        case ProblemCode::duplicate:
            return tr("“%1” is there already, in record %2. Change one of them.").arg(value(), detail(0));
        case ProblemCode::endBeforeStart:
            return tr("%1 is before the start, %2. Give a later end.").arg(time(p_.value), time(first()));
        case ProblemCode::outOfOrder:
            return tr("%1 is out of order. Check the dates beside it.").arg(value());
        case ProblemCode::outsideSeason:
            return tr("%1 is outside the season, which runs from %2 to %3. Change the date, or the season in "
                      "the settings.")
                .arg(time(p_.value), detail(0), detail(1));
        case ProblemCode::skippedHour:
            return tr("%1 does not happen: the clocks go forward over it. Choose an hour before or after.")
                .arg(time(p_.value));
        case ProblemCode::repeatedHour:
            return tr("%1 happens twice: the clocks go back. Choose an hour before or after.")
                .arg(time(p_.value));
        case ProblemCode::badZone:
            return tr("“%1” is not a time-zone rule. For Britain it is GMT0BST,M3.5.0/1:00,M10.5.0/2:00.")
                .arg(value());
        case ProblemCode::badCurrency:
            return tr("“%1” is not a currency code. Use three capitals, such as GBP.").arg(value());
        case ProblemCode::lessThan:
            return tr("%1 is less than %2, which is %3. Change one of them.")
                .arg(value(), fieldWords(first()), detail(1));
        case ProblemCode::moreThan:
            return tr("%1 is more than %2, which is %3. Change one of them.")
                .arg(value(), fieldWords(first()), detail(1));
        case ProblemCode::holdWithoutEnd:
            return tr("a held booking needs a day until when. Give one.");
        case ProblemCode::containerMissing:
            return tr("no container is named. Choose one.");
        case ProblemCode::sharesNotOne:
            return tr("the shares come to %1 %. Bring them down to 100 %.").arg(detail(0));
        case ProblemCode::noSettings:
            return tr("the season has no settings. Give a place and dates first.");
        default:
            return file();
        }
    }

    [[nodiscard]] QString file() const {
        switch (p_.code) {
        case ProblemCode::unknownColumn:
            return tr("there is no column “%1”. The columns are: %2.").arg(value(), all());
        case ProblemCode::missingColumn:
            return tr("the column “%1” is missing. Add it to the header row.").arg(text(p_.field));
        case ProblemCode::repeatedColumn:
            return tr("the column “%1” is there twice. Take one out.").arg(value());
        case ProblemCode::raggedRow:
            return tr("the row has %1 fields and the header has %2. Check for a missing comma or quote.")
                .arg(detail(1), detail(0));
        case ProblemCode::badQuote:
            return tr("a quotation mark is in the wrong place or not closed. Double the marks inside a "
                      "quoted field.");
        case ProblemCode::wrongSeparator:
            return tr("the fields are not separated by commas. Save the file as comma-separated.");
        case ProblemCode::emptyFile:
            return tr("there is nothing in the file, not even a header row.");
        case ProblemCode::badId:
            return tr("“%1” is not a record number. Use whole numbers from 1 to 9,007,199,254,740,991, or "
                      "leave it blank.")
                .arg(value());
        default:
            return tr("it is not right.");
        }
    }

    [[nodiscard]] std::string first() const {
        return p_.details.empty() ? std::string() : p_.details.front();
    }

    [[nodiscard]] QString value() const { return text(p_.value); }

    [[nodiscard]] QString detail(std::size_t i) const {
        return i < p_.details.size() ? text(p_.details[i]) : QString();
    }

    [[nodiscard]] QString limit() const {
        return detail(1).isEmpty() || detail(1) == QLatin1String("day")
                   ? detail(0)
                   : detail(0) + QLatin1Char(' ') + detail(1);
    }

    [[nodiscard]] QString all() const {
        QStringList words;
        for (const auto& d : p_.details)
            words << text(d);
        return words.join(QStringLiteral(", "));
    }

    [[nodiscard]] QString users() const {
        constexpr std::size_t shown = 3;
        QStringList names;
        for (std::size_t i = 0; i < p_.details.size() && i < shown; ++i)
            names << detail(i);
        if (p_.details.size() > shown)
            names << tr("%n more", nullptr, static_cast<int>(p_.details.size() - shown));
        return names.join(QStringLiteral(", "));
    }

    static QString time(const std::string& iso) {
        QString shown = text(iso); // or in words already: "Tue 14 Sep, 18:30"
        if (shown.size() == 16 && shown[10] == QLatin1Char('T')) shown[10] = QLatin1Char(' ');
        return shown;
    }

    const Problem& p_;
};

} // namespace

QString fieldWords(const std::string& field) {
    return text(field).replace(QLatin1Char('_'), QLatin1Char(' '));
}

QString sentence(const Problem& p) {
    QString where;
    if (p.line > 0 && p.column > 0)
        where = QCoreApplication::translate("Problem", "Line %1, column %2: ").arg(p.line).arg(p.column);
    else if (p.line > 0)
        where = QCoreApplication::translate("Problem", "Line %1: ").arg(p.line);
    QString who = fieldWords(p.table);
    if (!who.isEmpty() && p.record > 0 && p.line == 0) who += QLatin1Char(' ') + QString::number(p.record);
    if (!p.field.empty() && p.field != "id")
        who += (who.isEmpty() ? QString() : QStringLiteral(", ")) + fieldWords(p.field);
    if (!who.isEmpty()) {
        who[0] = who[0].toUpper();
        who += QStringLiteral(": ");
    }
    return where + who + ProblemWordingSay(p).complaint();
}

QString sentences(const Problems& problems) {
    constexpr std::size_t shown = 8;
    QStringList all;
    for (std::size_t i = 0; i < problems.size() && i < shown; ++i)
        all << sentence(problems[i]);
    if (problems.size() > shown)
        all << QCoreApplication::translate("Problem", "And %n more like these.", nullptr,
                                           static_cast<int>(problems.size() - shown));
    return all.join(QLatin1Char('\n'));
}

} // namespace withy::ui
