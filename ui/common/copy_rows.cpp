// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/copy_rows.h"

#include "ui/logic/models/copied_rows.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QHeaderView>
#include <QShortcut>
#include <QTableView>

#include <algorithm>

namespace withy::ui {

void copiesRows(QTableView* view, std::function<void(const QString&)> said) {
    auto* key = new QShortcut(QKeySequence::Copy, view);
    key->setContext(Qt::WidgetShortcut);
    QObject::connect(key, &QShortcut::activated, view, [view, said = std::move(said)] {
        std::vector<int> rows;
        for (const auto& index : view->selectionModel()->selectedIndexes())
            if (std::find(rows.begin(), rows.end(), index.row()) == rows.end()) rows.push_back(index.row());
        if (rows.empty()) return;
        std::sort(rows.begin(), rows.end()); // as they stand, not as they were picked
        std::vector<int> columns;
        for (int place = 0; place < view->horizontalHeader()->count(); ++place) {
            const int column = view->horizontalHeader()->logicalIndex(place);
            if (!view->isColumnHidden(column)) columns.push_back(column);
        }
        QGuiApplication::clipboard()->setText(rowsAsText(*view->model(), rows, columns));
        said(rowsCopiedWords(static_cast<int>(rows.size())));
    });
}

} // namespace withy::ui
