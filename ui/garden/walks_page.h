// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/record_page.h"

namespace withy::ui {

/// The counts of every walk, newest first. A new walk is a blank row for each patch, in walking order;
/// blanks stay blank.
class WalksPage : public RecordPage {
    Q_OBJECT

public:
    explicit WalksPage(Workbench& bench, QWidget* parent = nullptr);
    void addActions(Actions& actions) override;

private:
    void startWalk();
};

} // namespace withy::ui
