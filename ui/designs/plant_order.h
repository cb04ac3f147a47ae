// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/workbench.h"

#include <QListWidget>

namespace withy::ui {

/// What may fill a slot, best first: dragged, or moved with Alt and the arrow keys; Delete takes one off.
class PlantOrder : public QListWidget {
    Q_OBJECT

public:
    explicit PlantOrder(Workbench& bench, QWidget* parent = nullptr);
    void showSlot(Id<model::Slot> slot);
    [[nodiscard]] QSize sizeHint() const override;

    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    void refresh();
    void moveChosen(int by);
    void keepOrder();

    Workbench& bench_;
    Id<model::Slot> slot_;
};

} // namespace withy::ui
