// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/designs/slot_head.h"

#include "ui/common/style.h"
#include "ui/designs/bloom_dot.h"
#include "ui/paint/spacing.h"

#include <QKeyEvent>
#include <QPainter>

#include <algorithm>

namespace withy::ui {

namespace {

int wordsLeft() {
    return grid(6); // beside the dot
}

} // namespace

SlotHead::SlotHead(QWidget* parent) : QAbstractButton(parent) {
    setCheckable(true);
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
    QSizePolicy grows(QSizePolicy::Expanding, QSizePolicy::Preferred);
    grows.setHeightForWidth(true); // the plants take a second line where they need one
    setSizePolicy(grows);
}

void SlotHead::setWords(int number, const QString& label, const QString& plants, const QString& accessible) {
    label_ = tr("%1  %2").arg(QString::number(number), label);
    plants_ = plants;
    updateGeometry();
    setAccessibleName(accessible);
    setToolTip(tr("Alt+Up and Alt+Down move it, Delete takes it out"));
    update();
}

void SlotHead::setColour(const QColor& colour) {
    colour_ = colour;
    update();
}

QSize SlotHead::sizeHint() const {
    return {grid(40), heightForWidth(std::max(width(), grid(40)))};
}

QSize SlotHead::minimumSizeHint() const {
    return {grid(24), heightForWidth(std::max(width(), grid(24)))};
}

int SlotHead::heightForWidth(int width) const {
    const QFontMetrics strong(typeFont(TypeRole::strong)), caption(typeFont(TypeRole::caption));
    const QRect room(0, 0, std::max(1, width - wordsLeft() - grid(1)), grid(100));
    const QRect plants = caption.boundingRect(room, Qt::TextWordWrap, plants_);
    return strong.height() + std::max(caption.height(), plants.height()) + grid(3);
}

void SlotHead::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    const auto& palette = currentPalette();
    const QFont strong = typeFont(TypeRole::strong), caption = typeFont(TypeRole::caption);
    const QFontMetrics first(strong);
    const int left = wordsLeft(), room = width() - left - grid(1);
    paintDot(painter, QRectF(grid(0.5), grid(1.5) + first.height() * 0.5 - grid(1.75), grid(3.5), grid(3.5)),
             colour_);
    painter.setPen(palette.of(Role::ink));
    painter.setFont(strong);
    painter.drawText(left, grid(1.5) + first.ascent(), first.elidedText(label_, Qt::ElideRight, room));
    painter.setPen(palette.of(Role::ink2));
    painter.setFont(caption);
    painter.drawText(QRect(left, grid(1.5) + first.height(), room, height()), Qt::TextWordWrap, plants_);
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
