// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/field_control.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <QLineEdit>
#include <QWheelEvent>

namespace withy::ui {

/// A combo that the wheel cannot change while a page is scrolled over it.
class QuietCombo : public QComboBox {
public:
    explicit QuietCombo(QWidget* parent) : QComboBox(parent) { setFocusPolicy(Qt::StrongFocus); }

protected:
    void wheelEvent(QWheelEvent* event) override {
        if (hasFocus())
            QComboBox::wheelEvent(event);
        else
            event->ignore();
    }
};

/// One line, typed freely.
class LineControl : public FieldControl {
public:
    explicit LineControl(QWidget* parent) : LineControl(new QLineEdit(parent)) {}

    [[nodiscard]] QWidget* widget() const override { return line_; }

    [[nodiscard]] QString text() const override { return line_->text(); }

    void setText(const QString& text) override {
        line_->setText(text);
        line_->setCursorPosition(0);
    }

    void setReadOnly() override { line_->setReadOnly(true); }

    void setPrompt(const QString& prompt) override { line_->setPlaceholderText(prompt); }

protected:
    explicit LineControl(QLineEdit* line) : line_(line) {
        QObject::connect(line_, &QLineEdit::textEdited, line_, [this] {
            if (edited) edited();
        });
    }

    QLineEdit* line_;
};

} // namespace withy::ui
