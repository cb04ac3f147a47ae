// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/common/line_control.h"

class QCompleter;
class QStandardItemModel;

namespace withy::ui {

/// The name of another record: what is typed is completed, and where a name is enough to make a new
/// one, the list ends with "Make ...". Alt+Down lists all.
class ReferenceControl : public LineControl {
public:
    ReferenceControl(Workbench& bench, const model::FieldInfo& field, QWidget* parent);
    [[nodiscard]] bool isPopupOpen() const override;
    void openPopup() override;

private:
    void offer(const QString& typed);
    void take(const QString& shown, const QString& make);

    Workbench& bench_;
    const model::FieldInfo& field_;
    QStandardItemModel* items_;
    QCompleter* completer_;
};

} // namespace withy::ui
