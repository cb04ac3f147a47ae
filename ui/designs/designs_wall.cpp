// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/designs/designs_wall.h"

#include "ui/common/style.h"
#include "ui/paint/jar_mark.h"
#include "ui/paint/scale_rule.h"
#include "ui/paint/spacing.h"
#include "ui/paint/vessel_sketch.h"

#include <QKeyEvent>
#include <QPainter>
#include <QScrollBar>

#include <chrono>
#include <cmath>

namespace withy::ui {

namespace {

constexpr std::chrono::milliseconds wallSlice{8}; ///< of a frame's 16, for designs not yet measured

/// Lengths on the wall before a piece's picture is there: its vessel and how far its heads reach.
void paintOutline(QPainter& painter, const PieceDrawing& piece, const QRectF& mm, double k,
                  const Palette& palette) {
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(palette.of(Role::mist));
    painter.setPen(QPen(palette.of(Role::line), hairline));
    const double neck = piece.vessel ? piece.vessel->stand + piece.vessel->height : -mm.bottom();
    const QRectF heads(QPointF(mm.left(), mm.top()), QPointF(mm.right(), std::max(-neck, mm.top() + 1)));
    painter.drawEllipse(QRectF(heads.topLeft() * k, heads.size() * k));
    if (!piece.vessel) return;
    for (const auto& mark : vesselSketch(*piece.vessel, k, PieceColours::of(palette), false).front) {
        painter.setBrush(mark.fill.isValid() ? QBrush(palette.of(Role::mist)) : QBrush(Qt::NoBrush));
        painter.drawPath(mark.path);
    }
}

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
    viewport()->setAttribute(Qt::WA_OpaquePaintEvent); // so that scrolling moves what is painted
    setModel(&model);
    goOn_.setSingleShot(true);
    connect(&goOn_, &QTimer::timeout, this, &DesignsWall::measure);
    connect(&pictures_, &PiecePictures::ready, viewport(), [this](qint64 design) {
        const int row = model_.rowOf(Id<model::Design>(design));
        if (row < 0 || static_cast<std::size_t>(row) >= layout_.cells.size()) return; // not laid out yet
        viewport()->update(drawnRect(row).translated(0, -verticalOffset()));
    });
    connect(this, &QListView::activated, this, [this](const QModelIndex& index) {
        Q_EMIT openAsked(index.data(DesignsModel::IdRole).toLongLong());
    });
}

qint64 DesignsWall::idAt(int row) const {
    return model_.index(row).data(DesignsModel::IdRole).toLongLong();
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
    follow_ = !pieces_.done(); // what is measured yet may move it
}

/// All of them are looked at again, as much as goes into a frame at once.
void DesignsWall::gather() {
    pieces_.begin(model_);
    measure();
}

void DesignsWall::measure() {
    stale_ = !isVisible();
    if (stale_) return;
    if (!pieces_.goOn(bench_.season(), model_, QDeadlineTimer(wallSlice))) goOn_.start();
    arrange();
    if (!follow_ || !pieces_.done()) return;
    follow_ = false;
    scrollTo(currentIndex());
}

void DesignsWall::arrange() {
    if (!isVisible() || static_cast<int>(pieces_.size()) != model_.rowCount()) return;
    const auto m = measures(viewport()->width());
    std::vector<WallItem> items;
    QList<qint64> keys;
    for (int row = 0; row < model_.rowCount(); ++row) {
        const auto index = model_.index(row);
        const auto& piece = pieces_.at(static_cast<std::size_t>(row));
        keys << index.data(DesignsModel::IdRole).toLongLong();
        items.push_back({index.data(DesignsModel::GroupRole).toInt(), piece.boundsMm,
                         std::min(piece.wordsWidth, grid(50))});
    }
    layout_ = layOut(items, m);
    words_.assign(items.size(), {});
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

void DesignsWall::reset() {
    QListView::reset();
    gather();
}

void DesignsWall::dataChanged(const QModelIndex& from, const QModelIndex& to, const QList<int>& roles) {
    gather();
    QListView::dataChanged(from, to, roles);
}

void DesignsWall::resizeEvent(QResizeEvent* event) {
    QAbstractItemView::resizeEvent(event);
    arrange();
}

void DesignsWall::changeEvent(QEvent* event) {
    QListView::changeEvent(event);
    if (event->type() != QEvent::StyleChange && event->type() != QEvent::FontChange) return;
    pieces_.measureWords();
    arrange();
}

void DesignsWall::showEvent(QShowEvent* event) {
    QListView::showEvent(event);
    stale_ ? measure() : arrange();
}

void DesignsWall::scrollContentsBy(int, int dy) {
    viewport()->scroll(0, dy);
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

/// The cell with what stands out of it.
QRect DesignsWall::drawnRect(int row) const {
    return layout_.cells[static_cast<std::size_t>(row)].box.adjusted(-grid(20), -grid(20), grid(20), 0);
}

PiecePictures::Wanted DesignsWall::wanted(int row) const {
    const auto at = static_cast<std::size_t>(row);
    return {pieces_.at(at).drawing, layout_.cells[at].scale, devicePixelRatioF(), currentPalette().theme,
            !pieces_.at(at).inBloom};
}

void DesignsWall::paintEvent(QPaintEvent* event) {
    QPainter painter(viewport());
    const auto& palette = currentPalette();
    painter.fillRect(event->rect(), palette.of(Role::paper));
    painter.translate(0, -verticalOffset());
    const QRect seen = event->rect().translated(0, verticalOffset());
    const int rows = model_.rowCount();
    if (static_cast<int>(layout_.cells.size()) != rows) return;
    // The chosen piece's wash lies below the shelf's line, the pieces above it.
    for (const auto& board : layout_.boards) {
        const QRect box(0, board.top - grid(20), viewport()->width(), board.y - board.top + grid(40));
        if (box.intersects(seen)) paintBoard(painter, board);
    }
    for (int row = 0; row < rows; ++row) {
        if (drawnRect(row).intersects(seen)) paintCell(painter, row);
    }
    lookAhead();
}

/// The pieces a page above and below are drawn when those in view are.
void DesignsWall::lookAhead() {
    const int page = viewport()->height();
    const QRect near(0, verticalOffset() - page, viewport()->width(), 3 * page);
    for (int row = 0; row < model_.rowCount(); ++row) {
        if (pieces_.at(static_cast<std::size_t>(row)).known && drawnRect(row).intersects(near))
            pictures_.ahead(idAt(row), wanted(row));
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
              caption, bench_.season().theSettings().units);
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

void DesignsWall::paintCell(QPainter& painter, int row) {
    const auto& palette = currentPalette();
    const auto& cell = layout_.cells[static_cast<std::size_t>(row)];
    const auto& piece = pieces_.at(static_cast<std::size_t>(row));
    const bool chosen = row == currentIndex().row();
    if (!piece.known) return;
    const auto picture = pictures_.picture(idAt(row), wanted(row));
    if (picture.image.isNull()) {
        painter.save();
        painter.translate(cell.foot);
        paintOutline(painter, piece.drawing, piece.boundsMm, cell.scale, palette);
        painter.restore();
    } else {
        paintPicture(painter, picture, cell.foot, cell.scale);
    }
    paintWords(painter, row);
    if (!chosen) return;
    paintTie(painter, QRectF(cell.box.left(), cell.foot.y() + grid(2), grid(2.5), grid(6)),
             palette.of(Role::green));
    if (!hasFocus()) return;
    painter.setPen(QPen(palette.of(Role::green), focusRing));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(QRectF(cell.box).adjusted(1, 1, -1, -1), corner, corner);
}

/// Name and caption below the shelf, laid out once.
void DesignsWall::paintWords(QPainter& painter, int row) {
    const auto& palette = currentPalette();
    const auto& cell = layout_.cells[static_cast<std::size_t>(row)];
    const QFont name = typeFont(TypeRole::strong), caption = typeFont(TypeRole::caption);
    const int left = cell.box.left() + grid(1), room = cell.box.width() - 2 * grid(1);
    auto& words = words_[static_cast<std::size_t>(row)];
    if (!words.laidOut) {
        const auto& piece = pieces_.at(static_cast<std::size_t>(row));
        const auto lay = [room](QStaticText& text, const QString& said, const QFont& font) {
            text.setTextFormat(Qt::PlainText);
            text.setText(QFontMetrics(font).elidedText(said, Qt::ElideRight, room));
            text.prepare({}, font);
        };
        lay(words.name, piece.name, name);
        lay(words.caption, piece.caption, caption);
        words.laidOut = true;
    }
    const auto draw = [&](const QStaticText& text, double y, Role role, const QFont& font) {
        painter.setPen(palette.of(role));
        painter.setFont(font);
        painter.drawStaticText(QPointF(std::round(left + (room - text.size().width()) / 2), y), text);
    };
    const double top = std::floor(cell.foot.y()) + grid(1.5);
    const bool inBloom = pieces_.at(static_cast<std::size_t>(row)).inBloom;
    draw(words.name, top, inBloom ? Role::ink : Role::ink2, name);
    draw(words.caption, top + QFontMetrics(name).height(), Role::ink2, caption);
}

} // namespace withy::ui
