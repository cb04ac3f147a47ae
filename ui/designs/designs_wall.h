// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "ui/designs/wall_layout.h"
#include "ui/designs/wall_pieces.h"
#include "ui/logic/models/designs_model.h"
#include "ui/paint/piece_pictures.h"
#endif

#include <QListView>
#include <QStaticText>
#include <QTimer>

namespace withy::ui {

/// Shelves of designs, each shelf at one scale with its rule at the left. A list to screen readers and
/// the keyboard: left and right along a shelf, up and down between shelves, Enter opens. No frame waits for a
/// piece: one not yet drawn shows its outline.
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
    void reset() override;
    void keyPressEvent(QKeyEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void scrollContentsBy(int dx, int dy) override;

private:
    /// As they are written below a piece.
    struct CellWords {
        QStaticText name;
        QStaticText caption;
        bool laidOut = false;
    };

    void gather();
    void measure();
    void arrange();
    void lookAhead();
    void paintBoard(QPainter& painter, const WallBoard& board) const;
    void paintCell(QPainter& painter, int row);
    void paintWords(QPainter& painter, int row);
    [[nodiscard]] QRect drawnRect(int row) const;
    [[nodiscard]] PiecePictures::Wanted wanted(int row) const;
    [[nodiscard]] qint64 idAt(int row) const;
    [[nodiscard]] int nearest(int row, int direction) const;
    [[nodiscard]] int boardOf(int row) const;

    Workbench& bench_;
    DesignsModel& model_;
    PiecePictures pictures_;
    WallPieces pieces_;
    std::vector<CellWords> words_; ///< one each row
    WallLayout layout_;
    QTimer goOn_;         ///< with designs not yet measured
    bool stale_ = true;   ///< to be measured when it shows
    bool follow_ = false; ///< the chosen piece is brought into view when all are measured
};

} // namespace withy::ui
