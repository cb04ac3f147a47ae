// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/designs/erase_bar.h"

#include "ui/common/text_label.h"
#include "ui/logic/format.h"
#include "ui/logic/models/design_words.h"
#include "ui/paint/spacing.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPushButton>

namespace withy::ui {

EraseBar::EraseBar(Workbench& bench, QWidget* parent)
    : QWidget(parent)
    , bench_(bench)
    , words_(new TextLabel(TypeRole::text))
    , leave_(new QPushButton(tr("&Leave it"))) {
    setProperty("look", QStringLiteral("mist"));
    setObjectName(QStringLiteral("designs.erase.bar"));
    words_->setWordWrap(true);
    auto* both = new QPushButton(tr("&Take it out there as well"));
    both->setObjectName(QStringLiteral("designs.erase.both"));
    leave_->setObjectName(QStringLiteral("designs.erase.leave"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(pageMargin(), grid(2), pageMargin(), grid(2));
    row->setSpacing(grid(2));
    row->addWidget(words_, 1);
    row->addWidget(both);
    row->addWidget(leave_);
    connect(both, &QPushButton::clicked, this,
            [this] { erase(edits::eraseDesignAndLines(bench_.season(), design_)); });
    connect(leave_, &QPushButton::clicked, this, &EraseBar::leave);
    connect(&bench_, &Workbench::changed, this, [this] {
        if (stillUsedWords(bench_.season(), design_).isEmpty()) hide();
    });
    hide();
}

void EraseBar::ask(Id<model::Design> design) {
    design_ = design;
    const QString words = stillUsedWords(bench_.season(), design);
    if (words.isEmpty()) return erase(edits::eraseDesign(bench_.season(), design));
    words_->setText(words);
    show();
    leave_->setFocus();
}

void EraseBar::erase(const model::Edit& edit) {
    const auto* d = bench_.season().designs.find(design_);
    const QString name = d ? text(d->name) : QString();
    if (!bench_.take(edit)) return;
    hide();
    Q_EMIT erased(name);
}

void EraseBar::leave() {
    hide();
    Q_EMIT left();
}

void EraseBar::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) return leave();
    QWidget::keyPressEvent(event);
}

} // namespace withy::ui
