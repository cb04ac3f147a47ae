// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/brief_questions.h"

#include "ui/common/record_table.h"

#include <QPushButton>

namespace withy::ui {

namespace {

constexpr int soon = 2; ///< days

RecordTableSpec questions(bool answered) {
    RecordTableSpec spec;
    spec.kind = model::TableKind::questions;
    spec.columns = {"text", "answer", "needed_by"};
    spec.parent = std::pair{std::string("booking"), std::int64_t{0}};
    spec.sortField = "needed_by";
    spec.addRow = !answered;
    spec.filter = [answered](const model::Season& season, std::int64_t id) {
        const auto* q = season.questions.find(Id<model::Question>(id));
        return q && q->answer.empty() != answered;
    };
    return spec;
}

} // namespace

BriefQuestions::BriefQuestions(Workbench& bench, QWidget* parent)
    : Group(tr("Open questions"), parent)
    , bench_(bench)
    , open_(new RecordTable(bench, questions(false)))
    , fold_(new QPushButton)
    , answered_(new RecordTable(bench, questions(true))) {
    open_->setObjectName(QStringLiteral("brief.open"));
    open_->setAccessibleName(tr("Open questions"));
    open_->setEmptyWords(tr("Nothing to ask yet."));
    open_->growWithRows();
    open_->setAsks([this](std::int64_t id, int column) {
        const auto* q = bench_.season().questions.find(Id<model::Question>(id));
        const auto today = bench_.today();
        return column == open_->records().columnOf("needed_by") && q && today && q->neededBy &&
               *q->neededBy <= *today + soon;
    });
    answered_->setObjectName(QStringLiteral("brief.answered"));
    answered_->setAccessibleName(tr("Answered questions"));
    answered_->growWithRows();
    answered_->hide();
    fold_->setObjectName(QStringLiteral("brief.showAnswered"));
    fold_->setProperty("look", QStringLiteral("link"));
    fold_->setCheckable(true);
    fold_->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    add(open_);
    add(fold_);
    add(answered_);
    connect(fold_, &QPushButton::toggled, this, [this] { refresh(); });
    for (auto* table : {open_, answered_}) {
        connect(table, &RecordTable::refused, this, &BriefQuestions::refused);
        connect(table, &RecordTable::blocked, this, &BriefQuestions::refused);
    }
    connect(&bench_, &Workbench::changed, this, &BriefQuestions::refresh);
}

void BriefQuestions::showBooking(std::optional<Id<model::Booking>> id) {
    if (id_ != id) fold_->setChecked(false);
    id_ = id;
    const auto parent = id ? std::optional(id->value) : std::nullopt;
    open_->showParent(parent);
    answered_->showParent(parent);
    refresh();
}

void BriefQuestions::refresh() {
    int answered = 0;
    for (const auto& q : bench_.season().questions)
        answered += id_ && q.booking == *id_ && !q.answer.empty() ? 1 : 0;
    fold_->setVisible(answered > 0);
    fold_->setText(fold_->isChecked() ? tr("Fold the answered") : tr("Show %n answered", nullptr, answered));
    answered_->setVisible(answered > 0 && fold_->isChecked());
}

} // namespace withy::ui
