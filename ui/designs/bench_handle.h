// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "ui/designs/elevation.h"
#endif

#include <QWidget>

namespace withy::ui {

/// A knob on the drawing. Pulled with the mouse, or moved by the arrow keys while it has the focus: a
/// millimetre a press, ten with Page Up and Page Down. Each gesture ends in one change: when the button or
/// the key is let go.
class BenchKnob : public QWidget {
    Q_OBJECT

public:
    explicit BenchKnob(BenchHandle handle, QWidget* parent);

    [[nodiscard]] BenchHandle handle() const { return handle_; }

    /// What it measures now, for its name and its tip.
    void say(const QString& words);
    void standAt(QPointF middle);

Q_SIGNALS:
    void pulled(QPointF to);      ///< in the parent's coordinates
    void nudged(int millimetres); ///< by a key
    void letGo();                 ///< keep what is shown
    void given();                 ///< Escape: back to what it was

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyReleaseEvent(QKeyEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void enterEvent(QEnterEvent* event) override;
    void leaveEvent(QEvent* event) override;

private:
    void end();

    BenchHandle handle_;
    QPointF held_; ///< where in the knob it was taken
    bool pulling_ = false;
    bool nudging_ = false;
    bool hovered_ = false;
};

} // namespace withy::ui
