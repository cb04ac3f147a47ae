// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/record_page.h"

namespace withy::ui {

class FigureButton;
class WorkingPanel;

/// Jars, vases, bowls and troughs; the chosen one's sizes, and the volume they make as a figure that opens.
class ContainersPage : public RecordPage {
    Q_OBJECT

public:
    explicit ContainersPage(Workbench& bench, QWidget* parent = nullptr);

private:
    void showVolume();
    FigureButton* volume_;
    WorkingPanel* working_;
    TextLabel* note_;
};

} // namespace withy::ui
