// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/tabs/field_cell.h"

#include "ui/common/field_edit.h"
#include "ui/logic/edits/kit_edits.h"

#include <QCoreApplication>
#include <QLineEdit>
#include <QPointer>

namespace withy::ui {

namespace {

/// Types the length of a first reel of a ribbon.
QWidget* reelCell(Workbench& bench, const SheetField& field, const QString& ribbon,
                  const std::function<void(const QString&)>& refused) {
    auto* line = new QLineEdit;
    line->setObjectName(QStringLiteral("kit.reel%1").arg(field.id));
    line->setPlaceholderText(field.prompt);
    line->setAccessibleName(QCoreApplication::translate("KitPage", "Length of a reel of %1").arg(ribbon));
    QObject::connect(line, &QLineEdit::editingFinished, line, [line, &bench, field, refused] {
        if (line->text().trimmed().isEmpty()) return;
        QString why;
        const auto edit = edits::measureReel(bench.season(), Id<model::Ribbon>(field.id), line->text(), why);
        if (edit) {
            const QString typed = line->text();
            line->clear(); // leaving the field must not keep it twice
            const QPointer<QLineEdit> still(line);
            why = bench.apply(*edit);
            if (!why.isEmpty() && still) still->setText(typed);
        }
        refused(why);
    });
    return line;
}

} // namespace

QWidget* makeFieldCell(Workbench& bench, const SheetField& field, const QString& rowName, bool right,
                       const std::function<void(const QString&)>& refused) {
    if (field.table == model::TableKind::ribbonLengths) return reelCell(bench, field, rowName, refused);
    auto* edit = new FieldEdit(bench, field.table, field.name);
    edit->setPrompt(field.prompt);
    if (auto* line = qobject_cast<QLineEdit*>(edit->control()); line && right)
        line->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    edit->control()->setAccessibleName(
        QCoreApplication::translate("SheetTable", "%1, %2").arg(edit->label(), rowName));
    edit->show(field.id);
    QObject::connect(edit, &FieldEdit::refused, edit, refused);
    return edit;
}

} // namespace withy::ui
