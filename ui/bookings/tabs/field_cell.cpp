// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/tabs/field_cell.h"

#include "ui/common/field_edit.h"

namespace withy::ui {

QWidget* makeFieldCell(Workbench& bench, const SheetField& field,
                       const std::function<void(const QString&)>& refused) {
    auto* edit = new FieldEdit(bench, field.table, field.name);
    edit->setPrompt(field.prompt);
    edit->show(field.id);
    QObject::connect(edit, &FieldEdit::refused, edit, refused);
    return edit;
}

} // namespace withy::ui
