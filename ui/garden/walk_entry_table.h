// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPersistentModelIndex>
#include <QTableView>

class QLineEdit;

namespace withy::ui {

class WalkEntryModel;

/// The sheet of a walk, written in by keyboard: the field is always open in the cell in hand. Enter and Tab
/// keep what was typed and go on along the row and to the next patch, arrows go where they point, Esc puts
/// back what stood there. A blank is passed over and stays blank.
class WalkEntryTable : public QTableView {
    Q_OBJECT

public:
    explicit WalkEntryTable(WalkEntryModel& model, QWidget* parent = nullptr);

    /// Keeps what is being typed; false when it was refused.
    bool keep();
    /// To the first patch without a count, or the first of all.
    void begin();
    /// Patches not in bloom are left out while folded; the one in hand stays, and the first that is in bloom
    /// is what one begins at.
    void fold(bool folded);
    /// To a cell to write in, and opens it.
    void openCell(int row, int column);

    [[nodiscard]] QLineEdit& cell() const { return *cell_; }

Q_SIGNALS:
    void cellChanged();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    void updateGeometries() override;
    void scrollContentsBy(int dx, int dy) override;
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    bool focusNextPrevChild(bool next) override;

private:
    bool handleKey(int key, Qt::KeyboardModifiers modifiers);
    /// One on or back along the rows; false at the end.
    bool goOn(int by);
    bool goDown(int by);
    /// The next row that is shown, from `row` on by steps of `by`; none: -1.
    [[nodiscard]] int shownFrom(int row, int by) const;
    void leaveBackwards();
    void placeCell();
    void fillCell();
    void dress();
    void shareWidth();

    WalkEntryModel& sheet_;
    QLineEdit* cell_;
    QPersistentModelIndex inHand_; ///< what the field writes to
    bool keeping_ = false;
    bool leaving_ = false; ///< backwards, past the table itself
};

} // namespace withy::ui
