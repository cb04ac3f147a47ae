// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/strip/strip_table.h"

#include "ui/common/text_label.h"
#include "ui/common/when_seen.h"
#include "ui/logic/models/strip_table_model.h"
#include "ui/logic/models/strip_words.h"
#include "ui/logic/workbench.h"
#include "ui/paint/spacing.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QHeaderView>
#include <QPushButton>
#include <QShortcut>
#include <QTableView>
#include <QVBoxLayout>

namespace withy::ui {

StripTable::StripTable(Workbench& bench, QWidget* parent)
    : QDialog(parent), bench_(bench), model_(new StripTableModel(this)), view_(new QTableView) {
    setWindowTitle(tr("What stands ready, week by week"));
    setModal(false);
    setObjectName(QStringLiteral("strip.table"));
    auto* words = new TextLabel(
        TypeRole::text, tr("Stems standing ready on each Monday, at the likely level, if none are cut."),
        Ink::second);
    words->setWordWrap(true);
    view_->setObjectName(QStringLiteral("strip.table.rows"));
    view_->setAccessibleName(tr("Stems standing ready, weeks by plants"));
    view_->setModel(model_);
    view_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    view_->setTabKeyNavigation(false);
    view_->setCornerButtonEnabled(false);
    auto* copy = new QPushButton(tr("&Copy"));
    copy->setObjectName(QStringLiteral("strip.table.copy"));
    copy->setToolTip(tr("The whole table, for a spreadsheet"));
    auto* shut = new QPushButton(tr("&Shut"));
    shut->setObjectName(QStringLiteral("strip.table.shut"));
    auto* row = new QHBoxLayout;
    row->addWidget(copy);
    row->addStretch(1);
    row->addWidget(shut);
    auto* column = new QVBoxLayout(this);
    column->addWidget(words);
    column->addWidget(view_, 1);
    column->addLayout(row);
    connect(copy, &QPushButton::clicked, this, &StripTable::copy);
    connect(shut, &QPushButton::clicked, this, &QDialog::close);
    connect(new QShortcut(QKeySequence::Copy, view_), &QShortcut::activated, this, &StripTable::copy);
    auto* seen = new WhenSeen(this, [this] { refresh(); });
    connect(&bench_, &Workbench::planned, seen, [seen] { seen->ask(); });
    resize(grid(220), grid(140));
}

void StripTable::refresh() {
    model_->setFigures(stripFigures(bench_.season(), bench_.plan(), bench_.today()));
    view_->resizeColumnsToContents();
}

void StripTable::open() {
    refresh();
    show();
    raise();
    activateWindow();
    view_->setFocus();
    if (!view_->currentIndex().isValid()) view_->setCurrentIndex(model_->index(0, 0));
}

void StripTable::copy() {
    QGuiApplication::clipboard()->setText(model_->asText());
}

} // namespace withy::ui
