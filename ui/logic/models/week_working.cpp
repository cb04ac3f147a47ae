// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/week_working.h"

#include "core/base/working_lines.h"
#include "core/model/origin.h"

#include <QCoreApplication>

#include <algorithm>

namespace withy::ui {

namespace {

struct WeekWorkingSay {
    Q_DECLARE_TR_FUNCTIONS(WeekSteps)
};

struct Part {
    QString name;
    std::optional<Id<model::Booking>> booking;
    Minutes work;
};

/// A day's work by whose it is, in the order of the day.
std::vector<Part> partsOf(const WeekDay& day) {
    std::vector<Part> parts;
    for (const auto& step : day.steps) {
        if (step.minutes.value == 0) continue;
        const auto known = std::find_if(parts.begin(), parts.end(),
                                        [&](const Part& p) { return p.name == step.bookingName; });
        if (known == parts.end())
            parts.push_back({step.bookingName, step.booking, step.minutes});
        else
            known->work += step.minutes;
    }
    return parts;
}

} // namespace

SheetFigure weekFigure(const std::vector<WeekDay>& days) {
    SheetFigure f;
    Minutes all;
    Working sums;
    for (const auto& day : days) {
        if (day.work.value == 0) continue;
        all += day.work;
        bool first = true;
        for (const auto& part : partsOf(day)) {
            auto line = lineOf(first ? Step::given : Step::plus, "work", part.work.value, Unit::minutes,
                               Basis::computed, {}, part.name.toStdString());
            if (part.booking) line.from = model::originOf(model::TableKind::bookings, part.booking->value);
            f.working.push_back(std::move(line));
            first = false;
        }
        const std::string name = shortDay(day.day).toStdString();
        f.working.push_back(lineOf(Step::result, "work of the day, to five minutes", day.work.value,
                                   Unit::minutes, Basis::computed, {}, name));
        sums.push_back(lineOf(sums.empty() ? Step::given : Step::plus, "work of the day", day.work.value,
                              Unit::minutes, Basis::computed, {}, name));
    }
    if (all.value == 0) return f;
    append(f.working, sums);
    f.working.push_back(lineOf(Step::result, "work of the week", all.value, Unit::minutes));
    f.words = workWords(all);
    f.means = WeekWorkingSay::tr("of work this week");
    return f;
}

} // namespace withy::ui
