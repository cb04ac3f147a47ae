// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/designs/wall_pieces.h"

#include "ui/paint/piece_painter.h"
#include "ui/paint/type.h"

#include <QFontMetrics>

#include <algorithm>

namespace withy::ui {

namespace {

int widthOfWords(const WallPiece& piece) {
    const QFontMetrics name(typeFont(TypeRole::strong)), caption(typeFont(TypeRole::caption));
    return std::max(name.horizontalAdvance(piece.name), caption.horizontalAdvance(piece.caption));
}

} // namespace

void WallPieces::begin(const DesignsModel& model) {
    index_.reset();
    next_ = 0;
    rows_.clear();
    QHash<qint64, WallPiece> kept;
    for (int row = 0; row < model.rowCount(); ++row) {
        const auto id = model.index(row).data(DesignsModel::IdRole).toLongLong();
        rows_.push_back(id);
        kept.insert(id, pieces_.value(id));
    }
    pieces_ = std::move(kept);
}

void WallPieces::measureWords() {
    for (auto& piece : pieces_)
        piece.wordsWidth = widthOfWords(piece);
}

bool WallPieces::goOn(const model::Season& season, const DesignsModel& model, QDeadlineTimer until) {
    if (done()) return true;
    if (!index_) index_.emplace(season);
    // One at least, or it would never end.
    do
        look(model, next_++);
    while (!done() && !until.hasExpired());
    if (done()) index_.reset();
    return done();
}

void WallPieces::look(const DesignsModel& model, std::size_t row) {
    auto& piece = pieces_[rows_[row]];
    auto drawing = pieceDrawing(*index_, Id<model::Design>(rows_[row]));
    if (!piece.known || drawing != piece.drawing) {
        piece.drawing = std::move(drawing);
        piece.boundsMm = pieceBoundsMm(piece.drawing);
    }
    const auto index = model.index(static_cast<int>(row));
    const QString name = index.data().toString(), caption = index.data(DesignsModel::CaptionRole).toString();
    piece.inBloom = index.data(DesignsModel::InBloomRole).toBool();
    const bool said = piece.known && name == piece.name && caption == piece.caption;
    piece.known = true;
    if (said) return;
    piece.name = name;
    piece.caption = caption;
    piece.wordsWidth = widthOfWords(piece);
}

const WallPiece& WallPieces::at(std::size_t row) const {
    static const WallPiece none;
    const auto found = pieces_.constFind(rows_[row]);
    return found == pieces_.constEnd() ? none : *found;
}

} // namespace withy::ui
