// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "ui/common/field_control.h"
#endif

#include <QPlainTextEdit>

namespace withy::ui {

/// Several lines; grows with what is written, up to six. Tab leaves it.
class LongTextEdit : public QPlainTextEdit {
    Q_OBJECT

public:
    explicit LongTextEdit(QWidget* parent);
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;

private:
    void grow();
    [[nodiscard]] int heightFor(int lines) const;
};

class LongTextControl : public FieldControl {
public:
    explicit LongTextControl(QWidget* parent);

    [[nodiscard]] QWidget* widget() const override { return edit_; }

    [[nodiscard]] QString text() const override { return edit_->toPlainText(); }

    void setText(const QString& text) override;

    void setReadOnly() override { edit_->setReadOnly(true); }

    void setPrompt(const QString& prompt) override { edit_->setPlaceholderText(prompt); }

    [[nodiscard]] bool takesEnter() const override { return true; }

private:
    LongTextEdit* edit_;
    bool filling_ = false;
};

} // namespace withy::ui
