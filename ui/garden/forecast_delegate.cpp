// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/garden/forecast_delegate.h"

#include "ui/garden/row_paint.h"
#include "ui/logic/format.h"
#include "ui/logic/models/forecast_rows.h"
#include "ui/paint/patch_mark.h"
#include "ui/paint/spacing.h"
#include "ui/paint/type.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>

namespace withy::ui {

namespace {

void paintPatch(QPainter& p, const QRect& cell, const ForecastRow& row) {
    const int side = grid(6);
    const QRect room = cell.adjusted(grid(1), 0, -grid(1), -1);
    if (!row.number.isEmpty()) {
        const QRectF disc(room.left(), room.center().y() - side / 2.0, side, side);
        paintPatchMark(p, disc, row.number, currentPalette());
    }
    QRect name = room.adjusted(side + grid(2), grid(1), 0, 0);
    name.setHeight(room.height() / 2 - grid(1));
    drawWords(p, name, TypeRole::name, Role::ink, row.name);
    drawWords(p, name.translated(0, name.height()), TypeRole::caption, Role::ink2, row.plant);
}

/// The curve's own scale: what is highest in view fills the row.
class CurvePainter {
public:
    CurvePainter(QPainter& p, const QRect& cell, const ForecastRow& row, const ForecastAxis& axis)
        : p_(p)
        , room_(QRectF(cell).adjusted(grid(2), grid(1.5), -grid(2), -grid(1.5)))
        , row_(row)
        , axis_(axis) {
        for (const auto* line : {&row.curve.usual, &row.curve.hopeful, &row.curve.likely})
            for (std::size_t i = 0; i < line->size(); ++i)
                if (inView(row.curve.from + static_cast<int>(i))) most_ = std::max(most_, (*line)[i]);
        for (const auto& [day, stems] : row.curve.walks)
            if (inView(day)) most_ = std::max(most_, std::min(stems, 2 * most_ + 1));
    }

    void paint(const QRect& cell) {
        p_.save();
        p_.setClipRect(QRectF(room_.left(), cell.top(), room_.width() + 1, cell.height()));
        base();
        band();
        line(row_.curve.usual, QPen(col(Role::ink3), 1, Qt::DotLine));
        line(row_.curve.likely, QPen(ink(), 1.7));
        today(cell);
        walks();
        p_.restore();
    }

private:
    [[nodiscard]] bool inView(Day day) const { return axis_.from <= day && day <= axis_.to; }

    [[nodiscard]] QColor bloom() const { return row_.bloom.isValid() ? row_.bloom : col(Role::ink2); }

    [[nodiscard]] QColor ink() const { return currentPalette().bloomEdge(bloom()); }

    [[nodiscard]] QPointF at(double day, double stems) const {
        return {axis_.x(room_.left(), room_.width(), day), room_.bottom() - room_.height() * stems / most_};
    }

    [[nodiscard]] QPolygonF points(const std::vector<double>& stems) const {
        QPolygonF line;
        for (std::size_t i = 0; i < stems.size(); ++i)
            line << at(row_.curve.from.number + static_cast<double>(i), stems[i]);
        return line;
    }

    void base() {
        p_.setPen(QPen(col(Role::edge), hairline));
        p_.drawLine(QPointF(room_.left(), room_.bottom() + 0.5),
                    QPointF(room_.right(), room_.bottom() + 0.5));
    }

    void band() {
        QPolygonF band = points(row_.curve.hopeful);
        const QPolygonF low = points(row_.curve.cautious);
        if (band.isEmpty()) return;
        for (auto i = low.size(); i > 0; --i)
            band << low[i - 1];
        p_.setPen(Qt::NoPen);
        p_.setBrush(mixed(bloom(), col(Role::paper), 0.45));
        p_.drawPolygon(band);
        p_.setBrush(Qt::NoBrush);
    }

    void line(const std::vector<double>& stems, const QPen& pen) {
        if (stems.empty()) return;
        p_.setPen(pen);
        p_.drawPolyline(points(stems));
    }

    void today(const QRect& cell) {
        if (!axis_.today || !inView(*axis_.today)) return;
        const double x = at(axis_.today->number, 0).x();
        p_.setPen(QPen(col(Role::osier), 1.3));
        p_.drawLine(QPointF(x, cell.top()), QPointF(x, cell.bottom()));
    }

    void walks() {
        const double r = grid(0.8);
        for (const auto& [day, stems] : row_.curve.walks) {
            if (!inView(day)) continue;
            p_.setPen(QPen(col(Role::paper), 1));
            p_.setBrush(col(Role::ink));
            p_.drawEllipse(at(day.number, std::min(stems, most_)), r, r);
        }
        p_.setBrush(Qt::NoBrush);
    }

    QPainter& p_;
    QRectF room_;
    const ForecastRow& row_;
    const ForecastAxis& axis_;
    double most_ = 1;
};

/// First cut: this year's, the usual one below it.
void paintFirst(QPainter& p, const QRect& cell, const ForecastRow& row) {
    QRect room = cell.adjusted(grid(1), grid(1), -grid(2), -grid(1) - 1);
    QRect below = room;
    room.setBottom(room.center().y());
    below.setTop(room.bottom());
    if (row.firstNow.isEmpty()) {
        drawWords(p, cell.adjusted(grid(1), 0, -grid(2), 0), TypeRole::caption, Role::ink3, row.by,
                  Qt::AlignRight | Qt::AlignVCenter);
        return;
    }
    drawWords(p, room, TypeRole::strong, Role::ink, row.firstNow, Qt::AlignRight | Qt::AlignVCenter);
    drawWords(p, below, TypeRole::caption, Role::ink3, ForecastDelegate::tr("usual %1").arg(row.firstUsual),
              Qt::AlignRight | Qt::AlignVCenter);
}

} // namespace

void ForecastDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                             const QModelIndex& index) const {
    const auto* model = qobject_cast<const ForecastModel*>(index.model());
    if (!model) return;
    const auto& row = model->at(index.row());
    QPainter& p = *painter;
    p.save();
    p.setRenderHint(QPainter::Antialiasing);
    drawRowGround(p, option);
    if (index.column() == ForecastModel::PatchColumn)
        paintPatch(p, option.rect, row);
    else if (index.column() == ForecastModel::CurveColumn)
        CurvePainter(p, option.rect, row, axis_).paint(option.rect);
    else if (index.column() == ForecastModel::FirstColumn)
        paintFirst(p, option.rect, row);
    else
        drawWords(p, option.rect.adjusted(grid(1), 0, -grid(2), 0),
                  index.column() == ForecastModel::TodayColumn ? TypeRole::strong : TypeRole::text, Role::ink,
                  index.data().toString(), Qt::AlignRight | Qt::AlignVCenter);
    p.restore();
}

ForecastHeads::ForecastHeads(QWidget* parent) : QHeaderView(Qt::Horizontal, parent) {
    setHighlightSections(false);
    setSectionsClickable(false);
}

void ForecastHeads::setAxis(const ForecastAxis& axis) {
    axis_ = axis;
    viewport()->update();
}

void ForecastHeads::paintSection(QPainter* painter, const QRect& rect, int section) const {
    if (section != ForecastModel::CurveColumn) return QHeaderView::paintSection(painter, rect, section);
    QPainter& p = *painter;
    p.save();
    p.fillRect(rect, col(Role::paper));
    const QFont font = typeFont(TypeRole::caption);
    const QFontMetrics metrics(font);
    p.setFont(font);
    const double left = rect.left() + grid(2);
    const double width = rect.width() - grid(4);
    const auto mark = [&](Day day, const QString& said, Role ink, QRectF avoid) {
        const double wide = metrics.horizontalAdvance(said);
        const double x = std::clamp(axis_.x(left, width, day.number) - wide / 2, left - grid(1),
                                    left + width + grid(1) - wide);
        const QRectF box(x, rect.top(), wide, rect.height());
        if (!avoid.isNull() && box.adjusted(-grid(1), 0, grid(1), 0).intersects(avoid)) return QRectF();
        p.setPen(col(ink));
        p.drawText(box, Qt::AlignCenter | Qt::TextSingleLine, said);
        return box;
    };
    QRectF today;
    if (axis_.today && axis_.from <= *axis_.today && *axis_.today <= axis_.to)
        today = mark(*axis_.today, tr("today, %1").arg(shortDay(*axis_.today).mid(4)), Role::osier, {});
    const int step = axis_.to - axis_.from > 100 ? 31 : 14;
    double free = left - grid(1);
    for (Day d = axis_.from; d <= axis_.to; d = d + 1) {
        const bool tick = step == 14 ? (d - axis_.from) % 14 == 0 : d.dayOfMonth() == 1;
        if (!tick || axis_.x(left, width, d.number) < free) continue;
        const QString said = step == 14 ? shortDay(d).mid(4) : shortDay(d).section(QLatin1Char(' '), 2);
        const QRectF box = mark(d, said, Role::ink3, today);
        if (!box.isNull()) free = box.right() + metrics.horizontalAdvance(said) / 2.0 + grid(2);
    }
    p.setPen(QPen(col(Role::edge), hairline));
    p.drawLine(QPointF(rect.left(), rect.bottom() + 0.5), QPointF(rect.right() + 1, rect.bottom() + 0.5));
    p.restore();
}

} // namespace withy::ui
