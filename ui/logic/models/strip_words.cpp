// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/strip_words.h"

#include "ui/logic/format.h"
#include "ui/logic/models/booking_words.h"

#include <QCoreApplication>
#include <QLocale>

#include <algorithm>

namespace withy::ui {

namespace {

class StripWordsSay {
    Q_DECLARE_TR_FUNCTIONS(BloomStrip)

public:
    static QString stems(std::int64_t n) {
        return tr("%1 stem(s)", nullptr, static_cast<int>(std::min<std::int64_t>(n, 1'000'000'000)))
            .arg(whole(n));
    }

    static QString readyOn(const StripFigures& f, int day, std::int64_t n) {
        if (f.today == day) return n == 0 ? tr("nothing ready today") : tr("%1 ready today").arg(stems(n));
        const QString when = shortDay(f.dayAt(day));
        if (n == 0) return tr("%1: nothing ready").arg(when);
        return f.today && day > *f.today ? tr("%1: %2 likely ready").arg(when, stems(n))
                                         : tr("%1: %2 ready").arg(when, stems(n));
    }

    static QString range(const StripLevels& l) {
        return tr("%1 to %2").arg(whole(l.cautious), whole(l.hopeful));
    }
};

/// As a name stands within a sentence: "panic grass"; "Sweet William" and "Dahlia, plum" as they were typed.
QString inSentence(const StripBand& band) {
    QString words = band.kind;
    const QString tail = words.mid(1);
    if (!words.isEmpty() && tail == tail.toLower() && !words.contains(QLatin1Char(',')))
        words[0] = words[0].toLower();
    return words;
}

QString mostOf(const StripFigures& f, int day) {
    const StripBand* first = nullptr;
    const StripBand* second = nullptr;
    const auto at = static_cast<std::size_t>(day);
    const auto n = [at](const StripBand* b) { return b ? b->days[at].likely : 0; };
    for (const auto& b : f.bands) {
        if (n(&b) > n(first))
            second = std::exchange(first, &b);
        else if (n(&b) > n(second))
            second = &b;
    }
    if (!first || n(first) == 0) return {};
    if (!second || n(second) == 0) return StripWordsSay::tr("all of them %1").arg(inSentence(*first));
    return StripWordsSay::tr("most of them %1 %2 and %3 %4")
        .arg(inSentence(*first), whole(n(first)), inSentence(*second), whole(n(second)));
}

/// What the future can still bring, beside what is likely.
QString rangeAfter(const StripFigures& f, int day, const StripLevels& levels) {
    if (!f.today || day <= *f.today || levels.cautious == levels.hopeful) return {};
    return StripWordsSay::range(levels);
}

QString leafOn(const StripFigures& f, int day) {
    const auto n = f.leaf[static_cast<std::size_t>(day)].likely;
    return n > 0 ? StripWordsSay::tr("besides %1 of foliage").arg(whole(n)) : QString();
}

QString joined(const QStringList& parts) {
    QStringList said;
    for (const auto& p : parts)
        if (!p.isEmpty()) said << p;
    return said.join(QStringLiteral(", "));
}

StripReadout ofDay(const StripFigures& f, int day) {
    const auto& sum = f.sums[static_cast<std::size_t>(day)];
    return {capital(StripWordsSay::readyOn(f, day, sum.likely)),
            joined({rangeAfter(f, day, sum), mostOf(f, day), leafOn(f, day)})};
}

StripReadout ofBand(const StripFigures& f, int day, const StripBand& band) {
    const auto& levels = band.days[static_cast<std::size_t>(day)];
    const QString when = f.today == day ? StripWordsSay::tr("today") : shortDay(f.dayAt(day));
    StripReadout said{StripWordsSay::tr("%1, %2: %3 ready").arg(band.name, when, whole(levels.likely)), {}};
    said.rest = joined(
        {rangeAfter(f, day, levels),
         StripWordsSay::tr("of %1").arg(StripWordsSay::stems(f.sums[static_cast<std::size_t>(day)].likely)),
         StripWordsSay::tr("fullest %1").arg(shortDay(f.dayAt(band.peak)))});
    return said;
}

int fullestDay(const StripFigures& f) {
    const auto most = std::max_element(f.sums.begin(), f.sums.end(),
                                       [](const auto& a, const auto& b) { return a.likely < b.likely; });
    return static_cast<int>(most - f.sums.begin());
}

} // namespace

QString StripReadout::whole() const {
    return rest.isEmpty() ? strong : strong + QStringLiteral(", ") + rest;
}

StripReadout stripReadout(const StripFigures& f, std::optional<int> day, std::optional<std::size_t> band) {
    if (f.sums.empty() || f.bands.empty()) return {};
    const int at = std::clamp(day.value_or(f.today.value_or(fullestDay(f))), 0, f.days - 1);
    return band && *band < f.bands.size() ? ofBand(f, at, f.bands[*band]) : ofDay(f, at);
}

StripReadout pinReadout(const StripFigures& f, const std::vector<std::size_t>& pins) {
    if (pins.empty()) return {};
    const auto& one = f.pins[pins.front()];
    if (pins.size() == 1)
        return {StripWordsSay::tr("%1, %2").arg(one.title, shortDay(f.dayAt(one.day))),
                joined({standingWords(one.standing), coverWords(one.standing, one.cover)})};
    const auto& last = f.pins[pins.back()];
    const QString count = StripWordsSay::tr("%n booking(s)", nullptr, static_cast<int>(pins.size()));
    const QString from = shortDay(f.dayAt(one.day));
    QStringList titles;
    for (const auto p : pins)
        titles << f.pins[p].title;
    return {one.day == last.day
                ? StripWordsSay::tr("%1, %2").arg(count, from)
                : StripWordsSay::tr("%1, %2 to %3").arg(count, from, shortDay(f.dayAt(last.day))),
            titles.join(QStringLiteral(", "))};
}

QString stripEmptyWords(const model::Season& season, const StripFigures& f) {
    if (!f.known || !f.bands.empty()) return {};
    if (season.patches.empty())
        return StripWordsSay::tr(
            "Nothing grows here yet. Write down a patch in the garden, and its bloom stands here.");
    return StripWordsSay::tr(
        "About when is each patch first and last cut, and how many stems does it give? Say so under Garden, "
        "Patches, and its bloom stands here.");
}

QString stripLegend() {
    return StripWordsSay::tr("dashes: cautious, dots: hopeful");
}

QString todayWords(Day today, bool brief) {
    return brief ? shortDay(today) : StripWordsSay::tr("Today, %1").arg(shortDay(today));
}

QString monthWords(Day day, bool brief) {
    static const QLocale british(QLocale::English, QLocale::UnitedKingdom);
    const QString name = british.standaloneMonthName(day.month());
    return brief ? name.left(3) : name;
}

QString dayOfMonthWords(Day day) {
    return shortDay(day).section(QLatin1Char(' '), 1);
}

} // namespace withy::ui
