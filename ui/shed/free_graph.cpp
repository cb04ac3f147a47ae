// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shed/free_graph.h"

#include "ui/common/style.h"
#include "ui/logic/format.h"
#include "ui/paint/spacing.h"
#include "ui/paint/type.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace withy::ui {

namespace {

int leadWidth() {
    return grid(9); // the figures at the left
}

double dayX(Day day, Day first, Day last, double width) {
    const double days = std::max(1, last - first + 1);
    return leadWidth() + (width - leadWidth() - 2) * std::clamp((day - first) / days, 0.0, 1.0);
}

/// Mondays, thinned so that their names have room.
std::vector<Day> weeksOf(Day first, Day last, double width, double needs) {
    std::vector<Day> weeks;
    const double days = std::max(1, last - first + 1);
    const int step = 7 * std::max(1, static_cast<int>(std::ceil(needs / (width / days) / 7)));
    for (Day d = first + (8 - first.weekday()) % 7; d <= last; d = d + step)
        weeks.push_back(d);
    return weeks;
}

/// Today and the weeks by name along `base`.
void paintAxis(QPainter& p, const ShelfSpan& span, double width, double base) {
    const auto& palette = currentPalette();
    p.setFont(typeFont(TypeRole::caption));
    const QFontMetricsF metrics(p.font());
    double taken = -1e9, takenTo = -1e9;
    const auto name = [](Day d) { return shortDay(d).section(QLatin1Char(' '), 1); };
    if (span.today) {
        QFont bold = p.font();
        bold.setWeight(QFont::Bold);
        p.setFont(bold);
        p.setPen(palette.of(Role::osier));
        const double x = dayX(*span.today, span.first, span.last, width);
        const double w = QFontMetricsF(bold).horizontalAdvance(name(*span.today));
        p.drawText(QPointF(x - w / 2, base), name(*span.today));
        taken = x - w / 2 - grid(1);
        takenTo = x + w / 2 + grid(1);
    }
    p.setFont(typeFont(TypeRole::caption));
    p.setPen(palette.of(Role::ink3));
    for (const auto week :
         weeksOf(span.first, span.last, width - leadWidth(), metrics.horizontalAdvance("30 Sep "))) {
        const double w = metrics.horizontalAdvance(name(week));
        const double x = dayX(week, span.first, span.last, width) - w / 2;
        if (x + w > taken && x < takenTo) continue;
        if (x < 0 || x + w > width) continue;
        p.drawText(QPointF(x, base), name(week));
    }
}

/// Free only if what nobody wrote back has come home.
void hatchUnsure(QPainter& p, const QRectF& at) {
    p.save();
    p.setClipRect(at);
    p.setPen(QPen(currentPalette().of(Role::ink3), hairline));
    const double far = std::ceil((at.right() + at.bottom()) / grid(1.5)) * grid(1.5); // one hatch for all
    for (double x = far; x > at.left() + at.top() - grid(2); x -= grid(1.5))
        p.drawLine(QPointF(x - at.bottom(), at.bottom()), QPointF(x - at.top(), at.top()));
    p.restore();
}

} // namespace

FreeGraph::FreeGraph(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

QSize FreeGraph::sizeHint() const {
    return {grid(40), grid(13)};
}

void FreeGraph::setGraph(const ShelfGraph& graph, std::optional<Day> today, const QString& inWords) {
    graph_ = graph;
    today_ = today;
    setAccessibleName(inWords);
    update();
}

void FreeGraph::setDated(bool dated) {
    dated_ = dated;
    setMinimumHeight(grid(dated ? 18 : 13));
    update();
}

double FreeGraph::xOf(Day day) const {
    return dayX(day, graph_.first, graph_.last, width());
}

void FreeGraph::paintEvent(QPaintEvent*) {
    QPainter p(this);
    p.setRenderHint(QPainter::Antialiasing);
    const auto& palette = currentPalette();
    p.setFont(typeFont(TypeRole::caption));
    const QFontMetricsF metrics(p.font());
    const double foot = dated_ ? height() - metrics.height() - 1 : height();
    if (dated_) paintAxis(p, {graph_.first, graph_.last, today_}, width(), height() - metrics.descent() - 1);
    p.setFont(typeFont(TypeRole::caption));
    p.setPen(palette.of(Role::line));
    for (const auto week :
         weeksOf(graph_.first, graph_.last, width() - leadWidth(), metrics.horizontalAdvance("30 Sep ")))
        p.drawLine(QPointF(xOf(week), 0), QPointF(xOf(week), foot));
    if (today_) {
        p.setPen(QPen(palette.of(Role::osier), iconLine));
        p.drawLine(QPointF(xOf(*today_), 0), QPointF(xOf(*today_), foot));
    }
    if (!graph_.known) return;
    double least = 0;
    for (const auto& step : graph_.steps)
        least = std::min(least, step.free);
    const double most = std::max(graph_.owned, 1.0);
    const double room = metrics.capHeight() / 2 + grid(0.75);
    const double top = room, bottom = foot - room;
    const double k = (bottom - top) / (most - least);
    const double zero = bottom + least * k;
    const auto y = [&](double free) { return zero - free * k; };
    QPainterPath line(
        QPointF(xOf(graph_.first), y(graph_.steps.empty() ? graph_.owned : graph_.steps.front().free)));
    QPainterPath over;
    for (std::size_t i = 0; i < graph_.steps.size(); ++i) {
        const auto& step = graph_.steps[i];
        const double from = xOf(step.from);
        const double to = i + 1 < graph_.steps.size() ? xOf(graph_.steps[i + 1].from) : xOf(graph_.last + 1);
        line.lineTo(from, y(step.free));
        line.lineTo(to, y(step.free));
        if (step.free < 0) over.addRect(QRectF(QPointF(from, zero), QPointF(to, y(step.free))));
    }
    QPainterPath area = line;
    area.lineTo(xOf(graph_.last + 1), zero);
    area.lineTo(xOf(graph_.first), zero);
    area.closeSubpath();
    p.save();
    p.setClipRect(QRectF(0, 0, width(), zero));
    p.fillPath(area, palette.of(Role::wash));
    p.restore();
    for (std::size_t i = 0; i < graph_.steps.size(); ++i) {
        const auto& step = graph_.steps[i];
        if (step.unsure <= 0) continue;
        const double to = i + 1 < graph_.steps.size() ? xOf(graph_.steps[i + 1].from) : xOf(graph_.last + 1);
        hatchUnsure(p,
                    QRectF(QPointF(xOf(step.from), y(step.free)), QPointF(to, y(step.free - step.unsure))));
    }
    p.setPen(QPen(palette.of(Role::edge), hairline));
    p.drawLine(QPointF(xOf(graph_.first), zero), QPointF(xOf(graph_.last + 1), zero));
    p.setPen(QPen(palette.of(Role::ink2), 1.3));
    p.drawPath(line);
    if (!over.isEmpty()) {
        QPen dashed(palette.of(Role::osier), iconLine);
        dashed.setDashPattern({3, 2});
        p.setPen(dashed);
        p.setBrush(Qt::NoBrush);
        p.drawPath(over);
    }
    p.setPen(palette.of(Role::ink3));
    const auto figure = [&](double value) {
        const QString words = QString::number(value, 'g', 5);
        p.drawText(QPointF(leadWidth() - grid(1.5) - metrics.horizontalAdvance(words),
                           y(value) + metrics.capHeight() / 2),
                   words);
    };
    figure(graph_.owned);
    if (y(0) - y(graph_.owned) > metrics.height() * 0.8) figure(0);
}

FreeAxis::FreeAxis(QWidget* parent) : QWidget(parent) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

QSize FreeAxis::sizeHint() const {
    return {grid(20), grid(6)};
}

void FreeAxis::setSpan(const ShelfSpan& span) {
    span_ = span;
    setAccessibleName(shortDay(span.first) + QStringLiteral(" – ") + shortDay(span.last));
    update();
}

void FreeAxis::paintEvent(QPaintEvent*) {
    QPainter p(this);
    paintAxis(p, span_, width(), height() - QFontMetricsF(typeFont(TypeRole::caption)).descent() - 1);
}

} // namespace withy::ui
