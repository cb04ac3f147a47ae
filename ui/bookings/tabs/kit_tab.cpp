// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/tabs/kit_tab.h"

#include "ui/bookings/tabs/kit_needs.h"
#include "ui/bookings/tabs/packing_part.h"
#include "ui/bookings/tabs/tables_part.h"
#include "ui/common/segments.h"
#include "ui/paint/spacing.h"
#include "ui/shell/actions.h"

#include <QHBoxLayout>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace withy::ui {

KitTab::KitTab(Workbench& bench, QWidget* parent)
    : BookingTab(bench, parent)
    , pages_(new Segments(tr("What of the kit"), {tr("What it needs"), tr("Tables"), tr("Packing")}))
    , stack_(new QStackedWidget)
    , parts_{new KitNeeds(bench), new TablesPart(bench), new PackingPart(bench)} {
    setObjectName(QStringLiteral("kit.tab"));
    pages_->setObjectName(QStringLiteral("kit.pages"));
    pages_->setProperty("pages", true);
    auto* head = new QHBoxLayout;
    head->setContentsMargins(pageMargin(), grid(2), pageMargin(), 0);
    head->addWidget(pages_);
    head->addStretch(1);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->setSpacing(0);
    all->addLayout(head);
    all->addWidget(stack_, 1);
    for (auto* part : parts_) {
        stack_->addWidget(part);
        connect(part, &BookingTab::refused, this, &KitTab::refused);
        connect(part, &BookingTab::said, this, &KitTab::said);
        connect(part, &BookingTab::leadTo, this, &KitTab::leadTo);
    }
    connect(pages_, &Segments::chosen, stack_, &QStackedWidget::setCurrentIndex);
}

void KitTab::show(std::optional<Id<model::Booking>> id) {
    for (auto* part : parts_)
        part->show(id);
}

void KitTab::enter() {
    parts_[static_cast<std::size_t>(stack_->currentIndex())]->enter();
}

void KitTab::turnTo(int page) {
    Q_EMIT wanted();
    pages_->setCurrent(page);
    stack_->setCurrentIndex(page);
    enter();
}

void KitTab::addActions(Actions& actions) {
    for (auto* part : parts_)
        part->addActions(actions);
    actions.add({"booking.tables", tr("Tab&le plan"), {}, tr("The venue's tables from above, and what fits")},
                [this] { turnTo(1); });
    actions.add(
        {"booking.packing", tr("Pac&king"), {}, tr("Trays from above, the load and the water to carry")},
        [this] { turnTo(2); });
}

} // namespace withy::ui
