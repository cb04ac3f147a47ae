// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/tabs/cover_cells.h"
#include "ui/bookings/tabs/field_cell.h"
#include "ui/bookings/tabs/row_marks.h"
#include "ui/bookings/tabs/sheet_table.h"
#include "ui/bookings/tabs/sheet_table_parts.h"
#include "ui/bookings/tabs/sheet_words.h"
#include "ui/common/widget_parts.h"
#include "ui/paint/spacing.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

namespace withy::ui {

void SheetTable::addCell(QGridLayout* cells, std::size_t index, int column, int line, QLayout* below) {
    const auto& from = cellAt(sheet_.rows[index], column);
    const auto& head = sheet_.columns[static_cast<std::size_t>(column)];
    if (isHead(sheet_.rows[index].look) && head.leads) {
        rows_[index].cells.emplace_back(); // the head's own words stand there
        return;
    }
    auto& row = rows_[index];
    Cell cell;
    const bool under = below && head.folds;
    QVBoxLayout* stack = nullptr;
    if (!under) {
        auto* holder = new QWidget;
        stack = new QVBoxLayout(holder);
        stack->setContentsMargins(0, grid(1), 0, grid(1));
        stack->setSpacing(from.sources.size() > 1 ? grid(1) : 0);
        cells->addWidget(holder, line, placeOf(column),
                         isHead(sheet_.rows[index].look) ? Qt::AlignBottom : Qt::AlignVCenter);
    }
    const auto put = [&](QWidget* widget) {
        if (under)
            below->addWidget(widget);
        else
            stack->addWidget(widget, 0, head.right ? Qt::AlignRight : Qt::AlignLeft);
    };
    const bool any =
        from.figure || from.field || from.reach || !from.sources.empty() || !from.words.isEmpty();
    if (under && any && !head.title.isEmpty()) {
        cell.title = new TextLabel(TypeRole::caption, head.title, Ink::caption);
        below->addWidget(cell.title);
    }
    if (from.figure) {
        cell.figure = new FigureButton;
        cell.figure->setObjectName(QStringLiteral("%1.%2.%3").arg(objectName(), row.key).arg(column));
        put(cell.figure);
        connect(cell.figure, &FigureButton::opened, this,
                [this, index, column](bool open) { openFigure(index, column, open); });
    }
    if (from.field) {
        cell.field = makeFieldCell(bench_, *from.field, sheet_.rows[index].name, head.right,
                                   [this](const QString& s) { Q_EMIT refused(s); });
        cell.field->setMinimumWidth(grid(26));
        put(cell.field);
    }
    for (std::size_t i = 0; i < from.sources.size(); ++i) {
        cell.sources.push_back(new SourceRow);
        under ? below->addWidget(cell.sources.back()) : stack->addWidget(cell.sources.back());
    }
    if (from.reach) {
        cell.reach = new ReachCell;
        put(cell.reach);
    }
    if (!from.words.isEmpty()) {
        cell.words = new TextLabel(typeOf(from.tone), {}, inkOf(from.tone));
        if (head.right) cell.words->setContentsMargins(0, 0, besideFigure, 0);
        if (!from.jar) {
            put(cell.words);
        } else {
            auto* both = new QWidget;
            auto* side = new QHBoxLayout(both);
            side->setContentsMargins(0, 0, 0, 0);
            side->setSpacing(grid(1.5));
            cell.jar = new JarCell;
            side->addWidget(cell.jar);
            side->addWidget(cell.words, 1);
            put(both);
        }
    }
    row.cells.push_back(cell);
}

void SheetTable::fillCover(Cell& cell, const SheetCell& said) {
    if (cell.reach) cell.reach->setReach(*said.reach);
    if (cell.jar) cell.jar->setJar(*said.jar);
    for (std::size_t i = 0; i < cell.sources.size(); ++i)
        cell.sources[i]->setSource(said.sources[i]);
}

void SheetTable::fillRow(std::size_t index) {
    const auto& from = sheet_.rows[index];
    auto& row = rows_[index];
    if (row.mark) row.mark->showRow(from);
    setName(*row.name, from);
    if (row.rest) row.rest->setText(from.rest);
    if (row.under) row.under->setText(breakable(from.under));
    for (int c = 0; c < static_cast<int>(row.cells.size()); ++c) {
        auto& cell = row.cells[static_cast<std::size_t>(c)];
        const auto& said = cellAt(from, c);
        if (cell.words) {
            cell.words->setText(said.words);
            cell.words->setType(typeOf(said.tone));
            cell.words->setInk(inkOf(said.tone));
        }
        fillCover(cell, said);
        if (!cell.figure) continue;
        auto facts = factsOf(*said.figure);
        facts.units = bench_.season().theSettings().units;
        cell.figure->setFacts(facts);
        markAs(cell.figure, "asks", said.tone == SheetCell::Tone::asks);
        const bool words = !sheet_.columns[static_cast<std::size_t>(c)].right; // rather than a number
        markAs(cell.figure, "quiet", words || said.tone == SheetCell::Tone::second);
        if (row.open == c && row.panel) row.panel->setFacts(cell.figure->facts());
    }
}

void SheetTable::openFigure(std::size_t index, int column, bool open) {
    auto& row = rows_[index];
    if (!open) {
        if (row.open != column) return;
        row.open = -1;
        if (row.panel) row.panel->hide();
        return;
    }
    const int before = row.open;
    row.open = column;
    if (before >= 0 && before != column)
        row.cells[static_cast<std::size_t>(before)].figure->setChecked(false);
    if (!row.panel) {
        row.panel = new WorkingPanel(content_);
        row.panel->setObjectName(QStringLiteral("%1.%2.working").arg(objectName(), row.key));
        auto* cells = qobject_cast<QGridLayout*>(content_->layout());
        cells->addWidget(row.panel, 2 + static_cast<int>(index) * linesARow + 2, 0, 1, places());
        connect(row.panel, &WorkingPanel::leadTo, this, &SheetTable::leadTo);
    }
    row.panel->setFacts(row.cells[static_cast<std::size_t>(column)].figure->facts());
    row.panel->show();
    QWidget* last = row.cells[static_cast<std::size_t>(column)].figure;
    for (auto* lead : row.panel->leads()) { // Tab goes on from the figure into its working
        QWidget::setTabOrder(last, lead);
        last = lead;
    }
}

} // namespace withy::ui
