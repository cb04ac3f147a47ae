// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/models/record_table_model.h"

#include <QPointer>
#include <QStyledItemDelegate>

#include <functional>

namespace withy::ui {

class CellEditor;

/// Paints the cells of a record table and gives them the editors that forms use.
class RecordDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    RecordDelegate(RecordTableModel& model, QObject* parent);

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const override;
    void setEditorData(QWidget* editor, const QModelIndex& index) const override;
    void setModelData(QWidget* editor, QAbstractItemModel* model, const QModelIndex& index) const override;
    void destroyEditor(QWidget* editor, const QModelIndex& index) const override;
    void updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                              const QModelIndex& index) const override;

    /// Cells that want the grower; none while it is empty.
    std::function<bool(std::int64_t id, int column)> asks;

    /// The editor now open, or null.
    [[nodiscard]] QWidget* editor() const { return editor_; }

    /// Keeps what is typed in the open editor and shuts it.
    void finish();
    /// Keeps what was typed and shuts the cell.
    void close(QWidget* cell);

Q_SIGNALS:
    void enterPressed();
    void tabPressed(bool back);
    /// What is typed so far is refused for this reason; empty when it is not.
    void judged(const QModelIndex& index, const QString& sentence) const;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    bool editorEvent(QEvent* event, QAbstractItemModel* model, const QStyleOptionViewItem& option,
                     const QModelIndex& index) override;

private:
    /// Why what is typed so far would be refused.
    [[nodiscard]] QString sentenceFor(const CellEditor& cell, const QModelIndex& at,
                                      const model::FieldInfo& field) const;
    [[nodiscard]] bool mayMake(const CellEditor& cell) const;
    void makeNamed(const QModelIndex& index, const QString& name) const;

    RecordTableModel& model_;
    mutable QPointer<QWidget> editor_;
    mutable QWidget* closing_ = nullptr; ///< what close() is shutting, while the view still has it
};

} // namespace withy::ui
