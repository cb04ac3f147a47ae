// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/conversion.h"
#include "core/model/origin.h"
#include "ui/logic/format.h"
#include "ui/logic/measures.h"
#include "ui/logic/wording.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace withy::ui {

namespace {

/// Areas bear their unit in their name.
constexpr const char* squareMillimetres = "square millimetres";

class WorkingWordingSay {
    Q_DECLARE_TR_FUNCTIONS(Working)

public:
    /// What a line is called; the core names it in English.
    static QString called(const QString& key, Units units) {
        QString words = QCoreApplication::translate("WorkingKeys", key.toUtf8().constData());
        if (!units.imperial()) return words;
        return words.replace(QStringLiteral("20 C"), temperatureWords(20, units))
            .replace(QLatin1String(squareMillimetres), tr("square inches"));
    }

    /// `tenths`: another temperature of the same working has them, and they stand under each other.
    static QString figure(const WorkingLine& line, Units units, bool tenths) {
        const QString n = workingNumber(line.value);
        const int form = n == QLatin1String("1") ? 1 : 2;
        switch (line.unit) {
        case Unit::stems:
            return tr("%1 stem(s)", nullptr, form).arg(n);
        case Unit::pieces:
            return tr("%1 piece(s)", nullptr, form).arg(n);
        case Unit::millimetres:
            return workingLength(line.value, units);
        case Unit::millilitres:
            return workingVolume(line.value, units);
        case Unit::grams:
            return workingWeight(line.value, units);
        case Unit::minutes:
            return tr("%1 min").arg(n);
        case Unit::hours:
            return tr("%1 h").arg(n);
        case Unit::days:
            return tr("%1 day(s)", nullptr, form).arg(n);
        case Unit::celsius:
            return workingTemperature(line.value, units, tenths);
        case Unit::percent:
            return tr("%1 %").arg(n);
        case Unit::time: {
            const auto t = LocalTime::fromMinutes(static_cast<std::int64_t>(line.value));
            return t.minute == 0 ? shortDay(t.day) : shortDay(t.day) + QLatin1Char(' ') + clock(t);
        }
        case Unit::none:
            if (!units.imperial()) break;
            // Warmth is summed up over a base in degrees: bare figures would not fit that.
            if (line.what.starts_with("heat sum")) return warmthWords(line.value, units);
            if (line.what.ends_with(squareMillimetres))
                return workingNumber(line.value / (millimetresInInch * millimetresInInch));
            break;
        case Unit::count:
        case Unit::minorMoney:
            break;
        }
        return n;
    }

    static QString sign(Step step) {
        switch (step) {
        case Step::plus:
            return QStringLiteral("+ ");
        case Step::minus:
            return QStringLiteral("− ");
        case Step::times:
            return QStringLiteral("× ");
        case Step::over:
            return QStringLiteral("÷ ");
        case Step::result:
            return QStringLiteral("= ");
        case Step::given:
            break;
        }
        return {};
    }

    /// The unit's own word, when a line's key begins with it: "stems a piece" counts stems.
    static QString unitWord(Unit unit) {
        switch (unit) {
        case Unit::stems:
            return QStringLiteral("stems");
        case Unit::pieces:
            return QStringLiteral("pieces");
        case Unit::minutes:
            return QStringLiteral("minutes");
        default:
            return {};
        }
    }

    /// Figure and key without saying the unit twice: "24 pieces", "× 5 stems a piece", "= 120 stems, need".
    static QString figureAndKey(const WorkingLine& l, const model::Settings& settings, bool tenths) {
        const QString key = text(l.what);
        const QString unit = unitWord(l.unit);
        if (!unit.isEmpty() && key.startsWith(unit)) {
            const bool one = l.value == 1 && unit != QLatin1String("minutes");
            const QString words = one ? unit.chopped(1) + key.mid(unit.size()) : key;
            return workingNumber(l.value) + QLatin1Char(' ') + called(words, settings);
        }
        if (l.unit == Unit::count && (key == QLatin1String("count") || key.isEmpty()))
            return workingNumber(l.value);
        const QString figure_ = l.unit == Unit::minorMoney ? amount(Money{std::llround(l.value)}, settings)
                                                           : figure(l, settings, tenths);
        return figure_ + QStringLiteral(", ") + called(key, settings);
    }

    static bool hasTenths(const Working& working, Units units) {
        return std::any_of(working.begin(), working.end(), [&](const WorkingLine& l) {
            return l.unit == Unit::celsius && temperatureFigure(l.value, units).contains(QLatin1Char('.'));
        });
    }

    /// Counts typed by the grower need no note that they are the grower's.
    static bool basisGoesWithoutSaying(const WorkingLine& l) {
        const bool count = l.unit == Unit::stems || l.unit == Unit::pieces || l.unit == Unit::minorMoney;
        return l.basis == Basis::computed || (l.basis == Basis::mine && count && l.source.empty());
    }

    static QString line(const WorkingLine& l, const model::Settings& settings, bool tenths) {
        QString s = sign(l.step) + figureAndKey(l, settings, tenths);
        if (!l.subject.empty()) s += QStringLiteral(", ") + text(l.subject);
        if (basisGoesWithoutSaying(l)) return s;
        s += QStringLiteral(" (") + basisWords(l.basis);
        if (!l.source.empty()) s += QStringLiteral(": ") + text(l.source);
        return s + QLatin1Char(')');
    }

    /// Where a line leads, in a word or two: it stands small beside the line.
    static QString place(model::TableKind table) {
        using model::TableKind;
        switch (table) {
        case TableKind::settings:
            return tr("Settings");
        case TableKind::rates:
            return tr("Times of work");
        case TableKind::plants:
            return tr("Plant");
        case TableKind::designs:
            return tr("Design");
        case TableKind::bookings:
            return tr("Booking");
        case TableKind::lines:
            return tr("Pieces");
        case TableKind::payments:
            return tr("Payments");
        case TableKind::venues:
            return tr("Venue");
        case TableKind::patches:
            return tr("Patch");
        case TableKind::weather:
            return tr("Weather");
        case TableKind::monthNormals:
            return tr("Usual year");
        case TableKind::containers:
        case TableKind::ribbons:
        case TableKind::sundries:
        case TableKind::holders:
        case TableKind::vehicles:
            return tr("Shed");
        default:
            return tr("Show");
        }
    }

    static QString spoken(const QString& place, const QString& line) {
        return tr("%1, for %2").arg(place, line);
    }

    static QString basis(Basis b) {
        switch (b) {
        case Basis::counted:
            return tr("counted");
        case Basis::lastSeasons:
            return tr("last seasons");
        case Basis::published:
            return tr("published");
        case Basis::commonPractice:
            return tr("common practice");
        case Basis::fromMemory:
            return tr("from memory");
        case Basis::mine:
            return tr("mine");
        case Basis::computed:
            return tr("worked out");
        case Basis::notKnown:
            return tr("not known");
        }
        return {};
    }
};

} // namespace

QString basisWords(Basis basis) {
    return WorkingWordingSay::basis(basis);
}

QStringList lines(const Working& working, const model::Settings& settings) {
    QStringList out;
    const bool tenths = WorkingWordingSay::hasTenths(working, settings);
    for (const auto& l : working)
        out << WorkingWordingSay::line(l, settings, tenths);
    return out;
}

QStringList lines(const Working& working, model::UnitSystem units) {
    model::Settings settings;
    settings.units = units;
    return lines(working, settings);
}

std::vector<WorkingGroup> groups(const QStringList& lines, const Working& working) {
    constexpr int longest = 110; // letters: about what one line of a page holds
    std::vector<WorkingGroup> out;
    WorkingGroup run;
    const auto close = [&] {
        if (!run.words.isEmpty()) out.push_back(std::move(run));
        run = {};
    };
    for (int i = 0; i < lines.size(); ++i) {
        const auto& line = working[static_cast<std::size_t>(i)];
        const QString joint = line.step == Step::given ? QStringLiteral(" · ") : QStringLiteral(" ");
        if (!run.words.isEmpty() && run.words.size() + lines[i].size() > longest) close();
        run.words += (run.words.isEmpty() ? QString() : joint) + lines[i];
        const auto place = model::placeOf(line.from);
        const bool there = place && std::any_of(run.leads.begin(), run.leads.end(),
                                                [&](const auto& lead) { return lead.place == *place; });
        if (place && !there) {
            const QString words = WorkingWordingSay::place(place->table);
            run.leads.push_back({*place, words, WorkingWordingSay::spoken(words, lines[i])});
        }
        if (line.step == Step::result) close();
    }
    close();
    return out;
}

QStringList grouped(const QStringList& lines, const Working& working) {
    QStringList out;
    for (const auto& group : groups(lines, working))
        out << group.words;
    return out;
}

} // namespace withy::ui
