// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/sub_page.h"

namespace withy::ui {

class PaperDesk;

/// The papers of the whole season: looked at, printed, kept.
class PapersPage : public SubPage {
    Q_OBJECT

public:
    explicit PapersPage(Workbench& bench, QWidget* parent = nullptr);

    [[nodiscard]] Answer answer() const override;
    void enter() override;

private:
    PaperDesk* desk_;
};

} // namespace withy::ui
