// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/designs/design_editor.h"

#include "ui/common/record_form.h"
#include "ui/common/style.h"
#include "ui/common/text_label.h"
#include "ui/common/widget_parts.h"
#include "ui/designs/design_middle.h"
#include "ui/designs/design_numbers.h"
#include "ui/designs/slot_list.h"
#include "ui/designs/trial_picture.h"
#include "ui/logic/models/design_words.h"
#include "ui/paint/icons.h"
#include "ui/paint/spacing.h"

#include <QKeyEvent>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

namespace withy::ui {

namespace {

using model::TableKind;

std::vector<FormGroup> designGroups() {
    const auto tr = [](const char* words) { return DesignEditor::tr(words); };
    return {
        {tr("Stands in"), {"container", "loose", "lift", "water_share"}},
        {tr("Heads"), {"height_low", "height_middle", "height_tall", "spread", "stems_below_tie"}},
        {tr("Ribbon"), {"ribbon_mix", "wraps", "overlap", "finish", "loop", "loops", "tail", "trim"}},
        {tr("Making"), {"making_notes"}},
        {tr("A trial really made"), {"trial_count", "trial_date", "trial_note"}},
    };
}

QScrollArea* scrolled(QWidget* content) {
    auto* area = scrolledPage(content);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    return area;
}

} // namespace

DesignEditor::DesignEditor(Workbench& bench, QWidget* parent)
    : QWidget(parent)
    , bench_(bench)
    , name_(new FieldEdit(bench, TableKind::designs, "name"))
    , kind_(new FieldEdit(bench, TableKind::designs, "kind"))
    , used_(new TextLabel(TypeRole::caption, {}, Ink::caption))
    , slots_(new SlotList(bench))
    , form_(new RecordForm(bench, TableKind::designs, designGroups()))
    , middle_(new DesignMiddle(bench))
    , picture_(new TrialPicture(bench))
    , numbers_(new DesignNumbers(bench)) {
    setObjectName(QStringLiteral("designs.editor"));
    left_ = scrolled(makeLeft());
    auto* rightSide = new QWidget;
    rightColumn_ = new QVBoxLayout(rightSide);
    rightColumn_->setContentsMargins(0, 0, 0, 0);
    rightColumn_->addWidget(numbers_, 1);
    right_ = scrolled(rightSide);
    middleArea_ = scrolled(middle_);
    auto* row = new QWidget;
    columns_ = new QHBoxLayout(row);
    columns_->setContentsMargins(0, 0, 0, 0);
    columns_->setSpacing(0);
    columns_->addWidget(left_);
    columns_->addWidget(middleArea_, 1);
    columns_->addWidget(right_);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    all->setSpacing(0);
    all->addWidget(makeBar());
    all->addWidget(row, 1);
    for (auto* field : {name_, kind_})
        connect(field, &FieldEdit::refused, this, &DesignEditor::refused);
    connect(form_, &RecordForm::refused, this, &DesignEditor::refused);
    connect(slots_, &SlotList::refused, this, &DesignEditor::refused);
    connect(middle_, &DesignMiddle::refused, this, &DesignEditor::refused);
    connect(picture_, &TrialPicture::refused, this, &DesignEditor::refused);
    connect(numbers_, &DesignNumbers::refused, this, &DesignEditor::refused);
    connect(numbers_, &DesignNumbers::leadTo, this, &DesignEditor::leadTo);
    connect(&bench_, &Workbench::changed, this, &DesignEditor::refresh);
    arrange();
}

QWidget* DesignEditor::makeBar() {
    auto* bar = new QWidget;
    auto* row = new QHBoxLayout(bar);
    row->setContentsMargins(pageMargin(), grid(2), pageMargin(), grid(2));
    row->setSpacing(grid(2));
    auto* back = namedButton(tr("A&ll designs"), "designs.back");
    dressAgain(back, [back] { back->setIcon(icon(IconName::back, currentPalette())); });
    back->setToolTip(tr("Back to the wall (Esc)"));
    auto* use = namedButton(tr("&Use in..."), "designs.use");
    auto* copy = namedButton(tr("Make a cop&y"), "designs.duplicate");
    auto* erase = namedButton(tr("Take it &out"), "designs.erase");
    row->addWidget(back);
    row->addStretch(1);
    row->addWidget(use);
    row->addWidget(copy);
    row->addWidget(erase);
    connect(back, &QPushButton::clicked, this, &DesignEditor::backAsked);
    const auto tell = [this](QPushButton* b, void (DesignEditor::*signal)(qint64)) {
        connect(b, &QPushButton::clicked, this, [this, signal] {
            if (design_) Q_EMIT(this->*signal)(design_->value);
        });
    };
    tell(use, &DesignEditor::useAsked);
    tell(copy, &DesignEditor::copyAsked);
    tell(erase, &DesignEditor::eraseAsked);
    return bar;
}

QWidget* DesignEditor::makeLeft() {
    auto* side = new QWidget;
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(pageMargin(), 0, grid(3), grid(6));
    column->setSpacing(grid(1));
    name_->control()->setFont(typeFont(TypeRole::title));
    name_->control()->setProperty("look", QStringLiteral("title"));
    if (auto* line = qobject_cast<QLineEdit*>(name_->control()))
        line->setTextMargins(-3, 0, 0, 0); // as TitleEdit
    column->addWidget(name_);
    auto* under = new QHBoxLayout;
    under->setSpacing(grid(2));
    under->addWidget(kind_);
    under->addWidget(used_, 1);
    used_->setWordWrap(true);
    column->addLayout(under);
    column->addSpacing(grid(2));
    auto* heads = new QHBoxLayout;
    heads->addWidget(new TextLabel(TypeRole::head, tr("Slots, in making order")));
    heads->addStretch(1);
    heads->addWidget(new TextLabel(TypeRole::caption, tr("stems"), Ink::caption));
    column->addLayout(heads);
    column->addWidget(new Rule);
    column->addWidget(slots_);
    column->addSpacing(grid(4));
    form_->setMostColumns(1);
    column->addWidget(form_);
    column->addWidget(picture_);
    column->addStretch(1);
    return side;
}

void DesignEditor::showDesign(std::optional<Id<model::Design>> design) {
    design_ = design;
    const auto id = design ? std::optional(design->value) : std::nullopt;
    name_->show(id);
    kind_->show(id);
    form_->show(id);
    slots_->showDesign(design);
    middle_->showDesign(design);
    picture_->showDesign(design);
    numbers_->showDesign(design);
    left_->ensureVisible(0, 0);
    refresh();
}

void DesignEditor::refresh() {
    if (design_ && bench_.season().designs.find(*design_))
        used_->setText(usedWords(bench_.season(), *design_));
}

void DesignEditor::openSlot(Id<model::Slot> slot) {
    slots_->open(slot);
}

void DesignEditor::editName() {
    name_->setFocus();
    if (auto* line = qobject_cast<QLineEdit*>(name_->control())) line->selectAll();
}

bool DesignEditor::commit() {
    return commitFocusedField(this);
}

void DesignEditor::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) return Q_EMIT backAsked();
    QWidget::keyPressEvent(event);
}

void DesignEditor::arrange() {
    const bool narrow = width() < grid(250);
    left_->setFixedWidth(narrow ? grid(88) : grid(92));
    kind_->setFixedWidth(grid(34));
    if (narrow) {
        right_->setMinimumWidth(grid(60));
        right_->setMaximumWidth(QWIDGETSIZE_MAX);
    } else {
        right_->setFixedWidth(grid(74));
    }
    middle_->setNarrow(narrow);
    if (narrow == narrow_) return;
    narrow_ = narrow;
    if (narrow) {
        rightColumn_->insertWidget(0, middleArea_->takeWidget());
        middle_->show();
    } else {
        middleArea_->setWidget(middle_);
    }
    middleArea_->setVisible(!narrow);
    columns_->setStretchFactor(right_, narrow ? 1 : 0);
}

void DesignEditor::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    arrange();
}

void DesignEditor::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() != QEvent::StyleChange || !form_) return;
    name_->control()->setFont(typeFont(TypeRole::title));
    arrange();
}

} // namespace withy::ui
