// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLineEdit>

namespace withy::ui {

/// A page's name, changed where it stands: Enter and leaving keep it, Esc puts it back.
class TitleEdit : public QLineEdit {
    Q_OBJECT

public:
    explicit TitleEdit(const QString& accessibleName, QWidget* parent = nullptr);

    /// Not while it is being typed in.
    void showTitle(const QString& title);
    /// Keeps what was typed, as leaving does: before another record is shown.
    void finish();
    /// Puts back what was shown last.
    void putBack();

    [[nodiscard]] bool isDirty() const { return text() != shown_; }

    [[nodiscard]] QSize sizeHint() const override;

Q_SIGNALS:
    void renamed(const QString& title);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    QString shown_;
};

} // namespace withy::ui
