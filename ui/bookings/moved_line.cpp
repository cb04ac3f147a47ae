// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/moved_line.h"

#include "ui/common/text_label.h"
#include "ui/logic/models/finding_list.h"
#include "ui/logic/models/what_moved.h"
#include "ui/paint/spacing.h"

#include <QHBoxLayout>
#include <QPushButton>

#include <utility>

namespace withy::ui {

namespace {

std::shared_ptr<const plan::BookingPlan> planOf(const Workbench& bench,
                                                std::optional<Id<model::Booking>> id) {
    if (!id) return nullptr;
    const auto found = bench.plan().bookings.find(*id);
    return found == bench.plan().bookings.end() ? nullptr : found->second;
}

} // namespace

MovedLine::MovedLine(Workbench& bench, QWidget* parent)
    : QWidget(parent)
    , bench_(bench)
    , words_(new TextLabel(TypeRole::text))
    , undo_(new QPushButton(tr("Undo"))) {
    setProperty("look", QStringLiteral("working"));
    words_->setObjectName(QStringLiteral("booking.moved"));
    words_->setWordWrap(true);
    undo_->setObjectName(QStringLiteral("booking.moved.undo"));
    undo_->setProperty("look", QStringLiteral("link"));
    undo_->setToolTip(tr("Takes the last edit back (Ctrl+Z)"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(grid(3), grid(1), grid(2), grid(1));
    row->addWidget(words_, 1);
    row->addWidget(undo_);
    connect(undo_, &QPushButton::clicked, this, &MovedLine::undoAsked);
    connect(&bench_, &Workbench::planned, this, &MovedLine::compare);
    hide();
}

void MovedLine::watch(std::optional<Id<model::Booking>> id) {
    if (id_ == id) return;
    clear();
    id_ = id;
    now_ = {bench_.season(), planOf(bench_, id)};
    was_.reset();
    toMend_ = countToMend();
}

/// What is wrong with it is known when all parts of the plan are there.
std::optional<int> MovedLine::countToMend() const {
    if (!now_.plan || !bench_.planIsCurrent()) return std::nullopt;
    return toMend(bench_.season(), bench_.plan(), *id_);
}

void MovedLine::clear() {
    words_->clear();
    hide();
}

QString MovedLine::words() const {
    return words_->text();
}

void MovedLine::compare() {
    Stood now{bench_.season(), planOf(bench_, id_)};
    if (now.plan && now_.plan && now.plan != now_.plan) was_ = now_;
    now_ = std::move(now);
    const auto mend = countToMend();
    if (was_ && now_.plan) {
        const QString words =
            whatMoved({was_->season, *was_->plan, toMend_}, {now_.season, *now_.plan, mend});
        if (!words.isEmpty()) {
            words_->setText(words);
            undo_->setEnabled(bench_.canUndo());
            show();
        }
    }
    if (!bench_.planIsCurrent()) return;
    was_.reset();
    toMend_ = mend;
}

} // namespace withy::ui
