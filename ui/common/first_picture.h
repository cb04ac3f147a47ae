// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QEvent>
#include <QTimer>
#include <QWidget>

#include <functional>
#include <utility>

namespace withy::ui {

/// Does something once, right after the widget has first been painted: what a page can do without in its
/// first picture is made then.
class FirstPicture : public QObject {
public:
    FirstPicture(QWidget* widget, std::function<void()> then) : QObject(widget), then_(std::move(then)) {
        widget->installEventFilter(this);
    }

protected:
    bool eventFilter(QObject* widget, QEvent* event) override {
        if (event->type() != QEvent::Paint) return false;
        widget->removeEventFilter(this);
        QTimer::singleShot(0, widget, std::exchange(then_, nullptr));
        return false;
    }

private:
    std::function<void()> then_;
};

} // namespace withy::ui
