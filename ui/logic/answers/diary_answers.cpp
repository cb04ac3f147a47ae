// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/answers/diary_answers.h"

#include "ui/logic/format.h"
#include "ui/logic/models/run_up_rows.h"
#include "ui/logic/run_up_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <map>
#include <set>

namespace withy::ui {

namespace {

using Weight = AnswerPart::Weight;

struct Diary {
    Q_DECLARE_TR_FUNCTIONS(Diary)
};

QString weekday(Day day) {
    const QString words = longDay(day);
    return words.left(words.indexOf(QLatin1Char(' ')));
}

/// What is too much on one day, whoever's it is.
struct DayTooMuch {
    Day day;
    Minutes minutes;
    std::map<QString, Minutes> whose; ///< by the name on the step; empty where nobody is named
    const plan::RunUpOver* worst = nullptr;
};

/// Of these days, the worst first.
std::vector<DayTooMuch> tooMuchOf(const std::vector<WeekDay>& days, const model::Season& season,
                                  const plan::RunUpPlan& runUp) {
    std::map<Day, DayTooMuch> all;
    for (const auto& over : runUp.over) {
        if (over.day < days.front().day || days.back().day < over.day) continue;
        auto& day = all[over.day];
        day.day = over.day;
        day.minutes += over.minutes;
        if (over.step && *over.step < runUp.steps.size())
            day.whose[whoWords(season, runUp.steps[*over.step])] += over.minutes;
        if (!day.worst || day.worst->minutes < over.minutes) day.worst = &over;
    }
    std::vector<DayTooMuch> out;
    for (auto& [day, sum] : all) {
        // One step may be in the way of several: no day has more too much than it has work.
        const auto work = days[static_cast<std::size_t>(day - days.front().day)].work;
        if (work.value > 0 && work < sum.minutes) {
            sum.minutes = work;
            sum.whose.clear();
        }
        out.push_back(std::move(sum));
    }
    std::stable_sort(out.begin(), out.end(),
                     [](const DayTooMuch& a, const DayTooMuch& b) { return a.minutes > b.minutes; });
    return out;
}

/// "Wednesday 6 h 02 (You 5 h 45, Wilf 17 min)"; whose it is only where it is shared.
QString tooMuchWords(const DayTooMuch& day) {
    const QString sum = Diary::tr("%1 %2").arg(weekday(day.day), workWords(day.minutes));
    if (day.whose.size() < 2 || day.whose.contains(QString())) return sum;
    QStringList whose;
    for (const auto& [name, minutes] : day.whose)
        whose << Diary::tr("%1 %2").arg(name, workWords(minutes));
    return Diary::tr("%1 (%2)").arg(sum, whose.join(QStringLiteral(", ")));
}

QString tooMuchList(const std::vector<DayTooMuch>& all) {
    QStringList words;
    for (std::size_t i = 0; i < std::min<std::size_t>(all.size(), 2); ++i)
        words << tooMuchWords(all[i]);
    QString list = words.join(Diary::tr(" and "));
    if (all.size() > 2)
        list = words.join(QStringLiteral(", ")) +
               Diary::tr(" and %n more day(s)", nullptr, asCount(all.size()) - 2);
    return Diary::tr("Too much for the hours there are: %1.").arg(list);
}

/// What does not fit in these days, a day told once, the worst first, with what would mend that.
void addOver(const std::vector<WeekDay>& days, const model::Season& season, const plan::Plan& plan,
             Answer& answer) {
    if (!plan.runUp || days.empty()) return;
    const auto all = tooMuchOf(days, season, *plan.runUp);
    if (all.empty()) return;
    answer.push_back({QLatin1Char(' ') + tooMuchList(all), Weight::asks});
    for (const auto& mend : all.front().worst->mends) {
        const QString mended = mendWords(season, mend);
        if (!mended.isEmpty()) answer.push_back({QLatin1Char(' ') + mended});
    }
}

} // namespace

QString tooMuchWords(const std::vector<WeekDay>& days, const model::Season& season, const plan::Plan& plan) {
    if (!plan.runUp || days.empty()) return {};
    const auto all = tooMuchOf(days, season, *plan.runUp);
    return all.empty() ? QString() : tooMuchList(all);
}

QString todayWords(const model::Season& season, const plan::Plan& plan, Day today) {
    if (!plan.runUp) return {};
    int all = 0, done = 0;
    QStringList next;
    for (const auto& s : plan.runUp->steps) {
        if (s.from.day != today || needsNobody(s)) continue;
        ++all;
        done += s.done ? 1 : 0;
        if (!s.done && next.size() < 2)
            next << Diary::tr("%1 at %2").arg(stepTitle(season, s), planClock(s.from));
    }
    if (all == 0) return {};
    const QString count = Diary::tr("Today, %1 of %n step(s) done.", nullptr, all).arg(done);
    if (next.isEmpty()) return count;
    return Diary::tr("%1 Next: %2.").arg(count, next.join(Diary::tr(", then ")));
}

Answer weekAnswer(const std::vector<WeekDay>& days, const model::Season& season, const plan::Plan& plan) {
    Minutes work;
    std::set<std::int64_t> bookings;
    const WeekDay* fullest = nullptr;
    for (const auto& day : days) {
        work += day.work;
        if (day.work.value > 0 && (!fullest || day.work > fullest->work)) fullest = &day;
        for (const auto& s : day.steps) {
            for (const auto id : s.bookings)
                bookings.insert(id.value);
        }
    }
    if (bookings.empty()) return {{Diary::tr("Nothing to do for a booking this week.")}};
    Answer answer{{workWords(work), Weight::strong},
                  {Diary::tr(" of work for %n booking(s).", nullptr, asCount(bookings.size()))}};
    if (fullest) {
        answer.push_back({Diary::tr(" %1 is the fullest day: ").arg(weekday(fullest->day))});
        answer.push_back({workWords(fullest->work), Weight::strong});
        answer.push_back({QStringLiteral(".")});
    }
    addOver(days, season, plan, answer);
    return answer;
}

Answer weekPapersAnswer() {
    return {{Diary::tr(
        "The week on paper, as it stands now: one board for the shed, one sheet for each helper.")}};
}

Answer busyAnswer(const model::Season& season) {
    if (season.busyHours.empty())
        return {{Diary::tr("No busy hours yet. Shop, school run, market: the run-up keeps clear of them.")}};
    int repeats = 0;
    for (const auto& b : season.busyHours)
        repeats += b.repeats == model::Repeat::never ? 0 : 1;
    return {{Diary::tr("%n (entry|entries)", nullptr, asCount(season.busyHours.size())), Weight::strong},
            {repeats > 0 ? Diary::tr(", %n of them (comes|come) again. The run-up keeps clear of them all.",
                                     nullptr, repeats)
                         : Diary::tr(". The run-up keeps clear of them.")}};
}

Answer helpersAnswer(const model::Season& season) {
    if (season.helpers.empty())
        return {{Diary::tr("Nobody yet. Who would come for an afternoon, and what can they do?")}};
    int making = 0;
    for (const auto& h : season.helpers)
        making += h.canMake ? 1 : 0;
    return {{Diary::tr("%n helper(s)", nullptr, asCount(season.helpers.size())), Weight::strong},
            {making > 0 ? Diary::tr(", %n of whom can make up pieces.", nullptr, making)
                        : Diary::tr("; none makes up pieces yet.")}};
}

Answer roundsAnswer(const model::Season& season) {
    if (season.rounds.empty())
        return {{Diary::tr("No round yet. What was really cut teaches the next forecast.")}};
    std::int64_t cut = 0;
    std::int64_t thrown = 0;
    for (const auto& t : season.tallies) {
        cut += t.cut.value_or(Stems{}).value;
        thrown += t.thrownAway.value_or(Stems{}).value;
    }
    return {{Diary::tr("%1 stem(s) cut", nullptr, static_cast<int>(cut)).arg(whole(cut)), Weight::strong},
            {Diary::tr(" on %n round(s), %1 of them thrown away.", nullptr, asCount(season.rounds.size()))
                 .arg(whole(thrown))}};
}

Answer madeAnswer(const model::Season& season) {
    if (season.made.empty())
        return {{Diary::tr("Nothing timed yet. Write down how long the pieces took, even roughly.")}};
    std::int64_t pieces = 0;
    for (const auto& m : season.made)
        pieces += m.pieces.value;
    return {
        {Diary::tr("%1 piece(s) made", nullptr, static_cast<int>(pieces)).arg(whole(pieces)), Weight::strong},
        {Diary::tr(" and written down.")}};
}

Answer returnsAnswer(const model::Season& season) {
    if (season.returns.empty()) return {{Diary::tr("Nothing is out.")}};
    std::int64_t out = 0;
    std::int64_t back = 0;
    std::int64_t still = 0;
    std::int64_t broken = 0;
    for (const auto& r : season.returns) {
        broken += r.broken.value_or(0);
        const auto home = r.back.value_or(0) + r.broken.value_or(0);
        out += r.out;
        back += r.back.value_or(0);
        still += std::max<std::int64_t>(0, r.out - home);
    }
    Answer answer{{Diary::tr("%1 of %2 (is|are) back", nullptr, asCount(back)).arg(whole(back), whole(out)),
                   Weight::strong}};
    if (broken > 0) answer.push_back({Diary::tr(", %1 broken").arg(whole(broken))});
    if (still == 0) return answer.push_back({QStringLiteral(".")}), answer;
    answer.push_back({QStringLiteral("; ")});
    answer.push_back({Diary::tr("%1 (is|are) still out.", nullptr, static_cast<int>(still)).arg(whole(still)),
                      Weight::asks});
    return answer;
}

Answer notesAnswer(const model::Season& season) {
    if (season.jobNotes.empty())
        return {{Diary::tr("No note yet. What drooped, what was left, what to do next time?")}};
    return {{Diary::tr("%n note(s)", nullptr, asCount(season.jobNotes.size())), Weight::strong},
            {Diary::tr(" to learn from.")}};
}

QString busyWhenWords(const model::Season& season, Id<model::BusyHours> id) {
    const auto* b = season.busyHours.find(id);
    if (!b) return {};
    const QString hours =
        b->from.day == b->to.day
            ? Diary::tr("%1 to %2").arg(clock(b->from), clock(b->to))
            : Diary::tr("%1 to %2 %3").arg(clock(b->from), shortDay(b->to.day), clock(b->to));
    const auto dateOf = [](Day day) { return shortDay(day).section(QLatin1Char(' '), 1); };
    if (b->repeats == model::Repeat::never) return Diary::tr("%1, %2").arg(shortDay(b->from.day), hours);
    const QString which = b->repeats == model::Repeat::weekly
                              ? Diary::tr("Every %1").arg(weekday(b->from.day))
                          : b->repeats == model::Repeat::weekdays ? Diary::tr("Monday to Friday")
                                                                  : Diary::tr("Every day");
    return b->repeatsUntil
               ? Diary::tr("%1 %2, %3 to %4").arg(which, hours, dateOf(b->from.day), dateOf(*b->repeatsUntil))
               : Diary::tr("%1 %2, from %3").arg(which, hours, dateOf(b->from.day));
}

QString roundForWords(const model::Season& season, Id<model::Round> round) {
    QStringList titles;
    for (const auto& r : season.roundBookings)
        if (const auto* b = r.round == round ? season.bookings.find(r.booking) : nullptr)
            titles << text(b->title);
    return titles.join(QStringLiteral(", "));
}

QString roundStemsWords(const model::Season& season, Id<model::Round> round) {
    std::optional<std::int64_t> cut;
    for (const auto& t : season.tallies)
        if (t.round == round && t.cut) cut = cut.value_or(0) + t.cut->value;
    return cut ? whole(*cut) : QString();
}

QString madeForWords(const model::Season& season, Id<model::Made> id) {
    const auto* made = season.made.find(id);
    const auto* line = made ? season.lines.find(made->line) : nullptr;
    const auto* b = line ? season.bookings.find(line->booking) : nullptr;
    return b ? Diary::tr("%1, %2").arg(text(b->title), shortDay(b->eventStart.day)) : QString();
}

QString madeAskedWords(const model::Season& season, Id<model::Made> id) {
    const auto* made = season.made.find(id);
    const auto* line = made ? season.lines.find(made->line) : nullptr;
    return line ? whole(line->pieces.value + line->sparePieces.value) : QString();
}

} // namespace withy::ui
