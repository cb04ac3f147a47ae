// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/title_edit.h"

#include "ui/paint/spacing.h"
#include "ui/paint/type.h"

#include <QKeyEvent>

namespace withy::ui {

TitleEdit::TitleEdit(const QString& accessibleName, QWidget* parent) : QLineEdit(parent) {
    setProperty("look", QStringLiteral("title"));
    setAccessibleName(accessibleName);
    setFont(typeFont(TypeRole::title));
    setTextMargins(-3, 0, 0, 0); // Qt's own margin and the frame: the name stands above the facts
    connect(this, &QLineEdit::editingFinished, this, &TitleEdit::finish);
}

void TitleEdit::finish() {
    if (!isDirty()) return;
    shown_ = text(); // told once, though Enter and leaving both end the editing
    Q_EMIT renamed(text());
}

void TitleEdit::showTitle(const QString& title) {
    if (hasFocus() && isDirty() && isModified()) return;
    shown_ = title;
    if (text() == title) return;
    setText(title);
    setCursorPosition(0);
}

void TitleEdit::putBack() {
    setText(shown_);
    setCursorPosition(0);
}

QSize TitleEdit::sizeHint() const {
    return {QLineEdit::sizeHint().width(), fontMetrics().height() + grid(2)};
}

void TitleEdit::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && isDirty()) {
        putBack();
        return;
    }
    QLineEdit::keyPressEvent(event);
}

void TitleEdit::changeEvent(QEvent* event) {
    QLineEdit::changeEvent(event);
    if (event->type() != QEvent::StyleChange) return;
    const QFont font = typeFont(TypeRole::title);
    if (font != this->font()) setFont(font);
}

} // namespace withy::ui
