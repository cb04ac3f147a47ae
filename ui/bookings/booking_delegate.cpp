// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/booking_delegate.h"

#include "ui/common/cover_mark.h"
#include "ui/common/style.h"
#include "ui/logic/models/booking_list_model.h"
#include "ui/paint/spacing.h"
#include "ui/paint/type.h"

#include <QPainter>

namespace withy::ui {

namespace {

using ListModel = BookingListModel;

int textLeft() {
    return grid(12.5);
}

/// Draws `words` at the right end of `box`, and gives the room that is left.
QRect drawRight(QPainter& p, QRect box, const QString& words, TypeRole type, Role ink) {
    const QFont font = typeFont(type);
    const QFontMetrics metrics(font);
    // A pixel to spare: eliding rounds the other way.
    const int width = std::min(metrics.horizontalAdvance(words) + 2, box.width() * 7 / 10);
    p.setFont(font);
    p.setPen(currentPalette().of(ink));
    p.drawText(QRect(box.right() - width + 1, box.top(), width, box.height()),
               Qt::AlignRight | Qt::AlignVCenter, metrics.elidedText(words, Qt::ElideRight, width));
    box.setRight(box.right() - width - grid(2));
    return box;
}

void drawLeft(QPainter& p, const QRect& box, const QString& words, TypeRole type, Role ink) {
    const QFont font = typeFont(type);
    p.setFont(font);
    p.setPen(currentPalette().of(ink));
    p.drawText(box, Qt::AlignLeft | Qt::AlignVCenter,
               QFontMetrics(font).elidedText(words, Qt::ElideRight, box.width()));
}

/// Shortened before its last clause, which is how it stands.
QString keepingEnd(const QString& words, const QFontMetrics& metrics, int width) {
    const auto at = words.lastIndexOf(QLatin1String(", "));
    if (at < 0 || metrics.horizontalAdvance(words) <= width) return words;
    const QString end = words.mid(at);
    return metrics.elidedText(words.left(at), Qt::ElideRight, width - metrics.horizontalAdvance(end)) + end;
}

/// How well its stems are covered; while that is not known, whether it is mended.
JarMark markOf(const QModelIndex& index) {
    const auto standing = static_cast<model::Standing>(index.data(ListModel::StandingRole).toInt());
    const auto* list = qobject_cast<const ListModel*>(index.model());
    const auto cover = list ? list->coverAt(index.row()) : std::nullopt;
    JarMark mark = coverMark(standing, cover);
    const bool over = mark.cover == Cover::settled;
    if (!cover && !over && index.data(ListModel::AsksRole).toBool()) mark.cover = Cover::missing;
    return mark;
}

} // namespace

QSize BookingDelegate::sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const {
    if (index.data(ListModel::HeadRole).toBool()) {
        const bool bare = narrow_ && index.data(ListModel::ShortHeadRole).toString().isEmpty();
        return {1, bare ? grid(2) : grid(9)};
    }
    return {1, listRow()};
}

void BookingDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                            const QModelIndex& index) const {
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    if (index.data(ListModel::HeadRole).toBool())
        paintHead(*painter, option.rect, index);
    else
        paintBooking(*painter, option, index);
    painter->restore();
}

void BookingDelegate::paintHead(QPainter& p, const QRect& row, const QModelIndex& index) const {
    if (narrow_) {
        const QString month = index.data(ListModel::ShortHeadRole).toString();
        p.setPen(QPen(currentPalette().of(Role::line), hairline));
        if (month.isEmpty()) p.drawLine(row.left(), row.center().y(), row.right(), row.center().y());
        p.setFont(typeFont(TypeRole::strong));
        p.setPen(currentPalette().of(Role::ink));
        p.drawText(row, Qt::AlignCenter, month);
        return;
    }
    QRect box = row.adjusted(pageMargin() * 3 / 4, 0, -grid(4), 0);
    QString head = index.data(Qt::DisplayRole).toString();
    if (const auto fold = index.data(ListModel::FoldRole); fold.isValid())
        head += fold.toBool() ? QStringLiteral("  ▾") : QStringLiteral("  ▸");
    box = drawRight(p, box, index.data(ListModel::FigureRole).toString(), TypeRole::caption, Role::ink2);
    drawLeft(p, box, head, TypeRole::strong, Role::ink);
}

void BookingDelegate::paintBooking(QPainter& p, const QStyleOptionViewItem& option,
                                   const QModelIndex& index) const {
    const QRect row = option.rect;
    const auto& palette = currentPalette();
    if (option.state & QStyle::State_Selected) {
        p.fillRect(row, palette.of(Role::wash));
    } else if (option.state & QStyle::State_MouseOver) {
        p.fillRect(row, palette.of(Role::mist));
    }
    if (option.state & QStyle::State_Selected)
        paintTie(p, QRectF(row.left(), row.top() + row.height() * 0.3, grid(2), row.height() * 0.45),
                 palette.of(Role::green));
    if (narrow_) {
        paintNarrow(p, row, index);
    } else {
        paintJar(p, QRectF(row.left() + grid(4), row.top() + grid(1), grid(7), row.height() - grid(3)),
                 markOf(index), palette);
        const bool asks = index.data(ListModel::AsksRole).toBool();
        QRect box = row.adjusted(textLeft(), grid(1), -grid(4), -grid(1));
        const bool strong = asks || index.data(ListModel::StrongRole).toBool();
        box = drawRight(p, box, index.data(ListModel::StateRole).toString(),
                        strong ? TypeRole::strong : TypeRole::text, asks ? Role::osier : Role::ink);
        const int half = box.height() * 54 / 100;
        drawLeft(p, QRect(box.left(), box.top(), box.width(), half), index.data().toString(), TypeRole::name,
                 Role::ink);
        drawLeft(p, QRect(box.left(), box.top() + half, box.width(), box.height() - half),
                 keepingEnd(index.data(ListModel::SecondRole).toString(),
                            QFontMetrics(typeFont(TypeRole::caption)), box.width()),
                 TypeRole::caption, Role::ink2);
    }
    if ((option.state & QStyle::State_HasFocus) && (option.state & QStyle::State_Selected)) {
        p.setPen(QPen(palette.of(Role::green), focusRing));
        p.setBrush(Qt::NoBrush);
        p.drawRoundedRect(QRectF(row).adjusted(1, 1, -1, -1), corner, corner);
    }
}

void BookingDelegate::paintNarrow(QPainter& p, const QRect& row, const QModelIndex& index) const {
    const bool asks = index.data(ListModel::AsksRole).toBool();
    paintJar(p, QRectF(row.left() + grid(2), row.top() + grid(1), grid(6), row.height() - grid(3)),
             markOf(index), currentPalette());
    p.setFont(typeFont(TypeRole::strong));
    p.setPen(currentPalette().of(asks ? Role::osier : Role::ink));
    p.drawText(row.adjusted(grid(9), 0, 0, 0), Qt::AlignVCenter | Qt::AlignLeft,
               index.data(ListModel::DayRole).toString());
}

} // namespace withy::ui
