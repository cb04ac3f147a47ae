// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/segments.h"

#include "ui/bookings/tabs/flow_row.h"
#include "ui/paint/spacing.h"

#include <QButtonGroup>
#include <QFocusEvent>
#include <QHBoxLayout>
#include <QIcon>
#include <QPushButton>

namespace withy::ui {

Segments::Segments(const QString& accessibleName, const QStringList& words, Look look, QWidget* parent)
    : QWidget(parent), group_(new QButtonGroup(this)) {
    setAccessibleName(accessibleName);
    auto* row = look == Look::tabs ? static_cast<QLayout*>(new FlowRow(this)) : new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(look == Look::tabs ? grid(5) : 0);
    for (const auto& word : words) {
        auto* button = new QPushButton(word);
        button->setCheckable(true);
        button->setProperty("look", look == Look::tabs ? QStringLiteral("tab") : QStringLiteral("segment"));
        button->setAccessibleName(tr("%1: %2").arg(accessibleName, word));
        button->installEventFilter(this);
        row->addWidget(button);
        group_->addButton(button, count());
    }
    QSizePolicy policy(look == Look::tabs ? QSizePolicy::Preferred : QSizePolicy::Fixed,
                       look == Look::tabs ? QSizePolicy::Minimum : QSizePolicy::Fixed);
    policy.setHeightForWidth(look == Look::tabs); // in two lines where one is too short
    setSizePolicy(policy);
    setCurrent(0);
    connect(group_, &QButtonGroup::idToggled, this, [this](int id, bool on) {
        if (!on) return;
        tabToChosen();
        Q_EMIT chosen(id);
    });
}

int Segments::current() const {
    return group_->checkedId();
}

int Segments::count() const {
    return static_cast<int>(group_->buttons().size());
}

void Segments::setCurrent(int index) {
    const QSignalBlocker quiet(group_);
    if (auto* button = group_->button(index)) button->setChecked(true);
    tabToChosen();
}

void Segments::tabToChosen() {
    for (auto* button : group_->buttons()) {
        button->setFocusPolicy(button->isChecked() ? Qt::StrongFocus : Qt::ClickFocus);
        if (button->hasFocus() && !button->isChecked() && group_->checkedButton())
            group_->checkedButton()->setFocus(Qt::OtherFocusReason); // the ring goes with the choice
    }
}

/// A tab that was clicked bears no ring: that is for who goes by keyboard.
bool Segments::eventFilter(QObject* watched, QEvent* event) {
    auto* button = qobject_cast<QWidget*>(watched);
    const auto mark = [&](bool clicked) {
        if (button->property("clicked").toBool() == clicked) return;
        button->setProperty("clicked", clicked);
        button->update();
    };
    if (button && event->type() == QEvent::FocusIn)
        mark(static_cast<QFocusEvent*>(event)->reason() == Qt::MouseFocusReason);
    else if (button && event->type() == QEvent::KeyPress)
        mark(false);
    return QWidget::eventFilter(watched, event);
}

void Segments::setWords(int index, const QString& words) {
    if (auto* button = group_->button(index)) {
        button->setText(words);
        button->setAccessibleName(tr("%1: %2").arg(accessibleName(), words));
    }
}

} // namespace withy::ui
