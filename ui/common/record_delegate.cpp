// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/common/record_delegate.h"

#include "ui/common/cell_editor.h"
#include "ui/common/cell_painter.h"
#include "ui/logic/edits/record_edits.h"
#include "ui/logic/fields/field_text.h"
#include "ui/paint/spacing.h"

#include <QApplication>
#include <QEvent>
#include <QKeyEvent>
#include <QLineEdit>
#include <QMouseEvent>

namespace withy::ui {

namespace {

CellEditor* cellOf(QObject* watched) {
    for (auto* o = watched; o; o = o->parent()) {
        if (auto* cell = qobject_cast<CellEditor*>(o)) return cell;
    }
    return nullptr;
}

} // namespace

RecordDelegate::RecordDelegate(RecordTableModel& model, QObject* parent)
    : QStyledItemDelegate(parent), model_(model) {}

void RecordDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                           const QModelIndex& index) const {
    const auto id = model_.idAt(index.row());
    paintCell(*painter, option, index, model_, asks && id && asks(*id, index.column()));
}

QSize RecordDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    Q_UNUSED(option)
    return {cellWidth(index, model_), tableRow()};
}

QWidget* RecordDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&,
                                      const QModelIndex& index) const {
    const auto* field = model_.fieldAt(index.column());
    if (!field) return nullptr;
    auto* cell = new CellEditor(model_.bench(), model_.spec().kind, *field, parent);
    const QPersistentModelIndex at(index);
    auto* self = const_cast<RecordDelegate*>(this);
    cell->control().widget()->installEventFilter(self);
    cell->control().edited = [this, cell, at, field] {
        if (at.isValid()) Q_EMIT judged(at, sentenceFor(*cell, at, *field));
    };
    cell->control().picked = [self, cell] { self->close(cell); };
    cell->control().makeAsked = [this, self, cell, at](const QString& name) {
        makeNamed(at, name);
        self->editor_ = nullptr;
        Q_EMIT self->closeEditor(cell, QAbstractItemDelegate::NoHint);
    };
    editor_ = cell;
    return cell;
}

QString RecordDelegate::sentenceFor(const CellEditor& cell, const QModelIndex& at,
                                    const model::FieldInfo& field) const {
    const QString typed = cell.control().text();
    if (typed == cell.filled) return {};
    const auto& season = model_.bench().season();
    const auto kind = model_.spec().kind;
    const auto reading = readField(season, kind, field, typed, model_.valueAt(at));
    if (reading.mayMake) return offerToMake(field, typed);
    const auto id = model_.idAt(at.row());
    return reading.ok() && id ? judgeField(season, {kind, *id}, field.name, *reading.value)
                              : reading.sentence;
}

void RecordDelegate::makeNamed(const QModelIndex& index, const QString& name) const {
    const auto* field = model_.fieldAt(index.column());
    if (!field || !index.isValid()) return;
    const QString said = model_.makeInPlace(index, name);
    if (!said.isEmpty()) Q_EMIT model_.refused(said);
}

void RecordDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
    auto* cell = qobject_cast<CellEditor*>(editor);
    if (!cell) return;
    if (cell->control().text() != cell->filled) return; // being typed in: the season changed beside it
    cell->control().setText(index.data(Qt::EditRole).toString());
    cell->filled = cell->control().text();
    if (auto* line = qobject_cast<QLineEdit*>(cell->control().widget())) line->selectAll();
}

void RecordDelegate::setModelData(QWidget* editor, QAbstractItemModel* model,
                                  const QModelIndex& index) const {
    const auto* cell = qobject_cast<CellEditor*>(editor);
    if (!cell || cell->control().text() == cell->filled) return;
    model->setData(index, cell->control().text(), Qt::EditRole);
}

void RecordDelegate::updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                                          const QModelIndex&) const {
    const auto* cell = qobject_cast<CellEditor*>(editor);
    QRect room = option.rect;
    if (cell && cell->control().takesEnter()) { // long text opens over the rows below, within the table
        room.setHeight(std::max(room.height(), cell->control().widget()->sizeHint().height()));
        if (editor->parentWidget())
            room.moveBottom(std::min(room.bottom(), editor->parentWidget()->height()));
        room.moveTop(std::max(0, room.top()));
    }
    editor->setGeometry(room);
}

void RecordDelegate::destroyEditor(QWidget* editor, const QModelIndex& index) const {
    if (editor == closing_) closing_ = nullptr;
    if (editor == editor_) editor_ = nullptr; // it lives a moment longer, and is not the view's any more
    QStyledItemDelegate::destroyEditor(editor, index);
}

void RecordDelegate::finish() {
    if (auto* cell = editor_.data()) close(cell);
}

void RecordDelegate::close(QWidget* cell) {
    editor_ = nullptr; // closing takes the focus away, which must not close it again
    closing_ = cell;
    Q_EMIT commitData(cell);
    // A new row may have shut it meanwhile.
    if (closing_) Q_EMIT closeEditor(cell, QAbstractItemDelegate::NoHint);
    closing_ = nullptr;
}

bool RecordDelegate::mayMake(const CellEditor& cell) const {
    const auto kind = model_.spec().kind;
    return readField(model_.bench().season(), kind, cell.field(), cell.control().text()).mayMake;
}

bool RecordDelegate::eventFilter(QObject* watched, QEvent* event) {
    auto* cell = cellOf(watched);
    if (!cell) return QStyledItemDelegate::eventFilter(watched, event);
    if (cell != editor_) return false; // shut already, and not yet gone
    if (event->type() == QEvent::FocusOut) {
        if (cell->control().isPopupOpen()) return false;
        return watched == cell->control().widget() ? QStyledItemDelegate::eventFilter(cell, event) : false;
    }
    if (event->type() != QEvent::KeyPress && event->type() != QEvent::ShortcutOverride) return false;
    const auto* key = static_cast<QKeyEvent*>(event);
    const bool enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
    if (event->type() == QEvent::ShortcutOverride) {
        if (key->key() == Qt::Key_Escape) event->accept();
        return false;
    }
    if (enter && cell->control().takesEnter() && key->modifiers().testFlag(Qt::ShiftModifier)) return false;
    if (enter && key->modifiers().testFlag(Qt::ControlModifier) && cell->control().makeAsked &&
        mayMake(*cell)) {
        cell->control().makeAsked(cell->control().text());
        return true;
    }
    if (enter) {
        close(cell);
        Q_EMIT enterPressed();
        return true;
    }
    if (key->key() == Qt::Key_Escape) {
        cell->control().setText(cell->filled);
        editor_ = nullptr;
        Q_EMIT closeEditor(cell, QAbstractItemDelegate::RevertModelCache);
        return true;
    }
    if (key->key() == Qt::Key_Tab || key->key() == Qt::Key_Backtab) {
        close(cell);
        Q_EMIT tabPressed(key->key() == Qt::Key_Backtab);
        return true;
    }
    if (key->key() == Qt::Key_Down && key->modifiers().testFlag(Qt::AltModifier)) {
        cell->control().openPopup();
        return true;
    }
    return false;
}

bool RecordDelegate::editorEvent(QEvent* event, QAbstractItemModel* model, const QStyleOptionViewItem& option,
                                 const QModelIndex& index) {
    const QVariant tick = index.data(Qt::CheckStateRole);
    const bool flips = tick.isValid() && index.flags().testFlag(Qt::ItemIsUserCheckable);
    if (!flips) return QStyledItemDelegate::editorEvent(event, model, option, index);
    const auto flip = [&] {
        return model->setData(index, tick.toInt() == Qt::Checked ? Qt::Unchecked : Qt::Checked,
                              Qt::CheckStateRole);
    };
    if (event->type() == QEvent::MouseButtonRelease) {
        const auto* mouse = static_cast<QMouseEvent*>(event);
        return tickRect(option).contains(mouse->pos()) && flip();
    }
    if (event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Space || key == Qt::Key_Select) return flip();
    }
    return false;
}

} // namespace withy::ui
