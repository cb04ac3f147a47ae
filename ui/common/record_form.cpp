// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/record_form.h"

#include "ui/common/text_label.h"
#include "ui/logic/fields/field_text.h"
#include "ui/paint/spacing.h"

#include <QGridLayout>
#include <QResizeEvent>
#include <QVBoxLayout>

namespace withy::ui {

namespace {

int labelWidth() {
    return grid(36);
}

} // namespace

RecordForm::RecordForm(Workbench& bench, model::TableKind kind, const std::vector<FormGroup>& groups,
                       QWidget* parent)
    : QWidget(parent), grid_(new QGridLayout(this)) {
    grid_->setContentsMargins(0, 0, 0, 0);
    grid_->setHorizontalSpacing(grid(8));
    grid_->setVerticalSpacing(grid(4));
    for (const auto& group : groups)
        groups_.push_back(makeGroup(bench, kind, group));
    arrange(1);
}

QWidget* RecordForm::makeGroup(Workbench& bench, model::TableKind kind, const FormGroup& group) {
    auto* box = new QWidget(this);
    auto* rows = new QGridLayout(box);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setHorizontalSpacing(grid(2));
    rows->setVerticalSpacing(0);
    rows->setColumnStretch(1, 1);
    int row = 0;
    if (!group.head.isEmpty()) {
        auto* head = new TextLabel(TypeRole::head, group.head, Ink::text, box);
        head->setContentsMargins(0, 0, 0, grid(1));
        rows->addWidget(head, row++, 0, 1, 2);
        rows->addWidget(new Rule(Rule::Kind::head, box), row++, 0, 1, 2);
    }
    for (const char* name : group.fields) {
        auto* field = new FieldEdit(bench, kind, name, box);
        auto* label = new TextLabel(TypeRole::text, field->label(), Ink::second, box);
        label->setBuddy(field);
        label->setWordWrap(true);
        label->setContentsMargins(0, grid(1), 0, grid(1));
        labels_.push_back(label);
        rows->addWidget(label, row, 0, Qt::AlignTop); // beside the first line of a long text
        rows->addWidget(field, row++, 1);
        rows->addWidget(new Rule(Rule::Kind::hair, box), row++, 0, 1, 2);
        connect(field, &FieldEdit::refused, this, &RecordForm::refused);
        fields_.push_back(field);
    }
    rows->setRowStretch(row, 1);
    return box;
}

void RecordForm::show(std::optional<std::int64_t> id) {
    for (auto* field : fields_)
        field->show(id);
}

FieldEdit* RecordForm::field(const char* name) const {
    for (auto* field : fields_) {
        if (field->field().name == name) return field;
    }
    return nullptr;
}

bool RecordForm::commit() {
    bool all = true;
    for (auto* field : fields_)
        all = field->commit() && all;
    return all;
}

void RecordForm::setMostColumns(int n) {
    mostColumns_ = n;
    arrange(columnsFor(width()));
}

int RecordForm::columnsFor(int width) const {
    const int room = 2 * (labelWidth() + grid(44)) + grid(8);
    return groups_.size() > 1 && mostColumns_ > 1 && width >= room ? 2 : 1;
}

void RecordForm::arrange(int columns) {
    for (auto* label : labels_) {
        label->setFixedWidth(labelWidth());
        label->setMinimumHeight(controlInRow() + 4); // as high as a field of one line
    }
    if (columns == columns_) return;
    columns_ = columns;
    while (grid_->count() > 0)
        delete grid_->takeAt(0);
    // Groups run down the first column, then the second, so that Tab reads as the eye does.
    std::size_t all = 0;
    for (const auto* group : groups_)
        all += group->findChildren<FieldEdit*>().size() + 2;
    std::size_t placed = 0;
    int column = 0;
    std::vector<QVBoxLayout*> stacks;
    for (int c = 0; c < columns; ++c) {
        stacks.push_back(new QVBoxLayout);
        stacks.back()->setSpacing(grid(5));
        grid_->addLayout(stacks.back(), 0, c);
        grid_->setColumnStretch(c, 1);
    }
    grid_->setColumnStretch(1, columns > 1 ? 1 : 0);
    for (auto* group : groups_) {
        const std::size_t own = group->findChildren<FieldEdit*>().size() + 2;
        if (column + 1 < columns && placed > 0 && 2 * placed + own > all) ++column;
        stacks[static_cast<std::size_t>(column)]->addWidget(group);
        placed += own;
    }
    for (auto* stack : stacks)
        stack->addStretch(1);
}

void RecordForm::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    arrange(columnsFor(event->size().width()));
}

void RecordForm::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange)
        arrange(columnsFor(width()));
}

} // namespace withy::ui
