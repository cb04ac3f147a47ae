// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/tabs/stems_tab.h"

#include "ui/bookings/tabs/row_marks.h"
#include "ui/bookings/tabs/sheet_table.h"
#include "ui/common/finding_rows.h"
#include "ui/logic/models/stem_rows.h"

#include <QVBoxLayout>

namespace withy::ui {

StemsTab::StemsTab(Workbench& bench, QWidget* parent)
    : SheetTab(bench, QStringLiteral("stems"), parent)
    , bar_(new ShareBar)
    , findings_(new FindingRows(bench, QStringLiteral("stems.findings"))) {
    body_->insertWidget(body_->count() - 1, bar_);
    stems_ = addSheet(QStringLiteral("stems.rows"));
    roundsHead_ = addHead(tr("Cutting rounds"));
    rounds_ = addSheet(QStringLiteral("stems.rounds"));
    body_->insertWidget(body_->count() - 1, findings_);
    connect(findings_, &FindingRows::leadTo, this, &StemsTab::leadTo);
    connect(findings_, &FindingRows::refused, this, &StemsTab::refused);
}

void StemsTab::fill(const plan::BookingPlan& plan) {
    const auto list = findings();
    say(stemAnswer(plan, list));
    bar_->setShares(stemShares(bench_.season(), plan));
    stems_->setSheet(stemSheet(bench_.season(), plan));
    stems_->setVisible(!plan.lines.empty());
    rounds_->setSheet(roundSheet(bench_.season(), plan));
    rounds_->setVisible(!plan.rounds.empty());
    roundsHead_->setVisible(!plan.rounds.empty());
    findings_->setFindings(list);
}

} // namespace withy::ui
