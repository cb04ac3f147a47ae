// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/figure.h"

#include "ui/common/text_label.h"
#include "ui/logic/wording.h"
#include "ui/paint/spacing.h"

#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

namespace withy::ui {

FigureButton::FigureButton(QWidget* parent) : QToolButton(parent) {
    setProperty("look", QStringLiteral("figure"));
    setCheckable(true);
    setFocusPolicy(Qt::StrongFocus);
    connect(this, &QToolButton::toggled, this, &FigureButton::opened);
}

void FigureButton::setFacts(const FigureFacts& facts) {
    facts_ = facts;
    setText(facts.figure);
    setAccessibleName(facts.means.isEmpty() ? facts.figure : tr("%1 %2").arg(facts.figure, facts.means));
    setAccessibleDescription(
        tr("Opens its working: %1").arg(lines(facts.working).join(QStringLiteral(", "))));
    setToolTip(tr("How this came about"));
}

WorkingPanel::WorkingPanel(QWidget* parent) : QWidget(parent), rows_(new QVBoxLayout(this)) {
    setAttribute(Qt::WA_StyledBackground);
    setProperty("look", QStringLiteral("working"));
    rows_->setContentsMargins(grid(4), grid(2), grid(4), grid(2));
    rows_->setSpacing(grid(1));
}

void WorkingPanel::setFacts(const FigureFacts& facts) {
    while (auto* item = rows_->takeAt(0)) {
        if (item->widget()) item->widget()->deleteLater();
        delete item;
    }
    const auto words = lines(facts.working);
    for (int i = 0; i < words.size(); ++i) {
        auto* line = new TextLabel(i + 1 == words.size() ? TypeRole::strong : TypeRole::text, words[i]);
        line->setWordWrap(true);
        rows_->addWidget(line);
    }
    if (!facts.leadsTo) return;
    auto* lead = new QPushButton(facts.leadWords.isEmpty() ? tr("Change it") : facts.leadWords);
    lead->setProperty("look", QStringLiteral("link"));
    lead->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    connect(lead, &QPushButton::clicked, this, [this, ref = *facts.leadsTo] { Q_EMIT leadTo(ref); });
    rows_->addWidget(lead);
}

} // namespace withy::ui
