// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/designs/slot_head.h"

#include "ui/common/style.h"
#include "ui/designs/bloom_dot.h"
#include "ui/paint/spacing.h"

#include <QKeyEvent>
#include <QPainter>

namespace withy::ui {

SlotHead::SlotHead(QWidget* parent) : QAbstractButton(parent) {
    setCheckable(true);
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void SlotHead::setWords(int number, const QString& label, const QString& plants, const QString& accessible) {
    label_ = tr("%1  %2").arg(QString::number(number), label);
    plants_ = plants;
    setAccessibleName(accessible);
    setToolTip(tr("Alt+Up and Alt+Down move it, Delete takes it out"));
    update();
}

void SlotHead::setColour(const QColor& colour) {
    colour_ = colour;
    update();
}

QSize SlotHead::sizeHint() const {
    const QFontMetrics strong(typeFont(TypeRole::strong)), caption(typeFont(TypeRole::caption));
    return {grid(40), strong.height() + caption.height() + grid(3)};
}

QSize SlotHead::minimumSizeHint() const {
    return {grid(24), sizeHint().height()};
}

void SlotHead::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const auto& palette = currentPalette();
    const QFont strong = typeFont(TypeRole::strong), caption = typeFont(TypeRole::caption);
    const QFontMetrics first(strong), second(caption);
    const int left = grid(6), room = width() - left - grid(1);
    paintDot(painter, QRectF(grid(0.5), grid(1.5) + first.height() * 0.5 - grid(1.75), grid(3.5), grid(3.5)),
             colour_);
    painter.setPen(palette.of(Role::ink));
    painter.setFont(strong);
    painter.drawText(left, grid(1.5) + first.ascent(), first.elidedText(label_, Qt::ElideRight, room));
    painter.setPen(palette.of(Role::ink2));
    painter.setFont(caption);
    painter.drawText(left, grid(1.5) + first.height() + second.ascent(),
                     second.elidedText(plants_, Qt::ElideRight, room));
    if (!hasFocus()) return;
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(palette.of(Role::green), focusRing));
    painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), corner, corner);
}

void SlotHead::keyPressEvent(QKeyEvent* event) {
    const bool alt = event->modifiers() & Qt::AltModifier;
    const int by = event->key() == Qt::Key_Up ? -1 : event->key() == Qt::Key_Down ? 1 : 0;
    if (by != 0) return alt ? Q_EMIT moveAsked(by) : Q_EMIT stepAsked(by);
    if (event->key() == Qt::Key_Delete) return Q_EMIT eraseAsked();
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) return click();
    QAbstractButton::keyPressEvent(event);
}

} // namespace withy::ui
