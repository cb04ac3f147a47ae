// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/season/tables_page.h"

#include "core/model/schema.h"
#include "ui/common/list_and_detail.h"
#include "ui/common/text_label.h"
#include "ui/common/widget_parts.h"
#include "ui/logic/answers/season_answers.h"
#include "ui/logic/table_names.h"
#include "ui/paint/spacing.h"
#include "ui/shell/actions.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

namespace withy::ui {

TablesPage::TablesPage(Workbench& bench, QWidget* parent)
    : SubPage(bench, parent)
    , list_(new QListWidget)
    , what_(new TextLabel(TypeRole::text))
    , take_(namedButton(tr("&Take it in"), "season.tables.take"))
    , leave_(namedButton(tr("&Leave it"), "season.tables.leave")) {
    list_->setObjectName(QStringLiteral("season.tables.list"));
    list_->setAccessibleName(tr("Tables of the season"));
    list_->setUniformItemSizes(true);
    take_->setProperty("look", QStringLiteral("main"));
    what_->setWordWrap(true);
    what_->setObjectName(QStringLiteral("season.tables.what"));
    auto* detail = new QWidget;
    auto* side = new QVBoxLayout(detail);
    side->setContentsMargins(grid(6), 0, 0, 0);
    side->setSpacing(grid(3));
    auto* both = new QHBoxLayout;
    both->setSpacing(grid(2));
    auto* out = namedButton(tr("E&xport as CSV"), "season.tables.export_button");
    auto* in = namedButton(tr("&Import from CSV"), "season.tables.import_button");
    both->addWidget(out);
    both->addWidget(in);
    both->addStretch();
    auto* choices = new QHBoxLayout;
    choices->setSpacing(grid(2));
    choices->addWidget(take_);
    choices->addWidget(leave_);
    choices->addStretch();
    auto* caption = new TextLabel(TypeRole::caption,
                                  tr("A row with the number of a record changes that record; any other row "
                                     "makes a new one. All rows are "
                                     "taken or none, and one Undo puts them back."),
                                  Ink::caption);
    caption->setWordWrap(true);
    side->addLayout(both);
    side->addWidget(what_);
    side->addLayout(choices);
    side->addWidget(caption);
    side->addStretch();
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, grid(2), 0, 0);
    auto* split = new ListAndDetail(list_, detail);
    split->setListShare(40);
    column->addWidget(split);
    connect(out, &QPushButton::clicked, this, &TablesPage::askAndWrite);
    connect(in, &QPushButton::clicked, this, &TablesPage::askAndRead);
    connect(take_, &QPushButton::clicked, this, &TablesPage::take);
    connect(leave_, &QPushButton::clicked, this, &TablesPage::forget);
    connect(list_, &QListWidget::currentRowChanged, this, &TablesPage::forget);
    connect(&bench, &Workbench::changed, this, [this] {
        if (read_) forget(); // its new ids may be taken by now: it is read anew
        fill();
        Q_EMIT answerChanged();
    });
    fill();
    list_->setCurrentRow(0);
    forget();
}

Answer TablesPage::answer() const {
    return tablesAnswer(bench_.season());
}

void TablesPage::addActions(Actions& actions) {
    actions.add({"season.tables.export",
                 tr("&Export the chosen table as CSV…"),
                 {},
                 tr("All its rows, for a spreadsheet")},
                [this] {
                    Q_EMIT wanted();
                    askAndWrite();
                });
    actions.add({"season.tables.import",
                 tr("&Import the chosen table from CSV…"),
                 {},
                 tr("Says first what would change; one step to undo")},
                [this] {
                    Q_EMIT wanted();
                    askAndRead();
                });
}

void TablesPage::enter() {
    list_->setFocus();
}

void TablesPage::fill() {
    const auto& tables = model::allTables();
    while (list_->count() < static_cast<int>(tables.size()))
        list_->addItem(new QListWidgetItem);
    for (int i = 0; i < list_->count(); ++i)
        list_->item(i)->setText(tableWithCount(bench_.season(), tables[static_cast<std::size_t>(i)].kind));
}

model::TableKind TablesPage::chosenTable() const {
    const int row = list_->currentRow();
    return row < 0 ? model::TableKind::none : model::allTables()[static_cast<std::size_t>(row)].kind;
}

bool TablesPage::writeTo(const QString& path) {
    const QString words = writeTable(bench_.season(), chosenTable(), path);
    Q_EMIT refused(words);
    if (words.isEmpty()) Q_EMIT said(writtenWords(path));
    return words.isEmpty();
}

void TablesPage::readFrom(const QString& path) {
    auto reading = readTable(bench_.season(), chosenTable(), path);
    read_ = std::move(reading.edit);
    what_->setText(read_ ? tr("%1: %2").arg(QFileInfo(path).fileName(), reading.sentence) : reading.sentence);
    what_->setInk(read_ ? Ink::text : Ink::osier);
    take_->setVisible(read_.has_value());
    leave_->setVisible(true);
    what_->setVisible(true);
    if (read_) take_->setFocus();
}

bool TablesPage::take() {
    if (!read_) return false;
    const QString words = bench_.apply(*read_);
    Q_EMIT refused(words);
    if (!words.isEmpty()) return false;
    forget();
    Q_EMIT said(tr("Taken in. Undo puts everything back."));
    list_->setFocus();
    return true;
}

void TablesPage::forget() {
    read_.reset();
    what_->hide();
    take_->hide();
    leave_->hide();
}

void TablesPage::askAndWrite() {
    const QString path = QFileDialog::getSaveFileName(this, tr("Export as CSV"), tableFileName(chosenTable()),
                                                      tr("CSV tables (*.csv)"));
    if (!path.isEmpty()) writeTo(path);
}

void TablesPage::askAndRead() {
    const QString path =
        QFileDialog::getOpenFileName(this, tr("Import from CSV"), {}, tr("CSV tables (*.csv)"));
    if (!path.isEmpty()) readFrom(path);
}

} // namespace withy::ui
