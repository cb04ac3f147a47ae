// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/models/record_table_model.h"

#include <QTableView>

class QLabel;

namespace withy::ui {

/// Records as rows, edited in place. F2, typing or a double click edits, Enter keeps and goes down, Tab
/// across, Esc puts back. Del takes the chosen rows out, Ins or Ctrl+Enter starts a new one, Ctrl+C, X
/// and V speak with spreadsheets, Alt+Up and Alt+Down (or the mouse) put rows in another order.
class RecordTable : public QTableView {
    Q_OBJECT

public:
    RecordTable(Workbench& bench, RecordTableSpec spec, QWidget* parent = nullptr);

    [[nodiscard]] RecordTableModel& records() const { return *model_; }

    /// What stands there while there are no rows: "Nothing booked yet."
    void setEmptyWords(const QString& words);
    /// Cells that stand in osier: what wants the grower.
    void setAsks(std::function<bool(std::int64_t id, int column)> asks);
    /// Only the children of this record; none when there is none.
    void showParent(std::optional<std::int64_t> id);
    void choose(std::int64_t id);
    [[nodiscard]] std::optional<std::int64_t> chosenId() const;
    [[nodiscard]] std::vector<std::int64_t> chosenIds() const;
    /// Keeps what is being typed; false when it was refused.
    bool commitEditor();
    /// As tall as its rows, without a scroll bar of its own, up to `mostRows` (0: all).
    void growWithRows(int mostRows = 0);

public Q_SLOTS:
    void startNewRow();
    void eraseChosen();
    /// Takes out the chosen rows and leaves blank what used them, where that may be.
    void eraseChosenAndBlank();
    void moveChosen(int by);
    void copyChosen();
    void cutChosen();
    void pasteHere();

Q_SIGNALS:
    void chosen(std::optional<std::int64_t> id);
    void refused(const QString& sentence);
    /// Something else still uses the chosen rows; the sentence says what, and how to go on.
    void blocked(const QString& sentence);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    void dataChanged(const QModelIndex& from, const QModelIndex& to, const QList<int>& roles) override;
    QModelIndex moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) override;
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

private:
    void dress();
    void rowsChanged();
    [[nodiscard]] int contentWidth(int column) const;
    void fitColumns();
    void fitColumnsSoon();
    bool handleKey(const QKeyEvent& event);
    void goDown();
    void goAcross(bool back);
    void erase(bool andBlank);
    void tell(const QString& sentence);
    /// Puts the sentence under the cell it is about, or takes it away.
    void sayUnder(const QModelIndex& index, const QString& sentence);

    RecordTableModel* model_;
    QLabel* said_;
    QString emptyWords_;
    std::optional<std::int64_t> kept_; ///< chosen before the rows were laid anew
    std::optional<std::int64_t> made_; ///< by what was typed last into the blank row
    int mostRows_ = -1;
    bool fittedByHand_ = false; ///< a width was set by hand: they stay
    bool fitting_ = false;
    bool fitAsked_ = false;
};

} // namespace withy::ui
