// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/sub_page.h"

namespace withy::ui {

class PaperDesk;

/// The sheet to take round the garden: looked at, printed, kept.
class WalkSheetPage : public SubPage {
    Q_OBJECT

public:
    explicit WalkSheetPage(Workbench& bench, QWidget* parent = nullptr);

    [[nodiscard]] Answer answer() const override;
    void addActions(Actions& actions) override;
    void enter() override;

private:
    PaperDesk* desk_;
};

} // namespace withy::ui
