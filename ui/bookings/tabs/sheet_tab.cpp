// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/tabs/sheet_tab.h"

#include "ui/bookings/tabs/sheet_table.h"
#include "ui/bookings/tabs/sheet_words.h"
#include "ui/common/answer_phrases.h"
#include "ui/common/widget_parts.h"
#include "ui/paint/spacing.h"

#include <QScrollArea>
#include <QVBoxLayout>

namespace withy::ui {

SheetTab::SheetTab(Workbench& bench, const QString& name, QWidget* parent) : BookingTab(bench, parent) {
    setObjectName(name);
    answer_ = new AnswerLabel;
    answer_->setObjectName(name + QStringLiteral(".answer"));
    sheet_ = new QWidget;
    body_ = new QVBoxLayout(sheet_);
    body_->setContentsMargins(pageMargin(), grid(3), pageMargin(), pageMargin());
    body_->setSpacing(grid(3));
    onGrid(sheet_, &QWidget::setMaximumWidth, 400); // wider, and the eye loses the row
    body_->addWidget(answer_);
    body_->addStretch(1);
    scroll_ = new QScrollArea;
    scroll_->setWidget(sheet_);
    scroll_->setWidgetResizable(true);
    scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll_->setFocusPolicy(Qt::NoFocus);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->addWidget(scroll_);
    connect(&bench_, &Workbench::planned, this, &SheetTab::refresh);
}

void SheetTab::show(std::optional<Id<model::Booking>> id) {
    booking_ = id;
    refresh();
}

void SheetTab::enter() {
    if (auto* first = sheet_->nextInFocusChain(); first && sheet_->isAncestorOf(first)) {
        while (first && sheet_->isAncestorOf(first) &&
               (!(first->focusPolicy() & Qt::TabFocus) || !first->isVisible()))
            first = first->nextInFocusChain();
        if (first && sheet_->isAncestorOf(first)) first->setFocus(Qt::TabFocusReason);
    }
}

void SheetTab::showEvent(QShowEvent* event) {
    BookingTab::showEvent(event);
    if (stale_) refresh();
}

void SheetTab::refresh() {
    stale_ = !isVisible();
    if (stale_) return;
    const auto found = booking_ ? bench_.plan().bookings.find(*booking_) : bench_.plan().bookings.end();
    const bool known = found != bench_.plan().bookings.end() && bench_.season().bookings.find(*booking_);
    sheet_->setVisible(known);
    if (known) fill(*found->second);
}

void SheetTab::say(const Answer& answer) {
    answer_->setPhrases(phrasesOf(answer));
}

SheetTable* SheetTab::addSheet(const QString& name) {
    auto* table = new SheetTable(bench_, name);
    connect(table, &SheetTable::leadTo, this, &SheetTab::leadTo);
    connect(table, &SheetTable::refused, this, &SheetTab::refused);
    body_->insertWidget(body_->count() - 1, table);
    return table;
}

QWidget* SheetTab::addHead(const QString& words) {
    auto* head = new TextLabel(TypeRole::head, words);
    body_->insertWidget(body_->count() - 1, head);
    return head;
}

std::vector<ListedFinding> SheetTab::findings() const {
    return booking_ ? findingsOf(bench_.season(), bench_.plan(), *booking_) : std::vector<ListedFinding>();
}

} // namespace withy::ui
