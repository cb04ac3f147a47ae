// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/models/forecast_rows.h"

#include "ui/logic/answers/garden_answers.h"
#include "ui/logic/format.h"
#include "ui/logic/garden_words.h"
#include "ui/logic/measures.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <map>

namespace withy::ui {

namespace {

using Weight = AnswerPart::Weight;

struct ForecastRowsSay {
    Q_DECLARE_TR_FUNCTIONS(Forecast)
};

/// The usual year's new stems as stems standing, held as long.
std::vector<double> standingOf(const std::vector<double>& fresh, int hold) {
    std::vector<double> standing(fresh.size() + static_cast<std::size_t>(hold));
    double now = 0;
    for (std::size_t i = 0; i < standing.size(); ++i) {
        if (i < fresh.size()) now += fresh[i];
        const auto held = static_cast<std::size_t>(hold) + 1;
        if (i >= held && i - held < fresh.size()) now -= fresh[i - held];
        standing[i] = std::max(0.0, now);
    }
    return standing;
}

using Walks = std::multimap<Id<model::Patch>, const model::Walk*>;

ForecastCurve curveOf(const plan::PatchOutlook& o, const Walks& walks) {
    ForecastCurve c;
    const bool usual = o.usual && !o.usualCurve.empty();
    if (!o.forecast && !usual) return c;
    c.from = o.forecast ? o.forecast->from : o.usual->first;
    if (usual) c.from = std::min(c.from, o.usual->first);
    if (usual) {
        c.usual.assign(static_cast<std::size_t>(o.usual->first - c.from), 0.0);
        const auto standing = standingOf(o.usualCurve, o.holdDays);
        c.usual.insert(c.usual.end(), standing.begin(), standing.end());
    }
    if (o.forecast) {
        const std::vector<double> none(static_cast<std::size_t>(o.forecast->from - c.from), 0.0);
        c.cautious = c.likely = c.hopeful = none;
        for (const auto& d : o.forecast->days) {
            c.cautious.push_back(static_cast<double>(d.standing.cautious.value));
            c.likely.push_back(static_cast<double>(d.standing.likely.value));
            c.hopeful.push_back(static_cast<double>(d.standing.hopeful.value));
        }
    }
    const auto [first, last] = walks.equal_range(o.patch);
    for (auto w = first; w != last; ++w)
        c.walks.emplace_back(w->second->date, static_cast<double>(w->second->readyNow->value));
    return c;
}

QString byWords(plan::DatesBy by) {
    switch (by) {
    case plan::DatesBy::nothing:
        return ForecastRowsSay::tr("first cut not said yet");
    case plan::DatesBy::calendar:
        return ForecastRowsSay::tr("by the calendar");
    case plan::DatesBy::warmth:
        return ForecastRowsSay::tr("by warmth");
    case plan::DatesBy::pastYears:
        return ForecastRowsSay::tr("by your past years");
    }
    return {};
}

void fill(ForecastRow& row, const plan::PatchOutlook& o, std::optional<Day> today, const Walks& walks) {
    row.by = byWords(o.by);
    if (o.usual) row.firstUsual = shortDay(o.usual->first);
    if (o.dates) {
        row.firstNow = shortDay(o.dates->first);
        row.early = earlyWords(o.daysEarly);
    }
    row.curve = curveOf(o, walks);
    if (!o.forecast) return;
    row.stems = whole(std::llround(o.forecast->expected));
    if (!today) return;
    const auto* now = o.forecast->on(*today);
    row.today = whole(now ? now->standing.likely.value : 0);
    std::int64_t week = 0;
    for (int d = 1; d <= 7; ++d)
        if (const auto* on = o.forecast->on(*today + d)) week += on->supply.likely.value;
    row.week = whole(week);
}

} // namespace

QString earlyWords(int daysEarly) {
    if (daysEarly == 0) return ForecastRowsSay::tr("as usual");
    return daysEarly > 0 ? ForecastRowsSay::tr("%1 early").arg(daysEarly)
                         : ForecastRowsSay::tr("%1 late").arg(-daysEarly);
}

std::vector<ForecastRow> forecastRows(const model::Season& season, const plan::Plan& plan,
                                      std::optional<Day> today) {
    std::vector<ForecastRow> rows;
    if (!plan.garden) return rows;
    Walks walks;
    std::map<Id<model::Patch>, const model::Walk*> last;
    for (const auto& w : season.walks) {
        if (!w.readyNow) continue;
        walks.emplace(w.patch, &w);
        auto& newest = last[w.patch];
        if (!newest || newest->date <= w.date) newest = &w;
    }
    int number = 0;
    std::optional<std::int64_t> place;
    for (const auto* patch : inWalkingOrder(season)) {
        const bool same = place && *place == patch->place;
        if (!same) ++number;
        place = patch->place;
        ForecastRow row;
        row.patch = patch->id;
        if (!same) row.number = QString::number(number);
        row.name = text(patch->label);
        if (const auto* plant = season.plants.find(patch->plant)) {
            row.plant = text(plant->name);
            if (plant->colour1) row.bloom = QColor(text(plant->colour1->hex()));
        }
        const auto walked = last.find(patch->id);
        row.lastWalk = walked == last.end()
                           ? ForecastRowsSay::tr("no walk yet")
                           : ForecastRowsSay::tr("%1 ready, %2")
                                 .arg(whole(walked->second->readyNow->value), shortDay(walked->second->date));
        const auto found = plan.garden->patches.find(patch->id);
        if (found != plan.garden->patches.end()) fill(row, found->second, today, walks);
        rows.push_back(std::move(row));
    }
    return rows;
}

QString leadFigure(const plan::Plan& plan) {
    if (!plan.garden || !plan.garden->lead) return {};
    const auto days = static_cast<int>(std::lround(plan.garden->lead->daysEarly));
    if (days == 0) return ForecastRowsSay::tr("as in a usual year");
    return days > 0 ? ForecastRowsSay::tr("%n day(s) ahead", nullptr, days)
                    : ForecastRowsSay::tr("%n day(s) behind", nullptr, -days);
}

QString leadWarmth(const model::Season& season, const plan::Plan& plan) {
    if (!plan.garden || !plan.garden->lead) return {};
    const auto& lead = *plan.garden->lead;
    QString words = ForecastRowsSay::tr("Warmth since %1: %2, and %3 in a usual year by now.")
                        .arg(shortDay(lead.origin), warmthWords(lead.heatSum, season),
                             warmthFigure(lead.normalSum, season));
    words += QLatin1Char(' ') + ForecastRowsSay::tr("%n day(s) measured", nullptr, plan.garden->measuredDays);
    if (plan.garden->forecastDays > 0)
        words += ForecastRowsSay::tr(", %n forecast", nullptr, plan.garden->forecastDays);
    return words + QLatin1Char('.');
}

Answer forecastAnswer(const model::Season& season, const plan::Plan& plan) {
    if (season.patches.empty())
        return {{ForecastRowsSay::tr("No patch yet. Write down what grows where, in the order you walk.")}};
    Answer answer;
    const QString lead = leadFigure(plan);
    if (!lead.isEmpty())
        answer = {{ForecastRowsSay::tr("Warmth is ")}, {lead, Weight::strong}, {QStringLiteral(". ")}};
    else if (season.weather.empty())
        answer = {{ForecastRowsSay::tr("No weather to go by, so ")},
                  {ForecastRowsSay::tr("the calendar stands"), Weight::strong},
                  {QStringLiteral(". ")}};
    answer.push_back({ForecastRowsSay::tr("%n patch(es), in walking order.", nullptr,
                                          static_cast<int>(season.patches.size()))});
    return answer;
}

QString whyHead(const plan::PatchOutlook& o) {
    if (!o.dates) return {};
    if (o.by == plan::DatesBy::calendar) return ForecastRowsSay::tr("Why its dates stand");
    if (o.daysEarly == 0) return ForecastRowsSay::tr("Why as usual");
    return o.daysEarly > 0 ? ForecastRowsSay::tr("Why %n day(s) early", nullptr, o.daysEarly)
                           : ForecastRowsSay::tr("Why %n day(s) late", nullptr, -o.daysEarly);
}

QString rangeWords(const plan::PatchOutlook& o) {
    if (!o.hopefulFirst || !o.cautiousFirst) return {};
    return ForecastRowsSay::tr("First stems between %1 and %2 in six years of ten, %3.")
        .arg(shortDay(*o.hopefulFirst), shortDay(*o.cautiousFirst), byWords(o.by));
}

void ForecastModel::setRows(std::vector<ForecastRow> rows) {
    const bool same = rows.size() == rows_.size() &&
                      std::equal(rows.begin(), rows.end(), rows_.begin(),
                                 [](const auto& a, const auto& b) { return a.patch == b.patch; });
    if (!same) beginResetModel();
    rows_ = std::move(rows);
    if (!same) endResetModel();
    if (same && !rows_.empty()) Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, Columns - 1));
}

int ForecastModel::rowOf(Id<model::Patch> patch) const {
    const auto at = std::find_if(rows_.begin(), rows_.end(), [&](const auto& r) { return r.patch == patch; });
    return at == rows_.end() ? -1 : static_cast<int>(at - rows_.begin());
}

std::optional<std::pair<Day, Day>> ForecastModel::span() const {
    std::optional<std::pair<Day, Day>> span;
    const auto hold = [&](Day day) {
        if (!span) span = {day, day};
        span->first = std::min(span->first, day);
        span->second = std::max(span->second, day);
    };
    for (const auto& row : rows_)
        for (const auto* line : {&row.curve.usual, &row.curve.hopeful}) {
            const auto stands = [](double stems) { return stems >= 0.5; };
            const auto first = std::find_if(line->begin(), line->end(), stands);
            if (first == line->end()) continue;
            const auto last = std::find_if(line->rbegin(), line->rend(), stands);
            hold(row.curve.from + static_cast<int>(first - line->begin()));
            hold(row.curve.from + static_cast<int>(line->rend() - last) - 1);
        }
    if (span) span = {span->first - 7, span->second + 7};
    return span;
}

int ForecastModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int ForecastModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : Columns;
}

QString ForecastModel::words(const ForecastRow& row, int column) {
    switch (column) {
    case PatchColumn:
        return row.name;
    case FirstColumn:
        return row.firstNow;
    case EarlyColumn:
        return row.early;
    case StemsColumn:
        return row.stems;
    case TodayColumn:
        return row.today;
    case WeekColumn:
        return row.week;
    default:
        return {};
    }
}

QVariant ForecastModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount()) return {};
    const auto& row = at(index.row());
    if (role == Qt::DisplayRole) return words(row, index.column());
    if (role == Qt::AccessibleTextRole && index.column() == PatchColumn)
        return tr("%1 %2, %3, %4").arg(row.number, row.name, row.plant, row.lastWalk);
    if (role == Qt::AccessibleTextRole && index.column() == CurveColumn)
        return tr("likely today %1, %2 more within the week").arg(row.today, row.week);
    if (role == Qt::AccessibleTextRole && index.column() == FirstColumn && !row.firstNow.isEmpty())
        return tr("%1, usually %2").arg(row.firstNow, row.firstUsual);
    if (role == Qt::ToolTipRole && index.column() == FirstColumn) return row.by;
    if (role == Qt::TextAlignmentRole && index.column() >= FirstColumn)
        return QVariant::fromValue(Qt::Alignment(Qt::AlignRight | Qt::AlignVCenter));
    return {};
}

QVariant ForecastModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole)
        return QVariant::fromValue(
            Qt::Alignment((section >= FirstColumn ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter));
    if (role != Qt::DisplayRole) return {};
    switch (section) {
    case PatchColumn:
        return tr("Patch and plant");
    case FirstColumn:
        return tr("First cut");
    case EarlyColumn:
        return tr("Days");
    case StemsColumn:
        return tr("Stems");
    case TodayColumn:
        return tr("Today");
    case WeekColumn:
        return tr("Week");
    default:
        return tr("Stems standing, by day");
    }
}

} // namespace withy::ui
