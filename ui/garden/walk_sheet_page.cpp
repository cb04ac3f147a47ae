// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/garden/walk_sheet_page.h"

#include "ui/paint/spacing.h"
#include "ui/print/paper_desk.h"
#include "ui/shell/actions.h"

#include <QVBoxLayout>

namespace withy::ui {

WalkSheetPage::WalkSheetPage(Workbench& bench, QWidget* parent)
    : SubPage(bench, parent), desk_(new PaperDesk(bench, {PaperKind::walkSheet})) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, grid(2), 0, 0);
    column->addWidget(desk_);
    connect(desk_, &PaperDesk::refused, this, &SubPage::refused);
    connect(desk_, &PaperDesk::said, this, &SubPage::said);
    connect(desk_, &PaperDesk::wanted, this, &SubPage::wanted);
}

Answer WalkSheetPage::answer() const {
    return {{tr("To take round the garden with a pencil; key it in afterwards.")}};
}

void WalkSheetPage::addActions(Actions& actions) {
    actions.add({"paper.walk", tr("&Walk sheet"), {}, tr("The sheet to count on, in walking order")}, [this] {
        Q_EMIT wanted();
        enter();
    });
}

void WalkSheetPage::enter() {
    desk_->choose(PaperKind::walkSheet);
    if (auto* first = desk_->nextInFocusChain()) first->setFocus();
}

} // namespace withy::ui
