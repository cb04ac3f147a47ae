// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/cutting/made_form.h"

#include "ui/common/text_label.h"
#include "ui/common/widget_parts.h"
#include "ui/paint/spacing.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace withy::ui {

namespace {

constexpr int longestMaking = 10000; // minutes; a week of days and nights

} // namespace

MadeForm::MadeForm(QWidget* parent)
    : QWidget(parent)
    , minutes_(new QLineEdit)
    , who_(new QLineEdit)
    , says_(new TextLabel(TypeRole::caption, {}, Ink::osier)) {
    minutes_->setObjectName(QStringLiteral("share.made.minutes"));
    minutes_->setAccessibleName(tr("Minutes for all of them"));
    minutes_->setPlaceholderText(tr("not noted"));
    onGrid(minutes_, &QWidget::setFixedWidth, 28);
    onGrid(minutes_, &QWidget::setMinimumHeight, 10);
    who_->setObjectName(QStringLiteral("share.made.who"));
    who_->setAccessibleName(tr("Made by"));
    onGrid(who_, &QWidget::setMinimumHeight, 10);
    auto* keep = namedButton(tr("&Write down as made"), "share.made.keep");
    onGrid(keep, &QWidget::setMinimumHeight, 10);
    auto* row = new QHBoxLayout;
    row->setSpacing(grid(2));
    row->addWidget(new QLabel(tr("Minutes for all")));
    row->addWidget(minutes_);
    row->addWidget(new QLabel(tr("Made by")));
    row->addWidget(who_, 1);
    row->addWidget(keep);
    says_->hide();
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->setSpacing(grid(1));
    all->addLayout(row);
    all->addWidget(says_);
    connect(keep, &QPushButton::clicked, this, &MadeForm::keep);
    connect(minutes_, &QLineEdit::returnPressed, this, &MadeForm::keep);
    connect(who_, &QLineEdit::returnPressed, this, &MadeForm::keep);
}

void MadeForm::clear() {
    minutes_->clear();
    who_->clear();
    says_->hide();
}

void MadeForm::enter() {
    minutes_->setFocus();
}

QString MadeForm::byWhom() const {
    return who_->text();
}

void MadeForm::keep() {
    const QString typed = minutes_->text().trimmed();
    bool ok = true;
    const int minutes = typed.isEmpty() ? 0 : typed.toInt(&ok);
    const bool sound = ok && minutes >= 0 && minutes <= longestMaking;
    says_->setText(sound ? QString() : tr("Minutes are a whole number; leave it blank when nobody looked."));
    says_->setVisible(!sound);
    markAs(minutes_, "wrong", !sound);
    if (!sound) return minutes_->setFocus();
    Q_EMIT kept(typed.isEmpty() ? std::nullopt : std::optional(Minutes(minutes)));
}

} // namespace withy::ui
