// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/tabs/money_tab.h"

#include "ui/bookings/tabs/sheet_table.h"
#include "ui/common/field_edit.h"
#include "ui/common/record_table.h"
#include "ui/common/text_label.h"
#include "ui/common/widget_parts.h"
#include "ui/logic/models/money_rows.h"
#include "ui/paint/spacing.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace withy::ui {

MoneyTab::MoneyTab(Workbench& bench, QWidget* parent) : SheetTab(bench, QStringLiteral("money"), parent) {
    prices_ = addSheet(QStringLiteral("money.prices"));
    makeGift();
    sums_ = addSheet(QStringLiteral("money.sums"));
    makePayments();
}

void MoneyTab::makeGift() {
    gift_ = new FieldEdit(bench_, model::TableKind::bookings, "gift_share");
    onGrid(gift_, &QWidget::setFixedWidth, 30);
    auto* label = new QLabel(tr("G&iven"));
    label->setBuddy(gift_->control());
    auto* holder = new QWidget;
    auto* row = new QHBoxLayout(holder);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(grid(2));
    row->addWidget(label);
    row->addWidget(gift_);
    row->addStretch(1);
    body_->insertWidget(body_->count() - 1, holder);
    connect(gift_, &FieldEdit::refused, this, &MoneyTab::refused);
}

void MoneyTab::makePayments() {
    addHead(tr("Payments"));
    RecordTableSpec spec;
    spec.kind = model::TableKind::payments;
    spec.columns = {"date", "kind", "amount", "note"};
    spec.parent = std::pair{std::string("booking"), std::int64_t{0}};
    spec.sortField = "date";
    payments_ = new RecordTable(bench_, std::move(spec));
    payments_->setObjectName(QStringLiteral("money.payments"));
    payments_->setAccessibleName(tr("Payments"));
    payments_->setEmptyWords(tr("Nothing paid yet. Type a day in the last row to write a payment down."));
    payments_->growWithRows();
    body_->insertWidget(body_->count() - 1, payments_);
    connect(payments_, &RecordTable::refused, this, &MoneyTab::refused);
    connect(payments_, &RecordTable::blocked, this, &MoneyTab::refused);
}

void MoneyTab::show(std::optional<Id<model::Booking>> id) {
    const auto record = id ? std::optional(id->value) : std::nullopt;
    gift_->show(record);
    payments_->showParent(record);
    SheetTab::show(id);
}

void MoneyTab::fill(const plan::BookingPlan& plan) {
    say(moneyAnswer(bench_.season(), plan));
    prices_->setSheet(priceSheet(bench_.season(), plan));
    prices_->setVisible(!plan.lines.empty());
    sums_->setSheet(sumSheet(bench_.season(), plan));
    sums_->setVisible(plan.money.has_value());
}

} // namespace withy::ui
