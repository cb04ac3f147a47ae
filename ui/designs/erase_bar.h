// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/workbench.h"

#include <QWidget>

class QPushButton;

namespace withy::ui {

class TextLabel;

/// Says who still uses a design that shall go, with the ways out; asks nothing when nobody does.
class EraseBar : public QWidget {
    Q_OBJECT

public:
    explicit EraseBar(Workbench& bench, QWidget* parent = nullptr);
    void ask(Id<model::Design> design);

Q_SIGNALS:
    void erased(const QString& name);
    void left(); ///< it stays

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void erase(const model::Edit& edit);
    void leave();

    Workbench& bench_;
    Id<model::Design> design_;
    TextLabel* words_;
    QPushButton* leave_;
};

} // namespace withy::ui
