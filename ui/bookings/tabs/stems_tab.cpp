// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/tabs/stems_tab.h"

#include "ui/bookings/tabs/row_marks.h"
#include "ui/bookings/tabs/sheet_table.h"
#include "ui/common/finding_rows.h"
#include "ui/common/widget_parts.h"
#include "ui/logic/edits/cover_edits.h"
#include "ui/logic/models/cover_facts.h"
#include "ui/logic/models/cover_rows.h"
#include "ui/logic/models/stem_rows.h"
#include "ui/logic/models/stem_sources.h"
#include "ui/shell/actions.h"

#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace withy::ui {

StemsTab::StemsTab(Workbench& bench, QWidget* parent)
    : SheetTab(bench, QStringLiteral("stems"), parent)
    , bar_(new ShareBar)
    , findings_(new FindingRows(bench, QStringLiteral("stems.findings"))) {
    body_->insertWidget(body_->count() - 1, bar_);
    auto* cutting = namedButton(tr("C&utting day"), "stems.cutting_day");
    cutting->setToolTip(tr("Tally what comes in, plant by plant"));
    body_->insertWidget(body_->count() - 1, cutting, 0, Qt::AlignLeft);
    connect(cutting, &QPushButton::clicked, this, [this] {
        if (auto* open = actions_ ? actions_->find(QStringLiteral("booking.cutting")) : nullptr)
            open->trigger();
    });
    cover_ = addSheet(QStringLiteral("stems.cover"));
    connect(cover_, &SheetTable::wayTaken, this, &StemsTab::take);
    needsHead_ = addHead(tr("Spare, lengths and when to cut"));
    stems_ = addSheet(QStringLiteral("stems.rows"));
    roundsHead_ = addHead(tr("Cutting rounds"));
    rounds_ = addSheet(QStringLiteral("stems.rounds"));
    body_->insertWidget(body_->count() - 1, findings_);
    connect(findings_, &FindingRows::leadTo, this, &StemsTab::leadTo);
    connect(findings_, &FindingRows::refused, this, &StemsTab::refused);
}

void StemsTab::addActions(Actions& actions) {
    actions_ = &actions;
}

void StemsTab::fill(const plan::BookingPlan& plan) {
    const auto list = findings();
    const auto* cover = coverOf(bench_.plan(), plan.booking);
    const bool known = cover && !cover->slots.empty();
    const auto& all = bench_.plan().cover;
    if (all && all->fault)
        say({{coverFaultSentence(bench_.season(), *all->fault), AnswerPart::Weight::asks}});
    else if (known)
        fillCover(plan);
    else
        say(stemAnswer(bench_.season(), plan, list));
    cover_->setVisible(known);
    needsHead_->setVisible(known);
    bar_->setShares(stemShares(bench_.season(), plan));
    stems_->setSheet(stemSheet(bench_.season(), bench_.plan(), plan));
    stems_->setVisible(!plan.lines.empty());
    const Sheet rounds = roundSheet(bench_.season(), bench_.plan(), plan);
    rounds_->setSheet(rounds);
    rounds_->setVisible(!rounds.rows.empty());
    roundsHead_->setVisible(!rounds.rows.empty());
    findings_->setFindings(list);
}

void StemsTab::fillCover(const plan::BookingPlan& plan) {
    const auto& all = *bench_.plan().cover;
    const CutTimes times(bench_.plan(), plan.booking);
    const CoverView view{bench_.season(),           plan, all, *coverOf(bench_.plan(), plan.booking), times,
                         bench_.plan().garden.get()};
    say(coverAnswer(view));
    cover_->setSheet(coverSheet(view));
}

/// The mend that was pressed, as the plan of now proposes it: by a second press in a row there is none.
const plan::Mend* StemsTab::mendNow(const plan::SlotCover& slot, const plan::Mend& pressed) {
    const auto same = [&](const plan::Mend& m) { return m.kind == pressed.kind && m.plant == pressed.plant; };
    const auto found = std::find_if(slot.mends.begin(), slot.mends.end(), same);
    return found == slot.mends.end() ? nullptr : &*found;
}

void StemsTab::take(const QString& row, int way) {
    const auto* before = booking_ ? coverOf(bench_.plan(), *booking_) : nullptr;
    const auto* was = before ? slotOf(*before, row) : nullptr;
    if (!was || way < 0 || static_cast<std::size_t>(way) >= was->mends.size()) return;
    const plan::Mend pressed = was->mends[static_cast<std::size_t>(way)];
    bench_.waitForPlan();
    const auto found = bench_.plan().bookings.find(*booking_);
    const auto* cover = coverOf(bench_.plan(), *booking_);
    const auto* slot = cover ? slotOf(*cover, row) : nullptr;
    if (found == bench_.plan().bookings.end() || !slot) return;
    if (const auto* mend = mendNow(*slot, pressed))
        Q_EMIT refused(bench_.apply(edits::takeMend(bench_.season(), *found->second, *slot, *mend)));
}

} // namespace withy::ui
