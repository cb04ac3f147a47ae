// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/stepper.h"

#include "ui/common/widget_parts.h"
#include "ui/paint/spacing.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QRegularExpressionValidator>

#include <algorithm>

namespace withy::ui {

namespace {

QPushButton* stepButton(const QString& sign) {
    auto* button = new QPushButton(sign);
    button->setProperty("look", QStringLiteral("step"));
    button->setAutoRepeat(true);
    button->setFocusPolicy(Qt::NoFocus); // the arrow keys do the same in the field
    return button;
}

} // namespace

Stepper::Stepper(const QString& accessibleName, QWidget* parent)
    : QWidget(parent)
    , less_(stepButton(QStringLiteral("−")))
    , field_(new QLineEdit)
    , more_(stepButton(QStringLiteral("+"))) {
    field_->setProperty("look", QStringLiteral("step"));
    field_->setAlignment(Qt::AlignCenter);
    onGrid(field_, &QWidget::setFixedWidth, 14);
    field_->setValidator(
        new QRegularExpressionValidator(QRegularExpression(QStringLiteral("[0-9]{0,9}")), field_));
    field_->installEventFilter(this);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(0);
    row->addWidget(less_);
    row->addWidget(field_);
    row->addWidget(more_);
    setFocusProxy(field_);
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    connect(less_, &QPushButton::pressed, this, [this] { step(-1); });
    connect(more_, &QPushButton::pressed, this, [this] { step(1); });
    for (auto* button : {less_, more_})
        connect(button, &QPushButton::released, this, [this, button] {
            if (!button->isDown()) tell();
        });
    connect(field_, &QLineEdit::editingFinished, this, [this] {
        readTyped();
        tell();
    });
    setAccessibleLabel(accessibleName);
    showValue();
}

void Stepper::setAccessibleLabel(const QString& name) {
    setAccessibleName(name);
    field_->setAccessibleName(name);
    less_->setAccessibleName(tr("One less: %1").arg(name));
    more_->setAccessibleName(tr("One more: %1").arg(name));
}

void Stepper::setRange(qint64 least, qint64 most) {
    least_ = least;
    most_ = most;
    setValue(value_);
}

void Stepper::setValue(qint64 value) {
    value_ = told_ = std::clamp(value, least_, most_);
    showValue();
}

void Stepper::follow(qint64 value) {
    const bool typing = field_->hasFocus() && field_->text() != QString::number(told_);
    if (value_ == told_ && !typing) setValue(value);
}

void Stepper::showValue() {
    const QString words = QString::number(value_);
    if (field_->text() != words) field_->setText(words);
    less_->setEnabled(value_ > least_);
    more_->setEnabled(value_ < most_);
}

void Stepper::step(qint64 by) {
    readTyped();
    value_ = std::clamp(value_ + by, least_, most_);
    showValue();
}

void Stepper::readTyped() {
    bool number = false;
    const auto typed = field_->text().toLongLong(&number);
    value_ = number ? std::clamp(typed, least_, most_) : value_;
    showValue();
}

void Stepper::tell() {
    if (value_ == told_) return;
    told_ = value_;
    Q_EMIT changed(value_);
}

bool Stepper::eventFilter(QObject* watched, QEvent* event) {
    if (watched != field_) return QWidget::eventFilter(watched, event);
    if (event->type() == QEvent::KeyPress) {
        switch (static_cast<QKeyEvent*>(event)->key()) {
        case Qt::Key_Up:
            step(1);
            return true;
        case Qt::Key_Down:
            step(-1);
            return true;
        case Qt::Key_Escape:
            if (value_ == told_ && field_->text() == QString::number(told_)) break;
            setValue(told_);
            field_->selectAll();
            return true;
        default:
            break;
        }
    }
    if (event->type() == QEvent::KeyRelease && !static_cast<QKeyEvent*>(event)->isAutoRepeat()) {
        const auto key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Up || key == Qt::Key_Down) tell();
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace withy::ui
