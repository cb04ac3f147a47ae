// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/garden/walk_entry_table.h"

#include "ui/garden/walk_entry_delegate.h"
#include "ui/logic/models/walk_entry_model.h"
#include "ui/paint/spacing.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QLineEdit>
#include <QScopedValueRollback>

#include <algorithm>

namespace withy::ui {

WalkEntryTable::WalkEntryTable(WalkEntryModel& model, QWidget* parent)
    : QTableView(parent), sheet_(model), cell_(new QLineEdit(viewport())) {
    setObjectName(QStringLiteral("garden.walk_entry.table"));
    setAccessibleName(tr("Counts of the walk"));
    cell_->setObjectName(QStringLiteral("garden.walk_entry.cell"));
    cell_->setProperty("look", QStringLiteral("cell"));
    cell_->installEventFilter(this);
    cell_->hide();
    setModel(&model);
    setItemDelegate(new WalkEntryDelegate(this));
    setSelectionBehavior(SelectRows);
    setSelectionMode(SingleSelection);
    setEditTriggers(NoEditTriggers);
    setTabKeyNavigation(false);
    setShowGrid(false);
    setWordWrap(false);
    setCornerButtonEnabled(false);
    setVerticalScrollMode(ScrollPerPixel);
    setHorizontalScrollMode(ScrollPerPixel);
    verticalHeader()->hide();
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setSectionsClickable(false);
    horizontalHeader()->setStretchLastSection(true);
    connect(cell_, &QLineEdit::editingFinished, this, [this] { keep(); });
    connect(&model, &QAbstractItemModel::dataChanged, this, [this] {
        if (!cell_->isModified()) fillCell();
    });
    connect(&model, &QAbstractItemModel::modelReset, this, [this] {
        cell_->setModified(false);
        cell_->hide();
        shareWidth();
    });
    dress();
}

void WalkEntryTable::dress() {
    verticalHeader()->setMinimumSectionSize(walkRowHeight());
    verticalHeader()->setDefaultSectionSize(walkRowHeight());
    shareWidth();
}

/// Counts take what they need, the patch what is left over up to a limit, the remark the rest.
void WalkEntryTable::shareWidth() {
    const int last = grid(30);
    const int count = grid(31);
    const int patch = std::clamp(viewport()->width() - last - 3 * count - grid(40), grid(44), grid(64));
    setColumnWidth(WalkEntryModel::PatchColumn, patch);
    setColumnWidth(WalkEntryModel::LastColumn, last);
    for (int c = WalkEntryModel::ReadyColumn; c <= WalkEntryModel::WeekColumn; ++c)
        setColumnWidth(c, count);
    placeCell();
}

void WalkEntryTable::changeEvent(QEvent* event) {
    QTableView::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) dress();
}

void WalkEntryTable::resizeEvent(QResizeEvent* event) {
    QTableView::resizeEvent(event);
    shareWidth();
}

void WalkEntryTable::begin() {
    openCell(std::max(0, sheet_.firstBlankRow()), WalkEntryModel::ReadyColumn);
}

void WalkEntryTable::openCell(int row, int column) {
    if (row >= sheet_.rowCount()) return setFocus();
    setCurrentIndex(sheet_.index(row, column));
    placeCell();
    cell_->show();
    cell_->setFocus();
    cell_->selectAll();
}

void WalkEntryTable::focusInEvent(QFocusEvent* event) {
    QTableView::focusInEvent(event);
    if (sheet_.rowCount() == 0 || leaving_) return;
    const auto at = currentIndex();
    const bool back = event->reason() == Qt::BacktabFocusReason;
    if (event->reason() == Qt::TabFocusReason || !at.isValid())
        openCell(std::max(0, shownFrom(0, 1)), WalkEntryModel::ReadyColumn);
    else if (back)
        openCell(std::max(0, shownFrom(sheet_.rowCount() - 1, -1)), WalkEntryModel::RemarkColumn);
    else
        openCell(at.row(), std::max<int>(at.column(), WalkEntryModel::ReadyColumn));
}

bool WalkEntryTable::focusNextPrevChild(bool next) {
    return cell_->hasFocus() && goOn(next ? 1 : -1) ? true : QTableView::focusNextPrevChild(next);
}

void WalkEntryTable::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    Q_UNUSED(previous)
    keep(); // what is refused stays in its cell with its sentence: nothing is lost by going on
    inHand_ = current;
    QTableView::currentChanged(current, previous);
    placeCell();
    fillCell();
    scrollTo(current);
    Q_EMIT cellChanged();
}

void WalkEntryTable::placeCell() {
    const auto at = currentIndex();
    const bool writes = at.isValid() && at.column() >= WalkEntryModel::ReadyColumn;
    if (!writes) {
        if (cell_->hasFocus()) { // a click beside the boxes: on to the first of its row
            const int row = std::max(0, at.row());
            QMetaObject::invokeMethod(
                this, [this, row] { openCell(row, WalkEntryModel::ReadyColumn); }, Qt::QueuedConnection);
            return;
        }
        return cell_->hide();
    }
    const QRect room = visualRect(at);
    cell_->setGeometry(WalkEntryModel::isCount(at.column())
                           ? WalkEntryDelegate::boxIn(room)
                           : room.adjusted(grid(1), grid(1), -grid(1), -grid(1)));
    cell_->setAlignment(WalkEntryModel::isCount(at.column()) ? Qt::AlignRight | Qt::AlignVCenter
                                                             : Qt::AlignLeft | Qt::AlignVCenter);
    cell_->setFont(typeFont(WalkEntryModel::isCount(at.column()) ? TypeRole::answer : TypeRole::text));
    if (cell_->hasFocus()) cell_->show();
}

void WalkEntryTable::fillCell() {
    const QModelIndex at = inHand_;
    if (!at.isValid()) return;
    const QString words = at.data(Qt::EditRole).toString();
    if (cell_->text() != words) cell_->setText(words);
    cell_->setModified(false);
    if (cell_->hasFocus()) cell_->selectAll();
    const QString patch =
        sheet_.index(at.row(), WalkEntryModel::PatchColumn).data(Qt::AccessibleTextRole).toString();
    const QString expected = at.data(WalkEntryModel::ExpectedRole).toString();
    const QString head = sheet_.headerData(at.column(), Qt::Horizontal, Qt::DisplayRole).toString();
    cell_->setAccessibleName(expected.isEmpty() ? tr("%1: %2").arg(patch, head)
                                                : tr("%1: %2, %3 expected").arg(patch, head, expected));
}

bool WalkEntryTable::keep() {
    const QModelIndex at = inHand_;
    if (keeping_ || !cell_->isModified() || !at.isValid()) return true;
    const QScopedValueRollback<bool> now(keeping_, true);
    const bool taken = sheet_.setData(at, cell_->text());
    cell_->setModified(false);
    if (taken) fillCell();
    return taken;
}

int WalkEntryTable::shownFrom(int row, int by) const {
    while (row >= 0 && row < sheet_.rowCount() && isRowHidden(row))
        row += by;
    return row >= 0 && row < sheet_.rowCount() ? row : -1;
}

void WalkEntryTable::fold(bool folded) {
    const bool all = sheet_.restingRows() == sheet_.rowCount();
    for (int row = 0; row < sheet_.rowCount(); ++row)
        setRowHidden(row, folded && !all && sheet_.isResting(row) && row != currentIndex().row());
    const auto at = currentIndex();
    const bool untouched = at.isValid() && sheet_.isResting(at.row()) && !cell_->isModified();
    if (!folded || all || !untouched) return placeCell();
    const int first = std::max(0, sheet_.firstBlankRow());
    const int left = at.row();
    if (cell_->hasFocus())
        openCell(first, WalkEntryModel::ReadyColumn);
    else
        setCurrentIndex(sheet_.index(first, at.column()));
    setRowHidden(left, true);
}

bool WalkEntryTable::goOn(int by) {
    constexpr int fields = WalkEntryModel::Columns - WalkEntryModel::ReadyColumn - 1; // remarks are passed by
    const auto at = currentIndex();
    const bool atRemark = at.column() == WalkEntryModel::RemarkColumn;
    int column = std::max<int>(at.column() - WalkEntryModel::ReadyColumn, 0) + by;
    int row = at.row();
    if (atRemark && by < 0) column = fields - 1;
    if (column >= fields || column < 0) {
        row = shownFrom(row + by, by);
        column = by > 0 ? 0 : fields - 1;
    }
    if (row < 0) return false;
    openCell(row, WalkEntryModel::ReadyColumn + column);
    return true;
}

void WalkEntryTable::leaveBackwards() {
    const QScopedValueRollback<bool> now(leaving_, true);
    setFocus();
    QTableView::focusNextPrevChild(false);
}

bool WalkEntryTable::goDown(int by) {
    const auto at = currentIndex();
    const int row = shownFrom(at.row() + by, by);
    if (row >= 0) openCell(row, at.column());
    return true;
}

bool WalkEntryTable::handleKey(int key, Qt::KeyboardModifiers modifiers) {
    const auto at = currentIndex();
    if (modifiers & (Qt::ControlModifier | Qt::AltModifier)) return false;
    switch (key) {
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (!goOn(modifiers & Qt::ShiftModifier ? -1 : 1)) keep();
        return true;
    case Qt::Key_Tab:
        return goOn(1);
    case Qt::Key_Backtab:
        if (!goOn(-1)) leaveBackwards();
        return true;
    case Qt::Key_Down:
        return goDown(1);
    case Qt::Key_Up:
        return goDown(-1);
    case Qt::Key_Right: {
        const bool atEnd = cell_->cursorPosition() == cell_->text().size() || cell_->hasSelectedText();
        if (!atEnd || at.column() + 1 >= WalkEntryModel::Columns) return false;
        openCell(at.row(), at.column() + 1);
        return true;
    }
    case Qt::Key_Left: {
        const bool atStart = cell_->cursorPosition() == 0 || cell_->hasSelectedText();
        if (!atStart || at.column() <= WalkEntryModel::ReadyColumn) return false;
        openCell(at.row(), at.column() - 1);
        return true;
    }
    case Qt::Key_Escape: {
        const bool wasRefused = sheet_.putBack(at);
        if (!wasRefused && !cell_->isModified()) return false;
        cell_->setModified(false);
        fillCell();
        return true;
    }
    default:
        return false;
    }
}

bool WalkEntryTable::eventFilter(QObject* watched, QEvent* event) {
    if (watched != cell_) return QTableView::eventFilter(watched, event);
    if (event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        return handleKey(key->key(), key->modifiers());
    }
    if (event->type() == QEvent::ShortcutOverride) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() == Qt::Key_Escape && cell_->isModified()) event->accept();
        // With nothing typed, undo is the season's: a field would take the key and do nothing.
        if (!cell_->isModified() && (key->matches(QKeySequence::Undo) || key->matches(QKeySequence::Redo))) {
            event->ignore();
            return true;
        }
    }
    if (event->type() == QEvent::FocusOut) {
        const auto why = static_cast<QFocusEvent*>(event)->reason();
        if (why != Qt::PopupFocusReason && why != Qt::ActiveWindowFocusReason)
            QMetaObject::invokeMethod(
                this, [this] { cell_->setVisible(cell_->hasFocus()); }, Qt::QueuedConnection);
    }
    return false;
}

void WalkEntryTable::updateGeometries() {
    QTableView::updateGeometries();
    placeCell();
}

void WalkEntryTable::scrollContentsBy(int dx, int dy) {
    QTableView::scrollContentsBy(dx, dy);
    placeCell();
}

} // namespace withy::ui
