// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/workbench.h"

#include <QMenu>

namespace withy::ui {

/// The bookings a design may be used in, by date; lost and settled ones are left out.
class UseMenu : public QMenu {
    Q_OBJECT

public:
    UseMenu(Workbench& bench, Id<model::Design> design, QWidget* parent = nullptr);

Q_SIGNALS:
    void used(qint64 booking);
};

} // namespace withy::ui
