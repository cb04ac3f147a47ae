// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/season/backups_page.h"

#include "ui/common/copy_rows.h"
#include "ui/common/text_label.h"
#include "ui/common/widget_parts.h"
#include "ui/logic/answers/season_answers.h"
#include "ui/logic/models/backups_model.h"
#include "ui/logic/season_opening.h"
#include "ui/paint/spacing.h"
#include "ui/shell/actions.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

namespace withy::ui {

BackupsPage::BackupsPage(Workbench& bench, QWidget* parent)
    : SubPage(bench, parent)
    , folder_(usualBackupsFolder())
    , model_(new BackupsModel(this))
    , view_(new QTableView)
    , confirm_(new QWidget)
    , words_(new TextLabel(TypeRole::text))
    , restore_(namedButton(tr("&Restore..."), "season.backups.restore"))
    , tools_(new QWidget(this)) {
    auto* tools = new QHBoxLayout(tools_);
    tools->setContentsMargins(0, 0, 0, 0);
    tools->setSpacing(grid(2));
    auto* now = namedButton(tr("Back &up now"), "season.backups.now");
    tools->addWidget(now);
    tools->addWidget(restore_);
    view_->setModel(model_);
    view_->setObjectName(QStringLiteral("season.backups.table"));
    view_->setAccessibleName(tr("Backups, newest first"));
    view_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    view_->setSelectionBehavior(QAbstractItemView::SelectRows);
    copiesRows(view_, [this](const QString& words) { Q_EMIT said(words); });
    view_->setShowGrid(false);
    view_->setTabKeyNavigation(false);
    view_->setWordWrap(false);
    view_->verticalHeader()->hide();
    view_->verticalHeader()->setDefaultSectionSize(tableRow());
    view_->horizontalHeader()->setHighlightSections(false);
    view_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    view_->horizontalHeader()->setStretchLastSection(false);
    confirm_->setProperty("look", QStringLiteral("working"));
    auto* question = new QVBoxLayout(confirm_);
    question->setContentsMargins(grid(4), grid(3), grid(4), grid(3));
    question->setSpacing(grid(3));
    words_->setWordWrap(true);
    words_->setObjectName(QStringLiteral("season.backups.words"));
    auto* choices = new QHBoxLayout;
    choices->setSpacing(grid(2));
    auto* yes = namedButton(tr("Pu&t it back"), "season.backups.put_back");
    auto* no = namedButton(tr("&Leave it"), "season.backups.leave");
    yes->setProperty("look", QStringLiteral("main"));
    choices->addWidget(yes);
    choices->addWidget(no);
    choices->addStretch();
    question->addWidget(words_);
    question->addLayout(choices);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, grid(2), 0, 0);
    column->setSpacing(grid(2));
    column->addWidget(confirm_);
    column->addWidget(view_, 1);
    connect(now, &QPushButton::clicked, this, &BackupsPage::make);
    connect(restore_, &QPushButton::clicked, this, &BackupsPage::ask);
    connect(view_, &QTableView::activated, this, &BackupsPage::ask);
    connect(no, &QPushButton::clicked, this, &BackupsPage::leave);
    connect(view_->selectionModel(), &QItemSelectionModel::currentChanged, this, [this] {
        asked_.reset();
        confirm_->hide();
    });
    connect(yes, &QPushButton::clicked, this, [this] {
        if (!asked_) return;
        const auto backup = *asked_;
        leave();
        Q_EMIT restoreWanted(backup);
    });
    confirm_->hide();
    restore_->setEnabled(false);
}

Answer BackupsPage::answer() const {
    return backupsAnswer(static_cast<int>(model_->backups().size()),
                         model_->backups().empty() ? QString()
                                                   : model_->index(0, BackupsModel::age).data().toString());
}

void BackupsPage::addActions(Actions& actions) {
    actions.add({"season.backups.make", tr("&Back up now"), Qt::CTRL | Qt::Key_B,
                 tr("A copy beside the others, checked once it is written")},
                [this] {
                    Q_EMIT wanted();
                    make();
                });
    actions.add({"season.backups.restore_one",
                 tr("&Restore a backup..."),
                 {},
                 tr("Choose one of the list; says first what is put back")},
                [this] {
                    Q_EMIT wanted();
                    enter();
                });
}

void BackupsPage::enter() {
    refresh();
    view_->setFocus();
}

QWidget* BackupsPage::tools() const {
    return tools_;
}

void BackupsPage::refresh() {
    asked_.reset(); // the list below the question is another
    confirm_->hide();
    model_->show(backupsOf(bench_.path(), folder_), QDateTime::currentDateTimeUtc());
    if (model_->rowCount() > 0) view_->setCurrentIndex(model_->index(0, 0));
    restore_->setEnabled(model_->rowCount() > 0);
    Q_EMIT answerChanged();
}

void BackupsPage::showEvent(QShowEvent* event) {
    SubPage::showEvent(event);
    refresh();
}

void BackupsPage::make() {
    const QString words = backUpNow(bench_.path(), folder_, QDateTime::currentDateTimeUtc());
    Q_EMIT refused(words);
    refresh();
    if (words.isEmpty()) Q_EMIT said(tr("A backup was made and checked."));
}

void BackupsPage::ask() {
    const int row = view_->currentIndex().row();
    if (row < 0) return;
    asked_ = model_->backups()[static_cast<std::size_t>(row)];
    words_->setText(restoreWords(*asked_));
    confirm_->show();
    if (auto* no = confirm_->findChild<QPushButton*>(QStringLiteral("season.backups.leave"))) no->setFocus();
}

void BackupsPage::leave() {
    asked_.reset();
    confirm_->hide();
    view_->setFocus();
}

} // namespace withy::ui
