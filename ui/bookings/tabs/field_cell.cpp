// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/tabs/field_cell.h"

#include "ui/common/field_edit.h"

#include <QLineEdit>

namespace withy::ui {

QWidget* makeFieldCell(Workbench& bench, const SheetField& field, bool right,
                       const std::function<void(const QString&)>& refused) {
    auto* edit = new FieldEdit(bench, field.table, field.name);
    edit->setPrompt(field.prompt);
    if (auto* line = qobject_cast<QLineEdit*>(edit->control()); line && right)
        line->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    edit->show(field.id);
    QObject::connect(edit, &FieldEdit::refused, edit, refused);
    return edit;
}

} // namespace withy::ui
