// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/bookings/tabs/sheet_table.h"

#include "ui/bookings/tabs/cover_cells.h"
#include "ui/bookings/tabs/flow_row.h"
#include "ui/bookings/tabs/row_marks.h"
#include "ui/bookings/tabs/sheet_table_parts.h"
#include "ui/bookings/tabs/sheet_words.h"
#include "ui/common/widget_parts.h"
#include "ui/paint/spacing.h"

#include <QApplication>
#include <QEvent>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace withy::ui {

namespace {

bool sameKind(const SheetCell& a, const SheetCell& b) {
    return a.figure.has_value() == b.figure.has_value() && a.field == b.field &&
           a.reach.has_value() == b.reach.has_value() && a.jar.has_value() == b.jar.has_value() &&
           a.sources.size() == b.sources.size() && a.words.isEmpty() == b.words.isEmpty();
}

bool isMarked(const SheetRow& row) {
    return row.dotted || row.look == RowLook::step || row.look == RowLook::waiting ||
           row.look == RowLook::fixed;
}

} // namespace

FigureFacts factsOf(const SheetFigure& figure) {
    return {figure.words, figure.means, figure.working, figure.leadsTo, figure.leadWords, figure.lines};
}

SheetTable::SheetTable(Workbench& bench, const QString& name, QWidget* parent)
    : QWidget(parent), bench_(bench) {
    setObjectName(name);
    auto* all = new QVBoxLayout(this);
    all->setContentsMargins(0, 0, 0, 0);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Minimum);
}

FigureButton* SheetTable::figure(const QString& key, int column) const {
    for (const auto& row : rows_)
        if (row.key == key && static_cast<std::size_t>(column) < row.cells.size())
            return row.cells[static_cast<std::size_t>(column)].figure;
    return nullptr;
}

int SheetTable::leading() const {
    return static_cast<int>(std::count_if(sheet_.columns.begin(), sheet_.columns.end(),
                                          [](const auto& column) { return column.leads; }));
}

int SheetTable::placeOf(int column) const {
    int before = 0;
    int after = 0;
    for (int c = 0; c < column; ++c)
        ++(sheet_.columns[static_cast<std::size_t>(c)].leads ? before : after);
    return sheet_.columns[static_cast<std::size_t>(column)].leads ? (marked_ ? 1 : 0) + before
                                                                  : nameColumn() + 1 + after;
}

bool SheetTable::sameShape(const Sheet& sheet) const {
    if (!content_ || sheet.rows.size() != sheet_.rows.size() || sheet.columns.size() != sheet_.columns.size())
        return false;
    for (std::size_t i = 0; i < sheet.rows.size(); ++i) {
        const auto& a = sheet.rows[i];
        const auto& b = sheet_.rows[i];
        if (a.key != b.key || a.look != b.look || a.under.isEmpty() != b.under.isEmpty() ||
            a.below != b.below)
            return false;
        for (int c = 0; c < static_cast<int>(sheet.columns.size()); ++c)
            if (!sameKind(cellAt(a, c), cellAt(b, c))) return false;
    }
    return true;
}

void SheetTable::setSheet(const Sheet& sheet) {
    const bool same = sameShape(sheet);
    sheet_ = sheet;
    if (!same) {
        rebuild();
        return;
    }
    for (std::size_t i = 0; i < rows_.size(); ++i)
        fillRow(i);
}

void SheetTable::keepPlace() {
    placeKey_.clear();
    placeWay_ = -1;
    wereOpen_.clear();
    const auto* focus = QApplication::focusWidget();
    for (const auto& row : rows_) {
        if (row.open >= 0) wereOpen_.emplace_back(row.key, row.open);
        for (std::size_t c = 0; c < row.cells.size(); ++c)
            if (focus && (row.cells[c].figure == focus ||
                          (row.cells[c].field && row.cells[c].field->isAncestorOf(focus)))) {
                placeKey_ = row.key;
                placeColumn_ = static_cast<int>(c);
            }
        for (int w = 0; focus && row.below && w < row.below->ways(); ++w)
            if (row.below->way(w) == focus) {
                placeKey_ = row.key;
                placeColumn_ = 0;
                placeWay_ = w;
            }
    }
}

void SheetTable::findPlace() {
    for (std::size_t i = 0; i < rows_.size(); ++i) {
        for (const auto& [key, column] : wereOpen_)
            if (rows_[i].key == key && figure(key, column)) figure(key, column)->setChecked(true);
        if (placeKey_.isEmpty() || rows_[i].key != placeKey_) continue;
        if (static_cast<std::size_t>(placeColumn_) >= rows_[i].cells.size()) continue;
        const auto& cell = rows_[i].cells[static_cast<std::size_t>(placeColumn_)];
        if (auto* way = rows_[i].below ? rows_[i].below->way(placeWay_) : nullptr)
            way->setFocus(Qt::OtherFocusReason);
        else if (auto* target = cell.figure ? static_cast<QWidget*>(cell.figure) : cell.field)
            target->setFocus(Qt::OtherFocusReason);
    }
}

void SheetTable::rebuild() {
    keepPlace();
    if (content_) {
        content_->hide();
        content_->deleteLater(); // a field of it may be in the middle of telling
        layout()->removeWidget(content_);
    }
    rows_.clear();
    marked_ = std::any_of(sheet_.rows.begin(), sheet_.rows.end(), isMarked);
    content_ = new QWidget(this);
    auto* cells = new QGridLayout(content_);
    cells->setContentsMargins(0, 0, 0, 0);
    cells->setHorizontalSpacing(grid(4));
    cells->setVerticalSpacing(0);
    cells->setColumnStretch(nameColumn(), 3);
    // Where stems come from takes many words; the names of pieces, which are heads here, more than the
    // plants'.
    for (int c = 0; c < static_cast<int>(sheet_.columns.size()) && !folded_; ++c)
        if (std::any_of(sheet_.rows.begin(), sheet_.rows.end(),
                        [&](const auto& row) { return !cellAt(row, c).sources.empty(); }))
            cells->setColumnStretch(placeOf(c), 2);
    addHeads(cells);
    for (std::size_t i = 0; i < sheet_.rows.size(); ++i)
        addRow(cells, i, 2 + static_cast<int>(i) * linesARow);
    layout()->addWidget(content_);
    for (std::size_t i = 0; i < rows_.size(); ++i)
        fillRow(i);
    content_->show();
    findPlace();
}

void SheetTable::addHeads(QGridLayout* cells) {
    const auto head = [&](const QString& words, int place, bool right) {
        auto* label = new TextLabel(TypeRole::caption, words, Ink::caption);
        label->setContentsMargins(0, 0, right ? besideFigure : 0, grid(1)); // over its figures, off the rule
        cells->addWidget(label, 0, place, (right ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignBottom);
    };
    head(sheet_.firstTitle, nameColumn(), false);
    for (std::size_t c = 0; c < sheet_.columns.size(); ++c)
        if (!folded_ || !sheet_.columns[c].folds)
            head(sheet_.columns[c].title, placeOf(static_cast<int>(c)), sheet_.columns[c].right);
    cells->addWidget(new Rule(Rule::Kind::head), 1, 0, 1, places());
    cells->setRowMinimumHeight(0, grid(7));
}

void SheetTable::addName(QGridLayout* cells, const SheetRow& from, Row& row, int line) {
    row.name = new AnswerLabel;
    row.name->setType(from.look == RowLook::head      ? TypeRole::name
                      : from.look == RowLook::dayHead ? TypeRole::answer
                                                      : TypeRole::text);
    if (isHead(from.look)) {         // the serif carries no figure, so the count stands beside the name
        if (from.name.size() > 40) { // short ones need no second line
            row.name->setWordWrap(true);
            row.name->setMinimumWidth(grid(20)); // one endless word does not widen the page
        }
        row.rest = new TextLabel(TypeRole::text, {}, Ink::second);
        row.rest->setContentsMargins(0, 0, 0, grid(0.5)); // on one line with the larger name
        auto* both = new QHBoxLayout;
        both->setContentsMargins(0, grid(3), 0, grid(1));
        both->setSpacing(grid(3));
        both->addWidget(row.name, 0, Qt::AlignBottom);
        both->addWidget(row.rest, 1, Qt::AlignBottom);
        cells->addLayout(both, line, 0, 1, nameColumn() + 1);
        return;
    }
    row.name->setMinimumWidth(grid(24));
    auto* words = new QVBoxLayout;
    words->setContentsMargins(0, grid(2.5), 0, grid(1.5)); // on one line with the figures
    words->setSpacing(0);
    words->addWidget(row.name);
    if (!from.under.isEmpty()) {
        row.under = new TextLabel(TypeRole::caption, {}, Ink::second);
        row.under->setWordWrap(true);
        words->addWidget(row.under);
    }
    cells->addLayout(words, line, nameColumn());
}

void SheetTable::addRow(QGridLayout* cells, std::size_t index, int line) {
    const auto& from = sheet_.rows[index];
    Row row;
    row.key = from.key;
    if (from.look == RowLook::busy) cells->addWidget(new BusyBack, line, 0, 2, places());
    if ((from.look == RowLook::head && index > 0) || from.look == RowLook::total)
        cells->addWidget(new Rule(Rule::Kind::head), line, 0, 1, places(), Qt::AlignTop);
    if (marked_ && !isHead(from.look)) {
        row.mark = new RowMark;
        cells->addWidget(row.mark, line, 0, from.look == RowLook::waiting ? 2 : 1, 1);
    }
    addName(cells, from, row, line);
    FlowRow* below = nullptr;
    if (folded_) {
        auto* holder = new QWidget;
        below = new FlowRow(holder);
        holder->setContentsMargins(0, 0, 0, grid(2));
        cells->addWidget(holder, line + 1, nameColumn(), 1, places() - nameColumn());
    }
    cells->setRowMinimumHeight(line, from.look == RowLook::busy ? grid(8) : tableRow());
    rows_.push_back(row);
    for (int c = 0; c < static_cast<int>(sheet_.columns.size()); ++c)
        addCell(cells, index, c, line, below);
    if (below && below->count() == 0) delete below->parentWidget();
    addBelow(cells, index, line + 3);
    const bool lastOfGroup = index + 1 == sheet_.rows.size() || isHead(sheet_.rows[index + 1].look);
    if (!lastOfGroup && !isHead(from.look))
        cells->addWidget(new Rule(Rule::Kind::hair), line + 4, 0, 1, places());
}

void SheetTable::addBelow(QGridLayout* cells, std::size_t index, int line) {
    const auto& from = sheet_.rows[index];
    if (!from.below) return;
    auto* panel = new BelowPanel(*from.below, QStringLiteral("%1.%2").arg(objectName(), from.key));
    cells->addWidget(panel, line, 0, 1, places());
    // Later: what is pressed may change the very row its button stands in.
    connect(
        panel, &BelowPanel::taken, this, [this, key = from.key](int way) { Q_EMIT wayTaken(key, way); },
        Qt::QueuedConnection);
    rows_[index].below = panel;
}

int SheetTable::widthNeeded() const {
    int width = grid(5) + grid(40);
    for (std::size_t c = 0; c < sheet_.columns.size(); ++c) {
        int most = QFontMetrics(typeFont(TypeRole::caption)).horizontalAdvance(sheet_.columns[c].title);
        const QFontMetrics metrics(typeFont(TypeRole::strong));
        for (const auto& row : sheet_.rows) {
            const auto& cell = cellAt(row, static_cast<int>(c));
            const QString& words = cell.figure ? cell.figure->words : cell.words;
            most = std::max(most, cell.field             ? grid(26)
                                  : cell.reach           ? grid(40)
                                  : cell.sources.empty() ? metrics.horizontalAdvance(words)
                                                         : grid(64));
            if (cell.jar) most = std::max(most, grid(6) + metrics.horizontalAdvance(words));
        }
        width += most + grid(4) + 6;
    }
    return width;
}

void SheetTable::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    const bool fold = width() < widthNeeded();
    if (fold == folded_) return;
    folded_ = fold;
    if (content_) rebuild();
}

void SheetTable::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() != QEvent::StyleChange || !content_) return;
    folded_ = width() < widthNeeded();
    QMetaObject::invokeMethod(
        this, [this] { rebuild(); }, Qt::QueuedConnection);
}

} // namespace withy::ui
