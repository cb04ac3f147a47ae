// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/cell_painter.h"

#include "ui/common/style.h"
#include "ui/common/style/ticks.h"
#include "ui/logic/fields/field_text.h"
#include "ui/logic/models/record_table_model.h"
#include "ui/paint/spacing.h"
#include "ui/paint/type.h"

#include <QApplication>
#include <QPainter>
#include <QTableView>
#include <QTextLayout>

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

/// The words as they fit: on one line, else broken over two where the row is high enough, else shortened.
QString fitted(const QString& words, const QFontMetrics& metrics, const QFont& font, const QRect& room,
               bool mayBreak) {
    if (metrics.horizontalAdvance(words) <= room.width()) return words;
    const auto shortened = [&](const QString& line) {
        return metrics.elidedText(line, Qt::ElideRight, room.width());
    };
    if (!mayBreak || room.height() < 2 * metrics.height()) return shortened(words);
    QTextLayout layout(words, font);
    layout.beginLayout();
    QTextLine first = layout.createLine();
    first.setLineWidth(room.width());
    layout.endLayout();
    const int at = first.textLength();
    return shortened(words.left(at).trimmed()) + QLatin1Char('\n') + shortened(words.mid(at).trimmed());
}

void paintWords(QPainter& p, const QRect& room, const QModelIndex& index, const QString& words, bool asks) {
    const bool wrong = !index.data(RecordTableModel::SentenceRole).toString().isEmpty();
    const auto align = index.data(Qt::TextAlignmentRole).value<Qt::Alignment>();
    const QFont font = typeFont(asks ? TypeRole::strong : TypeRole::text);
    p.setFont(font);
    p.setPen(col(wrong || asks ? Role::osier : Role::ink));
    QString line = words;
    line.replace(QLatin1Char('\n'), QLatin1Char(' '));
    const QString shown =
        fitted(line.left(2000), QFontMetrics(font), font, room, align.testFlag(Qt::AlignLeft));
    p.drawText(room, static_cast<int>(align), shown);
    if (!wrong) return;
    const QRect text = QFontMetrics(font).boundingRect(room, static_cast<int>(align), shown);
    p.setPen(QPen(col(Role::osier), 2));
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
    const int side = tickSide();
    return {option.rect.left() + grid(2), option.rect.center().y() - side / 2, side, side};
}

int wordsWidth(const QString& words) {
    return QFontMetrics(typeFont(TypeRole::text)).horizontalAdvance(words.left(200)) + grid(4) + 2;
}

QString shownWords(const QModelIndex& index, const RecordTableModel& model) {
    const auto* field = model.fieldAt(index.column());
    QString words = index.data(Qt::DisplayRole).toString();
    if (!field || !index.data(RecordTableModel::SentenceRole).toString().isEmpty()) return words;
    const bool day = field->kind == model::FieldKind::day || field->kind == model::FieldKind::localTime;
    const auto& settings = model.bench().season().theSettings();
    if (day && settings.firstDay.year() == settings.lastDay.year())
        words.remove(QLatin1Char(' ') + QString::number(settings.lastDay.year()));
    return words;
}

int cellWidth(const QModelIndex& index, const RecordTableModel& model) {
    const bool swatch = index.data(RecordTableModel::ColourRole).value<QColor>().isValid();
    return wordsWidth(shownWords(index, model)) + (swatch ? grid(5) : 0);
}

void paintCell(QPainter& p, const QStyleOptionViewItem& option, const QModelIndex& index,
               const RecordTableModel& model, bool asks) {
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
    const QString words = shownWords(index, model);
    const auto tick = index.data(Qt::CheckStateRole);
    const bool editable = index.flags().testFlag(Qt::ItemIsEditable);
    if (colour.isValid()) paintSwatch(p, room, colour);
    if (tick.isValid() && !model.isAddRow(index.row()))
        paintTickBox(p, tickRect(option),
                     QStyle::State_Enabled |
                         (tick.toInt() == Qt::Checked ? QStyle::State_On : QStyle::State_Off));
    else if (!words.isEmpty())
        paintWords(p, room, index, words, asks);
    else if (model.isAddRow(index.row()) && index.column() == 0)
        paintPrompt(p, room, model.addPrompt());
    else if (editable && (chosen || over) && !colour.isValid())
        paintBlank(p, room,
                   index.data(Qt::TextAlignmentRole).value<Qt::Alignment>().testFlag(Qt::AlignRight));
    if (inHand) {
        p.setPen(QPen(col(Role::green), focusRing));
        p.drawRoundedRect(QRectF(option.rect).adjusted(1, 1, -1, -2), corner, corner);
    }
    p.restore();
}

} // namespace withy::ui
