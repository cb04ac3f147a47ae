// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/tabs/kit_needs.h"

#include "ui/bookings/tabs/return_rows.h"
#include "ui/bookings/tabs/sheet_table.h"
#include "ui/common/finding_rows.h"
#include "ui/common/widget_parts.h"
#include "ui/logic/models/kit_rows.h"
#include "ui/logic/shed/return_words.h"
#include "ui/shell/actions.h"

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
    const auto* shed = bench_.plan().shed.get();
    say(kitAnswer(bench_.season(), plan, shed));
    const auto sheet = kitSheet(bench_.season(), plan, shed);
    rows_->setVisible(!sheet.rows.empty());
    rows_->setSheet(sheet);
    returns_->showBooking(plan);
    returnsHead_->setVisible(!returns_->isEmpty());
    returns_->setVisible(!returns_->isEmpty());
    const auto back = ribbonBack(bench_.season(), bench_.plan().shed.get(), plan.booking);
    ribbon_->setVisible(back.state == RibbonBack::State::offered);
    ribbon_->setToolTip(back.words + QLatin1Char('\n') + back.lines.join(QLatin1Char('\n')));
    std::vector<ListedFinding> list;
    for (const auto& f : findings())
        if (isOfKit(f)) list.push_back(f);
    findings_->setFindings(list);
}

void KitNeeds::writeBack() {
    if (!booking_) return;
    const auto back = ribbonBack(bench_.season(), bench_.plan().shed.get(), *booking_);
    if (back.state != RibbonBack::State::offered) return;
    bool written = false;
    Q_EMIT refused(writeRibbonBack(bench_, back.day, written));
    if (written) Q_EMIT said(ribbonIsBackWords());
}

} // namespace withy::ui
