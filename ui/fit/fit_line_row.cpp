// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/fit/fit_line_row.h"

#include "ui/common/stepper.h"
#include "ui/common/text_label.h"
#include "ui/paint/spacing.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

namespace withy::ui {

FitLineRow::FitLineRow(int index, QWidget* parent)
    : QWidget(parent)
    , count_(new Stepper(tr("How many")))
    , name_(new TextLabel(TypeRole::strong))
    , note_(new TextLabel(TypeRole::caption, {}, Ink::second))
    , away_(new QPushButton(tr("Leave out"))) {
    const QString name = QStringLiteral("fit.line.%1").arg(index);
    setObjectName(name);
    count_->setObjectName(name + QStringLiteral(".count"));
    count_->setRange(1, 1000);
    away_->setObjectName(name + QStringLiteral(".away"));
    away_->setProperty("look", QStringLiteral("link"));
    name_->setWordWrap(true);
    note_->setWordWrap(true);
    auto* words = new QVBoxLayout;
    words->setSpacing(0);
    words->addWidget(name_);
    words->addWidget(note_);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, grid(1), 0, grid(1));
    row->setSpacing(grid(3));
    row->addWidget(count_, 0, Qt::AlignTop);
    row->addLayout(words, 1);
    row->addWidget(away_, 0, Qt::AlignTop);
    connect(count_, &Stepper::changed, this, &FitLineRow::counted);
    connect(away_, &QPushButton::clicked, this, &FitLineRow::removed);
}

void FitLineRow::showLine(const model::Season& season, const FitPieces& line) {
    const QString name = fitLineName(season, line);
    count_->follow(countOf(line));
    count_->setAccessibleLabel(tr("How many: %1").arg(name));
    name_->setText(breakable(name));
    note_->setText(fitLineNote(line));
    note_->setVisible(!note_->text().isEmpty());
    away_->setAccessibleName(tr("Leave out: %1").arg(name));
}

} // namespace withy::ui
