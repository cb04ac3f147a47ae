// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/season/papers_page.h"

#include "ui/paint/spacing.h"
#include "ui/print/paper_desk.h"

#include <QVBoxLayout>

namespace withy::ui {

PapersPage::PapersPage(Workbench& bench, QWidget* parent)
    : SubPage(bench, parent), desk_(new PaperDesk(bench, {PaperKind::seasonOrders})) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, grid(2), 0, 0);
    column->addWidget(desk_);
    connect(desk_, &PaperDesk::refused, this, &SubPage::refused);
    connect(desk_, &PaperDesk::said, this, &SubPage::said);
    connect(desk_, &PaperDesk::wanted, this, &SubPage::wanted);
}

Answer PapersPage::answer() const {
    return {{tr("The season on paper, as it stands now.")}};
}

void PapersPage::enter() {
    desk_->choose(PaperKind::seasonOrders);
    if (auto* first = desk_->nextInFocusChain()) first->setFocus();
}

} // namespace withy::ui
