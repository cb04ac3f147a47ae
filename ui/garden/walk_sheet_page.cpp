// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/garden/walk_sheet_page.h"

#include "ui/shell/actions.h"

namespace withy::ui {

WalkSheetPage::WalkSheetPage(Workbench& bench, QWidget* parent)
    : DeskPage(bench, PaperKind::walkSheet,
               {{tr("To take round the garden with a pencil; key it in afterwards.")}}, parent) {}

void WalkSheetPage::addActions(Actions& actions) {
    actions.add({"paper.walk", tr("&Walk sheet"), {}, tr("The sheet to count on, in walking order")}, [this] {
        Q_EMIT wanted();
        enter();
    });
}

} // namespace withy::ui
