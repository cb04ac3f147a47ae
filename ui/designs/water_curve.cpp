// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/designs/water_curve.h"

#include "ui/common/figure.h"
#include "ui/common/style.h"
#include "ui/common/text_label.h"
#include "ui/logic/measures.h"
#include "ui/paint/spacing.h"

#include <QHBoxLayout>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace withy::ui {

WaterCurve::WaterCurve(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("designs.waterCurve"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void WaterCurve::setView(const WaterView& view) {
    view_ = view;
    setAccessibleName(tr("The water's level over time"));
    setAccessibleDescription(view.means);
    setToolTip(view.means);
    update();
}

QSize WaterCurve::sizeHint() const {
    return {grid(70), grid(22)};
}

QSize WaterCurve::minimumSizeHint() const {
    return {grid(40), grid(22)};
}

QRectF WaterCurve::plot() const {
    const QFontMetricsF metrics(typeFont(TypeRole::caption));
    const double left = metrics.horizontalAdvance(QStringLiteral("000")) + grid(2);
    return QRectF(left, grid(2), width() - left - grid(1), height() - grid(3) - metrics.height());
}

QPointF WaterCurve::at(double hours, double mm) const {
    const QRectF area = plot();
    return {area.left() + hours / std::max(view_.hours, 1e-6) * area.width(),
            area.bottom() - mm / std::max(view_.depth, 1.0) * area.height()};
}

void WaterCurve::paintLevel(QPainter& p) const {
    const auto& palette = currentPalette();
    QPainterPath line, body;
    body.moveTo(at(0, 0));
    for (std::size_t i = 0; i < view_.curve.size(); ++i) {
        const QPointF here = at(view_.curve[i].hours, view_.curve[i].level);
        body.lineTo(here);
        i == 0 ? line.moveTo(here) : line.lineTo(here);
    }
    body.lineTo(at(view_.hours, 0));
    body.closeSubpath();
    p.fillPath(body, palette.of(Role::water));
    p.setBrush(Qt::NoBrush);
    p.setPen(QPen(palette.of(Role::waterEdge), 1.7));
    p.drawPath(line);
    // The stem ends: dashed once the water has left them.
    const double until = view_.dry.value_or(view_.hours);
    p.setPen(QPen(palette.of(Role::ink2), hairline));
    p.drawLine(at(0, view_.stemEnds), at(until, view_.stemEnds));
    if (!view_.dry) return;
    p.setPen(QPen(palette.of(Role::osier), 2, Qt::DashLine));
    p.drawLine(at(until, view_.stemEnds), at(view_.hours, view_.stemEnds));
}

void WaterCurve::paintMoments(QPainter& p) const {
    const auto& palette = currentPalette();
    p.setPen(QPen(palette.of(Role::edge), hairline, Qt::DotLine));
    for (const double turn : view_.turns)
        p.drawLine(at(turn, 0), at(turn, view_.depth));
    p.setFont(typeFont(TypeRole::caption));
    const QFontMetricsF metrics(p.font());
    p.setPen(palette.of(Role::ink3));
    for (qsizetype i = 0; i < view_.phases.size(); ++i) {
        const double from = i == 0 ? 0 : view_.turns[static_cast<std::size_t>(i - 1)];
        const double to =
            i + 1 == view_.phases.size() ? view_.hours : view_.turns[static_cast<std::size_t>(i)];
        const double room = at(to, 0).x() - at(from, 0).x();
        if (metrics.horizontalAdvance(view_.phases[i]) + grid(2) > room) continue;
        p.drawText(QPointF(at(from, 0).x() + grid(1), plot().top() + metrics.ascent()), view_.phases[i]);
    }
    if (!view_.topUp || *view_.topUp > view_.hours) return;
    // Short upright with a solid foot: the moment to be there with the can.
    const QPointF top = at(*view_.topUp, view_.depth), foot = at(*view_.topUp, 0);
    p.setPen(QPen(palette.of(view_.warns ? Role::osier : Role::ink), 1.7));
    p.drawLine(top, foot);
    p.setBrush(palette.of(view_.warns ? Role::osier : Role::ink));
    p.setPen(Qt::NoPen);
    p.drawEllipse(foot, grid(1), grid(1));
}

void WaterCurve::paintFoot(QPainter& p) const {
    const auto& palette = currentPalette();
    const QRectF area = plot();
    p.setPen(QPen(palette.of(Role::edge), hairline));
    p.drawLine(area.bottomLeft(), area.bottomRight());
    p.drawLine(area.topLeft(), area.bottomLeft());
    p.setFont(typeFont(TypeRole::caption));
    const QFontMetricsF metrics(p.font());
    p.setPen(palette.of(Role::ink3));
    const auto beside = [&](double mm) {
        const double y = std::clamp(at(0, mm).y(), area.top() + metrics.height() / 2, area.bottom());
        p.drawText(QRectF(0, y - metrics.height() / 2, area.left() - grid(1), metrics.height()),
                   Qt::AlignRight | Qt::AlignVCenter, lengthFigure(mm, view_.units));
    };
    if (!view_.curve.empty()) beside(view_.curve.front().level);
    if (view_.curve.empty() ||
        std::abs(at(0, view_.curve.front().level).y() - at(0, view_.stemEnds).y()) > metrics.height())
        beside(view_.stemEnds);
    const QRectF below(area.left(), area.bottom() + grid(1), area.width(), metrics.height());
    const QString from = view_.from.isEmpty() ? tr("filled") : view_.from;
    const QString to = view_.to.isEmpty()
                           ? tr("%n hour(s) on", nullptr, static_cast<int>(std::lround(view_.hours)))
                           : view_.to;
    p.drawText(below, Qt::AlignLeft, from);
    if (metrics.horizontalAdvance(from) + metrics.horizontalAdvance(to) + grid(3) < below.width())
        p.drawText(below, Qt::AlignRight, to);
}

void WaterCurve::paintEvent(QPaintEvent*) {
    if (view_.empty() || plot().width() < 10) return;
    QPainter p(this);
    p.setRenderHint(QPainter::Antialiasing);
    paintLevel(p);
    paintFoot(p);
    paintMoments(p);
}

WaterPanel::WaterPanel(QWidget* parent)
    : QWidget(parent)
    , head_(new TextLabel(TypeRole::strong))
    , litres_(new FigureButton)
    , curve_(new WaterCurve)
    , words_(new TextLabel(TypeRole::caption, {}, Ink::caption))
    , working_(new WorkingPanel) {
    head_->setObjectName(QStringLiteral("designs.waterHead"));
    head_->setWordWrap(true);
    litres_->setObjectName(QStringLiteral("designs.waterLitres"));
    words_->setObjectName(QStringLiteral("designs.waterWords"));
    words_->setWordWrap(true);
    working_->hide();
    auto* line = new QHBoxLayout;
    line->addWidget(head_, 1);
    line->addWidget(litres_, 0, Qt::AlignTop);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(grid(1));
    column->addLayout(line);
    column->addWidget(working_);
    column->addWidget(curve_);
    column->addWidget(words_);
    connect(litres_, &FigureButton::opened, working_, &QWidget::setVisible);
}

void WaterPanel::setView(const WaterView& view) {
    setVisible(!view.empty());
    if (view.empty()) return;
    head_->setText(view.head);
    head_->setInk(view.warns ? Ink::osier : Ink::text);
    litres_->setVisible(!view.litres.isEmpty());
    const FigureFacts facts{view.litres, tr("to carry and top up with"), view.working, std::nullopt, {}, {},
                            view.units};
    litres_->setFacts(facts);
    working_->setFacts(facts);
    curve_->setView(view);
    words_->setText(view.sentences.join(QLatin1Char(' ')));
}

} // namespace withy::ui
