// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/print/desk_page.h"

namespace withy::ui {

/// The sheet to take round the garden.
class WalkSheetPage : public DeskPage {
    Q_OBJECT

public:
    explicit WalkSheetPage(Workbench& bench, QWidget* parent = nullptr);

    void addActions(Actions& actions) override;
};

} // namespace withy::ui
