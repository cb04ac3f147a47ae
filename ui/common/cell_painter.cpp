// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/cell_painter.h"

#include "ui/common/style.h"
#include "ui/logic/fields/field_text.h"
#include "ui/logic/models/record_table_model.h"
#include "ui/paint/spacing.h"
#include "ui/paint/type.h"

#include <QApplication>
#include <QPainter>
#include <QTableView>

namespace withy::ui {

namespace {

QColor col(Role role) {
    return currentPalette().of(role);
}

void paintSwatch(QPainter& p, QRect& room, const QColor& colour) {
    const int side = grid(3);
    const QRectF round(room.left(), room.center().y() - side / 2.0 + 0.5, side, side);
    p.setPen(QPen(currentPalette().bloomEdge(colour), hairline));
    p.setBrush(colour);
    p.drawEllipse(round);
    p.setBrush(Qt::NoBrush);
    room.setLeft(room.left() + side + grid(2));
}

void paintTick(QPainter& p, const QRect& box, bool on) {
    p.setPen(QPen(on ? col(Role::green) : col(Role::edge), 1.3));
    p.setBrush(col(Role::sheet));
    p.drawRoundedRect(QRectF(box).adjusted(0.5, 0.5, -0.5, -0.5), corner, corner);
    p.setBrush(Qt::NoBrush);
    if (!on) return;
    p.setPen(QPen(col(Role::green), 2.2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    const double w = box.width();
    p.drawPolyline(QPolygonF{QPointF(box.left() + w * 0.22, box.top() + w * 0.55),
                             QPointF(box.left() + w * 0.43, box.top() + w * 0.75),
                             QPointF(box.left() + w * 0.8, box.top() + w * 0.28)});
}

void paintWords(QPainter& p, const QRect& room, const QModelIndex& index, const QString& words) {
    const bool wrong = !index.data(RecordTableModel::SentenceRole).toString().isEmpty();
    const auto align = index.data(Qt::TextAlignmentRole).value<Qt::Alignment>();
    const QFont font = typeFont(TypeRole::text);
    p.setFont(font);
    p.setPen(col(wrong ? Role::osier : Role::ink));
    QString line = words;
    line.replace(QLatin1Char('\n'), QLatin1Char(' '));
    const QString shown = QFontMetrics(font).elidedText(line.left(2000), Qt::ElideRight, room.width());
    p.drawText(room, static_cast<int>(align | Qt::TextSingleLine), shown);
    const bool opens = !index.data(RecordTableModel::WorkingRole).toString().isEmpty();
    if (!wrong && !opens) return;
    const QRect text = QFontMetrics(font).boundingRect(room, static_cast<int>(align), shown);
    p.setPen(wrong ? QPen(col(Role::osier), 2) : QPen(col(Role::edge), hairline, Qt::DotLine));
    p.drawLine(QPointF(text.left(), text.bottom() + 2.5), QPointF(text.right() + 1, text.bottom() + 2.5));
}

/// The blank row says in its first cell what typing there makes.
void paintPrompt(QPainter& p, const QRect& room, const QString& words) {
    p.setFont(typeFont(TypeRole::text));
    p.setPen(col(Role::ink3));
    p.drawText(room, Qt::AlignVCenter | Qt::AlignLeft | Qt::TextSingleLine, words);
}

void paintBlank(QPainter& p, const QRect& room, bool figure) {
    const int wide = std::min(room.width(), grid(10));
    const double y = room.center().y() + grid(2);
    const double from = figure ? room.right() - wide : room.left();
    p.setPen(QPen(col(Role::edge), hairline, Qt::DashLine));
    p.drawLine(QPointF(from, y + 0.5), QPointF(from + wide, y + 0.5));
}

} // namespace

QRect tickRect(const QStyleOptionViewItem& option) {
    const int side = grid(4);
    return {option.rect.left() + grid(2), option.rect.center().y() - side / 2, side, side};
}

int cellWidth(const QStyleOptionViewItem& option, const QModelIndex& index) {
    const int words =
        QFontMetrics(typeFont(TypeRole::text)).horizontalAdvance(index.data().toString().left(200));
    const bool swatch = index.data(RecordTableModel::ColourRole).value<QColor>().isValid();
    Q_UNUSED(option)
    return words + grid(4) + (swatch ? grid(5) : 0) + 2;
}

void paintCell(QPainter& p, const QStyleOptionViewItem& option, const QModelIndex& index,
               const RecordTableModel& model) {
    p.save();
    p.setRenderHint(QPainter::Antialiasing);
    const bool chosen = option.state.testFlag(QStyle::State_Selected);
    const bool inHand = option.state.testFlag(QStyle::State_HasFocus);
    const bool over = option.state.testFlag(QStyle::State_MouseOver);
    if (chosen) p.fillRect(option.rect, col(Role::wash));
    p.setPen(QPen(col(Role::line), hairline));
    p.drawLine(QPointF(option.rect.left(), option.rect.bottom() + 0.5),
               QPointF(option.rect.right() + 1, option.rect.bottom() + 0.5));
    QRect room = option.rect.adjusted(grid(2), 0, -grid(2), -1);
    const auto colour = index.data(RecordTableModel::ColourRole).value<QColor>();
    const QString words = index.data(Qt::DisplayRole).toString();
    const auto tick = index.data(Qt::CheckStateRole);
    const bool editable = index.flags().testFlag(Qt::ItemIsEditable);
    if (colour.isValid()) paintSwatch(p, room, colour);
    if (tick.isValid() && !model.isAddRow(index.row()))
        paintTick(p, tickRect(option), tick.toInt() == Qt::Checked);
    else if (!words.isEmpty())
        paintWords(p, room, index, words);
    else if (model.isAddRow(index.row()) && index.column() == 0)
        paintPrompt(p, room, model.addPrompt());
    else if (editable && (chosen || over))
        paintBlank(p, room,
                   index.data(Qt::TextAlignmentRole).value<Qt::Alignment>().testFlag(Qt::AlignRight));
    if (inHand) {
        p.setPen(QPen(col(Role::green), focusRing));
        p.drawRoundedRect(QRectF(option.rect).adjusted(1, 1, -1, -2), corner, corner);
    }
    p.restore();
}

} // namespace withy::ui
