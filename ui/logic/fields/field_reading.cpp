// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/exchange/cell.h"
#include "core/exchange/utf8.h"
#include "core/model/text_check.h"
#include "ui/logic/edits/record_edits.h"
#include "ui/logic/fields/colour_reading.h"
#include "ui/logic/fields/day_reading.h"
#include "ui/logic/fields/field_text.h"
#include "ui/logic/fields/figure_reading.h"
#include "ui/logic/format.h"
#include "ui/logic/wording.h"

#include <QCoreApplication>

namespace withy::ui {

namespace {

using model::FieldInfo;
using model::FieldKind;
using model::Season;
using model::TableKind;
using model::Value;

class Reader {
    Q_DECLARE_TR_FUNCTIONS(Field)

public:
    Reader(const Season& season, TableKind kind, const FieldInfo& field, const Value& now)
        : season_(season), kind_(kind), field_(field), now_(now) {}

    [[nodiscard]] FieldReading read(const QString& typed) const {
        const QString trimmed = typed.trimmed();
        if (!model::isBlank(now_) && field_.kind != FieldKind::text && trimmed == shown(now_))
            return {now_, {}};
        if (trimmed.isEmpty()) return blank();
        if (isMonth(kind_, field_)) return readMonth(trimmed);
        switch (field_.kind) {
        case FieldKind::text:
            return readText(typed);
        case FieldKind::whole:
        case FieldKind::real:
        case FieldKind::money:
            return readFigure(season_, kind_, field_, trimmed);
        case FieldKind::yesNo:
            return readYesNo(trimmed);
        case FieldKind::word:
            return readWord(trimmed);
        case FieldKind::day:
            return readDayField(trimmed);
        case FieldKind::localTime:
            return readTime(trimmed);
        case FieldKind::colour:
            return readColourField(trimmed);
        case FieldKind::reference:
            return readReference(trimmed);
        }
        return {};
    }

private:
    [[nodiscard]] QString shown(const Value& value) const { return fieldText(season_, kind_, field_, value); }

    static FieldReading no(const QString& sentence) { return {std::nullopt, sentence}; }

    [[nodiscard]] FieldReading blank() const {
        if (field_.kind == FieldKind::text && !field_.required) return {Value(std::string()), {}};
        if (field_.optional) return {Value{}, {}};
        if (field_.kind == FieldKind::reference)
            return no(tr("A %1 belongs here. Type its name.").arg(tableLabel(field_.refersTo, 1)));
        return no(tr("This may not be blank. Fill it in."));
    }

    [[nodiscard]] FieldReading readText(const QString& typed) const {
        if (field_.required && kind_ == TableKind::plantFacts && field_.name == "fact")
            return readFact(typed);
        const std::string s = utf8(typed);
        Problem p;
        p.value = exchange::clipped(s, 40);
        const auto length = model::charactersIn(s);
        if (!length) return no(tr("There are characters in it that are no text. Take them out."));
        if (*length <= field_.longest) return {Value(s), {}};
        return no(tr("It is %1 characters long. Keep it to %2.")
                      .arg(whole(static_cast<std::int64_t>(*length)),
                           whole(static_cast<std::int64_t>(field_.longest))));
    }

    [[nodiscard]] FieldReading readFact(const QString& typed) const {
        const QString wanted = typed.trimmed().toCaseFolded();
        for (const auto& f : model::tableInfo(TableKind::plants).fields) {
            if (fieldLabel(TableKind::plants, f).toCaseFolded() == wanted ||
                text(std::string(f.name)) == wanted)
                return {Value(std::string(f.name)), {}};
        }
        return no(
            tr("“%1” is not a fact of a plant. Type one such as “Vase life, least”.").arg(typed.left(40)));
    }

    [[nodiscard]] FieldReading readYesNo(const QString& typed) const {
        const QString t = typed.toCaseFolded();
        for (const char* yes : {"yes", "y", "true", "1"}) {
            if (t == QLatin1String(yes) || t == wordText(yes).toCaseFolded())
                return {Value(std::int64_t{1}), {}};
        }
        for (const char* word : {"no", "n", "false", "0"}) {
            if (t == QLatin1String(word) || t == wordText(word).toCaseFolded())
                return {Value(std::int64_t{0}), {}};
        }
        return no(tr("“%1” is neither yes nor no.").arg(typed.left(40)));
    }

    /// A word whole, or as much of it as tells it from the others.
    [[nodiscard]] FieldReading readWord(const QString& typed) const {
        const QString t = typed.toCaseFolded();
        QStringList all;
        std::vector<std::string_view> begun;
        for (const auto word : field_.words) {
            const QString shownWord = wordText(word);
            all << shownWord;
            if (shownWord.toCaseFolded() == t || text(std::string(word)).toCaseFolded() == t)
                return {Value(std::string(word)), {}};
            if (shownWord.toCaseFolded().startsWith(t)) begun.push_back(word);
        }
        if (begun.size() == 1) return {Value(std::string(begun.front())), {}};
        return no(tr("“%1” is not one of these: %2.").arg(typed.left(40), all.join(QStringLiteral(", "))));
    }

    /// A name, as much of one as tells it from the others, or a number.
    [[nodiscard]] FieldReading readMonth(const QString& typed) const {
        std::vector<int> begun;
        for (int month = 1; month <= 12; ++month)
            if (monthName(month).startsWith(typed, Qt::CaseInsensitive)) begun.push_back(month);
        if (begun.size() == 1) return {Value(std::int64_t{begun.front()}), {}};
        bool isNumber = false;
        const int number = typed.toInt(&isNumber);
        if (isNumber && number >= 1 && number <= 12) return {Value(std::int64_t{number}), {}};
        return no(tr("“%1” is not a month. Write it as March, or as 3.").arg(typed.left(40)));
    }

    [[nodiscard]] YearRange seasonRange() const {
        const auto& s = season_.theSettings();
        return {s.firstDay, s.lastDay};
    }

    [[nodiscard]] FieldReading readDayField(const QString& typed) const {
        const auto reading = readDay(typed, seasonRange());
        if (!reading.day) return no(reading.sentence);
        return {Value(reading.day->iso()), {}};
    }

    [[nodiscard]] FieldReading readTime(const QString& typed) const {
        const auto* had = std::get_if<std::string>(&now_);
        const auto before = had ? LocalTime::parse(*had) : std::nullopt;
        const auto parts = splitDayAndClock(typed);
        std::optional<Day> day = before ? std::optional(before->day) : std::nullopt;
        if (!parts.day.isEmpty()) {
            const auto reading = readDay(parts.day, seasonRange());
            if (!reading.day) return no(reading.sentence);
            day = reading.day;
        }
        if (!day) return no(tr("The day is missing. Write it as 11 Sep, 18:30."));
        if (!parts.minute && !before) return no(tr("The hour is missing. Write it as 11 Sep, 18:30."));
        const std::int64_t minute = parts.minute ? *parts.minute : before->minute;
        return {Value(LocalTime::fromMinutes(std::int64_t{day->number} * 1440 + minute).iso()), {}};
    }

    [[nodiscard]] FieldReading readColourField(const QString& typed) const {
        const auto colour = readColour(typed);
        if (colour) return {Value(colour->hex()), {}};
        return no(tr("“%1” is not a colour. Write it as #ad4a08, or by name: coral, plum, cream.")
                      .arg(typed.left(40)));
    }

    [[nodiscard]] FieldReading readReference(const QString& typed) const {
        const QString wanted = typed.toCaseFolded();
        std::vector<std::int64_t> found;
        model::forEachRecord(season_, field_.refersTo, [&](std::int64_t id, const void*) {
            if (recordWords(season_, field_.refersTo, id).trimmed().toCaseFolded() == wanted)
                found.push_back(id);
        });
        if (found.size() == 1) return {Value(found.front()), {}};
        const QString table = tableLabel(field_.refersTo, 1);
        if (found.empty())
            return {std::nullopt,
                    tr("There is no %1 called “%2”. Make it first, or choose another.")
                        .arg(table, typed.left(60)),
                    edits::canMakeNamed(field_.refersTo)};
        return no(tr("%1 of the %2 are called “%3”. Give one of them another name first.")
                      .arg(QString::number(found.size()), tableLabel(field_.refersTo, 2), typed.left(60)));
    }

    const Season& season_;
    TableKind kind_;
    const FieldInfo& field_;
    const Value& now_;
};

} // namespace

QString offerToMake(const FieldInfo& field, const QString& typed) {
    return QCoreApplication::translate(
               "Field", "There is no %1 called “%2” yet. Ctrl+Enter makes one, or choose another.")
        .arg(tableLabel(field.refersTo, 1), typed.trimmed().left(60));
}

FieldReading readField(const Season& season, TableKind kind, const FieldInfo& field, const QString& typed,
                       const Value& now) {
    return Reader(season, kind, field, now).read(typed);
}

} // namespace withy::ui
