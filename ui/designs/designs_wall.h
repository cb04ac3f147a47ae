// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "ui/designs/wall_layout.h"
#include "ui/logic/models/designs_model.h"
#include "ui/paint/piece_pictures.h"
#endif

#include <QListView>

namespace withy::ui {

/// Shelves of designs, each shelf at one scale with its rule at the left. A list to screen readers and
/// the keyboard: left and right along a shelf, up and down between shelves, Enter opens.
class DesignsWall : public QListView {
    Q_OBJECT

public:
    DesignsWall(Workbench& bench, DesignsModel& model, QWidget* parent = nullptr);

    [[nodiscard]] std::optional<Id<model::Design>> chosen() const;
    void choose(Id<model::Design> design);

    [[nodiscard]] QRect visualRect(const QModelIndex& index) const override;
    [[nodiscard]] QModelIndex indexAt(const QPoint& point) const override;
    void scrollTo(const QModelIndex& index, ScrollHint hint = EnsureVisible) override;

Q_SIGNALS:
    void chose(qint64 design);
    void openAsked(qint64 design);

protected:
    QModelIndex moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) override;
    [[nodiscard]] int horizontalOffset() const override;
    [[nodiscard]] int verticalOffset() const override;

    [[nodiscard]] bool isIndexHidden(const QModelIndex&) const override { return false; }

    void setSelection(const QRect& rect, QItemSelectionModel::SelectionFlags command) override;
    [[nodiscard]] QRegion visualRegionForSelection(const QItemSelection& selection) const override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    void dataChanged(const QModelIndex& from, const QModelIndex& to, const QList<int>& roles) override;
    void updateGeometries() override;
    void doItemsLayout() override;
    void keyPressEvent(QKeyEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void scrollContentsBy(int dx, int dy) override;

private:
    void arrange();
    void paintBoard(QPainter& painter, const WallBoard& board) const;
    void paintCell(QPainter& painter, const WallCell& cell, const QModelIndex& index);
    [[nodiscard]] int nearest(int row, int direction) const;
    [[nodiscard]] int boardOf(int row) const;

    Workbench& bench_;
    DesignsModel& model_;
    PiecePictures pictures_;
    std::vector<PieceDrawing> pieces_; ///< one each row
    WallLayout layout_;
    bool stale_ = false; ///< to be arranged when it shows
};

} // namespace withy::ui
