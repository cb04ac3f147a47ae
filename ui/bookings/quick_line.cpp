// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/quick_line.h"

#include "ui/common/text_label.h"
#include "ui/common/widget_parts.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QVBoxLayout>

namespace withy::ui {

QuickLine::QuickLine(const char* objectName, const QString& accessibleName, const QString& prompt, Take take,
                     QWidget* parent)
    : QWidget(parent)
    , field_(new QLineEdit)
    , sentence_(new TextLabel(TypeRole::caption, {}, Ink::osier))
    , take_(std::move(take)) {
    field_->setObjectName(QString::fromLatin1(objectName));
    field_->setAccessibleName(accessibleName);
    field_->setPlaceholderText(prompt);
    field_->setMaxLength(2000);
    field_->installEventFilter(this);
    sentence_->setWordWrap(true);
    sentence_->hide();
    setFocusProxy(field_);
    auto* rows = new QVBoxLayout(this);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(0);
    rows->addWidget(field_);
    rows->addWidget(sentence_);
    connect(field_, &QLineEdit::textEdited, this, [this] { say({}); });
}

QString QuickLine::sentence() const {
    return sentence_->text();
}

void QuickLine::clear() {
    field_->clear();
    say({});
}

void QuickLine::say(const QString& sentence) {
    sentence_->setText(sentence);
    sentence_->setVisible(!sentence.isEmpty());
    field_->setAccessibleDescription(sentence);
    markAs(field_, "wrong", !sentence.isEmpty());
}

bool QuickLine::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress) return QWidget::eventFilter(watched, event);
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Escape && !field_->text().isEmpty()) {
        clear();
        return true;
    }
    if ((key == Qt::Key_Return || key == Qt::Key_Enter) && !field_->text().trimmed().isEmpty()) {
        const QString trouble = take_(field_->text());
        if (trouble.isEmpty())
            clear();
        else
            say(trouble);
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace withy::ui
