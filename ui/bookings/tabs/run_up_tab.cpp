// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/tabs/run_up_tab.h"

#include "ui/bookings/tabs/sheet_table.h"
#include "ui/common/text_label.h"
#include "ui/logic/models/run_up_rows.h"
#include "ui/paint/spacing.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

namespace withy::ui {

RunUpTab::RunUpTab(Workbench& bench, QWidget* parent) : SheetTab(bench, QStringLiteral("runUp"), parent) {}

RunUpTab::DayPart RunUpTab::makePart(std::size_t index) {
    DayPart part;
    part.head = new QWidget;
    part.day = new TextLabel(TypeRole::strong); // a date holds figures, so it is not set in the serif
    part.note = new TextLabel(TypeRole::text, {}, Ink::second);
    auto* row = new QHBoxLayout(part.head);
    row->setContentsMargins(0, grid(2), 0, 0);
    row->setSpacing(grid(4));
    row->addWidget(part.day);
    row->addWidget(part.note);
    row->addStretch(1);
    body_->insertWidget(body_->count() - 1, part.head);
    part.sheet = addSheet(QStringLiteral("runUp.day%1").arg(index));
    return part;
}

void RunUpTab::fill(const plan::BookingPlan& plan) {
    say(runUpAnswer(bench_.season(), plan, findings()));
    const auto days = plan.lines.empty() ? std::vector<RunUpDay>() : runUpDays(bench_.season(), plan);
    for (std::size_t i = 0; i < days.size(); ++i) {
        if (i == parts_.size()) parts_.push_back(makePart(i));
        parts_[i].day->setText(days[i].head);
        parts_[i].note->setText(days[i].note);
        parts_[i].sheet->setSheet(days[i].sheet);
    }
    for (std::size_t i = 0; i < parts_.size(); ++i) {
        parts_[i].head->setVisible(i < days.size());
        parts_[i].sheet->setVisible(i < days.size());
    }
}

} // namespace withy::ui
