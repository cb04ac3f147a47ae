// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/menus.h"

#include "ui/shell/actions.h"

#include <QCoreApplication>
#include <QMenu>
#include <QMenuBar>

namespace withy::ui {

namespace {

struct Entry {
    const char* words;
    QStringList starts;
};

std::vector<Entry> menus() {
    return {
        {QT_TRANSLATE_NOOP("Menus", "&Season"), {"season."}},
        {QT_TRANSLATE_NOOP("Menus", "&Edit"), {"edit."}},
        {QT_TRANSLATE_NOOP("Menus", "&Booking"), {"booking.", "fit."}},
        {QT_TRANSLATE_NOOP("Menus", "&Design"), {"design."}},
        {QT_TRANSLATE_NOOP("Menus", "&Garden"), {"garden.", "shed.", "diary."}},
        {QT_TRANSLATE_NOOP("Menus", "&Papers"), {"paper."}},
        {QT_TRANSLATE_NOOP("Menus", "&View"), {"go.", "view."}},
        {QT_TRANSLATE_NOOP("Menus", "&Help"), {"help."}},
    };
}

} // namespace

void fillMenus(QMenuBar& bar, const Actions& actions) {
    bar.clear();
    qDeleteAll(bar.findChildren<QMenu*>(QString(), Qt::FindDirectChildrenOnly));
    for (const auto& entry : menus()) {
        auto* menu = new QMenu(QCoreApplication::translate("Menus", entry.words), &bar);
        for (const auto& start : entry.starts) {
            if (!menu->isEmpty()) menu->addSeparator();
            for (auto* action : actions.all()) {
                if (action->objectName().startsWith(start)) menu->addAction(action);
            }
        }
        // All from the start, so that none moves under the pointer when the pages have come.
        bar.addMenu(menu)->setEnabled(!menu->isEmpty());
    }
}

} // namespace withy::ui
