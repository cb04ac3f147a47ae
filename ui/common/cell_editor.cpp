// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/cell_editor.h"

#include "ui/logic/fields/field_text.h"

#include <QVBoxLayout>

namespace withy::ui {

CellEditor::CellEditor(Workbench& bench, model::TableKind kind, const model::FieldInfo& field,
                       QWidget* parent)
    : QWidget(parent), field_(field), control_(makeControl(bench, field, this)) {
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
    box->addWidget(control_->widget());
    setFocusProxy(control_->widget());
    setAutoFillBackground(true);
    control_->widget()->setAccessibleName(fieldLabel(kind, field));
    control_->widget()->setProperty("look", QStringLiteral("cell"));
    setObjectName(QStringLiteral("cell"));
}

CellEditor::~CellEditor() = default;

} // namespace withy::ui
