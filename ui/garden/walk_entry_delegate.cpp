// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/garden/walk_entry_delegate.h"

#include "ui/garden/row_paint.h"
#include "ui/logic/models/walk_entry_model.h"
#include "ui/paint/spacing.h"
#include "ui/paint/type.h"

#include <QPainter>

namespace withy::ui {

namespace {

using WalkModel = WalkEntryModel;

/// The patch's number on the dotted walk: solid once counted.
void paintNumber(QPainter& p, const QRect& room, const QModelIndex& index) {
    const QString number = index.data(WalkModel::NumberRole).toString();
    const int side = grid(6);
    const QPointF middle(room.left() + side / 2.0, room.center().y() + 0.5);
    p.setPen(QPen(col(Role::ink2), 1.3, Qt::DotLine));
    if (index.row() > 0) p.drawLine(QPointF(middle.x(), room.top()), middle);
    if (index.row() + 1 < index.model()->rowCount())
        p.drawLine(middle, QPointF(middle.x(), room.bottom() + 1));
    if (number.isEmpty()) return;
    const bool counted = index.data(WalkModel::CountedRole).toBool();
    const QRectF disc(middle.x() - side / 2.0, middle.y() - side / 2.0, side, side);
    p.setPen(QPen(col(Role::ink), 1.3));
    p.setBrush(counted ? col(Role::ink) : col(Role::paper));
    p.drawEllipse(disc);
    p.setBrush(Qt::NoBrush);
    p.setFont(typeFont(TypeRole::caption));
    p.setPen(counted ? col(Role::paper) : col(Role::ink));
    p.drawText(disc, Qt::AlignCenter, number);
}

void paintPatch(QPainter& p, const QRect& cell, const QModelIndex& index) {
    const QRect room = cell.adjusted(grid(1), 0, -grid(1), -1);
    paintNumber(p, room, index);
    QRect name = room.adjusted(grid(9), grid(1), 0, 0);
    name.setHeight(room.height() / 2 - grid(1));
    QRect plant = name.translated(0, name.height());
    drawWords(p, name, TypeRole::name, Role::ink, index.data().toString());
    const auto bloom = index.data(WalkModel::ColourRole).value<QColor>();
    if (bloom.isValid()) {
        const int side = grid(3);
        p.setPen(QPen(currentPalette().bloomEdge(bloom), hairline));
        p.setBrush(bloom);
        p.drawEllipse(QRectF(plant.left(), plant.center().y() - side / 2.0 + 0.5, side, side));
        p.setBrush(Qt::NoBrush);
        plant.setLeft(plant.left() + side + grid(1.5));
    }
    drawWords(p, plant, TypeRole::text, Role::ink2, index.data(WalkModel::PlantRole).toString());
}

void paintCount(QPainter& p, const QRect& cell, const QModelIndex& index) {
    const QRect box = WalkEntryDelegate::boxIn(cell);
    const QString count = index.data().toString();
    const bool wrong = !index.data(WalkModel::SentenceRole).toString().isEmpty();
    const bool odd = !index.data(WalkModel::CautionRole).toString().isEmpty();
    const bool asks = wrong || odd;
    QPen pen(asks ? col(Role::osier) : col(Role::edge), asks ? 2 : hairline);
    if (count.isEmpty()) pen.setStyle(Qt::DashLine);
    p.setPen(pen);
    p.setBrush(col(Role::sheet));
    p.drawRoundedRect(QRectF(box).adjusted(0.5, 0.5, -0.5, -0.5), corner, corner);
    p.setBrush(Qt::NoBrush);
    drawWords(p, box.adjusted(grid(1), 0, -grid(2), 0), TypeRole::answer, wrong ? Role::osier : Role::ink,
              count, Qt::AlignRight | Qt::AlignVCenter);
    const QString expected = index.data(WalkModel::ExpectedRole).toString();
    if (expected.isEmpty()) return;
    drawWords(
        p, QRect(box.right() + grid(1.5), cell.top(), cell.right() - box.right() - grid(1.5), cell.height()),
        TypeRole::caption, Role::ink3, WalkEntryDelegate::tr("of %1").arg(expected));
}

void paintRemark(QPainter& p, const QRect& cell, const QModelIndex& index) {
    QRect room = cell.adjusted(grid(2), grid(1), -grid(2), -grid(1));
    const QString odd = index.data(WalkModel::CautionRole).toString();
    const bool wrong = !index.data(WalkModel::SentenceRole).toString().isEmpty();
    if (!odd.isEmpty()) {
        QRect below = room;
        below.setTop(room.center().y());
        drawWords(p, below, TypeRole::caption, Role::osier, odd);
        room.setBottom(room.center().y());
    }
    drawWords(p, room, TypeRole::text, wrong ? Role::osier : Role::ink2, index.data().toString());
}

} // namespace

int walkRowHeight() {
    return std::max(listRow(), QFontMetrics(typeFont(TypeRole::name)).height() +
                                   QFontMetrics(typeFont(TypeRole::text)).height() + grid(2));
}

QRect WalkEntryDelegate::boxIn(const QRect& cell) {
    const int height = std::min(cell.height() - grid(2), grid(9));
    const int width = std::min(cell.width() - grid(3), grid(16));
    return {cell.left() + grid(1), cell.center().y() - height / 2, width, height};
}

void WalkEntryDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                              const QModelIndex& index) const {
    QPainter& p = *painter;
    p.save();
    p.setRenderHint(QPainter::Antialiasing);
    drawRowGround(p, option);
    if (index.column() == WalkModel::PatchColumn)
        paintPatch(p, option.rect, index);
    else if (WalkModel::isCount(index.column()))
        paintCount(p, option.rect, index);
    else if (index.column() == WalkModel::RemarkColumn)
        paintRemark(p, option.rect, index);
    else
        drawWords(p, option.rect.adjusted(grid(2), 0, -grid(2), 0), TypeRole::caption, Role::ink2,
                  index.data().toString());
    p.restore();
}

QSize WalkEntryDelegate::sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const {
    const QFontMetrics name(typeFont(TypeRole::name));
    const QFontMetrics plain(typeFont(TypeRole::text));
    if (index.column() == WalkModel::PatchColumn)
        return {grid(14) + std::max(name.horizontalAdvance(index.data().toString().left(60)),
                                    grid(5) + plain.horizontalAdvance(
                                                  index.data(WalkModel::PlantRole).toString().left(60))),
                walkRowHeight()};
    if (WalkModel::isCount(index.column())) return {grid(31), walkRowHeight()};
    return {plain.horizontalAdvance(index.data().toString().left(200)) + grid(4), walkRowHeight()};
}

} // namespace withy::ui
