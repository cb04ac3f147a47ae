// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/cell_painter.h"
#include "ui/common/column_fit.h"
#include "ui/common/record_delegate.h"
#include "ui/common/record_table.h"
#include "ui/logic/fields/field_text.h"
#include "ui/paint/spacing.h"

#include <QHeaderView>
#include <QScopedValueRollback>
#include <QTimer>

/// The widths of the columns follow what is in them, until somebody sets one by hand.
namespace withy::ui {

namespace {

/// Rows measured at either end; a table of years of weather is not read through for its widths.
constexpr int rowsMeasured = 100;

bool isWordsColumn(const RecordTableModel& model, int column) {
    const auto* field = model.fieldAt(column);
    if (!field) return false;
    return (field->kind == model::FieldKind::text && !isFigure(*field)) ||
           field->kind == model::FieldKind::reference;
}

} // namespace

int RecordTable::contentWidth(int column) const {
    int widest = 0;
    const int rows = model_->rowCount();
    for (int row = 0; row < rows; ++row) {
        if (row == rowsMeasured && rows > 2 * rowsMeasured) row = rows - rowsMeasured;
        widest = std::max(widest, cellWidth(model_->index(row, column), *model_));
    }
    if (column == 0 && model_->spec().addRow && model_->isAddRow(rows - 1))
        widest = std::max(widest, wordsWidth(model_->addPrompt()));
    return widest;
}

void RecordTable::fitColumns() {
    auto* head = horizontalHeader();
    if (fittedByHand_ || static_cast<RecordDelegate*>(itemDelegate())->editor()) return;
    std::vector<ColumnWant> wants;
    for (int column = 0; column < model_->columnCount(); ++column) {
        const bool words = isWordsColumn(*model_, column);
        int content = contentWidth(column);
        if (words) content = std::min(content, grid(75));
        wants.push_back(
            {std::max(head->sectionSizeHint(column), head->minimumSectionSize()), content, words, grid(22)});
    }
    const QScopedValueRollback fitting(fitting_, true);
    const auto widths = fittedWidths(wants, viewport()->width(), grid(40));
    for (std::size_t i = 0; i < widths.size(); ++i)
        head->resizeSection(static_cast<int>(i), widths[i]);
}

void RecordTable::fitColumnsSoon() {
    if (!isVisible() || fitAsked_) return; // what is not seen is fitted when it comes into view
    fitAsked_ = true;
    QTimer::singleShot(0, this, [this] {
        fitAsked_ = false;
        fitColumns();
    });
}

void RecordTable::showEvent(QShowEvent* event) {
    QTableView::showEvent(event);
    fitColumns();
}

} // namespace withy::ui
