// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/line_control.h"

class QAction;
class QCalendarWidget;
class QFrame;

namespace withy::ui {

/// A day, or a day and an hour, typed freely; a small calendar opens with its button or Alt+Down.
class DayControl : public LineControl {
public:
    DayControl(Workbench& bench, const model::FieldInfo& field, QWidget* parent);
    [[nodiscard]] bool isPopupOpen() const override;
    void openPopup() override;

private:
    void choose(int year, int month, int day);

    Workbench& bench_;
    const model::FieldInfo& field_;
    QAction* button_;
    QFrame* popup_ = nullptr;
    QCalendarWidget* calendar_ = nullptr;
};

} // namespace withy::ui
