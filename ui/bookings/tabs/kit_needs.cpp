// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/tabs/kit_needs.h"

#include "ui/bookings/tabs/return_rows.h"
#include "ui/bookings/tabs/sheet_table.h"
#include "ui/common/finding_rows.h"
#include "ui/common/widget_parts.h"
#include "ui/logic/edits/shed_edits.h"
#include "ui/logic/models/kit_rows.h"
#include "ui/shell/actions.h"

#include <QDateTime>
#include <QPushButton>
#include <QVBoxLayout>

namespace withy::ui {

namespace {

/// Findings that the kit is about: shelves, trays, tables, the load.
bool isOfKit(const ListedFinding& f) {
    using model::TableKind;
    switch (f.finding.place.table) {
    case TableKind::containers:
    case TableKind::ribbons:
    case TableKind::sundries:
    case TableKind::holders:
    case TableKind::vehicles:
    case TableKind::venueTables:
        return true;
    default:
        return false;
    }
}

} // namespace

KitNeeds::KitNeeds(Workbench& bench, QWidget* parent)
    : SheetTab(bench, QStringLiteral("kit"), parent)
    , rows_(addSheet(QStringLiteral("kit.rows")))
    , returnsHead_(addHead(tr("Out and home again")))
    , returns_(new ReturnRows(bench))
    , ribbon_(namedButton(tr("Ribbon is cut: &write back what is left"), "kit.ribbon_back"))
    , findings_(new FindingRows(bench, QStringLiteral("kit.findings"))) {
    auto* shelves = linkButton(tr("Show the shelves through time"), "kit.shelves");
    body_->insertWidget(body_->count() - 1, returns_);
    body_->insertWidget(body_->count() - 1, ribbon_, 0, Qt::AlignLeft);
    body_->insertWidget(body_->count() - 1, findings_);
    body_->insertWidget(body_->count() - 1, shelves, 0, Qt::AlignLeft);
    connect(shelves, &QPushButton::clicked, this, [this] {
        auto* page = actions_ ? actions_->find(QStringLiteral("page.shed.shelves")) : nullptr;
        if (page) page->trigger();
    });
    connect(returns_, &ReturnRows::refused, this, &KitNeeds::refused);
    connect(ribbon_, &QPushButton::clicked, this, &KitNeeds::writeBack);
    connect(findings_, &FindingRows::leadTo, this, &KitNeeds::leadTo);
    connect(findings_, &FindingRows::refused, this, &KitNeeds::refused);
}

void KitNeeds::fill(const plan::BookingPlan& plan) {
    say(kitAnswer(bench_.season(), plan));
    const auto sheet = kitSheet(bench_.season(), plan);
    rows_->setVisible(!sheet.rows.empty());
    rows_->setSheet(sheet);
    returns_->showBooking(plan);
    returnsHead_->setVisible(!returns_->isEmpty());
    returns_->setVisible(!returns_->isEmpty());
    const auto& shed = bench_.plan().shed;
    const auto* day = edits::ribbonDayOf(shed.get(), plan.booking);
    ribbon_->setVisible(day && shed->ribbon.front().get() == day);
    std::vector<ListedFinding> list;
    for (const auto& f : findings())
        if (isOfKit(f)) list.push_back(f);
    findings_->setFindings(list);
}

void KitNeeds::writeBack() {
    bench_.waitForPlan();
    const auto* day = booking_ ? edits::ribbonDayOf(bench_.plan().shed.get(), *booking_) : nullptr;
    if (!day || bench_.plan().shed->ribbon.front().get() != day) return; // days go back in their order
    const auto clock = QTime::currentTime();
    const LocalTime now{bench_.today().value_or(day->day), clock.hour() * 60 + clock.minute()};
    const auto edit = edits::writeRibbonBack(bench_.season(), *day, now);
    if (!edit) return;
    const QString sentence = bench_.apply(*edit);
    Q_EMIT refused(sentence);
    if (sentence.isEmpty())
        Q_EMIT said(tr("Written back: the reels and ends are as the cutting leaves them."));
}

} // namespace withy::ui
