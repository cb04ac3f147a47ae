// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/moved_line.h"

#include "ui/common/text_label.h"
#include "ui/logic/models/what_moved.h"
#include "ui/paint/spacing.h"

#include <QHBoxLayout>
#include <QPushButton>

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
    plan_ = planOf(bench_, id);
    season_ = bench_.season();
}

void MovedLine::clear() {
    words_->clear();
    hide();
}

QString MovedLine::words() const {
    return words_->text();
}

void MovedLine::compare() {
    const auto now = planOf(bench_, id_);
    if (now && plan_ && now != plan_) {
        const QString words = whatMoved({season_, *plan_}, {bench_.season(), *now});
        if (!words.isEmpty()) {
            words_->setText(words);
            undo_->setEnabled(bench_.canUndo());
            show();
        }
    }
    plan_ = now;
    season_ = bench_.season();
}

} // namespace withy::ui
