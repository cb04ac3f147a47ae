// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/actions.h"

#include "ui/common/widget_parts.h"

#include <QWidget>

namespace withy::ui {

Actions::Actions(QWidget* window) : QObject(window), window_(window) {}

QAction* Actions::add(const What& what, std::function<void()> act) {
    Q_ASSERT(!find(QString::fromLatin1(what.id)));
    auto* action = new QAction(what.words, this);
    action->setObjectName(QString::fromLatin1(what.id));
    action->setShortcut(what.keys);
    const QString plain = withoutMnemonic(what.words);
    const QString tip = what.tip.isEmpty() ? plain : what.tip;
    action->setStatusTip(tip);
    action->setToolTip(
        what.keys.isEmpty() ? tip : tr("%1 (%2)").arg(tip, what.keys.toString(QKeySequence::NativeText)));
    connect(action, &QAction::triggered, this, [act = std::move(act)] { act(); });
    window_->addAction(action);
    all_.push_back(action);
    return action;
}

QAction* Actions::find(const QString& id) const {
    for (auto* action : all_) {
        if (action->objectName() == id) return action;
    }
    return nullptr;
}

void Actions::keepFirst(std::size_t count) {
    while (all_.size() > count) {
        window_->removeAction(all_.back());
        delete all_.back();
        all_.pop_back();
    }
}

} // namespace withy::ui
