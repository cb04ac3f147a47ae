// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/shell/help_window.h"

#include "ui/paint/spacing.h"

#include <QFile>
#include <QPushButton>
#include <QTextBrowser>
#include <QVBoxLayout>

namespace withy::ui {

HelpWindow::HelpWindow(QWidget* parent) : QDialog(parent), page_(new QTextBrowser) {
    setWindowTitle(tr("Guide"));
    setModal(false);
    page_->setObjectName(QStringLiteral("guide.page"));
    page_->setAccessibleName(tr("Guide"));
    page_->setSearchPaths({QStringLiteral(":/withy/guide")});
    page_->setOpenExternalLinks(false);
    auto* back = new QPushButton(tr("&Back"));
    auto* contents = new QPushButton(tr("&Contents"));
    auto* shut = new QPushButton(tr("&Shut"));
    auto* row = new QHBoxLayout;
    row->addWidget(back);
    row->addWidget(contents);
    row->addStretch(1);
    row->addWidget(shut);
    auto* column = new QVBoxLayout(this);
    column->addWidget(page_, 1);
    column->addLayout(row);
    back->setEnabled(false);
    connect(back, &QPushButton::clicked, page_, &QTextBrowser::backward);
    connect(page_, &QTextBrowser::backwardAvailable, back, &QPushButton::setEnabled);
    connect(contents, &QPushButton::clicked, this, [this] { open(QStringLiteral("README")); });
    connect(shut, &QPushButton::clicked, this, &QDialog::close);
    resize(grid(190), grid(180));
}

void HelpWindow::open(const QString& page) {
    const QString name = page + QStringLiteral(".md");
    const bool there = QFile::exists(QStringLiteral(":/withy/guide/") + name);
    page_->setSource(QUrl(there ? name : QStringLiteral("README.md")), QTextDocument::MarkdownResource);
    show();
    raise();
    activateWindow();
}

} // namespace withy::ui
