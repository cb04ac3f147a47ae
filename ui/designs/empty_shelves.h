// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QPushButton;

namespace withy::ui {

/// Three bare shelves, and the way to the first piece.
class EmptyShelves : public QWidget {
    Q_OBJECT

public:
    explicit EmptyShelves(QWidget* parent = nullptr);

Q_SIGNALS:
    void newAsked(QWidget* at);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QPushButton* draw_;
};

} // namespace withy::ui
