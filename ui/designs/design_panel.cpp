// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/designs/design_panel.h"

#include "ui/common/drawn_design.h"
#include "ui/common/style.h"
#include "ui/common/text_label.h"
#include "ui/common/when_seen.h"
#include "ui/common/widget_parts.h"
#include "ui/designs/bloom_dot.h"
#include "ui/logic/format.h"
#include "ui/logic/models/design_words.h"
#include "ui/paint/spacing.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QPushButton>

namespace withy::ui {

DesignPanel::DesignPanel(Workbench& bench, QWidget* parent)
    : QWidget(parent)
    , bench_(bench)
    , name_(new TextLabel(TypeRole::title))
    , group_(new TextLabel(TypeRole::text, {}, Ink::second))
    , picture_(new DrawnDesign(bench))
    , open_(new QPushButton(tr("&Open at the bench")))
    , use_(new QPushButton(tr("&Use in...")))
    , rows_(new QVBoxLayout)
    , used_(new TextLabel(TypeRole::caption, {}, Ink::caption))
    , bloom_(new TextLabel(TypeRole::caption, {}, Ink::caption)) {
    bloom_->setWordWrap(true);
    name_->setWordWrap(true);
    group_->setWordWrap(true);
    used_->setWordWrap(true);
    open_->setObjectName(QStringLiteral("designs.panel.open"));
    open_->setProperty("look", QStringLiteral("main"));
    use_->setObjectName(QStringLiteral("designs.panel.use"));
    picture_->setGround(true);
    onGrid(picture_, &QWidget::setFixedHeight, 56);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(grid(2));
    buttons->addWidget(open_);
    buttons->addWidget(use_);
    buttons->addStretch();
    rows_->setSpacing(0);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(pageMargin(), grid(4), pageMargin(), grid(4));
    column->setSpacing(grid(1));
    column->addWidget(name_);
    column->addWidget(group_);
    column->addWidget(picture_);
    column->addSpacing(grid(3));
    column->addLayout(buttons);
    column->addSpacing(grid(2));
    column->addLayout(rows_);
    column->addSpacing(grid(2));
    column->addWidget(used_);
    column->addWidget(bloom_);
    column->addStretch(1);
    connect(open_, &QPushButton::clicked, this, [this] {
        if (design_) Q_EMIT openAsked(design_->value);
    });
    connect(use_, &QPushButton::clicked, this, [this] {
        if (design_) Q_EMIT useAsked(design_->value);
    });
    auto* seen = new WhenSeen(this, [this] { refresh(); });
    connect(&bench_, &Workbench::changed, seen, &WhenSeen::ask);
    connect(&bench_, &Workbench::planned, seen, &WhenSeen::ask);
}

void DesignPanel::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange && picture_) picture_->setFixedHeight(grid(56));
}

void DesignPanel::showDesign(std::optional<Id<model::Design>> design) {
    if (design == design_) return;
    design_ = design;
    picture_->showDesign(design);
    refresh();
}

void DesignPanel::refresh() {
    const auto* d = design_ ? bench_.season().designs.find(*design_) : nullptr;
    name_->setText(d ? text(d->name) : QString());
    group_->setText(d ? tr("%1  ·  %2").arg(groupWords(groupOf(d->kind)), standsInWords(bench_.season(), *d))
                      : QString());
    for (QWidget* w :
         {static_cast<QWidget*>(picture_), static_cast<QWidget*>(open_), static_cast<QWidget*>(use_)})
        w->setVisible(d != nullptr);
    used_->setText(d ? usedWords(bench_.season(), d->id) : tr("Choose a piece to see what goes into it."));
    sayBloom();
    fillRows();
}

void DesignPanel::setWeek(std::optional<Day> monday, const DesignBlooms& blooms) {
    monday_ = monday;
    blooms_ = blooms;
    sayBloom();
}

void DesignPanel::sayBloom() {
    const auto found = design_ ? blooms_.find(*design_) : blooms_.end();
    bloom_->setText(monday_ && found != blooms_.end() ? drawnInLineWords(found->second, *monday_)
                                                      : QString());
    bloom_->setVisible(!bloom_->text().isEmpty());
}

void DesignPanel::fillRows() {
    clearLayout(*rows_);
    const auto* d = design_ ? bench_.season().designs.find(*design_) : nullptr;
    if (!d) return;
    for (const auto* slot : edits::slotsOf(bench_.season(), d->id)) {
        auto* row = new QWidget;
        auto* line = new QHBoxLayout(row);
        line->setContentsMargins(0, grid(1), 0, grid(1));
        line->setSpacing(grid(2));
        line->addWidget(new BloomDot(slotColour(bench_.season(), slot->id)));
        auto* words = new TextLabel(TypeRole::text, slotPlantsWords(bench_.season(), slot->id));
        words->setWordWrap(true);
        line->addWidget(words, 1);
        line->addWidget(new TextLabel(TypeRole::text, text(slot->label).toLower(), Ink::second));
        auto* count = new TextLabel(TypeRole::strong, whole(slot->count.value));
        onGrid(count, &QWidget::setMinimumWidth, 7);
        count->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
        line->addWidget(count);
        rows_->addWidget(row);
    }
    rows_->addSpacing(grid(2));
    for (const auto& figure : designFigures(bench_.season(), bench_.plan(), d->id))
        addFact(figure.label, figure.figure);
    if (d->price) addFact(tr("Price"), amount(*d->price, bench_.season().theSettings()));
}

void DesignPanel::addFact(const QString& label, const QString& figure) {
    auto* row = new QWidget;
    auto* line = new QHBoxLayout(row);
    line->setContentsMargins(0, grid(1), 0, grid(1));
    line->addWidget(new TextLabel(TypeRole::text, label, Ink::second), 1);
    line->addWidget(new TextLabel(TypeRole::strong, figure));
    rows_->addWidget(row);
    rows_->addWidget(new Rule(Rule::Kind::hair));
}

} // namespace withy::ui
