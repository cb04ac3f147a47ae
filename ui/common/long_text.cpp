// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/long_text.h"

#include <QAbstractTextDocumentLayout>
#include <QScrollBar>
#include <QTextBlock>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

namespace withy::ui {

namespace {

constexpr int mostLines = 6;

} // namespace

LongTextEdit::LongTextEdit(QWidget* parent) : QPlainTextEdit(parent) {
    setTabChangesFocus(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    document()->setDocumentMargin(2);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(document()->documentLayout(), &QAbstractTextDocumentLayout::documentSizeChanged, this,
            [this] { grow(); });
    grow();
}

int LongTextEdit::heightFor(int lines) const {
    const auto margins = contentsMargins();
    const int frame = 2 * frameWidth() + margins.top() + margins.bottom();
    return lines * fontMetrics().lineSpacing() +
           2 * static_cast<int>(std::ceil(document()->documentMargin())) + frame + 2;
}

void LongTextEdit::grow() {
    // A plain-text layout counts its height in lines.
    const int lines = std::max(1, static_cast<int>(std::ceil(document()->size().height())));
    setVerticalScrollBarPolicy(lines > mostLines ? Qt::ScrollBarAsNeeded : Qt::ScrollBarAlwaysOff);
    const int wanted = heightFor(std::min(lines, mostLines));
    if (wanted == minimumHeight() && wanted == maximumHeight()) return;
    setFixedHeight(wanted);
    updateGeometry();
}

QSize LongTextEdit::sizeHint() const {
    return {QPlainTextEdit::sizeHint().width(), minimumHeight()};
}

QSize LongTextEdit::minimumSizeHint() const {
    return {fontMetrics().averageCharWidth() * 12, minimumHeight()};
}

void LongTextEdit::resizeEvent(QResizeEvent* event) {
    QPlainTextEdit::resizeEvent(event);
    grow();
}

void LongTextEdit::changeEvent(QEvent* event) {
    QPlainTextEdit::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) grow();
}

void LongTextEdit::wheelEvent(QWheelEvent* event) {
    // A page scrolled over a field goes on scrolling.
    if (hasFocus() && verticalScrollBar()->maximum() > 0)
        QPlainTextEdit::wheelEvent(event);
    else
        event->ignore();
}

LongTextControl::LongTextControl(QWidget* parent) : edit_(new LongTextEdit(parent)) {
    QObject::connect(edit_, &QPlainTextEdit::textChanged, edit_, [this] {
        if (!filling_ && edited) edited();
    });
}

void LongTextControl::setText(const QString& text) {
    filling_ = true;
    edit_->setPlainText(text);
    filling_ = false;
}

} // namespace withy::ui
