// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/record_page.h"

namespace withy::ui {

/// The patches in walking order; dragged, or put elsewhere with Alt+Up and Alt+Down.
class PatchesPage : public RecordPage {
    Q_OBJECT

public:
    explicit PatchesPage(Workbench& bench, QWidget* parent = nullptr);
    void addActions(Actions& actions) override;
};

} // namespace withy::ui
