// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/logic/models/designs_model.h"
#include "ui/paint/piece_index.h"

#include <QDeadlineTimer>
#include <QHash>
#include <QRectF>

#include <optional>

namespace withy::ui {

/// What the wall knows of a design.
struct WallPiece {
    PieceDrawing drawing;
    QRectF boundsMm{-90, -220, 180, 220}; ///< until it is measured: about a jar's
    QString name;
    QString caption;
    int wordsWidth = 0;  ///< of the wider of the two
    bool inBloom = true; ///< else drawn in line only
    bool known = false;
};

/// Drawings, sizes and words of the designs on the wall. Gathered in slices, for hundreds of them take longer
/// than a frame; a design is measured again only when its drawing has changed.
class WallPieces {
public:
    /// The season or the model's rows have changed: all rows are to be looked at again. What is known of
    /// them stands until then.
    void begin(const DesignsModel& model);
    /// The size of text has changed.
    void measureWords();
    /// Goes on until `until`; true when all rows are done.
    bool goOn(const model::Season& season, const DesignsModel& model, QDeadlineTimer until);

    [[nodiscard]] bool done() const { return next_ >= rows_.size(); }

    [[nodiscard]] std::size_t size() const { return rows_.size(); }

    [[nodiscard]] const WallPiece& at(std::size_t row) const;

private:
    void look(const DesignsModel& model, std::size_t row);

    QHash<qint64, WallPiece> pieces_;
    std::vector<qint64> rows_;
    std::optional<PieceIndex> index_; ///< of the season as it stood at the last begin()
    std::size_t next_ = 0;
};

} // namespace withy::ui
