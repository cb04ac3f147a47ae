// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/desk_page.h"

#include "ui/paint/spacing.h"
#include "ui/print/paper_desk.h"

#include <QVBoxLayout>

namespace withy::ui {

DeskPage::DeskPage(Workbench& bench, PaperKind paper, Answer answer, QWidget* parent)
    : SubPage(bench, parent)
    , paper_(paper)
    , answer_(std::move(answer))
    , desk_(new PaperDesk(bench, {paper})) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, grid(2), 0, 0);
    column->addWidget(desk_);
    connect(desk_, &PaperDesk::refused, this, &SubPage::refused);
    connect(desk_, &PaperDesk::said, this, &SubPage::said);
    connect(desk_, &PaperDesk::wanted, this, &SubPage::wanted);
}

void DeskPage::enter() {
    desk_->choose(paper_);
    if (auto* first = desk_->nextInFocusChain()) first->setFocus();
}

} // namespace withy::ui
