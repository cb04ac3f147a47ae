// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#ifndef Q_MOC_RUN
#include "ui/paint/piece_painter.h"
#endif

#include <QHash>
#include <QImage>
#include <QObject>
#include <QThreadPool>

namespace withy::ui {

/// Pictures of pieces, drawn away from the window's thread and kept: a wall of forty pieces takes half a
/// second to draw, and the window may not stand still for it. One for a wall or a list.
class PiecePictures : public QObject {
    Q_OBJECT

public:
    explicit PiecePictures(QObject* parent = nullptr);
    ~PiecePictures() override;

    /// Around the piece's bounds with 3 px to spare on each side, transparent outside it.
    struct Wanted {
        PieceDrawing piece;
        double scale = 1; ///< pixels a millimetre
        double devicePixelRatio = 1;
        Theme theme = Theme::light;
        bool lineOnly = false;
        friend bool operator==(const Wanted&, const Wanted&) = default;
    };

    struct Picture {
        QImage image;   ///< null while it is being drawn
        QPointF foot{}; ///< where the middle of the foot is in it, in its own (logical) pixels
    };

    /// Of what it drew last for `key` until the new one is ready: nothing flickers after an edit.
    Picture picture(qint64 key, const Wanted& wanted);
    /// Forgets keys that are no longer shown.
    void keepOnly(const QList<qint64>& keys);

    [[nodiscard]] bool busy() const { return drawing_ > 0; }

Q_SIGNALS:
    void ready(qint64 key);

private:
    struct Kept {
        Wanted wanted;
        Picture picture;
    };

    void take(qint64 key, const Wanted& wanted, const Picture& picture);

    QThreadPool pool_;
    QHash<qint64, Kept> kept_;
    int drawing_ = 0;
};

} // namespace withy::ui
