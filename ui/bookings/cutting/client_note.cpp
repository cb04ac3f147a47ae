// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/cutting/client_note.h"

#include "ui/common/long_text.h"
#include "ui/common/text_label.h"
#include "ui/common/widget_parts.h"
#include "ui/logic/edits/share_edits.h"
#include "ui/paint/spacing.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

namespace withy::ui {

ClientNote::ClientNote(Workbench& bench, QWidget* parent)
    : QWidget(parent), bench_(bench), words_(new LongTextEdit(this)) {
    words_->setObjectName(QStringLiteral("share.client.words"));
    words_->setAccessibleName(tr("Words for the client"));
    auto* copy = namedButton(tr("Copy the words"), "share.client.copy");
    auto* told = namedButton(tr("Told them"), "share.client.told");
    auto* later = namedButton(tr("Still to tell"), "share.client.later");
    auto* row = new QHBoxLayout;
    row->setSpacing(grid(2));
    for (auto* button : {copy, told, later})
        row->addWidget(button);
    row->addStretch(1);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->setSpacing(grid(2));
    all->addWidget(words_);
    all->addLayout(row);
    connect(copy, &QPushButton::clicked, this, [this] {
        QGuiApplication::clipboard()->setText(words_->toPlainText());
        Q_EMIT said(tr("Copied. Change it as you like before it goes."));
    });
    connect(told, &QPushButton::clicked, this, [this] { keep(true); });
    connect(later, &QPushButton::clicked, this, [this] { keep(false); });
}

void ClientNote::setDraft(Id<model::Booking> booking, Day bench, const QString& draft) {
    const bool untouched = words_->toPlainText() == draft_ || booking != booking_;
    booking_ = booking;
    needed_ = bench;
    draft_ = draft;
    if (untouched) words_->setPlainText(draft);
}

void ClientNote::enter() {
    words_->setFocus();
}

void ClientNote::keep(bool told) {
    const QString words = words_->toPlainText().trimmed();
    if (words.isEmpty()) return;
    const auto day = told ? std::optional(bench_.today().value_or(needed_)) : std::nullopt;
    const QString trouble = bench_.apply(edits::noteTold(bench_.season(), booking_, words, day, needed_));
    Q_EMIT refused(trouble);
    if (trouble.isEmpty())
        Q_EMIT said(told ? tr("Noted in the brief as told.")
                         : tr("It stays in the brief as an open question."));
}

} // namespace withy::ui
