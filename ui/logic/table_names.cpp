// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/logic/table_names.h"

#include "core/model/schema.h"
#include "ui/logic/fields/field_text.h"
#include "ui/logic/format.h"

#include <QCoreApplication>

namespace withy::ui {

QString tableWithCount(const model::Season& season, model::TableKind kind) {
    QString name = tableLabel(kind, 2);
    if (!name.isEmpty()) name[0] = name[0].toUpper();
    const auto records = model::sizeOf(season, kind);
    return QCoreApplication::translate("TableNames", "%1, %2 record(s)", nullptr, asCount(records))
        .arg(name, whole(static_cast<std::int64_t>(records)));
}

QString tableFileName(model::TableKind kind) {
    if (kind == model::TableKind::none) return {};
    return text(std::string(model::tableInfo(kind).name)) + QStringLiteral(".csv");
}

} // namespace withy::ui
