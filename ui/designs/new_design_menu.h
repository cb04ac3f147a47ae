// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/workbench.h"

#include <QMenu>

namespace withy::ui {

/// What a new design stands in, or how it is bound; filled anew whenever it opens.
class NewDesignMenu : public QMenu {
    Q_OBJECT

public:
    explicit NewDesignMenu(Workbench& bench, QWidget* parent = nullptr);

Q_SIGNALS:
    void made(qint64 design);

private:
    void fill();
    void take(const model::Edit& edit, Id<model::Design> made);

    Workbench& bench_;
};

} // namespace withy::ui
