// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/tabs/return_rows.h"

#include "ui/common/stepper.h"
#include "ui/common/text_label.h"
#include "ui/common/widget_parts.h"
#include "ui/logic/edits/shed_edits.h"
#include "ui/paint/spacing.h"

#include <QGridLayout>
#include <QPushButton>
#include <QVBoxLayout>

namespace withy::ui {

ReturnRows::ReturnRows(Workbench& bench, QWidget* parent)
    : QWidget(parent), bench_(bench), column_(new QVBoxLayout(this)) {
    setObjectName(QStringLiteral("kit.returns"));
    column_->setContentsMargins(0, 0, 0, 0);
    column_->setSpacing(grid(2));
}

void ReturnRows::showBooking(const plan::BookingPlan& plan) {
    booking_ = plan.booking;
    const auto facts = returnFacts(bench_.season(), plan, bench_.today());
    bool same = facts.size() == rows_.size();
    for (std::size_t i = 0; same && i < facts.size(); ++i)
        same = rows_[i].facts.container == facts[i].container;
    if (!same) make(facts);
    for (std::size_t i = 0; i < facts.size(); ++i) {
        auto& row = rows_[i];
        row.facts = facts[i];
        row.name->setText(breakable(facts[i].name));
        row.back->setRange(0, facts[i].out);
        row.broken->setRange(0, facts[i].out);
        row.back->follow(facts[i].back.value_or(0));
        row.broken->follow(facts[i].broken.value_or(0));
        row.said->setText(facts[i].said);
        row.said->setInk(facts[i].asks ? Ink::osier : Ink::second);
        row.all->setVisible(!facts[i].home);
    }
}

void ReturnRows::make(const std::vector<ReturnFacts>& facts) {
    clearLayout(*column_);
    rows_.clear();
    for (std::size_t i = 0; i < facts.size(); ++i) {
        const QString id = QStringLiteral("kit.return.%1").arg(facts[i].container.value);
        Row row;
        row.facts = facts[i];
        row.name = new TextLabel(TypeRole::strong);
        row.name->setWordWrap(true);
        row.said = new TextLabel(TypeRole::caption, {}, Ink::second);
        row.said->setWordWrap(true);
        row.back = new Stepper(tr("%1 that came back").arg(facts[i].name));
        row.back->setObjectName(id + QStringLiteral(".back"));
        row.broken = new Stepper(tr("%1 that broke").arg(facts[i].name));
        row.broken->setObjectName(id + QStringLiteral(".broken"));
        row.all = new QPushButton(tr("All home"));
        row.all->setObjectName(id + QStringLiteral(".all"));
        row.all->setAccessibleName(tr("All %1 are home, none broken").arg(facts[i].name));
        auto* view = new QWidget;
        auto* cells = new QGridLayout(view);
        cells->setContentsMargins(0, 0, 0, 0);
        cells->setHorizontalSpacing(grid(2));
        cells->setVerticalSpacing(grid(0.5));
        cells->addWidget(row.name, 0, 0, 1, 5);
        cells->addWidget(row.back, 1, 0);
        cells->addWidget(new TextLabel(TypeRole::text, tr("back")), 1, 1);
        cells->addWidget(row.broken, 1, 2);
        cells->addWidget(new TextLabel(TypeRole::text, tr("broken")), 1, 3);
        cells->addWidget(row.all, 1, 4, Qt::AlignLeft);
        cells->setColumnStretch(4, 1);
        cells->addWidget(row.said, 2, 0, 1, 5);
        column_->addWidget(view);
        connect(row.back, &Stepper::changed, this, [this, i](qint64 n) { count(i, n, counted(i).broken); });
        connect(row.broken, &Stepper::changed, this, [this, i](qint64 n) {
            const auto f = counted(i);
            // What broke cannot be back: the two never come to more than went out.
            const auto back =
                f.back ? std::optional(std::min<std::int64_t>(*f.back, f.out - n)) : std::nullopt;
            count(i, back, n);
        });
        connect(row.all, &QPushButton::clicked, this, [this, i] {
            const auto f = counted(i);
            count(i, f.out - f.broken.value_or(0), f.broken.value_or(0));
        });
        rows_.push_back(row);
    }
}

/// As the season has it now: the plan may not have seen the last count yet.
ReturnFacts ReturnRows::counted(std::size_t i) const {
    ReturnFacts f = rows_[i].facts;
    for (const auto& r : bench_.season().returns) {
        if (!booking_ || r.booking != *booking_ || r.container != f.container) continue;
        f.back = r.back;
        f.broken = r.broken;
        break;
    }
    return f;
}

void ReturnRows::count(std::size_t i, std::optional<std::int64_t> back, std::optional<std::int64_t> broken) {
    if (!booking_) return;
    const auto& f = rows_[i].facts;
    Q_EMIT refused(
        bench_.apply(edits::noteReturn(bench_.season(), *booking_, f.container, {f.out, back, broken})));
}

} // namespace withy::ui
