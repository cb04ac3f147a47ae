// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/tabs/papers_tab.h"

#include "ui/paint/spacing.h"
#include "ui/print/paper_desk.h"

#include <QRadioButton>
#include <QVBoxLayout>

namespace withy::ui {

PapersTab::PapersTab(Workbench& bench, QWidget* parent)
    : BookingTab(bench, parent)
    , desk_(new PaperDesk(bench, {PaperKind::prepSheet, PaperKind::bookingSummary, PaperKind::cuttingList,
                                  PaperKind::makeUpCard})) {
    setObjectName(QStringLiteral("papers"));
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(pageMargin(), grid(3), pageMargin(), grid(3));
    all->addWidget(desk_);
    connect(desk_, &PaperDesk::refused, this, &PapersTab::refused);
    connect(desk_, &PaperDesk::said, this, &PapersTab::said);
    connect(desk_, &PaperDesk::wanted, this, &PapersTab::wanted);
}

void PapersTab::show(std::optional<Id<model::Booking>> id) {
    desk_->setBooking(id);
}

void PapersTab::enter() {
    for (auto* choice : findChildren<QRadioButton*>())
        if (choice->isChecked()) choice->setFocus(Qt::TabFocusReason);
}

void PapersTab::addActions(Actions& actions) {
    desk_->addActions(actions);
}

} // namespace withy::ui
