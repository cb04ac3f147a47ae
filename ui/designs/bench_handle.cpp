// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/designs/bench_handle.h"

#include "ui/common/style.h"
#include "ui/paint/spacing.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

namespace withy::ui {

namespace {

const char* knobName(BenchHandle handle) {
    switch (handle) {
    case BenchHandle::tall:
        return "designs.knob.tall";
    case BenchHandle::middle:
        return "designs.knob.middle";
    case BenchHandle::low:
        return "designs.knob.low";
    case BenchHandle::neck:
        return "designs.knob.neck";
    case BenchHandle::spread:
        return "designs.knob.spread";
    case BenchHandle::lift:
        return "designs.knob.lift";
    }
    return "";
}

/// Millimetres a key moves it by; nought: no key of a knob.
int stepOf(BenchHandle handle, int key) {
    const bool across = handle == BenchHandle::spread;
    switch (key) {
    case Qt::Key_Up:
    case Qt::Key_Right:
        return across ? 2 : 1; // the spread has two sides
    case Qt::Key_Down:
    case Qt::Key_Left:
        return across ? -2 : -1;
    case Qt::Key_PageUp:
        return 10;
    case Qt::Key_PageDown:
        return -10;
    default:
        return 0;
    }
}

} // namespace

BenchKnob::BenchKnob(BenchHandle handle, QWidget* parent) : QWidget(parent), handle_(handle) {
    setObjectName(QLatin1String(knobName(handle)));
    setFocusPolicy(Qt::StrongFocus);
    setCursor(handle == BenchHandle::spread ? Qt::SizeHorCursor : Qt::SizeVerCursor);
    resize(grid(5), grid(5));
}

void BenchKnob::say(const QString& words) {
    setAccessibleName(words);
    setAccessibleDescription(tr("Arrow keys move it a little, Page Up and Page Down ten times as far"));
    setToolTip(tr("%1. Pull it, or use the arrow keys").arg(words));
}

void BenchKnob::standAt(QPointF middle) {
    resize(grid(5), grid(5));
    move((middle - QPointF(width() / 2.0, height() / 2.0)).toPoint());
}

void BenchKnob::paintEvent(QPaintEvent*) {
    QPainter p(this);
    p.setRenderHint(QPainter::Antialiasing);
    const auto& palette = currentPalette();
    const QPointF middle(width() / 2.0, height() / 2.0);
    const bool lit = hovered_ || pulling_ || hasFocus();
    const double r = grid(1) * (lit ? 1.5 : 1.2);
    p.setPen(QPen(palette.of(Role::green), 1.7));
    p.setBrush(lit ? palette.of(Role::green) : palette.of(Role::sheet));
    p.drawEllipse(middle, r, r);
    if (!hasFocus()) return;
    p.setBrush(Qt::NoBrush);
    p.setPen(QPen(palette.of(Role::green), focusRing));
    p.drawEllipse(middle, width() / 2.0 - 1, height() / 2.0 - 1);
}

void BenchKnob::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton) return;
    end();
    pulling_ = true;
    held_ = event->position() - QPointF(width() / 2.0, height() / 2.0);
    setFocus(Qt::MouseFocusReason);
    update();
}

void BenchKnob::mouseMoveEvent(QMouseEvent* event) {
    if (pulling_) Q_EMIT pulled(mapToParent(event->position()) - held_);
}

void BenchKnob::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton || !pulling_) return;
    pulling_ = false;
    update();
    Q_EMIT letGo();
}

void BenchKnob::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && (pulling_ || nudging_)) {
        pulling_ = nudging_ = false;
        return Q_EMIT given();
    }
    const int step = stepOf(handle_, event->key());
    if (step == 0) return QWidget::keyPressEvent(event);
    nudging_ = true;
    Q_EMIT nudged(step);
}

void BenchKnob::keyReleaseEvent(QKeyEvent* event) {
    if (stepOf(handle_, event->key()) == 0) return QWidget::keyReleaseEvent(event);
    if (!event->isAutoRepeat()) end();
}

void BenchKnob::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    end();
    update();
}

void BenchKnob::end() {
    if (!nudging_) return;
    nudging_ = false;
    Q_EMIT letGo();
}

void BenchKnob::enterEvent(QEnterEvent* event) {
    QWidget::enterEvent(event);
    hovered_ = true;
    update();
}

void BenchKnob::leaveEvent(QEvent* event) {
    QWidget::leaveEvent(event);
    hovered_ = false;
    update();
}

} // namespace withy::ui
