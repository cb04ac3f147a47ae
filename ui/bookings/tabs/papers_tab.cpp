// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/tabs/papers_tab.h"

#include "ui/paint/spacing.h"
#include "ui/print/paper_desk.h"

#include <QVBoxLayout>

namespace withy::ui {

PapersTab::PapersTab(Workbench& bench, QWidget* parent)
    : BookingTab(bench, parent)
    , desk_(new PaperDesk(bench, {PaperKind::prepSheet, PaperKind::bookingSummary, PaperKind::cuttingList,
                                  PaperKind::makeUpCard, PaperKind::bucketLabels, PaperKind::packingSheet,
                                  PaperKind::runSheet, PaperKind::tablePlan, PaperKind::handOver,
                                  PaperKind::ribbonPlan, PaperKind::kitList, PaperKind::helperSheet,
                                  PaperKind::weekBoard})) {
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
    desk_->enter();
}

void PapersTab::addActions(Actions& actions) {
    desk_->addActions(actions);
}

} // namespace withy::ui
