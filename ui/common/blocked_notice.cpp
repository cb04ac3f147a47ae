// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/blocked_notice.h"

#include "ui/common/text_label.h"
#include "ui/paint/spacing.h"

#include <QHBoxLayout>
#include <QPushButton>

namespace withy::ui {

BlockedNotice::BlockedNotice(RecordTable& table, QWidget* parent)
    : QWidget(parent), table_(table), words_(new TextLabel(TypeRole::text)) {
    setProperty("look", QStringLiteral("working"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(grid(4), grid(2), grid(4), grid(2));
    row->setSpacing(grid(2));
    words_->setWordWrap(true);
    auto* blank = new QPushButton(tr("Take it out, leave it blank there"));
    auto* leave = new QPushButton(tr("Leave it"));
    blank->setObjectName(QStringLiteral("blocked.blank"));
    leave->setObjectName(QStringLiteral("blocked.leave"));
    blank_ = blank;
    row->addWidget(words_, 1);
    row->addWidget(blank);
    row->addWidget(leave);
    hide();
    connect(&table, &RecordTable::blocked, this, &BlockedNotice::ask);
    connect(&table, &RecordTable::chosen, this, &QWidget::hide);
    connect(blank, &QPushButton::clicked, this, [this] {
        hide();
        table_.eraseChosenAndBlank();
        table_.setFocus();
    });
    connect(leave, &QPushButton::clicked, this, [this] {
        hide();
        table_.setFocus();
    });
}

void BlockedNotice::ask(const QString& sentence) {
    words_->setText(sentence);
    blank_->setVisible(table_.records().planErase(table_.chosenIds()).blankingHelps());
    show();
}

QString BlockedNotice::sentence() const {
    return words_->text();
}

} // namespace withy::ui
