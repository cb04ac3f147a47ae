// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "ui/common/field_control.h"
#endif

#include <QWidget>

namespace withy::ui {

/// The editor of one cell: a field's control, filling the cell.
class CellEditor : public QWidget {
    Q_OBJECT

public:
    CellEditor(Workbench& bench, model::TableKind kind, const model::FieldInfo& field, QWidget* parent);
    ~CellEditor() override;

    [[nodiscard]] FieldControl& control() const { return *control_; }

    [[nodiscard]] const model::FieldInfo& field() const { return field_; }

    QString filled; ///< what it was filled with; no edit while it still says that

private:
    const model::FieldInfo& field_;
    std::unique_ptr<FieldControl> control_;
};

} // namespace withy::ui
