// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QEvent>
#include <QWidget>

#include <functional>
#include <utility>

namespace withy::ui {

/// Does a page's refreshing only while it is seen; what was asked for meanwhile is done when it shows.
class WhenSeen : public QObject {
public:
    WhenSeen(QWidget* page, std::function<void()> refresh)
        : QObject(page), page_(page), refresh_(std::move(refresh)) {
        page->installEventFilter(this);
    }

    /// For connections: the object is their context.
    void ask() {
        asked_ = !page_->isVisible();
        if (!asked_) refresh_();
    }

protected:
    bool eventFilter(QObject*, QEvent* event) override {
        if (event->type() == QEvent::Show && std::exchange(asked_, false)) refresh_();
        return false;
    }

private:
    QWidget* page_;
    std::function<void()> refresh_;
    bool asked_ = false;
};

} // namespace withy::ui
