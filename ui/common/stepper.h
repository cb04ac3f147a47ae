// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QLineEdit;
class QPushButton;

namespace withy::ui {

/// A count with − and + beside it. Typed, wheeled (only when it has the focus) or pressed; it tells of a
/// change when a gesture ends, so that holding + is one edit.
class Stepper : public QWidget {
    Q_OBJECT

public:
    explicit Stepper(const QString& accessibleName, QWidget* parent = nullptr);
    void setRange(qint64 least, qint64 most);
    /// Never tells of a change.
    void setValue(qint64 value);

    /// As setValue, unless someone is in the middle of changing it.
    void follow(qint64 value);

    [[nodiscard]] qint64 value() const { return value_; }

    void setAccessibleLabel(const QString& name);

Q_SIGNALS:
    void changed(qint64 value);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void step(qint64 by);
    void tell();
    void readTyped();
    void showValue();

    QPushButton* less_;
    QLineEdit* field_;
    QPushButton* more_;
    qint64 least_ = 0;
    qint64 most_ = 100000;
    qint64 value_ = 0;
    qint64 told_ = 0;
};

} // namespace withy::ui
