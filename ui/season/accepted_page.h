// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/record_page.h"

namespace withy::ui {

/// Warnings that were accepted and stay quiet until their facts change, or until told to speak again.
class AcceptedPage : public RecordPage {
    Q_OBJECT

public:
    explicit AcceptedPage(Workbench& bench, QWidget* parent = nullptr);
    void addActions(Actions& actions) override;

private:
    void tellAgain();
    QPushButton* again_;
};

} // namespace withy::ui
