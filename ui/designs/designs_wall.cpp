// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/designs/designs_wall.h"

#include "ui/common/style.h"
#include "ui/paint/jar_mark.h"
#include "ui/paint/scale_rule.h"
#include "ui/paint/spacing.h"

#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>

#include <cmath>

namespace withy::ui {

namespace {

WallMeasures measures(int width) {
    const QFontMetrics name(typeFont(TypeRole::strong)), caption(typeFont(TypeRole::caption));
    WallMeasures m;
    m.width = width - grid(6);
    m.head = grid(30);
    m.drawing = grid(44);
    m.words = name.height() + caption.height() + grid(3);
    m.gap = grid(3);
    m.least = grid(20);
    return m;
}

} // namespace

DesignsWall::DesignsWall(Workbench& bench, DesignsModel& model, QWidget* parent)
    : QListView(parent), bench_(bench), model_(model) {
    setObjectName(QStringLiteral("designs.wall"));
    setAccessibleName(tr("Designs, by shelf"));
    setFrameShape(QFrame::NoFrame);
    setEditTriggers(NoEditTriggers);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollMode(ScrollPerPixel);
    setSelectionMode(SingleSelection);
    setProperty("look", QStringLiteral("list"));
    viewport()->setAutoFillBackground(false);
    setModel(&model);
    connect(&pictures_, &PiecePictures::ready, viewport(), [this] { viewport()->update(); });
    connect(this, &QListView::activated, this, [this](const QModelIndex& index) {
        Q_EMIT openAsked(index.data(DesignsModel::IdRole).toLongLong());
    });
}

std::optional<Id<model::Design>> DesignsWall::chosen() const {
    const auto index = currentIndex();
    if (!index.isValid()) return std::nullopt;
    return Id<model::Design>(index.data(DesignsModel::IdRole).toLongLong());
}

void DesignsWall::choose(Id<model::Design> design) {
    const int row = model_.rowOf(design);
    if (row < 0) return;
    setCurrentIndex(model_.index(row));
    scrollTo(currentIndex());
}

void DesignsWall::arrange() {
    stale_ = !isVisible();
    if (stale_) return;
    const auto m = measures(viewport()->width());
    const QFontMetrics name(typeFont(TypeRole::strong)), caption(typeFont(TypeRole::caption));
    std::vector<WallItem> items;
    pieces_.clear();
    QList<qint64> keys;
    for (int row = 0; row < model_.rowCount(); ++row) {
        const auto index = model_.index(row);
        const auto id = index.data(DesignsModel::IdRole).toLongLong();
        keys << id;
        pieces_.push_back(pieceDrawing(bench_.season(), Id<model::Design>(id)));
        const int words =
            std::max(name.horizontalAdvance(index.data().toString()),
                     caption.horizontalAdvance(index.data(DesignsModel::CaptionRole).toString()));
        items.push_back({index.data(DesignsModel::GroupRole).toInt(), pieceBoundsMm(pieces_.back()),
                         std::min(words, grid(50))});
    }
    layout_ = layOut(items, m);
    pictures_.keepOnly(keys);
    verticalScrollBar()->setPageStep(viewport()->height());
    verticalScrollBar()->setSingleStep(grid(10));
    verticalScrollBar()->setRange(0, std::max(0, layout_.height - viewport()->height()));
    viewport()->update();
}

void DesignsWall::doItemsLayout() {
    arrange();
    QAbstractItemView::doItemsLayout();
}

void DesignsWall::updateGeometries() {
    arrange();
}

void DesignsWall::dataChanged(const QModelIndex& from, const QModelIndex& to, const QList<int>& roles) {
    arrange();
    QListView::dataChanged(from, to, roles);
}

void DesignsWall::resizeEvent(QResizeEvent* event) {
    QAbstractItemView::resizeEvent(event);
    arrange();
}

void DesignsWall::changeEvent(QEvent* event) {
    QListView::changeEvent(event);
    if (event->type() == QEvent::StyleChange || event->type() == QEvent::FontChange) arrange();
}

void DesignsWall::showEvent(QShowEvent* event) {
    QListView::showEvent(event);
    if (stale_) arrange();
}

void DesignsWall::scrollContentsBy(int, int) {
    viewport()->update();
}

int DesignsWall::horizontalOffset() const {
    return 0;
}

int DesignsWall::verticalOffset() const {
    return verticalScrollBar()->value();
}

QRect DesignsWall::visualRect(const QModelIndex& index) const {
    const auto row = static_cast<std::size_t>(index.row());
    if (!index.isValid() || row >= layout_.cells.size()) return {};
    return layout_.cells[row].box.translated(0, -verticalOffset());
}

QModelIndex DesignsWall::indexAt(const QPoint& point) const {
    for (std::size_t row = 0; row < layout_.cells.size(); ++row) {
        if (layout_.cells[row].box.contains(point + QPoint(0, verticalOffset())))
            return model_.index(static_cast<int>(row));
    }
    return {};
}

void DesignsWall::scrollTo(const QModelIndex& index, ScrollHint) {
    const QRect box = visualRect(index);
    auto* bar = verticalScrollBar();
    if (box.isNull()) return;
    if (box.top() < 0)
        bar->setValue(bar->value() + box.top());
    else if (box.bottom() > viewport()->height())
        bar->setValue(bar->value() + std::min(box.bottom() - viewport()->height() + grid(1), box.top()));
}

void DesignsWall::setSelection(const QRect& rect, QItemSelectionModel::SelectionFlags command) {
    const auto index = indexAt(rect.center());
    selectionModel()->select(index, command);
}

QRegion DesignsWall::visualRegionForSelection(const QItemSelection& selection) const {
    QRegion region;
    for (const auto& index : selection.indexes())
        region += visualRect(index);
    return region;
}

int DesignsWall::boardOf(int row) const {
    const double y = layout_.cells[static_cast<std::size_t>(row)].foot.y();
    for (std::size_t i = 0; i < layout_.boards.size(); ++i) {
        if (layout_.boards[i].y == y) return static_cast<int>(i);
    }
    return 0;
}

/// The piece on the next board up (-1) or down (1) whose middle is nearest.
int DesignsWall::nearest(int row, int direction) const {
    const int wanted = boardOf(row) + direction;
    const int x = layout_.cells[static_cast<std::size_t>(row)].box.center().x();
    int best = row, apart = -1;
    for (int r = 0; r < model_.rowCount(); ++r) {
        if (boardOf(r) != wanted) continue;
        const int d = std::abs(layout_.cells[static_cast<std::size_t>(r)].box.center().x() - x);
        if (apart >= 0 && d >= apart) continue;
        apart = d;
        best = r;
    }
    return best;
}

QModelIndex DesignsWall::moveCursor(CursorAction action, Qt::KeyboardModifiers) {
    const int count = model_.rowCount();
    const int row = currentIndex().row();
    if (count == 0 || static_cast<int>(layout_.cells.size()) != count) return {};
    if (row < 0) return model_.index(0);
    switch (action) {
    case MoveLeft:
    case MovePrevious:
        return model_.index(std::max(0, row - 1));
    case MoveRight:
    case MoveNext:
        return model_.index(std::min(count - 1, row + 1));
    case MoveUp:
    case MovePageUp:
        return model_.index(nearest(row, -1));
    case MoveDown:
    case MovePageDown:
        return model_.index(nearest(row, 1));
    case MoveHome:
        return model_.index(0);
    case MoveEnd:
        return model_.index(count - 1);
    }
    return currentIndex();
}

void DesignsWall::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QListView::currentChanged(current, previous);
    viewport()->update();
    Q_EMIT chose(current.isValid() ? current.data(DesignsModel::IdRole).toLongLong() : 0);
}

void DesignsWall::keyPressEvent(QKeyEvent* event) {
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (enter && chosen()) {
        Q_EMIT openAsked(chosen()->value);
        return;
    }
    QListView::keyPressEvent(event);
}

void DesignsWall::mouseDoubleClickEvent(QMouseEvent* event) {
    const auto index = indexAt(event->pos());
    if (index.isValid()) Q_EMIT openAsked(index.data(DesignsModel::IdRole).toLongLong());
}

void DesignsWall::paintEvent(QPaintEvent* event) {
    QPainter painter(viewport());
    const auto& palette = currentPalette();
    painter.fillRect(event->rect(), palette.of(Role::paper));
    painter.translate(0, -verticalOffset());
    const QRect seen = event->rect().translated(0, verticalOffset());
    if (static_cast<int>(layout_.cells.size()) != model_.rowCount()) return;
    // The chosen piece's wash lies below the shelf's line, the pieces above it.
    for (const auto& board : layout_.boards)
        paintBoard(painter, board);
    for (std::size_t row = 0; row < layout_.cells.size(); ++row) {
        if (layout_.cells[row].box.adjusted(-grid(20), -grid(20), grid(20), 0).intersects(seen))
            paintCell(painter, layout_.cells[row], model_.index(static_cast<int>(row)));
    }
}

void DesignsWall::paintBoard(QPainter& painter, const WallBoard& board) const {
    const auto& palette = currentPalette();
    const int left = grid(1);
    const QFont caption = typeFont(TypeRole::caption);
    if (currentIndex().isValid() && boardOf(currentIndex().row()) == &board - layout_.boards.data())
        painter.fillRect(layout_.cells[static_cast<std::size_t>(currentIndex().row())].box,
                         palette.of(Role::wash));
    paintRule(painter, QPointF(left + 0.5, board.y), board.scale, board.y - board.top - grid(3), palette,
              caption);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(palette.of(Role::ink), 2));
    painter.drawLine(QPointF(left, board.y + 1), QPointF(viewport()->width() - grid(6), board.y + 1));
    if (!board.first) return;
    painter.setPen(palette.of(Role::ink));
    painter.setFont(typeFont(TypeRole::head));
    painter.drawText(QRect(left, board.y + grid(1), grid(29), grid(12)),
                     Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap,
                     groupWords(static_cast<DesignGroup>(board.group)));
}

void DesignsWall::paintCell(QPainter& painter, const WallCell& cell, const QModelIndex& index) {
    const auto& palette = currentPalette();
    const auto row = static_cast<std::size_t>(index.row());
    const bool chosen = index == currentIndex();
    const auto key = index.data(DesignsModel::IdRole).toLongLong();
    const auto picture =
        pictures_.picture(key, {pieces_[row], cell.scale, devicePixelRatioF(), palette.theme, false});
    if (!picture.image.isNull()) painter.drawImage(cell.foot - picture.foot, picture.image);
    const QFontMetrics name(typeFont(TypeRole::strong)), caption(typeFont(TypeRole::caption));
    QRect words = cell.box.adjusted(grid(1), 0, -grid(1), 0);
    words.setTop(static_cast<int>(cell.foot.y()) + grid(1.5));
    painter.setPen(palette.of(Role::ink));
    painter.setFont(typeFont(TypeRole::strong));
    painter.drawText(words, Qt::AlignHCenter | Qt::AlignTop,
                     name.elidedText(index.data().toString(), Qt::ElideRight, words.width()));
    words.setTop(words.top() + name.height());
    painter.setPen(palette.of(Role::ink2));
    painter.setFont(typeFont(TypeRole::caption));
    painter.drawText(
        words, Qt::AlignHCenter | Qt::AlignTop,
        caption.elidedText(index.data(DesignsModel::CaptionRole).toString(), Qt::ElideRight, words.width()));
    if (!chosen) return;
    paintTie(painter, QRectF(cell.box.left(), cell.foot.y() + grid(2), grid(2.5), grid(6)),
             palette.of(Role::green));
    if (!hasFocus()) return;
    painter.setPen(QPen(palette.of(Role::green), focusRing));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(QRectF(cell.box).adjusted(1, 1, -1, -1), corner, corner);
}

} // namespace withy::ui
