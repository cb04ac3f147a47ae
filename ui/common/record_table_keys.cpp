// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/record_table.h"
#include "ui/logic/fields/field_text.h"

#include <QApplication>
#include <QClipboard>
#include <QKeyEvent>
#include <QMimeData>

/// What the keys do in a record table.
namespace withy::ui {

void RecordTable::keyPressEvent(QKeyEvent* event) {
    if (state() == EditingState || !handleKey(*event)) QTableView::keyPressEvent(event);
}

bool RecordTable::handleKey(const QKeyEvent& event) {
    const auto held = event.modifiers() & ~Qt::KeyboardModifiers(Qt::KeypadModifier);
    const bool enter = event.key() == Qt::Key_Return || event.key() == Qt::Key_Enter;
    if (event.matches(QKeySequence::Copy)) return copyChosen(), true;
    if (event.matches(QKeySequence::Cut)) return cutChosen(), true;
    if (event.matches(QKeySequence::Paste)) return pasteHere(), true;
    if ((event.key() == Qt::Key_Insert && held == Qt::NoModifier) || (enter && held == Qt::ControlModifier))
        return startNewRow(), true;
    if (held == Qt::AltModifier && (event.key() == Qt::Key_Up || event.key() == Qt::Key_Down)) {
        if (event.key() == Qt::Key_Down && model_->spec().orderField.empty()) return false;
        return moveChosen(event.key() == Qt::Key_Up ? -1 : 1), true;
    }
    if (held != Qt::NoModifier) return false;
    if (event.key() == Qt::Key_Delete) return eraseChosen(), true;
    if (event.key() == Qt::Key_Backspace) return tell(model_->blank({currentIndex()})), true;
    if (event.key() == Qt::Key_Escape) {
        const bool had = !currentIndex().data(RecordTableModel::SentenceRole).toString().isEmpty() ||
                         model_->isAddRow(currentIndex().row());
        model_->forget(currentIndex());
        return had;
    }
    if (!enter) return false;
    if (currentIndex().flags().testFlag(Qt::ItemIsEditable)) return edit(currentIndex()), true;
    return goDown(), true;
}

void RecordTable::goDown() {
    made_.reset();
    const auto at = currentIndex();
    const auto next = model_->index(std::min(at.row() + 1, model_->rowCount() - 1), at.column());
    if (next.isValid()) setCurrentIndex(next);
}

/// What was typed into the blank row has become a record: Tab goes on in that one, Enter to the next.
void RecordTable::goAcross(bool back) {
    const int row = made_ && model_->isAddRow(currentIndex().row()) ? model_->rowOf(*made_) : -1;
    made_.reset();
    if (row >= 0) setCurrentIndex(model_->index(row, currentIndex().column()));
    const auto next = moveCursor(back ? MovePrevious : MoveNext, Qt::NoModifier);
    if (next == currentIndex()) return;
    setCurrentIndex(next);
    edit(next);
}

/// Tab, while writing, passes over what cannot be written.
QModelIndex RecordTable::moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) {
    if (action != MoveNext && action != MovePrevious) return QTableView::moveCursor(action, modifiers);
    const int columns = model_->columnCount();
    const int all = columns * model_->rowCount();
    const int step = action == MoveNext ? 1 : -1;
    int at = currentIndex().row() * columns + currentIndex().column() + step;
    for (; at >= 0 && at < all; at += step) {
        const auto index = model_->index(at / columns, at % columns);
        if (index.flags().testFlag(Qt::ItemIsEditable) && !isColumnHidden(index.column())) return index;
    }
    return currentIndex();
}

void RecordTable::startNewRow() {
    if (!commitEditor()) return;
    if (model_->spec().addRow) {
        const auto at = model_->index(model_->rowCount() - 1, 0);
        setCurrentIndex(at);
        scrollTo(at);
        edit(at);
        return;
    }
    std::int64_t id = 0;
    const QString said = model_->add(id);
    if (!said.isEmpty()) return tell(said);
    choose(id);
}

void RecordTable::erase(bool andBlank) {
    const auto ids = chosenIds();
    if (ids.empty()) return;
    const auto plan = model_->planErase(ids);
    if (!plan.free() && !(andBlank && plan.blankingHelps())) {
        Q_EMIT blocked(plan.sentence);
        return;
    }
    const int row = model_->rowOf(ids.front());
    tell(andBlank ? model_->eraseAndBlank(ids) : model_->erase(ids));
    const auto next =
        model_->index(std::min(row, model_->rowCount() - 1), std::max(0, currentIndex().column()));
    if (next.isValid()) setCurrentIndex(next);
}

void RecordTable::eraseChosen() {
    erase(false);
}

void RecordTable::eraseChosenAndBlank() {
    erase(true);
}

void RecordTable::moveChosen(int by) {
    const auto id = chosenId();
    if (!id || model_->spec().orderField.empty()) return;
    tell(model_->move(*id, model_->rowOf(*id) + by));
}

void RecordTable::copyChosen() {
    auto indexes = selectionModel()->selectedIndexes();
    if (indexes.isEmpty()) return;
    QApplication::clipboard()->setMimeData(model_->mimeForCopy(indexes));
}

void RecordTable::cutChosen() {
    copyChosen();
    eraseChosen();
}

void RecordTable::pasteHere() {
    const auto* copied = QApplication::clipboard()->mimeData();
    if (copied) tell(model_->pasteMime(currentIndex(), *copied));
}

} // namespace withy::ui
